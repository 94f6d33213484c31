package marking

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// patterns are the examples, the file that the README builds up, and one with
// everything in it.
func patterns(t *testing.T) map[string]*Pattern {
	t.Helper()
	all := map[string]*Pattern{}
	files, err := filepath.Glob(filepath.Join("..", "examples", "*.toml"))
	require.NoError(t, err)
	require.NotEmpty(t, files)
	for _, file := range files {
		all[filepath.Base(file)] = example(t, filepath.Base(file))
	}
	readme, err := os.ReadFile(filepath.Join("..", "README.md"))
	require.NoError(t, err)
	text := ""
	for _, block := range regexp.MustCompile("(?s)```toml\n(.*?)```").FindAllStringSubmatch(string(readme), -1) {
		text += block[1]
	}
	require.NotEmpty(t, text)
	for name, text := range map[string]string{"README": text, "everything": frock, "everything for a doll": strings.Replace(frock, `unit = "in"`, `unit = "cm"`, 1)} {
		p, err := check(text)
		require.NoError(t, err, name)
		all[name] = p
	}
	return all
}

// frock is a file with all that figures can tell.
const frock = `title = "Everything frock"
size = "3 years"
unit = "in"
allowance = "3/8"
[cloth]
width = 45
[sewing]
needle = "70"
stitch = "2 mm"
[piece.front]
name = "Front"
fold = "centre"
drawn = "finished"
[piece.front.edge.centre]
points = [[0, 0], [0, 9]]
[piece.front.edge.neck]
points = [[0, 9], [2, 9], [2, 11]]
[piece.front.edge.shoulder]
points = [[2, 11], [4, "10 1/2"]]
[piece.front.edge.side]
points = [[4, "10 1/2"], ["6 1/2", 0]]
[piece.front.edge.hem]
points = [["6 1/2", 0], [0, 0]]
hem = 2
turn = "1/4"
[piece.front.tuck.bosom]
beside = "centre"
width = "1/8"
count = 5
first = "1/2"
gap = "1/16"
press = "away"
below = "neck"
length = 3
sample = {tucks = 10, flat = "10", sewn = "7 3/8"}
[piece.front.block]
ends = "1/2"
sides = "1/2"
[piece.back]
name = "Back"
cut = 2
[piece.back.edge.centre]
points = [[0, 0], [0, 10]]
[piece.back.edge.neck]
points = [[0, 10], [2, 11]]
[piece.back.edge.shoulder]
points = [[2, 11], ["4 1/4", "10 1/2"]]
[piece.back.edge.side]
points = [["4 1/4", "10 1/2"], [7, 0]]
[piece.back.edge.hem]
points = [[7, 0], [0, 0]]
[piece.back.pleat.dart]
edge = "side"
from = "hem"
at = 5
depth = "1/4"
toward = "hem"
length = "1/2"
[piece.skirt]
name = "Skirt"
fold = "middle"
[piece.skirt.edge.middle]
points = [[0, 0], [0, 12]]
[piece.skirt.edge.waist]
points = [[0, 12], [20, 12]]
[piece.skirt.edge.side]
points = [[20, 12], [20, 0]]
[piece.skirt.edge.hem]
points = [[20, 0], [0, 0]]
allowance = "3/4"
[piece.skirt.pleat.fine]
beside = "middle"
depth = "1/2"
count = 2
first = 2
[piece.collar]
name = "Collar"
cut = 2
[piece.collar.edge.neck]
points = [[0, 3], [9, 3]]
[piece.collar.edge.outer]
points = [[9, 3], [9, 0], [0, 0], [0, 3]]
[seam.shoulder]
join = ["front.shoulder", "back.shoulder"]
ease = "1/8"
[seam.side]
join = ["front.side", "back.side"]
[seam.waist]
join = ["skirt.waist", ["front.hem", "back.hem"]]
gathered = true
[trim.lace]
along = "collar.outer"
width = "1/2"
fullness = "1 1/2"
[trim."neck ribbon"]
along = ["front.neck", "back.neck"]
kind = "ribbon"
[ruffle.hem]
along = ["skirt.hem"]
fullness = 2
depth = 4
hem = "1/2"
turn = "1/4"
[binding.armhole]
along = ["back.side"]
width = "1/4"
[binding."round everything"]
along = ["skirt.hem", "skirt.side", "front.hem", "front.side", "back.hem", "back.side", "collar.outer", "collar.neck", "back.neck", "front.neck", "skirt.waist", "back.shoulder", "front.shoulder"]
width = "1 1/4"
fold = "double"
joins = 13
`

