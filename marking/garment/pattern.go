package garment

import (
	"tuckmark/marking/length"
	"tuckmark/marking/piece"
	"tuckmark/marking/source"
	"tuckmark/marking/wording"
)

// Pattern is a file that has been checked: every name in it stands for
// something, every outline is closed, every line lies on its piece. Later
// stages check nothing again. Lengths are in mm.
type Pattern struct {
	Files      []string // that it was read from
	View       string   // of the file, that was chosen; "" where it is the file as it stands
	Views      []string // that may be chosen
	Title      string   // "" when not given, as is Size
	Size       string
	Unit       length.Unit // of the file, in which lengths are printed
	ClothWidth float64     // between the selvages; 0 when not given
	SeeThrough bool        // the cloth lets lines be traced from below
	// Transfers are how lines come onto the cloth where a piece does not say.
	Transfers []source.Transfer
	Dots      float64       // how far apart lines are pricked; 0 for as usual
	Sleepwear bool          // it is meant to be slept in
	Pieces    []piece.Piece // in the order of the file, as all that follows
	Seams     []Seam
	Trims     []Trim
	Ruffles   []Ruffle
	Bindings  []Binding
	Measures  Measures         // of the finished garment
	Sewing    []source.Setting // how it is sewn, as far as the file says
	// Remarks are what is no mistake, but may not be meant.
	Remarks []piece.Remark

	garments int // that are made of it at once; 0 for one
}

// ViewName is what the pattern is called beside other views of its file.
func (p *Pattern) ViewName() string {
	if p.View == "" {
		return "as it stands"
	}
	return p.View
}

// Heading returns the notes that every sheet has, and every gauge, for it is kept: the
// title and the size, where they are given.
func (p *Pattern) Heading() []string {
	var notes []string
	if p.Title != "" {
		notes = append(notes, p.Title)
	}
	if p.Size != "" {
		notes = append(notes, wording.OfSize(p.Size))
	}
	return notes
}
