package arrange

import (
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
)

// Rules of this file: no piece is scaled, mirrored, or turned by anything but a quarter.

// Spare is kept free between the bounds of a piece's lines and the sides of
// its sheet, in mm: room for half a line's width and for arrow heads.
const Spare = 2.0

// Line is a mark as it lies on its sheet: its path, with a role and a name.
type Line struct {
	*plane.Tree
	Role mark.Role
	Name string // stands along it; "" for none
	Key  string // what it is known by among the lines of its piece; "" for nothing
}

// NewLine makes a line of a path, which may have no length.
func NewLine(role mark.Role, name string, p plane.Path) Line {
	return Line{Tree: plane.NewTree(p), Role: role, Name: name}
}

// Solids returns the heads and flags of a line.
func (l Line) Solids() []ink.Solid { return ink.SolidsOf(ink.PenOf(l.Role), l.Path()) }

// Piece is a piece as it lies on its sheet.
type Piece struct {
	Key     string       // no other piece of a set has it
	Name    string       // that its sign has; the key of one without a name
	Kind    mark.Kind    // what it is for
	Of      string       // the name of the piece of cloth it is of; "" where it is of several
	Part    int          // its number among all that is printed with it; 0 where it has none
	Cut     string       // how often it is cut; "" where it is not
	Side    mark.Side    // that lies up
	Notes   []string     // what is to be known of it
	Steps   []string     // what is done with it
	sketch  *mark.Sketch // that stands with them; nil for most
	Outline *plane.Tree  // says what lies in it; it need not be drawn
	Lines   []Line
	Bounds  plane.Box // of all its lines
	Turned  bool      // by a quarter turn to the left
	// What is written at places of it, told between two of them, and pale across it.
	words      []mark.Word
	dimensions []mark.Dimension
	pale       []string
	// Foot is the room kept under the piece for its sign and its panel, in mm;
	// zero where they have room inside.
	Foot plane.Point
	// Aside is the room kept for it at the right of the piece, in mm, where there is none
	// under it.
	Aside float64
	// around is the room kept for its words: how far they reach beyond its bounds, to
	// the left and under it, and to the right and over it, in mm.
	around around
}

// around is how far something reaches beyond a piece, in mm.
type around struct{ min, max plane.Point }

// NewPiece takes the lines of a marking that have some length.
func NewPiece(m mark.Marking) Piece {
	p := Piece{
		Key: m.Key, Name: m.Name, Kind: m.Kind, Of: m.Piece, Part: m.Part, Cut: m.Cut, Side: m.Side,
		Notes: m.Notes, Steps: m.Steps, sketch: m.Sketch,
		Outline: plane.NewTree(m.Outline), Bounds: plane.EmptyBox(),
		words: m.Words, dimensions: m.Dimensions, pale: m.Pale,
	}
	if p.Name == "" {
		p.Name = m.Key
	}
	for _, one := range m.Marks {
		for _, path := range ink.LinesOf(one) {
			if l := NewLine(one.Role, one.Name, path); l.Length() > 0 {
				l.Key = one.Called()
				p.Lines = append(p.Lines, l)
				p.Bounds = p.Bounds.Union(l.Bounds())
			}
		}
	}
	if len(p.Lines) == 0 {
		p.Bounds = plane.Box{} // a form that is only written on
	}
	return p
}

// Moved returns the piece moved by a step.
func (p Piece) Moved(step plane.Point) Piece { return p.laid(step.Add) }

// QuarterTurned returns the piece turned by a quarter turn to the left; ruled paper as it is.
func (p Piece) QuarterTurned() Piece {
	if p.Kind.Ruled() {
		return p
	}
	p.Turned = !p.Turned
	return p.laid(plane.Point.Left)
}

// upright returns the piece as it was drawn.
func (p Piece) upright() Piece {
	if !p.Turned {
		return p
	}
	p.Turned = false
	return p.laid(func(q plane.Point) plane.Point { return q.Left().Mul(-1) })
}

// laid returns the piece with every point brought where it is to lie.
func (p Piece) laid(to func(plane.Point) plane.Point) Piece {
	path := func(p plane.Path) plane.Path {
		q := make(plane.Path, len(p))
		for i, at := range p {
			q[i] = to(at)
		}
		return q
	}
	p.Outline = plane.NewTree(path(p.Outline.Path()))
	words, dimensions := p.words, p.dimensions
	p.words, p.dimensions = nil, nil
	for _, w := range words {
		p.words = append(p.words, w.Placed(to))
	}
	for _, d := range dimensions {
		p.dimensions = append(p.dimensions, d.Placed(to))
	}
	lines := p.Lines
	p.Lines, p.Bounds = nil, plane.EmptyBox()
	for _, l := range lines {
		l.Tree = plane.NewTree(path(l.Path()))
		p.Lines = append(p.Lines, l)
		p.Bounds = p.Bounds.Union(l.Bounds())
	}
	if p.around != (around{}) && !p.Kind.Ruled() {
		p = p.withWords() // they are not turned with it
	}
	return p
}

// Room is how much of a sheet the piece needs, in mm, its foot and what its words need
// included.
func (p Piece) Room() plane.Point {
	words := p.around.min.Add(p.around.max)
	return plane.Point{
		X: max(p.Bounds.Width()+words.X+p.Aside, p.Foot.X) + 2*Spare,
		Y: p.Bounds.Height() + words.Y + p.Foot.Y + 2*Spare,
	}
}

// Corner is the lower left corner of that, in the piece's place.
func (p Piece) Corner() plane.Point {
	return p.Bounds.Min.Sub(p.around.min).Sub(plane.Point{X: Spare, Y: Spare + p.Foot.Y})
}

// withWords returns the piece with room for its words, each right by its place.
func (p Piece) withWords() Piece {
	all := p.Bounds
	for _, w := range p.words {
		all = all.Union(ways()[0].by(Anchor{At: w.At, Out: w.Out.Unit()}, wordOf(w)).Grown(nearRoom).Bounds())
	}
	p.around = around{}
	return p.holding(all)
}

// holding returns the piece with room for a box too, as far as that goes beyond its lines.
func (p Piece) holding(b plane.Box) Piece {
	all := p.Bounds.Union(b)
	low, high := p.Bounds.Min.Sub(all.Min), all.Max.Sub(p.Bounds.Max)
	p.around.min = plane.Point{X: max(p.around.min.X, low.X), Y: max(p.around.min.Y, low.Y)}
	p.around.max = plane.Point{X: max(p.around.max.X, high.X), Y: max(p.around.max.Y, high.Y)}
	return p
}

// Fits reports whether the piece can be printed on one page.
func (p Piece) Fits(window plane.Point) bool {
	return p.Room().X <= window.X && p.Room().Y <= window.Y
}

// fitsEitherWay reports whether it can be, upright or turned.
func (p Piece) fitsEitherWay(window plane.Point) bool {
	return p.Fits(window) || p.QuarterTurned().Fits(window)
}

// Inside reports whether a place lies within the piece's outline.
func (p Piece) Inside(q plane.Point) bool { return p.Outline.Holds(q) }
