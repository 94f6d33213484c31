package arrange

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/sample"
)

// rooms are parcels that need so much room, in mm, the tallest first.
func rooms(sizes ...[2]float64) []Parcel {
	var all []Parcel
	for i, s := range sizes {
		all = append(all, ParcelOf(NewPiece(sample.Ruled("p", fmt.Sprint("piece ", i), s[0]-4, s[1]-4))))
	}
	tallestFirst(all)
	return all
}

// What the tallest first puts on two pages goes on one where another order or another way of
// lying allows it (derived: the sums of the sides, and of 6 mm between them, are at most those of
// the page).
func TestFewerPages(t *testing.T) {
	t.Parallel()
	window := plane.Point{X: 200, Y: 200}
	for _, c := range []struct {
		name           string
		sizes          [][2]float64
		tallest, pages int
	}{
		// 90 + 6 + 90 across, and 110 + 6 + 70 up.
		{"the tallest lies under the others", [][2]float64{{90, 110}, {90, 110}, {70, 140}}, 2, 1},
		// 60 + 6 + 130 across; beside the first 70 + 6 + 90 up.
		{"two of three are turned", [][2]float64{{70, 130}, {130, 90}, {60, 110}}, 2, 1},
		{"nothing is gained", [][2]float64{{150, 150}, {150, 150}}, 2, 2},
	} {
		parcels := rooms(c.sizes...)
		inTurn, all := inOrder(parcels, window)
		require.True(t, all)
		assert.Len(t, inTurn, c.tallest, c.name)
		fewest, all := fill(parcels, window)
		require.True(t, all)
		assert.Len(t, fewest, c.pages, c.name)
	}
}

// Strips with steps take less room turned, since these stand inside them then: 4, 8 and 12 lie on
// one, two and three pages of 194 by 237, five of 46 and 6 mm between them over each other
// (derived: 5 * 46 + 4 * 6 = 254 is too high, 4 * 46 + 3 * 6 = 202 is not).
func TestStripsThatTakeLessRoomTurned(t *testing.T) {
	t.Parallel()
	window := plane.Point{X: 194, Y: 237}
	for pages := 1; pages <= 3; pages++ {
		var strips []Piece
		for i := range 4 * pages {
			strip := sample.Ruled(fmt.Sprint("strip ", i), "Strip", 42, 170)
			strip.Steps = []string{"lay it on the cloth, the grain along it", "turn it over for the second"}
			strips = append(strips, NewPiece(strip))
		}
		parcels := parcelsOf(strips, window)
		require.LessOrEqual(t, leastPages(parcels, window), pages)
		filled, all := fill(parcels, window)
		require.True(t, all)
		assert.Len(t, filled, pages)
	}
}

// Parcels are never on more pages than with the tallest first, lie there as they do every time,
// and as they do with the tallest first where no page is saved; none is lost, and none lies by
// more than a quarter turn.
func TestFewestPages(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		window := plane.Point{X: 194.7, Y: 237}
		var sizes [][2]float64
		for range rapid.IntRange(0, 12).Draw(t, "parcels") {
			sizes = append(sizes, [2]float64{rapid.Float64Range(40, 190).Draw(t, "w"), rapid.Float64Range(40, 230).Draw(t, "h")})
		}
		inTurn, _ := inOrder(rooms(sizes...), window)
		fewest, all := fill(rooms(sizes...), window)
		again, _ := fill(rooms(sizes...), window)
		require.True(t, all)
		require.LessOrEqual(t, len(fewest), len(inTurn))
		require.GreaterOrEqual(t, len(fewest), leastPages(rooms(sizes...), window))
		require.Equal(t, roomsOf(fewest), roomsOf(again))
		if len(fewest) == len(inTurn) {
			require.Equal(t, roomsOf(inTurn), roomsOf(fewest))
		}
		laid := 0
		for _, k := range fewest {
			for _, p := range k.Parcels {
				laid++
				piece, drawn := p.Laid(), p.Piece.upright()
				width := drawn.Bounds.Width()
				if piece.Turned {
					width = drawn.Bounds.Height()
				}
				require.InDelta(t, width, piece.Bounds.Width(), 1e-6)
			}
		}
		require.Equal(t, len(sizes), laid)
	})
}

// roomsOf are the places of what is packed, by its name.
func roomsOf(pages []Packing) []map[string]plane.Box {
	var all []map[string]plane.Box
	for _, k := range pages {
		places := map[string]plane.Box{}
		for _, p := range k.Parcels {
			places[p.Piece.Name] = p.Room
		}
		all = append(all, places)
	}
	return all
}
