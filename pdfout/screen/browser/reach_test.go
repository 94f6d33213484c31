package browser

import (
	"encoding/json"
	"fmt"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/accessibility"
	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Rules of this file: the page is there for everybody: with a keyboard alone, read aloud, with
// large letters, on a phone, in the dark, with colours of one's own, without motion, without
// the script. WCAG 2.2 AA is the measure.

// addresses are all that can be shown, as choices of the page.
var addresses = []string{"", "?show=pages", "?show=folded", "?show=folded&lay=half", "?show=views", "?show=views&lay=over", "?show=figures"}

// asked is a feature of the window that a style sheet can ask for.
func asked(name, value string) []*emulation.MediaFeature {
	return []*emulation.MediaFeature{{Name: name, Value: value}}
}

// loaded waits until the page shows what it was asked for.
func (b *tab) loaded() {
	b.t.Helper()
	b.until(`document.readyState === "complete" && document.querySelector("#drawing [data-role], #figures table")`, "something is shown")
	value[bool](b, `document.fonts.ready.then(() => true)`)
	b.settled()
}

// Whatever is shown can be read, in any light, at any width, with letters twice as large.
func TestThePageIsReadable(t *testing.T) {
	l := look(t, copied(t, frock))
	const usual = 16
	most := []string{"", "?show=folded", "?show=figures"}
	dark := asked("prefers-color-scheme", "dark")
	for _, c := range []struct {
		name      string
		s         screen
		letters   int64 // points
		addresses []string
	}{
		{"on a desk", desk, usual, addresses},
		{"in the dark", screen{wide: 1200, high: 800, features: dark}, usual, most},
		{"on a phone", screen{wide: 320, high: 640}, usual, addresses},
		{"on a phone in the dark, with large letters", screen{wide: 320, high: 640, features: dark}, 2 * usual, most},
		{"with large letters", desk, 2 * usual, most},
	} {
		t.Run(c.name, func(t *testing.T) {
			b := openTab(t, c.s, l.address)
			if c.letters != usual {
				call(b, page.SetFontSizes, page.SetFontSizesParams{FontSizes: &page.FontSizes{Standard: c.letters, Fixed: c.letters}})
			}
			for _, address := range c.addresses {
				b.open("/" + address)
				b.loaded()
				assert.InDelta(t, float64(c.letters), value[float64](b, `parseFloat(getComputedStyle(document.body).fontSize)`), float64(c.letters)/4)
				b.sound(address)
			}
			b.open("/")
			b.loaded()
			for _, opener := range []string{"#help-open", "#ruler-open"} {
				b.click(opener)
				b.sound(opener)
				b.keys(escape)
			}
		})
	}
}

// Colours that somebody has chosen for everything are kept, and the paper stays white.
func TestColoursOfOnesOwn(t *testing.T) {
	b := openTab(t, screen{wide: 1200, high: 800, features: asked("forced-colors", "active")}, look(t, copied(t, frock)).address)
	b.loaded()
	require.True(t, value[bool](b, `matchMedia("(forced-colors: active)").matches`))
	b.sound("with colours of one's own")
	b.tabThrough()
}

// Nobody is moved who does not want it.
func TestLessMotion(t *testing.T) {
	b := openTab(t, screen{wide: 1200, high: 800, features: asked("prefers-reduced-motion", "reduce")}, look(t, copied(t, frock)).address)
	b.loaded()
	assert.Empty(t, value[[]string](b, `[...document.querySelectorAll("*")].filter(e => {
		const s = getComputedStyle(e), long = times => times.split(",").some(t => parseFloat(t) > 0.01)
		return long(s.transitionDuration) || long(s.animationDuration) && s.animationName !== "none" || s.scrollBehavior === "smooth"
	}).map(e => e.localName + "#" + e.id)`), "what moves")
}

// tabThrough presses Tab until it has been everywhere, and returns where.
func (b *tab) tabThrough() []string {
	b.t.Helper()
	value[bool](b, auditScript)
	value[any](b, `void (document.activeElement.blur(), document.scrollingElement.scrollTo(0, 0))`)
	const most = 200
	var been []string
	for range most {
		b.keys(tabKey)
		at := value[string](b, `audit.focused()`)
		if at == "" || len(been) > 1 && at == been[0] {
			return been
		}
		b.until(`audit.focus() === ""`, "the focus is seen at ", at)
		been = append(been, at)
	}
	require.Fail(b.t, "Tab does not come to an end")
	return nil
}

// Tab comes to everything, in every picture, and where one is can be seen.
func TestTheKeyboardAloneIsEnough(t *testing.T) {
	l := look(t, copied(t, frock))
	for _, s := range []screen{desk, {wide: 320, high: 640, features: asked("prefers-color-scheme", "dark")}} {
		t.Run(fmt.Sprint(s.wide), func(t *testing.T) {
			b := openTab(t, s, l.address)
			for _, address := range []string{"", "?show=figures"} {
				b.open("/" + address)
				b.loaded()
				been := b.tabThrough()
				// Of a list that arrow keys go through, Tab comes to one.
				all := value[[]string](b, `audit.controls()`)
				var missed []string
				for _, one := range all {
					if !contains(been, one) {
						missed = append(missed, one)
					}
				}
				assert.Empty(t, missed, "what Tab does not come to at %q", address)
			}
		})
	}
}

func contains(all []string, one string) bool {
	for _, s := range all {
		if s == one {
			return true
		}
	}
	return false
}

// A dialog is opened, used and closed by keys, and the focus goes back to where it came from.
func TestDialogsByKeys(t *testing.T) {
	b := openTab(t, desk, look(t, copied(t, frock)).address)
	b.loaded()
	for _, name := range []string{"help", "ruler"} {
		opener := "#" + name + "-open"
		value[any](b, `document.querySelector("`+opener+`").focus()`)
		b.keys(enter)
		b.until(`document.getElementById("`+name+`").open`, name, " opens")
		assert.True(t, value[bool](b, `document.getElementById("`+name+`").contains(document.activeElement)`), "the focus is in it")
		b.keys(escape)
		b.until(`!document.getElementById("`+name+`").open`, name, " closes")
		assert.Equal(t, name+"-open", value[string](b, "document.activeElement.id"), "the focus is where it was")
	}
	b.keys("?")
	b.until(`document.getElementById("help").open`, "a key opens the help")
	b.keys(escape)
}

// Lines are found by keys alone: the list of lines points at each, and goes to it.
func TestLinesByKeys(t *testing.T) {
	b := openTab(t, desk, look(t, copied(t, frock)).address)
	b.loaded()
	value[any](b, `document.querySelector("#lines-box summary").focus()`)
	b.keys(enter, tabKey)
	b.until(`document.activeElement.matches(".told")`, "Tab comes to the list")
	first := value[string](b, `document.activeElement.dataset.line`)
	b.keys(arrowDown, arrowDown)
	b.until(`document.activeElement.matches(".told") && document.activeElement.dataset.line !== ` + quoted(first))
	b.until(`document.getElementById("card").checkVisibility() && document.querySelector("#over .pointed")`, "the line is shown in the picture")
	before := b.scale()
	b.keys(enter)
	b.settled()
	assert.NotEqual(t, before, b.scale(), "Enter goes to the line")
	b.keys(escape)
	b.until(`!document.getElementById("card").checkVisibility()`, "Escape is done with it")
}

// said is what a reader of the screen is told of an element.
type said struct {
	role, name string
	level      string // of a heading
}

// aloud is all that a reader of the screen is told of.
func (b *tab) aloud() []said {
	b.t.Helper()
	word := func(v *accessibility.Value) string {
		var s any
		if v == nil || json.Unmarshal(v.Value, &s) != nil {
			return ""
		}
		return strings.TrimSpace(fmt.Sprint(s))
	}
	var all []said
	for _, node := range call(b, accessibility.GetFullAXTree, accessibility.GetFullAXTreeParams{}).Nodes {
		if node.Ignored {
			continue
		}
		s := said{role: word(node.Role), name: word(node.Name)}
		for _, p := range node.Properties {
			if p.Name == "level" {
				s.level = word(p.Value)
			}
		}
		all = append(all, s)
	}
	return all
}

// Whoever hears the page instead of seeing it is told what everything is.
func TestThePageIsReadAloud(t *testing.T) {
	named := map[string]bool{}
	for _, role := range []string{"button", "link", "checkbox", "slider", "textbox", "combobox", "listbox", "option", "img", "image", "graphics-document", "navigation", "dialog", "toolbar", "region", "complementary", "table", "figure", "RootWebArea"} {
		named[role] = true
	}
	b := openTab(t, desk, look(t, copied(t, frock)).address)
	for _, address := range addresses {
		b.open("/" + address)
		b.loaded()
		value[any](b, `document.querySelectorAll("details").forEach(d => d.open = true)`)
		b.settled()
		count, before, navs := map[string]int{}, 0, map[string]bool{}
		for _, s := range b.aloud() {
			count[s.role]++
			if named[s.role] {
				assert.NotEmpty(t, s.name, "a name of a %s at %q", s.role, address)
			}
			if s.role == "navigation" {
				assert.False(t, navs[s.name], "two rows of links are called %q at %q", s.name, address)
				navs[s.name] = true
			}
			if s.role == "heading" {
				var level int
				fmt.Sscan(s.level, &level)
				assert.LessOrEqual(t, level, before+1, "the heading %q at %q", s.name, address)
				before = level
				if level == 1 {
					count["h1"]++
				}
			}
		}
		assert.Equal(t, 1, count["main"], "one main part at %q", address)
		assert.Equal(t, 1, count["h1"], "one title at %q", address)
		if address != "?show=figures" {
			assert.Positive(t, count["img"]+count["image"]+count["graphics-document"], "there is a picture at %q", address)
		} else {
			assert.Positive(t, count["table"], "there are tables")
		}
	}
	assert.Equal(t, "en", value[string](b, "document.documentElement.lang"))
}

// Without the script there is the picture, every choice is a link that works, and the figures.
func TestWithoutTheScript(t *testing.T) {
	l := look(t, copied(t, frock))
	b := openTab(t, screen{wide: 1200, high: 800, noScript: true}, l.address)
	shown := func(selector string) {
		t.Helper()
		require.NotZero(t, b.boxOf(selector).Width, selector)
	}
	shown("#drawing path[data-line='side']")
	b.sound("without the script")
	assert.Empty(t, value[[]string](b, `[...document.querySelectorAll("button, input, dialog")].filter(e => e.checkVisibility()).map(e => e.outerHTML)`), "nothing is there that does nothing")
	run(b, "to the figures", chromedp.WaitEvent(page.LoadEventFired, nil, chromedp.Click(chromedp.CSS(`a[href="./?show=figures"]`))))
	shown("#figures table")
	assert.Contains(t, value[string](b, `document.getElementById("figures").innerText`), "15/16")
	run(b, "to the pages", chromedp.WaitEvent(page.LoadEventFired, nil, chromedp.Click(chromedp.CSS(`a[href="./?show=pages"]`))))
	shown("#drawing path[data-line='side']")
}
