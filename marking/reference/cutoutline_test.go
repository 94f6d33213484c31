package reference

import (
	"fmt"
	"math"
	"math/rand"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/tdewolff/canvas"

	"tuckmark/marking/plane"
)

// Cutting lines that are made outside the stitch lines of a piece, with one allowance all
// round, are the outset of its outline.

// piece writes an outline as a file whose piece has every side as an edge, by its stitch
// lines.
func (o outline) piece(allowance float64) string {
	var b strings.Builder
	fmt.Fprintf(&b, "unit = \"mm\"\nallowance = %.9f\n[piece.star]\ndrawn-to = \"stitching\"\n", allowance)
	corners := o[1 : len(o)-1]
	for i, q := range corners {
		next := corners[(i+1)%len(corners)]
		fmt.Fprintf(&b, "[piece.star.edge.e%d]\npoints = [[%.9f, %.9f], [%.9f, %.9f]]\n", i, q.X, q.Y, next.X, next.Y)
	}
	return b.String()
}

// pointsOut reports whether a place lies about as far as d, or farther, from a corner of the
// outline that points out, and from nothing else: on the arc round it, or on the point that
// ours runs out to.
func (o outline) pointsOut(q plane.Point, d float64) bool {
	at, _, _ := plane.Path(o).Nearest(q)
	for i := 1; i+1 < len(o); i++ {
		out := o[i].Sub(o[i-1]).Cross(o[i+1].Sub(o[i])) > 0
		if out && at.Distance(o[i]) < 1e-3 {
			return true
		}
	}
	return false
}

func TestCuttingOutlinesAgreeWithCanvas(t *testing.T) {
	defer func(was float64) { canvas.Tolerance = was }(canvas.Tolerance)
	canvas.Tolerance = 1e-6
	r := rand.New(rand.NewSource(2))
	worst, compared, refused, all := 0.0, 0, 0, 200
	for i := range all {
		o, d := star(r), 0.5+12*r.Float64()
		name := fmt.Sprintf("star %d, %.3f out", i, d)
		theirs := o.theirs(-d)
		made, _, err := check(o.piece(d))
		if len(theirs) != 1 {
			assert.Error(t, err, "%s: canvas finds %d parts", name, len(theirs))
			continue
		}
		if err != nil { // nothing may be left of one of its sides
			refused++
			continue
		}
		compared++
		ours, them := plane.NewTree(made.Outline), plane.NewTree(append(theirs[0], theirs[0][0]))
		for i := 1; i < len(made.Outline); i++ {
			if q := made.Outline[i-1].Toward(made.Outline[i], 0.5); !o.pointsOut(q, d) {
				worst = math.Max(worst, them.Distance(q, math.Inf(1)))
			}
		}
		for _, q := range theirs[0] {
			if !o.pointsOut(q, d) {
				worst = math.Max(worst, ours.Distance(q, math.Inf(1)))
			}
		}
		assert.LessOrEqual(t, worst, agreement, "%s: the cutting lines lie apart, in mm", name)
		for _, e := range made.Edges {
			assert.InDelta(t, e.Given.Length(), e.Sewn.Length(), 1e-9, "%s: %s", name, e.Key)
		}
	}
	t.Logf("%d of %d outlines could be compared, %d were refused; the cutting lines lie at most %.1e mm apart", compared, all, refused, worst)
	assert.Greater(t, compared, all/3, "many outlines must be compared")
}
