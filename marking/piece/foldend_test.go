package piece_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// A piece whose neck rises by three to every four across, 1/2 in allowed there: its
// stitch line lies 5/8 in straight below it.
const rising = `fold = "centre"
centre: 0,0 0,10
neck: 0,10 4,13 | allowance = "1/2"
shoulder: 4,13 8,13
side: 8,13 8,0
hem: 8,0 0,0
---
`

// Where tucks end, drawn flat: 2 in below the stitch line of the neck at the centre,
// which lies at 9 3/8 in.
func TestEndLines(t *testing.T) {
	const quarter = "tuck a centre 1/4 3 1 | "
	for _, c := range []struct{ name, drawn, row, end, folds, line string }{
		{"level", "flat", quarter, "", "1,7.375 1,10.75 | 2,7.375 2,11.5 | 3,7.375 3,12.25", "0.75,7.375 3.25,7.375"},
		// 2 in from the slanted stitch line is 2 1/2 in straight below it: at 1 in
		// from the centre 9 3/8 + 3/4 - 2 1/2.
		{"following", "flat", quarter, `end = "follow"`, "1,7.625 1,10.75 | 2,8.375 2,11.5 | 3,9.125 3,12.25",
			"0.75,7.625 1.25,7.625 1.75,8.375 2.25,8.375 2.75,9.125 3.25,9.125"},
		{"stepped, each longer", "flat", quarter, `end = "stepped"; step = 0.5`, "1,7.375 1,10.75 | 2,6.875 2,11.5 | 3,6.375 3,12.25",
			"0.75,7.375 1.25,7.375 1.75,6.875 2.25,6.875 2.75,6.375 3.25,6.375"},
		{"stepped, each shorter", "flat", quarter, `end = "stepped"; step = -0.25`, "1,7.375 1,10.75 | 2,7.625 2,11.5 | 3,7.875 3,12.25",
			"0.75,7.375 1.25,7.375 1.75,7.625 2.25,7.625 2.75,7.875 3.25,7.875"},
		{"level, drawn finished", "finished", quarter, "", "1,7.375 1,10.75 | 2,7.375 2,11.125 | 3,7.375 3,11.5", "0.75,7.375 3.25,7.375"},
		// Finished, the tucks are stitched 1, 1.6 and 2.2 in from the centre: they
		// follow the neck as it is then, at 9 3/8 + 3/4 - 2 1/2 the first.
		{"following, drawn finished", "finished", "tuck a centre 0.2 3 1.2 | ", `end = "follow"`,
			"1.2,7.625 1.2,10.9 | 2.2,8.075 2.2,11.35 | 3.2,8.525 3.2,11.8",
			"1,7.625 1.4,7.625 2,8.075 2.4,8.075 3,8.525 3.4,8.525"},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece := sketched(t, "0", "drawn = \""+c.drawn+"\"\n"+rising+
				sketch.Rows(c.row+`spacing = 1; press = "away"; below = "neck"; length = 2; `+c.end))
			assert.Equal(t, c.folds, each(piece, mark.TuckFold), "fold lines")
			assert.Equal(t, c.line, sketch.Inches(piece.TuckRows[0].FlatEnds[0]), "the end line")
		})
	}
}

// Below their end line tucks are open: the hem is as much wider as they take up,
// and so is a ruffle on it. The neck is not.
func TestHemIsSpread(t *testing.T) {
	for _, drawn := range []string{"flat", "finished"} {
		t.Run(drawn, func(t *testing.T) {
			tucks := sketch.Rows(`tuck a centre 1/4 3 1 | below = "neck"; length = 2`)
			piece := sketched(t, "0", "drawn = \""+drawn+"\"\n"+rising+tucks)
			through := sketched(t, "0", "drawn = \""+drawn+"\"\n"+rising+sketch.Rows(`tuck a centre 1/4 3 1`))
			finished := map[string]float64{"flat": 8 - 1.5, "finished": 8}[drawn]
			hem := piece.EdgeNumber("hem")
			assert.InDelta(t, finished+1.5, piece.Edges[hem].FinishedLength/25.4, 1e-6, "open at the hem")
			assert.InDelta(t, finished, through.Edges[hem].FinishedLength/25.4, 1e-6, "stitched from edge to edge")
			if drawn == "finished" {
				assert.Equal(t, "0,0 9.5,0", flatEdges(piece)["hem"])
				neck := piece.Edges[piece.EdgeNumber("neck")]
				assert.InDelta(t, neck.Sewn.Length(), neck.FinishedLength, 1e-6, "the tucks are closed at the neck")
			}
		})
	}
}

func TestMistakesInEnds(t *testing.T) {
	for _, c := range []struct{ name, row, want string }{
		{"an end line off the piece", `tuck a centre 1/2 3 1 | below = "neck"; length = 12`,
			`27: piece.front.tuck.a.length: the end line lies outside the piece: at tuck 1, 1/2 in from "centre", the cloth ends 10 in below the stitch line of "neck", and the tucks are to end 12 in below it
hint: tucks end on the piece, below the edge they begin at`},
		{"stepped to nothing", `tuck a centre 1/4 10 1 | below = "neck"; length = 1; end = "stepped"; step = -0.3`,
			`21: piece.front.tuck.a: tuck 9 of 10 has no cloth: 2 3/4 in from "centre" the piece begins 1 3/8 in above the stitch line of "neck", and the tucks are to end 1.4 in above it
hint: the first 8 fit`},
		{"measured from the base itself", `tuck a centre 1/4 1 1 | below = "centre"; length = 2`,
			`26: piece.front.tuck.a.below: the stitch line of "centre" does not meet "centre", so nothing can be measured from there
hint: name the edge at whose stitch line the tucks begin`},
		{"a step without steps", `tuck a centre 1/4 1 1 | below = "neck"; length = 2; step = 1`,
			`28: piece.front.tuck.a.step: has no meaning without end = "stepped"
hint: a step makes each fold longer or shorter than the one before`},
		{"steps without a step", `tuck a centre 1/4 1 1 | below = "neck"; length = 2; end = "stepped"`,
			`21: piece.front.tuck.a: "step" is missing
hint: it says how much longer each is than the one before, or, below 0, how much shorter: step = "1/4"`},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := made.Pattern("allowance = 0\n" + sketch.Front(sketch.Slope+sketch.Rows(c.row)))
			require.Error(t, err)
			assert.Equal(t, c.want, strings.ReplaceAll(err.Error(), "pinafore.toml:", ""))
		})
	}
}
