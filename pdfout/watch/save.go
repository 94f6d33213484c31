package watch

import "time"

// save is what comes in steps and is told of once. The zero save has not begun.
type save struct {
	began   time.Time
	touched bool             // one of the files was named, not only something beside it
	quiet   <-chan time.Time // nil before it has begun
}

// begin waits for quiet, if nothing does so yet.
func (s *save) begin() {
	if s.quiet == nil {
		s.began = time.Now()
		s.quiet = time.After(quiet)
	}
}

// touch takes in that one of the files was named.
func (s *save) touch() {
	s.touched = true
	s.goesOn()
}

// goesOn waits for quiet once more, but not for ever.
func (s *save) goesOn() {
	s.begin()
	if s.mayGoOn() {
		s.quiet = time.After(quiet)
	}
}

// mayGoOn reports whether a save that began then may still be under way.
func (s *save) mayGoOn() bool { return time.Since(s.began) < longest }

// end forgets the save.
func (s *save) end() { *s = save{} }
