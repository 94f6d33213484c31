package piece_test

import (
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// None of the drafts of children's garments may be refused, and each line is looked at
// place by place, with nothing of the code under test but the points of its lines.

func TestGarments(t *testing.T) {
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
				pattern, err := made.Pattern(sketch.Front(text))
				if err != nil && passedBy(t, text, err.Error()) {
					return
				}
				require.NoError(t, err, text)
				for _, e := range pattern.Pieces[0].Edges {
					require.Empty(t, lineFlaws(&pattern.Pieces[0], e), text)
				}
				require.Empty(t, cornerFlaws(&pattern.Pieces[0]), text)
				other, err := made.Pattern(sketch.Front(mirrored(text)))
				require.NoError(t, err, "the same piece for the other side of the body\n%s", text)
				for _, e := range pattern.Pieces[0].Edges {
					o := other.Pieces[0].Edges[other.Pieces[0].EdgeNumber(e.Key)]
					require.InDelta(t, e.Sewn.Length(), o.Sewn.Length(), 1e-6, "%s, mirrored\n%s", e.Key, text)
				}
			})
		})
	}
}

// mirrored returns a sketch whose points lie as far to the left as they lay to
// the right, and so run round it the other way.
func mirrored(text string) string {
	return regexp.MustCompile(` (-?)([\d.]+),`).ReplaceAllStringFunc(text, func(x string) string {
		if rest, negative := strings.CutPrefix(x, " -"); negative {
			return " " + rest
		}
		return " -" + x[1:]
	})
}

// lineFlaws says what is wrong with the line of an edge by itself, or "".
func lineFlaws(p *piece.Piece, e piece.Edge) string {
	for _, q := range sketch.Places(e.Sewn, 2) {
		if sketch.Away(q, e.Path) < e.Allowance-1e-6 {
			return fmt.Sprintf("%s: the seam lies %g mm from the edge at %v", e.Key, sketch.Away(q, e.Path), q)
		}
	}
	for _, q := range sketch.Places(e.Line, 2) {
		if !sketch.Within(q, p.Outline) && sketch.Away(q, p.Outline) > 0.05 {
			return fmt.Sprintf("%s: the line leaves the piece at %v", e.Key, q)
		}
	}
	return ""
}

// cornerFlaws says what is wrong where the lines of a piece meet, or "".
func cornerFlaws(p *piece.Piece) string {
	n := len(p.Edges)
	for i, e := range p.Edges {
		next := p.Edges[(i+1)%n]
		a, b := e.Path[len(e.Path)-2:], next.Path[:2]
		in, out := a[1].Sub(a[0]), b[1].Sub(b[0])
		degrees := math.Atan2(in.Cross(out), in.Dot(out)) * 180 / math.Pi
		end, start := e.Line[len(e.Line)-1], next.Line[0]
		// Unequal allowances may leave a step at a corner of less than 30 degrees.
		unequal := e.Allowance > 0 && next.Allowance > 0 && e.Allowance != next.Allowance
		holds := degrees > 30 || degrees > 8 && !unequal
		if holds {
			if d := sketch.Away(end, p.Outline); d > 1e-6 && (sketch.Away(end, next.Sewn) > 1e-6 || firstEdge(p, end, e.Line.EndDirection()) == next.Key) {
				return fmt.Sprintf("%s: its line ends %g mm from the cutting line of %s", e.Key, d, next.Key)
			}
			if d := sketch.Away(start, p.Outline); d > 1e-6 && (sketch.Away(start, e.Sewn) > 1e-6 || firstEdge(p, start, next.Line.StartDirection().Mul(-1)) == e.Key) {
				return fmt.Sprintf("%s: its line ends %g mm from the cutting line of %s", next.Key, d, e.Key)
			}
		}
		if gap := e.Sewn[len(e.Sewn)-1].Distance(next.Sewn[0]); gap > 0.05 && (holds || e.Allowance == next.Allowance) {
			return fmt.Sprintf("%s and %s: their seams end %g mm apart at a corner of %.1f degrees", e.Key, next.Key, gap, degrees)
		}
		for j, o := range p.Edges {
			if j == i || o.Allowance == 0 || e.Allowance == 0 {
				continue
			}
			for _, q := range sketch.Places(e.Sewn, 2) {
				if atStep(p, i, j, q) {
					continue
				}
				if sketch.Away(q, o.Path) < o.Allowance-0.05 {
					return fmt.Sprintf("the seam of %s lies in the allowance of %s at %v", e.Key, o.Key, q)
				}
			}
		}
	}
	return ""
}

