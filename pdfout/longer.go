package pdfout

import (
	"math"
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/text"
)

// Rules of this file: the longer a line is that is measured, the less a ruler misses on
// it. A line can be measured where it is straight and runs nearly across its pages, or
// nearly down them, as they are printed; where its ends are seen, which are those of an
// outline, of a fold or of a stitch line, not an arrow's; and where it has a name to be
// found by. The rules of the first page are there for it. One that is whole on a page needs no joining, which may be off as well, and is
// measured rather than one over several that is only somewhat longer. Somebody may have
// measured any other straight line: of those only the lengths are known. Pages that lie
// where the first page stands are left out: what is across there is down on it.

const (
	// mostSlant is how much a line may slant that counts as one across or down: a tenth,
	// of which a hundredth of what the printer does the other way falls on it.
	mostSlant = 0.1
	// worthMeasuring is how many times the length of the check square's 4 in a line must
	// have to be measured in its place.
	worthMeasuring = 1.25
	// worthJoining is how many times as long as a line on one page another must be for
	// pages to be joined before it is measured.
	worthJoining = 1.5
	// sameLength bounds how much longer a line may be, in mm, and be no better than one
	// that was found before it.
	sameLength = 1.0
)

// Longer are the lines that are best measured, one across the page and one down it.
type Longer struct{ Across, Down Measurable }

// Measurable is a straight line, or a straight part of a line.
type Measurable struct {
	Line             // its Length is that of all the line
	Straight float64 // how long the straight part is, in mm; 0 where there is no such line
	Pages    []int   // the numbers of those it is on
}

// IsPart reports whether it is only part of its line.
func (m Measurable) IsPart() bool { return m.Length-m.Straight > sameLength }

// Where says where it is: "on page 5", "on pages 5 and 6, joined".
func (m Measurable) Where() string {
	where := "on " + text.Numbers("page", m.Pages)
	if len(m.Pages) > 1 {
		where += ", joined"
	}
	return where
}

// longer finds them: the rules, or lines of the pieces where these are longer.
func (b *Book) longer() Longer {
	across, down := b.ruleLines()
	lines := b.longestLines()
	return Longer{worthier(across, lines.Across), worthier(down, lines.Down)}
}

// longestLines finds those among the lines of the pieces. Of lines as long as each other the
// first is taken.
func (b *Book) longestLines() Longer {
	var whole, joined Longer
	least := worthMeasuring * paper.LargeSquare
	for _, s := range b.sheets {
		if b.otherWay(s) {
			continue
		}
		for _, p := range s.Pieces {
			for _, l := range p.Lines {
				if l.Length() < least || l.Name == "" || !hasEnds(l.Role) {
					continue
				}
				for _, part := range straightParts(l.Path(), least) {
					m := Measurable{Line{p.Name, l.Name, l.Role, l.Length()}, part.Length(), s.pagesOf(part)}
					if len(m.Pages) == 1 {
						whole.take(m, part)
					} else {
						joined.take(m, part)
					}
				}
			}
		}
	}
	return Longer{worthier(whole.Across, joined.Across), worthier(whole.Down, joined.Down)}
}

// ruleLines are the rules of the first page, as lines to be measured.
func (b *Book) ruleLines() (across, down Measurable) {
	_, foot, edge := b.longRules()
	line := func(name string, r rule) Measurable {
		return Measurable{Line{Name: name, Length: r.long()}, r.long(), []int{1}}
	}
	return line("the rule at the foot", foot), line("the rule at the left edge", edge)
}

// straights are the lengths of all straight lines that run across the pages, and of those that
// run down them.
type straights struct{ across, down lengths }

// lengths are some lengths, in mm.
type lengths []float64

// haveNear reports whether one of them is so many mm, give or take some.
func (all lengths) haveNear(mm, within float64) bool {
	return slices.ContainsFunc(all, func(one float64) bool { return math.Abs(one-mm) <= within })
}

// straights finds them: every straight part of every line, and the sides of the check
// squares.
func (b *Book) straights() straights {
	squares := lengths{paper.LargeSquare, paper.InnerSquare, paper.SmallSquare(b.set.Unit).Side}
	across, up := b.ruleLines()
	found := straights{append(slices.Clone(squares), across.Straight), append(squares, up.Straight)}
	for _, s := range b.all() {
		if b.otherWay(s) {
			continue
		}
		for _, p := range s.Pieces {
			for _, l := range p.Lines {
				for _, part := range straightParts(l.Path(), 0) {
					switch step, long := part[1].Sub(part[0]), part.Length(); {
					case math.Abs(step.X) < mostSlant*long:
						found.down = append(found.down, long)
					case math.Abs(step.Y) < mostSlant*long:
						found.across = append(found.across, long)
					}
				}
			}
		}
	}
	return found
}

// straightParts returns the straight parts of a path that are no shorter than least mm, each
// from point to point.
func straightParts(path plane.Path, least float64) []plane.Path {
	var parts []plane.Path
	path = path.WithoutStraightPoints()
	for i := 1; i < len(path); i++ {
		if path[i].Distance(path[i-1]) >= least {
			parts = append(parts, path[i-1:i+1])
		}
	}
	return parts
}

// worthier is the line to measure of one that is whole on a page and another, which may
// have to be joined.
func worthier(whole, other Measurable) Measurable {
	least := whole.Straight + sameLength
	if len(other.Pages) > 1 {
		least = worthJoining * whole.Straight
	}
	if other.Straight > least {
		return other
	}
	return whole
}

// hasEnds reports whether it can be seen where lines of a role end: not in an arrow, or in
// what is cut for a window.
func hasEnds(role mark.Role) bool {
	switch role {
	case mark.Arrow, mark.Grain, mark.Window, mark.Waste, mark.DrawHere, mark.Laid, mark.Notch, mark.Cross, mark.Match:
		return false
	}
	return true
}

// take takes a straight line of two points where it is longer than what there is.
func (l *Longer) take(m Measurable, line plane.Path) {
	step, better := line[1].Sub(line[0]), &l.Across
	switch {
	case math.Abs(step.X) < mostSlant*m.Straight:
		better = &l.Down
	case math.Abs(step.Y) >= mostSlant*m.Straight:
		return
	}
	if m.Straight > better.Straight+sameLength {
		*better = m
	}
}

// pagesOf returns the numbers of the pages that a straight line is on: of one where that
// shows both its ends.
func (s *laidSheet) pagesOf(line plane.Path) []int {
	var pages []int
	tree := plane.NewTree(line)
	for k := range s.Cells {
		p := s.page(k)
		if w := p.window; w.Holds(line[0]) && w.Holds(line[1]) {
			return []int{s.first + k}
		}
		if len(tree.Clip(p.core)) > 0 {
			pages = append(pages, s.first+k)
		}
	}
	return pages
}
