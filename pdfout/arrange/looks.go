package arrange

// Rules of this file: the time is bounded that lettering takes, however crowded sheets are with
// lines, names and distances. Each may look at so many places for one that is free, and those of
// a set share what that is. A sheet that has looked at all of its own writes no more by its
// lines: words are in the key of their piece, distances are drawn where they are measured, no
// more letters stand in lines, and a panel that has no room by its piece is on a page after them.

// MostLooks is at how many places the sheets of a set look, all together: many times what any
// needs that can be read.
const MostLooks = 1_000_000

// look counts one more place that is looked at, and reports whether it may be.
func (s *Sheet) look() bool {
	if s.Looks == 0 {
		return false
	}
	s.Looks--
	return true
}
