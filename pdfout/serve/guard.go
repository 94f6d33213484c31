package serve

import (
	"net"
	"net/http"
	"slices"
	"strconv"
)

// Rules of this file: whatever is not known to be asked by these pages, or by whoever sits at
// this machine, is refused, in words that a maker understands who meets them by chance.

// loopback is the address by which a machine reaches itself and nobody else does.
const loopback = "127.0.0.1"

// refusal is why a request is not answered.
type refusal struct {
	status int
	words  string
}

var (
	otherHost   = &refusal{http.StatusMisdirectedRequest, "These pages are shown on this machine alone. Open them by the address that tuckmark printed.\n"}
	otherOrigin = &refusal{http.StatusForbidden, "A page of elsewhere asked for this. Nothing is given to it.\n"}
	otherMethod = &refusal{http.StatusMethodNotAllowed, "These pages can only be looked at.\n"}
	withBody    = &refusal{http.StatusRequestEntityTooLarge, "These pages can only be looked at: nothing may be sent to them.\n"}
)

// guarded returns the pages and the changes behind the guard.
func (s *Server) guarded(pages http.Handler) http.Handler {
	inside := http.NewServeMux()
	inside.Handle("/", pages)
	inside.Handle(ChangesPath, s.changes)
	inside.HandleFunc(ScriptPath, serveScript)
	hosts := hostsOf(s.port)
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		setHeaders(w.Header())
		if no := refused(r, hosts); no != nil {
			refuse(w, no)
			return
		}
		withoutMishap(inside, w, r)
	})
}

// hostsOf returns the names by which a server on a port is called. A browser leaves out
// port 80.
func hostsOf(port int) []string {
	hosts := []string{}
	for _, name := range []string{loopback, "localhost"} {
		hosts = append(hosts, net.JoinHostPort(name, strconv.Itoa(port)))
		if port == 80 {
			hosts = append(hosts, name)
		}
	}
	return hosts
}

// refused returns why a request is not answered, or nil if it is.
func refused(r *http.Request, hosts []string) *refusal {
	switch {
	case !slices.Contains(hosts, r.Host):
		return otherHost
	case !sameOrigin(r):
		return otherOrigin
	case r.Method != http.MethodGet && r.Method != http.MethodHead:
		return otherMethod
	case r.ContentLength != 0: // -1 where the length is not said
		return withBody
	}
	return nil
}

// sameOrigin reports whether one of these pages asks, or whoever sits at the browser: by the
// address, a bookmark, or a link of elsewhere that is to fill a tab. What fills a frame
// inside another page is asked for by that page. Browsers that do not say who asks, older
// ones, say the origin at least where a script could read the answer.
func sameOrigin(r *http.Request) bool {
	if origins := r.Header.Values("Origin"); len(origins) > 0 {
		if len(origins) > 1 || origins[0] != "http://"+r.Host {
			return false
		}
	}
	switch r.Header.Get("Sec-Fetch-Site") {
	case "", "same-origin", "none":
		return true
	}
	return r.Header.Get("Sec-Fetch-Mode") == "navigate" && r.Header.Get("Sec-Fetch-Dest") == "document"
}

// refuse answers with why nothing else is answered, and closes the connection: whatever may
// follow is not read.
func refuse(w http.ResponseWriter, no *refusal) {
	w.Header().Set("Connection", "close")
	if no == otherMethod {
		w.Header().Set("Allow", "GET, HEAD")
	}
	plainly(w, no.status, no.words)
}

// plainly answers with a sentence.
func plainly(w http.ResponseWriter, status int, words string) {
	w.Header().Set("Content-Type", "text/plain; charset=utf-8")
	w.WriteHeader(status)
	w.Write([]byte(words))
}
