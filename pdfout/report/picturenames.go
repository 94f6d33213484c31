package report

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: a shape of a picture has its name inside it where that fits, else the
// number of its part, or a letter where it is none, in it or beside it, which stands with the
// name under the picture.

// Signed is a name under a picture, with the sign that shapes have instead of it.
type Signed struct{ Sign, Name string }

// nameShapes writes the names into the shapes, and a sign in a shape or beside it where a name
// has no room. It returns the names of the signs, and the names of shapes that have no room even
// for a sign, each once.
func (d *picture) nameShapes(pieces []arrange.Piece, f *arrange.Field) (signs []Signed, left []string) {
	missing := map[string]bool{}
	for _, p := range pieces {
		if p.Name == "" {
			continue
		}
		if d.nameIn(p, f, p.Name, ink.Text(), []plane.Point{text.Across(), text.Up()}) {
			continue
		}
		known := slices.IndexFunc(signs, func(s Signed) bool { return s.Name == p.Name })
		sign := nextSign(p.Part, signs)
		if known >= 0 {
			sign = signs[known].Sign
		}
		switch {
		case d.nameIn(p, f, sign, ink.StrongText(), []plane.Point{text.Across()}) || d.numberBeside(p, f, pieces, sign):
			if known < 0 {
				signs = append(signs, Signed{sign, p.Name})
			}
		case !missing[p.Name]:
			missing[p.Name] = true
			left = append(left, p.Name)
		}
	}
	return signs, left
}

// nextSign is the sign of a part that has none yet: its number, or letters where it has none; with
// a letter behind the number where another way to lie has that, as the upper layer alone.
func nextSign(part int, signs []Signed) string {
	number := ""
	if part > 0 {
		number = strconv.Itoa(part)
	}
	sign := number
	for n := 0; sign == "" || slices.ContainsFunc(signs, func(s Signed) bool { return s.Sign == sign }); n++ {
		sign = number + letterOf(n)
	}
	return sign
}

// nameIn writes a text into a shape, along one of some directions, and reports whether there is
// room.
func (d *picture) nameIn(p arrange.Piece, f *arrange.Field, words string, s ink.Style, along []plane.Point) bool {
	for _, u := range along {
		for _, limit := range []float64{math.Inf(1), 40, 25, 15, 10} {
			name := arrange.InscriptionOf(words, s, limit)
			e := name.Extent(u)
			if name.Broken || e.X > p.Bounds.Width() || e.Y > p.Bounds.Height() {
				continue
			}
			if found, ok := p.Roomiest(f, nameClosest, name, u, nameRoom, d.framed); ok {
				f.Take(found.Around(found.Middle, found.U))
				d.labels = append(d.labels, found.Placed(found.Middle, found.U)...)
				return true
			}
		}
	}
	return false
}

// numberBeside writes a number next to a shape, where nothing else is, and reports
// whether there is room.
func (d *picture) numberBeside(p arrange.Piece, f *arrange.Field, pieces []arrange.Piece, number string) bool {
	if p.Bounds.Empty() {
		return false
	}
	name := arrange.InscriptionOf(number, ink.StrongText(), math.Inf(1))
	side := plane.Point{X: (p.Bounds.Width()+name.Width)/2 + numberAway}
	over := plane.Point{Y: (p.Bounds.Height()+name.Height)/2 + numberAway}
	for _, step := range []plane.Point{side, side.Mul(-1), over.Mul(-1), over} {
		at := p.Bounds.Centre().Add(step)
		room := name.Around(at, text.Across())
		if d.onBand(room.Bounds()) && f.Free(room.Grown(numberApart)) && !inAny(pieces, at) {
			f.Take(room)
			d.labels = append(d.labels, name.Placed(at, text.Across())...)
			return true
		}
	}
	return false
}

// legend sets the names of signs in columns, row by row.
func (s setter) legend(all []Signed) []band {
	if len(all) == 0 {
		return nil
	}
	heavy, light := ink.StrongText(), ink.Text()
	widest, names := 0.0, []string(nil)
	for _, one := range all {
		widest, names = max(widest, heavy.Width(one.Sign)), append(names, one.Name)
	}
	indent := widest + text.RuleAway
	column := min(indent+text.LongestWord(names, light), legendMost)
	count := int((s.width + legendApart) / (column + legendApart))
	var bands []band
	for i, name := range names {
		if i%count == 0 {
			bands = append(bands, band{})
		}
		b := &bands[len(bands)-1]
		set := text.LinesOf(text.WithinLines(name, light, column-indent+roundingOff, wordLines), light)
		left := float64(i%count) * (column + legendApart)
		b.Say(all[i].Sign, heavy, plane.Point{X: left, Y: -heavy.Step() + heavy.Foot()})
		b.With(set, plane.Point{X: left + indent})
		b.Height = max(b.Height, set.Height)
	}
	keepEnds(bands)
	bands[0].above = legendAbove
	return bands
}

// letterOf is the letter of a number from 0 on; behind Z they are doubled.
func letterOf(n int) string {
	return strings.Repeat(string(rune('A'+n%26)), 1+n/26)
}
