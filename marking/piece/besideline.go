package piece

import (
	"cmp"
	"math"
	"slices"

	"tuckmark/marking/plane"
	"tuckmark/marking/source"
)

// Rules of this file. A line beside a straight edge, or beside a straight line, is straight
// and parallel to it. It runs from cutting line to cutting line; or from an edge, as long as
// the file says, measured from that edge as it is drawn; or between two edges or lines that
// it crosses. Lines may name each other in any order, but not in a circle.

// linesInOrder returns lines in such an order that each comes behind those it names. Lines that
// name each other in a circle are told of, and left out.
func linesInOrder(lines []source.LineSpec, found *Findings) []source.LineSpec {
	var order []source.LineSpec
	waits := func(ls source.LineSpec) bool {
		return slices.ContainsFunc([]source.Text{ls.Beside, ls.From, ls.To}, func(name source.Text) bool {
			is := func(l source.LineSpec) bool { return l.Key == name.V }
			return ls.Beside.Given() && name.Given() && slices.ContainsFunc(lines, is) && !slices.ContainsFunc(order, is)
		})
	}
	for rest := lines; len(rest) > 0; {
		var later []source.LineSpec
		for _, ls := range rest {
			if waits(ls) {
				later = append(later, ls)
			} else {
				order = append(order, ls)
			}
		}
		if len(later) == len(rest) {
			found.Add(later[0].Place, "measure one of them from an edge", "the line is measured from itself, or from a line that is measured from it")
			break
		}
		rest = later
	}
	return order
}

// misses reports whether a line is measured from one that is not there, of which that has been
// told.
func (p *Piece) misses(ls source.LineSpec, all []source.LineSpec) bool {
	return ls.Beside.Given() && slices.ContainsFunc(all, func(l source.LineSpec) bool {
		return (l.Key == ls.Beside.V || l.Key == ls.From.V || l.Key == ls.To.V) && p.Line(l.Key) == nil && p.EdgeNumber(l.Key) < 0
	})
}

// besideLine works out a line beside another, or notes why there is none.
func (p *Piece) besideLine(line *Line, ls source.LineSpec, found *Findings) {
	if l := p.Line(ls.Beside.V); l != nil && l.Along < 0 && !ls.Side.Given() {
		found.Add(ls.Beside.Place, `add side = "..." with the name of an edge on that side`,
			"%q has cloth on both sides, and nothing says on which of them the line lies", ls.Beside.V)
		return
	}
	b, ok := findBase(p, ls.Beside, ls.Side, found)
	if !ok {
		return
	}
	line.Along = b.Edge
	line.Distance = ls.At.V
	chords := slices.DeleteFunc(b.Chords(p.Tree, ls.At.V), func(c Stretch) bool { return c.To-c.From < LeastLine })
	if len(chords) == 0 {
		found.Add(ls.At.Place, "make it less", "the line has no cloth: the piece has none %s from %q", found.Written(ls.At.V), b.Name)
		return
	}
	if run, ok := p.runOf(ls, b, chords, found); ok {
		line.Path = b.Lengthwise(ls.At.V, run)
	}
}

// runOf returns the part of the chords of a piece that a line beside another runs over, or
// notes why there is none.
func (p *Piece) runOf(ls source.LineSpec, b BaseLine, chords []Stretch, found *Findings) (Stretch, bool) {
	var ends [2][]float64 // where it meets what it runs from, and to
	for i, name := range [...]source.Text{ls.From, ls.To} {
		if !name.Given() {
			continue
		}
		var ok bool
		if ends[i], ok = p.meetings(ls, b, name, found); !ok {
			return Stretch{}, false
		}
	}
	var runs []Stretch
	for _, c := range chords {
		switch {
		case ls.From.Given() && ls.To.Given():
			for _, from := range ends[0] {
				for _, to := range ends[1] {
					if run := (Stretch{min(from, to), max(from, to)}); run.From > c.From-nearEdge && run.To < c.To+nearEdge {
						runs = append(runs, Stretch{max(c.From, run.From), min(c.To, run.To)})
					}
				}
			}
		case ls.From.Given() || ls.To.Given():
			for _, v := range slices.Concat(ends[0], ends[1]) {
				switch {
				case math.Abs(v-c.From) < nearEdge:
					runs = append(runs, Stretch{c.From, p.givenAt(ls, b, c.From) + ls.Length.Or(c.To-c.From)})
				case math.Abs(v-c.To) < nearEdge:
					runs = append(runs, Stretch{p.givenAt(ls, b, c.To) - ls.Length.Or(c.To-c.From), c.To})
				}
			}
		default:
			runs = append(runs, c)
		}
	}
	runs = slices.DeleteFunc(runs, func(r Stretch) bool { return r.To-r.From < LeastLine })
	switch {
	case len(runs) == 0:
		at := ls.From.Place
		if !ls.From.Given() {
			at = ls.To.Place
		}
		found.Add(at, "with from or to alone a line has one end at an edge; from and to together may name lines as well",
			"nothing of the line lies on the piece between its ends")
		return Stretch{}, false
	case len(runs) > 1 && !ls.From.Given() && !ls.To.Given():
		found.Add(ls.Place, "say where it runs: add from and to", "the line crosses the piece in %d parts", len(runs))
		return Stretch{}, false
	}
	run := slices.MinFunc(runs, func(a, b Stretch) int { return cmp.Compare(a.To-a.From, b.To-b.From) })
	within := func(c Stretch) bool { return run.From > c.From-LeastLine && run.To < c.To+LeastLine }
	if ls.Length.Given() && !slices.ContainsFunc(chords, within) {
		found.Add(ls.Length.Place, "make it shorter, or leave length out: then it runs to the other edge",
			"the line leaves the piece: it is %s long, and there is less cloth from %q", found.Written(ls.Length.V), ls.From.V)
		return Stretch{}, false
	}
	return run, true
}

// givenAt returns where the length of a line that ends at a place of the cutting line is
// measured from: that place, or beside it the edge as the file draws it.
func (p *Piece) givenAt(ls source.LineSpec, b BaseLine, end float64) float64 {
	name := ls.From
	if !name.Given() {
		name = ls.To
	}
	i := p.EdgeNumber(name.V)
	if i < 0 || p.Edges[i].inside == 0 || !ls.Length.Given() {
		return end
	}
	_, vs := b.Extent(p.Outline)
	line, best := b.Lengthwise(ls.At.V, vs), math.Inf(1)
	for _, c := range plane.Crossings(plane.NewTree(line), plane.NewTree(p.Edges[i].Given)) {
		if v := b.V(c.At); math.Abs(v-end) < math.Abs(best-end) {
			best = v
		}
	}
	if math.IsInf(best, 1) {
		return end
	}
	return best
}

// meetings returns where a line beside another meets an edge or a line, run out on both
// sides: how far along, or notes that it does not.
func (p *Piece) meetings(ls source.LineSpec, b BaseLine, name source.Text, found *Findings) ([]float64, bool) {
	met, ok := p.boundOf(name, found)
	if !ok {
		return nil, false
	}
	at := b.metAt(met.tree, ls.At.V, nearEdge)
	if len(at) == 0 {
		found.Add(name.Place, "name an edge or a line that it crosses", "the line does not meet %q", name.V)
	}
	return at, len(at) > 0
}
