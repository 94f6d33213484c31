package pdfout

import (
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/seen"
	"tuckmark/pdfout/sets"
)

// On one page every join has its two marks, and no other join has its number.
func checkJoinNumbers(t require.TestingT, set arrange.Set, d seen.Document, s Summary) {
	for i, p := range d.Pages[inFront(s):] {
		times := map[int]int{}
		for _, m := range p.JoinMarks(t) {
			times[m.Number]++
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
func checkTrimLines(t require.TestingT, set arrange.Set, d seen.Document, s Summary) {
	for _, sheet := range s.Sheets {
		laid, _ := d.JoinUp(t, sheet.First, sheet.Last)
		numbers := map[int]bool{}
		for i, p := range laid {
			marks := p.JoinMarks(t)
			before := i == 0
			middle := p.Page.Window().Centre()
			for _, m := range marks {
				before = before || numbers[m.Number]
				along, across := func(q plane.Point) float64 { return q.X }, func(q plane.Point) float64 { return q.Y }
				toCut := m.At.Y > middle.Y
				if m.Upright {
					along, across = across, along
					toCut = m.At.X < middle.X
				}
				lines, ends := 0, 0
				for _, q := range p.Paths {
					if q.Layer != "" || q.Painted != seen.Stroked || len(q.Parts) != 1 || len(q.Parts[0]) != 2 || q.Curves > 0 {
						continue
					}
					a, z := q.Parts[0][0], q.Parts[0][1]
					if math.Abs(across(a)-across(m.At)) > 3*seen.Written || math.Abs(across(z)-across(m.At)) > 3*seen.Written {
						continue
					}
					switch reach := math.Abs(along(a) - along(z)); {
					case reach > 50:
						lines++
					case math.Abs(reach-4) < 4*seen.Written:
						ends++
					}
				}
				if toCut {
					assert.Equal(t, 1, lines, "page %d, join %d: it is cut here", p.Number, m.Number)
				} else {
					assert.Zero(t, lines, "page %d, join %d: it is not cut here", p.Number, m.Number)
					assert.GreaterOrEqual(t, ends, 2, "page %d, join %d: corners where the next page comes to lie", p.Number, m.Number)
				}
			}
			for _, m := range marks {
				numbers[m.Number] = true
			}
			assert.True(t, before, "page %d is joined to none before it", p.Number)
		}
	}
}

// checkJoinNames: at each of its joins a page names the one that is joined there, once, and
// outside its trim line, where nothing is traced.
func checkJoinNames(t require.TestingT, set arrange.Set, d seen.Document, s Summary) {
	for _, sheet := range s.Sheets {
		laid, _ := d.JoinUp(t, sheet.First, sheet.Last)
		marks := map[int][]int{} // the numbers of the joins of each page
		for _, p := range laid {
			for _, m := range p.JoinMarks(t) {
				marks[p.Number] = append(marks[p.Number], m.Number)
			}
		}
		for _, p := range laid {
			names := p.JoinNames()
			for _, o := range laid {
				joined := o.Number != p.Number && slices.ContainsFunc(marks[o.Number], func(n int) bool { return slices.Contains(marks[p.Number], n) })
				at, named := names[o.Number]
				require.Equal(t, joined, named, "page %d names page %d", p.Number, o.Number)
				if !named {
					continue
				}
				at = at.Add(p.Step)
				assert.False(t, p.Core.Holds(at), "page %d names page %d within its trim lines", p.Number, o.Number)
				assert.True(t, o.Core.Holds(at), "page %d names page %d at another side", p.Number, o.Number)
			}
			assert.LessOrEqual(t, len(names), 4, "page %d", p.Number)
		}
	}
}

// No join of the whole set has the number of another.
func TestJoinNumbersOfAllSheets(t *testing.T) {
	set := sets.Large()
	second := sample.Skirt()
	second.Key, second.Name = "again", "Again"
	set.Pieces = append(set.Pieces, second)
	d, s := drawn(t, set, "letter")
	require.Greater(t, len(s.Sheets), 1)
	on := map[int]int{}
	for i, sheet := range s.Sheets {
		for n := sheet.First; n <= sheet.Last; n++ {
			for _, m := range d.Pages[n-1].JoinMarks(t) {
				if was, known := on[m.Number]; known {
					assert.Equal(t, was, i, "join %d is on two sheets", m.Number)
				}
				on[m.Number] = i
			}
		}
	}
	assert.Greater(t, len(on), 4)
}
