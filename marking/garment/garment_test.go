package garment

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
)

// Outlines as they are drafted for children, of any sensible measures: none of
// them may be refused, and each line is looked at place by place, with nothing
// of the code under test but the points of its lines. The measures are common
// practice.

// draft draws the measures of a garment, to an eighth of an inch.
type draft struct{ *rapid.T }

func (d draft) inches(name string, least, most float64) float64 {
	return float64(rapid.IntRange(int(least*8), int(most*8)).Draw(d.T, name)) / 8
}

// seam draws the allowance of an edge.
func (d draft) seam(edge string) string {
	return "allowance = " + rapid.SampledFrom([]string{"0", "0.25", "0.375", "0.5", "0.625"}).Draw(d.T, "allowance of the "+edge)
}

// hem draws the hem of an edge.
func (d draft) hem(most float64) string {
	return fmt.Sprintf("hem = %g; turn = 0.25", d.inches("hem", 0.5, most))
}

// bodice drafts half a front: its neck round, pointed or square, its side
// straight, its hem level or slanted.
func bodice(d draft) string {
	length, chest := d.inches("length", 8, 14), d.inches("chest", 6, 8)
	wide, deep := d.inches("width of the neck", 2, 2.75), d.inches("depth of the neck", 1.5, 3.5)
	slope, shoulder := d.inches("slope of the shoulder", 0.5, 1), d.inches("shoulder", 1.75, 2.5)
	drop := d.inches("depth of the armhole", 3.5, 4.5)
	flare, dip := d.inches("flare", -0.5, 2), d.inches("dip of the hem", 0, 0.5)
	tip := wide + shoulder
	neck := map[string]string{
		"round":  fmt.Sprintf("0,%g %g,%g %g,%g %g,%g | smooth = true; ", length-deep, wide/2, length-deep*0.87, wide*0.87, length-deep/2, wide, length),
		"V":      fmt.Sprintf("0,%g %g,%g | ", length-deep, wide, length),
		"square": fmt.Sprintf("0,%g %g,%g %g,%g | ", length-deep, wide, length-deep, wide, length),
	}[rapid.SampledFrom([]string{"round", "V", "square"}).Draw(d.T, "neck")]
	under := length - drop
	return fmt.Sprintf("fold = \"centre\"\ncentre: 0,0 0,%g\nneck: %s%s\nshoulder: %g,%g %g,%g | %s\n"+
		"armhole: %g,%g %g,%g %g,%g %g,%g | smooth = true; %s\nside: %g,%g %g,%g | %s\nhem: %g,%g 0,0 | %s",
		length-deep, neck, d.seam("neck"), wide, length, tip, length-slope, d.seam("shoulder"),
		tip, length-slope, tip-0.25, under+drop/2.5, tip+(chest-tip)/3, under+0.375, chest, under, d.seam("armhole"),
		chest, under, chest+flare, dip, d.seam("side"), chest+flare, dip, d.hem(2))
}

// sleeve drafts a sleeve with a flat or a high cap.
func sleeve(d draft) string {
	width, long := d.inches("width", 7, 11), d.inches("underarm", 4, 8)
	cap, taper := d.inches("height of the cap", 0.75, 4), d.inches("taper", -1, 1.5)
	var points []string
	for k := range 9 { // from the right underarm over the cap
		share := float64(k) / 8
		points = append(points, fmt.Sprintf("%.4f,%.4f", width*(1-share), long+cap*(1-math.Cos(2*math.Pi*share))/2))
	}
	return fmt.Sprintf("hem: %g,0 %g,0 | %s\nfront: %g,0 %s | %s\ncap: %s | smooth = true; %s\nback: %s %g,0 | %s",
		taper, width-taper, d.hem(1.5), width-taper, points[0], d.seam("underarm"),
		strings.Join(points, " "), d.seam("cap"), points[8], taper, d.seam("underarm"))
}

// gore drafts a gore of a skirt with a hollow waist and a round hem.
func gore(d draft) string {
	waist, long, flare := d.inches("waist", 2.5, 6), d.inches("length", 10, 20), d.inches("flare", 0, 4)
	rise := flare * (waist/2 + flare) / long / 2 // so that the hem meets the sides about square
	half := waist / 2
	return fmt.Sprintf("waist: %g,%g 0,%g %g,%g | smooth = true; %s\nleft: %g,%g %g,%.4f | %s\n"+
		"hem: %g,%.4f 0,0 %g,%.4f | smooth = true; %s\nright: %g,%.4f %g,%g | %s",
		half, long, long-0.125, -half, long, d.seam("waist"), -half, long, -half-flare, rise, d.seam("side"),
		-half-flare, rise, half+flare, rise, d.hem(2.5), half+flare, rise, half, long, d.seam("side"))
}

