package garment

import (
	"fmt"
	"slices"

	"tuckmark/marking/length"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/source"
)

// Rules of this file. What is sewn along edges goes on in one length from edge to edge of a piece,
// over the fold to its other half, and over a seam to the edge that goes on there. Where no seam
// joins what lies beside its end, that length ends: two cuffs have a ruffle each.
//
//   - Left is sewn to left: of two pieces that the garment has as often, each is joined to
//     its own. An edge that is sewn to its mirror image joins left and right.
//   - A piece of which two edges are sewn together is closed to a ring, each by itself, as a
//     sleeve is; but one that is neither a sleeve or a leg, nor sewn to what is, is a panel, and
//     all of them make one ring.
//   - A file without seams does not say what is joined. Then edges of several pieces are one
//     length, as they are named together; those of one piece go from piece to piece nowhere.

// Strand is an unbroken line of the garment that one length of something is sewn along.
type Strand struct {
	Courses []Course      // of one; how often each comes in it
	Times   int           // how many of them are alike
	Line    length.Amount // of one
}

// Title names what a strand runs along: "the neck of Front (2 times) and the neck of Back".
func (s Strand) Title() string { return SeamSide{Courses: s.Courses}.Title() }

// strands finds which courses go on into each other.
type strands struct {
	joiner
	courses []Course
	first   []int  // of each course, the number of its first place in the garment
	up      []int  // of each place, another that it goes on into; itself where none is
	open    []bool // of each place, whether an end of it goes on into nothing
}

// strandsOf returns the strands of courses.
func (j joiner) strandsOf(courses []Course) strands {
	s := strands{joiner: j, courses: courses}
	for _, c := range courses {
		s.first = append(s.first, len(s.up))
		for range c.Times {
			s.up = append(s.up, len(s.up))
		}
	}
	s.open = make([]bool, len(s.up))
	for i, c := range courses {
		for _, end := range c.ends() {
			if !s.goesOn(i, end) {
				for k := range c.Times {
					s.open[s.first[i]+k] = true
				}
			}
		}
	}
	if len(j.spec.Seams) == 0 {
		s.asNamed()
	}
	return s
}

// ends are the numbers of the edges that lie beside its two ends; -1 where none does, as
// within a piece.
func (c Course) ends() [2]int {
	if c.isEdge() {
		before, after := c.Piece.Neighbours(c.edge)
		return [2]int{before, after}
	}
	return [2]int{c.edgeAt(c.line[0]), c.edgeAt(c.line[len(c.line)-1])}
}

// EndEdges are the keys of the edges at which a line inside a piece ends; nil of an edge.
func (c Course) EndEdges() []string {
	if c.isEdge() {
		return nil
	}
	var keys []string
	for _, end := range c.ends() {
		if end >= 0 {
			keys = append(keys, c.Piece.Edges[end].Key)
		}
	}
	return keys
}

// endsAt bounds how far from an edge a line of a piece may end, in mm, and still end there.
const endsAt = 1

// edgeAt returns the number of the edge at which a line of a piece ends, on its cutting or its
// stitch line; -1 where it ends within the piece.
func (c Course) edgeAt(q plane.Point) int {
	nearest, at := endsAt+length.Rounding, -1
	for i, e := range c.Piece.Edges {
		for _, path := range []plane.Path{e.Path, e.Line} {
			if len(path) < 2 {
				continue
			}
			if _, _, away := path.Nearest(q); away < nearest {
				nearest, at = away, i
			}
		}
	}
	return at
}

// top returns the place that stands for all that a place goes on into.
func (s strands) top(at int) int {
	for s.up[at] != at {
		s.up[at] = s.up[s.up[at]]
		at = s.up[at]
	}
	return at
}

// join says that two places of courses go on into each other.
func (s strands) join(i, k, other, n int) {
	s.up[s.top(s.first[i]+k)] = s.top(s.first[other] + n)
}