// No line is longer than 80 letters. In both systems the table of a set of tucks whose
// lines lie off the ruler needs up to 85: three readings such as "2 11/16 + 1/32 (69)".
var inTuckTable = regexp.MustCompile(`^  (tuck \d|[a-z ]+ stitch )`)

func TestFiguresFitAScreen(t *testing.T) {
	for name, p := range patterns(t) {
		for _, w := range []Wording{OwnUnit, AllUnits} {
			for _, line := range strings.Split(ReportOf(p, w).Text(80), "\n") {
				most := 80
				if w == AllUnits && inTuckTable.MatchString(line) {
					most = 85
				}
				assert.LessOrEqual(t, utf8.RuneCountInString(line), most, "%s, wording %d: %q", name, w, line)
				assert.Equal(t, strings.TrimRight(line, " "), line, "%s: no blanks at the end", name)
			}
		}
	}
}

var (
	numberLast       = regexp.MustCompile(`(^|[ (])-?\d[\d.]*(/\d+)?$`)
	beginsInFraction = regexp.MustCompile(`^\d+/\d+\b`)
	beginsInUnit     = regexp.MustCompile(`^(in|cm|mm|yd|m)\b`)
)

// A number stays with its fraction and its unit, however narrow the screen.
func TestNoNumberIsParted(t *testing.T) {
	for name, p := range patterns(t) {
		for _, w := range []Wording{OwnUnit, AllUnits} {
			for _, width := range []int{40, 60, 80, 100} {
				lines := strings.Split(ReportOf(p, w).Text(width), "\n")
				for i := 1; i < len(lines); i++ {
					last, next := strings.TrimLeft(lines[i-1], "! "), strings.TrimLeft(lines[i], "! ")
					parted := numberLast.MatchString(last) && (beginsInFraction.MatchString(next) || beginsInUnit.MatchString(next))
					assert.False(t, parted, "%s, %d letters: %q | %q", name, width, last, next)
				}
			}
		}
	}
}

// What no maker writes: nought with a sign, one of many, a decimal of an inch. What may
// have decimals: rules, sizes, metres, and how many times as long something is.
func TestNumbersThatNobodyWrites(t *testing.T) {
	never := regexp.MustCompile(`-0([^.\d]|$)|NaN|Inf|%!|\b[01] (tuck|pleat|strip|join|piece|corner|page)s\b`)
	decimal := regexp.MustCompile(`\d*\.\d+`)
	decimals := regexp.MustCompile(`\d+ CFR [0-9.]+|\d\.\d+ times`)
	for name, p := range patterns(t) {
		for _, w := range []Wording{OwnUnit, AllUnits} {
			for _, text := range []string{ReportOf(p, w).Text(1000), string(FiguresOf(p).JSON())} {
				assert.Empty(t, never.FindAllString(text, -1), name)
			}
		}
		if p.Unit == Inch {
			text := decimals.ReplaceAllString(ReportOf(p, OwnUnit).Text(1000), "")
			assert.Empty(t, decimal.FindAllString(text, -1), "%s: an inch has no decimals", name)
		}
	}
}

