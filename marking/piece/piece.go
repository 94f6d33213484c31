package piece

import (
	"tuckmark/marking/fault"
	"tuckmark/marking/plane"
	"tuckmark/marking/source"
)

// Remark is something in a file that is no mistake but may not be meant, or that
// follows from it.
type Remark struct {
	fault.Place
	Text string

	InTable bool // a table of the figures says it too
}

// String gives the remark behind its place.
func (r Remark) String() string { return r.Place.Before(r.Text) }

// Piece is one piece of the pattern, with the places of all its lines.
type Piece struct {
	Key     string
	Name    string
	Cut     int        // how many to cut
	Layers  int        // of those, how many make one, such as outside and lining
	OnFold  bool       // the outline is half the piece
	Outline plane.Path // closed, counter-clockwise
	Edges   []Edge     // in their order round the outline
	// Finished tells that the outline and all lines but those of tucks and
	// Pleatings are drawn as they lie when the piece is finished; else as they
	// lie on the flat cloth.
	DrawnFinished bool
	TuckRows      []TuckRow
	EdgePleats    []EdgePleat // in an edge
	PleatRows     []PleatRow  // across the piece
	Block         *Block      // that the piece is cut from once it is tucked; nil for others
	Whole         bool        // a piece on the fold is printed whole, not half of it
	Pair          bool        // it is printed as it is drawn and turned over: left and right
	// Transfers are how its lines come onto the cloth; none where the file does not
	// say it of this piece.
	Transfers []source.Transfer
	Lines     []Line
	Notches   []Notch
	GrainLine plane.Path // two points, where the file gives them; else nil

	// GrainAlong is the edge that the grain was taken to follow where the file does not
	// say it, which is where grainGiven is false.
	GrainAlong      string
	GrainGiven      bool
	Place           fault.Place
	GrainDirection  plane.Point // the direction of the grain, of length 1
	Tree            *plane.Tree // of the outline
	rulings         []ruling    // of each edge
	Corners         []Corner    // at the end of each edge
	Seams           *plane.Tree // all that is sewn, with the steps between: what is seen of the piece lies in it
	inFolds         inFolds     // measures its lines with tucks, and pleats across the piece, in
	Flat            *Shape      // the piece on the flat cloth
	FinishedOutline plane.Path  // the outline when all folds are in; nil without folds, or where it has no one shape
}

// Edge is one edge of an outline.
type Edge struct {
	Key       string
	Path      plane.Path // the cutting line; the piece lies to its left
	OnFold    bool       // the edge lies on the fold of the cloth
	Allowance float64    // from the cutting line to Line; 0 for an edge that is not sewn
	Hem       float64    // depth of the hem; 0 where the edge has an allowance
	Turn      float64    // what is turned in at the edge of the hem
	// Marked tells that the line is drawn on the cloth itself, as where lace is to
	// lie on it: what the file says, or else whether it is a smooth curve, along
	// which no ruler can be laid.
	Marked bool
	// Line is where the finished garment ends at this edge: the stitch line,
	// the fold of the hem, or, without an allowance, the edge itself.
	Line plane.Path
	// TurnLine is the fold of what is turned in, nil where nothing is.
	TurnLine plane.Path
	// Sewn is the part of Line between the lines of the two neighbours.
	Sewn plane.Path
	// Folded is how long Sewn is when tucks and pleats are in, those in the edge
	// itself among them; the length of Sewn where there are none. Below its end line a fold takes
	// up nothing: there a piece drawn finished is longer than it is drawn.
	FinishedLength float64

	Place fault.Place
	steps [2]float64 // how long its first and its last step are as the file gives them, in mm
}

// Edge returns the number of the edge with that key, or -1.
func (p *Piece) Edge(key string) int {
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
