package pdfout

import (
	"cmp"
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: the key has the samples in which a line occurs, in columns where it is
// wide, and under them the trim line where pages are joined.

// keySection is the line key under its heading; none where there is nothing to show.
func (b *Book) keySection(width, _ float64) []entry {
	key := b.key(width)
	if key.height() == 0 {
		return nil
	}
	one := underHeading("Lines", width)
	one.put(key, plane.Point{Y: -one.Height})
	one.Height += key.height()
	return []entry{one}
}

// keyDrawing is the line key, set in a width.
type keyDrawing struct {
	samples []keySample
	roles   []mark.Role          // that occur
	called  map[mark.Role]string // those of other names
	joined  bool                 // the trim line is shown as well
	width   float64              // in mm
	columns int
}

// leastKey is the least width of a column of the key, in mm: that of a sample and of all names
// but the longest, which go on in a second line.
const leastKey = 50.0

// key is the line key of all lines that occur, in a width.
func (b *Book) key(width float64) keyDrawing {
	k := keyDrawing{roles: b.roles, called: b.set.Called, joined: b.joined(), width: width}
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
			words = k.wrapped(cmp.Or(k.called[role], role.String()))
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
		ink.DrawMark(d, one)
	}
	for i, role := range s.names {
		if s.words[i][0] == "" {
			continue
		}
		at := first.Sub(plane.Point{Y: float64(s.linesTo(i)) * keyStep})
		write(d, at, s.words[i])
		if p := ink.PenOf(role); p.Letter() != "" {
			ink.DrawLetter(d, ink.LineNumber(role), p.Letter(), at.Add(plane.Point{X: keyLetter}), text.Across())
		}
	}
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
