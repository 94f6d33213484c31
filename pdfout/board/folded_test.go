package board_test

import (
	"encoding/xml"
	"fmt"
	"io"
	"math"
	"os"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/folded"
	"tuckmark/marking/garment"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
	"tuckmark/marking/source"
	"tuckmark/pdfout/board"
)

// example returns an example as it stands and in each of its views.
func example(t *testing.T, name string) []board.View {
	t.Helper()
	data, err := os.ReadFile("../../examples/" + name + ".toml")
	require.NoError(t, err)
	specs, err := source.Reader{Printable: sketch.HasLetter}.ReadAll(name, data)
	require.NoError(t, err)
	var views []board.View
	for _, spec := range specs {
		pattern, err := garment.Check(spec)
		require.NoError(t, err)
		views = append(views, board.View{Name: pattern.ViewName(), Pieces: folded.All(pattern, mark.BothHalves)})
	}
	return views
}

// element is one that a board writes, with what it stands in.
type element struct {
	name       string
	attributes map[string]string
	within     []element // from outside in
}

func (e element) has(class string) bool { return e.attributes["class"] == class }

// elementsOf reads what is drawn, which must be one SVG.
func elementsOf(t *testing.T, drawn string) []element {
	t.Helper()
	d := xml.NewDecoder(strings.NewReader("<svg>" + drawn + "</svg>"))
	var all, open []element
	for {
		token, err := d.Token()
		if err == io.EOF {
			return all
		}
		require.NoError(t, err)
		switch token := token.(type) {
		case xml.StartElement:
			e := element{token.Name.Local, map[string]string{}, slices.Clone(open)}
			for _, a := range token.Attr {
				e.attributes[a.Name.Local] = a.Value
			}
			assert.NotContains(t, e.attributes, "style", "the page's policy forbids it")
			all, open = append(all, e), append(open, e)
		case xml.EndElement:
			open = open[:len(open)-1]
		}
	}
}

// inside are the elements that stand in one of a class, but not in the key under a piece.
func inside(all []element, class string) []element {
	var found []element
	for _, e := range all {
		inKey := slices.ContainsFunc(e.within, func(outer element) bool { return outer.has("shades") })
		if within := slices.ContainsFunc(e.within, func(outer element) bool { return outer.has(class) }); within && (!inKey || class == "shades") {
			found = append(found, e)
		}
	}
	return found
}

func TestFoldedPiecesLieBesideTheFlatOnes(t *testing.T) {
	pieces := example(t, "pinafore")[0].Pieces
	b := board.Folded(pieces)
	require.Len(t, b.Parts, 3, "front, back and the key; the strip has no folds")
	assert.Equal(t, "Front, folded and flat", b.Parts[0].Name)
	assert.Equal(t, []string{"front"}, b.Parts[0].Keys)
	assert.Equal(t, "Back, folded and flat", b.Parts[1].Name)
	assert.Empty(t, b.Parts[2].Name, "the key is not looked at alone")
	for _, words := range []string{"layers of cloth", "edge of a tuck", "edge of a pleat", "stitching", "cloth that is let go"} {
		assert.Contains(t, b.Parts[2].Elements(), ">"+words+"</text>")
	}
	for i, p := range b.Parts {
		assert.True(t, p.Box.Min.X > 0 && p.Box.Min.Y > 0 && p.Box.Max.X < b.Size.X && p.Box.Max.Y < b.Size.Y, "part %d lies on the board", i+1)
	}
	front, all := pieces[0], elementsOf(t, b.Parts[0].Elements())
	assert.Len(t, inside(all, "cloth"), len(front.Layers)+1, "its layers, and the flat piece")
	assert.Len(t, inside(all, "shadow"), len(front.Shadows))
	assert.Len(t, inside(all, "fullness fine"), len(front.Fullness))
	named := map[string]bool{}
	for _, e := range all {
		if e.name == "path" && e.attributes["data-piece"] != "" {
			assert.Equal(t, "front", e.attributes["data-piece"])
			named[e.attributes["data-line"]] = true
		}
	}
	for _, line := range []string{"neck", "neck stitch line", "yoke 3 tuck fold", "yoke 3 tuck stitching", "hem fold", "centre front", "underarm pleat fold"} {
		assert.Contains(t, named, line)
	}
}

