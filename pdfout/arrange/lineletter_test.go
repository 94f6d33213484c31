package arrange

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/text"
)

// letteredPiece lays a piece on pages of a size and letters it.
func letteredPiece(m mark.Marking, rows, columns int, window plane.Point) *Sheet {
	p := NewPiece(m)
	p = p.Moved(plane.Point{X: Spare, Y: Spare}.Sub(p.Bounds.Min))
	grid := Grid{Rows: rows, Columns: columns, Window: window, Overlap: 15}
	var cells []Cell
	for r := range rows {
		for c := range columns {
			cells = append(cells, Cell{r, c})
		}
	}
	s := NewSheet([]Piece{p}, grid, cells)
	if rows*columns > 1 {
		s.FindJoins(1)
	}
	s.Letter()
	return &s
}

// A letter lies on its line; its gap is a good way from the line's ends and corners and from
// every other line, and on one page clear of its joins.
func TestLettersStandInTheirLines(t *testing.T) {
	for name, m := range map[string]mark.Marking{"bodice": sample.Bodice(), "skirt": sample.Skirt(), "rectangle": sample.Rectangle("", "Sail", 300, 240)} {
		t.Run(name, func(t *testing.T) {
			s := letteredPiece(m, 3, 2, plane.Point{X: 250, Y: 260})
			require.NotEmpty(t, s.Letters)
			for _, l := range s.Letters {
				var own []Line
				gap := l.Room
				gap.Half.X += 2
				for _, line := range s.Pieces[0].Lines {
					switch {
					case line.Role == l.Role && line.Distance(l.At, 1) < 1e-6:
						own = append(own, line)
					default:
						assert.Zero(t, segmentsIn(line.Tree, gap), "a %s at the %v's letter at %v", line.Role, l.Role, l.At)
					}
				}
				require.Len(t, own, 1, "it lies on one line of its role")
				path := own[0].Path()
				assert.Greater(t, path[0].Distance(l.At), 5.0, "at an end")
				assert.Greater(t, path[len(path)-1].Distance(l.At), 5.0, "at an end")
				assert.True(t, s.Whole(l.Room.Bounds()))
				for _, half := range []float64{-1, 1} {
					end := l.At.Add(l.U.Mul(half * l.Room.Half.X))
					assert.Less(t, own[0].Distance(end, 1), 0.5, "the line bends in the gap at %v", l.At)
				}
			}
		})
	}
}

// Letters come every so often, at even distances; a short line has none, and a role without
// a letter neither.
func TestHowManyLettersALineHas(t *testing.T) {
	for _, c := range []struct {
		name string
		role mark.Role
		long float64
		want int
	}{
		{"a short line", mark.Stitch, 45, 0},
		{"a line of a hand", mark.Stitch, 80, 1},
		{"twice as long", mark.Fold, 220, 2},
		{"long", mark.Centre, 440, 4},
		{"an edge on the fold", mark.FoldEdge, 220, 2},
		{"a cutting line", mark.Cut, 440, 0},
		{"a tuck", mark.TuckFold, 440, 0},
	} {
		m := mark.Marking{Name: "A", Outline: plane.Box{Max: plane.Point{X: 460, Y: 200}}.Outline()}
		m.Add(c.role, "", plane.Path{{X: 10, Y: 20}, {X: 10 + c.long, Y: 20}})
		s := letteredPiece(m, 1, 1, plane.Point{X: 480, Y: 220})
		require.Len(t, s.Letters, c.want, c.name)
		for i, l := range s.Letters {
			assert.Equal(t, text.Across(), l.U, c.name)
			if i > 0 {
				assert.InDelta(t, c.long/float64(c.want), l.At.X-s.Letters[i-1].At.X, 1e-6, c.name)
			}
		}
	}
	for role, want := range map[mark.Role]string{mark.Stitch: "S", mark.Fold: "F", mark.Centre: "C", mark.FoldEdge: "P", mark.Cut: "", mark.Grain: ""} {
		assert.Equal(t, want, ink.PenOf(role).Letter(), role)
	}
}
