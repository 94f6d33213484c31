package lay

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// On cloth 36 in wide, which folds to 18.
func TestLayWays(t *testing.T) {
	for _, c := range []struct{ name, items, want string }{
		// After what is folded it would take 4 1/8 in more. On single cloth too it lies over
		// a sleeve, but of equally short ways the one before is taken.
		{"an odd one over a pair, out of the upper layer: 7 + 1/8 + 4 is within 12", "front: 0,0 9,0 9,12 0,12 | fold 0,12 0,0\nsleeve: 0,0 8,0 8,7 0,7 | cut 2\ncuff: 0,0 8,0 8,4 0,4",
			`folded, 0 to 12
			front: 0,0 9,12 on the fold
			sleeve: 9.125,0 17.125,7
			cuff: 9.125,7.125 17.125,11.125 out of the upper layer`},
		// Single cloth does not take two of 18 in and the room between.
		{"an odd one in the hollow of a pair, shorter than any other way", "yoke: 0,0 18,0 18,3 6,3 6,10 0,10 | cut 2\ncuff: 0,0 11,0 11,6 0,6",
			`folded, 0 to 10
			yoke: 0,0 18,10
			cuff: 6.125,3.125 17.125,9.125 out of the upper layer`},
		{"an odd one over what is folded is no shorter than after it", "front: 0,0 17,0 17,12 0,12 | fold 0,12 0,0\ncuff: 0,0 5,0 5,4 0,4",
			`folded, 0 to 12
			front: 0,0 17,12 on the fold
			single, 12 to 16.125
			cuff: 0,12.125 5,16.125`},
		{"a pair, and the third beside it out of the upper layer", "gore: 0,0 8,0 8,14 0,14 | cut 3",
			`folded, 0 to 14
			gore: 0,0 8,14
			gore: 8.125,0 16.125,14 out of the upper layer`},
		{"the third too wide by 1/8 in for that: all beside each other on single cloth", "gore: 0,0 9,0 9,14 0,14 | cut 3",
			`single, 0 to 14
			gore: 0,0 9,14
			gore: 9.125,0 18.125,14
			gore: 18.25,0 27.25,14`},
		{"three opened out along a fold across the grain: two out of both layers, one out of the upper", "front: 0,0 4,0 4,20 0,20 | fold 0,0 0,20\nyoke: 0,0 6,0 6,4 0,4 | fold 0,0 6,0; cut 3",
			`folded, 0 to 20
			front: 0,0 4,20 on the fold
			yoke: 4.125,0 10.125,8
			yoke: 10.25,0 16.25,8 out of the upper layer`},
		{"odd ones alone are no reason to fold", "gore: 0,0 15,0 7,7 0,7\ntab: 0,0 4,0 0,4\npanel: 0,0 36,0 36,5 0,5",
			`single, 0 to 12.125
			gore: 0,0 15,7
			panel: 0,7.125 36,12.125
			tab: 15.125,0 19.125,4`},
		{"two of a piece on the fold beside each other on single cloth: 10, not 10 + 1/8 + 10", "front: 0,0 4,0 4,10 0,10 | fold 0,0 0,10; cut 2",
			`single, 0 to 10
			front: 0,0 8,10
			front: 8.125,0 16.125,10`},
		{"of five, three and two beside each other on single cloth: 6 + 1/8 + 6, not 6 more", "gore: 0,0 9,0 9,6 0,6 | cut 5",
			`single, 0 to 12.125
			gore: 0,0 9,6
			gore: 9.125,0 18.125,6
			gore: 18.25,0 27.25,6
			gore: 0,6.125 9,12.125
			gore: 9.125,6.125 18.125,12.125`},
		// The slope falls by 0.00002 in, half a thousandth of a millimetre. Right over it the
		// third lies by less than that nearer the beginning than after all of it.
		{"shorter by rounding alone is not shorter", "gore: 0,0 12,0 12,9.99998 0,10 | cut 3",
			`folded, 0 to 10
			gore: 0,0 12,10
			single, 10 to 20.125
			gore: 0,10.125 12,20.125`},
		{"a fold drawn a hair crooked, so that the half reaches over half the cloth: it is opened out", "yoke: 0,0 18,0 18,3 6,3 6,10 0,10 | cut 2\ncuff: 0,0 11,0 11,6 0,6\nfront: 0,0 18,0 18,5 0,5 -0.01,2 | fold 0,5 0,0",
			`folded, 0 to 10
			yoke: 0,0 18,10
			cuff: 6.125,3.125 17.125,9.125 out of the upper layer
			single, 10 to 15.125
			front: 0,10.125 36,15.125`},
		{"too wide for folded cloth when opened, but not for single", "front: 0,0 17,0 17,10 0,10 | fold 0,0 0,10\nyoke: 0,0 20,0 20,4 0,4 | fold 0,0 20,0",
			`folded, 0 to 10
			front: 0,0 17,10 on the fold
			single, 10 to 18.125
			yoke: 0,10.125 20,18.125`},
		// A millionth of a millimetre is let pass: 25.4 × 2 × 0.00000001 mm is half of that,
		// three times as much is more, though half of it would pass on folded cloth.
		{"the whole a hair wider than the cloth", "front: 0,0 18.00000001,0 18.00000001,10 0,10 | fold 0,0 0,10",
			`folded, 0 to 10
			front: 0,0 18,10 on the fold`},
		{"three hairs wider it is too wide, folded or not", "front: 0,0 18.00000003,0 18.00000003,10 0,10 | fold 0,0 0,10",
			`front is too wide`},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, unindented(c.want), told(layOut(toCut(t, c.items), 36*25.4)))
		})
	}
}
