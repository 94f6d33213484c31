package marking

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// printedSection is a section of the figures as it is read on the screen, "" where
// there is none of that title.
func printedSection(p *Pattern, title string) string {
	for _, s := range ReportOf(p, OwnUnit).Sections {
		if s.Title == title {
			_, text, _ := strings.Cut(Report{Sections: []Section{s}}.Text(80), strings.Repeat("-", len(title))+"\n")
			return text
		}
	}
	return ""
}

const trimmings = "Trims, ruffles and bindings"

// garment checks the sketch of a front without allowances, and what stands beside the
// pieces.
func garment(t require.TestingT, text, beside string) *Pattern {
	pattern, err := check("allowance = 0\n" + sketch(text) + "\n" + beside)
	require.NoError(t, err)
	return pattern
}

// A square collar, 6 in across and 5 in deep, whole; its neck edge lies at the top.
const squareCollar = "neck: 0,5 6,5\nouter: 6,5 6,0 0,0 0,5\n"

// One whose ends slant the same way: its outer edge turns by 60 degrees (tan 30 = 0.577)
// and by 120 (tan 60 = 1.732); it is 5 + 4 + 5 long.
const pointedCollar = "neck: 0,4.330127 4,4.330127\nouter: 4,4.330127 6.5,0 2.5,0 0,4.330127\n"

// Half a front with a square neck, 2 in across and 2 in deep, and one with a V neck,
// which is 2.5 in long and rises from the fold by atan(2 / 1.5) = 53.13 degrees.
const (
	squareNeck = "fold = \"centre\"\ncentre: 0,0 0,8\nneck: 0,8 2,8 2,10\nshoulder: 2,10 5,10\nside: 5,10 5,0\nhem: 5,0 0,0\n"
	vNeck      = "fold = \"centre\"\ncentre: 0,0 0,8\nneck: 0,8 1.5,10\nshoulder: 1.5,10 5,10\nside: 5,10 5,0\nhem: 5,0 0,0\n"
)

// Lace round a square outside corner takes 2 widths more where it lies flat (Hapgood,
// School Needlework, about 1892), 2 1/2 where it is gathered half as full again
// (McGlauflin, Handicraft for Girls, 1910, p. 88).
func TestLaceRoundACorner(t *testing.T) {
	for _, c := range []struct {
		name, piece, trim string
		corners           string // turn x times: widths each
		total             string
	}{
		// 5 + 6 + 5 = 16, and 2 x 2 x 1 in, and a join of 1/2 in
		{"flat, round two square corners", squareCollar, `along = "front.outer"; width = 1`, "90 x 2: 2", "20 1/2 in"},
		// 24, and 2 x 2 1/2 x 1 in, and 1/2 in
		{"gathered half as full again", squareCollar, `along = "front.outer"; width = 1; fullness = 1.5`, "90 x 2: 2.5", "29 1/2 in"},
		{"narrower lace takes less", squareCollar, `along = "front.outer"; width = "1/4"`, "90 x 2: 0.5", "17 1/2 in"},
		// All round the collar two corners more: 22 + 4 x 2 + 1/2
		{"all round", squareCollar, `along = ["front.outer", "front.neck"]; width = 1`, "90 x 4: 2", "30 1/2 in"},
		// 14 in; 2 x 1 in x tan 60 = 3.464 -> 3 1/2; 2 x tan 30 = 1.155 -> 1 3/16
		{"other angles, as long as a mitre there", pointedCollar, `along = "front.outer"; width = 1; join-takes = 0`, "60 x 1: 1.155, 120 x 1: 3.464", "18 11/16 in"},
		// A point of 2 x atan(0.5 / 5) = 11.4 degrees, reckoned as one of 30: tan 75 = 3.732.
		// Its two sides are 2 x 5.025.
		{"no mitre is longer than that of 30 degrees", "neck: 0,5 1,5\nouter: 0,5 0.5,0 1,5\n", `along = "front.outer"; width = 1; join-takes = 0`, "168.58 x 1: 7.464", "17 9/16 in"},
		{"on the collar every corner is an inner one", squareCollar, `along = "front.outer"; width = 1; lies = "on"`, "", "16 1/2 in"},
		// (2 + 2) x 2 = 8, and 1/2 in
		{"inside a square neck", squareNeck, `along = "front.neck"; width = 1`, "", "8 1/2 in"},
		// The band lies on the front, outside the neck; it is drawn on one half and
		// comes on both.
		{"on the front, round a square neck", squareNeck, `along = "front.neck"; width = 1; lies = "on"`, "90 x 2: 2", "12 1/2 in"},
		// 2 x 2.5 = 5; the point turns by 2 x 53.13 = 106.26, and takes 2 x tan 53.13 =
		// 2 2/3 -> 2 11/16
		{"on the front, round the point of a V", vNeck, `along = "front.neck"; width = 1; lies = "on"; kind = "braid"`, "106.26 x 1: 2.667", "8 3/16 in"},
		{"inside a V", vNeck, `along = "front.neck"; width = 1`, "", "5 1/2 in"},
		// A level hem goes over the fold straight: 10, and 1/2 in
		{"over a fold without a corner", vNeck, `along = "front.hem"; width = 1`, "", "10 1/2 in"},
		// The hem and both sides, on both halves: 10 + 20, 2 corners, 1/2 in
		{"round the corner between two edges", vNeck, `along = ["front.hem", "front.side"]; width = 1`, "90 x 2: 2", "34 1/2 in"},
		// 6 / cos 14 = 6.185, less than 30 degrees: eased round
		{"a turn too slight for a corner", "top: 0,4 6,4\nrest: 6,4 6,1 3,0.25 0,1 0,4", `along = "front.top"; width = 1`, "", "6 1/2 in"},
	} {
		t.Run(c.name, func(t *testing.T) {
			trim := garment(t, c.piece, "[trim.x]\n"+strings.ReplaceAll(c.trim, "; ", "\n")+"\n").Trims[0]
			var corners []string
			for _, corner := range trim.Corners {
				corners = append(corners, number2(corner.Turn)+" x "+number(float64(corner.Times))+": "+number(corner.Takes.MM/25.4))
			}
			assert.Equal(t, c.corners, strings.Join(corners, ", "))
			assert.Equal(t, c.total, trim.Total.String())
		})
	}
}