// A table with more numbers than fit keeps them whole and takes the room, its first
// column being as narrow as its words. So does a word that is longer than a line.
func TestTablesThatNeedMoreRoom(t *testing.T) {
	r := Report{Sections: []Section{{Title: "S", Tables: []Table{{
		Heads: []string{"", "one", "two", "three"},
		Rows:  []Row{{Cells: []string{"a name of some length", "1 15/16 (49)", "12 15/16 (329)", "3 1/16 (78)"}}},
	}}, Lines: []Sentence{{Text: "an incomprehensibly-hyphenated-word"}}}}}
	assert.Equal(t, `
S
-
                   one             two        three
  a name
  of
  some
  length  1 15/16 (49)  12 15/16 (329)  3 1/16 (78)

  an
  incomprehensibly-hyphenated-word
`, r.Text(30))
}

func TestReportsAsText(t *testing.T) {
	r := Report{
		Title: "A frock, size 2",
		Notes: []string{"Lengths are in inches."},
		Sections: []Section{
			{Title: "Tables", Tables: []Table{
				{Title: "sums", Heads: []string{"", "how much", "across the cloth"}, Rows: []Row{
					{Cells: []string{"one", "1 1/2", "3"}},
					{Cells: []string{"the second of them", "12", "4"}},
					{Cells: []string{"together", "", "7"}, Total: true},
				}, Lines: []Sentence{{Text: "said under it, in words that go on and on and on"}, {Text: "look at this before you cut: it is 17 11/16 in", Warning: true}}},
				{Rows: []Row{{Cells: []string{"alone"}}}},
			}, Lines: []Sentence{{Text: "said after all"}}},
			{Title: "Blanks", Lines: []Sentence{{Text: "needle:", Blank: true}, {Text: "thread: silk"}, {Text: "the tension of the upper thread:", Blank: true}}},
			{Title: "A heading that is longer than the lines", Lines: []Sentence{{Text: "!", Warning: true}}},
		},
	}
	assert.Equal(t, `A frock, size 2
Lengths are in inches.

Tables
------
  sums
                            across the
                 how much        cloth
  one               1 1/2            3
  the second of
  them                 12            4
                           -----------
  together                           7
  said under it, in words that go on
  and on and on
! look at this before you cut: it is
  17 11/16 in

  alone

  said after all

Blanks
------
  needle:
  ______________________________
  thread: silk
  the tension of the upper thread:
  ______________________________

A heading that is longer than the
lines
--------------------------------------
! !
`, r.Text(38))
}

// Whatever a text is, wrapping keeps every word and every length, and no line is longer
// than it may be, but for one that is a single word.
func TestWrapping(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		limit := rapid.IntRange(5, 60).Draw(t, "limit")
		lengths := []string{"17 11/16 in", "3/8 in,", "2 yd.", "1.5 cm;", "5 mm)", "(12 3/4 in)", "7/8"}
		parts := rapid.SliceOf(rapid.OneOf(rapid.SampledFrom(lengths), rapid.StringMatching(`[a-zäß]{1,12}[,:]?`))).Draw(t, "parts")
		lines := wrapped(strings.Join(parts, " "), limit)
		require.Equal(t, strings.Join(parts, " "), strings.Join(lines, " "))
		for i, line := range lines {
			if utf8.RuneCountInString(line) > limit {
				require.Len(t, Words(line), 1, "line %q is longer than %d", line, limit)
			}
			if i > 0 {
				first := Words(line)[0]
				require.Greater(t, utf8.RuneCountInString(lines[i-1])+1+utf8.RuneCountInString(first), limit, "%q would have had room for %q", lines[i-1], first)
			}
		}
		for _, length := range parts {
			if strings.ContainsAny(length, "0123456789") {
				require.Contains(t, strings.Join(lines, "\n"), length, "a length stays in one line")
			}
		}
	})
}

// cells parts a line of a table at two blanks and more.
func cells(line string) []string {
	return regexp.MustCompile(`\s{2,}`).Split(strings.TrimSpace(line), -1)
}

// adder reads tables as a maker does with a pencil, and says what does not add up.
type adder struct {
	t    *rapid.T
	unit Unit
}

func (a adder) steps(printed string) int { return steps(a.t, a.unit, printed) }

