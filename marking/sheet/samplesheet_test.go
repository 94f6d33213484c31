package sheet

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// plainCloth is a square piece that sets of tucks are put on, 40 in wide whatever
// the unit of the file.
func plainCloth(t *testing.T, unit, sets string) *garment.Pattern {
	t.Helper()
	pattern, err := made.Pattern("unit = \"" + unit + "\"\nallowance = 0\n" + sketch.Front(
		`raw: 0,"40in" 0,0
bottom: 0,0 "40in",0 | hem = "1 in"
far: "40in",0 "40in","40in"
top: "40in","40in" 0,"40in"
---

`+sets))
	require.NoError(t, err)
	return pattern
}

func plainSet(key, width string, count int, rest string) string {
	return fmt.Sprintf("[tuck.%s]\nbeside = \"raw\"\nwidth = %q\ncount = %d\nfirst = \"4 in\"\n%s\n", key, width, count, rest)
}

// stripOf returns what is ruled on a sample strip, and what lies where across it.
func stripOf(t *testing.T, m mark.Marking) (wide float64, marks, folds, stitching []float64) {
	t.Helper()
	box := m.Outline.Bounds()
	assert.InDelta(t, 0, box.Min.X, 1e-9)
	for _, one := range m.Marks {
		x := one.Path[0].X
		switch one.Role {
		case mark.Placement:
			marks = append(marks, x)
		case mark.TuckFold:
			folds = append(folds, x)
		case mark.TuckStitch:
			stitching = append(stitching, x)
		case mark.Cut:
			continue
		default:
			t.Errorf("a strip has no %s", one.Role)
		}
		assert.InDelta(t, x, one.Path[1].X, 1e-9, "every line runs straight across the strip")
		assert.InDelta(t, box.Height(), one.Path.Length(), 1e-9, "from edge to edge")
	}
	return box.Width(), marks, folds, stitching
}

