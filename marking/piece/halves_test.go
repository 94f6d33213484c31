package piece_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/sheet"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// everything is a front with every kind of line there is, half of it drawn.
const everything = `fold = "cf"
cf: 0,0 0,10
neck: 0,10 1.5,10 2.5,11 2.5,12
shoulder: 2.5,12 6,11.5
armhole: 6,11.5 6,9 8,8
side: 8,8 9,0
hem: 9,0 0,0 | hem = 1; turn = 0.25
---

[tuck.t]
beside = "cf"
width = "1/8"
count = 3
first = "FIRST"
below = "neck"
length = 2

[tuck.growth]
beside = "hem"
width = "1/2"
count = 1
first = 4

[pleat.across]
beside = "cf"
depth = "1/4"
first = 4

[pleat.edge]
edge = "armhole"
from = "side"
at = "3/4"
depth = "1/4"
toward = "side"
length = 1

[line.lace]
points = [[0, 5], [6, 5]]
kind = "placement"

[line.rule]
along = "cf"
distance = 3
kind = "centre"

[notch.n]
edge = "armhole"
from = "shoulder"
at = 1
`

// same reports whether two lines lie on each other, whichever way they are walked.
func same(a, b plane.Path) bool {
	if len(a) != len(b) {
		return false
	}
	fore, back := true, true
	for i := range a {
		fore = fore && a[i].Distance(b[i]) < 0.001
		back = back && a[i].Distance(b[len(b)-1-i]) < 0.001
	}
	return fore || back
}

func mirroredAtZero(p plane.Path) plane.Path {
	q := make(plane.Path, len(p))
	for i, at := range p {
		q[i] = plane.Point{X: -at.X, Y: at.Y}
	}
	return q
}

func TestMarksOfAWholePiece(t *testing.T) {
	for _, c := range []struct{ name, text string }{
		{"tucks beside the fold", sketch.Swap(everything, "FIRST", "3/8")},
		{"a tuck on the fold", sketch.Swap(everything, "FIRST", "0")},
		{"a grain line of its own", sketch.Swap(everything, "FIRST", "3/8", "fold =", "grain = [[5, 1], [5, 3]]\nfold =")},
	} {
		t.Run(c.name, func(t *testing.T) {
			markings := func(text string) mark.Marking {
				pattern, err := made.Pattern("allowance = 0.375\n" + sketch.Front(text))
				require.NoError(t, err)
				for _, m := range sheet.Of(pattern) {
					if m.Form == nil {
						return m
					}
				}
				t.Fatal("there is no marking of the piece")
				return mark.Marking{}
			}
			half := markings(c.text)
			whole := markings(sketch.Swap(c.text, "fold =", "print = \"whole\"\nfold ="))
			assert.InDelta(t, 2*half.Outline.Area(), whole.Outline.Area(), 1e-6, "twice the area")
			assert.Equal(t, whole.Outline[0], whole.Outline[len(whole.Outline)-1], "closed")
			grains := 0
			for i, one := range whole.Marks {
				assert.NotEqual(t, mark.FoldEdge, one.Role, "nothing is placed on a fold")
				if one.Role == mark.Grain {
					grains++
				}
				// A tuck whose fold is the centre has its line on the centre line.
				for _, other := range whole.Marks[:i] {
					if one.Role == other.Role {
						assert.False(t, same(one.Path, other.Path), "the %s %v is drawn twice", one.Role, one.Path)
					}
				}
			}
			assert.Equal(t, 1, grains, "a piece has one grain line")
			// Each line of the half is there, and so is its mirror image.
			holds := func(role mark.Role, p plane.Path) bool {
				for _, one := range whole.Marks {
					if one.Role == role && same(one.Path, p) {
						return true
					}
				}
				return false
			}
			for _, one := range half.Marks {
				role := one.Role
				switch role {
				case mark.FoldEdge:
					role = mark.Centre
				case mark.Grain:
					continue
				}
				assert.True(t, holds(role, one.Path), "the %s %q of the half", role, one.Name)
				assert.True(t, holds(role, mirroredAtZero(one.Path)), "the %s %q of the other half", role, one.Name)
			}
			// Every arrow points from the fold of a pleat to what it is laid to.
			arrows := 0
			for _, one := range whole.Marks {
				if one.Role != mark.Arrow {
					continue
				}
				arrows++
				assert.Less(t, nearestOfRole(whole, mark.PleatFold, one.Path[0]), 0.01, "an arrow begins at a fold")
				assert.Less(t, nearestOfRole(whole, mark.Placement, one.Path[1]), 0.01, "and points to its placement line")
				assert.Greater(t, nearestOfRole(whole, mark.PleatFold, one.Path[1]), 1.0, "not the other way")
			}
			assert.Equal(t, 4, arrows, "two pleats on either half")
			// The cutting line goes round counter-clockwise, on both halves.
			tree := plane.NewTree(whole.Outline)
			for _, one := range whole.Marks {
				if one.Role == mark.Cut {
					at, along := one.Path.At(one.Path.Length() / 3)
					assert.True(t, tree.Holds(at.Add(along.Left().Mul(0.01))), "the piece lies to the left of %q", one.Name)
				}
			}
		})
	}
}

