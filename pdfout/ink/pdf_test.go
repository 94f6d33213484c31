package ink

import (
	"testing"

	"codeberg.org/go-pdf/fpdf"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/pdfout/paper"
)

// The writer of the PDF reads the widths of letters for itself.
func TestWidths(t *testing.T) {
	pdf := fpdf.New("P", "mm", "A4", "")
	for _, f := range faces() {
		pdf.AddUTF8FontFromBytes("go", f.name, f.data)
		pdf.SetFont("go", f.name, 10)
		for r := rune(' '); r < 0x2300; r++ {
			if CanPrint(r) {
				// It rounds each to a thousandth of the size.
				require.InDelta(t, pdf.GetStringWidth(string(r)), f.ems(string(r))*10*paper.Pt, 10*paper.Pt/1000, "%q in face %q", r, f.name)
			}
		}
	}
	assert.Zero(t, Plain(10).Width(""))
}