func TestWhatASampleStripHolds(t *testing.T) {
	for _, c := range []struct {
		name, unit, set string
		tucks           int
		space, width    float64 // mm
		flat            string  // from mark to mark, as the text says it
		flatMM          float64
		should          string // what one tuck takes by the drawing
	}{
		// (9 x 3/8) + 2 (1/8 + 1/2) = 4 5/8, up to the next 1/4 in
		{"touching 1/8 in tucks", "in", plainSet("t", "1/8", 20, "gap = 0"), 10, 9.525, 3.175, "4 3/4 in", 4.75 * 25.4, "1/4 in"},
		// 8 x 1/2 + 2 (1/8 + 1/2) = 5 1/4; with ten it would be 5 3/4, and 6 3/4 with the ends
		{"1/8 in tucks 1/8 in apart", "in", plainSet("t", "1/8", 20, "gap = \"1/8\""), 9, 12.7, 3.175, "5 1/4 in", 5.25 * 25.4, "1/4 in"},
		{"by spacing, which is kept", "in", plainSet("t", "1/8", 3, "spacing = \"0.4\""), 10, 10.16, 3.175, "5 in", 5 * 25.4, "1/4 in"},
		// one step of 3 in and 2 (1 + 1/2) = 6 would not fit with the ends; 1/2 in tucks: 1 1/2 k + 2
		{"1/2 in tucks", "in", plainSet("t", "1/2", 4, ""), 3, 38.1, 12.7, "5 in", 5 * 25.4, "1 in"},
		// 9 x 9 + 2 (3 + 12.7) = 112.4, up to the next 5 mm
		{"millimetres", "mm", plainSet("t", "3 mm", 5, ""), 10, 9, 3, "115 mm", 115, "6 mm"},
		{"centimetres", "cm", plainSet("t", "0.3", 5, ""), 10, 9, 3, "11.5 cm", 115, "0.6 cm"},
	} {
		t.Run(c.name, func(t *testing.T) {
			sheets := samples(plainCloth(t, c.unit, c.set))
			require.Len(t, sheets, 1)
			m := sheets[0]
			wide, marks, folds, stitching := stripOf(t, m)
			box := m.Outline.Bounds()
			assert.LessOrEqual(t, wide, 6.5*25.4+1e-9, "it fits across every paper")
			require.Len(t, folds, c.tucks)
			require.Len(t, stitching, 2*c.tucks)
			require.Len(t, marks, 2)
			assert.InDelta(t, c.flatMM, marks[1]-marks[0], 1e-9, "from mark to mark")
			for k := 1; k < len(folds); k++ {
				assert.InDelta(t, c.space, folds[k]-folds[k-1], 1e-9, "the spacing of the file")
			}
			for k, at := range folds {
				assert.InDelta(t, at-c.width, stitching[2*k], 1e-9)
				assert.InDelta(t, at+c.width, stitching[2*k+1], 1e-9)
			}
			assert.GreaterOrEqual(t, stitching[0]-marks[0], 12.7-1e-9, "no mark is taken up")
			assert.GreaterOrEqual(t, marks[1]-stitching[len(stitching)-1], 12.7-1e-9, "no mark is taken up")
			require.NotNil(t, m.Form)
			unit := map[string]length.Unit{"in": length.Inch, "cm": length.Centimetre, "mm": length.Millimetre}[c.unit]
			assert.Contains(t, m.Steps, fmt.Sprintf("mark it as ruled here: %d tucks %s wide, and the two marks, %s apart", c.tucks, unit.AsWritten(c.width), c.flat))
			assert.Equal(t, []string{
				"flat, from mark to mark: " + c.flat,
				"sewn, from mark to mark: ____",
				fmt.Sprintf("what all %d tucks took: %s - ____ = ____", c.tucks, c.flat),
				fmt.Sprintf("what one tuck took: ____ / %d = ____", c.tucks),
				"what one takes by the drawing: " + c.should,
			}, m.Form.Sum)
			var said []string
			for _, w := range m.Words {
				said = append(said, w.Text)
				assert.Equal(t, plane.Point{Y: 1}, w.Out, "%q stands over the strip", w.Text)
				assert.InDelta(t, box.Max.Y, w.At.Y, 1e-9, "%q stands at the strip", w.Text)
			}
			want := []string{"first mark", "second mark"}
			for k, at := range folds {
				want = append(want, fmt.Sprint(k+1))
				assert.InDelta(t, at, m.Words[2+k].At.X, 1e-9, "tuck %d is numbered at its fold", k+1)
			}
			assert.Equal(t, want, said)
		})
	}
}

// What the sheet says to write into the file is read back as it was meant: tucks
// that took exactly what they should move nothing.
func TestWhatTheSampleSheetSaysCanBeWritten(t *testing.T) {
	for _, c := range []struct{ unit, width, line, sewn string }{
		{"in", "1/8", `sample = {tucks = 10, flat = "4 3/4 in", sewn = "____"}`, "2 1/4"},
		{"cm", "0.3", `sample = {tucks = 10, flat = "11.5 cm", sewn = "____"}`, "5.5"},
	} {
		t.Run(c.unit, func(t *testing.T) {
			set := plainSet("t", c.width, 5, "")
			unsewn := plainCloth(t, c.unit, set)
			assert.Equal(t, []string{"under [piece.front.tuck.t]: " + c.line}, SampleLines(unsewn))
			steps := samples(unsewn)[0].Steps
			assert.Contains(t, steps[len(steps)-1], "write both lengths, flat and sewn, into the file as the sample of these tucks, and make the sheets again")
			sewn := plainCloth(t, c.unit, set+sketch.Swap(c.line, "____", c.sewn)+"\n")
			assert.InDelta(t, 2*sewn.Pieces[0].TuckRows[0].Width, sewn.Pieces[0].TuckRows[0].Takes, 1e-9)
			assert.Empty(t, samples(sewn), "there is no sheet for what has its sample")
		})
	}
}

