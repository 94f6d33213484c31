package ink

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/mark"
	"tuckmark/pdfout/paper"
)

// A print in black and white must be readable: no two roles share line type
// and width, and widths of one type differ so that an eye sees it.
func TestPensDiffer(t *testing.T) {
	for _, a := range mark.Roles() {
		for _, b := range mark.Roles() {
			if a < b && PenOf(a).kind.number == PenOf(b).kind.number {
				thin, wide := min(PenOf(a).Width, PenOf(b).Width), max(PenOf(a).Width, PenOf(b).Width)
				assert.GreaterOrEqual(t, wide/thin, 1.35, "%v and %v", a, b)
			}
		}
	}
	seen := map[string]mark.Role{}
	for _, role := range mark.Roles() {
		p := PenOf(role)
		key := fmt.Sprint(p.kind.number, " ", p.Width)
		other, taken := seen[key]
		assert.False(t, taken, "%v and %v", role, other)
		seen[key] = role
	}
}

// ISO 128-2 (line types, second hand): 01 continuous, 02 dashed, 04 long-dashed dotted, 05
// long-dashed double-dotted, 07 dotted. 08, long-dashed short-dashed, and 09,
// long-dashed double-short-dashed, are from memory. Which line has which is this
// program's own choice, but for centre lines, which are drawn 04 by common
// practice.
func TestLineTypes(t *testing.T) {
	for role, want := range map[mark.Role]string{
		mark.Cut: "01", mark.Stitch: "02", mark.TuckFold: "05", mark.PleatFold: "05",
		mark.Placement: "07", mark.Centre: "04", mark.Grain: "04", mark.FoldEdge: "04",
		mark.Fold: "08", mark.TuckStitch: "02", mark.TuckEnd: "01", mark.Arrow: "01", mark.Notch: "01",
		mark.BlockEdge: "09", mark.Cross: "01", mark.Match: "01", mark.Window: "01", mark.Prick: "rings",
		mark.Waste: "hatching",
	} {
		assert.Equal(t, want, PenOf(role).kind.number, role)
	}
	// Marks and gaps as they are seen: round ends add a line width to each
	// mark. Proportions from memory of ISO 128-2, second hand of DIN EN ISO 128-20.
	for kind, want := range map[string][]float64{
		"01": nil, "02": {12, 3}, "04": {24, 3, 1, 3}, "05": {24, 3, 1, 3, 1, 3}, "07": {1, 2.5}, "08": {24, 3, 6, 3}, "09": {24, 3, 6, 3, 6, 3},
	} {
		for _, role := range mark.Roles() {
			p := PenOf(role)
			if p.kind.number != kind {
				continue
			}
			var seen []float64
			for i, length := range p.Dashes() {
				length /= p.Width
				if p.Round() {
					length += 1 - 2*float64(i%2)
				}
				seen = append(seen, length)
			}
			assert.InDeltaSlice(t, append([]float64{0}, want...), append([]float64{0}, seen...), 1e-9, role)
		}
	}
}

// Where a page shows only the middle of a grain line, nothing but its width
// tells it from a centre line.
func TestGrainIsNoCentreLine(t *testing.T) {
	assert.GreaterOrEqual(t, PenOf(mark.Grain).Width/PenOf(mark.Centre).Width, 1.9)
}

// Every role is in the table; one that is not is drawn so that all see it.
func TestEveryRoleHasAPen(t *testing.T) {
	assert.Len(t, pens(), len(mark.Roles()))
	for _, role := range mark.Roles() {
		assert.NotEqual(t, strangePen(), PenOf(role), role)
	}
	assert.Equal(t, strangePen(), PenOf(-1))
}

func TestPensPrintWell(t *testing.T) {
	for _, role := range mark.Roles() {
		p := PenOf(role)
		assert.GreaterOrEqual(t, p.Width/paper.Pt, 0.25, "%v is too thin", role)
		// How dark it prints in grey: the usual weights of red, green, blue.
		grey := 0.299*p.Colour[0] + 0.587*p.Colour[1] + 0.114*p.Colour[2]
		assert.Less(t, grey, 0.35, "%v prints too pale", role)
	}
	assert.Equal(t, bothHeads, PenOf(mark.Grain).heads)
	assert.Equal(t, endHead, PenOf(mark.Arrow).heads)
}
