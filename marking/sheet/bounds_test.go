package sheet

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/garment"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/source"
)

// lined is a pattern of one piece with so many lines of a role, each so many mm long.
func lined(way source.Transfer, role mark.Role, lines int, long float64) *garment.Pattern {
	flat := &piece.Shape{}
	for range lines {
		flat.Marks = append(flat.Marks, mark.Mark{Role: role, Path: plane.Path{{}, {X: long}}})
	}
	return &garment.Pattern{Pieces: []piece.Piece{{Key: "bib", Name: "Bib", Flat: flat}}, Transfers: []source.Transfer{way}}
}

// many is a pattern of so many pieces.
func many(pieces int) *garment.Pattern {
	p := lined(source.Trace, mark.Placement, 1, 9)
	p.Pieces = slices.Repeat(p.Pieces, pieces)
	return p
}

// The numbers are those of the guide to the file, under "Limits".
func TestSheetsAreBounded(t *testing.T) {
	for _, c := range []struct {
		name       string
		full, over *garment.Pattern
		dots       float64
		want       string
	}{
		{"lines", lined(source.Trace, mark.Placement, 12_000, 9), lined(source.Trace, mark.Placement, 12_001, 9), 0,
			"the sheets, as far as those of this piece, have 12,001 lines; at most 12,000 are drawn at once"},
		{"sheets", many(800), many(801), 0, "with those of this piece there are more than 800 sheets, one for each way of each piece, and no more are made at once"},
		{"windows", lined(source.Template, mark.Placement, 100, 3_000), lined(source.Template, mark.Placement, 100, 3_001), 0,
			"the lines of the templates, as far as that of this piece, are 300 m long together; at most 300 m are looked along for windows"},
		{"dots", lined(source.Prick, mark.Placement, 100, 5_000), lined(source.Prick, mark.Placement, 100, 5_001), 5,
			"the lines, as far as those of this piece, have more than 100,000 dots to be pricked, and no more are drawn at once"},
	} {
		t.Run(c.name, func(t *testing.T) {
			c.full.Dots, c.over.Dots = c.dots, c.dots
			assert.NoError(t, Check(c.full), "at the limit")
			assert.ErrorContains(t, Check(c.over), c.want, "beyond it")
		})
	}
}

// A lattice of 400 lines one way and 400 the other has 640,000 dots where they cross; no more
// than one line's are made beyond the most.
func TestDotsWhereLinesCrossComeToAnEnd(t *testing.T) {
	var m mark.Marking
	for k := range 400 {
		at := 10 + 20*float64(k)
		m.Marks = append(m.Marks, mark.Mark{Role: mark.Fold, Path: plane.Path{{X: at}, {X: at, Y: 8020}}}, mark.Mark{Role: mark.Fold, Path: plane.Path{{Y: at}, {X: 8020, Y: at}}})
	}
	dotted := pricked(m, dottingOf(&garment.Pattern{}))
	dots := 0
	for _, one := range dotted.Marks {
		if one.Role == mark.Prick {
			dots += len(one.Path)
		}
	}
	require.Greater(t, dots, mark.MostDots)
	assert.LessOrEqual(t, dots, 100_000+810)
	assert.Equal(t, mark.MostDots+1, mark.Dots([]mark.Marking{dotted}))
}
