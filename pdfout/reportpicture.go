package pdfout

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strconv"

	"tuckmark/marking"
	"tuckmark/marking/plane"
)

// Rules of this file: a picture in the figures shows how things lie on something
// long, all to one scale but far from their size, in thin lines, so that nobody
// takes it for a sheet. Something long lies on its side, its lower end at the
// left. Every shape has its name in it; where that has no room, a number in it or
// beside it, and the name under the picture; a shape that has no room for that
// either is named under the picture. What is said of a line across the picture stands beside the
// picture, where the line ends, or under the picture.

const (
	pictureShare = 0.6  // the most of a page that a picture takes
	mostScale    = 0.5  // the most a picture shows of a mm, in mm
	longCloth    = 1.5  // what is longer than this many times its width lies on its side
	ruleTextSize = 7.0  // of what is said of a line, in points
	ruleBeside   = 42.0 // the room for that at the right of a picture, in mm
	ruleLines    = 3    // the most lines of it over a picture that lies on its side
	ruleLeast    = 12.0 // the least it is long there, in mm
	ruleTextAway = 1.2  // from its line, in mm
	ruleOver     = 0.8  // between it and the line or the frame under it, in mm
	nameRoom     = 0.5  // between a name in a shape and every line, in mm
	nameClosest  = 0.7  // the least between two places a name tries
	numberAway   = 0.5  // between a shape and a number beside it
	numberApart  = 0.3  // between that number and everything else
	legendMost   = 55.0 // the most a column of the legend is wide, in mm
	legendApart  = 6.0  // between two columns of the legend
	legendAbove  = 1.0  // free above the legend, and above the caption, in mm
)

// nameSizes and numberSizes are the sizes, in points, that a shape's name and its
// number may have, largest first.
func nameSizes() []float64   { return []float64{8, 7, 6, 5} }
func numberSizes() []float64 { return []float64{7, 6, 5} }

// clothPicture is a picture as it lies with the upper left corner of its frame at
// (0, 0).
type clothPicture struct {
	frame  plane.Box
	over   float64 // how far texts reach over the frame, in mm
	shapes []plane.Path
	rules  []plane.Path
	labels []label
}

// clothScale is where the places of a picture are drawn.
type clothScale struct {
	lying bool
	scale float64
	frame plane.Box // what is drawn of the whole, in mm
}

// at is where a place is drawn.
func (c clothScale) at(p plane.Point) plane.Point {
	p = p.Mul(c.scale)
	if c.lying {
		return plane.Point{X: c.frame.Min.X + p.Y, Y: c.frame.Max.Y - p.X}
	}
	return c.frame.Min.Add(p)
}

// newClothScale finds the scale of a picture, and whether it lies on its side.
func (s setter) newClothScale(p marking.Picture) clothScale {
	said := slices.ContainsFunc(p.Rules, func(r marking.PictureRule) bool { return r.Text != "" })
	size := plane.Point{X: p.Width, Y: p.Height}
	room := plane.Point{X: s.width, Y: pictureShare * s.height}
	c := clothScale{lying: p.Height > longCloth*p.Width}
	if c.lying {
		size = plane.Point{X: p.Height, Y: p.Width}
	}
	switch {
	case said && c.lying:
		room.Y -= ruleLines*leading*ruleTextSize*point + ruleOver
	case said:
		room.X -= ruleBeside
	}
	c.scale = min(mostScale, room.X/size.X, room.Y/size.Y)
	c.frame = plane.Box{Min: plane.Point{Y: -size.Y * c.scale}, Max: plane.Point{X: size.X * c.scale}}
	return c
}