// goesOn joins a course with what goes on at the edge beside one of its ends, if anything does.
func (s strands) goesOn(i, end int) bool {
	c := s.courses[i]
	switch {
	case end < 0:
		return false
	case c.Piece.Edges[end].OnFold:
		if !c.Piece.OnAxis(c.line) {
			s.halves(i)
		}
		return true
	}
	beside := edgeOf{c.Piece, end}
	if c.isEdge() && !c.drawn().OnFold {
		if other := s.along(beside); other >= 0 {
			for k := range min(c.Times, s.courses[other].Times) {
				s.join(i, k, other, k)
			}
			return true
		}
	}
	on := false
	for side := range s.ties.sides[beside] {
		on = s.over(i, beside, seamAt{&s.Seams[side.seam], side.side}) || on
	}
	return on
}

// along returns the number of the course that is an edge; -1 where none is.
func (s strands) along(e edgeOf) int {
	return slices.IndexFunc(s.courses, func(c Course) bool { return c.isEdge() && c.outlineEdge() == e })
}

// halves joins left and right of a course.
func (s strands) halves(i int) {
	for k := 0; k+1 < s.courses[i].Times; k += 2 {
		s.join(i, k, i, k+1)
	}
}

// over joins a course with what goes on beyond a seam that the edge beside its end is part of,
// if anything does.
func (s strands) over(i int, beside edgeOf, at seamAt) bool {
	c := s.courses[i]
	other, single := at.other()
	if single && other == beside {
		s.halves(i)
		return true
	}
	if c.isEdge() {
		if next, ok := at.beyond(c.Key); ok {
			k := s.along(next)
			if k >= 0 {
				s.joinOver(i, k, at)
			}
			return k >= 0
		}
	}
	var beyond, namesakes []int
	for k, o := range s.courses {
		if o.isEdge() != c.isEdge() || !slices.ContainsFunc(at.Sides[1-at.side].Courses, func(across Course) bool {
			ends := o.ends()
			return across.Piece == o.Piece && slices.Contains(ends[:], across.edge)
		}) {
			continue
		}
		beyond = append(beyond, k)
		if o.Key == c.Key {
			namesakes = append(namesakes, k)
		}
	}
	if namesakes != nil {
		beyond = namesakes
	}
	for _, k := range beyond {
		s.joinOver(i, k, at)
	}
	return beyond != nil
}

// joinOver joins two courses that go on into each other over a seam.
func (s strands) joinOver(i, other int, at seamAt) {
	a, b := s.courses[i], s.courses[other]
	switch {
	case a.Times == b.Times && s.arePanels(a, b):
		for k := range a.Times {
			s.join(i, 0, i, k)
			s.join(i, 0, other, k)
		}
	case a.Times == b.Times:
		for k := range a.Times {
			s.join(i, k, other, k)
		}
	default:
		s.joinAcross(i, other, at)
	}
}

// joinAcross joins two courses of which the garment has one oftener than the other: a whole back,
// and the two sides of a front on the fold. Where the seam has as many edges on either side, each
// is sewn to that of its number; else all are one.
func (s strands) joinAcross(i, other int, at seamAt) {
	a, b := s.courses[i], s.courses[other]
	from, all := placesOf(a, at.Sides[at.side])
	to, allBeyond := placesOf(b, at.Sides[1-at.side])
	byNumber := at.once == 1 && all == allBeyond
	for k := range a.Times {
		for n := range b.Times {
			if !byNumber || from < 0 || to < 0 || from+k == to+n {
				s.join(i, k, other, n)
			}
		}
	}
}

// placesOf returns the number that the edge beside the end of a course has among those of a side
// of a seam, counted as often as they come, -1 where none is beside it; and how many they are.
func placesOf(c Course, side SeamSide) (number, all int) {
	number = -1
	ends := c.ends()
	for _, across := range side.Courses {
		if number < 0 && across.Piece == c.Piece && slices.Contains(ends[:], across.edge) {
			number = all
		}
		all += across.Times
	}
	return number, all
}

