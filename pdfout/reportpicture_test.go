package pdfout

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking"
	"tuckmark/marking/plane"
)

// pictureOf draws a picture with anything in it: shapes that lie on each other,
// shapes that are none, lines close together.
func pictureOf(t *rapid.T) *marking.Picture {
	side := rapid.SampledFrom([]float64{3, 90, 400, 1000, 2500, 10_000})
	p := &marking.Picture{Caption: "As they lie.", Width: side.Draw(t, "width"), Height: side.Draw(t, "height")}
	within := func(most float64, what string) float64 {
		return most * float64(rapid.IntRange(0, 60).Draw(t, what)) / 60
	}
	for i := range rapid.IntRange(0, 25).Draw(t, "shapes") {
		x, y := within(p.Width, "x"), within(p.Height, "y")
		shape := oblong([]string{"Cuff", "Pocket flap", "a strip that goes twice round the waist", fmt.Sprint("No. ", i)}[i%4],
			x, y, within(p.Width-x, "w"), within(p.Height-y, "h"))
		shape.Outline = shape.Outline[:rapid.SampledFrom([]int{5, 5, 5, 5, 4, 2, 1, 0}).Draw(t, "points")]
		p.Shapes = append(p.Shapes, shape)
	}
	for range rapid.IntRange(0, 4).Draw(t, "rules") {
		p.Rules = append(p.Rules, marking.PictureRule{At: within(p.Height, "at"), Text: textOf(t, 6)})
	}
	return p
}

// readCloth is a picture of the figures as it stands on a page.
type readCloth struct {
	frame    plane.Box
	outlines []plane.Path
}

// readCloths finds the pictures of a page.
func (p readPage) readCloths() []readCloth {
	whole := plane.Box{Max: plane.Point{X: p.width, Y: p.height}.Mul(point)}
	var all []readCloth
	var outlines []plane.Path
	for _, q := range p.paths {
		switch {
		case q.painted != "S":
		case q.clip != whole:
			outlines = append(outlines, q.parts...)
		case len(q.boxes) == 1:
			all = append(all, readCloth{q.boxes[0], outlines})
			outlines = nil
		}
	}
	return all
}

// onCloth is a report of nothing but a picture.
func onCloth(p marking.Picture) *marking.Report {
	return &marking.Report{Sections: []marking.Section{{Picture: &p}}}
}

// The shapes keep their proportions and their places, and are not mirrored: a
// place of the cloth is drawn at one scale, on its side only where the cloth is
// long.
func TestPictureIsToScale(t *testing.T) {
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
			p := marking.Picture{Width: c.width, Height: c.height, Caption: "Not to be measured."}
			step := plane.Point{X: c.width / 10, Y: c.height / 10}
			p.Shapes = []marking.Shape{
				oblong("", 0, 0, c.width, c.height),
				oblong("", step.X, 2*step.Y, 3*step.X, step.Y),
				{Outline: plane.Path{{X: 5 * step.X, Y: 5 * step.Y}, {X: 9 * step.X, Y: 5 * step.Y}, {X: 5 * step.X, Y: 9 * step.Y}, {X: 5 * step.X, Y: 5 * step.Y}}},
			}
			for _, paper := range Papers() {
				pages, s := reported(t, onCloth(p), paper)
				require.Len(t, pages, 1)
				cloths := pages[0].readCloths()
				require.Len(t, cloths, 1)
				frame := cloths[0].frame
				require.Len(t, cloths[0].outlines, len(p.Shapes))

				scale := frame.Width() / c.width
				at := func(q plane.Point) plane.Point { return frame.Min.Add(q.Mul(scale)) }
				if c.lying {
					// The lower end at the left, and the left side above.
					scale = frame.Width() / c.height
					at = func(q plane.Point) plane.Point {
						return plane.Point{X: frame.Min.X + q.Y*scale, Y: frame.Max.Y - q.X*scale}
					}
					assert.InDelta(t, c.width*scale, frame.Height(), 4*written)
				} else {
					assert.InDelta(t, c.height*scale, frame.Height(), 4*written)
				}
				assert.LessOrEqual(t, scale, 0.5+written)
				assert.LessOrEqual(t, frame.Height(), 0.6*s.Paper.Height)
				for i, shape := range p.Shapes {
					path := cloths[0].outlines[i]
					require.Len(t, path, len(shape.Outline))
					for k, q := range shape.Outline {
						assert.InDelta(t, 0, path[k].Distance(at(q)), 4*written, "shape %d, point %d on %s", i, k, paper)
						assert.True(t, frame.Grown(2*written).Holds(path[k]))
					}
				}
			}
		})
	}
}

