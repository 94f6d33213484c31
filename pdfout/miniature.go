package pdfout

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/wording"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: every piece that is made has a small drawing, the right way up as the
// file has it, all at one scale, with the number of its part and how often it is cut. A
// piece that is cut from a block is drawn as it is finished. Sheets that only help to make
// a piece have none, but where there is nothing else.

const (
	miniatureGap   = 6.0  // between two drawings, in mm
	rowGap         = 4.5  // between two rows of them
	miniatureUnder = 1.6  // between a drawing and its name
	narrowestName  = 28.0 // a name gets at least this much room
	widestName     = 56.0 // and as much as this where there are few
	leastMiniature = 14.0 // how large the largest of them is at least
	mostNameLines  = 4    // of the name of a piece
)

// scales are how many mm of a piece a mm of its drawing may stand for, the largest
// drawings first.
func scales() []float64 { return []float64{2, 2.5, 3, 4, 5, 6, 7, 8, 10, 12, 15, 20, 25, 30, 40, 50} }

// miniature is a small drawing of a piece.
type miniature struct {
	piece arrange.Piece
	name  string
	parts []int    // the numbers of those that it stands for; none where they have no numbers
	keys  []string // of the same
	pages []int    // that they lie on
	wide  int      // what is added to their numbers for those that there must be room for
	scale float64  // mm of the drawing to a mm of the piece
	room  float64  // for what stands under it, at least, in mm
}

// made returns what is drawn of the set: each piece once, with its pages.
func (b *Book) made() []miniature {
	all := slices.Clone(b.drawn)
	for i := range all {
		all[i].pages, all[i].wide = b.pagesOf(all[i].keys, mark.Task{}), b.asWide()
	}
	return all
}

// madeOf returns what is drawn of a set: each piece once.
func madeOf(set arrange.Set) []miniature {
	pieces, _, _ := arrange.PiecesOf(set)
	// Ruled paper is shown by the pictures of its pages.
	pieces = slices.DeleteFunc(pieces, func(p arrange.Piece) bool { return p.Kind.Ruled() })
	whole := map[string]bool{} // the pieces that are drawn without their template
	for _, p := range pieces {
		whole[p.Of] = whole[p.Of] || isMade(p)
	}
	for _, show := range []func(arrange.Piece) bool{
		func(p arrange.Piece) bool { return isMade(p) || p.Kind == mark.Template && !whole[p.Of] },
		func(p arrange.Piece) bool { return p.Kind == mark.Gauge },
		func(arrange.Piece) bool { return true },
	} {
		if all := drawnOnce(slices.DeleteFunc(slices.Clone(pieces), func(p arrange.Piece) bool { return !show(p) })); len(all) > 0 {
			return all
		}
	}
	return nil
}

// isMade reports whether a part is a piece of what is made, as it is finished or cut.
func isMade(p arrange.Piece) bool {
	return p.Kind == mark.CuttingSheet || p.Kind == mark.Piece || p.Kind == mark.Sample
}

// drawnOnce returns a drawing for each piece, of several parts of it that of the first.
func drawnOnce(pieces []arrange.Piece) []miniature {
	var all []miniature
	known := map[string]int{} // the drawings of the pieces
	for _, p := range pieces {
		i, name := len(all), p.Name
		if p.Of != "" && p.Kind != mark.Gauge {
			name = p.Of
			if at, ok := known[p.Of]; ok {
				i = at
			} else {
				known[p.Of] = i
			}
		}
		if i == len(all) {
			all = append(all, miniature{piece: p, name: name})
		}
		all[i].keys = append(all[i].keys, p.Key)
		if p.Part > 0 {
			all[i].parts = append(all[i].parts, p.Part)
		}
	}
	return all
}

// size is how large the drawing is, in mm, without what stands under it.
func (m miniature) size() plane.Point {
	return plane.Point{X: m.piece.Bounds.Width(), Y: m.piece.Bounds.Height()}.Mul(m.scale)
}

// width is that of the drawing with what stands under it, in mm.
func (m miniature) width() float64 { return max(m.room, m.size().X) }

// caption is what stands under the drawing.
func (m miniature) caption() text.Lines {
	width := m.width()
	name := m.name
	if len(m.parts) > 0 {
		name = partNumbers(m.parts) + "  " + name
	}
	words := text.LinesOf(text.WrapShortened(name, ink.StrongText(), width, mostNameLines), ink.StrongText())
	lines := text.WrapMeasures(m.told(0), ink.Text(), width)
	words.Add(lines, ink.Text())
	words.Space(float64(max(0, len(text.WrapMeasures(m.told(m.wide), ink.Text(), width))-len(lines))) * ink.Text().Step())
	return words
}

// told is how often the piece is cut, and on which pages it lies, each with something added
// to its number.
func (m miniature) told(add int) string {
	var told []string
	for _, words := range []string{m.piece.Cut, pagesNamed(m.pages, add)} {
		if words != "" {
			told = append(told, words)
		}
	}
	return strings.Join(told, ", ")
}

// partNumbers lists the numbers of parts: "3", "3 and 4".
func partNumbers(parts []int) string {
	var words []string
	for _, n := range parts {
		words = append(words, strconv.Itoa(n))
	}
	return wording.Listed(words, "and")
}

