package piece_test

import (
	"fmt"
	"math"
	"strings"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// A random front, in mm: the centre at x = 0, the hem at y = 0, a smooth neck, a
// slanted shoulder and a slanted side, with tucks or pleats beside the centre, and
// perhaps growth tucks beside the hem. All of it is turned by some angle. What its
// folds do is worked out here again, from the rule that a strip of two widths comes
// to lie as a flap of one beside the line its sides meet on.

// strips are folds one way, as the rule has them.
type strips struct {
	all      []oneStrip
	mirrored bool // the piece is half of one, with the same folds on the other side
}

type oneStrip struct {
	near, width float64 // flat
	toward      bool
	seam        float64
	level, top  float64 // folded between these only
}

// folded returns where u comes to lie; taken tells that it lies in a strip.
func (s strips) folded(u, v float64) (g float64, taken, open bool) {
	shift := 0.0
	for _, one := range s.all {
		far := one.near + 2*one.width
		if u < one.near {
			break
		}
		if u <= far {
			if v < one.level || v >= one.top {
				return one.seam, true, true
			}
			reach := one.width - math.Abs(u-one.near-one.width)
			if one.toward {
				reach = -reach
			}
			return one.seam + reach, true, false
		}
		shift += far - max(0, one.near)
	}
	return u - shift, false, false
}

// frontCase is a random front.
type frontCase struct {
	text   string // of the piece as it is drawn finished
	rows   string // of its tucks and pleats
	across strips // by x
	up     strips // by y
	onFold bool
	grows  bool // it has growth tucks
	ends   bool
	angle  float64
}

func randomFront(t *rapid.T) frontCase {
	length := func(name string, from, to float64) float64 {
		return math.Round(rapid.Float64Range(from, to).Draw(t, name)*100) / 100
	}
	c := frontCase{onFold: rapid.Bool().Draw(t, "on the fold")}
	if rapid.Bool().Draw(t, "turned") {
		c.angle = rapid.Float64Range(-3, 3).Draw(t, "angle")
	}
	high, neck := length("height", 200, 320), length("neck", 40, 70)
	rise, drop := length("rise", 5, 60), length("drop", 0, 30)
	shoulder := neck + length("shoulder", 20, 80)
	hem := shoulder + length("flare", -15, 40)
	at := func(x, y float64) plane.Point { return plane.Point{X: x, Y: y} }
	head := ""
	if c.onFold {
		head = "fold = \"centre\"\n"
	}
	c.text = head + "centre: " + sketch.TurnedPoints(c.angle, at(0, 0), at(0, high)) +
		"\nneck: " + sketch.TurnedPoints(c.angle, at(0, high), at(neck/2, high+rise*length("bend", 0.35, 0.6)), at(neck, high+rise)) + " | smooth = true" +
		"\nshoulder: " + sketch.TurnedPoints(c.angle, at(neck, high+rise), at(shoulder, high+rise-drop)) +
		"\nside: " + sketch.TurnedPoints(c.angle, at(shoulder, high+rise-drop), at(hem, 0)) +
		"\nhem: " + sketch.TurnedPoints(c.angle, at(hem, 0), at(0, 0)) + "\n---\n"
	c.across.mirrored = c.onFold
	c.grows = rapid.Bool().Draw(t, "growth tucks")
	c.addRows(t, &c.across, "centre", min(shoulder, hem)-1, high)
	if c.grows {
		c.addRows(t, &c.up, "hem", high/2, 0)
	}
	return c
}

// addRows adds one or two rows of folds beside an edge whose flaps end before
// reach, finished.
func (c *frontCase) addRows(t *rapid.T, s *strips, beside string, reach, high float64) {
	flat, taken := 0.0, 0.0 // where the last strip ended
	for n := range rapid.IntRange(0, 2).Draw(t, "rows") {
		r := row{kind: rapid.SampledFrom([]rowKind{tucks, knifePleats, boxPleats, invertedPleats}).Draw(t, "kind")}
		r.width = math.Round(rapid.Float64Range(1, 12).Draw(t, "width")*100) / 100
		count := rapid.IntRange(1, 4).Draw(t, "count")
		r.gap = rapid.SampledFrom([]float64{0, 0, 3.5}).Draw(t, "gap")
		r.away = rapid.Bool().Draw(t, "away")
		clear := rapid.SampledFrom([]float64{0, 2, 9.25}).Draw(t, "clear")
		level, step, end := c.randomEnd(t, high)
		top, lines := math.Inf(1), ""
		if r.kind == tucks && end != "" && step == 0 && !c.grows {
			top, end, lines = betweenLines(t, high, level, end, n)
		}
		// Nothing may hang over the edge beside which the row lies, but over a
		// centre lies the other half.
		if flat == 0 && !(c.onFold && beside == "centre") {
			clear += 2 * r.width
		}
		first, pitch, room, each := r.one()
		begin := flat + clear
		at, groups := r.places(t, begin, pitch, count)
		var added []oneStrip
		took := taken
		fits := true
		for k, place := range at {
			for _, one := range each {
				one.near += place
				one.seam = one.near - took
				took += 2 * one.width
				one.level, one.top = level-float64(k)*step, top
				fits = fits && one.seam+one.width < reach && (one.seam >= one.width || c.onFold && beside == "centre")
				added = append(added, one)
			}
		}
		if !fits {
			continue
		}
		s.all = append(s.all, added...)
		taken = took
		flat = at[len(at)-1] + room
		c.rows += lines + r.head(fmt.Sprintf("%s%d", beside, n)) +
			fmt.Sprintf("beside = %q\ncount = %d\nfirst = %.9f\nspacing = %.9f\n%s", beside, count, begin+first, pitch, groups+end)
	}
}

// places draws whether tucks come in groups, and returns where the room of each tuck or pleat
// begins, with what the file has of the groups. Sewn, a tuck lies over a width; so from one
// group to the next it is three widths and what shows between them.
func (r row) places(t *rapid.T, begin, pitch float64, count int) (at []float64, groups string) {
	var betweens []string
	in := 0
	if r.kind == tucks {
		in = rapid.IntRange(0, 2).Draw(t, "more groups")
	}
	for g := range in + 1 {
		for k := range count {
			at = append(at, begin+float64(k)*pitch)
		}
		if g < in {
			between := rapid.SampledFrom([]float64{0, 2, 7.25}).Draw(t, "between")
			betweens = append(betweens, fmt.Sprint(between))
			begin += float64(count-1)*pitch + 3*r.width + between
		}
	}
	if in > 0 {
		groups = "betweens = [" + strings.Join(betweens, ", ") + "]\n"
	}
	return at, groups
}

// randomEnd draws where a row ends: above which level the first of it is folded, and by how
// much lower each of the others ends; everywhere and by nothing where the row has no end,
// as all do beside an edge of no height.
func (c *frontCase) randomEnd(t *rapid.T, high float64) (level, step float64, text string) {
	if high == 0 || rapid.IntRange(0, 2).Draw(t, "ends") == 0 {
		return math.Inf(-1), 0, ""
	}
	c.ends = true
	long := math.Round(rapid.Float64Range(20, 90).Draw(t, "length"))
	if rapid.Bool().Draw(t, "stepped") {
		if step = rapid.SampledFrom([]float64{-4, 3, 0}).Draw(t, "step"); step < 0 {
			long = max(long, 80) // so that the last of as many as there can be is below the neck
		}
		text = fmt.Sprintf("end = \"stepped\"\nstep = %v\n", step)
	}
	return high - long, step, fmt.Sprintf("below = \"neck\"\nlength = %v\n%s", long, text)
}

// betweenLines draws whether a row of tucks that ends at a level, as end has it, does so between two
// lines, or between the neck and a line, and returns below which level it is folded and what the
// file has of it and of the lines.
func betweenLines(t *rapid.T, high, level float64, end string, n int) (top float64, text, lines string) {
	line := func(name string, level float64) string {
		return fmt.Sprintf("\n[line.%s%d]\nalong = \"hem\"\ndistance = %v\nkind = \"placement\"\n", name, n, level)
	}
	names := []string{"neck", fmt.Sprint("low", n)}
	switch rapid.IntRange(0, 2).Draw(t, "between") {
	case 0:
		return math.Inf(1), end, ""
	case 1:
		top, lines = math.Inf(1), line("low", level)
	default:
		top, lines, names[0] = math.Round(level+(high-level)/3), line("low", level)+line("high", math.Round(level+(high-level)/3)), fmt.Sprint("high", n)
	}
	if rapid.Bool().Draw(t, "up") {
		names[0], names[1] = names[1], names[0]
	}
	return top, fmt.Sprintf("from = %q\nto = %q\n", names[0], names[1]), lines
}

// rowKind is what a row of folds is.
type rowKind int

const (
	tucks rowKind = iota
	knifePleats
	boxPleats
	invertedPleats
)

// row is a row of folds, but for how many there are and where.
type row struct {
	kind       rowKind
	width, gap float64
	away       bool // pressed away from the edge
}

// one returns the strips of one tuck or pleat, from where its room begins; to where its
// place is counted, how far on the next one is, and how much room it has.
func (r row) one() (first, pitch, room float64, strips []oneStrip) {
	switch r.kind {
	case tucks:
		return r.width, 3*r.width + r.gap, 2 * r.width, []oneStrip{{width: r.width, toward: !r.away}}
	case knifePleats:
		if !r.away {
			first = 2 * r.width
		}
		return first, 3*r.width + r.gap, 2 * r.width, []oneStrip{{width: r.width, toward: r.away}}
	case boxPleats:
		return 3 * r.width, 6*r.width + r.gap, 6 * r.width, []oneStrip{{width: r.width}, {near: 4 * r.width, width: r.width, toward: true}}
	default: // inverted
		return 2 * r.width, 6*r.width + r.gap, 4 * r.width, []oneStrip{{width: r.width, toward: true}, {near: 2 * r.width, width: r.width}}
	}
}

// head writes what the row is.
func (r row) head(name string) string {
	press := "press = \"toward\"\n"
	if r.away {
		press = "press = \"away\"\n"
	}
	switch r.kind {
	case tucks:
		return fmt.Sprintf("\n[tuck.%s]\nwidth = %v\n", name, r.width) + press
	case knifePleats:
		return fmt.Sprintf("\n[pleat.%s]\nkind = \"knife\"\ndepth = %v\n", name, r.width) + press
	case boxPleats:
		return fmt.Sprintf("\n[pleat.%s]\nkind = \"box\"\ndepth = %v\n", name, r.width)
	default:
		return fmt.Sprintf("\n[pleat.%s]\nkind = \"inverted\"\ndepth = %v\n", name, r.width)
	}
}

// piece checks the front as it is drawn.
func (c frontCase) piece(t *rapid.T, drawn, text string) *piece.Piece {
	pattern, err := made.Pattern("unit = \"mm\"\nallowance = 0\n" + sketch.Front("drawn = \""+drawn+"\"\n"+text+c.rows))
	require.NoError(t, err, "%s", text+c.rows)
	return &pattern.Pieces[0]
}

// local returns a place of the piece as it was before it was turned.
func (c frontCase) local(q plane.Point) plane.Point { return sketch.Turned(q, -c.angle) }

// folded returns where a place of the flat front comes to lie, by the rule. The
// rows beside the centre stand first in the file and are folded first.
func (c frontCase) folded(q plane.Point) (at plane.Point, taken, open bool) {
	// The level of an end line is that of the cloth with the growth tucks in.
	y, inGrowth, _ := c.up.folded(q.Y, 0)
	x, inYoke, open := c.across.folded(q.X, y)
	if c.onFold {
		x = math.Abs(x)
	}
	return plane.Point{X: x, Y: y}, inGrowth || inYoke, open
}

// nearBreak reports whether a place lies so near to where a strip ends or turns
// that the two sides of it cannot be told apart.
func (c frontCase) nearBreak(q plane.Point) bool {
	near := func(s strips, u, v float64) bool {
		for _, one := range s.all {
			for _, level := range []float64{one.near, one.near + one.width, one.near + 2*one.width} {
				if math.Abs(u-level) < 1e-3 {
					return true
				}
			}
			if math.Abs(v-one.level) < 1e-3 || math.Abs(v-one.top) < 1e-3 {
				return true
			}
		}
		return false
	}
	y, _, _ := c.up.folded(q.Y, 0)
	return near(c.across, q.X, y) || near(c.up, q.Y, math.Inf(1))
}

// mixed tells that growth tucks fold cloth that yoke tucks have left open, or an
// end line lies under them: then the rule alone does not say how the cloth lies.
func (c frontCase) mixed() bool { return c.ends && len(c.up.all) > 0 }
