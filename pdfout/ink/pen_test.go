package ink

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/mark"
)

// Three widths, each about twice the next: 0.18, 0.35 and 0.7 mm of the series of ISO 128-2
// (second hand, from a drafting course that states it). Which line has which is this program's
// own choice: what ends cloth, what is sewn and folded, what is measured to. Those of ruled paper
// are others.
func TestWidthsOfLines(t *testing.T) {
	for width, roles := range map[float64][]mark.Role{
		0.7:  {mark.Cut, mark.FoldEdge, mark.BlockEdge, mark.Placement},
		0.35: {mark.Stitch, mark.Fold, mark.TuckFold, mark.TuckStitch, mark.PleatFold, mark.Arrow, mark.Grain, mark.Laid},
		0.18: {mark.Centre, mark.TuckEnd, mark.Notch, mark.Cross, mark.Match, mark.Window, mark.Waste, mark.DrawHere, mark.Prick},
		0.6:  {mark.RuledWhole},
		0.3:  {mark.RuledHalf},
		0.1:  {mark.RuledFine},
	} {
		for _, role := range roles {
			assert.Equal(t, width, PenOf(role).Width, role)
		}
	}
	for _, p := range []Pen{FinePen(), JoinPen(), WritingPen(), OutlinePen(), InnerPen()} {
		assert.Contains(t, []float64{0.18, 0.35}, p.Width, "what is on paper alone")
	}
	assert.Contains(t, []float64{0.18, 0.35}, FrameWidth)
}

// looks is what is seen of a rhythm, in mm: its longest mark and its longest gap.
func looks(p Pen) (mark, gap float64) {
	for i, d := range p.Dashes() {
		if i%2 == 0 {
			mark = max(mark, d+map[bool]float64{true: p.Width}[p.Round()])
		} else {
			gap = max(gap, d)
		}
	}
	return mark, gap
}

// Made half as large and grey, dashed lines of one width are told apart by the length of
// their dashes or of their gaps, half as long again at least, and not by how many short
// marks lie between.
func TestRhythmsDiffer(t *testing.T) {
	for _, a := range mark.Roles() {
		for _, b := range mark.Roles() {
			p, q := PenOf(a), PenOf(b)
			if a >= b || p.Width != q.Width || len(p.Dashes()) == 0 || len(q.Dashes()) == 0 {
				continue
			}
			ratio := func(x, y float64) float64 { return max(x, y) / min(x, y) }
			markA, gapA := looks(p)
			markB, gapB := looks(q)
			assert.GreaterOrEqual(t, max(ratio(markA, markB), ratio(gapA, gapB)), 1.5, "%v and %v", a, b)
		}
	}
}

// Lines that are not dashed differ in width, in what stands at their ends or beside them, or
// they are no lines along a path at all; the thin ones of templates and the strokes of gauges
// lie on paper alone, where tucks have no end line.
func TestUnbrokenLinesDiffer(t *testing.T) {
	seen := map[string]mark.Role{}
	for _, role := range mark.Roles() {
		p := PenOf(role)
		if len(p.Dashes()) > 0 || role == mark.Window || role == mark.Laid {
			continue
		}
		key := fmt.Sprint(p.Width, p.ends, p.flag, p.Ring(), p.rhythm.hatched)
		other, taken := seen[key]
		assert.False(t, taken, "%v and %v", role, other)
		seen[key] = role
	}
}

// What is measured to is thin, and a flag beside it makes it seen: marks, and nothing else.
func TestThinMarksHaveFlags(t *testing.T) {
	for _, role := range mark.Roles() {
		flagged := slices.Contains([]mark.Role{mark.Notch, mark.Cross, mark.Match}, role)
		assert.Equal(t, flagged, PenOf(role).flag != noFlag, role)
	}
	assert.Equal(t, bothHeads, PenOf(mark.Grain).ends)
	assert.Equal(t, endHead, PenOf(mark.Arrow).ends)
}

// In another width dashes keep their proportion to it.
func TestAPenInAnotherWidth(t *testing.T) {
	p := PenOf(mark.FoldEdge)
	q := p.In(p.Width/2, Grey())
	assert.Equal(t, Grey(), q.Colour)
	for i, d := range q.Dashes() {
		assert.InDelta(t, p.Dashes()[i]/2, d, 1e-9)
	}
	assert.InDelta(t, p.period()/2, q.period(), 1e-9)
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
		// How dark it prints in grey: the usual weights of red, green, blue.
		grey := 0.299*p.Colour[0] + 0.587*p.Colour[1] + 0.114*p.Colour[2]
		assert.Less(t, grey, 0.35, "%v prints too pale", role)
		for _, d := range p.Dashes() {
			assert.False(t, math.Signbit(d))
		}
	}
}
