package lay

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/sketch/made"
)

// kimonoGown is a nightgown cut in one, front and back, with its shoulders half way along
// the cloth: 58 in long, so twice that. Its sleeves reach the selvages of 36 in cloth; beside
// the skirt 3 to 9 in are left of each layer.
const kimonoGown = `unit = "in"
allowance = 0
[cloth]
width = 36
[piece.gown]
fold = "centre"
[piece.gown.edge.centre]
points = [[0, 0], [0, 116]]
[piece.gown.edge."back hem"]
points = [[0, 116], [15, 116]]
[piece.gown.edge."back side"]
points = [[15, 116], [9, 68], [18, 66]]
[piece.gown.edge.wrist]
points = [[18, 66], [18, 50]]
[piece.gown.edge."front side"]
points = [[18, 50], [9, 48], [15, 0]]
[piece.gown.edge."front hem"]
points = [[15, 0], [0, 0]]
[piece.gusset]
cut = 2
grain = "left"
[piece.gusset.edge.left]
points = [[0, 0], [0, %[1]s]]
[piece.gusset.edge.rest]
points = [[0, %[1]s], [%[1]s, %[1]s], [%[1]s, 0], [0, 0]]
`

// A handbook's gown takes 116 in, because its gussets are cut from what is left beside the
// skirt; after it they would take 4 1/8 in more. A gusset of 7 in finds room there as well:
// the side is 7 1/8 in off the selvage at 33 in, and 9 in at 48 in. One of 9 in does not.
// The gown covers, of each layer, twice (15 + 9) / 2 × 48, twice (9 + 18) / 2 × 2 and 18 × 16
// square inches, which are 1494 of 18 × 116.
func TestGussetsFitInTheWaste(t *testing.T) {
	for _, c := range []struct {
		gusset string
		length float64
		share  float64
	}{
		{"4", 116, (1494 + 16.0) / (18 * 116)},
		{"2.5", 116, (1494 + 6.25) / (18 * 116)},
		{"7", 116, (1494 + 49.0) / (18 * 116)},
		{"9", 116 + 0.125 + 9, (1494 + 81.0) / (18 * 125.125)},
	} {
		lay := Of(made.Of(t, fmt.Sprintf(kimonoGown, c.gusset)))
		require.Len(t, lay.Parts, 1)
		assert.Len(t, lay.Parts[0].Placed, 2)
		assert.InDelta(t, c.length, lay.Length/25.4, 1e-6, "gussets of %s in", c.gusset)
		assert.InDelta(t, c.share, lay.ShareUsed(), 1e-6, "gussets of %s in", c.gusset)
	}
}

// On cloth 36 in wide, which folds to 18; between pieces there is 1/8 in.
func TestLayFillsBays(t *testing.T) {
	for _, c := range []struct{ name, items, want string }{
		{"in the bay of a piece: 6 in long, 1/8 in left at each end", "coat: 0,0 36,0 36,3 20,3 20,9.25 36,9.25 36,12 0,12\ntab: 0,0 5,0 5,6 0,6",
			`single, 0 to 12
			coat: 0,0 36,12
			tab: 20.125,3.125 25.125,9.125`},
		{"a bay 1/16 in too short for it", "coat: 0,0 36,0 36,3 20,3 20,9.1875 36,9.1875 36,12 0,12\ntab: 0,0 5,0 5,6 0,6",
			`single, 0 to 18.125
			coat: 0,0 36,12
			tab: 0,12.125 5,18.125`},
		{"a bay as wide as it and the room at one side: 15 7/8 + 1/8", "coat: 0,0 36,0 36,3 20,3 20,9.25 36,9.25 36,12 0,12\ntab: 0,0 15.875,0 15.875,6 0,6",
			`single, 0 to 12
			coat: 0,0 36,12
			tab: 20.125,3.125 36,9.125`},
		{"a bay 1/16 in too narrow for it", "coat: 0,0 36,0 36,3 20,3 20,9.25 36,9.25 36,12 0,12\ntab: 0,0 15.9375,0 15.9375,6 0,6",
			`single, 0 to 18.125
			coat: 0,0 36,12
			tab: 0,12.125 15.938,18.125`},
		// The side rises as it goes in: over its corner and 1/8 in beyond, to 5 1/8 in.
		{"a pair in the bay of a front on the fold", "front: 0,0 18,0 18,2 10,10 18,18 18,20 0,20 | fold 0,0 0,20\ngusset: 0,0 3,0 3,3 0,3 | cut 2",
			`folded, 0 to 20
			front: 0,0 18,20 on the fold
			gusset: 15,5.25 18,8.25`},
		{"the wide one first, where the long one first takes more: 9 + 1/8 + 10, not 10 + 1/8 + 9 + 1/8 + 2", "long: 0,0 12,0 12,10 0,10\nwide: 0,0 36,0 36,9 0,9\nlow: 0,0 23.875,0 23.875,2 0,2",
			`single, 0 to 19.125
			long: 0,0 12,10
			wide: 0,10.125 36,19.125
			low: 12.125,0 36,2`},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, unindented(c.want), told(layOut(toCut(t, c.items), 36*25.4)))
		})
	}
}

