package watch

import (
	"path/filepath"
	"slices"
	"sync"

	"github.com/fsnotify/fsnotify"
)

// notices is what the system tells of the folders in which files lie. It is collected as it
// comes: on some systems no folder can be watched while a notice waits to be taken.
type notices struct {
	watcher *fsnotify.Watcher // nil where the system tells nothing
	come    chan struct{}     // has a word when there is something to take
	ended   sync.WaitGroup

	mutex   sync.Mutex
	names   map[string]bool // that are told of as ours
	touched bool            // one of them was
}

// newNotices takes what the system tells, which may be nothing.
func newNotices() *notices {
	n := &notices{come: make(chan struct{}, 1)}
	watcher, err := fsnotify.NewWatcher()
	if err != nil {
		return n // the files themselves are asked
	}
	n.watcher = watcher
	n.ended.Go(n.collect)
	return n
}

// collect takes notices until there are no more. Those that the system could not keep up
// with are one error among others: something has changed.
func (n *notices) collect() {
	events, errors := n.watcher.Events, n.watcher.Errors
	for events != nil || errors != nil {
		select {
		case event, more := <-events:
			if !more {
				events = nil
			} else if event.Op != fsnotify.Chmod { // whose file it is, who may read it: no save
				n.note(event.Name)
			}
		case _, more := <-errors:
			if !more {
				errors = nil
			} else {
				n.note("")
			}
		}
	}
}

// note says that something has changed by a name, "" if it is not known.
func (n *notices) note(name string) {
	n.mutex.Lock()
	n.touched = n.touched || n.names[name]
	n.mutex.Unlock()
	select {
	case n.come <- struct{}{}:
	default:
	}
}

// take reports whether a name of ours was told of since it was asked last.
func (n *notices) take() (touched bool) {
	n.mutex.Lock()
	defer n.mutex.Unlock()
	touched, n.touched = n.touched, false
	return touched
}

// on watches the folders through which files are found, and no others. A folder that cannot
// be watched is left.
func (n *notices) on(files []string) {
	names, folders := map[string]bool{}, map[string]bool{}
	for _, file := range files {
		for _, name := range trail(file) {
			names[name] = true
			folders[filepath.Dir(name)] = true
		}
	}
	n.mutex.Lock()
	n.names = names
	n.mutex.Unlock()
	if n.watcher == nil {
		return
	}
	watched := n.watcher.WatchList() // without those that are gone
	for folder := range folders {
		if !slices.Contains(watched, folder) {
			n.watcher.Add(folder)
		}
	}
	for _, folder := range watched {
		if !folders[folder] {
			n.watcher.Remove(folder)
		}
	}
}

// close ends it.
func (n *notices) close() {
	if n.watcher != nil {
		n.watcher.Close()
	}
	n.ended.Wait()
}
