package piece_test

import (
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/garment"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/source"
)

// penned returns the points of a line as a pen brings them in that is led along it: one each
// millimetre, each up to a tenth of a millimetre off; its ends are corners, and true.
func penned(t *rapid.T, line plane.Path) []plane.Point {
	random := rapid.Uint64().Draw(t, "noise")
	noise := func() float64 { // evenly between -0.1 and 0.1
		random = random*6364136223846793005 + 1442695040888963407
		return (float64(random>>33)/(1<<31)*2 - 1) * 0.1
	}
	// From corner to corner, for at a corner the pen stops.
	points := []plane.Point{line[0]}
	for first := 0; first < len(line)-1; {
		last := first + 1
		for ; last < len(line)-1; last++ {
			if math.Abs(plane.Turn(line[last].Sub(line[last-1]), line[last+1].Sub(line[last]))) > math.Pi/12 {
				break
			}
		}
		part := plane.NewTree(line[first : last+1])
		steps := math.Ceil(part.Length())
		for k := 1.0; k < steps; k++ {
			angle := noise() * 10 * math.Pi
			points = append(points, part.At(part.Length()*k/steps).Add(plane.Point{X: math.Cos(angle), Y: math.Sin(angle)}.Mul(noise())))
		}
		points = append(points, line[last])
		first = last
	}
	return points
}

// retraced returns a file with every edge of its pieces as it is traced.
func retraced(t *rapid.T, spec *source.Spec, clean *garment.Pattern) *source.Spec {
	again := *spec
	again.Pieces = slices.Clone(spec.Pieces)
	for i := range again.Pieces {
		ps := &again.Pieces[i]
		ps.Edges = slices.Clone(ps.Edges)
		p := &clean.Pieces[i]
		for k := range ps.Edges {
			e := &ps.Edges[k]
			e.Smooth = false
			e.Points = source.Points{Value: source.Given(penned(t, p.Edges[p.EdgeNumber(e.Key)].Path))}
		}
	}
	return &again
}

// farthest returns how far the places of one line lie from another at most.
func farthestOff(line, other plane.Path) float64 {
	far, tree := 0.0, plane.NewTree(other)
	for _, q := range sketch.Places(line, 2) {
		at, _ := tree.Nearest(q)
		far = max(far, at.Distance(q))
	}
	return far
}

// A draft whose edges are traced makes the piece that the draft makes.
func TestTracedDrafts(t *testing.T) {
	type drafted struct {
		draft func(*rapid.T) string
		more  string
	}
	drafts := []drafted{
		{sketch.Bodice, "[piece.front.tuck.t]\nbeside = \"centre\"\nwidth = 0.125\ncount = 3\nfirst = 0.5\ngap = 0.125\nbelow = \"neck\"\nlength = 2\nend = \"follow\"\n" +
			"[piece.front.pleat.p]\nedge = \"armhole\"\nfrom = \"side\"\nat = 1\ndepth = 0.25\ntoward = \"side\"\nlength = 1\n" +
			"[piece.front.notch.n]\nedge = \"armhole\"\nfrom = \"shoulder\"\nat = 2\n[piece.front.line.l]\nbeside = \"centre\"\nat = 4.5\n[piece.front.line.m]\nalong = \"side\"\ndistance = 1\n"},
		{sketch.Sleeve, "[piece.front.notch.n]\nedge = \"cap\"\nfrom = \"front\"\nat = 2\n[piece.front.tuck.t]\nbeside = \"hem\"\nwidth = 0.125\ncount = 2\nfirst = 3\ngap = 0.125\n"},
		{sketch.Gore, ""}, {sketch.Collar, ""}, {sketch.Raglan, ""}, {sketch.Gusset, ""}, {sketch.Pocket, ""},
	}
	rapid.Check(t, func(t *rapid.T) {
		c := rapid.SampledFrom(drafts).Draw(t, "draft")
		text := sketch.Front(c.draft(t)) + "\n" + c.more
		spec, err := source.Read("f.toml", []byte(text), sketch.HasLetter)
		require.NoError(t, err)
		clean, err := garment.Check(spec)
		if err != nil {
			t.Skip("the draft is refused as it is")
		}
		again, err := garment.Check(retraced(t, spec, clean))
		require.NoError(t, err, text)
		p, q := &clean.Pieces[0], &again.Pieces[0]
		for _, e := range p.Edges {
			got := q.Edges[q.EdgeNumber(e.Key)]
			require.Equal(t, e.Marked, got.Marked, "%s\n%s", e.Key, text)
		}
		// Where a seam ends along its line may move farther than the line, as where
		// two run nearly the same way; so all that is sewn is held against all. Each side
		// of a corner strays by the pen's 0.1 mm, and by as much where a line is laid through
		// that; two that cross at 20 degrees, as few do here, cross 0.2 / sin 20 = 0.6 off.
		const strays = 0.6
		sewn, seen := piece.SeamsOf(p).Path(), piece.SeamsOf(q).Path()
		require.Less(t, farthestOff(seen, sewn), strays, text)
		require.Less(t, farthestOff(sewn, seen), strays, text)
		require.Equal(t, [3]int{len(p.EdgePleats), len(p.TuckRows), len(p.Lines)}, [3]int{len(q.EdgePleats), len(q.TuckRows), len(q.Lines)})
		texts := func(p *garment.Pattern) []string {
			var all []string
			for _, r := range p.Remarks {
				if !strings.Contains(r.Text, "doll") { // at the very size from which it is said
					all = append(all, r.Text)
				}
			}
			return all
		}
		require.LessOrEqual(t, len(texts(again)), len(texts(clean)), "%v\nagainst %v\n%s", texts(again), texts(clean), text)
	})
}
