package pdfout

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/sample"
)

// On one page every join has its two marks, and no other join has its number.
func checkJoinNumbers(t require.TestingT, set arrange.Set, d readDocument, s Summary) {
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
func checkTrimLines(t require.TestingT, set arrange.Set, d readDocument, s Summary) {
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

// No join of the whole set has the number of another.
func TestJoinNumbersOfAllSheets(t *testing.T) {
	set := large()
	second := sample.Skirt()
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
