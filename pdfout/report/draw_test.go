package report

import (
	"tuckmark/pdfout/paper"
)

// written bounds how far a number read from the page may be off from the one
// meant, in mm: half of 0.001 units.
const written = 0.0005 * paper.Pt