// picture sets a picture with its caption, and what had no room in it.
func (s setter) picture(p marking.Picture) []band {
	c := s.newClothScale(p)
	drawn := &clothPicture{frame: c.frame}
	under := drawn.setRules(p, c, s.unit)
	pieces := drawn.setShapes(p, c)
	numbered, left := drawn.nameShapes(pieces)

	b := band{picture: drawn, above: pictureAbove}
	b.height = drawn.over + c.frame.Height()
	bands := []band{b}
	say := func(text string, ink colour) {
		width := math.Min(s.width, mostMeasure)
		more := bandsOf(regular().wrapWords(wordsOf(text), asideSize, width), regular(), asideSize, 0, ink)
		more[0].above = legendAbove
		bands = append(bands, more...)
	}
	if p.Caption != "" {
		say(p.Caption, grey())
	}
	for _, text := range under {
		say(text, black())
	}
	bands = append(bands, s.legend(numbered)...)
	if len(left) > 0 {
		say("Too small to be marked here: "+listOf(left)+".", black())
	}
	bands[0].keep = len(bands) > 1
	return bands
}

// setRules sets the lines across a picture, and what is said of them as far as
// there is room beside the picture. It returns what is to be said under it.
func (d *clothPicture) setRules(p marking.Picture, c clothScale, unit marking.Unit) []string {
	rules := slices.SortedStableFunc(slices.Values(p.Rules), func(a, b marking.PictureRule) int { return cmp.Compare(a.At, b.At) })
	var under []string
	for i, rule := range rules {
		if rule.At < 0 || rule.At > p.Height {
			if rule.Text != "" {
				under = append(under, underPicture(rule, unit))
			}
			continue
		}
		// Its part of the picture ends where the next begins.
		end := p.Height
		if i+1 < len(rules) {
			end = math.Min(end, rules[i+1].At)
		}
		from, to := c.at(plane.Point{Y: rule.At}), c.at(plane.Point{X: p.Width, Y: rule.At})
		room := c.at(plane.Point{Y: end}).Distance(from)
		line := plane.Path{from, to}
		if rule.Text != "" {
			if out, ok := d.sayRule(rule.Text, line, room, c.lying); ok {
				line = out
			} else {
				under = append(under, underPicture(rule, unit))
			}
		}
		d.rules = append(d.rules, line)
	}
	return under
}

func underPicture(rule marking.PictureRule, unit marking.Unit) string {
	return fmt.Sprintf("At %s: %s", unit.Print(rule.At), rule.Text)
}

// sayRule sets what is said of a line across the picture beside it, where it has
// room mm up to the next line, and returns the line with what reaches out to its
// text.
func (d *clothPicture) sayRule(text string, line plane.Path, room float64, lying bool) (plane.Path, bool) {
	limit, most := ruleBeside-2*ruleTextAway, int((room-ruleOver)/(leading*ruleTextSize*point))
	if lying {
		limit, most = room-2*ruleTextAway, ruleLines
	}
	if limit < ruleLeast || most < 1 {
		return nil, false
	}
	lines := regular().wrapWords(wordsOf(text), ruleTextSize, limit)
	if len(lines) > most {
		return nil, false
	}
	high := float64(len(lines)) * leading * ruleTextSize * point
	// The text stands over the line's end at the right, or, where the line runs
	// up, to the right of its upper end.
	at := line[1].Add(plane.Point{X: ruleTextAway, Y: ruleOver + high})
	out := plane.Path{line[0], line[1].Add(plane.Point{X: ruleBeside - ruleTextAway})}
	if lying {
		at = line[0].Add(plane.Point{X: ruleTextAway, Y: ruleOver + high})
		out = plane.Path{line[0].Add(plane.Point{Y: ruleOver + high}), line[1]}
		d.over = math.Max(d.over, ruleOver+high)
	}
	for i, l := range lines {
		base := at.Sub(plane.Point{Y: float64(i+1)*leading*ruleTextSize*point - footOfLine(ruleTextSize)})
		d.labels = append(d.labels, label{text: l, face: regular(), size: ruleTextSize, colour: grey(), at: base, u: across()})
	}
	return out, true
}

