package sheet

import (
	"fmt"
	"math"
	"slices"

	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/wording"
)

// Rules of this file. The cutting sheet is the finished piece, to be laid on the
// tucked block and cut one layer at a time. Its centre line, and any line inside
// it that tucks are measured from, has a cross at top and at bottom, to be found again
// when the marks on the cloth are washed out; the stitching of every tuck, and the
// fold of every pleat, lies under a line of its own.

// cuttingSheet returns the cutting sheet of a piece, with the match marks of its
// template where that is not nil.
func cuttingSheet(p *piece.Piece, pattern *garment.Pattern, template *template) mark.Marking {
	b := p.Block
	m := mark.Marking{
		Key: p.Key + " cutting sheet", Name: p.Name + ": cutting sheet", Kind: mark.CuttingSheet, Piece: p.Name,
		Cut: fmt.Sprintf("cut %d", p.Cut), Side: mark.RightSideUp, Outline: p.Outline,
	}
	for _, e := range p.Edges {
		one := mark.Mark{Role: mark.Cut, Name: e.Key, Key: e.Key, Path: e.Path}
		if e.OnFold {
			one.Role = mark.Centre
			if b.OnCentre() {
				one.Name += ", and the stitching of tuck 1"
			}
		}
		m.Marks = append(m.Marks, one)
	}
	m.Marks = append(m.Marks, p.AsDrawn.Marks...)
	m.Words, m.Dimensions = slices.Clone(p.AsDrawn.Words), p.AsDrawn.Dimensions(pattern.Unit)
	if template != nil {
		m.Marks = append(m.Marks, template.matches...)
	}
	for _, c := range crossesOf(p) {
		addCross(&m, c, b.Group.Out)
	}
	for _, r := range b.Group.AsDrawn {
		markStitching(&m, p, r)
	}
	tellOpen(&m, p, pattern.Unit)
	m.Notes, m.Sketch = cuttingNotes(p, pattern.Unit), blockSketch(b, pattern.Unit)
	m.Steps = cuttingSteps(p, pattern.Unit, template)
	if axis := p.EdgeOnFold(); axis >= 0 {
		e := p.Edges[axis].Path
		return p.Printed(m, e[0], piece.Inward(e))
	}
	return m
}

// markStitching draws the lines under which the stitched folds of one row come to lie,
// and how far each is stitched.
func markStitching(m *mark.Marking, p *piece.Piece, r piece.FoldRow) {
	b := p.Block
	role := mark.TuckStitch
	if r.Makes == piece.PleatFolds {
		role = mark.PleatFold // there its fold lies on the cloth before it
	}
	c := creased{FoldRow: r, out: r.Base.Out}
	for k, f := range r.Folds {
		stitched := b.StitchedAt(r, f)
		for _, end := range stitchEnds(b, r, f) {
			m.Add(mark.TuckEnd, "", end)
		}
		if b.Group.OnAxis && f.About() {
			continue // its stitching is the centre line
		}
		if k > 0 && math.Abs(f.Stitching-r.Folds[k-1].Stitching) < piece.SamePoint {
			continue // the folds of an inverted pleat meet on one line
		}
		stretches := r.Base.Chords(p.Tree, stitched)
		if f.End.Given {
			stretches, _ = f.End.UpTo(stretches)
		}
		for _, s := range stretches {
			m.Marks = append(m.Marks, mark.Mark{Role: role, Key: r.FoldKey(f, role), Path: r.Base.Lengthwise(stitched, s)})
		}
		if n := len(stretches); n > 0 {
			c.add(f, r.Base.Lengthwise(stitched, piece.Stretch{From: stretches[0].From, To: stretches[n-1].To}))
		}
	}
	w := foldWords{m, role, c.out}
	for end := range 2 {
		w.number(slices.DeleteFunc(c.told(end, numbered), func(f toldFold) bool { return p.OnFlatFold(f.end.at) }))
	}
}

// tellOpen says where the tucks of the rows end that are open beyond that, beside the last of
// those that are open toward the same end of the block, what is done there.
func tellOpen(m *mark.Marking, p *piece.Piece, unit length.Unit) {
	b := p.Block
	for _, toward := range []float64{b.LowerEdge(), b.UpperEdge()} {
		var last lineEnd
		open := ""
		for _, r := range b.Group.AsDrawn {
			for _, f := range r.Folds {
				for i, line := range stitchEnds(b, r, f) {
					words, opens := r.Hangs().Open(), b.Begin(r) != toward
					if i > 0 { // where it begins
						words, opens = r.Hangs().OpenBefore(), !opens
					}
					for _, end := range endsOf(line) {
						if opens && (open == "" || b.U(end.at) > b.U(last.at)) {
							last, open = end, words
						}
					}
				}
			}
		}
		if open != "" {
			m.Words = append(m.Words, mark.Word{
				Role: mark.TuckEnd, Text: open + ": draw in to " + unit.OnRuler(b.DrawnIn()), At: last.at, Out: last.out})
		}
	}
}

// stitchEnds are the lines across the flap of a fold of a row as drawn where its stitching ends,
// and where it begins if it is free.
func stitchEnds(b *piece.Block, r piece.FoldRow, f piece.Fold) []plane.Path {
	stitched, crease := b.StitchedAt(r, f), f.Width
	if f.Toward && !(b.Group.OnAxis && f.About()) { // of one on the centre, half is here either way
		crease = -crease
	}
	var lines []plane.Path
	for _, v := range f.End.Levels() {
		lines = append(lines, r.Base.Crosswise(piece.Stretch{From: stitched, To: stitched + crease}, v))
	}
	return lines
}

