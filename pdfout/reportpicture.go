package pdfout

import (
	"math"
	"slices"
	"strconv"

	"tuckmark/marking"
	"tuckmark/marking/plane"
)

// Rules of this file: a picture in the figures shows how things lie on something
// long, all to one scale but far from their size, in thin lines, so that nobody
// takes it for a sheet. Across a page something long lies on its side, its lower end
// at the left; in a column everything stands upright. Each band of it has a frame, as
// wide as the band is; one narrower than the whole is folded, and its left side is
// drawn as a fold. Every shape has its name in it; where that has no room, a number in
// it or beside it, and the name under the picture; a shape that has no room for that
// either is named under the picture. What is said of a band stands beside its frame,
// over a picture that lies on its side, or in the band where nothing lies; where none
// of that has room, under the picture.

const (
	pictureShare = 0.6  // the most of a page that a picture takes
	mostScale    = 0.5  // the most a picture shows of a mm, in mm
	longCloth    = 1.5  // what is longer than this many times its width lies on its side
	bandTextSize = 7.0  // of what is said of a band, in points
	bandLines    = 3    // the most lines of it over a picture that lies on its side
	bandLeast    = 14.0 // the least it is long, in mm
	bandMost     = 60.0 // the most it is long beside a band or in it
	bandTextAway = 1.2  // between it and the end of its band or the frame beside it, in mm
	bandTextOver = 0.8  // between it and the frame over or under it
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
	frame  plane.Box // round the whole, whatever its bands cover
	over   float64   // how far texts reach over the frame, in mm
	bands  []plane.Box
	edges  []plane.Path // the sides of the bands
	folds  []plane.Path // those that are folds
	shapes []plane.Path
	labels []label
}

// setPicture is a picture set in bands of a page, and how well it can be read.
type setPicture struct {
	bands []band
	names int // how many names its shapes have
	// numbered are how many of them stand under the picture alone, with a number;
	// left those that have no room even for that.
	numbered, left int
}

// hardToRead reports whether a shape has no room for any sign, or more names stand
// under the picture than in it.
func (p setPicture) hardToRead() bool { return p.left > 0 || 2*p.numbered > p.names }

