package report

import (
	"fmt"
	"math"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/seen"
)

// pictureOf draws a picture with anything in it: shapes that lie on each other,
// shapes that are none, lines close together.
func pictureOf(t *rapid.T) *mark.Picture {
	side := rapid.SampledFrom([]float64{3, 90, 400, 1000, 2500, 10_000})
	p := &mark.Picture{Caption: "As they lie.", Width: side.Draw(t, "width"), Height: side.Draw(t, "height")}
	within := func(most float64, what string) float64 {
		return most * float64(rapid.IntRange(0, 60).Draw(t, what)) / 60
	}
	for i := range rapid.IntRange(0, 25).Draw(t, "shapes") {
		x, y := within(p.Width, "x"), within(p.Height, "y")
		shape := sample.Oblong([]string{"Cuff", "Pocket flap", "a strip that goes twice round the waist", fmt.Sprint("No.", i)}[i%4],
			x, y, within(p.Width-x, "w"), within(p.Height-y, "h"))
		shape.Outline = shape.Outline[:rapid.SampledFrom([]int{5, 5, 5, 5, 4, 2, 1, 0}).Draw(t, "points")]
		p.Shapes = append(p.Shapes, shape)
	}
	for range rapid.IntRange(0, 4).Draw(t, "bands") {
		from := within(1.1*p.Height, "from")
		p.Bands = append(p.Bands, mark.Band{
			From: from, To: from + within(p.Height, "long"), Width: within(1.1*p.Width, "wide"), Text: textOf(t, 6),
		})
	}
	return p
}

// seenPicture is a picture of the figures as it stands on a page.
type seenPicture struct {
	frame    plane.Box // round all of its bands
	bands    []plane.Box
	folds    []seen.Path
	outlines []plane.Path
}

// picturesOn finds the pictures of a page.
func picturesOn(p seen.Page) []seenPicture {
	whole := p.Whole()
	all := []seenPicture{{frame: plane.EmptyBox()}}
	for _, q := range p.Paths {
		last := &all[len(all)-1]
		switch {
		case q.Painted != seen.Stroked:
		case q.Clip != whole:
			if len(last.bands) > 0 {
				all = append(all, seenPicture{frame: plane.EmptyBox()})
				last = &all[len(all)-1]
			}
			last.outlines = append(last.outlines, q.Parts...)
		case len(q.Dashes) > 0:
			last.folds = append(last.folds, q)
		case math.Abs(q.Width-fineLine) < 2*seen.Written && q.Stroke == ink.Grey():
			last.bands = append(last.bands, q.Parts[0].Bounds())
			last.frame = last.frame.Union(q.Parts[0].Bounds())
		}
	}
	return all
}

// ofPicture is a report of nothing but a picture.
func ofPicture(p mark.Picture) *mark.Report {
	return &mark.Report{Sections: []mark.Section{{Picture: &p}}}
}

// ofWidePicture is ofPicture set across its pages: it has a table too wide for a column.
func ofWidePicture(p mark.Picture) *mark.Report {
	r := ofPicture(p)
	r.Sections = append(r.Sections, mark.Section{Tables: []mark.Table{sample.WideTable()}})
	return r
}

