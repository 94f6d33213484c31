package piece_test

import (
	"fmt"
	"math"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// Garments as they are drafted, given as their stitch lines: each is sewn as it is drawn, and
// nothing of what is cut is nearer to that, or farther, than it should be. It is looked at
// place by place.
func TestGarmentsDrawnToTheStitching(t *testing.T) {
	for _, c := range []struct {
		name  string
		draft func(*rapid.T) string
	}{
		{"bodice", sketch.Bodice}, {"sleeve", sketch.Sleeve}, {"gore", sketch.Gore}, {"collar", sketch.Collar}, {"pocket", sketch.Pocket},
		{"raglan", sketch.Raglan}, {"gusset", sketch.Gusset},
	} {
		t.Run(c.name, func(t *testing.T) {
			rapid.Check(t, func(t *rapid.T) {
				text := c.draft(t)
				drawn, err := made.Pattern(sketch.Front(withoutAllowances(text)))
				require.NoError(t, err, text)
				pattern, err := made.Pattern(sketch.Front(netDrawn + text))
				require.NoError(t, err, text)
				p, outline := &pattern.Pieces[0], drawn.Pieces[0].Outline
				if p.OnFold {
					require.Greater(t, p.Outline.Bounds().Min.X, -1e-6, "nothing lies beyond the fold\n%s", text)
				}
				for _, e := range p.Edges {
					require.InDelta(t, drawn.Pieces[0].Edges[drawn.Pieces[0].EdgeNumber(e.Key)].Path.Length(), e.Sewn.Length(), 1e-9, "%s is sewn as it is drawn\n%s", e.Key, text)
					require.Empty(t, cutFlaws(p, e, outline), text)
				}
			})
		})
	}
}

func withoutAllowances(text string) string {
	return regexp.MustCompile(`(allowance|hem) = [\d.]+(; turn = [\d.]+)?`).ReplaceAllString(text, "allowance = 0")
}

// cutFlaws says what is wrong with the cutting line of an edge, or "".
func cutFlaws(p *piece.Piece, e piece.Edge, drawn plane.Path) string {
	// A hair beyond the allowance keep the joins of a curve that is drawn in short steps.
	const least, most = 1e-5, 0.02
	for _, q := range sketch.Places(e.Path, 3) {
		nearest, away := nearestGiven(p, q)
		if away < min(e.Allowance, nearest.Allowance)-least {
			return fmt.Sprintf("%s: it is cut %g mm from %s at %v", e.Key, away, nearest.Key, q)
		}
		if e.Allowance > 0 && !sketch.Within(q, drawn) && away > nearest.Allowance+most && besideInner(nearest, q) {
			return fmt.Sprintf("%s: it is cut %g mm from %s at %v, which lies beside no corner", e.Key, away, nearest.Key, q)
		}
		if sketch.Within(q, drawn) && away > least {
			return fmt.Sprintf("%s: it is cut inside the stitch lines at %v", e.Key, q)
		}
	}
	for _, q := range sketch.Places(e.Line, 3) {
		if !sketch.Within(q, p.Outline) && sketch.Away(q, p.Outline) > 1e-6 {
			return fmt.Sprintf("%s: the line leaves the piece at %v", e.Key, q)
		}
	}
	return ""
}

// nearestGiven returns the edge that is drawn nearest to a place, and how far that is; at a
// corner, that with the lesser allowance.
func nearestGiven(p *piece.Piece, q plane.Point) (nearest piece.Edge, away float64) {
	away = math.Inf(1)
	for _, e := range p.Edges {
		d := sketch.Away(q, e.Given)
		if math.Abs(d-away) < 1e-6 && e.Allowance > nearest.Allowance {
			continue
		}
		if d < away+1e-6 {
			nearest, away = e, d
		}
	}
	return nearest, away
}

// besideInner reports whether the place of an edge that is nearest to another is no corner
// of it.
func besideInner(e piece.Edge, q plane.Point) bool {
	at, _, _ := e.Given.Nearest(q)
	const corner = 10 * math.Pi / 180
	for i, c := range e.Given {
		if at.Distance(c) > 1e-6 {
			continue
		}
		if i == 0 || i == len(e.Given)-1 {
			return false
		}
		in, out := c.Sub(e.Given[i-1]), e.Given[i+1].Sub(c)
		if math.Abs(math.Atan2(in.Cross(out), in.Dot(out))) > corner {
			return false
		}
	}
	return true
}

// A piece whose cutting line was made, given by that line, has the stitch lines it was
// drawn with.
func TestCuttingLinesGivenBack(t *testing.T) {
	for _, c := range []struct {
		name     string
		draft    func(*rapid.T) string
		straight bool // at its corners
	}{
		{"bodice", sketch.Bodice, false}, {"sleeve", sketch.Sleeve, false}, {"gore", sketch.Gore, false},
		{"raglan", sketch.Raglan, false}, {"pocket", sketch.Pocket, true}, {"gusset", sketch.Gusset, true},
	} {
		t.Run(c.name, func(t *testing.T) {
			worst := 0.0
			rapid.Check(t, func(t *rapid.T) {
				text := c.draft(t)
				pattern, err := made.Pattern(sketch.Front(netDrawn + text))
				require.NoError(t, err, text)
				p := &pattern.Pieces[0]
				cut := asCut(p, text)
				back, err := made.Pattern(sketch.Front(cut))
				require.NoError(t, err, "%s\n%s", text, cut)
				for _, e := range p.Edges {
					o := back.Pieces[0].Edges[back.Pieces[0].EdgeNumber(e.Key)]
					for _, q := range sketch.Places(o.Sewn, 5) {
						// Toward its ends a curve is lengthened by its last steps, which are shorter
						// here than in the draft; of a hollow that meets the next edge slantingly the
						// cutting line has no more than part, and what is lengthened runs far past its end.
						at, _, _ := e.Line.Nearest(q)
						if e.Allowance == 0 || min(at.Distance(e.Given[0]), at.Distance(e.Given[len(e.Given)-1])) < 2*e.Allowance {
							continue
						}
						worst = max(worst, sketch.Away(q, e.Line))
						require.Less(t, sketch.Away(q, e.Line), 0.02, "%s, in mm, at %v\n%s", e.Key, q, text)
					}
					if c.straight {
						require.InDelta(t, e.Sewn.Length(), o.Sewn.Length(), 0.02, "%s is sewn as far\n%s", e.Key, text)
					}
				}
			})
			t.Logf("at most %.4f mm apart", worst)
		})
	}
}

// asCut writes the sketch of a piece by its cutting lines, point by point.
func asCut(p *piece.Piece, text string) string {
	var b strings.Builder
	for _, line := range strings.Split(text, "\n") {
		key, rest, isEdge := strings.Cut(line, ": ")
		if !isEdge {
			fmt.Fprintln(&b, line)
			continue
		}
		_, attributes, _ := strings.Cut(rest, "|")
		var points []string
		for _, q := range p.Edges[p.EdgeNumber(key)].Path {
			points = append(points, fmt.Sprintf("%.7f,%.7f", q.X/25.4, q.Y/25.4))
		}
		fmt.Fprintf(&b, "%s: %s |%s\n", key, strings.Join(points, " "), strings.ReplaceAll(attributes, "smooth = true;", ""))
	}
	return b.String()
}

// An outline that was traced, 1 mm from point to point and up to 0.1 mm off, is cut where
// the clean one is.
func TestCuttingLinesOfATracing(t *testing.T) {
	drafts := []func(*rapid.T) string{sketch.Bodice, sketch.Sleeve, sketch.Gore}
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.SampledFrom(drafts).Draw(t, "draft")(t)
		clean, err := made.Pattern(sketch.Front(netDrawn + text))
		require.NoError(t, err, text)
		rough := netDrawn + traced(t, &clean.Pieces[0], text)
		pattern, err := made.Pattern(sketch.Front(rough))
		require.NoError(t, err, text)
		of := &clean.Pieces[0]
		for _, e := range pattern.Pieces[0].Edges {
			for _, q := range sketch.Places(e.Path, 5) {
				nearest, away := nearestGiven(of, q)
				// The tracing is off by 0.1 mm, and a lengthened end by 0.2 more.
				require.Greater(t, away, min(e.Allowance, nearest.Allowance)-0.3, "%s, in mm, at %v\n%s", e.Key, q, text)
				// Past its corner a line is as true as the last steps of its edge are.
				require.Less(t, sketch.Away(q, of.Outline), 2.0, "%s, in mm, at %v\n%s", e.Key, q, text)
			}
		}
	})
}

