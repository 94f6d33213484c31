package piece

import "tuckmark/marking/plane"

// What the tests see from outside the package, where they make pieces of texts.

// SeamsOf returns all that is sewn of a piece, with the steps between.
func SeamsOf(p *Piece) *plane.Tree { return p.seams }

// Keeps reports whether a line lies on a piece.
func Keeps(p *Piece, line plane.Path) bool { return p.keeps(line) }

// SideAllowance returns the allowance at the widest places of a piece that has a block.
func SideAllowance(p *Piece) float64 { return p.Block.sideAllowance(p) }
