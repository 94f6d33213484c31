package garment_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// sewnOn checks a sketch with an allowance of half an inch, and returns a trim along
// something of it.
func sewnOn(t require.TestingT, text, along string) garment.Trim {
	return made.Of(t, "allowance = 0.5\n"+sketch.Front(text)+"\n[trim.x]\nalong = \"front."+along+"\"\n").Trims[0]
}

// An edge comes once for each piece that is cut, and twice where half a piece is drawn,
// but for the fold in its middle.
func TestHowOftenAnEdgeComes(t *testing.T) {
	const rule = "\n---\n\n[line.rule]\npoints = [[2, 2], [7, 2]]\n[line.middle]\npoints = [[0, 2], [0, 6]]\n"
	for _, c := range []struct {
		name, head, edge string
		times            int
		title            string
		whole            float64 // inches
	}{
		{"cut once", "", "top", 1, "front, top", 9},
		{"cut twice", "cut = 2\n", "top", 2, "front, top (2 times)", 18},
		{"half a piece", "fold = \"left\"\n", "top", 2, "front, top (2 times)", 19},
		{"half a piece cut twice", "cut = 2\nfold = \"left\"\n", "top", 4, "front, top (4 times)", 38},
		{"a piece and its lining", "cut = 2\nlayers = 2\n", "top", 1, "front, top", 9},
		{"left and right, with linings", "cut = 4\nlayers = 2\n", "top", 2, "front, top (2 times)", 18},
		{"half a collar and its lining", "cut = 2\nlayers = 2\nfold = \"left\"\n", "top", 2, "front, top (2 times)", 19},
		{"the fold", "fold = \"left\"\n", "left", 1, "front, left", 7},
		{"the folds of two", "cut = 2\nfold = \"left\"\n", "left", 2, "front, left (2 times)", 14},
		{"a line on the fold", "fold = \"left\"\n", "middle", 1, "front, middle", 4},
		{"a line inside", "", "rule", 1, "front, rule", 5},
		{"a line inside half a piece", "fold = \"left\"\n", "rule", 2, "front, rule (2 times)", 10},
	} {
		t.Run(c.name, func(t *testing.T) {
			trim := sewnOn(t, c.head+sketch.Rect("10")+rule, c.edge)
			require.Len(t, trim.Courses, 1)
			one := trim.Courses[0]
			assert.Equal(t, c.times, one.Times)
			assert.Equal(t, c.title, one.Title())
			assert.InDelta(t, c.whole, one.Whole().MM/25.4, 1e-6)
			assert.InDelta(t, c.whole, trim.LineLength.MM/25.4, 1e-6)
		})
	}
}

// A line along which something is sewn is as long as it is with the tucks in.
func TestLengthOfALineAcrossTucks(t *testing.T) {
	text := sketch.Rect("10") + "\n---\n\n[line.rule]\npoints = [[2, 2], [7, 2]]\n" + sketch.Rows(`tuck t left 1/4 2 3`)
	assert.InDelta(t, 4, sewnOn(t, text, "rule").LineLength.MM/25.4, 1e-6, "5 in, less two tucks of 1/4 in")
}

// A line inside a piece counts between stitch lines, as an edge does: 10 in less 1/2 in on
// either side.
func TestLineFromSeamToSeam(t *testing.T) {
	const casing = "\n---\n\n[line.casing]\npoints = [[0, 3], [10, 3]]\n"
	assert.InDelta(t, 9, sewnOn(t, sketch.Rect("10")+casing, "casing").LineLength.MM/25.4, 1e-6)
	half := sewnOn(t, "fold = \"left\"\n"+sketch.Rect("10")+casing, "casing").Courses[0]
	assert.InDelta(t, 9.5, half.Length.MM/25.4, 1e-6, "of half a piece, less 1/2 in on one side")
}

// What is cut by the sum of edges as they are printed, and as much longer as is told, falls short
// of them by no more than two steps of the ruler, and is told nothing where it does not.
func TestWhatIsCutByThePrintGoesRound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		u := rapid.SampledFrom([]length.Unit{length.Inch, length.Centimetre, length.Millimetre}).Draw(t, "unit")
		on := garment.SewnOn{LineLength: length.Amount{Unit: u}}
		for _, mm := range rapid.SliceOfN(rapid.Float64Range(1, 300), 1, 12).Draw(t, "edges") {
			on.LineLength = on.LineLength.Plus(u.Amount(mm).Times(rapid.IntRange(1, 12).Draw(t, "times")))
		}
		more, short := on.Unprinted(), on.LineLength.MM-on.LineLength.Steps*u.Ruler()
		if more.Steps == 0 {
			assert.LessOrEqual(t, short, 2*u.Ruler()+1e-6)
			return
		}
		assert.GreaterOrEqual(t, more.Steps*u.Ruler(), short-0.011, "long enough, but for what no ruler shows")
		assert.Less(t, more.Steps*u.Ruler(), short+u.Ruler()+1e-6, "and no step more")
	})
}
