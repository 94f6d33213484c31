package pdfout

import (
	"math"
	"strconv"

	"tuckmark/marking"
	"tuckmark/marking/plane"
)

// Rules of this file: a shape of a picture has its name inside it where that fits, else a
// number in it or beside it, which stands with the name under the picture.

// nameSizes and numberSizes are the sizes, in points, that a shape's name and its
// number may have, largest first.
func nameSizes() []float64   { return []float64{8, 7, 6, 5} }
func numberSizes() []float64 { return []float64{7, 6, 5} }

// nameShapes writes the names into the shapes, and a number in a shape or beside
// it where a name has no room. It returns the names of the numbers, from 1 on, and
// the names of shapes that have no room even for a number, each once.
func (d *clothPicture) nameShapes(pieces []piece, f *field) (numbered, left []string) {
	numbers, missing := map[string]int{}, map[string]bool{}
	for _, p := range pieces {
		if p.name == "" {
			continue
		}
		places := p.places(f, nameRoom, nameClosest)
		if d.nameIn(p, f, places, p.name, regular(), nameSizes(), []plane.Point{across(), up()}) {
			continue
		}
		n, known := numbers[p.name]
		if !known {
			n = len(numbered) + 1
		}
		text := strconv.Itoa(n)
		switch {
		case d.nameIn(p, f, places, text, bold(), numberSizes(), []plane.Point{across()}) || d.numberBeside(p, f, pieces, text):
			if !known {
				numbers[p.name] = n
				numbered = append(numbered, p.name)
			}
		case !missing[p.name]:
			missing[p.name] = true
			left = append(left, p.name)
		}
	}
	return numbered, left
}

// nameIn writes a text into a shape at one of some places, along one of some
// directions and in the largest of some sizes that it has room in, and reports
// whether there is any.
func (d *clothPicture) nameIn(p piece, f *field, places []plane.Point, text string, set *face, sizes []float64, along []plane.Point) bool {
	for _, size := range sizes {
		for _, u := range along {
			for _, limit := range []float64{math.Inf(1), 40, 25, 15, 10} {
				b := nameBlock(text, set, size, limit)
				e := b.extent(u)
				if b.broken || e.X > p.bounds.Width() || e.Y > p.bounds.Height() {
					continue
				}
				if found, ok := p.roomiest(f, places, b, u, nameRoom, d.framed); ok {
					f.take(found.around(found.middle, found.u))
					d.labels = append(d.labels, found.placed(found.middle, found.u)...)
					return true
				}
			}
		}
	}
	return false
}

// numberBeside writes a number next to a shape, where nothing else is, and reports
// whether there is room.
func (d *clothPicture) numberBeside(p piece, f *field, pieces []piece, number string) bool {
	if p.bounds.Empty() {
		return false
	}
	for _, size := range numberSizes() {
		b := nameBlock(number, bold(), size, math.Inf(1))
		side := plane.Point{X: (p.bounds.Width()+b.width)/2 + numberAway}
		over := plane.Point{Y: (p.bounds.Height()+b.height)/2 + numberAway}
		for _, step := range []plane.Point{side, side.Mul(-1), over.Mul(-1), over} {
			at := p.bounds.Centre().Add(step)
			room := b.around(at, across())
			if d.onBand(room.bounds()) && f.free(room.grown(numberApart)) && !inAny(pieces, at) {
				f.take(room)
				d.labels = append(d.labels, b.placed(at, across())...)
				return true
			}
		}
	}
	return false
}

// nameBlock sets a name in lines no longer than limit mm, one under the other's
// middle.
func nameBlock(name string, f *face, size, limit float64) block {
	var b block
	words := marking.Words(name)
	for _, word := range words {
		b.broken = b.broken || f.width(word, size) > limit
	}
	for k, text := range f.wrapWords(words, size, limit) {
		base := (ascent + float64(k)*leading) * size * point
		b.height = base + descent*size*point
		b.width = math.Max(b.width, f.width(text, size))
		b.lines = append(b.lines, label{text: text, face: f, size: size, at: plane.Point{Y: -base}})
	}
	for i, l := range b.lines {
		b.lines[i].at.X = (b.width - l.face.width(l.text, l.size)) / 2
	}
	return b
}

// legend sets the names of numbers in columns, row by row.
func (s setter) legend(names []string) []band {
	if len(names) == 0 {
		return nil
	}
	number := func(i int) string { return strconv.Itoa(i + 1) }
	indent := bold().width(number(len(names)-1), asideSize) + ruleAway
	column := 0.0
	for _, name := range names {
		column = math.Max(column, indent+regular().width(name, asideSize))
	}
	column = math.Min(column, legendMost)
	count := int((s.width + legendApart) / (column + legendApart))
	step := leading * asideSize * point
	var bands []band
	for i := range names {
		if i%count == 0 {
			bands = append(bands, band{})
		}
		b := &bands[len(bands)-1]
		at := plane.Point{X: float64(i%count) * (column + legendApart), Y: -step + footOfLine(asideSize)}
		b.write(number(i), bold(), asideSize, black(), at)
		lines := withinLines(regular(), names[i], asideSize, column-indent+roundingOff, wordLines)
		for k, line := range lines {
			b.write(line, regular(), asideSize, black(), at.Add(plane.Point{X: indent, Y: -float64(k) * step}))
		}
		b.height = math.Max(b.height, float64(len(lines))*step)
	}
	keepEnds(bands)
	bands[0].above = legendAbove
	return bands
}
