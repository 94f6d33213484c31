package serve

import (
	_ "embed" // the script
	"fmt"
	"net/http"
	"strconv"
	"sync"
	"time"
)

// Rules of this file: nobody who listens can hold up who publishes, or others who listen.

// Where the server itself answers.
const (
	ChangesPath = "/changes"    // the stream of events
	ScriptPath  = "/changes.js" // the module with which a page hears of them
)

const (
	// heartbeat is how often a stream says something even when nothing has changed, so that
	// both ends find out when the other is gone.
	heartbeat = 15 * time.Second
	// retry is when a browser asks again for a stream that has ended.
	retry = time.Second
)

// changes is the version that was published last, and who waits for the next.
type changes struct {
	mutex     sync.Mutex
	published bool
	version   int64
	next      chan struct{} // closed by the next version
}

func newChanges() *changes { return &changes{next: make(chan struct{})} }

func (c *changes) publish(version int64) {
	c.mutex.Lock()
	defer c.mutex.Unlock()
	c.version, c.published = version, true
	close(c.next)
	c.next = make(chan struct{})
}

// newest returns the version that was published last, "" before the first, and what is closed
// when there is another.
func (c *changes) newest() (version string, next <-chan struct{}) {
	c.mutex.Lock()
	defer c.mutex.Unlock()
	if !c.published {
		return "", c.next
	}
	return strconv.FormatInt(c.version, 10), c.next
}

// ServeHTTP tells a tab the newest version, at once and whenever there is another, until the
// tab or the server goes away. A browser that comes back says what it was told last, and is
// told at once if there has been another since. WHATWG HTML, Server-sent events.
func (c *changes) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	w.Header().Set("Content-Type", "text/event-stream")
	if r.Method == http.MethodHead {
		return
	}
	stream := http.NewResponseController(w)
	say := func(words string) bool {
		// A recorder in a test has no deadline; a connection has.
		stream.SetWriteDeadline(time.Now().Add(longestAnswer))
		if _, err := fmt.Fprint(w, words); err != nil {
			return false
		}
		return stream.Flush() == nil
	}
	beat := time.NewTicker(heartbeat)
	defer beat.Stop()
	words, told := fmt.Sprintf("retry: %d\n\n", retry.Milliseconds()), r.Header.Get("Last-Event-ID")
	for {
		version, next := c.newest()
		if version != "" && version != told {
			words += fmt.Sprintf("id: %s\ndata: %s\n\n", version, version)
			told = version
		}
		if words != "" && !say(words) {
			return
		}
		words = ""
		select {
		case <-next:
		case <-beat.C:
			words = ": nothing new\n\n"
		case <-r.Context().Done():
			return
		}
	}
}

//go:embed changes.js
var script []byte

// serveScript gives a page the module with which it hears of changes.
func serveScript(w http.ResponseWriter, _ *http.Request) {
	w.Header().Set("Content-Type", "text/javascript; charset=utf-8")
	w.Write(script)
}
