package arrange

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/plane"
)

func TestConnected(t *testing.T) {
	assert.True(t, connected(nil))
	assert.True(t, connected([]Cell{{2, 3}}))
	assert.True(t, connected([]Cell{{0, 0}, {0, 1}, {1, 1}}))
	assert.False(t, connected([]Cell{{0, 0}, {1, 1}}), "corner to corner")
}

func TestBridged(t *testing.T) {
	for _, c := range []struct {
		name  string
		cells []Cell
		want  []Cell
	}{
		{"none", nil, nil},
		{"one", []Cell{{2, 3}}, []Cell{{2, 3}}},
		{"side by side", []Cell{{0, 0}, {0, 1}}, []Cell{{0, 0}, {0, 1}}},
		{"corner to corner", []Cell{{0, 0}, {1, 1}}, []Cell{{0, 0}, {0, 1}, {1, 1}}},
		{"far apart", []Cell{{0, 0}, {0, 3}}, []Cell{{0, 0}, {0, 1}, {0, 2}, {0, 3}}},
	} {
		assert.Equal(t, c.want, bridged(c.cells), c.name)
	}
	rapid.Check(t, func(t *rapid.T) {
		seen := map[Cell]bool{}
		for range rapid.IntRange(1, 15).Draw(t, "cells") {
			seen[Cell{rapid.IntRange(0, 8).Draw(t, "row"), rapid.IntRange(0, 8).Draw(t, "column")}] = true
		}
		var cells []Cell
		for c := range seen {
			cells = append(cells, c)
		}
		all := bridged(readingOrder(cells))
		has := map[Cell]int{}
		for _, c := range all {
			has[c]++
			require.Equal(t, 1, has[c], "twice: %v", c)
		}
		for c := range seen {
			require.Contains(t, has, c)
		}
		// All can be reached from the first, side by side.
		reached := map[Cell]bool{all[0]: true}
		for queue := []Cell{all[0]}; len(queue) > 0; queue = queue[1:] {
			for _, d := range []Cell{{0, 1}, {0, -1}, {1, 0}, {-1, 0}} {
				next := Cell{queue[0].Row + d.Row, queue[0].Column + d.Column}
				if has[next] > 0 && !reached[next] {
					reached[next] = true
					queue = append(queue, next)
				}
			}
		}
		require.Len(t, reached, len(all))
	})
}

func TestGluingOrder(t *testing.T) {
	for _, c := range []struct {
		name  string
		cells []Cell
		want  []Cell
	}{
		{"a whole grid, row by row", []Cell{{1, 1}, {0, 1}, {1, 0}, {0, 0}}, []Cell{{0, 0}, {0, 1}, {1, 0}, {1, 1}}},
		{"both arms of a U", []Cell{{0, 0}, {0, 2}, {1, 0}, {1, 1}, {1, 2}}, []Cell{{0, 0}, {1, 0}, {1, 1}, {1, 2}, {0, 2}}},
		{"from the right", []Cell{{0, 1}, {1, 0}, {1, 1}}, []Cell{{0, 1}, {1, 1}, {1, 0}}},
		{"what hangs together with nothing comes last", []Cell{{0, 0}, {2, 2}, {0, 1}}, []Cell{{0, 0}, {0, 1}, {2, 2}}},
		{"none", nil, nil},
	} {
		assert.Equal(t, c.want, gluingOrder(c.cells), c.name)
	}
	u := NewSheet(nil, Grid{Rows: 2, Columns: 3, Window: plane.Point{X: 190, Y: 250}, Overlap: 10}, []Cell{{0, 0}, {0, 2}, {1, 0}, {1, 1}, {1, 2}})
	u.FindJoins(1)
	assert.True(t, u.Slips(), "the second arm goes under its foot")
	whole := NewSheet(nil, Grid{Rows: 2, Columns: 2, Window: plane.Point{X: 190, Y: 250}, Overlap: 10}, []Cell{{0, 0}, {0, 1}, {1, 0}, {1, 1}})
	whole.FindJoins(1)
	assert.False(t, whole.Slips())
}
