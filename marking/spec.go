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
	SeeThrough bool
	Pieces     []PieceSpec // in the order of the file, like every list below
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
	Key         string
	Place       Place
	Name        Text
	Cut         Count
	Fold        Text // the edge that lies on a fold
	GrainAlong  Text // grain = "an edge or a line", or ...
	GrainPoints Points
	Edges       []EdgeSpec
	Tucks       []TuckSpec
	Pleats      []PleatSpec
	Lines       []LineSpec
	Notches     []NotchSpec
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
	Below   Text
	Length  Length
	Sewn    Text // "twin needle" or "edge"
}

// PleatSpec is one [piece.KEY.pleat.KEY].
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
