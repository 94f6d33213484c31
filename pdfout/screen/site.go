package screen

import (
	"bytes"
	"embed"
	"io/fs"
	"mime"
	"net/http"
	"path"
	"path/filepath"
	"strconv"
	"strings"
	"sync"
	"sync/atomic"

	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/gomono"
	"golang.org/x/image/font/gofont/goregular"
)

// Rules of this file: all that a browser may ask for. A path that is none of these is not
// found. The files are part of the program. That only a browser on this machine asks, and only
// to read, is the affair of whoever serves the Site.

// The paths, but "/", the page, and those of the files.
const (
	nowPath    = "/now"        // what of the page changes with the file
	printPath  = "/sheets.pdf" // what sheet would make
	lengthPath = "/length"     // what was measured, in words
)

//go:embed *.css *.svg script/*.js
var embedded embed.FS

// files are those of the page, by their paths.
var files = sync.OnceValue(func() map[string][]byte {
	all := map[string][]byte{
		"/go-regular.ttf": goregular.TTF,
		"/go-bold.ttf":    gobold.TTF,
		"/go-mono.ttf":    gomono.TTF,
	}
	for _, pattern := range []string{"*.css", "*.svg", "script/*.js"} {
		names, err := fs.Glob(embedded, pattern)
		if err != nil {
			panic(err) // the patterns are written here
		}
		for _, name := range names {
			if all["/"+path.Base(name)], err = embedded.ReadFile(name); err != nil {
				panic(err) // it is part of the program
			}
		}
	}
	return all
})

// kinds are the kinds of the files, by their endings.
var kinds = map[string]string{
	".css": "text/css; charset=utf-8",
	".js":  "text/javascript; charset=utf-8",
	".svg": "image/svg+xml",
	".ttf": "font/ttf",
}

// Site answers a browser. Before Show it has nothing to show.
type Site struct {
	http.Handler
	scene  atomic.Pointer[Scene]
	looked atomic.Pointer[Choice] // last
	ahead  atomic.Bool            // something is made before it is asked for
}

// NewSite returns a Site without a scene.
func NewSite() *Site {
	s := &Site{}
	s.Show(&Scene{})
	mux := http.NewServeMux()
	mux.HandleFunc("/{$}", s.page)
	mux.HandleFunc(nowPath, s.now)
	mux.HandleFunc(printPath, s.print)
	mux.HandleFunc(lengthPath, s.length)
	for at, data := range files() {
		mux.HandleFunc(at, func(w http.ResponseWriter, _ *http.Request) { send(w, kinds[path.Ext(at)], data) })
	}
	s.Handler = mux
	return s
}

// Show shows another scene from now on, which is not changed any more. What was looked at last
// is begun at once, for it will be asked for in a moment; of many scenes in a row that of a few.
func (s *Site) Show(scene *Scene) {
	s.scene.Store(scene)
	c := s.looked.Load()
	if c == nil || !s.ahead.CompareAndSwap(false, true) {
		return
	}
	go func() {
		defer s.ahead.Store(false)
		scene.begin(*c)
	}()
}

// send answers with a file.
func send(w http.ResponseWriter, kind string, data []byte) {
	w.Header().Set("Content-Type", kind)
	w.Header().Set("Content-Length", strconv.Itoa(len(data)))
	_, _ = w.Write(data) // who has gone needs no answer
}

// page answers with the whole page.
func (s *Site) page(w http.ResponseWriter, r *http.Request) { s.write(w, r, "page") }

// now answers with what of the page changes with the file or the choice.
func (s *Site) now(w http.ResponseWriter, r *http.Request) { s.write(w, r, "now") }

// write answers with a template.
func (s *Site) write(w http.ResponseWriter, r *http.Request, template string) {
	c := ChoiceOf(r.URL.Query())
	s.looked.Store(&c)
	var out bytes.Buffer
	if err := templates().ExecuteTemplate(&out, template, newPage(s.scene.Load(), c)); err != nil {
		http.Error(w, "the page cannot be made: "+err.Error(), http.StatusInternalServerError)
		return
	}
	send(w, "text/html; charset=utf-8", out.Bytes())
}

// print answers with the PDF of a view.
func (s *Site) print(w http.ResponseWriter, r *http.Request) {
	scene := s.scene.Load()
	view := scene.view(ChoiceOf(r.URL.Query()))
	if view == nil {
		http.Error(w, "there is nothing to print yet", http.StatusNotFound)
		return
	}
	var pdf bytes.Buffer
	if err := view.PDF(&pdf); err != nil {
		http.Error(w, err.Error(), http.StatusConflict)
		return
	}
	name := strings.TrimSuffix(filepath.Base(scene.File), filepath.Ext(scene.File)) + ".pdf"
	w.Header().Set("Content-Disposition", mime.FormatMediaType("inline", map[string]string{"filename": name}))
	send(w, "application/pdf", pdf.Bytes())
}

// length answers with what was measured.
func (s *Site) length(w http.ResponseWriter, r *http.Request) {
	words, ok := measured(r.URL.Query(), s.scene.Load().Unit)
	if !ok {
		http.Error(w, "that is no length", http.StatusBadRequest)
		return
	}
	send(w, "text/plain; charset=utf-8", []byte(words))
}
