package source

import (
	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/wording"
)

// Spec is a file as it is written: every value read and turned into
// millimetres, none yet compared with another. What the file leaves out is
// the zero value. One that a program makes may break what Read sees to: Faults tells.
type Spec struct {
	File       string             // as it was named; "" where there is none
	Others     []string           // files beside it that it was read from too, in the order of their names
	View       string             // that was chosen; "" where it is the file as it stands
	Views      []string           // that may be chosen, in the order of the file
	Title      Text               // of the garment
	Size       Text               // in the maker's own words
	Unit       Value[length.Unit] // inches where none is given, which the maker ought to be told
	Allowance  Length             // of every edge that gives none
	ClothWidth Length             // between the selvages
	SeeThrough Flag               // whether lines below the cloth can be traced
	Sleepwear  bool               // it is worn at night, where its title does not say so
	Pieces     []PieceSpec        // in the order of the file, like every list below
	Seams      []SeamSpec
	Trims      []TrimSpec
	Ruffles    []RuffleSpec
	Bindings   []BindingSpec
	Sewing     SewingSpec
	Fit        FitSpec
	// Unspaced are the fractions in which a space may be missing, in the order of the file.
	Unspaced []Value[length.Unspaced]
}

// PieceSpec is one [piece.KEY].
type PieceSpec struct {
	Key    string
	Place  fault.Place
	Name   Text         // on the sheets; its key where none is given
	Cut    Count        // how many are cut
	Layers Count        // of those cut, how many make one, such as outside and lining
	Fold   Text         // the edge that lies on a fold
	Drawn  Value[Drawn] // with room for what the folds take up, or without
	// DrawnTo is the line that the outline is; distances from an edge, and along it, are
	// measured on that line.
	DrawnTo Value[DrawnTo]
	Print   Value[Print] // how much of it
	// Enlarge is how many times as large the piece is as its points say; see FullSize.
	Enlarge Factor
	// Transfer is how its lines come onto the cloth; none where the file does not say.
	Transfer    Value[[]Transfer]
	FromDrawing bool // its edges are those of a drawing, which the unit of the file does not measure
	GrainAlong  Text // grain = "an edge or a line", or ...
	GrainPoints Points
	Edges       []EdgeSpec
	Tucks       []TuckSpec
	EdgePleats  []EdgePleatSpec
	PleatRows   []PleatRowSpec
	Lines       []LineSpec
	Notches     []NotchSpec
	Block       *BlockSpec // nil where the piece is not cut from a tucked block
}

// ShownName returns what the piece is called on the sheets: its key where the file
// gives no name.
func (s PieceSpec) ShownName() string {
	if s.Name.Given() {
		return s.Name.V
	}
	return s.Key
}

// EdgeSpec is one [piece.KEY.edge.KEY].
type EdgeSpec struct {
	Key       string
	Place     fault.Place
	Points    Points // from corner to corner
	Redrawn   bool   // in place of other points: the edges beside it follow
	Smooth    bool   // a curve through its points, else straight from each to the next, or
	Centre    Point  // of the circle's arc that it is, through two points, or three
	Allowance Length // of its seam
	Hem       Length // its depth, in place of a seam's allowance
	Turn      Length // what is folded under at the edge of the hem
	Marked    Flag   // its stitch line is drawn on the cloth itself
}

// TuckSpec is one [piece.KEY.tuck.KEY].
type TuckSpec struct {
	Key     string
	Place   fault.Place
	Beside  Text   // the edge or line that they run along
	Side    Text   // the edge on whose side of Beside the tucks lie
	Width   Length // from the fold to the stitching
	Count   Count  // of one group, where they are in groups
	First   Length // from Beside to the first fold
	Spacing Length // from fold to fold on the flat cloth, or ...
	Gap     Length // ... what shows between two of them once they are sewn
	// Groups is how many there are; Between what shows between two of them once they are
	// sewn, or Betweens, one fewer than the groups, what shows behind each but the last.
	Groups   Count
	Between  Length
	Betweens Lengths
	Press    Value[Press]
	End      EndSpec
	Sewn     Value[Stitching]
	Sample   *SampleSpec // nil where none was sewn
}