// firstEdge returns which edge of a piece lies first in a direction from a place.
func firstEdge(p *piece.Piece, from, direction plane.Point) string {
	first, nearest := "", math.Inf(1)
	for _, e := range p.Edges {
		for i := 1; i < len(e.Path); i++ {
			a, step := e.Path[i-1].Sub(from), e.Path[i].Sub(e.Path[i-1])
			area := direction.Cross(step)
			far, share := a.Cross(step)/area, a.Cross(direction)/area
			if area != 0 && far > 1e-6 && far < nearest && share >= 0 && share <= 1 {
				first, nearest = e.Key, far
			}
		}
	}
	return first
}

// passedBy reports whether a piece was refused because a line inside a straight edge
// does not come out at the edge beside it, and it does not: looked for on the same
// piece without allowances.
func passedBy(t require.TestingT, text, refusal string) bool {
	words := regexp.MustCompile(`the allowance of "([^"]+)", .*, runs past "([^"]+)":`).FindStringSubmatch(refusal)
	if words == nil {
		return false
	}
	given := regexp.MustCompile(`(?m)^` + words[1] + `:.*allowance = ([\d.]+)`).FindStringSubmatch(text)
	require.NotNil(t, given, "%s", refusal)
	allowance, err := strconv.ParseFloat(given[1], 64)
	require.NoError(t, err)
	pattern, err := made.Pattern(sketch.Front(regexp.MustCompile(`(allowance|hem) = [\d.]+(; turn = [\d.]+)?`).ReplaceAllString(text, "allowance = 0")))
	require.NoError(t, err, "%s", text)
	p := &pattern.Pieces[0]
	i := p.EdgeNumber(words[1])
	e := p.Edges[i]
	if len(e.Path) != 2 {
		return false
	}
	along := e.Path.EndDirection()
	from, direction := e.Path[1], along
	if before, _ := p.Neighbours(i); p.Edges[before].Key == words[2] {
		from, direction = e.Path[0], along.Mul(-1)
	}
	// From far enough back to lie on the piece for certain.
	from = from.Add(along.Left().Mul(allowance * 25.4)).Sub(direction.Mul(allowance * 25.4))
	return firstEdge(p, from, direction) != words[2]
}

// atStep reports whether a place lies beside a step between two edges, where the seam
// of the narrower allowance passes the end of the other edge.
func atStep(p *piece.Piece, i, j int, q plane.Point) bool {
	n := len(p.Edges)
	for _, before := range []int{i, j} {
		e, next := p.Edges[before], p.Edges[(before+1)%n]
		if after := i + j - before; (before+1)%n != after || e.Sewn[len(e.Sewn)-1].Distance(next.Sewn[0]) < 0.05 {
			continue
		}
		if q.Distance(next.Path[0]) < max(e.Allowance, next.Allowance) {
			return true
		}
	}
	return false
}

