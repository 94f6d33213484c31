package pdfout

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/seen"
)

// keyDrawn draws a key with its upper left corner at a place of a page.
func keyDrawn(k keyDrawing, corner plane.Point) seen.Page {
	var c seen.Canvas
	c.NewPage(paper.Paper{Width: 300, Height: 300})
	k.draw(&c, corner)
	return c.Pages()[0]
}

// Whatever occurs, the key names it once and nothing else, within the room it asks for; no
// two texts touch.
func TestTheKeyNamesWhatOccurs(t *testing.T) {
	corner := plane.Point{X: 40, Y: 280}
	rapid.Check(t, func(t *rapid.T) {
		roles := rapid.SliceOfDistinct(rapid.SampledFrom(mark.Roles()), rapid.ID).Draw(t, "roles")
		b := &Book{roles: roles}
		width := rapid.Float64Range(70, 240).Draw(t, "width")
		k := b.key(width)
		p := keyDrawn(k, corner)
		var names []string
		box := plane.Box{Min: plane.Point{X: corner.X, Y: corner.Y - k.height()}, Max: plane.Point{X: corner.X + width, Y: corner.Y}}
		for i, r := range p.Texts {
			if len(r.Text) > 1 {
				names = append(names, r.Text)
			}
			require.Equal(t, 9.0, r.Size)
			require.True(t, box.Grown(1e-6).Holds(r.Box().Min) && box.Grown(1e-6).Holds(r.Box().Max), "%q leaves the key", r.Text)
			for _, other := range p.Texts[i+1:] {
				require.False(t, r.Box().Meets(other.Box()), "%q and %q", r.Text, other.Text)
			}
		}
		// A name may go on in a second line.
		said, long := strings.Join(names, " "), 0
		for _, role := range roles {
			require.Contains(t, said, role.String())
			long += len(role.String()) + 1
		}
		require.Equal(t, long, len(said)+min(1, len(roles)), "%q", said)
		for _, q := range p.Paths {
			for _, part := range q.Parts {
				for _, at := range part {
					require.True(t, box.Grown(1).Holds(at), "a line leaves the key at %v", at)
				}
			}
		}
	})
}

// Beside every name lies a line of its role, drawn with its pen, as far down as the name, with
// its heads, flags and letter.
func TestSamplesOfTheKey(t *testing.T) {
	b := &Book{roles: mark.Roles()}
	p := keyDrawn(b.key(90), plane.Point{X: 40, Y: 280})
	solids := map[mark.Role]int{mark.Arrow: 1, mark.Grain: 2, mark.Notch: 1, mark.Match: 1, mark.Cross: 4}
	for _, role := range mark.Roles() {
		pen := ink.PenOf(role)
		i := slices.IndexFunc(p.Texts, func(r seen.Text) bool { return r.Text == role.String() })
		require.GreaterOrEqual(t, i, 0, role)
		name := p.Texts[i]
		middle := name.At.Y + name.Style().Up()/2
		lines, filled := 0, 0
		for _, q := range p.Paths {
			for _, part := range q.Parts {
				if part[0].X > name.At.X {
					continue
				}
				box := part.Bounds()
				away := max(box.Min.Y-middle, middle-box.Max.Y)
				switch {
				case away < 1 && q.Painted == seen.Stroked && q.Width == pen.Width && q.Stroke == pen.Colour && fmt.Sprint(q.Dashes) == fmt.Sprint(pen.Dashes()):
					lines++
				case away < 5 && q.Painted == seen.Filled && q.Fill == pen.Colour:
					filled++
				}
			}
		}
		assert.Positive(t, lines, "no line of %v at its name", role)
		if n, has := solids[role]; has {
			assert.GreaterOrEqual(t, filled, min(n, 2), "heads or flags of %v", role)
		}
		if pen.Letter() != "" {
			assert.True(t, slices.ContainsFunc(p.Texts, func(r seen.Text) bool {
				return r.Text == pen.Letter() && math.Abs(r.Box().Centre().Y-middle) < 1 && r.At.X < name.At.X
			}), "the letter of %v", role)
		}
	}
}

// The trim line is shown where pages are joined.
func TestTrimLineInTheKey(t *testing.T) {
	k := keyDrawing{width: 90, columns: 1, joined: true}
	assert.Equal(t, []string{"trim line and join mark"}, keyDrawn(k, plane.Point{Y: 100}).Words())
	assert.Empty(t, keyDrawn(keyDrawing{width: 90, columns: 1}, plane.Point{Y: 100}).Words())
}

// In a narrow column a name goes on in a second line: none is cut, none touches another, and
// all lines stay within the height that is told.
func TestNamesOfTheKeyGoOnInANarrowColumn(t *testing.T) {
	k := (&Book{roles: mark.Roles()}).key(48)
	k.joined = true
	p := keyDrawn(k, plane.Point{X: 40, Y: 280})
	all := strings.Join(p.Words(), " ")
	for _, role := range mark.Roles() {
		assert.Contains(t, all, role.String())
	}
	assert.Contains(t, all, "trim line and join mark")
	assert.NotContains(t, all, "…")
	assert.NotContains(t, p.Words(), "trim line and join mark", "24 mm are too narrow for it")
	for i, r := range p.Texts {
		assert.GreaterOrEqual(t, r.Box().Min.Y, 280-k.height()-1e-6, r.Text)
		for _, other := range p.Texts[i+1:] {
			assert.False(t, r.Box().Meets(other.Box()), "%q and %q", r.Text, other.Text)
		}
	}
}
