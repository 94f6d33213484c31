package figures

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/fault"
	"tuckmark/marking/garment"
	"tuckmark/marking/mark"
	"tuckmark/marking/sheet"
	"tuckmark/marking/sketch/made"
)

// pointed writes lines as "piece/line", those of one piece together.
func pointed(all []mark.At) string {
	var parts []string
	for _, at := range all {
		parts = append(parts, at.Piece+"/"+at.Line)
	}
	return strings.Join(parts, " ")
}

// A mistake points at the lines of what its key names, in what was drawn before.
func TestWhatMistakesPointAt(t *testing.T) {
	p := made.Of(t, skirt)
	drawn := sheet.Of(p)
	for _, c := range []struct{ key, of, want string }{
		{"piece.skirt.edge.side", "Skirt, edge side", "skirt/side skirt/side stitch line"},
		{"piece.skirt.edge.side.points", "Skirt, edge side, points", "skirt/side skirt/side stitch line"},
		{"view.round.piece.skirt.edge.side.points", "view round, Skirt, edge side, points", "skirt/side skirt/side stitch line"},
		{"piece.skirt.edge.hem.turn", "Skirt, edge hem, turn", "skirt/hem skirt/turn skirt/hem fold"},
		{"piece.skirt.tuck.row.width", "Skirt, tuck row, width", "skirt/row 1 tuck fold skirt/row 1 tuck stitching skirt/row 2 tuck fold skirt/row 2 tuck stitching"},
		{"piece.skirt.notch.n.at", "Skirt, notch n, at", "skirt/n notch"},
		{"piece.skirt.line.placket", "Skirt, line placket", "skirt/placket"},
		{"piece.skirt.grain", "Skirt, grain", "skirt/grain"},
		{"piece.skirt", "Skirt", "skirt/"},
		{"piece.skirt.name", "Skirt, name", "skirt/"},
		{"piece.skirt.edge.nape", "Skirt, edge nape", "skirt/"},
		{"piece.patch.edge.right", "Patch, edge right", "pocket/right pocket/right stitch line patch/right patch/right stitch line"},
		{"piece.patch.edge.\"no. 1\"", "Patch, edge no. 1", "pocket/ patch/"},
		{"seam.pocket.join", "seam pocket, join", "pocket/left pocket/left stitch line pocket/right pocket/right stitch line patch/right patch/right stitch line"},
		{"trim.lace.width", "trim lace, width", "skirt/waist"},
		{"piece.sleeve.edge.cap", "piece sleeve, edge cap", ""},
		{"seam.shoulder", "seam shoulder", ""},
		{"title", "title", ""},
		{"", "", ""},
	} {
		place := fault.Place{File: "pinafore.toml", Key: c.key, Line: 3}
		all := Mistakes(p, drawn, fault.List{{Place: place, Cause: "is wrong", Hint: "put it right"}})
		require.Len(t, all, 1)
		one := all[0]
		assert.Equal(t, mark.Notice{Text: "is wrong", Hint: "put it right", Of: c.of, Place: place, At: one.At}, one)
		assert.Equal(t, c.want, pointed(one.At), c.key)
	}
}

// Before anything was drawn a mistake points nowhere.
func TestMistakesOfWhatWasNeverDrawn(t *testing.T) {
	place := fault.Place{Key: "piece.skirt.edge.side"}
	assert.Equal(t, []mark.Notice{{Text: "is wrong", Of: "piece skirt, edge side", Place: place}}, Mistakes(nil, nil, fault.List{{Place: place, Cause: "is wrong"}}))
	assert.Empty(t, Mistakes(nil, nil, nil))
}

// Remarks are all that are made of a pattern, in their order, and each that names a piece or what
// joins pieces points at lines that are told as well.
func TestWhatRemarksPointAt(t *testing.T) {
	const file = `unit = "in"
allowance = "1/2"
[piece.bib]
name = "Bib"
rectangle = [10, 10]
[piece.bib.tuck.fine]
beside = "left"
width = "1/32"
count = 2
first = 4
spacing = "1/2"
[piece.strap]
name = "Strap"
rectangle = [2, 12]
[seam.strap]
join = ["bib.top", "strap.left"]
`
	p := made.Of(t, file)
	drawn := drawnOf(p)
	told := toldAll(t, p, drawn)
	var texts []string
	notices := Remarks(p, drawn)
	for _, n := range notices {
		texts = append(texts, n.Place.InFile()+" "+n.Of+": "+n.Text)
		assert.NotEmpty(t, n.At, n.Text)
		for _, at := range n.At {
			assert.Contains(t, told, at, n.Text)
		}
	}
	var want []string
	for _, r := range p.Remarks {
		want = append(want, r.InFile()+" "+ofWhat(p, r.Place)+": "+r.Text)
	}
	assert.Equal(t, want, texts)
	require.NotEmpty(t, notices)
	assert.Contains(t, strings.Join(texts, "\n"), "pinafore.toml:6 Bib, tuck fine: tucks of 1/32 in are narrower than")
	assert.Contains(t, strings.Join(texts, "\n"), "pinafore.toml:15 seam strap: sewn, ")
	assert.Empty(t, Remarks(&garment.Pattern{}, nil))
}

// A remark that tells of the second of two pleats points at its lines, not at those of the first.
func TestWhatARemarkOfOneFoldPointsAt(t *testing.T) {
	p := made.Of(t, `unit = "cm"
allowance = 1
[piece.top]
name = "Top"
fold = "centre front"
[piece.top.edge."centre front"]
points = [[0, 0], [0, 20]]
[piece.top.edge.neck]
points = [[0, 20], [6, 20]]
[piece.top.edge.shoulder]
points = [[6, 20], [12, 20]]
[piece.top.edge.side]
points = [[12, 20], [12, 0]]
[piece.top.edge.waist]
points = [[12, 0], [0, 0]]
[piece.top.pleat.knives]
beside = "centre front"
depth = 1
count = 2
first = 5
gap = 0.5
press = "away"
`)
	var of []string
	for _, n := range Remarks(p, drawnOf(p)) {
		if strings.HasPrefix(n.Text, "pleat 2 of 2 runs into") {
			for _, at := range n.At {
				of = append(of, at.Line)
			}
		}
	}
	assert.Contains(t, of, "knives 2 pleat fold")
	assert.Contains(t, of, "knives 2 placement line")
	for _, line := range of {
		assert.True(t, strings.HasPrefix(line, "knives 2 "), line)
	}
}