// What is drawn of the folded front is as wide as the front is, to the hundredth of a mm, and lies on
// its part.
func TestFoldedPiecesAreTrueToSize(t *testing.T) {
	pieces := example(t, "shirt")[0].Pieces
	b := board.Folded(pieces)
	number := regexp.MustCompile(`-?[0-9.]+`)
	all := inside(elementsOf(t, b.Parts[0].Elements()), "cloth")
	boxes := []plane.Box{plane.EmptyBox(), plane.EmptyBox()} // folded; the block
	for i, e := range all {
		box := &boxes[0]
		if i == len(all)-1 {
			box = &boxes[1]
		}
		values := number.FindAllString(e.attributes["d"], -1)
		for k := 0; k+1 < len(values); k += 2 {
			x, _ := strconv.ParseFloat(values[k], 64)
			y, _ := strconv.ParseFloat(values[k+1], 64)
			*box = box.With(plane.Point{X: x, Y: y})
		}
	}
	assert.InDelta(t, pieces[0].Outline.Bounds().Width(), boxes[0].Width(), 0.011)
	assert.InDelta(t, pieces[0].Outline.Bounds().Height(), boxes[0].Height(), 0.011)
	assert.InDelta(t, pieces[0].Flat.Outline.Bounds().Width(), boxes[1].Width(), 0.011)
	assert.Less(t, boxes[0].Max.X, boxes[1].Min.X, "side by side")
	assert.Less(t, boxes[1].Max.X, b.Parts[0].Box.Width())
	assert.Equal(t, "Front, folded, and the block it is cut from", b.Parts[0].Name)
}

func TestPiecesWithoutFoldsAreAllShownWhereNoneHasAny(t *testing.T) {
	b := board.Folded(example(t, "nightgown")[0].Pieces)
	require.Len(t, b.Parts, 5)
	assert.Equal(t, "Yoke front", b.Parts[0].Name)
	assert.Empty(t, board.Folded(nil).Parts)
}

func TestNotesStandUnderAPiece(t *testing.T) {
	pieces := example(t, "shirt")[0].Pieces
	require.NotEmpty(t, pieces[0].Notes)
	with := board.Folded(pieces).Parts[0]
	assert.Contains(t, with.Elements(), ">Beyond the ends of its tucks")
	pieces[0].Notes = nil
	assert.Less(t, board.Folded(pieces).Parts[0].Box.Height(), with.Box.Height())
}

// lightness is how light a grey is to the eye, from 0 to 100 (CIE 1976 L*, from memory), of a share of
// white.
func lightness(y float64) float64 { return 116*math.Cbrt(y) - 16 }

// luminance is that of a colour written as #rrggbb (WCAG 2.2, relative luminance, from memory).
func luminance(r, g, b float64) float64 {
	linear := func(v float64) float64 {
		if v <= 0.04045 {
			return v / 12.92
		}
		return math.Pow((v+0.055)/1.055, 2.4)
	}
	return 0.2126*linear(r) + 0.7152*linear(g) + 0.0722*linear(b)
}

