package report

import (
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
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
	lyingFrom    = 1.5  // what is longer than this many times its width lies on its side
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

// picture is a picture as it lies with the upper left corner of its frame at
// (0, 0).
type picture struct {
	frame  plane.Box // round the whole, whatever its bands cover
	over   float64   // how far texts reach over the frame, in mm
	bands  []plane.Box
	edges  []plane.Path // the sides of the bands
	folds  []plane.Path // those that are folds
	shapes []plane.Path
	labels []text.Label
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

// pictureScale is where the places of a picture are drawn.
type pictureScale struct {
	lying bool
	scale float64
	frame plane.Box // what is drawn of the whole, in mm
}

// at is where a place is drawn.
func (c pictureScale) at(p plane.Point) plane.Point {
	p = p.Mul(c.scale)
	if c.lying {
		return plane.Point{X: c.frame.Min.X + p.Y, Y: c.frame.Max.Y - p.X}
	}
	return c.frame.Min.Add(p)
}

// box is where a band of a picture is drawn, as far as it lies on the picture; an
// empty box where nothing of it does.
func (c pictureScale) box(b mark.Band, p mark.Picture) plane.Box {
	from, to := max(0, b.From), min(p.Height, b.To)
	width := min(p.Width, b.Width)
	if !(from < to && width > 0) {
		return plane.EmptyBox()
	}
	return plane.EmptyBox().With(c.at(plane.Point{Y: from})).With(c.at(plane.Point{X: width, Y: to}))
}

// scaleOf finds the scale of a picture, and whether it lies on its side.
func (r room) scaleOf(p mark.Picture) pictureScale {
	size, width, height := plane.Point{X: p.Width, Y: p.Height}, r.width, r.height
	c := pictureScale{lying: r.across && p.Height > lyingFrom*p.Width}
	if c.lying {
		size = plane.Point{X: p.Height, Y: p.Width}
		if slices.ContainsFunc(p.Bands, func(b mark.Band) bool { return b.Text != "" }) {
			height -= bandLines*ink.Caption().Step() + bandTextOver
		}
	}
	c.scale = min(mostScale, width/size.X, height/size.Y)
	c.frame = plane.Box{Min: plane.Point{Y: -size.Y * c.scale}, Max: plane.Point{X: size.X * c.scale}}
	return c
}

// picture sets a picture with its caption, and what had no room in it.
func (s setter) picture(p mark.Picture) setPicture {
	drawn := room{s.width, pictureShare * s.page.Height(), s.count == 1}.draw(p)
	bands := []band{{Lines: text.Lines{Height: drawn.Height()}, picture: drawn.picture, above: pictureAbove}}
	aside := ink.Text()
	say := func(words string, style ink.Style) {
		more := bandsOf(text.WrapMeasures(words, style, min(s.width, mostMeasure)), style, 0)
		more[0].above = legendAbove
		bands = append(bands, more...)
	}
	if p.Caption != "" {
		say(p.Caption, ink.Caption())
	}
	for _, words := range drawn.Unsaid {
		say(words, aside)
	}
	bands = append(bands, s.legend(drawn.Signed)...)
	if drawn.Left != "" {
		say(drawn.Left, aside)
	}
	bands[0].keep = len(bands) > 1
	return setPicture{bands, namesOf(p), len(drawn.Signed), drawn.left}
}

// namesOf counts the different names of a picture's shapes.
func namesOf(p mark.Picture) int {
	names := map[string]bool{}
	for _, shape := range p.Shapes {
		if shape.Name != "" {
			names[shape.Name] = true
		}
	}
	return len(names)
}

// newField looks at all lines of the picture.
func (d *picture) newField(pieces []arrange.Piece) *arrange.Field {
	var edges arrange.Piece
	for _, path := range slices.Concat(d.edges, d.folds) {
		edges.Lines = append(edges.Lines, arrange.NewLine(mark.Cut, "", path))
	}
	return arrange.NewField(append(slices.Clone(pieces), edges))
}

// setShapes sets the outlines of the shapes, and returns them as pieces that a
// name can be set in.
func (d *picture) setShapes(p mark.Picture, c pictureScale) []arrange.Piece {
	var pieces []arrange.Piece
	for _, shape := range p.Shapes {
		var path plane.Path
		for _, q := range shape.Outline {
			path = append(path, c.at(q))
		}
		path = ink.Coarse(path, ink.PictureDetail)
		if len(path) > 1 && path[0] != path[len(path)-1] {
			path = append(path, path[0])
		}
		d.shapes = append(d.shapes, path)
		pieces = append(pieces, arrange.Piece{
			Name: shape.Name, Part: shape.Part, Outline: plane.NewTree(path), Bounds: path.Bounds(),
			Lines: []arrange.Line{arrange.NewLine(mark.Cut, "", path)},
		})
	}
	return pieces
}

// onBand reports whether a box lies in a band of the picture.
func (d *picture) onBand(b plane.Box) bool {
	return slices.ContainsFunc(d.bands, func(on plane.Box) bool { return on.Holds(b.Min) && on.Holds(b.Max) })
}

// framed reports whether a box lies in the picture's frame.
func (d *picture) framed(b plane.Box) bool { return d.frame.Holds(b.Min) && d.frame.Holds(b.Max) }

// What the pictures in the figures are drawn with, besides ink.OutlinePen: the sides of
// their bands, the folds, what lies under those, and the ground of their shapes. A
// fold is drawn as on a sheet, but thinner. An outline that lies on it is covered:
// there nothing is cut.
func bandPen() ink.Pen { return ink.LinePen(ink.FineLine, ink.Grey()) }

func bandFoldPen() ink.Pen { return ink.PenOf(mark.FoldEdge).In(0.35, ink.Black()) }

func underFoldPen() ink.Pen { return ink.LinePen(0.5, ink.White()) }

func shapeTint() ink.Colour { return ink.Colour{0.93, 0.93, 0.93} }

func overFrame() float64 { return ink.OutlinePen().Width / 2 }

// roundingOff keeps a name from being broken that is exactly as wide as its
// column, in mm: far less than can be seen.
const roundingOff = 1e-6

// draw draws the picture in a band with its upper left corner at a place.
func (d *picture) draw(c ink.Canvas, at plane.Point) {
	c.Place(at.Sub(plane.Point{Y: d.over}), 1)
	c.Save()
	// Half of a line on the very frame lies beyond it.
	c.Clip(d.frame.Grown(overFrame()))
	c.Ink(shapeTint())
	for _, shape := range d.shapes {
		if len(shape) > 2 {
			c.Path(shape)
			c.Fill()
		}
	}
	c.Pen(ink.OutlinePen())
	for _, shape := range d.shapes {
		if len(shape) > 1 {
			c.Path(shape)
			c.Stroke()
		}
	}
	c.Restore()
	c.Save()
	for _, set := range []struct {
		pen   ink.Pen
		lines []plane.Path
	}{{bandPen(), d.edges}, {underFoldPen(), d.folds}, {bandFoldPen(), d.folds}} {
		c.Pen(set.pen)
		ink.StrokeEach(c, set.lines...)
	}
	c.Restore()
	for _, l := range d.labels {
		l.Draw(c)
	}
}
