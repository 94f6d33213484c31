package figures

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/sketch"
)

const tearFirst = "Tear and cut first"

func TestTearAndCutList(t *testing.T) {
	// A rectangle, 5 in by 10 in, whole or as half of one of 10 in by 10 in.
	const box = "centre: 0,0 0,10\ntop: 0,10 5,10\nside: 5,10 5,0\nhem: 5,0 0,0\n"
	for _, c := range []struct{ name, piece, beside, want string }{
		{"a rectangle", "cut = 2\n" + box, "", `
                                 across the
  tear                how many        cloth  along it
  front, a rectangle         2            5        10

  Not every grain is given; it was taken so: front along side.
`},
		{"a rectangle on the fold, opened out", "fold = \"centre\"\n" + box, "", `
                                 across the
  tear                how many        cloth  along it
  front, a rectangle         1           10        10
`},
		{"a rectangle whose grain runs across", "grain = \"hem\"\n" + box, "", `
                                 across the
  tear                how many        cloth  along it
  front, a rectangle         1           10         5
`},
		// Along the grain, from corner to corner of a 3-4-5 triangle, it is
		// 5 x 0.8 + 10 x 0.6 = 10 across and 5 x 0.6 + 10 x 0.8 = 11 along.
		{"a rectangle with slanted grain is cut", "grain = [[0, 0], [3, 4]]\n" + box, "", `
                    across the
  cut    how many        cloth  along it
  front         1           10        11
`},
		// Opened out it cannot be torn either, so the half is told.
		{"half a rectangle with slanted grain is cut on the fold", "fold = \"centre\"\ngrain = [[0, 0], [3, 4]]\n" + box, "", `
                           across the
  cut          how many        cloth  along it
  front  1, on the fold           10        11
  Sizes are over all; of a piece on the fold, those of the half that is drawn.
`},
		{"a point on a straight side is no corner", "centre: 0,0 0,10\ntop: 0,10 5,10\nside: 5,10 5,6 5,0\nhem: 5,0 0,0\n", "", `
                                 across the
  tear                how many        cloth  along it
  front, a rectangle         1            5        10

  Not every grain is given; it was taken so: front along side.
`},
		{"not square is no rectangle", "grain = \"centre\"\ncentre: 0,0 0,10\ntop: 0,10 5,10\nside: 5,10 5.1,0\nhem: 5.1,0 0,0\n", "", `
                    across the
  cut    how many        cloth  along it
  front         1        5 1/8        10
`},
		{"nor is an L", "centre: 0,0 0,10\ntop: 0,10 2,10\nside: 2,10 2,4 5,4 5,0\nhem: 5,0 0,0\n", "", `
                    across the
  cut    how many        cloth  along it
  front         1            5        10

  Not every grain is given; it was taken so: front along centre.
`},
		// Tucks of a finished rectangle take cloth: 10 + 12 x 1/2 in.
		{"a rectangle with its tucks", "drawn = \"finished\"\nfold = \"centre\"\n" + box + "---\n" + sketch.Rows(`tuck a centre 1/4 6 1/4`), "", `
                                 across the
  tear                how many        cloth  along it
  front, a rectangle         1           16        10
`},
		// 12 in finished, 12 tucks of 1/8 in, 1/2 in at each side; 12 in and 1/2 in at
		// each end.
		{"a block whose tucks run through", sketch.Bosom + sketch.Tucked("cf", "1/8", 6, "3/8", "") + "\n[block]\nsides = \"1/2\"\nends = \"1/2\"\n", "", `
                                        across the
  tear                        how many        cloth  along it
  front, block to be tucked          1           16        13

  front: once it is tucked, the top edge of its block must measure 13 in, and so
  must the bottom edge
`},
		{"a block whose tucks end on it", sketch.Bosom + sketch.Tucked("cf", "1/8", 6, "3/8", "below = \"neck\"\nlength = 3") + "\n[block]\nsides = \"1/2\"\nends = \"1/2\"\n", "", `
                                        across the
  tear                        how many        cloth  along it
  front, block to be tucked          1           16        13

  front: once it is tucked, the top edge of its block must measure 13 in; draw
  the bottom edge in to the same
`},
		{"a block that was measured, its tucks through", sketch.Bosom + sketch.Tucked("cf", "1/8", 6, "3/8", "") + "\n[block]\nsides = \"1/2\"\nends = \"1/2\"\nmeasured = \"12 3/4\"\n", "", `
                                           across the
  tear                           how many        cloth  along it
  front, block, tucked already          1           16        13

  front: the top edge of its block measures 12 3/4 in, and so must the bottom
  edge
`},
		{"a block that was measured, its tucks end on it", sketch.Bosom + sketch.Tucked("cf", "1/8", 6, "3/8", "below = \"neck\"\nlength = 3") + "\n[block]\nsides = \"1/2\"\nends = \"1/2\"\nmeasured = \"12 3/4\"\n", "", `
                                           across the
  tear                           how many        cloth  along it
  front, block, tucked already          1           16        13

  front: the top edge of its block measures 12 3/4 in; draw the bottom edge in
  to the same
`},
		// 40 in of hem, full twice, 80 in: two strips of 4 + 1/2 + 1/4 + 1/4 in. 10 in of
		// it bound 1 in wide: see binding_test.go of package garment.
		{"strips before rectangles, and a square", strings.Replace(sketch.Skirt(20), "name = \"Front\"", "cut = 1", 1), "[cloth]\nwidth = 44\n" +
			"[ruffle.frill]\nalong = \"front.hem\"\nfullness = 2\ndepth = 4\nhem = \"1/2\"\nturn = \"1/4\"\nseam = \"1/4\"\n[binding.edge]\nalong = \"front.hem\"\nwidth = \"1/4\"\nsquare = 20\n", `
                                 across the
  tear                 how many       cloth  along it
  frill ruffle, strips                2           44         5
  front, a rectangle          1           40        10

                                      across the
  cut                       how many       cloth  along it
  edge binding, bias square     1           20        20
`},
		{"strips of cloth of no known width", sketch.Skirt(20), "[ruffle.frill]\nalong = \"front.hem\"\nfullness = 2\ndepth = 4\n", `
                                 across the
  tear                how many        cloth  along it
  Front, a rectangle         1           40        10

  frill: tear strips 4 in deep; how many follows from the width of the cloth,
  which is not given
`},
		// What is chosen in the other system keeps its unit.
		{"cloth in centimetres", sketch.Skirt(20), "[cloth]\nwidth = \"110 cm\"\n[ruffle.frill]\nalong = \"front.hem\"\nfullness = 2\ndepth = 4\n", `
                                 across the
  tear                how many        cloth  along it
  frill ruffle, strips              2      1100 mm         4
  Front, a rectangle         1           40        10
`},
		// 17 strips from selvage to selvage: see binding_test.go of package garment.
		{"cloth for bias strips", sketch.Skirt(200), "[cloth]\nwidth = 18\n[binding.hem]\nalong = \"front.hem\"\nwidth = 1\nfold = \"double\"\n", `
                                         across the
  tear                         how many       cloth   along it
  hem binding, cloth for the bias          1          18   162 1/4
  Front, a rectangle                  1         400         10
`},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, words(c.want), words(printedSection(garmentOf(t, c.piece, c.beside), tearFirst)))
		})
	}
}

// words takes the layout off a text but for its lines.
func words(text string) string {
	var lines []string
	for _, line := range strings.Split(strings.TrimSpace(text), "\n") {
		lines = append(lines, strings.Join(strings.Fields(line), " "))
	}
	return strings.Join(lines, "\n")
}
