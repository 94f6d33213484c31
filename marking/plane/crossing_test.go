package plane

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

func TestCrossings(t *testing.T) {
	for _, c := range []struct{ name, a, b, want string }{
		{"apart", "0,0 10,0", "0,5 10,5", ""},
		{"across", "0,0 10,0", "4,-3 4,3", "4,0 at 4 and 3"},
		{"an end touches", "0,0 10,0", "4,0 4,3", "4,0 at 4 and 0"},
		{"two ends touch", "0,0 10,0", "10,0 10,5", "10,0 at 10 and 0"},
		{"through a corner of the other, once", "0,0 10,0", "4,-3 5,0 4,3", "5,0 at 5 and 3.162"},
		{"twice", "0,0 10,0", "2,-1 2,1 8,1 8,-1", "2,0 at 2 and 1; 8,0 at 8 and 9"},
		{"along each other", "0,0 10,0", "4,0 20,0", "4,0 at 4 and 0; 10,0 at 10 and 6"},
		{"in line, apart", "0,0 10,0", "11,0 20,0", ""},
		{"in line, end to end", "0,0 10,0", "10,0 20,0", "10,0 at 10 and 0"},
		{"short of each other by rounding", "0,0 10,0", "4,0.0000000005 4,3", "4,0 at 4 and 0"},
		{"short of each other by what can be told", "0,0 10,0", "4,0.000000005 4,3", ""},
		{"beside each other by rounding", "0,0 10,0", "4,0.0000000005 20,0.0000000005", "4,0 at 4 and 0; 10,0 at 10 and 6"},
		{"beside each other by what can be told", "0,0 10,0", "4,0.000000005 20,0.000000005", ""},
		{"two crossings nearer than paper shows", "0,0 10,0", "4,-1 4.00001,1 4.00002,-1", "4,0 at 4 and 1; 4,0 at 4 and 3"},
		{"two crossings nearer still, beside the point of the other", "0,0 10,0", "4,-1 4.00000005,0.00000005 4.0000001,-1", "4,0 at 4 and 1; 4,0 at 4 and 1"},
		{"a path without length", "0,0", "0,0 5,5", ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			var found []string
			for _, x := range Crossings(NewTree(path(t, c.a)), NewTree(path(t, c.b))) {
				found = append(found, fmt.Sprintf("%s at %s and %s", text(Path{x.At}), short(x.A), short(x.B)))
			}
			assert.Equal(t, c.want, strings.Join(found, "; "))
		})
	}
}

func TestSelfCrossing(t *testing.T) {
	for _, c := range []struct{ name, path, want string }{
		{"a square", "0,0 10,0 10,10 0,10 0,0", ""},
		{"a bow", "0,0 10,10 10,0 0,10 0,0", "5,5 by 0 and 2"},
		{"an open path", "0,0 10,0 10,10", ""},
		{"a corner touches a side", "0,0 10,0 10,10 5,0 0,10 0,0", "5,0 by 0 and 2"},
		{"it turns back along itself", "0,0 10,0 4,0 4,8", "10,0 by 0 and 1"},
		{"it closes back along itself", "0,0 10,0 5,8 12,0 0,0", "0,0 by 0 and 3"},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := ""
			if at, i, j, ok := SelfCrossing(NewTree(path(t, c.path))); ok {
				got = fmt.Sprintf("%s by %d and %d", text(Path{at}), i, j)
			}
			assert.Equal(t, c.want, got)
		})
	}
}

func TestCrossingsLieOnBoth(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := anyPath(2).Draw(t, "a"), anyPath(2).Draw(t, "b")
		for _, c := range Crossings(NewTree(a), NewTree(b)) {
			onA, _ := a.At(c.A)
			onB, _ := b.At(c.B)
			assert.InDelta(t, 0, onA.Distance(c.At), 1e-6, "the place on the first path")
			assert.InDelta(t, 0, onB.Distance(c.At), 1e-6, "the place on the second path")
		}
	})
}

// A line through a corner meets both its sides there, to within rounding, and crosses
// once.
func TestCrossingAtACornerIsOne(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		at := Point{rapid.Float64Range(-500, 500).Draw(t, "x"), rapid.Float64Range(-500, 500).Draw(t, "y")}
		arm := func(name string, from, to float64) Point {
			sin, cos := math.Sincos(rapid.Float64Range(from, to).Draw(t, name))
			return Point{cos, sin}.Mul(rapid.Float64Range(1, 300).Draw(t, "length"))
		}
		line := Path{at.Sub(arm("line", -0.2, 0.2)), at}
		line[1] = line[0].Toward(at, 2)
		corner := Path{at.Add(arm("one side", 1, 2)), at, at.Sub(arm("other side", 1, 2))}
		assert.Len(t, Crossings(NewTree(line), NewTree(corner)), 1)
	})
}
