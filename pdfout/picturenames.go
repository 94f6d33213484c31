package pdfout

import (
	"math"
	"strconv"

	"tuckmark/marking/plane"
)

// Rules of this file: a shape of a picture has its name inside it where that fits, else a
// number in it or beside it, which stands with the name under the picture.

// nameStyles and numberStyles are the styles that a shape's name and its number may
// have, largest first.
func nameStyles() []Style   { return []Style{plain(8), plain(7), plain(6), plain(5)} }
func numberStyles() []Style { return []Style{strong(7), strong(6), strong(5)} }

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
		if d.nameIn(p, f, places, p.name, nameStyles(), []plane.Point{across(), up()}) {
			continue
		}
		n, known := numbers[p.name]
		if !known {
			n = len(numbered) + 1
		}
		text := strconv.Itoa(n)
		switch {
		case d.nameIn(p, f, places, text, numberStyles(), []plane.Point{across()}) || d.numberBeside(p, f, pieces, text):
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
// directions and in the first of some styles that it has room in, and reports
// whether there is any.
func (d *clothPicture) nameIn(p piece, f *field, places []plane.Point, text string, styles []Style, along []plane.Point) bool {
	for _, s := range styles {
		for _, u := range along {
			for _, limit := range []float64{math.Inf(1), 40, 25, 15, 10} {
				b := nameBlock(text, s, limit)
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
	for _, s := range numberStyles() {
		b := nameBlock(number, s, math.Inf(1))
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

// legend sets the names of numbers in columns, row by row.
func (s setter) legend(names []string) []band {
	if len(names) == 0 {
		return nil
	}
	number := func(i int) string { return strconv.Itoa(i + 1) }
	heavy, light := strong(asideSize), plain(asideSize)
	indent := heavy.width(number(len(names)-1)) + ruleAway
	column := math.Min(indent+longestWord(names, light), legendMost)
	count := int((s.width + legendApart) / (column + legendApart))
	var bands []band
	for i, name := range names {
		if i%count == 0 {
			bands = append(bands, band{})
		}
		b := &bands[len(bands)-1]
		set := linesOf(withinLines(name, light, column-indent+roundingOff, wordLines), light)
		left := float64(i%count) * (column + legendApart)
		b.say(number(i), heavy, plane.Point{X: left, Y: -heavy.step() + heavy.foot()})
		b.with(set, plane.Point{X: left + indent})
		b.height = math.Max(b.height, set.height)
	}
	keepEnds(bands)
	bands[0].above = legendAbove
	return bands
}
