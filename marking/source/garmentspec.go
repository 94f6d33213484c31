package source

import (
	"tuckmark/marking/fault"
)

// Rules of this file: what a file says of the garment as a whole, of what joins its
// pieces and what is sewn to them. Edges are named by piece and edge:
// "front.neck".

// SeamSpec is one [seam.KEY].
type SeamSpec struct {
	Key      string
	Place    fault.Place
	Join     fault.Place // where the two sides are given
	Sides    [2][]Text   // the edges of each
	Meet     [2]Text     // the edges beside the first and the second side that come together
	Ease     Length      // by how much the first side may be longer, to be eased in; where it is gathered, what of the longer is only eased
	Within   Length      // what they may differ beyond that
	Gathered bool        // the longer side is drawn up to the other
}

// TrimSpec is one [trim.KEY].
type TrimSpec struct {
	Key       string
	Place     fault.Place
	Along     []Text // the edges or lines
	Kind      Value[TrimKind]
	Width     Length
	Fullness  Factor // 1 where it is sewn on flat
	Lies      Value[Lies]
	Joins     Count  // how many times its ends are joined or turned in
	JoinTakes Length // what each of them takes
}

// RuffleSpec is one [ruffle.KEY].
type RuffleSpec struct {
	Key      string
	Place    fault.Place
	Along    []Text // the edges
	Fullness Factor
	Depth    Length // finished
	Hem      Length // at its lower edge
	Turn     Length // what is folded under at the edge of the hem
	Seam     Length // by which it is sewn on
	Joining  Length // the allowance of the seams that join its strips
	Round    bool   // it goes all round, without ends
}

// BindingSpec is one [binding.KEY].
type BindingSpec struct {
	Key     string
	Place   fault.Place
	Along   []Text // the edges
	Width   Length // finished
	Fold    Value[BindingFold]
	Joins   Count  // how many times its ends are joined
	Joining Length // the allowance of the seams that join its strips
	Square  Length // the side of the square of cloth that it is cut from
}

// SewingSpec is [sewing]: how it was sewn, to be found again next time.
type SewingSpec struct {
	Needle   Text
	Thread   Text
	Stitch   Text // its length, or what is set
	Tension  Text
	Position Text // of the needle
}

// FitSpec is [fit]: what the child measures that the garment is for.
type FitSpec struct {
	Chest  Length // round, under the arms
	Waist  Length // round
	Length Length // from the neck at the back to where the hem is to come
}

// Setting is one thing to be noted of how a garment is sewn.
type Setting struct {
	Name  string // "needle"
	Value string // "" where the file does not say
}

// Settings lists what a file says of how it is sewn, and what it leaves out.
func (s SewingSpec) Settings() []Setting {
	return []Setting{
		{"stitch length", s.Stitch.V},
		{"needle", s.Needle.V},
		{"thread", s.Thread.V},
		{"tension", s.Tension.V},
		{"needle position", s.Position.V},
	}
}
