package pdfout

import (
	"bytes"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/fault"
	"tuckmark/pdfout/paper"
)

func TestPaperMustFit(t *testing.T) {
	for _, p := range []paper.Paper{{}, {Width: 148, Height: 210}, {Width: 260, Height: 210}, {Width: 900, Height: 6000}, {Width: math.NaN(), Height: 300}} {
		var out bytes.Buffer
		_, err := Draw(&out, few(), p)
		var refusal *fault.Fault
		assert.ErrorAs(t, err, &refusal)
		assert.Zero(t, out.Len())
	}
	_, err := Draw(&bytes.Buffer{}, few(), found(t, "914x1200mm"))
	assert.NoError(t, err)
	grown := found(t, "letter")
	grown.Printed = paper.Scale{Across: 1.29, Down: 1.29}
	_, err = Draw(&bytes.Buffer{}, few(), grown)
	assert.EqualError(t, err, "sheets for a printer that prints at 129 % both ways would have no room for the first page on letter paper\nhint: turn off “fit to page” where you print, or choose larger paper")
}
