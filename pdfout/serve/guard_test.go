package serve

import (
	"io"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// asked is what a browser, or something else, asks of a server on port 8000.
type asked struct {
	name    string
	method  string
	target  string
	host    string
	headers http.Header
	body    io.Reader
}

// answered returns the answer to a request, by pages that all say "the page".
func answered(port int, a asked) *http.Response {
	server := &Server{port: port, changes: newChanges()}
	pages := http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) { io.WriteString(w, "the page") })
	if a.method == "" {
		a.method = http.MethodGet
	}
	if a.target == "" {
		a.target = "/"
	}
	r := httptest.NewRequest(a.method, a.target, a.body)
	r.Host = a.host
	for name, values := range a.headers {
		r.Header[name] = values
	}
	w := httptest.NewRecorder()
	server.guarded(pages).ServeHTTP(w, r)
	return w.Result()
}

func TestGuard(t *testing.T) {
	const here = "127.0.0.1:8000"
	// What a browser says of who asks. W3C, Fetch Metadata Request Headers.
	who := func(site, mode, dest string) http.Header {
		return http.Header{"Sec-Fetch-Site": {site}, "Sec-Fetch-Mode": {mode}, "Sec-Fetch-Dest": {dest}}
	}
	origin := func(names ...string) http.Header { return http.Header{"Origin": names} }
	for _, tt := range []struct {
		asked
		want int
	}{
		{asked{name: "by the address", host: here}, 200},
		{asked{name: "by the name of every machine for itself", host: "localhost:8000"}, 200},
		{asked{name: "any page", target: "/?show=views&view=round", host: here}, 200},
		{asked{name: "headers alone", method: "HEAD", host: here}, 200},

		{asked{name: "a name of elsewhere led to this machine", host: "patterns.example:8000"}, 421},
		{asked{name: "the same with the origin that fits it", host: "patterns.example:8000", headers: origin("http://patterns.example:8000")}, 421},
		{asked{name: "a name that begins alike", host: "127.0.0.1.patterns.example:8000"}, 421},
		{asked{name: "a name that ends alike", host: "patterns.localhost:8000"}, 421},
		{asked{name: "with a dot behind", host: "localhost.:8000"}, 421},
		{asked{name: "another port", host: "127.0.0.1:8001"}, 421},
		{asked{name: "no port", host: "127.0.0.1"}, 421},
		{asked{name: "another address of this machine", host: "127.0.0.2:8000"}, 421},
		{asked{name: "every address", host: "0.0.0.0:8000"}, 421},
		{asked{name: "the newer kind of address, which is not listened on", host: "[::1]:8000"}, 421},
		{asked{name: "the address written as one number", host: "2130706433:8000"}, 421},
		{asked{name: "the address written short", host: "127.1:8000"}, 421},
		{asked{name: "no host", host: ""}, 421},

		{asked{name: "one of these pages", host: here, headers: origin("http://127.0.0.1:8000")}, 200},
		{asked{name: "a page of the other name", host: here, headers: origin("http://localhost:8000")}, 403},
		{asked{name: "a page of elsewhere", host: here, headers: origin("https://patterns.example")}, 403},
		{asked{name: "another program of this machine", host: here, headers: origin("http://127.0.0.1:8001")}, 403},
		{asked{name: "the same by another protocol", host: here, headers: origin("https://127.0.0.1:8000")}, 403},
		{asked{name: "a page that hides where it is from", host: here, headers: origin("null")}, 403},
		{asked{name: "an empty origin", host: here, headers: origin("")}, 403},
		{asked{name: "two origins", host: here, headers: origin("http://127.0.0.1:8000", "https://patterns.example")}, 403},

		{asked{name: "the address typed in", host: here, headers: who("none", "navigate", "document")}, 200},
		{asked{name: "a script of these pages", host: here, headers: who("same-origin", "cors", "empty")}, 200},
		{asked{name: "a link in a page of elsewhere", host: here, headers: who("cross-site", "navigate", "document")}, 200},
		{asked{name: "a link in a page of another program of this machine", host: here, headers: who("same-site", "navigate", "document")}, 200},
		{asked{name: "a frame in a page of elsewhere", host: here, headers: who("cross-site", "navigate", "iframe")}, 403},
		{asked{name: "an object in a page of elsewhere", host: here, headers: who("cross-site", "navigate", "object")}, 403},
		{asked{name: "a picture in a page of elsewhere", host: here, headers: who("cross-site", "no-cors", "image")}, 403},
		{asked{name: "a script in a page of elsewhere", host: here, headers: who("cross-site", "no-cors", "script")}, 403},
		{asked{name: "data asked for by elsewhere", host: here, headers: who("cross-site", "cors", "empty")}, 403},
		{asked{name: "data asked for by another program of this machine", host: here, headers: who("same-site", "cors", "empty")}, 403},
		{asked{name: "the changes asked for by elsewhere", target: ChangesPath, host: here, headers: who("cross-site", "cors", "empty")}, 403},

		{asked{name: "something to be taken in", method: "POST", host: here}, 405},
		{asked{name: "something to be put there", method: "PUT", host: here}, 405},
		{asked{name: "something to be taken away", method: "DELETE", host: here}, 405},
		{asked{name: "what may be asked", method: "OPTIONS", host: here}, 405},
		{asked{name: "a way through", method: "CONNECT", target: "127.0.0.1:22", host: here}, 405},
		{asked{name: "an echo", method: "TRACE", host: here}, 405},
		{asked{name: "a method that nobody knows", method: "LOOK", host: here}, 405},
		{asked{name: "a body", host: here, body: strings.NewReader("a body")}, 413},
		{asked{name: "a body of unknown length", host: here, body: io.MultiReader(strings.NewReader("a body"))}, 413},
	} {
		t.Run(tt.name, func(t *testing.T) {
			answer := answered(8000, tt.asked)
			body, err := io.ReadAll(answer.Body)
			assert.NoError(t, err)
			assert.Equal(t, tt.want, answer.StatusCode)
			assert.Equal(t, tt.want == 200, string(body) == "the page", "whether the page is given: %q", body)
			assert.Equal(t, tt.want == 405, answer.Header.Get("Allow") == "GET, HEAD", "whether it says what may be asked")
			assert.Equal(t, tt.want != 200, answer.Header.Get("Connection") == "close", "whether no more is read")
			assertHeaders(t, answer.Header)
			if tt.want != 200 {
				assert.Equal(t, "text/plain; charset=utf-8", answer.Header.Get("Content-Type"))
				assert.Regexp(t, `^[A-Z][^<>]+\.\n$`, string(body), "why it is refused")
			}
		})
	}
}

