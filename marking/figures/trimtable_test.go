package figures

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

const trimmings = "Trims, ruffles and bindings"

// Two backs, and a line inside the front at which ribbon is sewn on.
const backs = `
[piece.back]
name = "Back"
cut = 2
[piece.back.edge.centre]
points = [[0, 0], [0, 9]]
[piece.back.edge.neck]
points = [[0, 9], [1.5, 10]]
[piece.back.edge.rest]
points = [[1.5, 10], [5, 10], [5, 0], [0, 0]]
`

// quarterRound is a quarter of a circle of 4 in, between two straight sides.
var quarterRound = "outer: " + quarterCircle() + "\nleft: 0,4 0,0\nright: 0,0 4,0\n"

// quarterCircle writes the points of that circle, three degrees apart.
func quarterCircle() string {
	var points []string
	for k := range 31 {
		sin, cos := math.Sincos(float64(k) * math.Pi / 60)
		points = append(points, fmt.Sprintf("%.6f,%.6f", 4*cos, 4*sin))
	}
	return strings.Join(points, " ")
}

func TestTrimsInPrint(t *testing.T) {
	for _, c := range []struct{ name, piece, trim, want string }{
		// 2 x 4 = 8; 8 x 1 1/3 = 10 2/3 -> 10 11/16; the back neck is
		// sqrt(1.5^2 + 1) = 1.803 -> 1 13/16, twice 3 5/8; 11 5/8 x 1 1/3 = 15 1/2;
		// 36 = 2 x 18 in, 3/4 in each for two ends
		{"two pieces, gathered, two ends", sketch.SquareNeck, "[trim.\"neck lace\"]\nalong = [\"front.neck\", \"back.neck\"]\nwidth = \"5/8\"\nfullness = \"1 1/3\"\njoins = 2\njoin-takes = \"3/4\"\n", `
  neck lace, 5/8 in wide
                                 each  times  together
  Front, neck                       4      2         8
  Back, neck                  1 13/16      2     3 5/8
                                              --------
  the line                                      11 5/8
  1 1/3 times that, gathered                    15 1/2
  joining or turning in           3/4      2     1 1/2
                                              --------
  to cut                                            17
  nothing is added at inside corners: there the outer edge has 2 1/2 in more
  than it needs; fold it away in a mitre
  buy 1/2 yd
`},
		// An edge without a width: its corners are counted and not reckoned in.
		{"corners without a width", sketch.SquareCollar, "[trim.outer]\nalong = \"front.outer\"\nkind = \"cord\"\njoin-takes = \"1/32\"\n", `
  outer, cord
                          each  times  together
  front, outer              16      1        16
                                       --------
  the line                                   16
  square corner of front     0      2         0
  joining or turning in   1/16      1      1/16
                                       --------
  to cut                                16 1/16
! corners are not reckoned in: give the width
  buy 1/2 yd
`},
		// tan 60 x 2 = 3.464 -> 3 1/2; tan 30 x 2 = 1.155 -> 1 3/16; the kind stands in
		// the name already, in other letters
		{"corners of other angles", sketch.PointedCollar, "[trim.\"Collar Lace\"]\nalong = \"front.outer\"\nwidth = 1\njoin-takes = 0\n", `
  Collar Lace, 1 in wide
                                          each  times  together
  front, outer                              14      1        14
                                                       --------
  the line                                                   14
  corner of front, turning 60 degrees   1 3/16      1    1 3/16
  corner of front, turning 120 degrees   3 1/2      1     3 1/2
  joining or turning in                      0      1         0
                                                       --------
  to cut                                               18 11/16
  what is added at a corner is folded into a mitre
  buy 5/8 yd
`},
		// pi x 4 / 2 = 6.283 -> 6 5/16, of which gathers give an eighth, 0.785, more; pi / 2 x 1 =
		// 1.571 -> 1 5/8, less 0.785 -> 13/16; square corners where the sides meet it and each other
		{"round a curve and three corners, gathered a little", quarterRound, "[trim.outer]\nalong = [\"front.outer\", \"front.left\", \"front.right\"]\nwidth = 1\nfullness = \"1 1/8\"\njoin-takes = 0\n", `
  outer, lace, 1 in wide
                                        each  times  together
  front, outer                        6 5/16      1    6 5/16
  front, left                              4      1         4
  front, right                             4      1         4
                                                     --------
  the line                                            14 5/16
  1 1/8 times that, gathered                           16 1/8
  square corner of front                   2      3         6
  curve of front, turning 90 degrees   13/16      1     13/16
  joining or turning in                    0      1         0
                                                     --------
  to cut                                             22 15/16
  what is added at a corner is gathered close there, within a width on either
  side
  what is added round a curve is drawn up on its heading thread, or the outer
  edge cups
  another 13/16 in of what the outer edge needs round curves comes out of its
  fullness
  buy 3/4 yd
`},
		// half as full again it has pi more along the curve, which needs pi / 2
		{"round a curve, gathered enough", quarterRound, "[trim.outer]\nalong = \"front.outer\"\nwidth = 1\nfullness = \"1 1/2\"\njoin-takes = 0\n", `
  outer, lace, 1 in wide
                                each  times  together
  front, outer                6 5/16      1    6 5/16
                                             --------
  the line                                     6 5/16
  1 1/2 times that, gathered                    9 1/2
  joining or turning in            0      1         0
                                             --------
  to cut                                        9 1/2
  round curves the outer edge needs 1 5/8 in more, which its fullness gives
  buy 3/8 yd
`},
		{"braid round a curve", quarterRound, "[trim.outer]\nalong = \"front.outer\"\nkind = \"braid\"\nwidth = \"1/2\"\njoin-takes = 0\n", `
  outer, braid, 1/2 in wide
                                        each  times  together
  front, outer                        6 5/16      1    6 5/16
                                                     --------
  the line                                             6 5/16
  curve of front, turning 90 degrees   13/16      1     13/16
  joining or turning in                    0      1         0
                                                     --------
  to cut                                                7 1/8
  what is added round a curve is drawn up on a thread along its inner edge, or
  the outer edge cups
  buy 1/4 yd
`},
		{"on the piece along its curve", quarterRound, "[trim.outer]\nalong = \"front.outer\"\nwidth = 1\nlies = \"on\"\njoin-takes = 0\n", `
  outer, lace, 1 in wide
                           each  times  together
  front, outer           6 5/16      1    6 5/16
                                        --------
  the line                                6 5/16
  joining or turning in       0      1         0
                                        --------
  to cut                                  6 5/16
  nothing is added where the line is hollow: there the outer edge has 1 9/16 in
  more than it needs, and will be full
  buy 1/4 yd
`},
		// as wide as the radius: its outer edge is one point
		{"on the piece, as wide as its radius", quarterRound, "[trim.outer]\nalong = \"front.outer\"\nwidth = 4\nlies = \"on\"\njoin-takes = 0\n", `
  outer, lace, 4 in wide
                           each  times  together
  front, outer           6 5/16      1    6 5/16
                                        --------
  the line                                6 5/16
  joining or turning in       0      1         0
                                        --------
  to cut                                  6 5/16
! the line has a hollow curve of 4 in radius, and lace as wide as that has no
  room there for its outer edge: take it narrower, or fold it there as in a
  corner
  nothing is added where the line is hollow: there the outer edge has 6 5/16 in
  more than it needs, and will be full
  buy 1/4 yd
`},
		{"a curve and corners without a width", quarterRound, "[trim.outer]\nalong = [\"front.outer\", \"front.left\"]\njoin-takes = 0\n", `
  outer, lace
                            each  times  together
  front, outer            6 5/16      1    6 5/16
  front, left                  4      1         4
                                         --------
  the line                                10 5/16
  square corner of front       0      1         0
  joining or turning in        0      1         0
                                         --------
  to cut                                  10 5/16
! corners and outward curves are not reckoned in: give the width
  buy 3/8 yd
`},
		{"a cord without a width, along a curve", quarterRound, "[trim.outer]\nalong = \"front.outer\"\nkind = \"cord\"\njoin-takes = 0\n", `
  outer, cord
                           each  times  together
  front, outer           6 5/16      1    6 5/16
                                        --------
  the line                                6 5/16
  joining or turning in       0      1         0
                                        --------
  to cut                                  6 5/16
  buy 1/4 yd
`},
		// the corners are square, and take 2 x 1/4 each; along the curve it bends by itself
		{"a cord round a curve and three corners", quarterRound, "[trim.outer]\nalong = [\"front.outer\", \"front.left\", \"front.right\"]\nkind = \"cord\"\nwidth = \"1/4\"\njoin-takes = 0\n", `
  outer, cord, 1/4 in wide
                            each  times  together
  front, outer            6 5/16      1    6 5/16
  front, left                  4      1         4
  front, right                 4      1         4
                                         --------
  the line                                14 5/16
  square corner of front     1/2      3     1 1/2
  joining or turning in        0      1         0
                                         --------
  to cut                                 15 13/16
  what is added at a corner is for going round it
  buy 1/2 yd
`},
		{"a cord in a hollow", quarterRound, "[trim.outer]\nalong = \"front.outer\"\nkind = \"cord\"\nwidth = \"1/4\"\nlies = \"on\"\njoin-takes = 0\n", `
  outer, cord, 1/4 in wide
                           each  times  together
  front, outer           6 5/16      1    6 5/16
                                        --------
  the line                                6 5/16
  joining or turning in       0      1         0
                                        --------
  to cut                                  6 5/16
  buy 1/4 yd
`},
		{"lace is no part of a placement", sketch.SquareCollar, "[trim.placement]\nalong = \"front.neck\"\n", `
  placement, lace
                         each  times  together
  front, neck               6      1         6
                                      --------
  the line                                   6
  joining or turning in   1/2      1       1/2
                                      --------
  to cut                                 6 1/2
  buy 1/4 yd
`},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece, beside := c.piece, c.trim
			if strings.Contains(beside, "back.") {
				piece, beside = "name = \"Front\"\n"+piece, backs+beside
			}
			assert.Equal(t, strings.TrimPrefix(c.want, "\n"), printedSection(garmentOf(t, piece, beside), trimmings))
		})
	}
}

