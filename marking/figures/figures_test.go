package figures

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/fault"
	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
	"tuckmark/marking/terminal"
)

// inches writes lengths in inches alone.
var inches = writer{unit: length.Inch, units: OwnUnit}

// printedSection is a section of the figures as it is read on the screen, "" where
// there is none of that title.
func printedSection(p *garment.Pattern, title string) string {
	for _, s := range Report(p, OwnUnit).Sections {
		if s.Title == title {
			_, text, _ := strings.Cut(terminal.Text(mark.Report{Sections: []mark.Section{s}}, 80), strings.Repeat("-", len(title))+"\n")
			return text
		}
	}
	return ""
}

// garmentOf checks the sketch of a front without allowances, and what stands beside the
// pieces.
func garmentOf(t require.TestingT, text, beside string) *garment.Pattern {
	return made.Of(t, "allowance = 0\n"+sketch.Front(text)+"\n"+beside)
}

// patterns are the examples, the file that the guide builds up, and one with
// everything in it.
func patterns(t *testing.T) map[string]*garment.Pattern {
	t.Helper()
	all := map[string]*garment.Pattern{}
	for _, name := range made.Examples(t) {
		all[name] = made.Example(t, name)
	}
	guide, err := os.ReadFile(filepath.Join("..", "..", "examples", "guide", "file.md"))
	require.NoError(t, err)
	text := ""
	for _, block := range regexp.MustCompile("(?s)```toml\n(.*?)```").FindAllStringSubmatch(string(guide), -1) {
		text += block[1]
	}
	require.NotEmpty(t, text)
	drawings := fstest.MapFS{}
	for _, block := range regexp.MustCompile("(?s)```svg (\\S+)\n(.*?)```").FindAllStringSubmatch(string(guide), -1) {
		drawings[block[1]] = &fstest.MapFile{Data: []byte(block[2])}
	}
	all["guide"] = made.Beside(t, text, drawings)
	for name, text := range map[string]string{"everything": sketch.Frock, "everything for a doll": strings.Replace(sketch.Frock, `unit = "in"`, `unit = "cm"`, 1)} {
		all[name] = made.Of(t, text)
	}
	return all
}

// The head of the figures says in what unit they are, and a total what it adds.
func TestHeadOfTheFigures(t *testing.T) {
	const of = "; where less would not do, up to the next. Totals are those of the lengths as printed."
	for _, c := range []struct {
		unit              string
		units             Units
		head, title, note string
	}{
		{"in", OwnUnit, "title = \"Bib\"\nsize = \"2\"\n", "Bib, size 2", "Lengths are in inches, to the nearest 1/16" + of},
		{"cm", OwnUnit, "title = \"Bib\"\n", "Bib", "Lengths are in centimetres, to the nearest millimetre" + of},
		{"mm", OwnUnit, "size = \"2\"\n", "size 2", "Lengths are in millimetres" + of},
		{"in", AllUnits, "", "", "Lengths are in inches, to the nearest 1/16" + of + " In brackets is the exact length to the nearest millimetre."},
		{"mm", AllUnits, "", "", "Lengths are in millimetres" + of + " In brackets is the exact length to the nearest 1/16 in."},
	} {
		r := Report(made.Of(t, c.head+"unit = \""+c.unit+"\"\nallowance = 0\n"+sketch.Front(sketch.Rect("10"))), c.units)
		assert.Equal(t, c.title, r.Title)
		assert.Equal(t, []string{c.note}, r.Notes)
	}
}

// What may not be meant comes first, with its place, but for what a table says by itself.
func TestWhatToLookAtFirst(t *testing.T) {
	p := &garment.Pattern{Remarks: []piece.Remark{
		{Place: fault.Place{Line: 7, Key: "piece.front"}, Text: "a piece of cloth"},
		{Place: fault.Place{Line: 9, Key: "seam.side"}, Text: "too short", InTable: true},
		{Text: "of the whole file"},
	}}
	assert.Equal(t, "! line 7: piece front: a piece of cloth\n! of the whole file\n", printedSection(p, "Look at first"))
	p.Pieces = []piece.Piece{{Key: "front", Name: "Front"}}
	lines := remarkSection(p).Lines
	assert.Equal(t, mark.Sentence{Text: "Front: a piece of cloth", Warning: true, Place: "line 7"}, lines[0], "paper has no lines of the file")
}

