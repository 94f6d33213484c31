package piece

import (
	"slices"

	"tuckmark/marking/fault"
	"tuckmark/marking/plane"
	"tuckmark/marking/source"
	"tuckmark/marking/wording"
)

// Piece is one piece of the pattern, with the places of all its lines. The file has it as
// AsDrawn; Flat is what is cut; how long its lines are when it is finished is asked of it.
type Piece struct {
	Key    string
	Name   string
	Place  fault.Place
	Cut    int  // how many to cut
	Layers int  // of those, how many make one, such as outside and lining
	OnFold bool // the outline is half the piece
	Whole  bool // a piece on the fold is printed whole, not half of it
	Pair   bool // it is printed as it is drawn and turned over: left and right
	// Transfers are how its lines come onto the cloth; none where the file does not
	// say it of this piece.
	Transfers   []source.Transfer
	FromDrawing bool // its outline is that of a drawing, which has a size of its own
	// DrawnFinished tells that the outline, and all lines but those of tucks and of
	// pleats across, are drawn as they lie when the piece is finished; else as they lie
	// on the flat cloth.
	DrawnFinished bool

	// DrawnTo tells which line the file draws. The stitch lines of a piece of which it
	// draws those are as it draws them.
	DrawnTo source.DrawnTo

	Outline    plane.Path  // what is cut, closed, counter-clockwise, as it is drawn
	Tree       *plane.Tree // of the outline
	Edges      []Edge      // in their order round the outline
	rulings    []ruling    // of each edge
	Corners    []Corner    // at the end of each edge
	seams      *plane.Tree // all that is sewn, with the steps between: what is seen of the piece lies in it
	Lines      []Line
	grain      Grain       // as it is drawn
	grainLine  plane.Path  // two points, where the file gives them; else nil
	EdgePleats []EdgePleat // pleats in an edge
	Notches    []Notch

	AsDrawn   *Shape     // the piece as the file has it
	TuckRows  []TuckRow  // in the order of the file
	PleatRows []PleatRow // pleats across the piece, in the order of the file
	Flat      *Shape     // the piece on the flat cloth, its folds not yet made
	Block     *Block     // that the piece is cut from once it is tucked; nil for others

	FinishedOutline plane.Path      // with all folds in; nil without folds, or where it has no one shape
	Folded          []FlatGroup     // its folds, those that run one way together, what is folded first first; none where it has no one finished shape
	lengths         finishedLengths // measures its lines with tucks, and pleats across the piece, in
}

// Edge is one edge of an outline.
type Edge struct {
	Key  string
	Path plane.Path // the cutting line; the piece lies to its left
	// Given is the edge from corner to corner as the file draws it: Path, or the stitch
	// line. Distances from the edge, and along it, are measured on it.
	Given     plane.Path
	OnFold    bool    // the edge lies on the fold of the cloth
	Allowance float64 // from the cutting line to Line; 0 for an edge that is not sewn
	Hem       float64 // depth of the hem; 0 where the edge has an allowance
	Turn      float64 // what is turned in at the edge of the hem
	// Marked tells that the line is drawn on the cloth itself, as where lace is to
	// lie on it: what the file says, or else whether it bends between its ends,
	// so that no one ruler can be laid along it.
	Marked bool
	// Line is where the finished garment ends at this edge: the stitch line,
	// the fold of the hem, or, without an allowance, the edge itself.
	Line plane.Path
	// TurnLine is the fold of what is turned in, nil where nothing is.
	TurnLine plane.Path
	// Sewn is the part of Line between the lines of the two neighbours.
	Sewn plane.Path
	// FinishedLength is how long Sewn is when tucks and pleats are in, those in the edge
	// itself among them; the length of Sewn where there are none. Below its end line a
	// fold takes up nothing: there a piece drawn finished is longer than it is drawn.
	FinishedLength float64

	Place  fault.Place
	usual  fault.Place  // where the allowance stands that it has because it gives none; the zero Place else
	inside float64      // how far inside Path Given lies, in mm: 0, or Allowance
	steps  [2]float64   // how long its first and its last step are as the file gives them, in mm
	curve  *smoothCurve // nil where it is straight or an arc
}

// Seams returns the ring of all that is sewn, with the steps between, as the piece is drawn: a
// closed path. What is seen of the finished piece lies in it.
func (p *Piece) Seams() plane.Path { return p.seams.Path() }

// Words are its key and its name, as words are looked for in them.
func (p *Piece) Words() string { return wording.InWords(p.Key + " " + p.Name) }

// EdgeNumber returns the number of the edge with that key, or -1.
func (p *Piece) EdgeNumber(key string) int {
	for i := range p.Edges {
		if p.Edges[i].Key == key {
			return i
		}
	}
	return -1
}

// Neighbours returns the numbers of the edges before and after edge i, going
// round counter-clockwise.
func (p *Piece) Neighbours(i int) (before, after int) {
	n := len(p.Edges)
	return (i + n - 1) % n, (i + 1) % n
}

// LiesFolded reports whether the cloth lies folded along an edge of the piece when it is marked
// and cut. One that is cut from a tucked block lies open, half of it at a time, and so does one
// that is printed whole: there that edge is the centre line.
func (p *Piece) LiesFolded() bool { return p.OnFold && !p.Whole && p.Block == nil }

// IsTucked reports whether the piece is cut from a block that is stitched, and measured, already.
func (p *Piece) IsTucked() bool { return p.Block != nil && p.Block.Measured != nil }

// EdgeOnFold returns the number of the edge on the fold of the cloth, or -1.
func (p *Piece) EdgeOnFold() int {
	return slices.IndexFunc(p.Edges, func(e Edge) bool { return e.OnFold })
}
