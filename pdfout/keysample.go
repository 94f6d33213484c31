package pdfout

import (
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: the key shows lines as they look in use, those together that are met
// together: a corner of a piece with its stitch line, a fold of a tuck between its
// stitchings, a notch at an edge. A sample is drawn where a line that it names occurs, with
// those of its other lines that do. A name stands at the height of its line, and goes on
// under it where its column is narrow: what lies below makes room.

const (
	keyWide = 21.0 // of a sample, in mm
	keyStep = 4.4  // from one name to the next: a line of text, and a little
	keyAway = 2.5  // between a sample and its names
	keyGap  = 1.3  // between two samples
	// keyLetter is how far along its line the letter of a line stands.
	keyLetter = 16.4
)

// keySample is a part of the key: lines that are met together. Places are counted from the
// left end of its first name's line.
type keySample struct {
	lines []mark.Mark
	// names are the roles that are named here, from the top down; over is the room that the
	// lines take above the first of them, in mm.
	names []mark.Role
	over  float64
	// words are the lines of each name, as many as it needs in its column; an empty one where
	// a line has its name already.
	words [][]string
}

// height is what a sample takes down the page, in mm.
func (s keySample) height() float64 { return s.over + float64(s.linesTo(len(s.names)))*keyStep }

// linesTo is how many lines of text stand over the name of a number.
func (s keySample) linesTo(n int) int {
	lines := 0
	for _, words := range s.words[:n] {
		lines += len(words)
	}
	return lines
}

// keySamples are all samples there are.
func keySamples() []keySample {
	at := func(x, steps float64) plane.Point { return plane.Point{X: x, Y: -steps * keyStep} }
	one := func(role mark.Role, path ...plane.Point) mark.Mark { return mark.Mark{Role: role, Path: path} }
	across := func(role mark.Role, steps float64) mark.Mark { return one(role, at(0, steps), at(keyWide, steps)) }
	const middle, tuck = keyWide/2 - 1, 4.0
	area := plane.Box{Min: plane.Point{Y: -1}, Max: plane.Point{X: keyWide, Y: 1}}.Outline()
	upright := func(x float64, role mark.Role) mark.Mark { return one(role, at(x, -0.7), at(x, 0)) }
	atEdge := func(role mark.Role) []mark.Mark {
		return []mark.Mark{across(mark.Cut, 0.5), one(role, at(middle, 0.5), at(middle, -0.4))}
	}
	var strokes []mark.Mark
	for from := area[0]; from.X < keyWide-2; from.X += 1.5 {
		strokes = append(strokes, one(mark.Laid, from, from.Add(plane.Point{X: 2, Y: 2})))
	}
	return []keySample{
		{[]mark.Mark{
			across(mark.Stitch, 0), one(mark.Stitch, at(keyStep, -0.6), at(keyStep, 1)),
			one(mark.Cut, at(0, -0.6), at(0, 1), at(keyWide, 1)),
		}, []mark.Role{mark.Stitch, mark.Cut}, keyStep / 2, nil},
		{[]mark.Mark{across(mark.FoldEdge, 0)}, []mark.Role{mark.FoldEdge}, 0, nil},
		{[]mark.Mark{across(mark.BlockEdge, 0)}, []mark.Role{mark.BlockEdge}, 0, nil},
		{[]mark.Mark{across(mark.Fold, 0)}, []mark.Role{mark.Fold}, 0, nil},
		{[]mark.Mark{
			across(mark.Centre, 0), one(mark.Cross, at(middle-keyStep, 0), at(middle+keyStep, 0)), one(mark.Cross, at(middle, 1), at(middle, -1)),
		}, []mark.Role{mark.Centre, mark.Cross}, keyStep / 2, nil},
		{[]mark.Mark{across(mark.TuckStitch, 0), across(mark.TuckFold, 1), across(mark.TuckStitch, 2)},
			[]mark.Role{mark.TuckStitch, mark.TuckFold, mark.TuckStitch}, 0, nil},
		{[]mark.Mark{
			upright(middle-tuck, mark.TuckStitch), upright(middle, mark.TuckFold), upright(middle+tuck, mark.TuckStitch), across(mark.TuckEnd, 0),
		}, []mark.Role{mark.TuckEnd}, keyStep / 2, nil},
		{[]mark.Mark{across(mark.Placement, 0), one(mark.Arrow, at(middle, 2), at(middle, 0)), across(mark.PleatFold, 2)},
			[]mark.Role{mark.Placement, mark.Arrow, mark.PleatFold}, 0, nil},
		{atEdge(mark.Notch), []mark.Role{mark.Notch}, keyStep / 2, nil},
		{atEdge(mark.Match), []mark.Role{mark.Match}, keyStep / 2, nil},
		{[]mark.Mark{across(mark.Grain, 0)}, []mark.Role{mark.Grain}, 0, nil},
		{[]mark.Mark{one(mark.Waste, area...), one(mark.Window, area...), one(mark.DrawHere, at(middle, 1.1), at(middle, 0.25))},
			[]mark.Role{mark.Window, mark.DrawHere}, 0, nil},
		{append(strokes, one(mark.Cut, area[0], area[1])), []mark.Role{mark.Laid}, 0, nil},
		{[]mark.Mark{one(mark.Waste, area...)}, []mark.Role{mark.Waste}, 0, nil},
		{[]mark.Mark{across(mark.Stitch, 0), one(mark.Prick, at(0, 0), at(7, 0), at(14, 0), at(keyWide, 0))},
			[]mark.Role{mark.Prick}, 0, nil},
	}
}

// keyDrawing is the line key, set in a width.
type keyDrawing struct {
	samples []keySample
	roles   []mark.Role // that occur
	joined  bool        // the trim line is shown as well
	width   float64     // in mm
	columns int
}

// leastKey is the least width of a column of the key, in mm: that of a sample and of the
// longest names.
const leastKey = 58.0

// key is the line key of all lines that occur, in a width.
func (b *book) key(width float64) keyDrawing {
	k := keyDrawing{roles: b.roles, joined: b.joined(), width: width}
	k.columns = max(1, int((width+text.Gutter)/(leastKey+text.Gutter)))
	for _, s := range k.known() {
		if slices.ContainsFunc(s.names, k.occurs) {
			k.samples = append(k.samples, k.shown(s))
		}
	}
	return k
}

func (k keyDrawing) occurs(role mark.Role) bool { return slices.Contains(k.roles, role) }

// known are all samples; where there is no stitch line, of the cutting line no corner.
func (k keyDrawing) known() []keySample {
	all := keySamples()
	if !k.occurs(mark.Stitch) {
		all[0] = keySample{[]mark.Mark{{Role: mark.Cut, Path: plane.Path{{}, {X: keyWide}}}}, []mark.Role{mark.Cut}, 0, nil}
	}
	return all
}

// shown is a sample with the lines that occur, and no lower than these need.
func (k keyDrawing) shown(s keySample) keySample {
	s.lines = slices.DeleteFunc(s.lines, func(one mark.Mark) bool { return !k.occurs(one.Role) })
	low := plane.EmptyBox()
	for _, one := range s.lines {
		low = low.Union(one.Path.Bounds())
	}
	for n := len(s.names) - 1; !k.occurs(s.names[n]) && low.Min.Y > -(float64(n)-0.5)*keyStep; n-- {
		s.names = s.names[:n]
	}
	for i, role := range s.names {
		words := []string{""}
		// The second of two names of one line is only there for the room.
		if k.occurs(role) && slices.Index(s.names, role) == i {
			words = k.wrapped(role.String())
		}
		s.words = append(s.words, words)
	}
	for i := len(s.words) - 1; i >= 0; i-- {
		s.makeRoom(i, float64(len(s.words[i])-1)*keyStep)
	}
	return s
}

// makeRoom moves what lies under the name of a number down, by so many mm.
func (s keySample) makeRoom(n int, down float64) {
	for i, one := range s.lines {
		path := slices.Clone(one.Path)
		for k := range path {
			if path[k].Y < -(float64(n)+underName)*keyStep {
				path[k].Y -= down
			}
		}
		s.lines[i].Path = path
	}
}

// underName is how far under a name, in steps, the lines of the next ones begin.
const underName = 0.75

// room is what a column has for names, in mm.
func (k keyDrawing) room() float64 {
	return (k.width+text.Gutter)/float64(k.columns) - text.Gutter - keyWide - keyAway
}

// wrapped are the lines of a name in a column.
func (k keyDrawing) wrapped(name string) []string { return text.Wrap(name, ink.Text(), k.room()) }

// heights are those of all samples, with the trim line's.
func (k keyDrawing) heights() []float64 {
	var all []float64
	for _, s := range k.samples {
		all = append(all, s.height()+keyGap)
	}
	if k.joined {
		all = append(all, float64(len(k.wrapped(trimName)))*keyStep+keyGap)
	}
	return all
}

// height is what the key takes down the page, in mm: that of its highest column, all but the
// last filled as far as the whole divided evenly.
func (k keyDrawing) height() float64 {
	return k.lay(func(int, plane.Point) {})
}

// lay tells where each sample begins, from the upper left corner of the key.
func (k keyDrawing) lay(each func(i int, at plane.Point)) (height float64) {
	heights := k.heights()
	whole := 0.0
	for _, h := range heights {
		whole += h
	}
	at, column := plane.Point{}, 1
	for i, h := range heights {
		if column < k.columns && -at.Y+h/2 > whole/float64(k.columns) {
			at = plane.Point{X: at.X + (k.width+text.Gutter)/float64(k.columns)}
			column++
		}
		each(i, at)
		at.Y -= h
		height = max(height, -at.Y)
	}
	return height
}

// draw draws the key with its upper left corner at a place.
func (k keyDrawing) draw(d ink.Canvas, corner plane.Point) {
	k.lay(func(i int, at plane.Point) {
		at = corner.Add(at)
		if i < len(k.samples) {
			k.drawSample(d, k.samples[i], at)
		} else {
			k.drawTrim(d, at.Sub(plane.Point{Y: keyStep / 2}))
		}
	})
}

// drawSample draws a sample and its names.
func (k keyDrawing) drawSample(d ink.Canvas, s keySample, corner plane.Point) {
	first := corner.Sub(plane.Point{Y: s.over + keyStep/2})
	for _, one := range s.lines {
		one.Path = one.Path.Moved(first)
		drawMark(d, one)
	}
	for i, role := range s.names {
		if s.words[i][0] == "" {
			continue
		}
		at := first.Sub(plane.Point{Y: float64(s.linesTo(i)) * keyStep})
		write(d, at, s.words[i])
		if p := ink.PenOf(role); p.Letter() != "" {
			ink.DrawLetter(d, p, at.Add(plane.Point{X: keyLetter}), text.Across())
		}
	}
}

// drawMark draws a mark whole, as it is drawn on a page.
func drawMark(d ink.Canvas, one mark.Mark) {
	p := ink.PenOf(one.Role)
	d.Save()
	d.Pen(p)
	d.Ink(p.Colour)
	if p.Ring() > 0 {
		ink.DrawRings(d, p, one.Path, one.Path.Bounds())
	} else {
		ink.StrokeEach(d, ink.LinesOf(one)...)
	}
	ink.DrawSolids(d, ink.SolidsOf(p, one.Path)...)
	d.Restore()
}

// drawTrim draws a trim line and a join mark.
func (k keyDrawing) drawTrim(d ink.Canvas, at plane.Point) {
	d.Save()
	d.Pen(ink.JoinPen())
	ink.StrokeEach(d, plane.Path{at, at.Add(plane.Point{X: keyWide})})
	arrange.DrawJoinMark(d, at.Add(plane.Point{X: keyWide / 2}))
	d.Restore()
	write(d, at, k.wrapped(trimName))
}

// trimName is what the key calls the trim line.
const trimName = "trim line and join mark"

// write names a line that ends a sample at a height.
func write(d ink.Canvas, at plane.Point, name []string) {
	at = at.Add(plane.Point{X: keyWide + keyAway, Y: -ink.Text().Up() / 2})
	for _, words := range name {
		ink.Write(d, at, ink.Text(), words)
		at.Y -= keyStep
	}
}
