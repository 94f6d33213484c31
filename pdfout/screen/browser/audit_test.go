package browser

import (
	_ "embed"
	"fmt"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// Rules of this file: what is held against every page, in every light and at every width. The
// checks are held themselves against pages that are wrong.

//go:embed testdata/audit.js
var auditScript string

// audit is what one check finds wrong.
func (b *tab) audit(check string) []string {
	b.t.Helper()
	value[bool](b, auditScript)
	found := value[[]string](b, "audit."+check)
	if most := 4; len(found) > most {
		found = append(found[:most], fmt.Sprintf("and %d more", len(found)-most))
	}
	return found
}

// sound holds a page against all checks that need no keys. A picture that is pale, because the
// file has a mistake, is left out: it is not what is read then.
func (b *tab) sound(which string) {
	b.t.Helper()
	for _, check := range []string{`letters(".before")`, "fields()", "sideways()", "overlaps()", "small()"} {
		assert.Empty(b.t, b.audit(check), "%s: %s", which, check)
	}
}

// served is a page of a test's own.
func served(t *testing.T, body string) string {
	t.Helper()
	return servedBy(t, func(string) string { return body })
}

// servedBy are pages of a test's own, by their paths.
func servedBy(t *testing.T, body func(path string) string) string {
	t.Helper()
	s := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		w.Header().Set("Content-Type", "text/html; charset=utf-8")
		w.Header().Set("Content-Security-Policy", "default-src 'none'; img-src data:; style-src 'unsafe-inline'")
		fmt.Fprint(w, `<!doctype html><html lang="en"><title>a page</title><link rel="icon" href="data:,"><body>`+body(r.URL.Path))
	}))
	t.Cleanup(s.Close)
	return s.URL + "/"
}

// Whatever a page does wrong is heard.
func TestWhatAPageDoesWrongIsHeard(t *testing.T) {
	b := openTab(t, desk, served(t, "<p>a page</p>"))
	assert.Empty(t, b.wrong)
	for _, c := range []struct{ does, heard string }{
		{`console.log("a word")`, "console: \"a word\""},
		{`setTimeout(() => { throw new Error("a mistake") })`, "exception: Uncaught Error: a mistake"},
		{`Promise.reject(new Error("unheard"))`, "exception: Uncaught (in promise) Error: unheard"},
		{`document.body.insertAdjacentHTML("beforeend", "<img src=/x>")`, "issue: ContentSecurityPolicyIssue"},
		{`fetch("http://127.0.0.1:1/x").catch(() => 0)`, "Content Security Policy"},
	} {
		b.wrong = nil
		value[any](b, "void ("+c.does+")")
		value[bool](b, `new Promise(done => setTimeout(() => requestAnimationFrame(() => done(true))))`)
		assert.Contains(t, strings.Join(b.wrong, "\n"), c.heard, c.does)
	}
	b.wrong = nil
}

// A request to elsewhere is heard even where the page may ask it.
func TestARequestToElsewhereIsHeard(t *testing.T) {
	other := httptest.NewServer(http.NotFoundHandler())
	defer other.Close()
	b := openTab(t, desk, served(t, `<a href="`+other.URL+`/">elsewhere</a>`))
	b.open(other.URL + "/")
	assert.Contains(t, strings.Join(b.wrong, "\n"), "asked of elsewhere: "+other.URL)
	b.wrong = nil
}

// What comes later is waited for, and what a test expects to go wrong is let be.
func TestWhatComesLaterIsWaitedFor(t *testing.T) {
	b := openTab(t, desk, served(t, "<h1>one</h1>"))
	b.bear("a word")
	value[any](b, `void setTimeout(() => { document.querySelector("h1").textContent = "two"; console.log("a word") }, 50)`)
	b.until(`document.querySelector("h1").textContent === "two"`, "a heading that changes")
	value[any](b, `void setTimeout(() => location.reload(), 50)`)
	b.until(`document.querySelector("h1").textContent === "one"`, "a page that is loaded anew")
}

// Each check finds what it looks for, and nothing on a page that is right.
func TestAudits(t *testing.T) {
	const right = `<style>body { background: #fff; color: #000 } a, button, input { display: inline-block; min-width: 24px; min-height: 24px; border: 1px solid #555 }
		:focus-visible { outline: 2px solid #00f }</style>`
	cases := []struct{ name, check, body, finds string }{
		{"black on white", "letters()", `<p>words</p>`, ""},
		{"grey on white", "letters()", `<p style="color: #888">words</p>`, "contrast 3.54"},
		{"large grey on white", "letters()", `<p style="color: #888; font-size: 24px">words</p>`, ""},
		{"white on what is half black", "letters()", `<div style="background: rgb(0 0 0 / 50%)"><p style="color: #fff">words</p></div>`, "contrast 4.00"},
		{"faded", "letters()", `<div style="opacity: 0.4"><p>words</p></div>`, "contrast 2."},
		{"in a picture", "letters()", `<svg width="200" height="50"><rect width="200" height="50" fill="#777"/><text y="20" fill="#000">words</text></svg>`, "contrast 4.6|"},
		{"grey in a picture", "letters()", `<svg width="200" height="50"><rect width="200" height="50" fill="#777"/><text y="20" fill="#222">words</text></svg>`, "contrast 3."},
		{"a field", "fields()", `<input id="n" value="2">`, ""},
		{"a field that is hardly there", "fields()", `<input id="n" value="2" style="border: 1px solid #ddd; background: #fff">`, "its edge has contrast"},
		{"too wide", "sideways()", `<div style="width: 1500px">words</div>`, "the page is 15"},
		{"wide, in what scrolls", "sideways()", `<div style="overflow-x: auto"><div style="width: 1500px">words</div></div>`, ""},
		{"cut off", "sideways()", `<div style="width: 40px; overflow: hidden; white-space: nowrap">many words in a row</div>`, "is cut off"},
		{"side by side", "overlaps()", `<button>one</button><button>two</button>`, ""},
		{"over each other", "overlaps()", `<button>one</button><button style="margin-left: -10px">two</button>`, "lie over each other by 10"},
		{"small", "small()", `<button style="min-height: 0; height: 15px; padding: 0; border: 0; font-size: 10px">x</button>`, "x 15"},
	}
	b := openTab(t, desk, servedBy(t, func(path string) string {
		for i, c := range cases {
			if path == fmt.Sprintf("/%d", i) {
				return right + c.body
			}
		}
		return ""
	}))
	b.open("/0")
	b.sound("black on white")
	for i, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			b.open(fmt.Sprintf("/%d", i))
			found := strings.Join(b.audit(c.check), "\n")
			if finds, none := strings.CutSuffix(c.finds, "|"); finds == "" || none {
				assert.Empty(t, found)
			} else {
				assert.Contains(t, found, finds)
			}
		})
	}
}