// trims checks the tables of trims, ruffles and bindings: each row is so many times one
// length, every length under a rule is the sum of those above it, and what is gathered
// is the line times the fullness, to the next step. It returns how many rules it saw.
func (a adder) trims(text string) (rules int) {
	var sum int
	total := false
	for _, line := range strings.Split(text, "\n") {
		c := cells(line)
		last := c[len(c)-1]
		switch {
		case strings.HasSuffix(line, "together"): // the head of a table
			sum = 0
		case strings.HasPrefix(last, "---"):
			total, rules = true, rules+1
		case total:
			require.Equal(a.t, sum, a.steps(last), "%q is the sum of the rows above it in\n%s", line, text)
			total = false
		case strings.Contains(line, " times that, "):
			full, _, _ := strings.Cut(c[0], " times")
			n, err := ParseLength(full, Millimetre)
			require.NoError(a.t, err)
			sum = int(math.Ceil(float64(sum)*n - 0.01))
			require.Equal(a.t, sum, a.steps(last), "%q is the line above it, times %g, in\n%s", line, n, text)
		case len(c) == 4 && regexp.MustCompile(`^\d+$`).MatchString(c[2]):
			times, _ := strconv.Atoi(c[2])
			require.Equal(a.t, times*a.steps(c[1]), a.steps(c[3]), "%q", line)
			sum += a.steps(c[3])
		case strings.HasPrefix(line, "  tear strips"):
			text := strings.ReplaceAll(text[strings.Index(text, line):], "\n  ", " ")
			said := regexp.MustCompile(`tear strips (.*?) deep: (.*?) seam`).FindStringSubmatch(text)
			deep := 0
			for _, part := range regexp.MustCompile(`[0-9][0-9 /.]* (?:in|cm|mm)`).FindAllString(said[2], -1) {
				deep += a.steps(part)
			}
			require.Equal(a.t, deep, a.steps(said[1]), "%q", said[0])
		}
	}
	return rules
}

// seams checks the tables of seams, whose columns are cut and sewn: a side of several
// edges is their sum, and the difference is that of the two sides. Under the column of
// cut edges there is none where folds lie in them. It returns how many rules it saw.
func (a adder) seams(text string) (rules int) {
	var rows, sides [][]int
	total := false
	for _, line := range strings.Split(text, "\n") {
		c := cells(line)
		switch {
		case strings.HasSuffix(line, " cut  sewn") || regexp.MustCompile(`^ +cut +sewn$`).MatchString(line):
			rows, sides = nil, nil
		case strings.HasPrefix(c[len(c)-1], "---"):
			total, rules = true, rules+1
		case c[0] == "together" && total:
			sum := []int{0, 0}
			for _, row := range rows {
				sum[0], sum[1] = sum[0]+row[0], sum[1]+row[1]
			}
			require.Equal(a.t, []string{fmt.Sprint(sum[0]), fmt.Sprint(sum[1])}, []string{fmt.Sprint(a.steps(c[1])), fmt.Sprint(a.steps(c[2]))}, "%q in\n%s", line, text)
			sides, rows, total = append(sides, sum), nil, false
		case c[0] == "difference" && total:
			sides = append(sides, rows...)
			require.Len(a.t, sides, 2, text)
			for i := 1; i < len(c); i++ {
				column := i - 1 + 3 - len(c)
				require.Equal(a.t, max(sides[0][column]-sides[1][column], sides[1][column]-sides[0][column]), a.steps(c[i]), "%q in\n%s", line, text)
			}
			total = false
		case len(c) == 3 && strings.Contains(c[0], ", "):
			rows = append(rows, []int{a.steps(c[1]), a.steps(c[2])})
		}
	}
	return rules
}

