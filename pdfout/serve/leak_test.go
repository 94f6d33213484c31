package serve

import (
	"context"
	"fmt"
	"io"
	"net/http"
	"net/http/httptrace"
	"os"
	"runtime"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Rules of this file: what is counted is counted when both ends have come to rest, which is
// waited for by looking again; only what never comes to rest fails.

// patience bounds for how long is looked again.
const patience = 30 * time.Second

// comesTo looks until a number is no more than it was.
func comesTo(t *testing.T, want int, number func() int, what string) {
	t.Helper()
	for began := time.Now(); number() > want; time.Sleep(time.Millisecond) {
		if time.Since(began) > patience {
			all := make([]byte, 1<<20)
			require.LessOrEqual(t, number(), want, "%s; these are still at work:\n%s", what, all[:runtime.Stack(all, true)])
		}
	}
}

// openFiles counts what this process has open, -1 where that cannot be seen.
func openFiles() int {
	open, err := os.ReadDir("/proc/self/fd")
	if err != nil {
		return -1
	}
	return len(open)
}

// A thousand reloads beside twenty streams, each over a connection of its own as by a
// browser that is started anew, and streams that come and go.
func TestReloadsLeaveNothing(t *testing.T) {
	server, end := running(t, saying("the page"))
	load := func() {
		ways := &http.Transport{DisableKeepAlives: true}
		answer, err := (&http.Client{Transport: ways}).Get(server.Address())
		require.NoError(t, err)
		_, err = io.Copy(io.Discard, answer.Body)
		require.NoError(t, err)
		answer.Body.Close()
	}
	load()
	resting, files := runtime.NumGoroutine(), openFiles()
	var tabs []*tab
	for range 20 {
		tabs = append(tabs, listening(t, server, ""))
	}
	for version := range 1000 {
		load()
		server.Publish(int64(version))
		s := listening(t, server, "")
		s.until(fmt.Sprint(version))
		s.close()
	}
	for _, s := range tabs {
		s.until("999")
		s.close()
	}
	comesTo(t, resting, runtime.NumGoroutine, "goroutines")
	comesTo(t, files, openFiles, "open files")
	end()
	comesTo(t, resting-1, runtime.NumGoroutine, "goroutines after the end")
}

// Ending with streams open leaves nothing of the server, twenty times in a row.
func TestEndsLeaveNothing(t *testing.T) {
	resting, files := runtime.NumGoroutine(), openFiles()
	for range 20 {
		server, end := running(t, saying("the page"))
		server.Publish(1)
		for range 10 {
			listening(t, server, "").until("1")
		}
		end()
	}
	// The tabs of the test close their side when they find that the stream has ended.
	comesTo(t, resting, runtime.NumGoroutine, "goroutines")
	comesTo(t, files, openFiles, "open files")
}

// A connection that is used again by one page after another is one connection.
func TestPagesShareAConnection(t *testing.T) {
	server, _ := running(t, saying("the page"))
	client, used := browser(t), map[string]bool{}
	trace := &httptrace.ClientTrace{GotConn: func(c httptrace.GotConnInfo) { used[c.Conn.LocalAddr().String()] = true }}
	for range 10 {
		r, err := http.NewRequestWithContext(httptrace.WithClientTrace(context.Background(), trace), "GET", server.Address(), strings.NewReader(""))
		require.NoError(t, err)
		answer, err := client.Do(r)
		require.NoError(t, err)
		_, err = io.Copy(io.Discard, answer.Body)
		require.NoError(t, err)
		answer.Body.Close()
	}
	assert.Len(t, used, 1)
}