func nearestOfRole(m mark.Marking, role mark.Role, q plane.Point) float64 {
	nearest := math.Inf(1)
	for _, one := range m.Marks {
		if one.Role == role {
			_, _, away := one.Path.Nearest(q)
			nearest = min(nearest, away)
		}
	}
	return nearest
}

// The outline of a whole piece is that of its half and the mirror image: twice the
// area, closed, counter-clockwise, wherever the half begins and the fold lies.
func TestOutlineOfAWholePiece(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		angle := rapid.Float64Range(-math.Pi, math.Pi).Draw(t, "angle")
		origin := plane.Point{X: rapid.Float64Range(-500, 500).Draw(t, "x"), Y: rapid.Float64Range(-500, 500).Draw(t, "y")}
		out := plane.Point{X: math.Cos(angle), Y: math.Sin(angle)}
		n := rapid.IntRange(1, 8).Draw(t, "corners off the fold")
		at := func(r, phi float64) plane.Point {
			return origin.Add(out.Mul(r * math.Cos(phi))).Add(out.Left().Mul(r * math.Sin(phi)))
		}
		ring := plane.Path{at(rapid.Float64Range(50, 300).Draw(t, "lower end"), -math.Pi/2)}
		for k := range n {
			ring = append(ring, at(rapid.Float64Range(50, 300).Draw(t, "radius"), math.Pi*(float64(k+1)/float64(n+1)-0.5)))
		}
		ring = append(ring, at(rapid.Float64Range(50, 300).Draw(t, "upper end"), math.Pi/2))
		if rapid.Bool().Draw(t, "a point within the fold") {
			ring = append(ring, origin)
		}
		first := rapid.IntRange(0, len(ring)-1).Draw(t, "first")
		half := append(append(plane.Path{}, ring[first:]...), ring[:first]...)
		half = append(half, half[0])

		whole := piece.WholeOutline(half, origin, out)
		require.Equal(t, whole[0], whole[len(whole)-1], "closed")
		require.InDelta(t, 2*half.Area(), whole.Area(), 1e-6*half.Area(), "twice the half, counter-clockwise")
		for _, q := range whole {
			image := q.Sub(out.Mul(2 * q.Sub(origin).Dot(out)))
			_, _, away := whole.Nearest(image)
			require.InDelta(t, 0, away, 1e-6, "it is its own mirror image")
		}
		for i := 1; i < len(whole); i++ {
			middle := whole[i-1].Toward(whole[i], 0.5).Sub(origin).Dot(out)
			require.Greater(t, math.Abs(middle), 1e-6, "no side lies on the fold")
		}
	})
}