// A name stands inside its shape; a number inside, or beside it.
func TestNamesInAPicture(t *testing.T) {
	p := marking.Picture{Width: 1000, Height: 1200, Shapes: []marking.Shape{
		oblong("Skirt panel", 20, 20, 500, 600),
		oblong("Neck facing", 540, 20, 105, 300),
		oblong("Binding for the whole of the neck", 700, 20, 60, 40),
		oblong("Binding for the whole of the neck", 800, 20, 60, 40),
		oblong("Loop", 560, 500, 8, 8),
		{Name: "Nothing"},
		oblong("Stay", 598, 698, 4, 4),
	}}
	// The stay has others on all sides.
	for _, at := range []plane.Point{{X: 585, Y: 690}, {X: 605, Y: 690}, {X: 597, Y: 680}, {X: 597, Y: 705}} {
		p.Shapes = append(p.Shapes, oblong("", at.X, at.Y, 10, 15))
	}
	pages, _ := reported(t, onCloth(p), "letter")
	cloth := pages[0].readCloths()[0]
	require.Len(t, cloth.outlines, len(p.Shapes)-1, "a shape without a line is not drawn")
	for i, name := range []string{"Skirt panel", "Neck facing"} {
		inside := cloth.outlines[i].Bounds()
		found := 0
		for _, r := range pages[0].texts {
			if b := r.box(); inside.Holds(b.Min) && inside.Holds(b.Max) {
				found += len(squeezed(r.text))
				assert.Contains(t, name, r.text)
			}
		}
		assert.Equal(t, len(squeezed(name)), found, "letters of %q in its shape", name)
	}
	numbers := map[string][]readText{}
	for _, r := range pages[0].texts {
		if r.bold() && cloth.frame.Holds(r.at) {
			numbers[r.text] = append(numbers[r.text], r)
		}
	}
	require.Len(t, numbers["1"], 2, "both shapes of one name have one number")
	for i, r := range numbers["1"] {
		assert.True(t, cloth.outlines[2+i].Bounds().Holds(r.box().Centre()))
	}
	require.Len(t, numbers["2"], 1)
	assert.Less(t, cloth.outlines[4].Bounds().Distance(numbers["2"][0].box().Centre()), 2.5, "beside the loop")
	assert.Len(t, numbers, 2)
	only(t, pages, "Binding for the whole of the neck")
	only(t, pages, "Loop")
	only(t, pages, "Too small to be marked here: Nothing and Stay.")
}

// What is said of a line stands at its end: beside a picture, over one that lies
// on its side, and under the picture where there is no room.
func TestRulesOfAPicture(t *testing.T) {
	for _, c := range []struct {
		name   string
		height float64
		lying  bool
	}{{"upright", 1000, false}, {"on its side", 4000, true}} {
		t.Run(c.name, func(t *testing.T) {
			p := marking.Picture{Width: 1000, Height: c.height, Rules: []marking.PictureRule{
				{At: 0.75 * c.height, Text: "single"},
				{At: 0.25 * c.height, Text: "folded"},
				{At: 0.999 * c.height, Text: "left over"},
				{At: 0.5 * c.height},
				{At: c.height + 10, Text: "beyond"},
			}}
			pages, _ := reported(t, onCloth(p), "letter")
			frame := pages[0].readCloths()[0].frame
			for text, share := range map[string]float64{"folded": 0.25, "single": 0.75} {
				r, _ := only(t, pages, text)
				away := r.box().Min.Sub(plane.Point{X: frame.Max.X, Y: frame.Min.Y + share*frame.Height()})
				if c.lying {
					away = r.box().Min.Sub(plane.Point{X: frame.Min.X + share*frame.Width(), Y: frame.Max.Y})
				}
				assert.Positive(t, math.Min(away.X, away.Y), text)
				assert.Less(t, math.Max(away.X, away.Y), 3.0, text)
			}
			across := 0
			for _, q := range pages[0].paths {
				if q.painted == "S" && len(q.dashes) > 0 {
					across++
					b := q.parts[0].Bounds()
					if c.lying {
						assert.LessOrEqual(t, b.Min.Y, frame.Min.Y+2*written)
						assert.GreaterOrEqual(t, b.Max.Y, frame.Max.Y-2*written)
					} else {
						assert.LessOrEqual(t, b.Min.X, frame.Min.X+2*written)
						assert.GreaterOrEqual(t, b.Max.X, frame.Max.X-2*written)
					}
				}
			}
			assert.Equal(t, 4, across, "lines across the picture")
			only(t, pages, fmt.Sprintf("At %s: left over", marking.Centimetre.Print(0.999*c.height)))
			only(t, pages, fmt.Sprintf("At %s: beyond", marking.Centimetre.Print(c.height+10)))
		})
	}
}

func TestPicturesThatAreNone(t *testing.T) {
	for name, p := range map[string]marking.Picture{
		"no size":            {},
		"no width":           {Height: 10},
		"less than no width": {Width: -1, Height: 10},
		"without end":        {Width: math.Inf(1), Height: 10},
		"no number":          {Width: math.NaN(), Height: 10},
		"a shape far off":    {Width: 1, Height: 1, Shapes: []marking.Shape{{Outline: plane.Path{{}, {X: 1e10}}}}},
		"a line nowhere":     {Width: 1, Height: 1, Rules: []marking.PictureRule{{At: math.NaN()}}},
	} {
		_, err := Draw(nil, withFigures(many(1), onCloth(p)), papers()[0])
		assert.EqualError(t, err, "the figures have a picture that leads nowhere on paper", name)
	}
}
