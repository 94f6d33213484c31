package pdfout

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
)

// flared is a large piece with slanting sides: a skirt panel.
func flared(key string, top, bottom, h float64) mark.Marking {
	in := (bottom - top) / 2
	p := plane.Path{{}, {X: bottom}, {X: bottom - in, Y: h}, {X: in, Y: h}, {}}
	m := mark.Marking{Key: key, Name: "Panel " + key, Notes: []string{"cut 2"}, Outline: p}
	for i := 1; i < len(p); i++ {
		m.Marks = append(m.Marks, edge(mark.Cut, "", p[i-1], p[i]))
	}
	return m
}

// mixed is 50 pieces: some larger than a page, the others of all sizes that fit
// one.
func mixed() arrange.Set {
	r := rand.New(rand.NewPCG(7, 7))
	s := arrange.Set{Title: "Wardrobe", Unit: length.Centimetre}
	for i := range 50 {
		key := fmt.Sprint(i)
		switch {
		case i%5 == 0:
			top := 100 + 200*r.Float64()
			s.Pieces = append(s.Pieces, flared(key, top, top+200*r.Float64(), 300+300*r.Float64()))
		case i%5 == 1:
			s.Pieces = append(s.Pieces, wave(key, 60+100*r.Float64(), 60+120*r.Float64(), 2000))
		default:
			s.Pieces = append(s.Pieces, rectangle(key, "Piece "+key, 20+120*r.Float64(), 20+100*r.Float64(), "cut 2"))
		}
	}
	return s
}

// All that is true of any set is true of one whose large pieces have small ones
// beside them: a panel, and a tie with its title beside it.
func TestSharedPages(t *testing.T) {
	wardrobe := mixed()
	tie := arrange.Set{Title: "Ties", Unit: length.Inch, Pieces: []mark.Marking{
		strip("tie", "Tie", 30*inch, inch, 0.375*inch, "stitch line, 3/8 in", longNotes()...),
		flared("p", 220, 300, 420), wave("w", 70, 60, 400), tiny("t", 90), tuckRuler("cut 2"), rectangle("c", "Collar", 120, 50, "cut 2"),
	}}
	for name, set := range map[string]arrange.Set{"wardrobe": wardrobe, "ties": tie} {
		for _, paper := range []string{"letter", "a4"} {
			t.Run(name+" on "+paper, func(t *testing.T) {
				t.Parallel()
				d, s := drawn(t, set, paper)
				assert.True(t, slices.ContainsFunc(s.Sheets, func(s SheetSummary) bool { return s.Last > s.First && len(s.Pieces) > 1 }), "no page is shared")
				checkAll(t, set, d, s)
			})
		}
	}
}