// pair is how often a garment has what it has left and right.
const pair = 2

// arePanels reports whether pieces that are joined side to side make one ring together, and not
// one each.
func (s strands) arePanels(a, b Course) bool {
	if a.Times == 1 || a.Piece != b.Piece && (a.Times <= pair || a.Piece.OnFold || b.Piece.OnFold) {
		return false
	}
	if a.Piece == b.Piece && (a.edge != b.edge || a.Piece.OnFold) {
		return false
	}
	return !s.isTube(a.Piece) && !s.isTube(b.Piece)
}

// isTube reports whether a piece is a sleeve, or a leg, which is sewn to the other one too.
func (s strands) isTube(p *piece.Piece) bool {
	all := seams(s.Seams)
	for edge := range p.Edges {
		e := edgeOf{p, edge}
		if s.ties.joined(e, e) {
			return true
		}
	}
	return round{panels: []panel{{edgeOf: edgeOf{piece: p}}}}.hangsFromLoop(all)
}

// asNamed joins the edges of several pieces, which are named together in a file without seams.
func (s strands) asNamed() {
	apart := func(c Course) bool { return c.isEdge() && c.Piece != s.courses[0].Piece }
	if slices.ContainsFunc(s.courses, apart) {
		s.joinWhere(func(i, _ int) bool { return s.courses[i].isEdge() })
	}
}

// allRound joins what goes round, as the file says, and no seam closes.
func (s strands) allRound() {
	opens := map[int]bool{}
	for at, open := range s.open {
		if open {
			opens[s.top(at)] = true
		}
	}
	s.joinWhere(func(i, k int) bool { return opens[s.top(s.first[i]+k)] })
}

// joinWhere joins all places that are wanted to the first of them.
func (s strands) joinWhere(wanted func(i, k int) bool) {
	var places [][2]int
	for i, c := range s.courses {
		for k := range c.Times {
			if wanted(i, k) {
				places = append(places, [2]int{i, k})
			}
		}
	}
	for _, p := range places {
		s.join(places[0][0], places[0][1], p[0], p[1])
	}
}

// list returns the strands in the order of the courses, those that are alike together.
func (s strands) list() []Strand {
	counts := map[int][]int{} // how often each course comes in a strand, by the place that stands for it
	var tops []int
	for i, c := range s.courses {
		for k := range c.Times {
			top := s.top(s.first[i] + k)
			if counts[top] == nil {
				counts[top] = make([]int, len(s.courses))
				tops = append(tops, top)
			}
			counts[top][i]++
		}
	}
	var all []Strand
	known := map[string]int{}
	for _, top := range tops {
		form := fmt.Sprint(counts[top])
		if at, ok := known[form]; ok {
			all[at].Times++
			continue
		}
		known[form] = len(all)
		one := Strand{Times: 1}
		for i, n := range counts[top] {
			if n > 0 {
				c := s.courses[i]
				c.Times = n
				one.Courses = append(one.Courses, c)
			}
		}
		one.Line = s.together(one.Courses)
		all = append(all, one)
	}
	return all
}

// asGiven returns strands whose ends are joined as often as the file says, and how often those
// of each are: of fewer joins than strands, or of some that have more than others, all is one.
// Where the file does not say, each has one.
func (j joiner) asGiven(courses []Course, joins source.Count) (all []Strand, each int) {
	all = j.strandsOf(courses).list()
	if !joins.Given() {
		return all, 1
	}
	if n := timesOf(all); joins.V%n == 0 {
		return all, joins.V / n
	}
	return []Strand{{Courses: courses, Times: 1, Line: j.together(courses)}}, joins.V
}

// times is Times, of whatever is sewn along a strand.
func (s Strand) times() int { return s.Times }

// timesOf is how many strands there are, or lengths of something along them, each of those that
// are alike counted.
func timesOf[L interface{ times() int }](all []L) int {
	n := 0
	for _, l := range all {
		n += l.times()
	}
	return n
}