// In a file in cm a join takes 1.2 cm where the file does not say, and no fraction of an
// inch stands among centimetres: 13 + 1.3.
func TestTrimsInCentimetres(t *testing.T) {
	pattern := made.Of(t, "unit = \"cm\"\nallowance = 0\n"+sketch.Front(sketch.SquareCollar)+"\n[trim.lace]\nalong = \"front.outer\"\nwidth = \"5/8 in\"\nlies = \"on\"\n"+
		"[trim.other]\nalong = \"front.neck\"\njoin-takes = \"1/4 in\"\n")
	assert.Equal(t, `  lace, 5/8 in wide
                         each  times  together
  front, outer             16      1        16
                                      --------
  the line                                  16
  joining or turning in   1.2      1       1.2
                                      --------
  to cut                                  17.2
  nothing is added at inside corners: there the outer edge has 6.4 cm more than
  it needs; fold it away in a mitre
  buy 0.2 m

  other, lace
                         each  times  together
  front, neck               6      1         6
                                      --------
  the line                                   6
  joining or turning in   0.7      1       0.7
                                      --------
  to cut                                   6.7
  buy 0.1 m
`, printedSection(pattern, trimmings))
}

// What a join takes where the file does not say is chosen, and its sum is read to the nearest
// step in the other system: 24 mm are 15.1 sixteenths of an inch.
func TestJoinsInBothSystems(t *testing.T) {
	p := made.Of(t, "unit = \"mm\"\nallowance = 0\n"+sketch.Front(sketch.SquareCollar)+"\n[trim.lace]\nalong = \"front.outer\"\njoins = 2\n")
	rows := trimTable(p.Trims[0], 1, writer{unit: p.Unit, units: AllUnits}).Rows
	assert.Equal(t, []string{"joining or turning in", "12 (1/2)", "2", "24 (15/16)"}, rows[len(rows)-2].Cells)
}

