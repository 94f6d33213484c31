package main

import (
	"io/fs"
	"math"
	"regexp"
	"strings"
	"testing"
	"testing/fstest"
	"unicode"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking"
	"tuckmark/marking/fault"
	"tuckmark/marking/figures"
	"tuckmark/marking/garment"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/source"
	"tuckmark/marking/terminal"
	"tuckmark/pdfout"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/seen"
)

// Rules of this file: what holds of every file on its whole way, whatever is in it. Either its
// mistakes are told, in words of the trade and with their lines; or every figure is a number,
// and every line and every letter lies on its page.

// beside is what stands in the folder of a file for tests.
func beside() fs.FS {
	return fstest.MapFS{
		"file.toml": {Data: []byte(sketch.EveryKey()["garment"])},
		"front.svg": {Data: []byte(sketch.EveryKeyDrawing)},
	}
}

// testFile is what messages call the file under test.
const testFile = "frock.toml"

// patternsOf takes the text of a file to its patterns, as it stands and in its views. Where it
// has mistakes they are held against what mistakes must be, and there is no pattern.
func patternsOf(t require.TestingT, text string) []*garment.Pattern {
	specs, err := source.Reader{Printable: ink.CanPrint, Folder: beside()}.ReadAll(testFile, []byte(text))
	if err != nil {
		holdMistakes(t, text, err)
		return nil
	}
	var all []*garment.Pattern
	for _, spec := range specs {
		p, err := marking.Check(spec)
		if err != nil {
			holdMistakes(t, text, err)
			return nil
		}
		all = append(all, p)
	}
	return all
}

// computingWords are words that a maker never reads: of the language, and of what it prints
// where a text was put together wrongly.
var computingWords = regexp.MustCompile(`%!|\bstrconv\b|\bruntime error\b|<nil>|\bmap\[|\bpanic\b|\bgoroutine\b|\bint(8|16|32|64)?\b|\bfloat(32|64)\b|\bstruct\b|\binterface\b|\bNaN\b|[+-]Inf\b|\bEOF\b|cannot be understood`)

// quotedPart is what a message repeats of a file.
var quotedPart = regexp.MustCompile(`"[^"]*"`)

// holdMistakes holds what is said of the mistakes of a text against what a mistake must be.
func holdMistakes(t require.TestingT, text string, err error) {
	var all fault.List
	require.ErrorAs(t, err, &all)
	require.NotEmpty(t, all)
	lines := map[string]int{testFile: 1 + strings.Count(text, "\n")}
	for _, f := range all {
		holdWords(t, text, f)
		if f.Place.File == testFile && !ofTheWholeFile(f) {
			require.Positive(t, f.Place.Line, "a mistake without a line: %v", f)
			require.LessOrEqual(t, f.Place.Line, lines[testFile], "a line that is not there: %v", f)
		}
	}
}

// ofTheWholeFile reports whether a mistake stands nowhere in the file.
func ofTheWholeFile(f *fault.Fault) bool { return f.Place.Key == "" && f.Place.Line == 0 }

// holdWords holds a mistake of a text against how one is said. It may repeat words of that.
func holdWords(t require.TestingT, text string, f *fault.Fault) {
	said := f.Error()
	require.NotEmpty(t, f.Cause)
	cause := quotedPart.ReplaceAllString(f.Cause, `""`)
	first, _, _ := strings.Cut(cause, " ")
	require.False(t, unicode.IsUpper([]rune(cause)[0]) && !strings.Contains(text, first), "a cause begins with a small letter: %s", said)
	last := cause[strings.LastIndexByte(cause, ' ')+1:]
	stopped := strings.HasSuffix(last, ".") && !strings.HasSuffix(last, "...") && !strings.Contains(text, last)
	require.False(t, stopped, "a cause has no full stop: %s", said)
	for _, part := range []string{cause, quotedPart.ReplaceAllString(f.Hint, `""`)} {
		for _, word := range computingWords.FindAllString(part, -1) {
			require.Contains(t, text, word, "%s", said)
		}
	}
	for _, r := range said {
		require.True(t, r == '\n' || unicode.IsPrint(r), "%U is printed as it is: %q", r, said)
	}
	require.LessOrEqual(t, strings.Count(said, "\n"), 1, "more lines than a cause and a hint: %q", said)
}

