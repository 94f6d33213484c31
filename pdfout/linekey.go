package pdfout

import "tuckmark/marking/plane"

// keyBlock is the line key under its heading, of a width in mm.
func (b *book) keyBlock(width float64) block {
	block := underHeading("Lines", width)
	key := b.key(width)
	block.put(key, plane.Point{Y: -block.Height})
	block.Height += key.height()
	return block
}