// collar drafts a flat collar between two round lines, its ends square to them.
func collar(d draft) string {
	inner, wide := d.inches("radius", 2, 3), d.inches("width", 1.75, 3)
	sweep := float64(rapid.IntRange(60, 170).Draw(d.T, "sweep"))
	arc := func(radius, from, to float64) string {
		var points []string
		for k := range 7 {
			sin, cos := math.Sincos((from + (to-from)*float64(k)/6) * math.Pi / 180)
			points = append(points, fmt.Sprintf("%.4f,%.4f", radius*cos, radius*sin))
		}
		return strings.Join(points, " ")
	}
	in, out := arc(inner, sweep, 0), arc(inner+wide, 0, sweep)
	ends := func(path string) (first, last string) {
		points := strings.Fields(path)
		return points[0], points[len(points)-1]
	}
	innerLast, innerFirst := ends(in)
	outerFirst, outerLast := ends(out)
	return fmt.Sprintf("neck: %s | smooth = true; %s\nfront: %s %s | %s\nouter: %s | smooth = true; %s\nback: %s %s | %s",
		in, d.seam("neck"), innerFirst, outerFirst, d.seam("front"), out, d.seam("outer"), outerLast, innerLast, d.seam("back"))
}

// raglan drafts a raglan sleeve: two long hollow edges that come up to a short
// neck.
func raglan(d draft) string {
	width, long, out := d.inches("width", 8, 10), d.inches("underarm", 4, 8), d.inches("spread", 0, 1)
	high, neck, dip := d.inches("height of the raglan", 5, 8), d.inches("neck", 2.25, 3.5), d.inches("dip of the neck", 0.125, 0.5)
	middle, top := width/2, long+high
	// A third and two thirds of the way up, hollowed by a quarter inch.
	up := func(side, share float64) string {
		x := middle + side*(middle+out+(neck/2-middle-out)*share-0.25)
		return fmt.Sprintf("%.4f,%.4f", x, long+high*share)
	}
	return fmt.Sprintf("hem: 0,0 %g,0 | %s\nunder 1: %g,0 %g,%g | %s\nraglan 1: %g,%g %s %s %g,%g | smooth = true; %s\n"+
		"neck: %g,%g %g,%g %g,%g | smooth = true; %s\nraglan 2: %g,%g %s %s %g,%g | smooth = true; %s\nunder 2: %g,%g 0,0 | %s",
		width, d.hem(1.5), width, width+out, long, d.seam("underarm"),
		width+out, long, up(1, 1.0/3), up(1, 2.0/3), middle+neck/2, top, d.seam("front raglan"),
		middle+neck/2, top, middle, top-dip, middle-neck/2, top, d.seam("neck"),
		middle-neck/2, top, up(-1, 2.0/3), up(-1, 1.0/3), -out, long, d.seam("back raglan"), -out, long, d.seam("underarm"))
}

// gusset drafts a diamond to be set under an arm.
func gusset(d draft) string {
	wide, high := d.inches("half the width", 1.25, 2), d.inches("half the height", 1.25, 3.5)
	return fmt.Sprintf("a: 0,%g %g,0 | %s\nb: %g,0 0,%g | %s\nc: 0,%g %g,0 | %s\nd: %g,0 0,%g | %s",
		-high, wide, d.seam("a"), wide, high, d.seam("b"), high, -wide, d.seam("c"), -wide, -high, d.seam("d"))
}