// Twelve gores of 4.53 in are read as 4 1/2 in each, 54 in together, and are 54.36: 3/8 in more. Of
// four there is 1/8 in more, which is no more than the ends have to spare.
func TestEdgesThatAreLongerThanAsPrinted(t *testing.T) {
	for _, c := range []struct {
		name  string
		gores int
		more  string
	}{{"twelve", 12, "together the edges are 3/8 in longer than as printed: "}, {"four", 4, ""}} {
		t.Run(c.name, func(t *testing.T) {
			p := made.Of(t, fmt.Sprintf("unit = \"in\"\nallowance = \"1/4\"\n[cloth]\nwidth = 44\n[piece.gore]\nname = \"Gore\"\nrectangle = [\"5.03\", 9]\ncut = %d\n"+
				"[seam.side]\njoin = [\"gore.left\", \"gore.right\"]\n[trim.lace]\nalong = [\"gore.bottom\"]\nwidth = \"1/2\"\n"+
				"[ruffle.frill]\nalong = [\"gore.bottom\"]\nfullness = 2\ndepth = 3\n[binding.waist]\nalong = [\"gore.top\"]\nwidth = \"1/4\"\n", c.gores))
			w := writer{unit: p.Unit}
			for table, means := range map[string]string{
				fmt.Sprint(trimTable(p.Trims[0], 1, w).Lines):       "cut it that much longer",
				fmt.Sprint(bindingTable(p.Bindings[0], 1, w).Lines): "cut it that much longer",
				fmt.Sprint(ruffleTable(p.Ruffles[0], 1, w).Lines):   "the strips are long enough for that",
			} {
				if c.more == "" {
					assert.NotContains(t, table, "as printed")
				} else {
					assert.Contains(t, table, c.more+means)
				}
			}
		})
	}
}