// The shapes keep their proportions and their places, and are not mirrored: a
// place of the cloth is drawn at one scale, on its side only where the cloth is
// long and lies across a page.
func TestPictureIsToScale(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		name          string
		width, height float64
		lying         bool
	}{
		{"as wide as long", 1000, 1000, false},
		{"a little longer", 1000, 1490, false},
		{"long", 1000, 1510, true},
		{"10 m by 1 m", 1000, 10_000, true},
		{"wide", 2000, 300, false},
		{"a scrap, no larger than half", 100, 120, false},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := mark.Picture{Width: c.width, Height: c.height, Caption: "Not to be measured."}
			step := plane.Point{X: c.width / 10, Y: c.height / 10}
			p.Shapes = []mark.Shape{
				sample.Oblong("", 0, 0, c.width, c.height),
				sample.Oblong("", step.X, 2*step.Y, 3*step.X, step.Y),
				{Outline: plane.Path{{X: 5 * step.X, Y: 5 * step.Y}, {X: 9 * step.X, Y: 5 * step.Y}, {X: 5 * step.X, Y: 9 * step.Y}, {X: 5 * step.X, Y: 5 * step.Y}}},
			}
			for _, on := range paper.Names() {
				for what, r := range map[string]*mark.Report{"column": ofPicture(p), "page": ofWidePicture(p)} {
					pages, onPaper := reported(t, r, on)
					require.Len(t, pages, 1)
					cloths := picturesOn(pages[0])
					require.Len(t, cloths, 1)
					frame := cloths[0].frame
					require.Len(t, cloths[0].outlines, len(p.Shapes))
					assert.Len(t, cloths[0].bands, 1)
					assert.Empty(t, cloths[0].folds)

					// By the longer side, of which rounding is the smaller part.
					scale := math.Max(frame.Width(), frame.Height()) / math.Max(c.width, c.height)
					at := func(q plane.Point) plane.Point { return frame.Min.Add(q.Mul(scale)) }
					if c.lying && what == "page" {
						// The lower end at the left, and the left side above.
						at = func(q plane.Point) plane.Point {
							return plane.Point{X: frame.Min.X + q.Y*scale, Y: frame.Max.Y - q.X*scale}
						}
						assert.InDelta(t, c.width*scale, frame.Height(), 4*seen.Written)
					} else {
						assert.InDelta(t, c.width*scale, frame.Width(), 4*seen.Written)
						assert.InDelta(t, c.height*scale, frame.Height(), 4*seen.Written)
					}
					assert.LessOrEqual(t, scale, 0.5+seen.Written)
					assert.LessOrEqual(t, frame.Height(), 0.6*onPaper.Height)
					for i, shape := range p.Shapes {
						path := cloths[0].outlines[i]
						require.Len(t, path, len(shape.Outline))
						for k, q := range shape.Outline {
							assert.InDelta(t, 0, path[k].Distance(at(q)), 4*seen.Written, "shape %d, point %d in a %s of %s", i, k, what, on)
							assert.True(t, frame.Grown(2*seen.Written).Holds(path[k]))
						}
					}
				}
			}
		})
	}
}

// Each band is drawn to the picture's scale, as wide as it is, from the left side on;
// one narrower than the whole has a fold there, and shapes lie in their bands.
func TestBandsOfAPicture(t *testing.T) {
	t.Parallel()
	const width, length = 1100.0, 1800.0
	p := mark.Picture{Width: width, Height: length, Bands: []mark.Band{
		{From: 0, To: 500, Width: width, Text: "single: 0 to 50 cm"},
		{From: 500, To: 1500, Width: width / 2, Text: "folded: 50 to 150 cm"},
		{From: 1500, To: length, Width: width, Text: "single: 150 to 180 cm"},
	}}
	p.Shapes = []mark.Shape{
		sample.Oblong("Sleeve", 0, 20, 400, 450),
		sample.Oblong("Front", 0, 510, 300, 400),
		sample.Oblong("Skirt", 0, 920, width/2, 570),
		sample.Oblong("Collar", 0, 1520, 500, 200),
	}
	bandOf := []int{0, 1, 1, 2}
	for what, r := range map[string]*mark.Report{"upright": ofPicture(p), "on its side": ofWidePicture(p)} {
		for _, paper := range []string{"letter", "a4"} {
			t.Run(what+" on "+paper, func(t *testing.T) {
				pages, _ := reported(t, r, paper)
				cloth := picturesOn(pages[0])[0]
				require.Len(t, cloth.bands, len(p.Bands))
				// Along and across the cloth, whichever way it lies.
				lying := what == "on its side"
				scale := cloth.frame.Height() / length
				if lying {
					scale = cloth.frame.Width() / length
				}
				place := func(q plane.Point) plane.Point {
					if lying {
						return plane.Point{X: cloth.frame.Min.X + q.Y*scale, Y: cloth.frame.Max.Y - q.X*scale}
					}
					return cloth.frame.Min.Add(q.Mul(scale))
				}
				for i, b := range p.Bands {
					want := plane.EmptyBox().With(place(plane.Point{Y: b.From})).With(place(plane.Point{X: b.Width, Y: b.To}))
					assert.InDelta(t, 0, want.Min.Distance(cloth.bands[i].Min), 4*seen.Written, "band %d", i)
					assert.InDelta(t, 0, want.Max.Distance(cloth.bands[i].Max), 4*seen.Written, "band %d", i)
				}
				for i, outline := range cloth.outlines {
					b := outline.Bounds()
					on := cloth.bands[bandOf[i]].Grown(2 * seen.Written)
					assert.True(t, on.Holds(b.Min) && on.Holds(b.Max), "%s lies in its band", p.Shapes[i].Name)
				}

				require.Len(t, cloth.folds, 1, "one band is folded")
				fold := cloth.folds[0]
				assert.Len(t, fold.Dashes, len(ink.PenOf(mark.FoldEdge).Dashes()), "a fold looks as it does on a sheet")
				ends := plane.Path{place(plane.Point{Y: 500}), place(plane.Point{Y: 1500})}
				assert.InDelta(t, 0, fold.Parts[0][0].Distance(ends[0]), 4*seen.Written, "the fold is the left side")
				assert.InDelta(t, 0, fold.Parts[0][1].Distance(ends[1]), 4*seen.Written, "the fold is the left side")

				for i, b := range p.Bands {
					checkSaid(t, pages[0], cloth, i, b.Text, lying)
				}
			})
		}
	}
}

