package serve

import (
	"bufio"
	"context"
	"errors"
	"fmt"
	"io"
	"net"
	"net/http"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/fault"
)

// running starts a server on a free port. What is returned ends it and waits until it has.
func running(t *testing.T, pages http.Handler) (*Server, func()) {
	t.Helper()
	server, err := Listen(0)
	require.NoError(t, err)
	ctx, cancel := context.WithCancel(context.Background())
	ended := make(chan error, 1)
	go func() { ended <- server.Run(ctx, pages) }()
	end := func() {
		cancel()
		if err, first := <-ended; first {
			close(ended)
			assert.NoError(t, err)
		}
	}
	t.Cleanup(end)
	return server, end
}

// saying is pages that all say the same.
func saying(words string) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, _ *http.Request) { io.WriteString(w, words) })
}

// browser asks without the connections of other tests.
func browser(t *testing.T) *http.Client {
	ways := &http.Transport{}
	t.Cleanup(ways.CloseIdleConnections)
	return &http.Client{Transport: ways}
}

func TestServerOnThisMachineAlone(t *testing.T) {
	server, _ := running(t, saying("the page"))
	address := server.listener.Addr().(*net.TCPAddr)
	assert.True(t, address.IP.Equal(net.IPv4(127, 0, 0, 1)), "it listens on %s", address)
	assert.Equal(t, fmt.Sprintf("http://127.0.0.1:%d/", address.Port), server.Address())
	answer, err := browser(t).Get(server.Address())
	require.NoError(t, err)
	defer answer.Body.Close()
	body, err := io.ReadAll(answer.Body)
	require.NoError(t, err)
	assert.Equal(t, "the page", string(body))
	assertHeaders(t, answer.Header)
}

func TestListenOnAGivenPort(t *testing.T) {
	first, end := running(t, saying("the first"))
	_, err := Listen(first.port)
	var f *fault.Fault
	require.ErrorAs(t, err, &f)
	assert.Equal(t, fmt.Sprintf("port %d is in use, perhaps by another tuckmark", first.port), f.Cause)
	assert.Equal(t, "leave the port out, and one that is free is taken", f.Hint)

	end()
	second, err := Listen(first.port)
	require.NoError(t, err, "the port is free again")
	assert.Equal(t, first.Address(), second.Address())
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	assert.NoError(t, second.Run(ctx, saying("")), "ended before it began")

	for _, port := range []int{-1, 65536} {
		_, err := Listen(port)
		require.ErrorAs(t, err, &f)
		assert.Equal(t, fmt.Sprintf("there is no port %d", port), f.Cause)
		assert.NotEmpty(t, f.Hint)
	}
	_, err = Listen(6000)
	require.ErrorAs(t, err, &f)
	assert.Equal(t, "browsers do not open port 6000, which is kept for other things", f.Cause)
	assert.Equal(t, "port 80 cannot be taken: permission denied", notTaken(80, &net.OpError{Err: errors.New("permission denied")}).(*fault.Fault).Cause)
}

// A page that cannot be made is told of, and the next one is made.
func TestMishap(t *testing.T) {
	pages := http.NewServeMux()
	pages.HandleFunc("/whole", func(w http.ResponseWriter, _ *http.Request) { io.WriteString(w, "the page") })
	pages.HandleFunc("/at-once", func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Length", "1000")
		w.Header().Set("Content-Encoding", "gzip")
		panic("piece front")
	})
	pages.HandleFunc("/half", func(w http.ResponseWriter, _ *http.Request) {
		io.WriteString(w, "half of the page")
		http.NewResponseController(w).Flush()
		panic("piece front")
	})
	server, _ := running(t, pages)
	client := browser(t)

	answer, err := client.Get(server.Address() + "at-once")
	require.NoError(t, err)
	body, err := io.ReadAll(answer.Body)
	answer.Body.Close()
	require.NoError(t, err)
	assert.Equal(t, 500, answer.StatusCode)
	assert.Equal(t, "This page could not be made. The mistake is one of tuckmark, not of your file.\n", string(body))
	assertHeaders(t, answer.Header)

	answer, err = client.Get(server.Address() + "half")
	require.NoError(t, err)
	body, err = io.ReadAll(answer.Body)
	answer.Body.Close()
	assert.Equal(t, "half of the page", string(body))
	assert.ErrorIs(t, err, io.ErrUnexpectedEOF, "half a page passes for a whole one")

	answer, err = client.Get(server.Address() + "whole")
	require.NoError(t, err)
	answer.Body.Close()
	assert.Equal(t, 200, answer.StatusCode)
}

// Headers without end are not read to their end.
func TestEndlessHeaders(t *testing.T) {
	server, _ := running(t, saying("the page"))
	to, err := net.Dial("tcp4", server.listener.Addr().String())
	require.NoError(t, err)
	defer to.Close()
	go fmt.Fprintf(to, "GET / HTTP/1.1\r\nHost: %s\r\nX-Long: %s\r\n\r\n", server.listener.Addr(), strings.Repeat("x", 100_000))
	answer, err := http.ReadResponse(bufio.NewReader(to), nil)
	require.NoError(t, err)
	answer.Body.Close()
	assert.Equal(t, http.StatusRequestHeaderFieldsTooLarge, answer.StatusCode)
}

// The end waits neither for streams, nor for a page that is being made, nor for a browser
// that has asked for half of something.
func TestEndAtOnce(t *testing.T) {
	begun, heeded := make(chan bool), make(chan bool, 1)
	pages := http.NewServeMux()
	pages.HandleFunc("/slow", func(w http.ResponseWriter, r *http.Request) {
		begun <- true
		<-r.Context().Done()
		heeded <- true
	})
	release := make(chan bool)
	pages.HandleFunc("/deaf", func(w http.ResponseWriter, r *http.Request) {
		begun <- true
		<-release
	})
	defer close(release)
	server, end := running(t, pages)
	client := browser(t)
	client.Timeout = time.Minute
	for _, path := range []string{"slow", "deaf"} {
		go func() {
			if answer, err := client.Get(server.Address() + path); err == nil {
				answer.Body.Close()
			}
		}()
		<-begun
	}
	tab := listening(t, server, "")
	half, err := net.Dial("tcp4", server.listener.Addr().String())
	require.NoError(t, err)
	defer half.Close()
	fmt.Fprint(half, "GET / HTTP/1.1\r\nHost:")

	end() // waits until Run has returned
	assert.True(t, <-heeded, "who makes a page hears that it is not wanted any more")
	_, more := <-tab.versions
	assert.False(t, more, "the stream goes on")
	_, err = net.Dial("tcp4", server.listener.Addr().String())
	assert.Error(t, err, "somebody still answers")
}

// What guards an answer hides nothing of it that a stream needs.
func TestAnswersCanBeControlled(t *testing.T) {
	server, _ := running(t, http.HandlerFunc(func(w http.ResponseWriter, _ *http.Request) {
		answer := http.NewResponseController(w)
		assert.NoError(t, answer.SetWriteDeadline(time.Time{}))
		assert.NoError(t, answer.Flush())
	}))
	answer, err := browser(t).Get(server.Address())
	require.NoError(t, err)
	answer.Body.Close()
}
