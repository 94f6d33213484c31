package pdfout

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking"
)

// A print in black and white must be readable: no two roles share line type
// and width, and widths of one type differ so that an eye sees it.
func TestPensDiffer(t *testing.T) {
	for _, a := range marking.Roles() {
		for _, b := range marking.Roles() {
			if a < b && penOf(a).kind.number == penOf(b).kind.number {
				thin, wide := min(penOf(a).width, penOf(b).width), max(penOf(a).width, penOf(b).width)
				assert.GreaterOrEqual(t, wide/thin, 1.35, "%v and %v", a, b)
			}
		}
	}
	seen := map[string]marking.Role{}
	for _, role := range marking.Roles() {
		p := penOf(role)
		key := fmt.Sprint(p.kind.number, " ", p.width)
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
	for role, want := range map[marking.Role]string{
		marking.Cut: "01", marking.Stitch: "02", marking.TuckFold: "05", marking.PleatFold: "05",
		marking.Placement: "07", marking.Centre: "04", marking.Grain: "04", marking.FoldEdge: "04",
		marking.Fold: "08", marking.TuckStitch: "02", marking.TuckEnd: "01", marking.Arrow: "01", marking.Notch: "01",
		marking.BlockEdge: "09", marking.Cross: "01", marking.Match: "01", marking.Window: "01", marking.Prick: "rings",
	} {
		assert.Equal(t, want, penOf(role).kind.number, role)
	}
	// Marks and gaps as they are seen: round ends add a line width to each
	// mark. Proportions from memory of ISO 128-2, second hand of DIN EN ISO 128-20.
	for kind, want := range map[string][]float64{
		"01": nil, "02": {12, 3}, "04": {24, 3, 1, 3}, "05": {24, 3, 1, 3, 1, 3}, "07": {1, 2.5}, "08": {24, 3, 6, 3}, "09": {24, 3, 6, 3, 6, 3},
	} {
		for _, role := range marking.Roles() {
			p := penOf(role)
			if p.kind.number != kind {
				continue
			}
			var seen []float64
			for i, length := range p.dashes() {
				length /= p.width
				if p.round() {
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
	assert.GreaterOrEqual(t, penOf(marking.Grain).width/penOf(marking.Centre).width, 1.9)
}

// Every role is in the table; one that is not is drawn so that all see it.
func TestEveryRoleHasAPen(t *testing.T) {
	assert.Len(t, pens(), len(marking.Roles()))
	for _, role := range marking.Roles() {
		assert.NotEqual(t, strangePen(), penOf(role), role)
	}
	assert.Equal(t, strangePen(), penOf(-1))
}

func TestPensPrintWell(t *testing.T) {
	for _, role := range marking.Roles() {
		p := penOf(role)
		assert.GreaterOrEqual(t, p.width/point, 0.25, "%v is too thin", role)
		// How dark it prints in grey: the usual weights of red, green, blue.
		grey := 0.299*p.colour[0] + 0.587*p.colour[1] + 0.114*p.colour[2]
		assert.Less(t, grey, 0.35, "%v prints too pale", role)
	}
	assert.Equal(t, bothHeads, penOf(marking.Grain).heads)
	assert.Equal(t, endHead, penOf(marking.Arrow).heads)
}

// checkWidths: a line thinner than 0.25 pt may not come out of a printer (common
// practice).
func checkWidths(t require.TestingT, set Set, d readDocument, s Summary) {
	for i, p := range d.pages {
		for _, q := range p.paths {
			if q.painted == "S" {
				assert.GreaterOrEqual(t, q.width, 0.25*point, "page %d: a line of %s", i+1, q.layer)
			}
		}
	}
}