// checkSaid: what is said of band i stands at it. Beside a narrow one it lies in its
// length, and on no cloth; a wide one has it on itself where nothing lies, or, on its
// side, above.
func checkSaid(t *testing.T, page seen.Page, cloth seenPicture, i int, text string, lying bool) {
	t.Helper()
	// The lines of the text follow each other on the page.
	said, letters := plane.EmptyBox(), ""
	for _, r := range page.Texts {
		if letters == seen.Squeezed(text) {
			break
		}
		if !strings.HasPrefix(seen.Squeezed(text), letters+seen.Squeezed(r.Text)) {
			said, letters = plane.EmptyBox(), ""
			continue
		}
		said, letters = said.Union(r.Box()), letters+seen.Squeezed(r.Text)
	}
	require.Equal(t, seen.Squeezed(text), letters)
	band := cloth.bands[i]
	if narrow := len(cloth.folds) > 0 && i == 1; narrow || lying {
		for _, b := range cloth.bands {
			assert.False(t, b.Meets(said), "%q stands on no cloth", text)
		}
	} else {
		assert.True(t, band.Holds(said.Min) && band.Holds(said.Max), "%q stands on its band", text)
	}
	if lying {
		assert.True(t, band.Min.X < said.Min.X && said.Max.X < band.Max.X, "%q", text)
	} else {
		assert.True(t, band.Min.Y < said.Min.Y && said.Max.Y < band.Max.Y, "%q", text)
	}
	for _, outline := range cloth.outlines {
		assert.False(t, outline.Bounds().Meets(said), "%q stands on no shape", text)
	}
}

// What is said of a band that has no room for it, or is not on the picture at all,
// stands under the picture.
func TestBandsWithoutRoom(t *testing.T) {
	p := mark.Picture{Width: 1000, Height: 1000, Bands: []mark.Band{
		{From: 0, To: 990, Width: 1000, Text: "single, and covered"},
		{From: 990, To: 1000, Width: 500, Text: "folded, and hardly any"},
		{From: 1000, To: 1200, Width: 1000, Text: "beyond"},
		{From: 300, To: 200, Width: 1000, Text: "upside down"},
		{From: 200, To: 300, Width: -3, Text: "of no width"},
	}}
	for i := range 10 {
		p.Shapes = append(p.Shapes, sample.Oblong("", 0, 99*float64(i), 1000, 99))
	}
	pages, _ := reported(t, ofPicture(p), "letter")
	cloth := picturesOn(pages[0])[0]
	assert.Len(t, cloth.bands, 2)
	for _, b := range p.Bands {
		r, _ := only(t, pages, b.Text)
		assert.Less(t, r.At.Y, cloth.frame.Min.Y, b.Text)
	}
}

