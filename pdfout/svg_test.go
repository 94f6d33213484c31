package pdfout_test

import (
	"bytes"
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/drawing"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/source"
	"tuckmark/pdfout"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/seen"
	"tuckmark/pdfout/sets"
)

// Rules of this file: what an SVG has is looked at as the way in reads it, which knows
// nothing of how it was written.

// cameBack bounds how far a line may lie, in mm, from where it lay before it went out.
const cameBack = 0.01

// asSVG is a set as an SVG.
func asSVG(t require.TestingT, set arrange.Set) []byte {
	var out bytes.Buffer
	summary, err := pdfout.DrawSVG(&out, set, seen.Paper(t, "single"))
	require.NoError(t, err)
	require.Equal(t, 1, summary.Pages)
	return out.Bytes()
}

// id is a name as the README says that it stands in an id.
func id(names ...string) string {
	return strings.NewReplacer(", ", "-", " ", "-").Replace(strings.Join(names, "."))
}

// inSVG are the lines of a role of a marking in a drawing, as they lie in the marking.
func inSVG(t require.TestingT, d *drawing.Drawing, m mark.Marking, role mark.Role) []drawing.Shape {
	all := plane.EmptyBox()
	for _, s := range d.Under(id(m.Key)) {
		all = all.Union(s.Path.Bounds())
	}
	// Rings reach round the points that they are for.
	if slices.ContainsFunc(m.Marks, func(one mark.Mark) bool { return one.Role == mark.Prick }) {
		all = plane.EmptyBox()
		for _, s := range d.Under(id(m.Key)) {
			if !s.In(id(m.Key, mark.Prick.String())) {
				all = all.Union(s.Path.Bounds())
			}
		}
	}
	lies := plane.EmptyBox()
	for _, l := range arrange.NewPiece(m).Lines {
		if l.Role != mark.Prick {
			lies = lies.Union(l.Bounds())
		}
	}
	require.InDelta(t, lies.Width(), all.Width(), cameBack, m.Key)
	require.InDelta(t, lies.Height(), all.Height(), cameBack, m.Key)
	var shapes []drawing.Shape
	for _, s := range d.Under(id(m.Key, role.String())) {
		s.Path = s.Path.Moved(lies.Min.Sub(all.Min))
		shapes = append(shapes, s)
	}
	return shapes
}

// cameIn says what of the lines of a marking is not in a drawing, or lies elsewhere; "" for
// nothing.
func cameIn(t require.TestingT, d *drawing.Drawing, m mark.Marking) string {
	for _, role := range mark.Roles() {
		var lines []plane.Path
		long := 0.0
		for _, one := range m.Marks {
			for _, l := range ink.LinesOf(one) {
				if one.Role == role && l.Length() > 0 {
					lines, long = append(lines, l), long+l.Length()
				}
			}
		}
		shapes := inSVG(t, d, m, role)
		if role == mark.Prick {
			if wrong := ringsAt(lines, shapes); wrong != "" {
				return m.Key + ": " + wrong
			}
			continue
		}
		for _, s := range shapes {
			long -= s.Path.Length()
		}
		if long < -cameBack*float64(len(lines)) || long > cameBack*float64(len(lines)) {
			return fmt.Sprintf("%s, %s: %g mm of lines are missing", m.Key, role, long)
		}
		for _, l := range lines {
			if !slices.ContainsFunc(shapes, func(s drawing.Shape) bool {
				return !slices.ContainsFunc(l, func(q plane.Point) bool { return sketch.Away(q, s.Path) > cameBack })
			}) {
				return fmt.Sprintf("%s, %s: no line lies where one lay: %v", m.Key, role, l)
			}
		}
	}
	return ""
}

// ringsAt says which of the points of some lines has no ring about it.
func ringsAt(lines []plane.Path, shapes []drawing.Shape) string {
	var middles plane.Path
	for _, s := range shapes {
		middles = append(middles, s.Path.Bounds().Centre())
	}
	points := slices.Concat(lines...)
	if len(points) != len(middles) {
		return fmt.Sprintf("%d rings about %d points", len(middles), len(points))
	}
	for _, q := range points {
		if !slices.ContainsFunc(middles, func(r plane.Point) bool { return r.Distance(q) <= cameBack }) {
			return fmt.Sprintf("no ring about %v", q)
		}
	}
	return ""
}

// Random pieces go out and come in again: every line, and the edges by their names.
func TestSVGComesInAgain(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		set, way := sets.Random(t)
		if len(set.Pieces) == 0 {
			t.Skip("nothing of it needs that")
		}
		d, err := drawing.Read("front.svg", asSVG(t, set))
		require.NoError(t, err)
		for _, m := range set.Pieces {
			require.Empty(t, cameIn(t, d, m))
		}
		if way == source.Trace {
			edgesComeIn(t, d, set.Pieces[0])
		}
	})
}

// edgesComeIn takes the edges of a piece out of a drawing, by their names.
func edgesComeIn(t require.TestingT, d *drawing.Drawing, m mark.Marking) {
	ask := drawing.Ask{Part: id(m.Key), Piece: m.Key}
	var went []plane.Path
	for _, one := range m.Marks {
		if ink.Bounding(one.Role) {
			ask.Edges, went = append(ask.Edges, one.Key), append(went, one.Path)
		}
	}
	took, fault := d.Take(ask)
	require.Nil(t, fault)
	corner := m.Outline.Bounds().Min
	for i, edge := range took.Edges {
		require.Len(t, edge, len(went[i]), ask.Edges[i])
		for k, q := range edge {
			require.Less(t, q.Distance(went[i][k].Sub(corner)), cameBack, "point %d of %s", k, ask.Edges[i])
		}
	}
}

// So do those of all examples, in every way in which lines come onto cloth, with rows of
// tucks, blocks, samples and rulers among them.
func TestSVGOfExamples(t *testing.T) {
	for _, way := range []source.Transfer{source.Trace, source.Template, source.Mirror, source.Prick} {
		for name, set := range sets.Examples(t, "../examples", way) {
			t.Run(fmt.Sprintf("%s %v", name, way), func(t *testing.T) {
				data := asSVG(t, set)
				assert.Equal(t, data, asSVG(t, set), "the same bytes for the same set")
				d, err := drawing.Read("front.svg", data)
				require.NoError(t, err)
				for _, m := range set.Pieces {
					assert.Empty(t, cameIn(t, d, m))
				}
			})
		}
	}
}

func TestSVGIsOnePage(t *testing.T) {
	_, err := pdfout.DrawSVG(&bytes.Buffer{}, sets.Few(), seen.Paper(t, "letter"))
	assert.ErrorContains(t, err, "an svg is one page")
}