// Single outlines that are hard on one rule or another.
const (
	// Half a neck to each side of a slit for a placket, which has a wide
	// facing on one side and a narrow hem on the other.
	slit = "hem: 0,0 6,0\nright: 6,0 6,8\ntop 1: 6,8 3.1,8 | allowance = 0.25\nslit 1: 3.1,8 3,4 | allowance = 0.25\n" +
		"slit 2: 3,4 2.9,8 | allowance = 1\ntop 2: 2.9,8 0,8 | allowance = 1\nleft: 0,8 0,0"

	// The bib of an apron between straps of 1 in, hemmed at its square neck.
	apron = "hem: 0,0 10,0\nside 1: 10,0 10,6\nunder 1: 10,6 8,6\narm 1: 8,6 8,12 | allowance = 0.25\nstrap 1: 8,12 7,12\n" +
		"neck 1: 7,12 7,7 | allowance = 0.25\nbib: 7,7 3,7 | hem = 0.75; turn = 0.25\nneck 2: 3,7 3,12 | allowance = 0.25\n" +
		"strap 2: 3,12 2,12\narm 2: 2,12 2,6 | allowance = 0.25\nunder 2: 2,6 0,6\nside 2: 0,6 0,0"

	// A collar whose outer edge turns in tightly at its ends.
	flatCollar = "neck: 0,0 0.9,-1.6 2.4,-2.4 4.1,-1.9 5,-0.4 | smooth = true; allowance = %[1]s\n" +
		"outer: 5,-0.4 6.3,0 6.9,-0.8 6.2,-2.6 4.6,-4 2.4,-4.4 0.2,-3.4 -1.5,-1.5 -1.6,-0.2 -0.8,0.3 0,0 | smooth = true; allowance = %[2]s"

	// A mitten with its thumb.
	mitten = "wrist: 0,0 3,0\nhand: 3,0 3.2,2 3.4,5 2.7,6.6 1.7,7 0.7,6.6 0.1,5 0,3.6 | smooth = true\n" +
		"thumb: 0,3.6 -0.9,4.4 -1.5,4.2 -1.3,3.2 -0.3,1.8 0,0 | smooth = true"

	// A bib with a curved strap that widens to its end.
	curvedStrap = "hem: 0,0 8,0\nside: 8,0 8,5\narm: 8,5 6,6 5.2,8 5,14 | smooth = true; allowance = 0\nstrap: 5,14 4,14 | allowance = 0.5\n" +
		"neck: 4,14 3.9,9 3,7.2 0,7 | smooth = true; allowance = 1\ncentre: 0,7 0,0"

	// A front with a step for buttons, shorter than the allowance beside it.
	buttonStand = "bottom: 0,0 10,0\nright: 10,0 10,8 | allowance = 1\nstand: 10,8 9.5,8 | allowance = 0.5\n" +
		"neck: 9.5,8 8,6.5 6,6.2 | smooth = true; allowance = 0\nshoulder: 6,6.2 0,7\nleft: 0,7 0,0"
)

func TestSewnPartsOfGarments(t *testing.T) {
	for _, c := range []struct {
		name, text, edge string
		want             float64 // inches
	}{
		// At a corner that turns by t the line at a meets the one at b
		// (a cos t - b) / sin t beyond the end of its edge (derived).
		{"a hem beside a narrow seam that rises by 30 degrees", "centre: 0,14 0,0\nflat: 0,0 8,0 | allowance = 2.25\n" +
			"rising: 8,0 16,4.618802 | allowance = 0.375\nside: 16,4.618802 16,14\ntop: 16,14 0,14", "flat", 8 + (2.25*math.Sqrt(3)/2-0.375)/0.5 - 0.375},
		{"the fold under a V neck", "fold = \"centre\"\ncentre: 0,0 0,8\nneck: 0,8 3,12\nshoulder: 3,12 5,11.4\nside: 5,11.4 6,0\nhem: 6,0 0,0",
			"centre", 8 - 0.375/0.6 - 0.375},
		{"a godet with a long point", "bottom: 0,0 2,0\nright: 2,0 1,12\nleft: 1,12 0,0", "right", math.Sqrt(145) - 0.375/math.Tan(math.Atan(1.0/12)) - 0.375/math.Tan(math.Atan(12)/2)},
		{"the narrow side of a slit", slit, "slit 1", math.Hypot(4, 0.1) - 0.25*math.Tan(math.Atan(40)/2)},
		{"a hemmed neck between straps", apron, "bib", 4 + 0.25 + 0.25},
		{"a strap beside a hemmed neck", apron, "strap 1", 0.5},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece := sketched(t, "0.375", c.text)
			assert.InDelta(t, c.want, piece.Edges[piece.EdgeNumber(c.edge)].Sewn.Length()/25.4, 0.001)
		})
	}
}