// pocket drafts a pocket with round or clipped lower corners, in one edge or
// in five.
func pocket(d draft) string {
	wide, high, corner := d.inches("width", 3.5, 6), d.inches("height", 4, 7), d.inches("corner", 1, 1.25)
	seam := d.seam("pocket") // one allowance all round
	top := fmt.Sprintf("top: %g,%g 0,%g | %s\n", wide, high, high, d.hem(1))
	if rapid.Bool().Draw(d.T, "clipped") {
		return top + fmt.Sprintf("left: 0,%g 0,%g | %s\nclip: 0,%g %g,0 | %s\nbottom: %g,0 %g,0 | %s\nclip 2: %g,0 %g,%g | %s\nright: %g,%g %g,%g | %s",
			high, corner, seam, corner, corner, seam, corner, wide-corner, seam, wide-corner, wide, corner, seam, wide, corner, wide, high, seam)
	}
	var left, right []string
	for k := range 31 {
		sin, cos := math.Sincos(float64(k) * 3 * math.Pi / 180)
		left = append(left, fmt.Sprintf("%.5f,%.5f", corner*(1-cos), corner*(1-sin)))
		right = append(right, fmt.Sprintf("%.5f,%.5f", wide-corner*(1-sin), corner*(1-cos)))
	}
	if rapid.Bool().Draw(d.T, "in one edge") {
		return top + fmt.Sprintf("round: 0,%g %s %s %g,%g | %s", high, strings.Join(left, " "), strings.Join(right, " "), wide, high, seam)
	}
	return top + fmt.Sprintf("left: 0,%g %s | %s\nturn: %s | %s\nbottom: %s %s | %s\nturn 2: %s | %s\nright: %s %g,%g | %s",
		high, left[0], seam, strings.Join(left, " "), seam, left[30], right[0], seam, strings.Join(right, " "), seam, right[30], wide, high, seam)
}