// holdFigures holds the figures of a pattern, as text and as data, against what figures are;
// it returns the data.
func holdFigures(t require.TestingT, p *garment.Pattern) []byte {
	text := terminal.Text(figures.Report(p, figures.AllUnits), terminal.Width)
	require.NotRegexp(t, computingWords, quotedPart.ReplaceAllString(text, `""`))
	return figures.JSON(p) // which cannot hold what is no number
}

// holdPages plans and draws all pages of a file, and holds each against what can be printed.
// What paper refuses is held as a mistake, and then there are none.
func holdPages(t require.TestingT, text string, p printing, o opened) {
	book, err := pdfout.Plan(p.set(o), o.paper)
	if err != nil {
		var f *fault.Fault
		require.ErrorAs(t, err, &f)
		holdWords(t, text, f)
		return
	}
	require.LessOrEqual(t, len(book.Pages()), paper.MaxPages)
	for _, sheet := range book.Sheets() {
		for _, part := range sheet.Parts {
			require.True(t, within(part.Box, plane.Box{Max: sheet.Size}.Grown(onPaper)), "%q reaches over its sheet: %v of %v", part.Key, part.Box, sheet.Size)
		}
	}
	for _, plan := range book.Pages() {
		canvas := &seen.Canvas{}
		book.DrawPage(canvas, plan.Number)
		require.Len(t, canvas.Pages(), 1)
		holdPage(t, canvas.Pages()[0], plan)
	}
}

// onPaper is by how much what is drawn may reach over the edge of its page, in mm: the last
// digits of a number.
const onPaper = 1e-6

func holdPage(t require.TestingT, page seen.Page, plan pdfout.PagePlan) {
	require.Equal(t, plan.Size, plane.Point{X: page.Width, Y: page.Height})
	whole := page.Whole().Grown(onPaper)
	require.True(t, isNumber(page.Width, page.Height) && page.Width > 0 && page.Height > 0, "page %d is %v", plan.Number, plan.Size)
	for _, text := range page.Texts {
		require.True(t, isNumber(text.At.X, text.At.Y, text.Size) && math.Abs(math.Hypot(text.U.X, text.U.Y)-1) < onPaper, "%q stands at %v along %v", text.Text, text.At, text.U)
		require.True(t, within(text.Box(), whole), "%q of page %d reaches over its edge: %v of %v", text.Text, plan.Number, text.Box(), plan.Size)
	}
	for _, path := range page.Paths {
		require.True(t, path.Clip.Empty() || within(path.Clip, whole), "what is drawn on page %d shows within %v of %v", plan.Number, path.Clip, plan.Size)
		require.True(t, isNumber(path.Width, path.Phase) && isNumber(path.Dashes...), "a pen of page %d", plan.Number)
		for _, part := range path.Parts {
			for _, q := range part {
				require.True(t, isNumber(q.X, q.Y), "a line of page %d comes through %v", plan.Number, q)
				require.True(t, path.Clip != page.Whole() || whole.Holds(q), "a line of page %d, %q, comes through %v beyond its edge %v", plan.Number, path.Layer, q, plan.Size)
			}
		}
		for _, box := range path.Boxes {
			require.True(t, isNumber(box.Min.X, box.Min.Y, box.Max.X, box.Max.Y), "a box of page %d is %v", plan.Number, box)
			require.True(t, path.Clip != page.Whole() || within(box, whole), "a box of page %d reaches over its edge: %v of %v", plan.Number, box, plan.Size)
		}
	}
}

// within reports whether a box lies in another.
func within(inner, outer plane.Box) bool { return outer.Holds(inner.Min) && outer.Holds(inner.Max) }

// isNumber reports whether all are numbers, and not without end.
func isNumber(all ...float64) bool {
	for _, x := range all {
		if math.IsNaN(x) || math.IsInf(x, 0) {
			return false
		}
	}
	return true
}

// So that what is altered in them is what is wrong.
func TestFilesWithEveryKeyHaveNoMistake(t *testing.T) {
	for name, text := range sketch.EveryKey() {
		assert.NotEmpty(t, patternsOf(t, text), "the file about %s", name)
	}
}

func TestEveryExampleGoesTheWholeWay(t *testing.T) {
	for _, file := range examples(t) {
		data, err := readFile(file)
		require.NoError(t, err)
		for _, p := range patternsOf(t, string(data)) {
			printing := printing{paper: seen.Paper(t, "letter"), figures: true, gauges: true, times: 1}
			o, err := printing.take(p, nil)
			require.NoError(t, err)
			holdFigures(t, o.pattern)
			holdPages(t, string(data), printing, o)
		}
	}
}