// For several children a garment takes no more cloth than so many times that for one.
func TestLayForSeveral(t *testing.T) {
	const one = "skirt: 0,0 20,0 22,30 0,30\nyoke: 0,0 10,0 10,6 0,6\ncuff: 0,0 8,0 8,3 0,3 | cut 2\npanel: 0,0 34,0 34,20 0,20"
	alone := layOut(toCut(t, one), 36*25.4).Length
	for _, children := range []int{2, 5, 40} {
		items := toCut(t, one)
		for k := range items {
			items[k].garments = children
		}
		lay := layOut(items, 36*25.4)
		assert.LessOrEqual(t, lay.Length, float64(children)*(alone+scissorsApart), "for %d children", children)
	}
}

// What is cut once for a garment is never cut as a left and a right, for however many
// garments; of two, one of each belongs to every garment, and of three two as it is drawn.
func TestLayTurnsOverWithinAGarment(t *testing.T) {
	const fly = "fly: 0,0 9,0 9,5 0,8 | "
	for _, c := range []struct {
		name, items        string
		width              float64 // of the cloth, in inches
		pairs, drawn, over int
	}{
		{"one for each of three", fly + "for 3", 30, 0, 3, 0},
		{"one for each of four, on cloth on which two would lie folded", fly + "for 4", 18, 0, 4, 0},
		{"two for each of two, out of both layers", fly + "cut 2; for 2", 37, 2, 0, 0},
		{"two for each of two, on cloth too narrow to be folded", fly + "cut 2; for 2", 17, 0, 2, 2},
		{"three for each of two, on cloth too narrow to be folded", fly + "cut 3; for 2", 17, 0, 4, 2},
		{"three for each of two: pairs, and two as it is drawn", fly + "cut 3; for 2", 18.5, 2, 2, 0},
		{"two for each of two beside a block", "block: 0,0 20,0 20,9 0,9 | torn\n" + fly + "cut 2; for 2", 57, 0, 2, 2},
	} {
		t.Run(c.name, func(t *testing.T) {
			items := toCut(t, c.items)
			fly := items[len(items)-1].outline
			pairs, drawn, over := 0, 0, 0
			for _, part := range layOut(items, c.width*25.4).Parts {
				for _, p := range part.Placed {
					switch asDrawn := liesAs(p.Outline, fly, 1, 1) || liesAs(p.Outline, fly, -1, -1); {
					case p.Name != "fly":
					case part.Folded && !p.Upper:
						pairs++
					case asDrawn:
						drawn++
					default:
						over++
					}
				}
			}
			assert.Equal(t, []int{c.pairs, c.drawn, c.over}, []int{pairs, drawn, over}, "pairs, as it is drawn, turned over")
		})
	}
}

// After much looking the gaps are closed, and what comes later lies above all that is there;
// before that it lies in a bay as well.
func TestBandClosesItsGaps(t *testing.T) {
	const hook, crumb = "0,0 2,0 2,5 6,5 6,7 0,7 0,0", "0,0 2,0 2,1 0,1 0,0"
	for _, c := range []struct {
		name  string
		looks int
		want  string
	}{
		{"after a few looks", 10, "2,0 4,0"},
		{"after millions", 5_000_000, "2,0 0,7"},
	} {
		t.Run(c.name, func(t *testing.T) {
			b := newBand(6, 1, 0)
			require.Equal(t, "0,0", fillInTurn(b, pathOf(t, hook)))
			first, second := pathOf(t, crumb), pathOf(t, crumb)
			b.looks = c.looks // before the first, which has its place when they are closed
			assert.Equal(t, c.want, fillInTurn(b, first, second))
		})
	}
}

// Of more than a hundred things one order is tried, of fewer three.
func TestOrdersForMany(t *testing.T) {
	for _, c := range []struct {
		name   string
		counts []int
		orders int
	}{
		{"nothing", nil, 3},
		{"a hundred", []int{99, 1}, 3},
		{"one more", []int{99, 2}, 1},
	} {
		var pieces []poses
		for _, count := range c.counts {
			pieces = append(pieces, poses{count: count, garments: 1})
		}
		assert.Len(t, ordersFor(pieces), c.orders, c.name)
	}
}