// Whatever a garment has, every total is the sum of what is printed above it.
func TestTotalsAddUpAsTheyArePrinted(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		unit := rapid.SampledFrom([]Unit{Inch, Centimetre, Millimetre}).Draw(t, "unit")
		scale := map[Unit]float64{Inch: 1, Centimetre: 2.5, Millimetre: 25}[unit]
		length := func(name string, least, most float64) string {
			return fmt.Sprintf("%.3f", scale*rapid.Float64Range(least, most).Draw(t, name))
		}
		// A length as it may stand in any file: in the other system, too.
		small := func(name string) string {
			return rapid.SampledFrom([]string{`"1/4 in"`, `"3/8 in"`, `"7/32 in"`, `"1/3 in"`, `"5 mm"`, `"6.5 mm"`, `"1 cm"`, length(name, 0.1, 0.6)}).Draw(t, name)
		}
		side := func(key, x, y string) string {
			return fmt.Sprintf("[piece.%[1]s.edge.bottom]\npoints = [[0, 0], [%[2]s, 0]]\n[piece.%[1]s.edge.side]\npoints = [[%[2]s, 0], [%[3]s, %[4]s]]\n[piece.%[1]s.edge.slant]\npoints = [[%[3]s, %[4]s], [0, %[5]s]]\n[piece.%[1]s.edge.middle]\npoints = [[0, %[5]s], [0, 0]]\n",
				key, x, length(key+" side", 4, 9), y, length(key+" middle", 8, 12))
		}
		text := fmt.Sprintf("unit = %q\nallowance = %s\n[cloth]\nwidth = %s\n", unit, small("allowance"), length("cloth", 30, 60)) +
			"[piece.a]\nfold = \"middle\"\n" + side("a", length("a bottom", 3, 8), length("a height", 6, 14)) +
			fmt.Sprintf("[piece.b]\ncut = %d\n", rapid.IntRange(1, 3).Draw(t, "cut")) + side("b", length("b bottom", 3, 8), length("b height", 6, 14))
		edges := func(name string) string {
			all := []string{"a.bottom", "a.side", "a.slant", "b.bottom", "b.side", "b.slant", "b.middle"}
			some := rapid.SliceOfNDistinct(rapid.SampledFrom(all), 1, 5, rapid.ID).Draw(t, name)
			return `"` + strings.Join(some, `", "`) + `"`
		}
		full := func(name string) string {
			return rapid.SampledFrom([]string{`"1 1/2"`, `"1 1/3"`, "1.25", "2", `"2 3/8"`, "3"}).Draw(t, name)
		}
		text += fmt.Sprintf("[trim.t]\nalong = [%s]\nwidth = %s\nfullness = %s\njoins = %d\njoin-takes = %s\n", edges("trim"), small("lace"), full("lace"), rapid.IntRange(1, 5).Draw(t, "joins"), small("join")) +
			fmt.Sprintf("[trim.u]\nalong = [%s]\nwidth = %s\nlies = \"on\"\n", edges("band"), small("band")) +
			fmt.Sprintf("[ruffle.r]\nalong = [%s]\nfullness = %s\ndepth = %s\nhem = %s\nturn = %s\nseam = %s\n", edges("ruffle"), full("ruffle"), length("depth", 2, 6), small("hem"), small("turn"), small("seam")) +
			fmt.Sprintf("[binding.b]\nalong = [%s]\nwidth = %s\njoins = %d\njoining = %s\n", edges("binding"), small("binding"), rapid.IntRange(1, 4).Draw(t, "rounds"), small("joining")) +
			"[seam.one]\njoin = [\"a.side\", \"b.side\"]\n[seam.two]\njoin = [[\"a.bottom\", \"a.slant\"], \"b.middle\"]\n[seam.three]\njoin = [[\"a.side\", \"a.slant\"], [\"b.slant\", \"b.middle\"]]\n"
		p, err := check(text)
		if err != nil { // an outline that cannot be sewn
			t.Skip(err)
		}
		a := adder{t, unit}
		require.Equal(t, 2+2+1+2, a.trims(printedSection(p, trimmings)), "totals of trims, ruffles and bindings")
		require.Equal(t, 1+2+3, a.seams(printedSection(p, "Seams")), "totals of seams")
	})
}
