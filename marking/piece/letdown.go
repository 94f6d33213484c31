package piece

import (
	"math"
	"slices"
	"strings"

	"tuckmark/marking/source"
	"tuckmark/marking/wording"
)

// Rules of this file. A growth tuck is let out when the child has grown, and then lengthens
// the garment by all it takes: by twice its width, or by what a sample took (derived). Only
// a tuck does so that runs from edge to edge along the foot of the garment: a lower edge that
// hangs free. That is one which is called a hem, or which is hemmed and lies at the foot of
// the piece as it is drawn; but none that a seam joins, and none of a bonnet, a yoke or
// another piece that does not hang. What a piece and its edges are follows from the words
// that the file uses for them.

var (
	footWords  = wordsOf(`hem|foot`)
	apartWords = wordsOf(`centre|center|opening|placket|neck|waist|armhole|top`)      // hemmed, and no foot
	shortWords = wordsOf(`bonnet|cap|hood|hat|brim|crown|yoke|collar|cuff|belt|band`) // of a piece that does not hang
	faceWords  = wordsOf(`face|brim|nape`)                                            // of an edge that a piece for the head has
)

// wordsOf finds any of some words among others, in small letters.
func wordsOf(words string) wording.Form { return wording.FormOf(`\b(` + words + `)s?\b`) }

const (
	// alongFoot bounds the sine of the angle between a tuck and the foot it runs along,
	// from end to end of a curved one.
	alongFoot = 0.2
	// upright bounds from below the cosine of the angle between the straight up and the
	// direction from the foot of a piece into it.
	upright = 0.7
)

// letDown works out which tucks of a piece lengthen it when they are let down.
func (p *Piece) letDown(spec *source.Spec) {
	if len(p.TuckRows) == 0 {
		return
	}
	isFace := func(e Edge) bool { return faceWords.MatchString(wording.InWords(e.Key)) }
	if shortWords.MatchString(p.Words()) || slices.ContainsFunc(p.Edges, isFace) {
		return
	}
	feet := p.feet(spec)
	for i := range p.TuckRows {
		t := &p.TuckRows[i]
		runsAlong := func(e Edge) bool {
			across := e.Given[len(e.Given)-1].Sub(e.Given[0]).Unit().Cross(t.Base.Along)
			return math.Abs(across) < alongFoot
		}
		if !t.ends.Given() && slices.ContainsFunc(feet, runsAlong) {
			t.LetDown = t.Takes
		}
	}
}

// feet returns the edges that are lower edges which hang free.
func (p *Piece) feet(spec *source.Spec) []Edge {
	joined := map[string]bool{} // by seams
	for _, s := range spec.Seams {
		for _, side := range slices.Concat(s.Sides[0], s.Sides[1]) {
			if edge, own := strings.CutPrefix(side.V, p.Key+"."); own {
				joined[edge] = true
			}
		}
	}
	isFoot := func(e Edge) bool {
		words := wording.InWords(e.Key)
		if e.OnFold || joined[e.Key] || apartWords.MatchString(words) {
			return false
		}
		return footWords.MatchString(words) || e.Hem > 0 && Inward(e.Given).Y > upright
	}
	return slices.DeleteFunc(slices.Clone(p.Edges), func(e Edge) bool { return !isFoot(e) })
}
