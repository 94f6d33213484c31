package figures

import (
	"fmt"
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
  buy 5/8 yd
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

// A strip is as deep as the ruffle with all that is added to it: 3 1/2 in of hem, a turn
// and a seam of 1/4 in each are 4 in (Kinne and Cooley, p. 36); 1/2 in of turn, 5 in of
// hem and 1/2 in of seam are 6 in (Ontario Teachers' Manuals, Household Science in Rural
// Schools, 1918, pp. 130-133).
func TestWhatIsAddedToARuffle(t *testing.T) {
	for _, c := range []struct {
		name, ruffle, cut, said string
		added                   float64 // inches
	}{
		{"a hem of 3 1/2 in", "hem = \"3 1/2\"\nturn = \"1/4\"\nseam = \"1/4\"", "14 in", "14 in deep: 10 in finished, 3 1/2 in hem, 1/4 in turned in, 1/4 in seam", 4},
		{"a hem of 5 in", "hem = 5\nturn = \"1/2\"\nseam = \"1/2\"", "16 in", "16 in deep: 10 in finished, 5 in hem, 1/2 in turned in, 1/2 in seam", 6},
		{"its seam alone, as all others", "", "10 3/8 in", "10 3/8 in deep: 10 in finished, 3/8 in seam", 0.375},
		{"nothing", "seam = 0", "10 in", "10 in deep: 10 in finished, nothing for a hem or a seam", 0},
		// 6 mm is 3.78 sixteenths, and is read as 1/4 in
		{"a hem in mm", "hem = \"6 mm\"\nseam = 0", "10 1/4 in", "10 1/4 in deep: 10 in finished, 1/4 in hem", 6 / 25.4},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := made.Of(t, "allowance = \"3/8\"\n"+sketch.Front(sketch.Skirt(20))+"\n[ruffle.r]\nalong = \"front.hem\"\nfullness = 2\ndepth = 10\n"+c.ruffle+"\n")
			r := p.Ruffles[0]
			assert.Equal(t, c.cut, r.CutDepth.String())
			assert.InDelta(t, 10+c.added, r.CutDepth.MM/25.4, 1e-9)
			assert.Equal(t, c.said, ruffleDepths(r, inches))
		})
	}
}

// A dust ruffle is 1 1/4 to 1 1/3 times its edge (Baldt, Petticoats), and is not warned
// of. More than three times is told (common practice).
func TestFullnessThatIsWarnedOf(t *testing.T) {
	for _, c := range []struct{ fullness, row, warning string }{
		{"1", "as long as that, ungathered", "a ruffle no longer than its edge hangs flat; 1 1/4 times its edge is the least that hangs in folds"},
		{"1 1/5", "1.2 times that, ungathered", "1.2 times its edge is scant for a ruffle; 1 1/4 is the least that hangs in folds"},
		{"1 1/4", "1 1/4 times that, ungathered", ""},
		{"1 1/3", "1 1/3 times that, ungathered", ""},
		{"2", "2 times that, ungathered", ""},
		{"3", "3 times that, ungathered", ""},
		{"3 1/8", "3 1/8 times that, ungathered", "3 1/8 times its edge is much for a ruffle; 3 is the most that draws up well"},
	} {
		t.Run(c.fullness, func(t *testing.T) {
			p := garmentOf(t, sketch.Skirt(10), "[ruffle.r]\nalong = \"front.hem\"\nfullness = \""+c.fullness+"\"\ndepth = 4\n")
			table := ruffleTable(p.Ruffles[0], inches)
			assert.Equal(t, c.row, table.Rows[2].Cells[0])
			var warnings, remarks []string
			for _, s := range table.Lines {
				if s.Warning && !strings.Contains(s.Text, "the width of the cloth") {
					warnings = append(warnings, s.Text)
				}
			}
			for _, r := range p.Remarks {
				if r.Path == "ruffle.r" {
					remarks = append(remarks, r.Text)
				}
			}
			assert.Equal(t, c.warning, strings.Join(warnings, "\n"), "in the figures")
			assert.Equal(t, c.warning, strings.Join(remarks, "\n"), "as a remark")
		})
	}
}

