package serve

import (
	"context"
	"errors"
	"fmt"
	"io"
	"log"
	"net"
	"net/http"
	"slices"
	"strconv"
	"sync"
	"syscall"
	"time"

	"tuckmark/marking/fault"
)

// Rules of this file: whatever is begun here ends with Run, and Run ends at once.

// How long a browser may take, and how much it may say before it is heard. An answer that
// is not taken is given up, a stream too: it has as long for each event.
const (
	longestAsking = 10 * time.Second
	longestAnswer = time.Minute
	longestIdle   = 2 * time.Minute
	mostAsked     = 16 << 10 // bytes of a request's headers; net/http adds 4 kB
)

// longestLeave is how long Run waits for pages that are being made when it ends, and do not
// heed that nobody wants them any more.
const longestLeave = 20 * time.Millisecond

// Server is a port of this machine on which pages are shown.
type Server struct {
	listener net.Listener
	port     int
	changes  *changes
}

// notOpened are the ports, of those that anybody may take, that browsers do not open, or not
// all of them: other protocols have them. WHATWG, Fetch, "Port blocking".
var notOpened = []int{1719, 1720, 1723, 2049, 3659, 4045, 4190, 5060, 5061, 6000, 6566, 6665, 6666, 6667, 6668, 6669, 6679, 6697, 10080}

// Listen takes a port of 127.0.0.1; 0 takes any that is free. A port that cannot be taken, or
// that browsers do not open, is a fault.Fault. Run gives it free again.
func Listen(port int) (*Server, error) {
	if slices.Contains(notOpened, port) {
		return nil, &fault.Fault{Cause: fmt.Sprintf("browsers do not open port %d, which is kept for other things", port), Hint: leaveOut}
	}
	if port < 0 || port > 65535 {
		return nil, &fault.Fault{
			Cause: fmt.Sprintf("there is no port %d", port),
			Hint:  "take a number from 1024 to 65535, or 0 for any port that is free",
		}
	}
	listener, err := net.Listen("tcp4", net.JoinHostPort(loopback, strconv.Itoa(port)))
	if err != nil {
		return nil, notTaken(port, err)
	}
	return &Server{
		listener: listener,
		port:     listener.Addr().(*net.TCPAddr).Port,
		changes:  newChanges(),
	}, nil
}

// leaveOut is what always helps.
const leaveOut = "leave the port out, and one that is free is taken"

// addressInUse is what Windows says where other systems say syscall.EADDRINUSE.
const addressInUse = syscall.Errno(10048)

// notTaken says why a port cannot be taken.
func notTaken(port int, err error) error {
	switch {
	case port == 0:
		return &fault.Fault{Cause: "this machine gives no port to show pages on: " + fault.Innermost(err)}
	case errors.Is(err, syscall.EADDRINUSE), errors.Is(err, addressInUse):
		return &fault.Fault{Cause: fmt.Sprintf("port %d is in use, perhaps by another tuckmark", port), Hint: leaveOut}
	}
	return &fault.Fault{Cause: fmt.Sprintf("port %d cannot be taken: %s", port, fault.Innermost(err)), Hint: leaveOut}
}

// Address is where the pages are, to be opened in a browser: "http://127.0.0.1:8000/".
func (s *Server) Address() string {
	return fmt.Sprintf("http://%s/", net.JoinHostPort(loopback, strconv.Itoa(s.port)))
}

// Publish tells every tab that there is another version of what the pages show. It waits for
// nobody, and may be called before Run and by several at once. A tab that comes later is told
// the version that was published last; before the first one nothing is told.
//
// Tabs ask again for what they show when they are told another number than that of what they
// show, so numbers must differ also from those of an earlier run on the same port.
func (s *Server) Publish(version int64) { s.changes.publish(version) }

// Run answers with what the pages write until the context ends, and then at once: it waits
// for no tab, and only for a moment for a page that is being made. The port is free when it
// returns. An error is that of a port that was lost.
//
// The server itself answers on ChangesPath and ScriptPath.
func (s *Server) Run(ctx context.Context, pages http.Handler) error {
	var open sync.WaitGroup
	server := &http.Server{
		Handler:                      s.guarded(pages),
		DisableGeneralOptionsHandler: true, // the guard answers
		ReadTimeout:                  longestAsking,
		WriteTimeout:                 longestAnswer,
		IdleTimeout:                  longestIdle,
		MaxHeaderBytes:               mostAsked,
		ErrorLog:                     log.New(io.Discard, "", 0), // of browsers that go away
		BaseContext:                  func(net.Listener) context.Context { return ctx },
		ConnState: func(_ net.Conn, state http.ConnState) {
			switch state {
			case http.StateNew:
				open.Add(1)
			case http.StateClosed:
				open.Done()
			}
		},
	}
	stop := context.AfterFunc(ctx, func() { server.Close() })
	defer stop()
	err := server.Serve(s.listener)
	server.Close() // also what was taken in meanwhile
	if ctx.Err() != nil {
		err = nil
	}
	left := make(chan struct{})
	go func() {
		open.Wait()
		close(left)
	}()
	select {
	case <-left:
	case <-time.After(longestLeave):
	}
	return err
}