// cuttingNotes says what is to be known of a cutting sheet: how the tucks were sewn, and what
// those mean that end on the piece. Below their end the block is as wide as it was torn, but
// for folds that run on; so it is drawn in to what the top edge measures, and let go when the
// piece is cut.
func cuttingNotes(p *piece.Piece, unit length.Unit) []string {
	b := p.Block
	var notes []string
	if b.Measured != nil {
		notes = append(notes, fmt.Sprintf("the %s are drawn as they were sewn", b.What()), b.Fit(p, unit))
	}
	if b.OpenBelow()+b.OpenAtTop() == 0 {
		return notes
	}
	notes = append(notes, openNote(b, unit))
	if b.Measured == nil {
		across, up := p.FoldedSizes()
		for _, size := range append(openSizes(p, across, "wide", unit), openSizes(p, up, "long", unit)...) {
			notes = append(notes, "cut and let go, "+size)
		}
	}
	return notes
}

// openNote says how much wider the block is where its tucks are open.
func openNote(b *piece.Block, unit length.Unit) string {
	below, above := unit.OnRuler(b.OpenBelow()), unit.OnRuler(b.OpenAtTop())
	switch {
	case b.OpenAtTop() == 0:
		return fmt.Sprintf("below their end the %s are open: there the block is %s wider than at its top", b.What(), below)
	case b.OpenBelow() == 0:
		return fmt.Sprintf("at the top of the block the %s are open: there it is %s wider than where all are sewn", b.What(), above)
	}
	return fmt.Sprintf("the %s are open beyond their ends: there the block is wider than where all are sewn, by %s at its top and by %s at its bottom", b.What(), above, below)
}

// openSizes says what a piece measures in one direction where its folds are open.
func openSizes(p *piece.Piece, sizes []piece.SizeAt, direction string, unit length.Unit) []string {
	return sizesIn(p, slices.DeleteFunc(sizes, func(at piece.SizeAt) bool { return len(at.Open) == 0 }), direction, unit)
}

// cuttingSteps says how a cutting sheet is laid, and what is done by it: everything is marked
// before anything is cut.
func cuttingSteps(p *piece.Piece, unit length.Unit, template *template) []string {
	b := p.Block
	var steps []string
	if b.OpenBelow()+b.OpenAtTop() > 0 {
		end := "end"
		if b.Across() {
			end = "ends"
		}
		steps = append(steps, fmt.Sprintf("beyond the "+end+" of the %s draw the block in, by folds that run on or by gathers, until it is %s across there", b.What(), unit.OnRuler(b.DrawnIn())))
	}
	lay := fmt.Sprintf("lay it on the tucked block, with the %s under their lines", b.What())
	if p.OnFold {
		lay = fmt.Sprintf("lay the centre on the centre of the tucked block, and its %s under their lines", b.What())
	}
	steps = append(steps, lay)
	steps = append(steps, crossSteps(crossesOf(p))...)
	steps = append(steps, markRound)
	if template != nil && len(template.matches) > 0 {
		steps = append(steps, matchNote)
	}
	switch turn := otherHalf(p); {
	case len(turn) == 0:
	case p.OnFold:
		steps = append(steps, turn...)
	default:
		steps = append(steps, turn[0]+", and press its tucks the other way")
	}
	return append(steps, "cut one layer at a time")
}

// markRound is the step in which a cutting sheet is drawn round.
const markRound = "mark round it"

// crossSteps says what the crosses of a cutting sheet are laid on: on the same ones of the
// block, or on a line of it.
func crossSteps(crosses []cross) []string {
	letters := map[string][]string{}
	var places []string
	for _, c := range crosses {
		place := c.line
		if c.onBlock {
			place = ""
		}
		if letters[place] == nil {
			places = append(places, place)
		}
		letters[place] = append(letters[place], c.letter)
	}
	if len(places) == 0 {
		return nil
	}
	var laid []string
	for _, place := range places {
		what, where := "cross ", "that"
		if len(letters[place]) > 1 {
			what, where = "crosses ", "those"
		}
		if place != "" {
			where = place
		}
		laid = append(laid, what+wording.Listed(letters[place], "and")+" on "+where+" of the block")
	}
	return []string{"lay " + wording.Listed(laid, "and")}
}

// layingLine is a line of the piece by which a sheet is laid on the block.
type layingLine struct {
	name   string
	path   plane.Path
	centre bool // of a piece on the fold
}

// layingLines returns the lines of the piece by which a sheet is laid on the block: the
// centre, and lines inside that tucks are measured from.
func layingLines(p *piece.Piece) []layingLine {
	var lines []layingLine
	if axis := p.EdgeOnFold(); axis >= 0 {
		lines = append(lines, layingLine{p.Edges[axis].Key, p.Edges[axis].Path, true})
	}
	for _, l := range p.Lines {
		measured := func(r piece.FoldRow) bool { return r.Base.Edge < 0 && r.Base.Name == l.Key }
		if l.Role == mark.Centre || slices.ContainsFunc(p.Block.Group.Rows, measured) {
			lines = append(lines, layingLine{l.Key, l.Path, false})
		}
	}
	return lines
}