func TestGarments(t *testing.T) {
	for _, c := range []struct {
		name  string
		draft func(draft) string
	}{
		{"bodice", bodice}, {"sleeve", sleeve}, {"gore", gore}, {"collar", collar}, {"pocket", pocket},
		{"raglan", raglan}, {"gusset", gusset},
	} {
		t.Run(c.name, func(t *testing.T) {
			rapid.Check(t, func(t *rapid.T) {
				text := c.draft(draft{t})
				pattern, err := check(sketch.Front(text))
				if err != nil && passedBy(t, text, err.Error()) {
					return
				}
				require.NoError(t, err, text)
				for _, e := range pattern.Pieces[0].Edges {
					require.Empty(t, lineFlaws(&pattern.Pieces[0], e), text)
				}
				require.Empty(t, cornerFlaws(&pattern.Pieces[0]), text)
				other, err := check(sketch.Front(mirrored(text)))
				require.NoError(t, err, "the same piece for the other side of the body\n%s", text)
				for _, e := range pattern.Pieces[0].Edges {
					o := other.Pieces[0].Edges[other.Pieces[0].Edge(e.Key)]
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
	for _, q := range sampled(e.Sewn) {
		if sketch.Away(q, e.Path) < e.Allowance-piece.Rounding {
			return fmt.Sprintf("%s: the seam lies %g mm from the edge at %v", e.Key, sketch.Away(q, e.Path), q)
		}
	}
	for _, q := range sampled(e.Line) {
		if !sketch.Within(q, p.Outline) && sketch.Away(q, p.Outline) > piece.LeastLine {
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
		if gap := e.Sewn[len(e.Sewn)-1].Distance(next.Sewn[0]); gap > piece.LeastLine && (holds || e.Allowance == next.Allowance) {
			return fmt.Sprintf("%s and %s: their seams end %g mm apart at a corner of %.1f degrees", e.Key, next.Key, gap, degrees)
		}
		for j, o := range p.Edges {
			if j == i || o.Allowance == 0 || e.Allowance == 0 {
				continue
			}
			for _, q := range sampled(e.Sewn) {
				if atStep(p, i, j, q) {
					continue
				}
				if sketch.Away(q, o.Path) < o.Allowance-piece.LeastLine {
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
	words := regexp.MustCompile(`the allowance of "([^"]+)", .*, passes "([^"]+)" by`).FindStringSubmatch(refusal)
	if words == nil {
		return false
	}
	given := regexp.MustCompile(`(?m)^` + words[1] + `:.*allowance = ([\d.]+)`).FindStringSubmatch(text)
	require.NotNil(t, given, "%s", refusal)
	allowance, err := strconv.ParseFloat(given[1], 64)
	require.NoError(t, err)
	pattern, err := check(sketch.Front(regexp.MustCompile(`(allowance|hem) = [\d.]+(; turn = [\d.]+)?`).ReplaceAllString(text, "allowance = 0")))
	require.NoError(t, err, "%s", text)
	p := &pattern.Pieces[0]
	i := p.Edge(words[1])
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
		if after := i + j - before; (before+1)%n != after || e.Sewn[len(e.Sewn)-1].Distance(next.Sewn[0]) < piece.LeastLine {
			continue
		}
		if q.Distance(next.Path[0]) < max(e.Allowance, next.Allowance) {
			return true
		}
	}
	return false
}

// sampled returns places along a path, a millimetre or two apart.
func sampled(p plane.Path) plane.Path {
	var places plane.Path
	for i := 1; i < len(p); i++ {
		n := math.Ceil(p[i].Distance(p[i-1]) / 2)
		for k := range int(n) {
			places = append(places, p[i-1].Toward(p[i], float64(k)/n))
		}
	}
	return append(places, p[len(p)-1])
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
			assert.InDelta(t, c.want, piece.Edges[piece.Edge(c.edge)].Sewn.Length()/25.4, 0.001)
		})
	}
}

// A run-out beside a hollow that never reaches the other cutting line, or only
// the far side of its own edge, ends at its neighbour's line.
func TestRunOutAcrossACollar(t *testing.T) {
	p := sketched(t, "0", fmt.Sprintf(flatCollar, "0.625", "0.625"))
	outer, neck := p.Edges[p.Edge("outer")], p.Edges[p.Edge("neck")]
	for _, end := range []plane.Point{outer.Line[0], outer.Line[len(outer.Line)-1]} {
		assert.Less(t, sketch.Away(end, neck.Line), 1e-6, "the outer line ends at %v", end)
	}
	for _, q := range sampled(outer.Line) {
		assert.Greater(t, sketch.Away(q, outer.Path), outer.Allowance-piece.Rounding, "at %v", q)
	}
}

func TestGarmentsThatCannotBeSewn(t *testing.T) {
	for _, c := range []struct{ name, allowance, text, want string }{
		{"a collar too narrow to turn in", "0", fmt.Sprintf(flatCollar, "0.375", "1"), "7: piece.front.edge.outer: the allowances of \"outer\" and \"neck\", 1 in and 3/8 in, leave nothing between them at (5 in, -3/8 in)\nhint: make the allowances narrower, or the piece wider there\n7: piece.front.edge.outer: the allowances of \"outer\" and \"neck\", 1 in and 3/8 in, leave nothing between them at (0 in, 0 in)\nhint: make the allowances narrower, or the piece wider there"},
		{"a corner rounded more tightly than its allowance", "0.375",
			"top: 4,5 0,5\nleft: 0,5 0,0.25\nround: 0,0.25 0.07,0.07 0.25,0 | smooth = true\nbottom: 0.25,0 4,0\nright: 4,0 4,5",
			"9: piece.front.edge.round: an allowance of 3/8 in leaves nothing of the piece along this edge\nhint: make it narrower, or make this curve part of the edge beside it"},
		{"a thumb that is all seam", "0.5", mitten, "6: piece.front.edge.hand: the allowances of \"hand\" and \"thumb\", 1/2 in and 1/2 in, leave nothing between them at (7/16 in, 1 1/8 in)\nhint: make the allowances narrower, or the piece wider there"},
		{"a strap within the allowance of the neck", "0.375", curvedStrap, "13: piece.front.edge.strap: the allowances of \"strap\" and \"neck\", 1/2 in and 1 in, leave nothing between them at (4 in, 14 in)\nhint: make the allowances narrower, or the piece wider there"},
		{"a step within the allowance of the front", "0.375", buttonStand, "6: piece.front.edge.right: the allowances of \"right\" and \"stand\", 1 in and 1/2 in, leave nothing between them at (10 in, 8 in)\nhint: make the allowances narrower, or the piece wider there"},
		{"a crown whose neck is all seam", "0", "round: 3.5,0 5.5,2 5.5,5 -0.5,5 -0.5,2 1.5,0 | allowance = 1\nneck: 1.5,0 3.5,0 | allowance = 0.25", "6: piece.front.edge.neck: the allowance of \"round\" leaves nothing of this edge, which is 2 in long, to be sewn\nhint: make their allowances narrower or this edge longer; a short edge may also be made part of the one beside it"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := check("allowance = " + c.allowance + "\n" + sketch.Front(c.text))
			require.Error(t, err)
			assert.Equal(t, c.want, strings.ReplaceAll(err.Error(), "linden.toml:", ""))
		})
	}
}
