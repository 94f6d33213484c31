package garment_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/sketch"
)

func TestRufflesInPrint(t *testing.T) {
	const round = "[cloth]\nwidth = 44\n%s[ruffle.hem]\nalong = [\"front.hem\", \"back.hem\"]\nfullness = 2\ndepth = 4\nhem = \"1/2\"\nturn = \"1/4\"\nseam = \"3/8\"\nround = true\n"
	for _, c := range []struct {
		name   string
		half   float64
		beside string
		want   string
	}{
		// 4 x 5 = 20, twice 40, less than 44 - 1/2. It meets itself opposite the front.
		{"one strip, round", 5, fmt.Sprintf(round, sketch.SkirtBack(5)), `
  hem, ruffle 4 in deep
                            each  times  together
  Front, hem                   5      2        10
  Back, hem                    5      2        10
                                         --------
  the line                                     20
  2 times that, ungathered                     40
  tear strips 5 1/8 in deep: 4 in finished, 1/2 in hem, 1/4 in turned in, 3/8 in
  seam
  1 strip across the cloth is enough; cut it 40 1/2 in long, 1/4 in for a seam
  or a hem at each end included
  the join falls halfway round from the fold of Front, where the middle of the
  strip comes
  quarter both and match the marks: the edge every 5 in, the ruffle every 10 in
`},
		// 4 x 10 = 40, twice 80 = 2 x 43 1/2 less 7: two strips, each on 20 in of the
		// edge, so 10 in to either side of the centre
		{"two strips, round", 10, fmt.Sprintf(round, sketch.SkirtBack(10)), `
  hem, ruffle 4 in deep
                            each  times  together
  Front, hem                  10      2        20
  Back, hem                   10      2        20
                                         --------
  the line                                     40
  2 times that, ungathered                     80
  tear strips 5 1/8 in deep: 4 in finished, 1/2 in hem, 1/4 in turned in, 3/8 in
  seam
  2 strips across the cloth; cut each 40 1/2 in long, 1/4 in for a seam or a hem
  at each end included, and join them
  joins fall 10 in along the edge, to either side of the fold of Front, where
  the middle of a strip comes
  quarter both and match the marks: the edge every 10 in, the ruffle every 20 in
`},
		// 4 x 12 = 48, twice 96 = 2.2 x 43 1/2: three strips of 16 in of the edge; one
		// join is 24 in from the centre both ways
		{"three strips, round", 12, fmt.Sprintf(round, sketch.SkirtBack(12)), `
  hem, ruffle 4 in deep
                            each  times  together
  Front, hem                  12      2        24
  Back, hem                   12      2        24
                                         --------
  the line                                     48
  2 times that, ungathered                     96
  tear strips 5 1/8 in deep: 4 in finished, 1/2 in hem, 1/4 in turned in, 3/8 in
  seam
  3 strips across the cloth; cut each 32 1/2 in long, 1/4 in for a seam or a hem
  at each end included, and join them
  joins fall 8 in along the edge, to either side of the fold of Front, where the
  middle of a strip comes; the last falls halfway round
  quarter both and match the marks: the edge every 12 in, the ruffle every 24 in
`},
		// 2 x 20 = 40, 1 1/2 times 60 = 1.4 x 43 1/2. Open: half a strip at either end
		{"two strips, open", 20, "[cloth]\nwidth = 44\n[ruffle.hem]\nalong = \"front.hem\"\nfullness = 1.5\ndepth = 4\nseam = \"3/8\"\n", `
  hem, ruffle 4 in deep
                                each  times  together
  Front, hem                      20      2        40
                                             --------
  the line                                         40
  1 1/2 times that, ungathered                     60
  tear strips 4 3/8 in deep: 4 in finished, 3/8 in seam
  2 strips across the cloth; cut each 30 1/2 in long, 1/4 in for a seam or a hem
  at each end included, and join them
  joins fall 10 in along the edge, to either side of the fold of Front, where
  the middle of a strip comes
  cut one strip 1/2 in longer, and in two, for the two ends
  quarter both and match the marks: the edge every 10 in, the ruffle every 15 in
`},
		// A back alone has no fold: 2 x 20 = 40, twice 80, two strips from the beginning
		{"two strips, from the beginning on", 10, "[cloth]\nwidth = 44\n" + sketch.SkirtBack(20) + "[ruffle.back]\nalong = \"back.hem\"\nfullness = 2\ndepth = 4\njoining = 0\n", `
  back, ruffle 4 in deep
                            each  times  together
  Back, hem                   20      2        40
                                         --------
  the line                                     40
  2 times that, ungathered                     80
  tear strips 4 in deep: 4 in finished, nothing for a hem or a seam
  2 strips across the cloth; cut each 40 in long, and join them
  a join falls 20 in along the edge from where it begins
  quarter both and match the marks: the edge every 10 in, the ruffle every 20 in
`},
		// the same round: one join more, where it begins
		{"two strips, round from the beginning on", 10, "[cloth]\nwidth = 44\n" + sketch.SkirtBack(20) + "[ruffle.back]\nalong = \"back.hem\"\nfullness = 2\ndepth = 4\nround = true\n", `
  back, ruffle 4 in deep
                            each  times  together
  Back, hem                   20      2        40
                                         --------
  the line                                     40
  2 times that, ungathered                     80
  tear strips 4 in deep: 4 in finished, nothing for a hem or a seam
  2 strips across the cloth; cut each 40 1/2 in long, 1/4 in for a seam or a hem
  at each end included, and join them
  joins fall 20 in along the edge from where it begins; the last falls where it
  begins
  quarter both and match the marks: the edge every 10 in, the ruffle every 20 in
`},
		{"cloth of no known width", 20, "[ruffle.hem]\nalong = \"front.hem\"\nfullness = 2\ndepth = 4\n", `
  hem, ruffle 4 in deep
                            each  times  together
  Front, hem                  20      2        40
                                         --------
  the line                                     40
  2 times that, ungathered                     80
  tear strips 4 in deep: 4 in finished, nothing for a hem or a seam
! the width of the cloth is not given, so its strips cannot be counted
  quarter both and match the marks: the edge every 10 in, the ruffle every 20 in
`},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, strings.TrimPrefix(c.want, "\n"), printedSection(garmentOf(t, sketch.Skirt(c.half), c.beside), trimmings))
		})
	}
}
