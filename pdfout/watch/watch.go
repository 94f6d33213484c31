package watch

import (
	"slices"
	"sync"
	"time"
)

// Rules of this file: one goroutine knows everything, and nobody who listens holds it up.

const (
	// quiet is how long nothing must come before a save counts as done. The steps of one
	// save are far less than a millisecond apart, and what an editor waits for (that the disk
	// has the whole file) comes behind the last of them.
	quiet = 8 * time.Millisecond
	// longest is when a save is told of though it does not end: a file that is written to
	// without a pause, or that was there and stays away or empty.
	longest = 200 * time.Millisecond
	// again is how often the files themselves are asked.
	again = 500 * time.Millisecond
)

// Watch tells of saves until it is closed.
type Watch struct {
	changes chan struct{}
	lists   chan []string
	close   sync.Once
	closing chan struct{}
	ended   chan struct{}
}

// New watches no file yet. It never fails: where the system tells nothing of files, they are
// asked.
func New() *Watch { return with(newNotices(), time.NewTicker(again).C) }

// with watches by what the system tells, and asks when it is time.
func with(notices *notices, asking <-chan time.Time) *Watch {
	w := &Watch{
		changes: make(chan struct{}, 1),
		lists:   make(chan []string),
		closing: make(chan struct{}),
		ended:   make(chan struct{}),
	}
	go w.watch(notices, asking)
	return w
}

// On watches these files, by names as os.Open takes them, instead of those before. A file that
// is not there is watched for.
//
// A file that was not in the list before is told of once, in any case: it may have changed
// since it was read.
func (w *Watch) On(files []string) {
	select {
	case w.lists <- slices.Clone(files):
	case <-w.ended:
	}
}

// Changes has a word for each save, one for several that nobody has listened to, and is closed
// by Close.
func (w *Watch) Changes() <-chan struct{} { return w.changes }

// Close ends the watch, and waits until it has ended.
func (w *Watch) Close() {
	w.close.Do(func() { close(w.closing) })
	<-w.ended
}

// watch tells of saves until it is to end.
func (w *Watch) watch(notices *notices, asking <-chan time.Time) {
	defer close(w.ended)
	defer close(w.changes)
	defer notices.close()
	var (
		files []string
		told  = map[string]stamp{} // each file as it stood when it was told of last
		save  save
	)
	for {
		select {
		case <-w.closing:
			return
		case files = <-w.lists:
			keepOnly(told, files)
			notices.on(files)
			save.goesOn()
		case <-notices.come:
			if notices.take() {
				save.touch()
			} else {
				save.begin() // whatever else changes in the folder does not prolong the waiting
			}
		case <-asking:
			notices.on(files)
			if differ(told, stamps(files)) {
				save.begin()
			}
		case <-save.quiet:
			notices.on(files) // folders and links may be other ones
			now := stamps(files)
			if torn(told, now) && save.mayGoOn() {
				save.goesOn()
				continue
			}
			if save.touched || differ(told, now) {
				told = now
				select {
				case w.changes <- struct{}{}:
				default: // a word is there that nobody has listened to
				}
			}
			save.end()
		}
	}
}