// setShapes sets the outlines of the shapes, and returns them as pieces that a
// name can be set in.
func (d *clothPicture) setShapes(p marking.Picture, c clothScale) []piece {
	var pieces []piece
	for _, shape := range p.Shapes {
		var path plane.Path
		for _, q := range shape.Outline {
			path = append(path, c.at(q))
		}
		path = coarse(path, pictureDetail)
		if len(path) > 1 && path[0] != path[len(path)-1] {
			path = append(path, path[0])
		}
		d.shapes = append(d.shapes, path)
		pieces = append(pieces, piece{
			name: shape.Name, outline: plane.NewTree(path), bounds: path.Bounds(),
			lines: []line{newLine(marking.Cut, "", path)},
		})
	}
	return pieces
}

// nameShapes writes the names into the shapes, and a number in a shape or beside
// it where a name has no room. It returns the names of the numbers, from 1 on, and
// the names of shapes that have no room even for a number, each once.
func (d *clothPicture) nameShapes(pieces []piece) (numbered, left []string) {
	var rules piece
	for _, r := range d.rules {
		rules.lines = append(rules.lines, newLine(marking.Cut, "", r))
	}
	f := newField(append(slices.Clone(pieces), rules))
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
	inAny := func(at plane.Point) bool {
		return slices.ContainsFunc(pieces, func(q piece) bool { return q.inside(at) })
	}
	for _, size := range numberSizes() {
		b := nameBlock(number, bold(), size, math.Inf(1))
		side := plane.Point{X: (p.bounds.Width()+b.width)/2 + numberAway}
		over := plane.Point{Y: (p.bounds.Height()+b.height)/2 + numberAway}
		for _, step := range []plane.Point{side, side.Mul(-1), over.Mul(-1), over} {
			at := p.bounds.Centre().Add(step)
			room := b.around(at, across())
			if d.framed(room.bounds()) && f.free(room.grown(numberApart)) && !inAny(at) {
				f.take(room)
				d.labels = append(d.labels, b.placed(at, across())...)
				return true
			}
		}
	}
	return false
}

// framed reports whether a box lies in the picture's frame.
func (d *clothPicture) framed(b plane.Box) bool { return d.frame.Holds(b.Min) && d.frame.Holds(b.Max) }

// nameBlock sets a name in lines no longer than limit mm, one under the other's
// middle.
func nameBlock(name string, f *face, size, limit float64) block {
	var b block
	words := wordsOf(name)
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

// What the pictures in the figures are drawn with, besides outlinePen: their
// frames, the lines across them, and the ground of their shapes.
func clothPen() pen      { return pen{continuous(), fineLine, grey(), noHeads} }
func acrossPen() pen     { return pen{dashed(), fineLine, black(), noHeads} }
func shapeTint() colour  { return colour{0.93, 0.93, 0.93} }
func overFrame() float64 { return outlinePen().width / 2 }

// roundingOff keeps a name from being broken that is exactly as wide as its
// column, in mm: far less than can be seen.
const roundingOff = 1e-6

// draw draws the picture in a band with its upper left corner at a place.
func (p *clothPicture) draw(d *document, at plane.Point) {
	d.place(at.Sub(plane.Point{Y: p.over}), 1)
	d.save()
	// Half of a line on the very frame lies beyond it.
	d.clip(p.frame.Grown(overFrame()))
	d.fillColour(shapeTint())
	for _, shape := range p.shapes {
		if len(shape) > 2 {
			d.path(shape)
			d.fill()
		}
	}
	d.pen(outlinePen())
	for _, shape := range p.shapes {
		if len(shape) > 1 {
			d.path(shape)
			d.stroke()
		}
	}
	d.restore()
	d.save()
	d.pen(clothPen())
	d.box(p.frame)
	d.stroke()
	d.pen(acrossPen())
	for _, rule := range p.rules {
		d.path(rule)
		d.stroke()
	}
	d.restore()
	for _, l := range p.labels {
		l.draw(d)
	}
}
