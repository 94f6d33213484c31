package screen

import (
	"io"
	"net/http"
	"net/http/httptest"
	"strings"
	"sync"
	"sync/atomic"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/pdfout"
)

// served is a site over HTTP that shows a scene.
func served(t *testing.T, scene *Scene) (*Site, func(method, path string) (*http.Response, string)) {
	t.Helper()
	site := NewSite()
	if scene != nil {
		site.Show(scene)
	}
	server := httptest.NewServer(site)
	t.Cleanup(server.Close)
	return site, func(method, path string) (*http.Response, string) {
		request, err := http.NewRequest(method, server.URL+path, nil)
		require.NoError(t, err)
		answer, err := server.Client().Do(request)
		require.NoError(t, err)
		defer answer.Body.Close()
		body, err := io.ReadAll(answer.Body)
		require.NoError(t, err)
		return answer, string(body)
	}
}

func TestPathsAndWhatTheyAnswer(t *testing.T) {
	_, ask := served(t, sceneOf(t, "", "round"))
	for _, c := range []struct {
		path   string
		status int
		kind   string
		has    string
	}{
		{"/", 200, "text/html; charset=utf-8", "<!doctype html>"},
		{"/now", 200, "text/html; charset=utf-8", `id="drawing"`},
		{"/?show=pages&view=round", 200, "text/html; charset=utf-8", "Plum smock, size 2: Pages"},
		{"/look.css", 200, "text/css; charset=utf-8", "@font-face"},
		{"/look.js", 200, "text/javascript; charset=utf-8", "import"},
		{"/regions.js", 200, "text/javascript; charset=utf-8", "export"},
		{"/look.svg", 200, "image/svg+xml", "<svg"},
		{"/go-regular.ttf", 200, "font/ttf", ""},
		{"/go-bold.ttf", 200, "font/ttf", ""},
		{"/go-mono.ttf", 200, "font/ttf", ""},
		{"/sheets.pdf", 200, "application/pdf", "%PDF of "},
		{"/sheets.pdf?view=round", 200, "application/pdf", "%PDF of round"},
		{"/length?across=0&up=25.4", 200, "text/plain; charset=utf-8", "1 in"},
		{"/length", 400, "text/plain; charset=utf-8", "no length"},
		{"/nothing", 404, "text/plain; charset=utf-8", ""},
		{"/script/look.js", 404, "text/plain; charset=utf-8", ""},
		{"/page.html", 404, "text/plain; charset=utf-8", ""},
	} {
		answer, body := ask(http.MethodGet, c.path)
		assert.Equal(t, c.status, answer.StatusCode, c.path)
		assert.Equal(t, c.kind, answer.Header.Get("Content-Type"), c.path)
		assert.Contains(t, body, c.has, c.path)
		head, nothing := ask(http.MethodHead, c.path)
		assert.Equal(t, c.status, head.StatusCode, "HEAD %s", c.path)
		assert.Equal(t, answer.ContentLength, head.ContentLength, "HEAD %s: how long the answer is", c.path)
		assert.Empty(t, nothing, "HEAD %s", c.path)
	}
}

// Every file that the page or a script of it asks for is there, but the server's own.
func TestAllThatThePageAsksForIsThere(t *testing.T) {
	_, ask := served(t, sceneOf(t, ""))
	asked := map[string]bool{}
	quoted := func(text, before string) {
		for _, rest := range strings.Split(text, before+`"/`)[1:] {
			name, _, _ := strings.Cut(rest, `"`)
			asked["/"+name] = true
		}
	}
	_, page := ask(http.MethodGet, "/")
	quoted(page, "href=")
	quoted(page, "src=")
	for path := range files() {
		_, text := ask(http.MethodGet, path)
		quoted(text, "from ")
		quoted(text, "import ")
		quoted(text, "url(")
	}
	assert.Greater(t, len(asked), 10, "what the page asks for was found: %v", asked)
	for path := range asked {
		if path != "/changes.js" {
			answer, _ := ask(http.MethodGet, path)
			assert.Equal(t, http.StatusOK, answer.StatusCode, path)
		}
	}
	for path := range files() {
		assert.True(t, asked[path], "%s is asked for by something", path)
	}
}

func TestThePrintedFileIsCalledAfterTheFile(t *testing.T) {
	scene := sceneOf(t, "")
	scene.File = `gowns/plum "two".toml`
	_, ask := served(t, scene)
	answer, _ := ask(http.MethodGet, "/sheets.pdf")
	assert.Equal(t, `inline; filename="plum \"two\".pdf"`, answer.Header.Get("Content-Disposition"))
}

func TestWhatCannotBePrinted(t *testing.T) {
	site, ask := served(t, sceneOf(t, "broken"))
	answer, body := ask(http.MethodGet, "/sheets.pdf?view=broken")
	assert.Equal(t, http.StatusConflict, answer.StatusCode)
	assert.Contains(t, body, "the letters cannot be printed")
	site.Show(&Scene{File: "plum.toml", Mistakes: []Mistake{mistaken()}})
	answer, _ = ask(http.MethodGet, "/sheets.pdf")
	assert.Equal(t, http.StatusNotFound, answer.StatusCode)
}

// A site that has nothing to show yet answers as well.
func TestNothingToShowYet(t *testing.T) {
	_, ask := served(t, nil)
	for _, path := range []string{"/", "/now?show=figures", "/?show=views"} {
		answer, _ := ask(http.MethodGet, path)
		assert.Equal(t, http.StatusOK, answer.StatusCode, path)
	}
}

// However many look at one picture, it is planned once; and not before somebody looks.
func TestAPictureIsDrawnOnce(t *testing.T) {
	var books atomic.Int64
	scene := sceneOf(t)
	scene.Views = []View{viewOf(t, "", &books)}
	_, ask := served(t, scene)
	ask(http.MethodGet, "/?show=figures")
	assert.Zero(t, books.Load(), "plans for figures alone")
	var all sync.WaitGroup
	for range 8 {
		all.Go(func() { ask(http.MethodGet, "/now") })
	}
	all.Wait()
	ask(http.MethodGet, "/?part=1")
	assert.EqualValues(t, 1, books.Load(), "plans for nine looks at the sheets")
}

// What was looked at last is begun with the next scene, before anybody asks; what nobody has
// looked at is not, and a mishap waits for whoever asks.
func TestWhatWasLookedAtIsBegun(t *testing.T) {
	begun := func() (*Scene, chan string) {
		scene, told := sceneOf(t, ""), make(chan string, 9)
		view := &scene.Views[0]
		book, lines := view.Book, view.Told
		view.Book = sync.OnceValues(func() (*pdfout.Book, error) { told <- "drawn"; return book() })
		view.Told = sync.OnceValue(func() []mark.Told { told <- "told"; return lines() })
		view.Remarks = sync.OnceValue(func() []mark.Notice { panic("a mishap") })
		return scene, told
	}
	first, told := begun()
	site, ask := served(t, sceneOf(t, ""))
	site.Show(first)
	assert.Empty(t, told, "nobody has looked")
	site.Show(sceneOf(t, ""))
	ask(http.MethodGet, "/now")
	next, told := begun()
	site.Show(next)
	assert.ElementsMatch(t, []string{"drawn", "told"}, []string{<-told, <-told})
	assert.Panics(t, func() { next.Views[0].Remarks() }, "the mishap is told to who asks")
}
