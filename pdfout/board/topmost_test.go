package board

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// A straight edge with a pleat in it runs there, back and there again: it is drawn once. Where it runs
// back at a slant, or farther than what lies over it, nothing is left out, and no line but cut edges is.
func TestEdgesThatLieOnEachOther(t *testing.T) {
	edge := func(key string, x ...float64) mark.Mark {
		m := mark.Mark{Role: mark.Cut, Key: key}
		for i := 0; i < len(x); i += 2 {
			m.Path = append(m.Path, plane.Point{X: x[i], Y: x[i+1]})
		}
		return m
	}
	fold := edge("fold", 20, 0, 30, 0)
	fold.Role = mark.Fold
	for _, c := range []struct {
		name  string
		marks []mark.Mark
		left  []string
	}{
		{"there and back", []mark.Mark{edge("a", 0, 0, 20, 0), edge("b", 20, 0, 30, 0), edge("c", 30, 0, 20, 0), edge("d", 20, 0, 60, 0)}, []string{"a", "d"}},
		{"at a slant", []mark.Mark{edge("a", 20, 0, 30, 0), edge("b", 30, 0, 20, 1), edge("c", 20, 0, 30, 2)}, []string{"a", "b", "c"}},
		{"farther", []mark.Mark{edge("a", 10, 0, 30, 0), edge("b", 20, 0, 60, 0)}, []string{"a", "b"}},
		{"round a corner", []mark.Mark{edge("a", 20, 0, 30, 0, 30, 9), edge("b", 0, 0, 30, 0), edge("c", 30, 20, 30, 0)}, []string{"b", "c"}},
		{"other lines", []mark.Mark{fold, edge("b", 0, 0, 60, 0), edge("none")}, []string{"fold", "b", "none"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			var left []string
			for _, m := range topmost(c.marks) {
				left = append(left, m.Key)
			}
			assert.Equal(t, c.left, left)
		})
	}
}