// Eight joins are listed, and that there are more is said. 2 x 90 = 180, twice 360; of
// cloth 20 in wide with seams of 1/2 in 360 / 19 = 18.9 strips of 9.47 in of the edge.
func TestManyJoins(t *testing.T) {
	r := garmentOf(t, sketch.Skirt(90), "[cloth]\nwidth = 20\n[ruffle.hem]\nalong = \"front.hem\"\nfullness = 2\ndepth = 4\njoining = \"1/2\"\n").Ruffles[0]
	assert.Equal(t, 19, r.Strips)
	assert.Len(t, r.Joins, 9)
	assert.Equal(t, "joins fall 4 3/4 in, 14 3/16 in, 23 11/16 in, 33 3/16 in, 42 5/8 in, 52 1/8 in, 61 9/16 in, 71 1/16 in and so on "+
		"along the edge, to either side of the fold of Front, where the middle of a strip comes", joinsFall(r, inches))
}

// A true bias runs at 45 degrees to the threads. A join along a thread takes
// 2 x 1/4 x sqrt 2 = 0.707 in of the strip, which is read as 3/4 in.
func TestBindingsInPrint(t *testing.T) {
	for _, c := range []struct{ name, beside, want string }{
		// 20 in of hem and a join: 20 3/4 in, 4 x 1/4 = 1 in wide. One strip beside the
		// diagonal d of a square of s is d - 2 in long: d >= 22.75, s >= 16.087: 16 1/2.
		{"single, from the least square", "[cloth]\nwidth = 44\n[binding.hem]\nalong = \"front.hem\"\nwidth = \"1/4\"\n", `
  hem, single bias binding, 1/4 in wide
                         each  times  together
  Front, hem               10      2        20
                                      --------
  the line                                  20
  joining or turning in   3/4      1       3/4
                                      --------
  bias strip                            20 3/4
  cut it 1 in wide, 4 times the finished width
  1 strip from a square of 16 1/2 in, the first cut from corner to corner
`},
		// 6 x 1/4 = 1 1/2 in wide, two ends: 21 1/2. d = 12 x 1.414 = 16.97; one strip is
		// d - 3 = 13.97; the second adds 13.97 - 0.707.
		{"double, from a square that is given", "[binding.hem]\nalong = \"front.hem\"\nwidth = \"1/4\"\nfold = \"double\"\njoins = 2\nsquare = 12\n", `
  hem, double bias binding, 1/4 in wide
                         each  times  together
  Front, hem               10      2        20
                                      --------
  the line                                  20
  joining or turning in   3/4      2     1 1/2
                                      --------
  bias strip                            21 1/2
  cut it 1 1/2 in wide, 6 times the finished width
  2 strips from a square of 12 in, the first cut from corner to corner
`},
		// d - 2 = 40 x 1.414 - 2 = 54.6 in is more than 20 3/4
		{"one strip", "[binding.hem]\nalong = \"front.hem\"\nwidth = \"1/4\"\nsquare = 40\n", `
  hem, single bias binding, 1/4 in wide
                         each  times  together
  Front, hem               10      2        20
                                      --------
  the line                                  20
  joining or turning in   3/4      1       3/4
                                      --------
  bias strip                            20 3/4
  cut it 1 in wide, 4 times the finished width
  1 strip from a square of 40 in, the first cut from corner to corner
`},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, strings.TrimPrefix(c.want, "\n"), printedSection(garmentOf(t, sketch.Skirt(10), c.beside), trimmings))
		})
	}
}

// 400 3/4 in of strip, 6 in wide, from cloth of 18 in: no square gives it. Each strip is
// 18 x 1.41421 = 25.456 in long; joined along a thread, n of them give n x 25.456 less
// n - 1 joins of 0.707, and lose their width of 6 in once, to the slant:
// n >= (400.75 + 6 - 0.707) / 24.749 = 16.4, which makes 17. Along the cloth each takes
// 6 x 1.41421 = 8.485 in, and the slant 18 in: 162.25 in.
func TestBindingFromSelvageToSelvage(t *testing.T) {
	p := garmentOf(t, sketch.Skirt(200), "[cloth]\nwidth = 18\n[binding.hem]\nalong = \"front.hem\"\nwidth = 1\nfold = \"double\"\n")
	b := p.Bindings[0]
	assert.Equal(t, "400 3/4 in", b.Length.String())
	assert.Equal(t, 17, b.Strips)
	assert.Zero(t, b.Square.MM)
	assert.Equal(t, "162 1/4 in", b.Cloth.String())
	text := printedSection(p, trimmings)
	assert.Contains(t, text, "\n  17 strips from selvage to selvage, out of 162 1/4 in of cloth; join them along\n  a thread, with seams of 1/4 in\n")
}
