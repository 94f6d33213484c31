package serve

import "net/http"

// begun is an answer of which it is known whether a part of it is on its way.
type begun struct {
	http.ResponseWriter
	yes bool
}

// WriteHeader begins the answer, but for a status that only announces it.
func (b *begun) WriteHeader(status int) {
	b.yes = b.yes || status >= http.StatusOK
	b.ResponseWriter.WriteHeader(status)
}

// Write begins the answer too.
func (b *begun) Write(part []byte) (int, error) {
	b.yes = true
	return b.ResponseWriter.Write(part)
}

// Unwrap lets http.ResponseController find what lies below.
func (b *begun) Unwrap() http.ResponseWriter { return b.ResponseWriter }

// withoutMishap lets a handler answer. Where it panics the browser is told so in plain words,
// or where a part of the answer is on its way it is broken off, so that no half of a page
// passes for the whole. The trace goes to nobody: the server is to go on, and what a page
// holds is not for the screen of a browser.
func withoutMishap(pages http.Handler, w http.ResponseWriter, r *http.Request) {
	answer := &begun{ResponseWriter: w}
	defer func() {
		switch mishap := recover(); {
		case mishap == nil:
		case answer.yes, mishap == http.ErrAbortHandler:
			panic(http.ErrAbortHandler)
		default:
			header := w.Header()
			clear(header)
			setHeaders(header)
			plainly(w, http.StatusInternalServerError, "This page could not be made. The mistake is one of tuckmark, not of your file.\n")
		}
	}()
	pages.ServeHTTP(answer, r)
}