// EndSpec is where folds end that do not run from edge to edge.
type EndSpec struct {
	Below  Text   // the edge from whose stitch line it is measured,
	Also   []Text // and the edges next to it, which folds may meet as well
	Length Length // from there to the end of the first fold
	Shape  Value[EndShape]
	Step   Length // by which each is longer than the one before; below 0, shorter
	// From and To, instead of all these, are the lines or edges from which to which they run.
	From, To Text
}

// Edges names the edges that folds hang from, for a message.
func (e EndSpec) Edges() string {
	names := []string{wording.Quoted(e.Below.V)}
	for _, also := range e.Also {
		names = append(names, wording.Quoted(also.V))
	}
	return wording.Listed(names, "and")
}

// Given reports whether they end on the piece, and do not run from edge to edge.
func (e EndSpec) Given() bool { return e.Below.Given() || e.From.Given() }

// Place is where the file says how the folds end.
func (e EndSpec) Place() fault.Place {
	switch {
	case e.To.Given():
		return e.To.Place
	case e.Step.Given():
		return e.Step.Place
	}
	return e.Length.Place
}

// SampleSpec is what a strip took that was tucked as a trial: an inline table.
type SampleSpec struct {
	Place fault.Place
	Tucks Count  // how many were sewn
	Flat  Length // between two marks before the tucks were sewn
	Sewn  Length // between the same marks after
}

// BlockSpec is [piece.KEY.block].
type BlockSpec struct {
	Place    fault.Place
	Ends     Length // spare cloth at top and at bottom
	Sides    Length // spare cloth at each side
	Measured Length // what the top edge measured once the tucks were in
}

// PleatRowSpec is one [piece.KEY.pleat.KEY] that runs across the piece.
type PleatRowSpec struct {
	Key     string
	Place   fault.Place
	Beside  Text // the edge or line that they run along
	Side    Text // the edge on whose side of Beside they lie
	Kind    Value[PleatKind]
	Depth   Length // how far the fold lies over
	Count   Count
	First   Length       // from Beside to the first fold line, or to the middle of the first box pleat
	Spacing Length       // from pleat to pleat on the flat cloth, or ...
	Gap     Length       // ... what shows between two of them once they are pressed
	Press   Value[Press] // of knife pleats
	End     EndSpec
}

// EdgePleatSpec is one [piece.KEY.pleat.KEY] that lies in an edge.
type EdgePleatSpec struct {
	Key     string
	Place   fault.Place
	Edge    Text   // that is pleated
	From    Text   // the edge at whose corner measuring starts
	At      Length // from there, along Edge, to the first fold line
	Depth   Length // half the way from the fold line to the placement line
	Toward  Text   // the edge that the fold is laid toward
	Length  Length // of its lines
	Count   Count
	Spacing Length // from fold line to fold line
	Run     Value[Run]
}

// LineSpec is one [piece.KEY.line.KEY].
type LineSpec struct {
	Key      string
	Place    fault.Place
	Along    Text   // the edge it runs along, ...
	Distance Length // ... so far from it; or
	Beside   Text   // the straight edge or line it lies beside, ...
	At       Length // ... at this distance,
	Side     Text   // on the side of this edge; or
	Points   Points // where it runs,
	Smooth   bool   // as a curve, or
	Centre   Point  // as an arc about it,
	From     Text   // from the cutting line of this edge, past its first point or short of it,
	To       Text   // to that of this one; beside something from and to a line as well
	Length   Length // so far from the edge From, beside something
	Kind     Value[LineKind]
}

// NotchSpec is one [piece.KEY.notch.KEY].
type NotchSpec struct {
	Key   string
	Place fault.Place
	Edge  Text   // that is notched
	From  Text   // the edge at whose corner measuring starts
	At    Length // from there, along Edge
}