func TestATwinNeedleSampleHasFoldLinesOnly(t *testing.T) {
	sheets := samples(plainCloth(t, "in", plainSet("t", "1/16", 6, "spacing = \"1/4\"\nsewn = \"twin needle\"")))
	require.Len(t, sheets, 1)
	_, _, folds, stitching := stripOf(t, sheets[0])
	assert.Len(t, folds, 10)
	assert.Empty(t, stitching)
	assert.Contains(t, sheets[0].Steps, "sew along each fold line with the twin needle and thread you mean to use")
}

func TestWhichTucksHaveASampleSheet(t *testing.T) {
	const sample = `sample = {tucks = 10, flat = "6", sewn = "3 9/16"}`
	for _, c := range []struct {
		name, sets string
		want       []string // what each says of where its sample belongs
	}{
		{"one set", plainSet("a", "1/8", 2, ""), []string{"[piece.front.tuck.a]"}},
		{"a single tuck", plainSet("a", "1/8", 1, ""), nil},
		{"one with a sample", plainSet("a", "1/8", 2, sample), nil},
		{"growth tucks", sketch.Swap(plainSet("a", "1/8", 2, ""), `"raw"`, `"bottom"`), nil},
		{"too wide for a strip", plainSet("a", "1 1/2", 2, ""), nil},
		{"two alike", plainSet("a", "1/8", 2, "") + sketch.Swap(plainSet("b", "1/8", 9, ""), "4 in", "20 in"), []string{"[piece.front.tuck.a] and [piece.front.tuck.b]"}},
		{"two of other widths", plainSet("a", "1/8", 2, "") + sketch.Swap(plainSet("b", "1/4", 9, ""), "4 in", "20 in"), []string{"[piece.front.tuck.a]", "[piece.front.tuck.b]"}},
		{"two of other gaps", plainSet("a", "1/8", 2, "") + sketch.Swap(plainSet("b", "1/8", 9, "gap = 1"), "4 in", "20 in"), []string{"[piece.front.tuck.a]", "[piece.front.tuck.b]"}},
		{"one of two has its sample", plainSet("a", "1/8", 2, sample) + sketch.Swap(plainSet("b", "1/8", 9, ""), "4 in", "20 in"), []string{"[piece.front.tuck.b]"}},
		{"a name of two words", sketch.Swap(plainSet("a", "1/8", 2, ""), "tuck.a", "tuck.\"pin tucks\""), []string{"[piece.front.tuck.\"pin tucks\"]"}},
		{"no tucks", "", nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			pattern := plainCloth(t, "in", c.sets)
			var got []string
			for _, line := range SampleLines(pattern) {
				under, _, _ := strings.Cut(line, ": sample")
				got = append(got, strings.TrimPrefix(under, "under "))
			}
			assert.Equal(t, c.want, got)
			assert.Len(t, samples(pattern), len(c.want))
		})
	}
}

// A block that is measured has its tucks sewn, and a sample of them comes too late.
func TestTucksOfAMeasuredBlockHaveNoSample(t *testing.T) {
	block := sketch.Bosom + sketch.Tucked("cf", "1/8", 6, "3/8", "") + "\n[block]\n"
	assert.Len(t, samples(made.Of(t, "allowance = 0\n"+sketch.Front(block))), 1)
	sewn := made.Of(t, "allowance = 0\n"+sketch.Front(block+"measured = 12\n"))
	assert.Empty(t, samples(sewn))
	assert.Empty(t, SampleLines(sewn))
}

// Two pieces may have sets of the same name; their sheets may not.
func TestSampleSheetsOfTwoPiecesHaveTwoNames(t *testing.T) {
	text := func(key, width string) string {
		return sketch.Swap(sketch.Front(sketch.Box+"\n---\n\n[tuck.yoke]\nbeside = \"left\"\nwidth = \"W\"\ncount = 2\nfirst = 1\n"), "front", key, "W", width)
	}
	pattern := made.Of(t, text("front", "1/8")+text("back", "1/4"))
	sheets := samples(pattern)
	require.Len(t, sheets, 2)
	assert.Equal(t, "front: sample of the yoke tucks", sheets[0].Name)
	assert.Equal(t, "back: sample of the yoke tucks", sheets[1].Name)
	assert.Equal(t, sheets, Of(pattern)[:2], "they come first")
}