// easierThan reports whether more of the shapes can be read than in another setting
// of the same picture.
func (p setPicture) easierThan(o setPicture) bool {
	return p.left < o.left || p.left == o.left && p.numbered < o.numbered
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

// box is where a band of a picture is drawn, as far as it lies on the picture; an
// empty box where nothing of it does.
func (c clothScale) box(b marking.Band, p marking.Picture) plane.Box {
	from, to := math.Max(0, b.From), math.Min(p.Height, b.To)
	width := math.Min(p.Width, b.Width)
	if !(from < to && width > 0) {
		return plane.EmptyBox()
	}
	return plane.EmptyBox().With(c.at(plane.Point{Y: from})).With(c.at(plane.Point{X: width, Y: to}))
}

// newClothScale finds the scale of a picture, and whether it lies on its side.
func (s setter) newClothScale(p marking.Picture) clothScale {
	size := plane.Point{X: p.Width, Y: p.Height}
	room := plane.Point{X: s.width, Y: pictureShare * s.page.Height()}
	c := clothScale{lying: !s.half && p.Height > longCloth*p.Width}
	if c.lying {
		size = plane.Point{X: p.Height, Y: p.Width}
		if slices.ContainsFunc(p.Bands, func(b marking.Band) bool { return b.Text != "" }) {
			room.Y -= bandLines*leading*bandTextSize*point + bandTextOver
		}
	}
	c.scale = min(mostScale, room.X/size.X, room.Y/size.Y)
	c.frame = plane.Box{Min: plane.Point{Y: -size.Y * c.scale}, Max: plane.Point{X: size.X * c.scale}}
	return c
}

// picture sets a picture with its caption, and what had no room in it.
func (s setter) picture(p marking.Picture) setPicture {
	if len(p.Bands) == 0 {
		p.Bands = []marking.Band{{To: p.Height, Width: p.Width}}
	}
	c := s.newClothScale(p)
	drawn := &clothPicture{frame: c.frame}
	drawn.setBands(p, c)
	pieces := drawn.setShapes(p, c)
	f := drawn.newField(pieces)
	unsaid := drawn.sayOutside(p, c, f, s.width)
	numbered, left := drawn.nameShapes(pieces, f)
	unsaid = drawn.sayInside(unsaid, f, pieces)

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
	for _, one := range unsaid {
		say(one.text, black())
	}
	bands = append(bands, s.legend(numbered)...)
	if len(left) > 0 {
		say("Too small to be marked here: "+listOf(left)+".", black())
	}
	bands[0].keep = len(bands) > 1
	return setPicture{bands, namesOf(p), len(numbered), len(left)}
}

// namesOf counts the different names of a picture's shapes.
func namesOf(p marking.Picture) int {
	names := map[string]bool{}
	for _, shape := range p.Shapes {
		if shape.Name != "" {
			names[shape.Name] = true
		}
	}
	return len(names)
}

// setBands sets the frames of the bands.
func (d *clothPicture) setBands(p marking.Picture, c clothScale) {
	for _, b := range p.Bands {
		box := c.box(b, p)
		if box.Empty() {
			continue
		}
		d.bands = append(d.bands, box)
		// Counter-clockwise from the end of the band's left side.
		corners := []plane.Point{{X: box.Min.X, Y: box.Max.Y}, box.Min, {X: box.Max.X, Y: box.Min.Y}, box.Max}
		if c.lying {
			corners = append(corners[3:], corners[:3]...)
		}
		if b.Width < p.Width {
			d.folds = append(d.folds, plane.Path{corners[1], corners[0]})
			d.edges = append(d.edges, plane.Path{corners[1], corners[2], corners[3], corners[0]})
		} else {
			d.edges = append(d.edges, plane.Path{corners[0], corners[1], corners[2], corners[3], corners[0]})
		}
	}
}

// newField looks at all lines of the picture.
func (d *clothPicture) newField(pieces []piece) *field {
	var edges piece
	for _, path := range slices.Concat(d.edges, d.folds) {
		edges.lines = append(edges.lines, newLine(marking.Cut, "", path))
	}
	return newField(append(slices.Clone(pieces), edges))
}

// saidOfBand is what is said of a band, and where that is drawn.
type saidOfBand struct {
	text string
	box  plane.Box // empty where nothing is drawn
}

// sayOutside sets what is said of the bands beside them, within some width, and over
// a picture that lies on its side. It returns what has no room there.
func (d *clothPicture) sayOutside(p marking.Picture, c clothScale, f *field, width float64) []saidOfBand {
	var unsaid []saidOfBand
	for _, b := range p.Bands {
		if b.Text == "" {
			continue
		}
		one := saidOfBand{b.Text, c.box(b, p)}
		switch {
		case one.box.Empty():
		case !c.lying && d.sayBeside(one, f, width):
			continue
		case c.lying && (d.sayUnder(one, f) || d.sayOver(one, f)):
			continue
		}
		unsaid = append(unsaid, one)
	}
	return unsaid
}

// sayBeside sets what is said of a band to the right of its frame, at the middle of
// its height, and reports whether there is room.
func (d *clothPicture) sayBeside(one saidOfBand, f *field, width float64) bool {
	b, ok := bandText(one.text, width-one.box.Max.X-2*bandTextAway, one.box.Height()-2*bandTextOver)
	return ok && d.say(b, plane.Point{X: one.box.Max.X + bandTextAway, Y: one.box.Centre().Y + b.height/2}, f)
}

// sayUnder sets what is said of a band that lies on its side under its frame, in
// the frame of the whole.
func (d *clothPicture) sayUnder(one saidOfBand, f *field) bool {
	b, ok := bandText(one.text, one.box.Width()-2*bandTextAway, one.box.Min.Y-d.frame.Min.Y-bandTextOver)
	return ok && d.say(b, one.box.Min.Add(plane.Point{X: bandTextAway, Y: -bandTextOver}), f)
}

// sayOver sets what is said of a band that lies on its side over the picture.
func (d *clothPicture) sayOver(one saidOfBand, f *field) bool {
	b, ok := bandText(one.text, one.box.Width()-2*bandTextAway, bandLines*leading*bandTextSize*point)
	if !ok || !d.say(b, plane.Point{X: one.box.Min.X + bandTextAway, Y: bandTextOver + b.height}, f) {
		return false
	}
	d.over = math.Max(d.over, bandTextOver+b.height)
	return true
}

// sayInside sets what is said of bands where nothing lies on them, and returns what
// has no room there.
func (d *clothPicture) sayInside(said []saidOfBand, f *field, pieces []piece) []saidOfBand {
	var unsaid []saidOfBand
	for _, one := range said {
		if one.box.Empty() || !d.sayAmong(one, f, pieces) {
			unsaid = append(unsaid, one)
		}
	}
	return unsaid
}

// sayAmong sets what is said of a band among the shapes on it, and reports whether
// there is room.
func (d *clothPicture) sayAmong(one saidOfBand, f *field, pieces []piece) bool {
	corners := plane.Path{one.box.Min, {X: one.box.Max.X, Y: one.box.Min.Y}, one.box.Max, {X: one.box.Min.X, Y: one.box.Max.Y}, one.box.Min}
	band := piece{outline: plane.NewTree(corners), bounds: one.box}
	places := band.places(f, nameRoom, nameClosest)
	free := func(b plane.Box) bool {
		return one.box.Holds(b.Min) && one.box.Holds(b.Max) && !inAny(pieces, b.Centre())
	}
	for _, limit := range []float64{bandMost, 0.6 * bandMost, 0.4 * bandMost} {
		b, ok := bandText(one.text, math.Min(limit, one.box.Width()), one.box.Height())
		if !ok {
			continue
		}
		if found, ok := band.roomiest(f, places, b, across(), nameRoom, free); ok {
			return d.say(b, found.middle.Add(plane.Point{X: -b.width / 2, Y: b.height / 2}), f)
		}
	}
	return false
}

// bandText sets what is said of a band in lines of limit mm, or of bandMost, and
// reports whether they are long enough and no higher than high.
func bandText(text string, limit, high float64) (block, bool) {
	limit = math.Min(limit, bandMost)
	if limit < bandLeast {
		return block{}, false
	}
	b := nameBlock(text, regular(), bandTextSize, limit)
	for i := range b.lines {
		b.lines[i].at.X, b.lines[i].colour = 0, grey()
	}
	return b, !b.broken && b.height <= high
}

// say sets a text with its upper left corner at a place, and reports whether that is
// free.
func (d *clothPicture) say(b block, at plane.Point, f *field) bool {
	middle := at.Add(plane.Point{X: b.width / 2, Y: -b.height / 2})
	room := b.around(middle, across())
	if !f.free(room) {
		return false
	}
	f.take(room)
	d.labels = append(d.labels, b.placed(middle, across())...)
	return true
}

// inAny reports whether a place lies within one of some pieces.
func inAny(pieces []piece, at plane.Point) bool {
	return slices.ContainsFunc(pieces, func(p piece) bool { return p.inside(at) })
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

// onBand reports whether a box lies in a band of the picture.
func (d *clothPicture) onBand(b plane.Box) bool {
	return slices.ContainsFunc(d.bands, func(on plane.Box) bool { return on.Holds(b.Min) && on.Holds(b.Max) })
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

// What the pictures in the figures are drawn with, besides outlinePen: the sides of
// their bands, the folds, what lies under those, and the ground of their shapes. A
// fold is drawn as on a sheet, but thinner. An outline that lies on it is covered:
// there nothing is cut.
func clothPen() pen      { return pen{continuous(), fineLine, grey(), noHeads} }
func clothFoldPen() pen  { return pen{penOf(marking.FoldEdge).kind, 0.35, black(), noHeads} }
func underFoldPen() pen  { return pen{continuous(), 0.5, colour{1, 1, 1}, noHeads} }
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
	for _, set := range []struct {
		pen   pen
		lines []plane.Path
	}{{clothPen(), p.edges}, {underFoldPen(), p.folds}, {clothFoldPen(), p.folds}} {
		d.pen(set.pen)
		for _, line := range set.lines {
			d.path(line)
			d.stroke()
		}
	}
	d.restore()
	for _, l := range p.labels {
		l.draw(d)
	}
}