// A run-out beside a hollow that never reaches the other cutting line, or only
// the far side of its own edge, ends at its neighbour's line.
func TestRunOutAcrossACollar(t *testing.T) {
	p := sketched(t, "0", fmt.Sprintf(flatCollar, "0.625", "0.625"))
	outer, neck := p.Edges[p.EdgeNumber("outer")], p.Edges[p.EdgeNumber("neck")]
	for _, end := range []plane.Point{outer.Line[0], outer.Line[len(outer.Line)-1]} {
		assert.Less(t, sketch.Away(end, neck.Line), 1e-6, "the outer line ends at %v", end)
	}
	for _, q := range sketch.Places(outer.Line, 2) {
		assert.Greater(t, sketch.Away(q, outer.Path), outer.Allowance-1e-6, "at %v", q)
	}
}

func TestGarmentsThatCannotBeSewn(t *testing.T) {
	for _, c := range []struct{ name, allowance, text, want string }{
		{"a collar too narrow to turn in", "0", fmt.Sprintf(flatCollar, "0.375", "1"), "7: piece.front.edge.outer: the allowances of \"outer\" and \"neck\", 1 in and 3/8 in, leave nothing between them at (5 in, -3/8 in)\nhint: make the allowances narrower, or the piece wider there\n7: piece.front.edge.outer: the allowances of \"outer\" and \"neck\", 1 in and 3/8 in, leave nothing between them at (0 in, 0 in)\nhint: make the allowances narrower, or the piece wider there"},
		{"a corner rounded more tightly than its allowance", "0.375",
			"top: 4,5 0,5\nleft: 0,5 0,0.25\nround: 0,0.25 0.07,0.07 0.25,0 | smooth = true\nbottom: 0.25,0 4,0\nright: 4,0 4,5",
			"9: piece.front.edge.round: an allowance of 3/8 in leaves nothing of the piece along this edge\nhint: make it narrower, or make this curve part of the edge beside it; the allowance in line 1 is for every edge that gives none"},
		{"a thumb that is all seam", "0.5", mitten, "6: piece.front.edge.hand: the allowances of \"hand\" and \"thumb\", 1/2 in and 1/2 in, leave nothing between them at (7/16 in, 1 1/8 in)\nhint: make the allowances narrower, or the piece wider there; the allowance in line 1 is for every edge that gives none"},
		{"a strap within the allowance of the neck", "0.375", curvedStrap, "16: piece.front.edge.neck: the allowances of \"neck\" and \"strap\", 1 in and 1/2 in, leave nothing between them at (4 in, 14 in)\nhint: make the allowances narrower, or the piece wider there"},
		{"a step within the allowance of the front", "0.375", buttonStand, "6: piece.front.edge.right: the allowances of \"right\" and \"stand\", 1 in and 1/2 in, leave nothing between them at (10 in, 8 in)\nhint: make the allowances narrower, or the piece wider there"},
		{"a crown whose neck is all seam", "0", "round: 3.5,0 5.5,2 5.5,5 -0.5,5 -0.5,2 1.5,0 | allowance = 1\nneck: 1.5,0 3.5,0 | allowance = 0.25", "6: piece.front.edge.neck: the allowance of \"round\" leaves nothing of this edge, which is 2 in long, to be sewn\nhint: make their allowances narrower or this edge longer; a short edge may also be made part of the one beside it"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := made.Pattern("allowance = " + c.allowance + "\n" + sketch.Front(c.text))
			require.Error(t, err)
			assert.Equal(t, c.want, strings.ReplaceAll(err.Error(), "pinafore.toml:", ""))
		})
	}
}
