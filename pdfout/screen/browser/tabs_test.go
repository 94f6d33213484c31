package browser

import (
	"context"
	"fmt"
	"io"
	"net"
	"net/http"
	"slices"
	"strconv"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/pdfout/serve"
)

// following is a page that shows the newest version, and tells the server which it shows:
// with this it asks for something, as a page does that gets a newer picture.
const following = `import { follow } from "/changes.js"
const tab = new URLSearchParams(location.search).get("tab")
follow(
  async version => {
    document.body.dataset.shown = await (await fetch("/shown?tab=" + tab + "&version=" + version)).text()
  },
  running => { document.body.dataset.running = running },
)`

// shown is what a tab shows.
type shown struct {
	tab     int
	version int64
}

// serving shows that page on a port until it is told to end, and says what its tabs show.
func serving(t *testing.T, port int, version int64) (server *serve.Server, tabs chan shown, end func()) {
	t.Helper()
	tabs = make(chan shown, 1000)
	pages := http.NewServeMux()
	pages.HandleFunc("/{$}", func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", "text/html; charset=utf-8")
		io.WriteString(w, `<!doctype html><html lang="en"><title>Tab</title><link rel="icon" href="/icon.svg"><body><p>A tab.</p><script type="module" src="/following.js"></script>`)
	})
	pages.HandleFunc("/icon.svg", func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", "image/svg+xml")
		io.WriteString(w, `<svg xmlns="http://www.w3.org/2000/svg"/>`)
	})
	pages.HandleFunc("/following.js", func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", "text/javascript; charset=utf-8")
		io.WriteString(w, following)
	})
	pages.HandleFunc("/shown", func(w http.ResponseWriter, r *http.Request) {
		tab, _ := strconv.Atoi(r.FormValue("tab"))
		version, _ := strconv.ParseInt(r.FormValue("version"), 10, 64)
		fmt.Fprint(w, version)
		tabs <- shown{tab, version}
	})
	server, err := serve.Listen(port)
	require.NoError(t, err)
	server.Publish(version)
	ctx, cancel := context.WithCancel(context.Background())
	ended := make(chan error)
	go func() { ended <- server.Run(ctx, pages) }()
	var over bool
	end = func() {
		if cancel(); !over {
			over = true
			assert.NoError(t, <-ended)
		}
	}
	t.Cleanup(end)
	return server, tabs, end
}

// all waits until each of some tabs shows a version.
func all(t *testing.T, tabs <-chan shown, version int64, who ...int) {
	t.Helper()
	missing := map[int]bool{}
	for _, tab := range who {
		missing[tab] = true
	}
	late := time.After(patience)
	for len(missing) > 0 {
		select {
		case s := <-tabs:
			if s.version == version {
				delete(missing, s.tab)
			}
		case <-late:
			require.Empty(t, missing, "tabs that do not show version %d", version)
		}
	}
}

// elsewhere has another program on the port that was ours, until a tab has asked it for changes.
func elsewhere(t *testing.T, port int) {
	t.Helper()
	listener, err := net.Listen("tcp4", net.JoinHostPort("127.0.0.1", strconv.Itoa(port)))
	require.NoError(t, err)
	asked := make(chan bool, 100)
	other := &http.Server{Handler: http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		http.NotFound(w, r)
		asked <- r.URL.Path == serve.ChangesPath
	})}
	go other.Serve(listener)
	for !<-asked {
	}
	require.NoError(t, other.Close())
}

// A browser opens six connections to a server. With twelve tabs every tab still hears of each
// change, and can ask for more; also when the tab that listens is closed, and when the server
// ends, another program has its port, and it is there again.
func TestTwelveTabs(t *testing.T) {
	twelve := []int{1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12}
	server, tabs, end := serving(t, 0, 1)
	var open []*tab
	for _, i := range twelve {
		open = append(open, openTab(t, desk, fmt.Sprint(server.Address(), "?tab=", i)))
		all(t, tabs, 1, i)
	}
	for version := int64(2); version <= 20; version++ {
		server.Publish(version)
		all(t, tabs, version, twelve...)
	}

	const fifth = 4
	value[bool](open[fifth], `Object.defineProperty(document, "hidden", {configurable: true, get: () => true}), true`)
	for version := int64(21); version <= 22; version++ {
		server.Publish(version)
		all(t, tabs, version, slices.Delete(slices.Clone(twelve), fifth, fifth+1)...)
	}
	assert.Equal(t, "20", value[string](open[fifth], `document.body.dataset.shown`), "a tab that nobody sees")
	value[bool](open[fifth], `delete document.hidden, document.dispatchEvent(new Event("visibilitychange"))`)
	assert.Equal(t, shown{5, 22}, <-tabs, "the tab is seen again")

	open[0].open("about:blank") // the first tab was the one that listened
	server.Publish(23)
	all(t, tabs, 23, twelve[1:]...)
	open[0].open(fmt.Sprint(server.Address(), "?tab=1"))
	all(t, tabs, 23, 1)
	server.Publish(24)
	all(t, tabs, 24, twelve...)

	for _, b := range open {
		b.until(`document.body.dataset.running === "true"`)
		b.bear("ERR_CONNECTION_REFUSED", "ERR_INCOMPLETE_CHUNKED_ENCODING", "ERR_CONNECTION_RESET", "404")
	}
	end()
	for _, b := range open {
		b.until(`document.body.dataset.running === "false"`, "the server has ended")
	}
	port, err := strconv.Atoi(server.Address()[len("http://127.0.0.1:") : len(server.Address())-1])
	require.NoError(t, err)
	elsewhere(t, port)
	_, tabs, _ = serving(t, port, 100)
	all(t, tabs, 100, twelve...)
	for _, b := range open {
		b.until(`document.body.dataset.running === "true"`, "the server is there again")
	}
}
