package folded_test

import (
	"fmt"
	"math"
	"slices"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// A random field, in mm: four edges, the centre at x = 0 and the hem at y = 0, with tucks
// and pleats beside the centre and perhaps growth tucks beside the hem. Where its cloth lies is
// worked out here by walking outward over the flat cloth: what is folded rises, falls over the half
// of a strip that lies under, and rises again.

// strip is a fold as the walk has it: it begins at near, takes up two widths, and falls on
// its first half if its flap is laid back, on its second if not.
type strip struct {
	near, width float64
	back        bool
	from, to    float64 // folded between these v only
}

// walk returns every u at which folded cloth comes to lie at g: u is walked from 0 outward.
func walk(strips []strip, g, v float64) []float64 {
	var us []float64
	u, at := 0.0, 0.0
	leg := func(long, rise float64) {
		if t := (g - at) * rise; t > 0 && t < long {
			us = append(us, u+t)
		}
		u, at = u+long, at+rise*long
	}
	for _, s := range strips {
		leg(s.near-u, 1)
		switch {
		case v < s.from || v >= s.to:
			u += 2 * s.width // drawn in to a line
		case s.back:
			leg(s.width, -1)
			leg(s.width, 1)
		default:
			leg(s.width, 1)
			leg(s.width, -1)
		}
	}
	leg(1e6, 1)
	return us
}

// field is a random field.
type field struct {
	high, rise, wide, flare float64 // of the outline as it is drawn
	angle                   float64 // by which all of it is turned, in radians
	onFold, grows, ends     bool
	hollow                  bool // its top and its side are hollow, as a neck and an armhole are
	across, up              []strip
	rows                    string
}

func randomField(t *rapid.T) field {
	f := field{
		high: rapid.Float64Range(150, 250).Draw(t, "high"), rise: rapid.Float64Range(-20, 30).Draw(t, "rise"),
		wide: rapid.Float64Range(120, 200).Draw(t, "wide"), flare: rapid.Float64Range(-15, 30).Draw(t, "flare"),
		angle:  rapid.SampledFrom([]float64{0, 0, 0.4, 1.5, -2.6}).Draw(t, "angle"),
		onFold: rapid.Bool().Draw(t, "on the fold"), grows: rapid.Bool().Draw(t, "growth tucks"),
		hollow: rapid.Bool().Draw(t, "hollow"),
	}
	flat := 0.0
	for n := range rapid.IntRange(1, 3).Draw(t, "rows") {
		f.addRow(t, n, &flat)
	}
	if f.grows {
		width := rapid.Float64Range(2, 8).Draw(t, "growth width")
		near := 20 + 2*width
		f.rows += fmt.Sprintf("\n[tuck.grow]\nbeside = \"hem\"\nwidth = %v\ncount = 2\nfirst = %v\ngap = 5\npress = \"away\"\n", width, near+width)
		for k := range 2 {
			f.up = append(f.up, strip{near: near + float64(k)*(3*width+5), width: width, from: math.Inf(-1), to: math.Inf(1)})
		}
	}
	return f
}

// addRow adds a row beside the centre, from flat on.
func (f *field) addRow(t *rapid.T, n int, flat *float64) {
	width := rapid.Float64Range(1, 6).Draw(t, "width")
	count := rapid.IntRange(1, 3).Draw(t, "count")
	gap := rapid.SampledFrom([]float64{0, 3}).Draw(t, "gap")
	away := rapid.Bool().Draw(t, "away")
	kind := rapid.SampledFrom([]string{"tuck", "close tuck", "knife", "box", "inverted"}).Draw(t, "kind")
	begin := *flat + rapid.SampledFrom([]float64{0, 7}).Draw(t, "clear")
	if *flat == 0 && !f.onFold {
		begin += 2 * width
	}
	s := strip{width: width, from: math.Inf(-1), to: math.Inf(1)}
	end := ""
	if !f.grows && rapid.Bool().Draw(t, "ends") {
		long := rapid.Float64Range(20, 100).Draw(t, "length")
		s.from, f.ends = f.high-long, true
		end = fmt.Sprintf("below = \"top\"\nlength = %v\n", long)
	}
	press := map[bool]string{true: "away", false: "toward"}[away]
	var each []strip // of one, from where its room begins
	first, pitch := width, 3*width+gap
	add := func(near float64, back bool) {
		one := s
		one.near, one.back = near, back
		each = append(each, one)
	}
	table, size := "pleat", "depth"
	switch kind {
	case "tuck", "close tuck":
		if table, size = "tuck", "width"; kind == "close tuck" {
			pitch = 2*width + 1
		}
		add(0, !away)
	case "knife":
		add(0, away)
		if first = 0; !away {
			first = 2 * width
		}
	case "box":
		add(0, false)
		add(4*width, true)
		first, pitch = 3*width, 6*width+gap
	case "inverted":
		add(0, true)
		add(2*width, false)
		first, pitch = 2*width, 6*width+gap
	}
	head := fmt.Sprintf("press = %q\n", press)
	if table == "pleat" {
		head = fmt.Sprintf("kind = %q\n", kind)
		if kind == "knife" {
			head += fmt.Sprintf("press = %q\n", press)
		}
	}
	f.rows += fmt.Sprintf("\n[%s.row%d]\nbeside = \"centre\"\n%s = %v\ncount = %d\nfirst = %v\nspacing = %v\n", table, n, size, width, count, begin+first, pitch) + head + end
	for k := range count {
		for _, one := range each {
			one.near += begin + float64(k)*pitch
			f.across = append(f.across, one)
			*flat = one.near + 2*width
		}
	}
}

// piece checks the field, drawn flat or finished. Fields whose folds do not fit are no case.
func (f field) piece(t *rapid.T, drawn string) *piece.Piece {
	fold := ""
	if f.onFold {
		fold = "fold = \"centre\"\n"
	}
	corners := plane.Path{{}, {Y: f.high}, {X: f.wide, Y: f.high + f.rise}, {X: f.wide + f.flare}, {}}
	between := map[string]plane.Path{}
	if f.hollow {
		between["top"] = plane.Path{{X: 0.6 * f.wide, Y: f.high - 10}}
		between["side"] = plane.Path{{X: 0.8 * f.wide, Y: 0.8 * f.high}, {X: f.wide + f.flare, Y: 0.6 * f.high}}
	}
	text := ""
	for i, edge := range []string{"centre", "top", "side", "hem"} {
		points := slices.Concat(corners[i:i+1], between[edge], corners[i+1:i+2])
		text += edge + ": " + sketch.TurnedPoints(f.angle, points...)
		if len(points) > 2 {
			text += " | smooth = true"
		}
		text += "\n"
	}
	text += "---\n"
	pattern, err := made.Pattern("unit = \"mm\"\nallowance = 0\n" + sketch.Front(fold+"drawn = \""+drawn+"\"\n"+text+f.rows))
	if err != nil {
		t.Skip(err)
	}
	require.Len(t, pattern.Pieces, 1)
	return &pattern.Pieces[0]
}

// local is a place of the picture as it was before the field was turned.
func (f field) local(q plane.Point) plane.Point { return sketch.Turned(q, -f.angle) }

// holds reports whether a place lies in the outline of the piece as it is drawn, or, on the fold, in
// that of its other half.
func (f field) holds(p *piece.Piece, q plane.Point) bool {
	if f.onFold {
		q.X = math.Abs(q.X)
	}
	return p.Tree.Holds(sketch.Turned(q, f.angle))
}

// layers counts the places of the flat cloth that come to lie at a place; all of them, if within is
// nil, else those that it holds.
func (f field) layers(q plane.Point, within func(flat plane.Point) bool) int {
	n := 0
	ys := []float64{q.Y}
	if f.grows {
		ys = walk(f.up, q.Y, 0)
	}
	for _, y := range ys {
		for _, side := range []float64{1, -1} {
			if side < 0 && !f.onFold {
				continue
			}
			for _, x := range walk(f.across, side*q.X, y) {
				if within == nil || within(plane.Point{X: side * x, Y: y}) {
					n++
				}
			}
		}
	}
	return n
}

// nearBreak reports whether a place lies so near to a line where the number of layers changes that
// either side of it may count.
func (f field) nearBreak(q plane.Point, within func(plane.Point) bool) bool {
	n := f.layers(q, within)
	for _, step := range []plane.Point{{X: 1e-4}, {X: -1e-4}, {Y: 1e-4}, {Y: -1e-4}} {
		if f.layers(q.Add(step), within) != n {
			return true
		}
	}
	return false
}
