package marking

import "tuckmark/marking/plane"

// Spec is a file as it is written: every value read and turned into
// millimetres, none yet compared with another. What the file leaves out is
// the zero value. Read makes it; Check turns it into a Pattern.
type Spec struct {
	File       string
	Title      Text
	Size       Text
	Unit       Unit
	UnitGiven  bool   // else Unit is inches, which the maker ought to be told
	Allowance  Length // of every edge that gives none
	ClothWidth Length // between the selvages
	SeeThrough Flag
	Sleepwear  bool
	Pieces     []PieceSpec // in the order of the file, like every list below
	Seams      []SeamSpec
	Trims      []TrimSpec
	Ruffles    []RuffleSpec
	Bindings   []BindingSpec
	Sewing     SewingSpec

	byKey map[string]*PieceSpec // the pieces, once one was looked for
}

// Text is a string of the file.
type Text struct {
	Value string
	Place Place
}

// Given reports whether the file holds the text at all.
func (t Text) Given() bool { return t.Place.Line > 0 }

// Length is a length of the file.
type Length struct {
	MM    float64
	Place Place
}

// Given reports whether the file holds the length at all.
func (l Length) Given() bool { return l.Place.Line > 0 }

// Count is a whole number of the file.
type Count struct {
	N     int
	Place Place
}

// Given reports whether the file holds the number at all.
func (c Count) Given() bool { return c.Place.Line > 0 }

// Factor is a number of the file that says how many times as long something is.
type Factor struct {
	N     float64
	Place Place
}

// Given reports whether the file holds the number at all.
func (f Factor) Given() bool { return f.Place.Line > 0 }

// Flag is yes or no in the file.
type Flag struct {
	Yes   bool
	Place Place
}

// Given reports whether the file holds the word at all.
func (f Flag) Given() bool { return f.Place.Line > 0 }

// Points are places of the file, at least two.
type Points struct {
	List  []plane.Point
	Lines []int // the line of each point
	Place Place
}

// Given reports whether the file holds the points at all.
func (p Points) Given() bool { return p.Place.Line > 0 }

// PieceSpec is one [piece.KEY].
type PieceSpec struct {
	Key    string
	Place  Place
	Name   Text
	Cut    Count
	Layers Count // of those cut, how many make one, such as outside and lining
	Fold   Text  // the edge that lies on a fold
	Drawn  Text  // "flat" or "finished"
	Print  Text  // "half", "whole" or "left and right"
	// Transfer is how its lines come onto the cloth; none where the file does not say.
	Transfer      []Transfer
	TransferPlace Place
	GrainAlong    Text // grain = "an edge or a line", or ...
	GrainPoints   Points
	Edges         []EdgeSpec
	Tucks         []TuckSpec
	Pleats        []PleatSpec
	Pleatings     []PleatingSpec
	Lines         []LineSpec
	Notches       []NotchSpec
	Block         *BlockSpec // nil where the piece is not cut from a tucked block
}

// name returns what the piece is called on the sheets: its key where the file
// gives no name.
func (p PieceSpec) name() string {
	if p.Name.Given() {
		return p.Name.Value
	}
	return p.Key
}

// EdgeSpec is one [piece.KEY.edge.KEY].
type EdgeSpec struct {
	Key       string
	Place     Place
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
	Place   Place
	Beside  Text
	Side    Text // the edge on whose side of Beside the tucks lie
	Width   Length
	Count   Count
	First   Length
	Spacing Length
	Gap     Length
	Press   Text // "away" or "toward"
	End     EndSpec
	Sewn    Text // "twin needle" or "edge"
	Sample  *SampleSpec
}

// EndSpec is where folds end that do not run from edge to edge.
type EndSpec struct {
	Below  Text // the edge from whose stitch line it is measured
	Length Length
	End    Text // "level", "follow" or "stepped"
	Step   Length
}

// SampleSpec is what a strip took that was tucked as a trial: an inline table.
type SampleSpec struct {
	Place Place
	Tucks Count
	Flat  Length // between two marks before the tucks were sewn
	Sewn  Length // between the same marks after
}

// BlockSpec is [piece.KEY.block].
type BlockSpec struct {
	Place    Place
	Ends     Length // spare cloth at top and at bottom
	Sides    Length // spare cloth at each side
	Measured Length // what the top edge measured once the tucks were in
}

// PleatingSpec is one [piece.KEY.pleat.KEY] that runs across the piece.
type PleatingSpec struct {
	Key     string
	Place   Place
	Beside  Text
	Side    Text
	Kind    Text // "knife", "box" or "inverted"
	Depth   Length
	Count   Count
	First   Length
	Spacing Length
	Gap     Length
	Press   Text // "away" or "toward", of knife pleats
	End     EndSpec
}

// PleatSpec is one [piece.KEY.pleat.KEY] that lies in an edge.
type PleatSpec struct {
	Key     string
	Place   Place
	Edge    Text
	From    Text
	At      Length
	Depth   Length
	Toward  Text
	Length  Length
	Count   Count
	Spacing Length
	Run     Text // "square" or "grain"
}

// LineSpec is one [piece.KEY.line.KEY].
type LineSpec struct {
	Key      string
	Place    Place
	Along    Text
	Distance Length
	Points   Points
	Smooth   bool
	Kind     Text // "fold", "centre", "placement" or "stitch"
}

// NotchSpec is one [piece.KEY.notch.KEY].
type NotchSpec struct {
	Key   string
	Place Place
	Edge  Text
	From  Text
	At    Length
}
