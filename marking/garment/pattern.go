package garment

import (
	"tuckmark/marking/length"
	"tuckmark/marking/piece"
	"tuckmark/marking/source"
)

// Pattern is a file that has been checked: every name in it stands for
// something, every outline is closed, every line lies on its piece. Later
// stages check nothing again. Lengths are in mm.
type Pattern struct {
	Title      string
	Size       string
	Unit       length.Unit
	ClothWidth float64 // between the selvages; 0 when not given
	SeeThrough bool
	// Transfers are how lines come onto the cloth where a piece does not say.
	Transfers []source.Transfer
	Dots      float64 // how far apart lines are pricked; 0 for as usual
	Sleepwear bool
	Pieces    []piece.Piece
	Seams     []Seam
	Trims     []Trim
	Ruffles   []Ruffle
	Bindings  []Binding
	Sewing    []source.Setting // how it is sewn, as far as the file says
	// Remarks are what is no mistake, but may not be meant.
	Remarks []piece.Remark
}
