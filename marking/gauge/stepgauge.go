package gauge

import (
	"fmt"
	"slices"
	"strings"

	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/wording"
)

// Rules of this file. The straight gauge is one card for every straight line beside
// an edge. Its long side lies on the cut edge; opposite are steps, one for every
// distance at which the pattern has a line: an allowance, the turn of a hem, and hem
// and turn together, where the hem is folded. They rise from left to right.

// stepLong returns how long each step is, in mm: long enough to draw along, and for
// its name.
func stepLong(u length.Unit) float64 { return u.Either(25.4*5/4, 30) }

// gaugeStep is one step of the straight gauge.
type gaugeStep struct {
	mm    float64
	names []string // of every width that it is cut for
}

// gaugeSteps returns the distances of lines from their edges, each once, in rising
// order. Those that differ by no more than what can be cut are one.
func gaugeSteps(p *garment.Pattern) []gaugeStep {
	var widths []float64
	for i := range p.Pieces {
		for _, e := range p.Pieces[i].Edges {
			widths = append(widths, e.Allowance, e.Turn)
		}
	}
	slices.Sort(widths)
	var all []gaugeStep
	for _, mm := range widths {
		name := p.Unit.AsWritten(mm)
		switch n := len(all); {
		case mm < sameCard: // no line, or none that can be told from the edge
		case n > 0 && mm-all[n-1].mm < sameCard:
			if like := &all[n-1]; !slices.Contains(like.names, name) {
				like.names = append(like.names, name)
			}
		default:
			all = append(all, gaugeStep{mm, []string{name}})
		}
	}
	return all
}

// hasHem reports whether an edge of the pattern is hemmed.
func hasHem(p *garment.Pattern) bool {
	return slices.ContainsFunc(p.Pieces, func(one piece.Piece) bool {
		return slices.ContainsFunc(one.Edges, func(e piece.Edge) bool { return e.Hem > 0 })
	})
}

// stepGauge returns the straight gauge; ok is false for a pattern that has no line
// within its reach.
func stepGauge(p *garment.Pattern) (m mark.Marking, ok bool) {
	all := gaugeSteps(p)
	held := slices.IndexFunc(all, func(s gaugeStep) bool { return s.mm > widestCard(p.Unit)+piece.Rounding })
	if held < 0 {
		held = len(all)
	}
	if held == 0 {
		return m, false
	}
	step := stepLong(p.Unit)
	at := func(k int, y float64) plane.Point { return plane.Point{X: float64(k) * step, Y: y} }
	sides := []mark.Mark{
		cutSide("", at(0, 0), at(held, 0)),
		cutSide("", at(held, 0), at(held, all[held-1].mm)),
	}
	var words []mark.Word // under the top of each step: over it they would be cut off
	for k := held - 1; k >= 0; k-- {
		below := 0.0
		if k > 0 {
			below = all[k-1].mm
		}
		sides = append(sides,
			cutSide("", at(k+1, all[k].mm), at(k, all[k].mm)),
			cutSide("", at(k, all[k].mm), at(k, below)))
		middle := at(k, all[k].mm).Add(plane.Point{X: step / 2})
		words = append(words, mark.Word{Role: mark.Cut, Text: strings.Join(all[k].names, " and "), At: middle, Out: plane.Point{Y: -1}})
	}
	m = card(sides)
	m.Key, m.Name = "straight gauge", "Straight gauge"
	wide := min(laidWide, laidShare*all[0].mm)
	// The hatching is under the highest step alone, where it has room beside words.
	m.Marks = append(m.Marks, laidAlong(m.Outline, plane.Path{at(held-1, 0), at(held, 0)}, wide)...)
	m.Words = append(words, mark.Word{Role: mark.Cut, Text: "cut edge here", At: plane.Point{X: (float64(held) - 0.5) * step, Y: wide}, Out: plane.Point{Y: 1}})
	m.Steps = append(m.Steps, "lay the hatched side on the cut edge", "draw along the step that has the width of the allowance")
	if hasHem(p) {
		m.Notes = append(m.Notes, "a hem has the step of its turn, and that of turn and hem together")
	}
	var left []string
	for _, s := range all[held:] {
		left = append(left, s.names...)
	}
	if len(left) > 0 {
		m.Steps = append(m.Steps, fmt.Sprintf("measure %s with a ruler: no card is so wide", wording.Listed(left, "and")))
	}
	return m, true
}