// A name stands inside its shape; a number inside, or beside it.
func TestNamesInAPicture(t *testing.T) {
	p := mark.Picture{Width: 1000, Height: 1200, Shapes: []mark.Shape{
		sample.Oblong("Skirt panel", 20, 20, 500, 600),
		sample.Oblong("Neck facing", 540, 20, 105, 300),
		sample.Oblong("Binding for the whole of the neck", 700, 20, 90, 80),
		sample.Oblong("Binding for the whole of the neck", 800, 20, 90, 80),
		sample.Oblong("Loop", 560, 500, 8, 8),
		{Name: "Nothing"},
		sample.Oblong("Stay", 598, 698, 4, 4),
	}}
	// The stay has others on all sides.
	for _, at := range []plane.Point{{X: 585, Y: 690}, {X: 605, Y: 690}, {X: 597, Y: 680}, {X: 597, Y: 705}} {
		p.Shapes = append(p.Shapes, sample.Oblong("", at.X, at.Y, 10, 15))
	}
	pages, _ := reported(t, ofPicture(p), "letter")
	cloth := picturesOn(pages[0])[0]
	require.Len(t, cloth.outlines, len(p.Shapes)-1, "a shape without a line is not drawn")
	for i, name := range []string{"Skirt panel", "Neck facing"} {
		inside := cloth.outlines[i].Bounds()
		found := 0
		for _, r := range pages[0].Texts {
			if b := r.Box(); inside.Holds(b.Min) && inside.Holds(b.Max) {
				found += len(seen.Squeezed(r.Text))
				assert.Contains(t, name, r.Text)
			}
		}
		assert.Equal(t, len(seen.Squeezed(name)), found, "letters of %q in its shape", name)
	}
	numbers := map[string][]seen.Text{}
	for _, r := range pages[0].Texts {
		if r.Bold && cloth.frame.Holds(r.At) {
			numbers[r.Text] = append(numbers[r.Text], r)
		}
	}
	require.Len(t, numbers["A"], 2, "both shapes of one name have one letter")
	for i, r := range numbers["A"] {
		assert.True(t, cloth.outlines[2+i].Bounds().Holds(r.Box().Centre()))
	}
	require.Len(t, numbers["B"], 1)
	assert.Less(t, cloth.outlines[4].Bounds().Distance(numbers["B"][0].Box().Centre()), 2.5, "beside the loop")
	assert.Len(t, numbers, 2)
	only(t, pages, "Binding for the whole of the neck")
	only(t, pages, "Loop")
	only(t, pages, "Too small to be marked here: Nothing and Stay.")
}

// smallThings is a picture of things that have no room for their names in a column.
func smallThings() mark.Picture {
	p := mark.Picture{Width: 1000, Height: 2500, Caption: "As they lie."}
	for i := range 20 {
		p.Shapes = append(p.Shapes, sample.Oblong(fmt.Sprint("Flap no. ", i+1), 20+480*float64(i%2), 20+240*float64(i/2), 300, 60))
	}
	return p
}

// besidePicture finds what TestPictureAcrossThePage has in columns.
var besidePicture = regexp.MustCompile(`^(Before|before|to buy|After|after)`)

