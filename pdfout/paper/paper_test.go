package paper

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestLying(t *testing.T) {
	p, err := found(t, "letter").Lying()
	require.NoError(t, err)
	assert.Equal(t, "letter paper, 8 1/2 x 11 in, lying", p.Title)
	assert.InDelta(t, 279.4, p.Width, 1e-9)
	assert.InDelta(t, 215.9, p.Height, 1e-9)
	again, err := p.Lying()
	require.NoError(t, err)
	assert.Equal(t, p, again, "what lies stays so")
	_, err = found(t, "single").Lying()
	assert.EqualError(t, err, "single cannot be turned\nhint: leave the turning out: its pages are as large as they need to be")
	_, err = found(t, "300x300mm").Lying()
	assert.EqualError(t, err, "paper of 300 mm x 300 mm has no long side to lie on\nhint: leave the turning out: its sides are equal")
}

func TestMarginsAndOverlaps(t *testing.T) {
	letter := found(t, "letter")
	for _, c := range []struct {
		name string
		set  func(Paper, float64) (Paper, error)
		mm   float64
		want string // "" where it is taken
	}{
		{"no margin", Paper.WithMargin, 0, ""},
		{"1/4 in", Paper.WithMargin, 6.35, ""},
		{"most of a margin", Paper.WithMargin, 19, ""},
		{"too much of a margin", Paper.WithMargin, 25.4, "a margin of 1 in leaves too little of letter paper for the first page\nhint: most printers need 1/4 in; without a margin given it is a little over 10 mm"},
		{"less than nothing", Paper.WithMargin, -1, "a margin cannot be less than nothing"},
		{"no number", Paper.WithMargin, math.NaN(), "a margin cannot be less than nothing"},
		{"3/8 in", Paper.WithOverlap, 9.525, ""},
		{"2 in", Paper.WithOverlap, 50.8, ""},
		{"too narrow for a join mark", Paper.WithOverlap, 6.35, "an overlap of 1/4 in is too narrow or too wide\nhint: it must have room for the join marks: from 3/8 in, or 9 mm, to 2 in, or 50.8 mm"},
		{"too wide", Paper.WithOverlap, 60, "an overlap of 60 mm is too narrow or too wide\nhint: it must have room for the join marks: from 3/8 in, or 9 mm, to 2 in, or 50.8 mm"},
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
}

// A page with a side that no reader has to show, or too small for the first page, is
// refused, and one that is no number.
func TestPaperMustFit(t *testing.T) {
	const room = " has no room for the first page\nhint: inside its margins it must have at least 170 x 240 mm upright, or 245 x 180 mm lying"
	for _, c := range []struct {
		name          string
		width, height float64
		want          string // "" where it is taken
	}{
		{"no size", 0, 0, "paper of 0 x 0 mm" + room},
		{"A5", 148, 210, "paper of 148 x 210 mm" + room},
		{"lying, but not wide enough", 260, 210, "paper of 260 x 210 mm" + room},
		{"longer than 200 in", 900, 6000, "paper of 900 x 6000 mm has a side of more than 200 in\nhint: that is 14,400 units of 1/72 in, and no reader of a PDF has to show a page with a longer side; print on pages that are joined, such as --paper letter"},
		{"no number", math.NaN(), 300, "paper of NaN x 300 mm" + room},
		{"large", 914, 1200, ""},
	} {
		err := Paper{Width: c.width, Height: c.height}.Check()
		if c.want == "" {
			assert.NoError(t, err, c.name)
		} else {
			assert.EqualError(t, err, c.want, c.name)
		}
	}
	grown := found(t, "letter")
	grown.Printed = Scale{1.29, 1.29}
	assert.EqualError(t, grown.Check(), "sheets for a printer that prints at 129 % both ways would have no room for the first page on letter paper\nhint: turn off “fit to page” where you print, or choose larger paper")
}

// found is the paper of a name.
func found(t require.TestingT, name string) Paper {
	p, err := Find(name)
	require.NoError(t, err)
	return p
}
