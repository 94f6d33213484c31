package arrange

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
)

func TestMarginsAndOverlaps(t *testing.T) {
	letter := found(t, "letter")
	for _, c := range []struct {
		name string
		set  func(paper.Paper, float64) (paper.Paper, error)
		mm   float64
		want string // "" where it is taken
	}{
		{"no margin", paper.Paper.WithMargin, 0, ""},
		{"1/4 in", paper.Paper.WithMargin, 6.35, ""},
		{"most of a margin", paper.Paper.WithMargin, 19, ""},
		{"too much of a margin", paper.Paper.WithMargin, 25.4, "a margin of 1 in leaves too little of letter paper for the first page\nhint: most printers need 1/4 in; without a margin given it is a little over 10 mm"},
		{"less than nothing", paper.Paper.WithMargin, -1, "a margin cannot be less than nothing"},
		{"no number", paper.Paper.WithMargin, math.NaN(), "a margin cannot be less than nothing"},
		{"3/8 in", paper.Paper.WithOverlap, 9.525, ""},
		{"2 in", paper.Paper.WithOverlap, 50.8, ""},
		{"too narrow for a join mark", paper.Paper.WithOverlap, 6.35, "an overlap of 1/4 in is too narrow or too wide\nhint: it must have room for the join marks: from 3/8 in, or 9 mm, to 2 in, or 50 mm"},
		{"too wide", paper.Paper.WithOverlap, 60, "an overlap of 60 mm is too narrow or too wide\nhint: it must have room for the join marks: from 3/8 in, or 9 mm, to 2 in, or 50 mm"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := c.set(letter, c.mm)
			if c.want == "" {
				assert.NoError(t, err)
				return
			}
			assert.EqualError(t, err, c.want)
		})
	}
	// A join mark with its number is as high as the narrowest overlap is wide.
	assert.GreaterOrEqual(t, paper.LeastOverlap/2, MarkAway+ink.Ascent/2*MarkNumber*paper.Point)
}