// traced writes the sketch of a piece with its edges as a hand traces them.
func traced(t *rapid.T, p *piece.Piece, text string) string {
	var b strings.Builder
	for _, line := range strings.Split(text, "\n") {
		key, rest, isEdge := strings.Cut(line, ": ")
		if !isEdge {
			fmt.Fprintln(&b, line)
			continue
		}
		_, attributes, _ := strings.Cut(rest, "|")
		e := p.Edges[p.EdgeNumber(key)]
		places := sketch.Places(e.Given, 1)
		var points []string
		last := places[0]
		for i, q := range places {
			off := plane.Point{}
			if i > 0 && i < len(places)-1 && !e.OnFold {
				if q.Distance(last) < 0.7 {
					continue
				}
				last = q
				off.X, off.Y = rapid.Float64Range(-0.07, 0.07).Draw(t, "x"), rapid.Float64Range(-0.07, 0.07).Draw(t, "y")
			}
			points = append(points, fmt.Sprintf("%.6f,%.6f", (q.X+off.X)/25.4, (q.Y+off.Y)/25.4))
		}
		fmt.Fprintf(&b, "%s: %s |%s\n", key, strings.Join(points, " "), strings.ReplaceAll(attributes, "smooth = true;", ""))
	}
	return b.String()
}
