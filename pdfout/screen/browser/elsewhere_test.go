package browser

import (
	"context"
	"fmt"
	"io"
	"net/http"
	"net/http/httptest"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/pdfout/serve"
)

// trying is a page of elsewhere that tries to take something from another server in every way
// that a browser has, and says when it is done. It holds a link as well.
const trying = `<!doctype html><html lang="en"><title>Elsewhere</title><link rel="icon" href="data:,"><body>
<a id="link" href="%[1]s?by=link">look</a>
<script>
const at = way => "%[1]s?by=" + way
const element = (name, way, attribute) => new Promise(done => {
  const e = document.createElement(name)
  e.onload = () => done(way + " came")
  e.onerror = () => done("")
  e[attribute] = at(way)
  if (name === "link") e.rel = "stylesheet"
  document.body.append(e)
})
const fetched = (way, how) => fetch(at(way), how).then(() => way + " came", () => "")
const stream = new Promise(done => {
  const s = new EventSource("%[1]schanges")
  s.onopen = () => done("stream came")
  s.onerror = () => done("")
})
Promise.all([
  element("img", "picture", "src"), element("script", "script", "src"), element("link", "style", "href"),
  fetched("fetch", {}), fetched("opaque", { mode: "no-cors", cache: "no-store" }).then(() => ""), fetched("post", { method: "POST", body: "x", mode: "no-cors" }).then(() => ""), stream,
]).then(came => { document.body.dataset.came = came.filter(way => way).join() })
const frame = document.createElement("iframe")
frame.src = at("frame")
frame.onload = () => document.body.dataset.framed = true
document.body.append(frame)
</script>`

// Pages of elsewhere, and those of other programs on this machine, get nothing, whatever a
// browser says on their behalf; a link in them opens the page.
func TestPagesOfElsewhere(t *testing.T) {
	var mutex sync.Mutex
	var given []string
	server, err := serve.Listen(0)
	require.NoError(t, err)
	ctx, cancel := context.WithCancel(context.Background())
	ended := make(chan error)
	go func() {
		ended <- server.Run(ctx, http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
			if r.URL.Path != "/" {
				http.NotFound(w, r) // an icon
				return
			}
			mutex.Lock()
			given = append(given, r.FormValue("by"))
			mutex.Unlock()
			w.Header().Set("Content-Type", "text/html; charset=utf-8")
			io.WriteString(w, `<!doctype html><html lang="en"><title>Here</title><p>The page.`)
		}))
	}()
	t.Cleanup(func() {
		cancel()
		assert.NoError(t, <-ended)
	})
	other := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", "text/html; charset=utf-8")
		fmt.Fprintf(w, trying, server.Address())
	}))
	t.Cleanup(other.Close)
	for name, address := range map[string]string{
		"another program of this machine": other.URL,
		"another site":                    strings.Replace(other.URL, "127.0.0.1", "localhost", 1),
	} {
		t.Run(name, func(t *testing.T) {
			mutex.Lock()
			given = nil
			mutex.Unlock()
			b := openTab(t, desk, "about:blank")
			b.bear("") // all that is refused is told of
			b.open(address)
			b.until(`document.body.dataset.came !== undefined && document.body.dataset.framed`)
			assert.Empty(t, value[string](b, `document.body.dataset.came`), "what came to the page of elsewhere")
			mutex.Lock()
			assert.Empty(t, given, "what was made for it")
			mutex.Unlock()
			value[bool](b, `document.getElementById("link").click() || true`)
			b.until(`document.title === "Here"`)
			mutex.Lock()
			assert.Contains(t, given, "link")
			mutex.Unlock()
		})
	}
}
