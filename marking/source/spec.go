package source

import (
	"tuckmark/marking/fault"
	"tuckmark/marking/length"
)

// Spec is a file as it is written: every value read and turned into
// millimetres, none yet compared with another. What the file leaves out is
// the zero value. Read makes it; Check turns it into a Pattern. Whoever makes one
// without a file keeps what Read sees to: what must be there is there, an edge has two
// points or more, a count is 1 or more, and a length has no sign that makes no sense.
type Spec struct {
	File       string
	Title      Text
	Size       Text
	Unit       Value[length.Unit] // inches where none is given, which the maker ought to be told
	Allowance  Length             // of every edge that gives none
	ClothWidth Length             // between the selvages
	SeeThrough Flag
	Sleepwear  bool
	Pieces     []PieceSpec // in the order of the file, like every list below
	Seams      []SeamSpec
	Trims      []TrimSpec
	Ruffles    []RuffleSpec
	Bindings   []BindingSpec
	Sewing     SewingSpec
}

// PieceSpec is one [piece.KEY].
type PieceSpec struct {
	Key    string
	Place  fault.Place
	Name   Text
	Cut    Count
	Layers Count // of those cut, how many make one, such as outside and lining
	Fold   Text  // the edge that lies on a fold
	Drawn  Value[Drawn]
	Print  Value[Print]
	// Transfer is how its lines come onto the cloth; none where the file does not say.
	Transfer    Value[[]Transfer]
	GrainAlong  Text // grain = "an edge or a line", or ...
	GrainPoints Points
	Edges       []EdgeSpec
	Tucks       []TuckSpec
	Pleats      []PleatSpec
	Pleatings   []PleatingSpec
	Lines       []LineSpec
	Notches     []NotchSpec
	Block       *BlockSpec // nil where the piece is not cut from a tucked block
}

// Title returns what the piece is called on the sheets: its key where the file
// gives no name.
func (p PieceSpec) Title() string {
	if p.Name.Given() {
		return p.Name.V
	}
	return p.Key
}

// EdgeSpec is one [piece.KEY.edge.KEY].
type EdgeSpec struct {
	Key       string
	Place     fault.Place
	Points    Points
	Smooth    bool
	Allowance Length
	Hem       Length
	Turn      Length
	Marked    Flag // its stitch line is drawn on the cloth itself
}

// TuckSpec is one [piece.KEY.tuck.KEY].
type TuckSpec struct {
	Key     string
	Place   fault.Place
	Beside  Text
	Side    Text // the edge on whose side of Beside the tucks lie
	Width   Length
	Count   Count
	First   Length
	Spacing Length
	Gap     Length
	Press   Value[Press]
	End     EndSpec
	Sewn    Value[Stitching]
	Sample  *SampleSpec
}

// EndSpec is where folds end that do not run from edge to edge.
type EndSpec struct {
	Below  Text // the edge from whose stitch line it is measured
	Length Length
	Shape  Value[EndShape]
	Step   Length // by which each is longer than the one before; below 0, shorter
}

// Place is where the file says how the folds end.
func (e EndSpec) Place() fault.Place {
	if e.Step.Given() {
		return e.Step.Place
	}
	return e.Length.Place
}

// SampleSpec is what a strip took that was tucked as a trial: an inline table.
type SampleSpec struct {
	Place fault.Place
	Tucks Count
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

// PleatingSpec is one [piece.KEY.pleat.KEY] that runs across the piece.
type PleatingSpec struct {
	Key     string
	Place   fault.Place
	Beside  Text
	Side    Text
	Kind    Value[PleatKind]
	Depth   Length
	Count   Count
	First   Length
	Spacing Length
	Gap     Length
	Press   Value[Press] // of knife pleats
	End     EndSpec
}

// PleatSpec is one [piece.KEY.pleat.KEY] that lies in an edge.
type PleatSpec struct {
	Key     string
	Place   fault.Place
	Edge    Text
	From    Text
	At      Length
	Depth   Length
	Toward  Text
	Length  Length
	Count   Count
	Spacing Length
	Run     Value[Run]
}

// LineSpec is one [piece.KEY.line.KEY].
type LineSpec struct {
	Key      string
	Place    fault.Place
	Along    Text
	Distance Length
	Points   Points
	Smooth   bool
	Kind     Value[LineKind]
}

// NotchSpec is one [piece.KEY.notch.KEY].
type NotchSpec struct {
	Key   string
	Place fault.Place
	Edge  Text
	From  Text
	At    Length
}
