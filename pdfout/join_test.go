package pdfout

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking"
	"tuckmark/marking/plane"
)

// On one page every join has its two marks, and no other join has its number.
func checkJoinNumbers(t require.TestingT, set Set, d readDocument, s Summary) {
	for i, p := range d.pages[inFront(s):] {
		times := map[int]int{}
		for _, m := range p.joinMarks(t) {
			times[m.number]++
		}
		for number, k := range times {
			assert.Equal(t, 2, k, "page %d, join %d", inFront(s)+i+1, number)
		}
	}
}

// checkTrimLines: a page is cut along a line through its join marks at its left and
// at its top, and at no other side; at the other sides it has a corner at each end
// of the join, 4 mm long, and no line. Pages come in the order in which they are laid: each
// after the first is joined to one before it.
func checkTrimLines(t require.TestingT, set Set, d readDocument, s Summary) {
	for _, sheet := range s.Sheets {
		laid, _ := joinUp(t, d, sheet)
		numbers := map[int]bool{}
		for i, p := range laid {
			marks := p.joinMarks(t)
			before := i == 0
			middle := p.readPage.window().Centre()
			for _, m := range marks {
				before = before || numbers[m.number]
				along, across := func(q plane.Point) float64 { return q.X }, func(q plane.Point) float64 { return q.Y }
				toCut := m.at.Y > middle.Y
				if m.upright {
					along, across = across, along
					toCut = m.at.X < middle.X
				}
				lines, ends := 0, 0
				for _, q := range p.paths {
					if q.layer != "" || q.painted != "S" || len(q.parts) != 1 || len(q.parts[0]) != 2 || q.curves > 0 {
						continue
					}
					a, z := q.parts[0][0], q.parts[0][1]
					if math.Abs(across(a)-across(m.at)) > 3*written || math.Abs(across(z)-across(m.at)) > 3*written {
						continue
					}
					switch reach := math.Abs(along(a) - along(z)); {
					case reach > 50:
						lines++
					case math.Abs(reach-4) < 4*written:
						ends++
					}
				}
				if toCut {
					assert.Equal(t, 1, lines, "page %d, join %d: it is cut here", p.number, m.number)
				} else {
					assert.Zero(t, lines, "page %d, join %d: it is not cut here", p.number, m.number)
					assert.GreaterOrEqual(t, ends, 2, "page %d, join %d: corners where the next page comes to lie", p.number, m.number)
				}
			}
			for _, m := range marks {
				numbers[m.number] = true
			}
			assert.True(t, before, "page %d is joined to none before it", p.number)
		}
	}
}

// Join marks lie at a quarter and at three quarters of a join; where a line runs there,
// beside it.
func TestJoinMarksKeepOffLines(t *testing.T) {
	const pageSide, overlap = 200.0, 10.0
	join := pageSide - overlap/2
	for _, c := range []struct {
		name   string
		across []float64 // where up the join lines cross it
		want   []float64 // where up it the marks lie
	}{
		{"no line", nil, []float64{50, 150}},
		{"a line at a quarter", []float64{50}, []float64{44, 150}},
		{"lines at a quarter and under it", []float64{44, 50}, []float64{56, 150}},
		{"a line at three quarters", []float64{151}, []float64{50, 144}},
	} {
		p := newPiece(rectangle("p", "P", 2*pageSide, pageSide))
		p.lines = nil
		for _, y := range c.across {
			p.lines = append(p.lines, newLine(marking.Cut, "", plane.Path{{X: 0, Y: y}, {X: 2 * pageSide, Y: y}}))
		}
		s := newSheet([]piece{p}, grid{rows: 1, columns: 2, window: plane.Point{X: pageSide, Y: pageSide}, overlap: overlap}, []cell{{0, 0}, {0, 1}})
		s.findJoins(1)
		require.Len(t, s.joins, 1, c.name)
		for i, m := range s.joins[0].marks {
			assert.InDelta(t, join, m.X, 1e-9, c.name)
			assert.InDelta(t, c.want[i], m.Y, 1e-9, c.name)
		}
	}
}

// No join of the whole set has the number of another.
func TestJoinNumbersOfAllSheets(t *testing.T) {
	set := large()
	second := skirt()
	second.Key, second.Name = "again", "Again"
	set.Pieces = append(set.Pieces, second)
	d, s := drawn(t, set, "letter")
	require.Greater(t, len(s.Sheets), 1)
	on := map[int]int{}
	for i, sheet := range s.Sheets {
		for n := sheet.First; n <= sheet.Last; n++ {
			for _, m := range d.pages[n-1].joinMarks(t) {
				if was, known := on[m.number]; known {
					assert.Equal(t, was, i, "join %d is on two sheets", m.number)
				}
				on[m.number] = i
			}
		}
	}
	assert.Greater(t, len(on), 4)
}

func TestGluingOrder(t *testing.T) {
	for _, c := range []struct {
		name  string
		cells []cell
		want  []cell
	}{
		{"a whole grid, row by row", []cell{{1, 1}, {0, 1}, {1, 0}, {0, 0}}, []cell{{0, 0}, {0, 1}, {1, 0}, {1, 1}}},
		{"both arms of a U", []cell{{0, 0}, {0, 2}, {1, 0}, {1, 1}, {1, 2}}, []cell{{0, 0}, {1, 0}, {1, 1}, {1, 2}, {0, 2}}},
		{"from the right", []cell{{0, 1}, {1, 0}, {1, 1}}, []cell{{0, 1}, {1, 1}, {1, 0}}},
		{"what hangs together with nothing comes last", []cell{{0, 0}, {2, 2}, {0, 1}}, []cell{{0, 0}, {0, 1}, {2, 2}}},
		{"none", nil, nil},
	} {
		assert.Equal(t, c.want, gluingOrder(c.cells), c.name)
	}
	u := newSheet(nil, grid{rows: 2, columns: 3, window: plane.Point{X: 190, Y: 250}, overlap: 10}, []cell{{0, 0}, {0, 2}, {1, 0}, {1, 1}, {1, 2}})
	u.findJoins(1)
	assert.True(t, u.slips(), "the second arm goes under its foot")
	whole := newSheet(nil, grid{rows: 2, columns: 2, window: plane.Point{X: 190, Y: 250}, overlap: 10}, []cell{{0, 0}, {0, 1}, {1, 0}, {1, 1}})
	whole.findJoins(1)
	assert.False(t, whole.slips())
}