// assertHeaders holds what is said with every answer. The policy is written out once more:
// a word that is lost from it opens the pages to what it kept out.
func assertHeaders(t *testing.T, header http.Header) {
	t.Helper()
	assert.Equal(t, "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; font-src 'self'; connect-src 'self'; "+
		"base-uri 'none'; form-action 'self'; frame-ancestors 'none'", header.Get("Content-Security-Policy"))
	assert.Equal(t, "nosniff", header.Get("X-Content-Type-Options"))
	assert.Equal(t, "no-referrer", header.Get("Referrer-Policy"))
	assert.Equal(t, "same-origin", header.Get("Cross-Origin-Resource-Policy"))
	assert.Equal(t, "same-origin", header.Get("Cross-Origin-Opener-Policy"))
	assert.Equal(t, "no-store", header.Get("Cache-Control"))
	assert.Contains(t, header.Get("Permissions-Policy"), "camera=()")
	assert.Empty(t, header.Get("Access-Control-Allow-Origin"))
}

// A browser leaves out the port that is usual for the protocol.
func TestHostOnThePortOfTheProtocol(t *testing.T) {
	assert.Equal(t, 200, answered(80, asked{host: "127.0.0.1"}).StatusCode)
	assert.Equal(t, 200, answered(80, asked{host: "localhost:80"}).StatusCode)
	assert.Equal(t, 421, answered(80, asked{host: "patterns.example"}).StatusCode)
}