// No line is longer than 80 letters. In both systems the table of a set of tucks whose
// lines lie off the ruler needs up to 85: three readings such as "2 11/16 + 1/32 (69)".
var inTuckTable = regexp.MustCompile(`^  (tuck \d|[a-z ]+ stitch )`)

func TestFiguresFitAScreen(t *testing.T) {
	for name, p := range patterns(t) {
		for _, w := range []Units{OwnUnit, AllUnits} {
			for _, line := range strings.Split(terminal.Text(Report(p, w), 80), "\n") {
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
		for _, w := range []Units{OwnUnit, AllUnits} {
			for _, width := range []int{40, 60, 80, 100} {
				lines := strings.Split(terminal.Text(Report(p, w), width), "\n")
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
		for _, w := range []Units{OwnUnit, AllUnits} {
			for _, text := range []string{terminal.Text(Report(p, w), 1000), string(JSON(p))} {
				assert.Empty(t, never.FindAllString(text, -1), name)
			}
		}
		if p.Unit == length.Inch {
			text := decimals.ReplaceAllString(terminal.Text(Report(p, OwnUnit), 1000), "")
			assert.Empty(t, decimal.FindAllString(text, -1), "%s: an inch has no decimals", name)
		}
	}
}

// cells parts a line of a table at two blanks and more.
func cells(line string) []string {
	return regexp.MustCompile(`\s{2,}`).Split(strings.TrimSpace(line), -1)
}

// mostLengths is how many lengths something is cut in, at most, by the pieces that the tests draw:
// one for each of two edges on a fold, and four edges of a piece that is cut three times.
const mostLengths = 20

// adder reads tables as a maker does with a pencil, and says what does not add up.
type adder struct {
	t    *rapid.T
	unit length.Unit
}

func (a adder) steps(printed string) int { return steps(a.t, a.unit, printed) }

// trims checks the tables of trims, ruffles and bindings: each row is so many times one
// length, every length under a rule is the sum of those above it, and what is gathered
// is the line times the fullness, to the next step. What a strip is made of is printed as it was
// chosen, each part to three decimals; the whole is rounded up. It returns how many rules it saw.
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
			if len(c) == 4 {
				times, _ := strconv.Atoi(c[2])
				require.Equal(a.t, times*a.steps(c[1]), a.steps(last), "%q", line)
			}
			require.Equal(a.t, sum, a.steps(last), "%q is the sum of the rows above it in\n%s", line, text)
			total = false
		case strings.Contains(line, " times that, "):
			full, _, _ := strings.Cut(c[0], " times")
			n, err := length.Parse(full, length.Millimetre)
			require.NoError(a.t, err)
			whole, long := int(math.Ceil(float64(sum)*n-0.01)), a.steps(last)
			if len(c) == 4 { // several that are alike, each rounded up
				times, _ := strconv.Atoi(c[2])
				whole = times * int(math.Ceil(float64(sum/times)*n-0.01))
				require.Equal(a.t, times*a.steps(c[1]), long, "%q", line)
				require.Equal(a.t, whole, long, "%q is the line above it, times %g, in\n%s", line, n, text)
			}
			require.GreaterOrEqual(a.t, long, whole, "%q is the line above it, times %g, in\n%s", line, n, text)
			require.LessOrEqual(a.t, long, whole+mostLengths, "%q is the line above it, times %g, in\n%s", line, n, text)
			sum = long
		case len(c) == 4 && regexp.MustCompile(`^\d+$`).MatchString(c[2]):
			times, _ := strconv.Atoi(c[2])
			require.Equal(a.t, times*a.steps(c[1]), a.steps(c[3]), "%q", line)
			sum += a.steps(c[3])
		case strings.HasPrefix(line, "  tear strips"):
			text := strings.ReplaceAll(text[strings.Index(text, line):], "\n  ", " ")
			said := regexp.MustCompile(`tear strips (.*?) deep: (.*?) seam`).FindStringSubmatch(text)
			deep, off := 0.0, 0.0
			for _, part := range regexp.MustCompile(`[0-9][0-9 /.]* (?:in|cm|mm)`).FindAllString(said[2], -1) {
				mm, err := length.Parse(part, a.unit)
				require.NoError(a.t, err)
				deep, off = deep+mm, off+a.unit.MM()/2000
			}
			torn := float64(a.steps(said[1])) * a.unit.Ruler()
			require.GreaterOrEqual(a.t, torn, deep-off-0.01, "%q", said[0])
			require.Less(a.t, torn, deep+off+a.unit.Ruler(), "%q", said[0])
		}
	}
	return rules
}

// seams checks the tables of seams, whose columns are cut and sewn: a side of several
// edges is their sum, and the difference is that of the two sides, or the table says that it
// is that of the exact lengths. Under the column of
// cut edges there is none where folds lie in them. It returns how many rules it saw.
func (a adder) seams(text string) (rules int) {
	var rows, sides [][]int
	total := false
	lines := strings.Split(text, "\n")
	for n, line := range lines {
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
			exact := n+1 < len(lines) && strings.Contains(lines[n+1], "that of the exact lengths")
			same, none := true, true
			for i := 1; i < len(c); i++ {
				column := i - 1 + 3 - len(c)
				off := a.steps(c[i])
				same = same && max(sides[0][column]-sides[1][column], sides[1][column]-sides[0][column]) == off
				none = none && off == 0
			}
			// What differs by as much may do so the other way round, which the table does not show.
			if !same || none {
				require.Equal(a.t, !same, exact, "%q in\n%s", line, text)
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
		unit := rapid.SampledFrom([]length.Unit{length.Inch, length.Centimetre, length.Millimetre}).Draw(t, "unit")
		scale := map[length.Unit]float64{length.Inch: 1, length.Centimetre: 2.5, length.Millimetre: 25}[unit]
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
		p, err := made.Pattern(text)
		if err != nil { // an outline that cannot be sewn
			t.Skip(err)
		}
		a := adder{t, unit}
		rules := 2 + 2 + 1 + 2
		if p.Ruffles[0].Takes().Steps > 0 {
			rules++
		}
		require.Equal(t, rules, a.trims(printedSection(p, trimmings)), "totals of trims, ruffles and bindings")
		require.Equal(t, 1+2+3, a.seams(printedSection(p, "Seams")), "totals of seams")
	})
}

// steps parses a length in print into steps of its ruler: 1/16 in or 1 mm.
func steps(t require.TestingT, unit length.Unit, printed string) int {
	mm, err := length.Parse(printed, unit)
	require.NoError(t, err)
	step := 1.0
	if unit == length.Inch {
		step = 25.4 / 16
	}
	n := math.Round(mm / step)
	require.InDelta(t, n, mm/step, 1e-6, "%q is a whole number of steps", printed)
	return int(n)
}

// Keys of a file are told on paper in words.
func TestOfWhat(t *testing.T) {
	p := &garment.Pattern{Pieces: []piece.Piece{{Key: "yoke front", Name: "Yoke front"}}}
	for key, want := range map[string]string{
		"":                                    "",
		"title":                               "title",
		"cloth.width":                         "cloth width",
		"seam.side":                           "seam side",
		`piece."yoke front"`:                  "Yoke front",
		`piece."yoke front".edge.neck`:        "Yoke front, edge neck",
		`piece."yoke front".tuck."a.b".width`: "Yoke front, tuck a.b, width",
		"piece.none.cut":                      "piece none, cut",
	} {
		assert.Equal(t, want, ofWhat(p, fault.Place{Key: key}), key)
	}
}
