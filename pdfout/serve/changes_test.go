package serve

import (
	"bufio"
	"cmp"
	"context"
	"io"
	"net/http"
	"net/http/httptest"
	"slices"
	"strings"
	"testing"
	"testing/synctest"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// tab is a browser's tab that listens to changes.
type tab struct {
	versions chan string // closed when the stream ends
	close    func()
}

// listening opens a stream, as a browser that was told a version before, or nothing.
func listening(t *testing.T, server *Server, told string) *tab {
	t.Helper()
	ctx, cancel := context.WithCancel(context.Background())
	r, err := http.NewRequestWithContext(ctx, http.MethodGet, server.Address()+strings.TrimPrefix(ChangesPath, "/"), nil)
	require.NoError(t, err)
	if told != "" {
		r.Header.Set("Last-Event-ID", told)
	}
	answer, err := browser(t).Do(r)
	require.NoError(t, err)
	require.Equal(t, 200, answer.StatusCode)
	require.Equal(t, "text/event-stream", answer.Header.Get("Content-Type"))
	stream := &tab{versions: make(chan string, 10_000), close: cancel}
	go func() {
		defer close(stream.versions)
		defer answer.Body.Close()
		lines := bufio.NewScanner(answer.Body)
		for lines.Scan() {
			if version, is := strings.CutPrefix(lines.Text(), "data: "); is {
				stream.versions <- version
			}
		}
	}()
	t.Cleanup(cancel)
	return stream
}

// until reads versions up to the one that is waited for, and returns them.
func (s *tab) until(version string) []string {
	var told []string
	for v := range s.versions {
		if told = append(told, v); v == version {
			break
		}
	}
	return told
}

func TestEveryTabIsTold(t *testing.T) {
	server, _ := running(t, saying("the page"))
	early := listening(t, server, "")
	server.Publish(7)
	assert.Equal(t, []string{"7"}, early.until("7"), "nothing is told before something is published")
	late := listening(t, server, "")
	assert.Equal(t, []string{"7"}, late.until("7"), "who comes later is told the newest at once")
	behind := listening(t, server, "6")
	assert.Equal(t, []string{"7"}, behind.until("7"), "who comes back behind is told at once")
	level := listening(t, server, "7")
	server.Publish(8)
	for _, s := range []*tab{early, late, behind, level} {
		assert.Equal(t, []string{"8"}, s.until("8"))
	}
	server.Publish(1) // of a program started anew
	assert.Equal(t, []string{"1"}, early.until("1"))
}

// What is said, to the letter.
func TestStreamAsItIsWritten(t *testing.T) {
	changes := newChanges()
	changes.publish(7)
	ctx, cancel := context.WithCancel(context.Background())
	w := &told{ResponseRecorder: httptest.NewRecorder(), flushed: make(chan bool)}
	ended := make(chan bool)
	go func() {
		changes.ServeHTTP(w, httptest.NewRequest("GET", ChangesPath, nil).WithContext(ctx))
		close(ended)
	}()
	<-w.flushed
	changes.publish(8)
	<-w.flushed
	cancel()
	<-ended
	assert.Equal(t, "retry: 1000\n\nid: 7\ndata: 7\n\nid: 8\ndata: 8\n\n", w.Body.String())
}

// told is a recorder that says when something is on its way.
type told struct {
	*httptest.ResponseRecorder
	flushed chan bool
}

func (w *told) Flush() { w.flushed <- true }

func TestHeadOfAStream(t *testing.T) {
	server, _ := running(t, saying("the page"))
	answer, err := browser(t).Head(server.Address() + "changes")
	require.NoError(t, err)
	body, err := io.ReadAll(answer.Body)
	require.NoError(t, err)
	answer.Body.Close()
	assert.Empty(t, body)
	assert.Equal(t, "text/event-stream", answer.Header.Get("Content-Type"))
}

func TestScript(t *testing.T) {
	server, _ := running(t, saying("the page"))
	answer, err := browser(t).Get(server.Address() + "changes.js")
	require.NoError(t, err)
	body, err := io.ReadAll(answer.Body)
	require.NoError(t, err)
	answer.Body.Close()
	assert.Contains(t, string(body), "export function follow(")
	assert.Equal(t, "text/javascript; charset=utf-8", answer.Header.Get("Content-Type"))
	assertHeaders(t, answer.Header)
}

// A stream on which nothing happens says so, in a time that the test sets, and only then.
func TestHeartbeat(t *testing.T) {
	synctest.Test(t, func(t *testing.T) {
		changes := newChanges()
		ctx, cancel := context.WithCancel(context.Background())
		w := &told{ResponseRecorder: httptest.NewRecorder(), flushed: make(chan bool, 100)}
		ended := make(chan bool)
		go func() {
			changes.ServeHTTP(w, httptest.NewRequest("GET", ChangesPath, nil).WithContext(ctx))
			close(ended)
		}()
		time.Sleep(time.Minute + time.Second)
		cancel()
		<-ended
		assert.Equal(t, "retry: 1000\n\n"+strings.Repeat(": nothing new\n\n", 4), w.Body.String())
	})
}

// Ten thousand versions in a row: nobody holds the publisher up, versions come in their
// order, and the last one comes to each.
func TestPublishStorm(t *testing.T) {
	server, _ := running(t, saying("the page"))
	var tabs []*tab
	for range 20 {
		tabs = append(tabs, listening(t, server, ""))
	}
	for version := int64(1); version <= 10_000; version++ {
		server.Publish(version)
	}
	for _, s := range tabs {
		told := s.until("10000")
		assert.Equal(t, "10000", told[len(told)-1])
		assert.True(t, slices.IsSortedFunc(told, func(a, b string) int { return cmp.Or(len(a)-len(b), strings.Compare(a, b)) }), "versions out of order")
	}
}

// slow is an answer of which nothing is taken until it is let go.
type slow struct {
	*httptest.ResponseRecorder
	waits   chan bool
	release chan bool
}

func (w *slow) Write(part []byte) (int, error) {
	w.waits <- true
	<-w.release
	return w.ResponseRecorder.Write(part)
}

func (w *slow) Flush() {}

// A tab that takes nothing holds up nobody, and misses what came in between.
func TestTabThatTakesNothing(t *testing.T) {
	changes := newChanges()
	changes.publish(1)
	ctx, cancel := context.WithCancel(context.Background())
	w := &slow{httptest.NewRecorder(), make(chan bool, 100), make(chan bool)}
	ended := make(chan bool)
	go func() {
		changes.ServeHTTP(w, httptest.NewRequest("GET", ChangesPath, nil).WithContext(ctx))
		close(ended)
	}()
	<-w.waits
	for version := int64(2); version <= 1000; version++ {
		changes.publish(version)
	}
	w.release <- true
	<-w.waits
	cancel()
	w.release <- true
	<-ended
	assert.Equal(t, "retry: 1000\n\nid: 1\ndata: 1\n\nid: 1000\ndata: 1000\n\n", w.Body.String())
}