// A picture stands in a column where its names can be read, else across the page
// with what belongs to it, at the foot or the head of a page.
func TestPictureAcrossThePage(t *testing.T) {
	t.Parallel()
	large := mark.Picture{Width: 1000, Height: 1000, Shapes: []mark.Shape{sample.Oblong("Front", 0, 0, 400, 900), sample.Oblong("Back", 500, 0, 400, 900)}}
	for _, c := range []struct {
		name    string
		picture mark.Picture
		tables  bool // in its section
		across  bool
	}{
		{"large things", large, false, false},
		{"small things", smallThings(), false, true},
		{"small things after a table", smallThings(), true, true},
	} {
		t.Run(c.name, func(t *testing.T) {
			for n := range 20 {
				r := &mark.Report{Title: "Sunday pinafore"}
				r.Sections = append(r.Sections, mark.Section{Title: "Before it"})
				for i := range 7 * n {
					r.Sections[0].Lines = append(r.Sections[0].Lines, mark.Sentence{Text: fmt.Sprintf("before%d.", i)})
				}
				cloth := mark.Section{Title: "Cloth", Lines: []mark.Sentence{{Text: "first."}, {Text: "last."}}, Picture: &c.picture}
				if c.tables {
					cloth.Tables = []mark.Table{{Rows: sample.Cells([]string{"to buy", "2 m"})}}
				}
				r.Sections = append(r.Sections, cloth, mark.Section{Title: "After it", Lines: []mark.Sentence{{Text: "after."}}})
				pages, onPaper := reported(t, r, "letter")
				last, on := only(t, pages, "last.")
				picture := picturesOn(pages[on])[0]
				require.NotEmpty(t, picture.outlines, "the picture stands with the last sentence before it: n = %d", n)
				_, column := columnsOf(onPaper)
				assert.Equal(t, c.across, picture.frame.Width() > column, "n = %d: %v", n, picture.frame)
				assert.InDelta(t, 0, last.At.Y-picture.frame.Max.Y, 6, "right under it: n = %d", n)
				if c.across && !c.tables {
					heading, headed := only(t, pages, "Cloth")
					assert.Equal(t, on, headed, "its heading stands with it: n = %d", n)
					assert.Greater(t, heading.At.Y, last.At.Y)
				}
				if c.across {
					assert.InDelta(t, onPaper.UnderHeader().Min.X, last.At.X, 2*seen.Written)
					above, under := 0, 0
					for _, r := range pages[on].Texts {
						switch {
						case !besidePicture.MatchString(r.Text):
						case r.At.Y > picture.frame.Max.Y:
							above++
						default:
							under++
						}
					}
					assert.True(t, above == 0 || under == 0, "at the head or the foot of its page: n = %d", n)
				}
			}
		})
	}
}

// A heading that has nothing but a picture under it stands right over it.
func TestHeadingOfAPicture(t *testing.T) {
	t.Parallel()
	cloth := mark.Picture{Width: 1000, Height: 800, Caption: "As they lie."}
	for n := range 60 {
		before := mark.Section{Title: "Before it"}
		for range 2 * n {
			before.Lines = append(before.Lines, mark.Sentence{Text: "Measure it."})
		}
		pages, onPaper := reported(t, &mark.Report{Sections: []mark.Section{before, {Title: "Cloth", Picture: &cloth}}}, "letter")
		columns := columnsOn(pages, onPaper, 2)
		heading, in := only(t, columns, "Cloth")
		cloths := picturesOn(columns[in])
		require.NotEmpty(t, cloths[0].bands, "n = %d", n)
		assert.InDelta(t, 0, heading.At.Y-cloths[0].frame.Max.Y, 4, "n = %d", n)
		caption, under := only(t, columns, "As they lie.")
		assert.Equal(t, in, under, "n = %d", n)
		assert.Less(t, caption.At.Y, cloths[0].frame.Min.Y)
	}
}

func TestPicturesThatAreNone(t *testing.T) {
	for name, p := range map[string]mark.Picture{
		"no size":            {},
		"no width":           {Height: 10},
		"less than no width": {Width: -1, Height: 10},
		"without end":        {Width: math.Inf(1), Height: 10},
		"no number":          {Width: math.NaN(), Height: 10},
		"a shape far off":    {Width: 1, Height: 1, Shapes: []mark.Shape{{Outline: plane.Path{{}, {X: 1e10}}}}},
		"a band nowhere":     {Width: 1, Height: 1, Bands: []mark.Band{{From: math.NaN(), To: 1, Width: 1}}},
		"a band without end": {Width: 1, Height: 1, Bands: []mark.Band{{To: math.Inf(1), Width: 1}}},
		"a band of no width": {Width: 1, Height: 1, Bands: []mark.Band{{To: 1, Width: math.NaN()}}},
	} {
		assert.EqualError(t, Check(ofPicture(p)), "the figures have a picture that leads nowhere on paper", name)
	}
}