// Layers add up: 1, 3, 5, 7 and 9 of them are told apart, on white paper and in grey, by steps
// that an eye sees side by side, and a black line is seen on seven (3 : 1, WCAG 2.2, 1.4.11).
func TestShadesAreToldApart(t *testing.T) {
	var cloth element
	for _, e := range elementsOf(t, board.Folded(example(t, "pinafore")[0].Pieces).Parts[0].Elements()) {
		if e.has("cloth") {
			cloth = e
		}
	}
	opacity, err := strconv.ParseFloat(cloth.attributes["fill-opacity"], 64)
	require.NoError(t, err)
	var rgb [3]int
	_, err = fmt.Sscanf(cloth.attributes["fill"], "#%02x%02x%02x", &rgb[0], &rgb[1], &rgb[2])
	require.NoError(t, err)
	on := func(layers int) float64 {
		c := [3]float64{1, 1, 1}
		for range layers {
			for i := range c {
				c[i] += (float64(rgb[i])/255 - c[i]) * opacity
			}
		}
		return luminance(c[0], c[1], c[2])
	}
	assert.Greater(t, lightness(1)-lightness(on(1)), 8.0, "one layer on paper")
	for _, n := range []int{1, 3, 5, 7} {
		assert.Greater(t, lightness(on(n))-lightness(on(n+2)), 4.0, "%d layers and two more", n)
	}
	assert.Greater(t, (on(7)+0.05)/0.05, 3.0, "a black line on seven layers")
}

// The key has a sample of every number of layers, of as many layers.
func TestKeyOfTheShades(t *testing.T) {
	p, pattern := made.Front(t, "0", "drawn = \"finished\"\ncentre: 0,0 0,10\ntop: 0,10 10,10\nright: 10,10 10,0\nhem: 10,0 0,0\n---\n"+
		sketch.Rows(`tuck a centre 1/2 3 2 | spacing = 1.25`))
	b := board.Folded([]mark.Pressed{folded.Of(p, pattern.Unit, mark.OneHalf)})
	require.Len(t, b.Parts, 2)
	key := b.Parts[1].Elements()
	layers := map[string]int{}
	for _, e := range inside(elementsOf(t, key), "cloth") {
		layers[e.attributes["d"]]++
	}
	var counts []int
	for _, n := range layers {
		counts = append(counts, n)
	}
	assert.ElementsMatch(t, []int{1, 3, 5, 3, 1}, counts, "three shades, the flap of a tuck, and an allowance")
	for _, n := range counts {
		assert.Contains(t, key, fmt.Sprintf(">%d</text>", n))
	}
}

// Under a piece with folds stands how dark its own layers are, and what is paler; it is on the paper,
// however narrow the piece is.
func TestKeyUnderAPiece(t *testing.T) {
	number := regexp.MustCompile(`-?[0-9.]+`)
	for _, size := range []plane.Point{{X: 5, Y: 900}, {X: 60, Y: 60}, {X: 900, Y: 5}, {X: 900, Y: 900}} {
		box := plane.Box{Max: size}
		p := mark.Pressed{Key: "one", Name: "One", Outline: box.Outline(), Sewn: box.Grown(-1).Outline(), Counts: []int{1, 3, 7}}
		p.Flat.Outline = p.Outline
		part := board.Folded([]mark.Pressed{p}).Parts[0]
		layers, washed := 0, plane.EmptyBox()
		for _, e := range inside(elementsOf(t, part.Elements()), "shades") {
			if e.name != "path" {
				continue
			}
			if !e.has("turned") {
				layers++
			}
			values := number.FindAllString(e.attributes["d"], -1)
			for k := 0; k+1 < len(values); k += 2 {
				x, _ := strconv.ParseFloat(values[k], 64)
				y, _ := strconv.ParseFloat(values[k+1], 64)
				washed = washed.With(plane.Point{X: x, Y: y})
			}
		}
		assert.Equal(t, 1+3+7+1, layers, "1, 3 and 7 layers, and one that is paler in part")
		assert.Greater(t, washed.Min.Y, size.Y, "under the piece")
		assert.True(t, plane.Box{Max: part.Box.Max.Sub(part.Box.Min)}.Holds(washed.Max), "on the paper of %v", size)
		assert.Contains(t, part.Elements(), ">allowance or hem</text>")
	}
}