// draw draws the piece with the upper left corner of its bounds at a place.
func (m miniature) draw(d ink.Canvas, at plane.Point) {
	bounds := m.piece.Bounds
	d.Save()
	d.Place(at.Sub(plane.Point{X: bounds.Min.X * m.scale, Y: bounds.Max.Y * m.scale}), m.scale)
	drawSmall(d, m.piece, bounds, m.scale)
	d.Restore()
	d.Place(plane.Point{}, 1)
}

// scalesFor are the scales at which none of some drawings is larger than a size.
func scalesFor(all []miniature, most plane.Point) []float64 {
	fit := func(scale float64) bool { return widest(all, scale) <= most.X && highest(all, scale) <= most.Y }
	known := scales()
	for last := known[len(known)-1]; !fit(last); last = known[len(known)-1] {
		known = append(known, 2*last)
	}
	return slices.DeleteFunc(known, func(scale float64) bool { return !fit(scale) })
}

// widest and highest are how wide and how high the largest of the drawings is at a scale,
// in mm.
func widest(all []miniature, scale float64) float64 {
	width := 0.0
	for _, m := range all {
		width = max(width, m.piece.Bounds.Width()/scale)
	}
	return width
}

func highest(all []miniature, scale float64) float64 {
	height := 0.0
	for _, m := range all {
		height = max(height, m.piece.Bounds.Height()/scale)
	}
	return height
}

// largest is how large the largest of the drawings is at a scale, in mm.
func largest(all []miniature, scale float64) float64 {
	return max(widest(all, scale), highest(all, scale))
}

// pieceRows are the rows of drawings, with a heading over the first, and under them the parts
// that have none.
func (b *Book) pieceRows(scale, width float64) []entry {
	rows := rowsOf(b.made(), scale, width)
	if len(rows) > 0 {
		words := fmt.Sprintf("The pieces, all at 1 : %s", strconv.FormatFloat(scale, 'f', -1, 64))
		heading := underHeading(words, width)
		if beside := ink.Heading().Width(words) + text.Gutter; beside+ink.Text().Width(b.set.Included) <= width {
			heading.Say(b.set.Included, ink.Text(), plane.Point{X: beside, Y: ink.Heading().Foot() - ink.Heading().Step()})
		} else {
			heading.say(b.set.Included, ink.Text(), width)
		}
		heading.Space(headingGap)
		heading.under(rows[0])
		rows[0] = heading
	}
	if others := b.otherParts(width); others.Height > 0 {
		if len(rows) == 0 {
			alone := underHeading("What is here", width)
			alone.under(others)
			others = alone
		}
		rows = append(rows, others)
	}
	return apart(rows, rowGap)
}

// otherParts tells the parts that have no drawing, with their pages, in two columns.
func (b *Book) otherParts(width float64) entry {
	column := (width - text.Gutter) / 2
	var all entry
	right, low := false, 0.0
	for _, m := range b.set.Pieces {
		name := cmp.Or(m.Name, m.Key)
		if m.Part == 0 || slices.Contains(b.left, name) || slices.ContainsFunc(b.drawn, func(d miniature) bool { return slices.Contains(d.keys, m.Key) }) {
			continue
		}
		told := func(add int) []string {
			words := fmt.Sprintf("%d  %s", m.Part, name)
			if pages := pagesNamed(b.pagesOf([]string{m.Key}, mark.Task{}), add); pages != "" {
				words += ", " + pages
			}
			return text.WrapMeasures(words, ink.Text(), column)
		}
		at := plane.Point{Y: -all.Height}
		if right {
			at.X = column + text.Gutter
		}
		all.With(text.LinesOf(told(0), ink.Text()), at)
		low = max(low, float64(len(told(b.asWide())))*ink.Text().Step())
		if right = !right; !right {
			all.Height, low = all.Height+low, 0
		}
	}
	all.Height += low
	return all
}

// rowsOf lays the drawings in rows, each standing on one line.
func rowsOf(all []miniature, scale, width float64) []entry {
	var rows []entry
	room := min(widestName, max(narrowestName, width/float64(max(1, len(all)))-miniatureGap))
	for len(all) > 0 {
		n, used := 0, 0.0
		for n < len(all) {
			all[n].scale, all[n].room = 1/scale, room
			next := all[n].width()
			if n > 0 {
				next += miniatureGap
			}
			if n > 0 && used+next > width {
				break
			}
			used, n = used+next, n+1
		}
		rows = append(rows, rowOf(all[:n]))
		all = all[n:]
	}
	return rows
}

// rowOf lays drawings in one row.
func rowOf(all []miniature) entry {
	var row entry
	high, low := 0.0, 0.0
	var captions []text.Lines
	for _, m := range all {
		captions = append(captions, m.caption())
		high, low = max(high, m.size().Y), max(low, captions[len(captions)-1].Height)
	}
	x := 0.0
	for i, m := range all {
		row.put(m, plane.Point{X: x, Y: m.size().Y - high})
		row.With(captions[i], plane.Point{X: x, Y: -high - miniatureUnder})
		x += m.width() + miniatureGap
	}
	row.Height = high + miniatureUnder + low
	return row
}