// number2 writes a number to two decimals.
func number2(v float64) string { return number(hundredth(v)) }

// A line drawn with many points turns where it turns within 2 mm.
func TestCornersDrawnWithManyPoints(t *testing.T) {
	for _, c := range []struct{ name, piece, want string }{
		// 0.03 in from each side of the corner, 1.08 mm along the chamfer
		{"a corner that is clipped", "neck: 0,5 6,5\nouter: 6,5 6,0.03 5.97,0 0,0 0,5\n", "90"},
		// 1/4 in from each side, 9 mm along the chamfer: two corners of 45 degrees
		{"a bevel", "neck: 0,5 6,5\nouter: 6,5 6,0.25 5.75,0 0,0 0,5\n", "90 45"},
	} {
		t.Run(c.name, func(t *testing.T) {
			var turns []string
			for _, corner := range garment(t, c.piece, "[trim.x]\nalong = \"front.outer\"\nwidth = 1\n").Trims[0].Corners {
				turns = append(turns, number(corner.Turn))
			}
			assert.Equal(t, c.want, strings.Join(turns, " "))
		})
	}
}

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
		{"two pieces, gathered, two ends", squareNeck, "[trim.\"neck lace\"]\nalong = [\"front.neck\", \"back.neck\"]\nwidth = \"5/8\"\nfullness = \"1 1/3\"\njoins = 2\njoin-takes = \"3/4\"\n", `
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
		{"corners without a width", squareCollar, "[trim.outer]\nalong = \"front.outer\"\nkind = \"cord\"\njoin-takes = \"1/32\"\n", `
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
		{"corners of other angles", pointedCollar, "[trim.\"Collar Lace\"]\nalong = \"front.outer\"\nwidth = 1\njoin-takes = 0\n", `
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
		{"lace is no part of a placement", squareCollar, "[trim.placement]\nalong = \"front.neck\"\n", `
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
			assert.Equal(t, strings.TrimPrefix(c.want, "\n"), printedSection(garment(t, piece, beside), trimmings))
		})
	}
}

// A line inside a piece takes trim as well, and counts on both halves of it: 2 x 5 in,
// with a pleat of 1 in across it 2 x 3 in.
func TestTrimOnALineInsideThePiece(t *testing.T) {
	const line = "---\n\n[line.band]\nalong = \"hem\"\ndistance = 2\n"
	trim := garment(t, vNeck+line, "[trim.x]\nalong = \"front.band\"\n").Trims[0]
	assert.Equal(t, "10 in", trim.Line.String())
	pleated := garment(t, vNeck+line+rows("pleat a centre 1 1 3"), "[trim.x]\nalong = \"front.band\"\n").Trims[0]
	assert.Equal(t, "6 in", pleated.Line.String())
}

// In a file in cm a join takes 1.2 cm where the file does not say, and no fraction of an
// inch stands among centimetres: 13 + 1.3.
func TestTrimsInCentimetres(t *testing.T) {
	pattern, err := check("unit = \"cm\"\nallowance = 0\n" + sketch(squareCollar) + "\n[trim.lace]\nalong = \"front.outer\"\nwidth = \"5/8 in\"\nlies = \"on\"\n" +
		"[trim.other]\nalong = \"front.neck\"\njoin-takes = \"1/4 in\"\n")
	require.NoError(t, err)
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

// Lace down the centre meets the lace at the neck in a T, not in a corner.
func TestNoCornerAtTheFold(t *testing.T) {
	p := garment(t, "fold = \"left\"\n"+rect("10"), "[trim.x]\nalong = [\"front.left\", \"front.top\"]\nwidth = 1\n")
	assert.Empty(t, p.Trims[0].Corners)
}
