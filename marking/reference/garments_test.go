package reference

import (
	"fmt"
	"math"
	"math/cmplx"
	"math/rand"
	"strings"
)

// Random pieces of children's garments, in inches, as a maker drafts them: twelve kinds,
// with the measures of one to eight years (common practice). A piece is drawn
// counter-clockwise with its lower left corner about the origin; then it is turned,
// perhaps turned over, and written as a file. Real and imaginary part of a complex number
// are x and y.

// use says what becomes of an edge, which settles what allowances it may be given.
type use int

const (
	seam    use = iota // sewn to another: a seam allowance, now and then none
	hem                // folded up: a hem, a seam allowance for a facing, or bare for lace
	bound              // most often left bare, for binding
	opening            // a placket: folded as a hem is, or a seam allowance
	fold               // on the fold of the cloth, where one is drawn; else a seam
)

// drawnEdge is one edge of a random piece.
type drawnEdge struct {
	key    string
	use    use
	smooth bool
	points []complex128
}

// A kind draws the edges of one kind of piece; every next edge begins where the last ended.
type kind struct {
	name string
	draw func(m measures) []drawnEdge
}

var kinds = []kind{
	{"bodice", bodice},
	{"raglan", raglan},
	{"kimono", kimono},
	{"collar", collar},
	{"sleeve", sleeve},
	{"bib", bib},
	{"cape", cape},
	{"gore", gore},
	{"gusset", gusset},
	{"placket", placket},
	{"trousers", trousers},
	{"yoke", yoke},
}

// measures draws the measures of one piece.
type measures struct{ *rand.Rand }

// of draws a length, to an eighth of an inch as a tape shows it.
func (m measures) of(least, most float64) float64 {
	return math.Round((least+(most-least)*m.Float64())*8) / 8
}

// one tells whether something happens once in so many times.
func (m measures) one(in int) bool { return m.Intn(in) == 0 }

func at(x, y float64) complex128 { return complex(x, y) }

// hollow returns points of a quarter of a round that leaves a in the direction from a to
// the corner c and arrives at b from it, bent more or less fully into the corner.
func hollow(a, c, b complex128, fullness float64) []complex128 {
	points := []complex128{}
	for k := range 5 {
		t := float64(k) / 4
		// A cubic whose handles lie toward the corner (any text on curves).
		p, q := a+(c-a)*complex(fullness, 0), b+(c-b)*complex(fullness, 0)
		s := 1 - t
		points = append(points, complex(s*s*s, 0)*a+complex(3*s*s*t, 0)*p+complex(3*s*t*t, 0)*q+complex(t*t*t, 0)*b)
	}
	return points
}

// bodice has a scooped armhole: it goes in below the shoulder and out again to a ledge
// at the underarm.
func bodice(m measures) []drawnEdge {
	chest, length := m.of(5, 7.5), m.of(6, 12)
	neckWide, neckDeep := m.of(1.5, 2.75), m.of(0.5, 3)
	shoulder, drop := m.of(1.5, 3.5), m.of(0.25, 1)
	armhole := m.of(3.5, 5)
	waist := chest + m.of(-1, 2.5)
	tip := at(neckWide+shoulder, length+neckDeep-drop)
	under := at(math.Max(chest, real(tip)+0.5), imag(tip)-armhole)
	inmost := math.Min(real(tip), real(under)) - m.of(0.125, 0.75)
	scoop := []complex128{under, at(inmost+0.35*(real(under)-inmost), imag(under)+m.of(0.125, 0.5)),
		at(inmost, imag(under)+armhole*0.45), at(inmost+0.3*(real(tip)-inmost), imag(under)+armhole*0.75), tip}
	top := at(neckWide, length+neckDeep)
	base := m.of(0, 0.25)
	return []drawnEdge{
		{"hem", hem, base > 0, hemCurve(at(0, 0), at(waist, base))},
		{"side", seam, false, []complex128{at(waist, base), under}},
		{"armhole", bound, true, scoop},
		{"shoulder", seam, false, []complex128{tip, top}},
		{"neck", bound, true, hollow(top, at(neckWide, length), at(0, length), 0.4+0.25*m.Float64())},
		{"centre", fold, false, []complex128{at(0, length), at(0, 0)}},
	}
}

// hemCurve rises a little to the side, square to the centre; a straight one has two points.
func hemCurve(a, b complex128) []complex128 {
	if imag(a) == imag(b) {
		return []complex128{a, b}
	}
	run, rise := b-a, imag(b-a)
	return []complex128{a, a + complex(real(run)/3, 0.08*rise), a + complex(real(run)*2/3, 0.4*rise), b}
}

// raglan runs in one slanting seam from the neck to the underarm.
func raglan(m measures) []drawnEdge {
	chest, length := m.of(5, 7.5), m.of(9, 18)
	neckWide, neckDeep := m.of(1, 2.5), m.of(0.25, 1.5)
	under := at(chest, length-m.of(3, 5))
	top := at(neckWide, length+neckDeep)
	slant := top - under
	bow := slant * complex(0, m.of(-0.5, 0.75)/cmplx.Abs(slant))
	raglan := []complex128{under, under + slant*0.3 + bow*1.4, under + slant*0.65 + bow, top}
	foot := at(chest+m.of(0, 4), m.of(0, 0.5))
	return []drawnEdge{
		{"hem", hem, imag(foot) > 0, hemCurve(at(0, 0), foot)},
		{"side", seam, false, []complex128{foot, under}},
		{"raglan", seam, true, raglan},
		{"neck", bound, true, hollow(top, at(neckWide, length), at(0, length), 0.3+0.3*m.Float64())},
		{"centre", fold, false, []complex128{at(0, length), at(0, 0)}},
	}
}

// kimono is a gown in one with its sleeves; its underarm is round, or a corner that is
// slit for a gusset.
func kimono(m measures) []drawnEdge {
	length, chest := m.of(12, 24), m.of(5, 7)
	neckWide, neckDeep := m.of(1.25, 2.5), m.of(0.5, 2)
	reach, fall, wrist := m.of(8, 13), m.of(0, 2.5), m.of(2.5, 4)
	top := at(neckWide, length+neckDeep)
	cuff := at(reach, length+neckDeep-fall)
	along := (cuff - top) / complex(cmplx.Abs(cuff-top), 0)
	low := cuff - complex(0, wrist)*along
	foot := at(chest+m.of(0, 4), m.of(0, 0.5))
	pit := at(chest, imag(low)-m.of(0.25, 1.5))
	edges := []drawnEdge{{"hem", hem, imag(foot) > 0, hemCurve(at(0, 0), foot)}}
	switch m.Intn(3) {
	case 0: // side and sleeve in one round edge
		a, b := foot+(pit-foot)*0.6, low+(pit-low)*0.45
		round := hollow(a, pit, b, 0.55)
		edges = append(edges, drawnEdge{"underarm", seam, true, append(append([]complex128{foot, foot + (a-foot)*0.6}, round...), low)})
	case 1: // a corner
		edges = append(edges, drawnEdge{"side", seam, false, []complex128{foot, pit}},
			drawnEdge{"underarm", seam, false, []complex128{pit, low}})
	default: // a round edge between two straight ones
		a, b := pit+(foot-pit)*0.25, pit+(low-pit)*0.5
		edges = append(edges, drawnEdge{"side", seam, false, []complex128{foot, a}},
			drawnEdge{"underarm", seam, true, hollow(a, pit, b, 0.55)},
			drawnEdge{"sleeve", seam, false, []complex128{b, low}})
	}
	return append(edges,
		drawnEdge{"wrist", hem, false, []complex128{low, cuff}},
		drawnEdge{"overarm", seam, false, []complex128{cuff, top}},
		drawnEdge{"neck", bound, true, hollow(top, at(neckWide, length), at(0, length), 0.4+0.2*m.Float64())},
		drawnEdge{"centre", fold, false, []complex128{at(0, length), at(0, 0)}})
}

// arc returns points of a round about the origin, in degrees.
func arc(radius, from, to float64) []complex128 {
	n := int(math.Ceil(math.Abs(to-from)/20)) + 2
	points := []complex128{}
	for k := range n {
		points = append(points, cmplx.Rect(radius, (from+(to-from)*float64(k)/float64(n-1))*math.Pi/180))
	}
	return points
}

// collar is flat and round about the neck, with round or pointed ends.
func collar(m measures) []drawnEdge {
	inner, wide, spread := m.of(1.75, 3.5), m.of(1, 3), 60+100*m.Float64()
	neck := arc(inner, 90+spread, 90)
	outer := arc(inner+wide, 90, 90+spread)
	last := len(outer) - 1
	radial := cmplx.Rect(1, (90+spread)*math.Pi/180)
	edges := []drawnEdge{{"centre", fold, false, []complex128{neck[len(neck)-1], outer[0]}}}
	tip := outer[last] + radial*complex(m.of(-0.25, 1), 0) + radial*complex(0, m.of(-0.25, 0.75))
	if m.one(2) { // a point
		points := append(append([]complex128{}, outer[:last-1]...), tip)
		edges = append(edges, drawnEdge{"outer", seam, true, points},
			drawnEdge{"end", seam, false, []complex128{tip, neck[0]}})
	} else { // round into the neck
		end := hollow(outer[last-1], outer[last], neck[0]+radial*complex(0.2*wide, 0), 0.5)
		points := append(append([]complex128{}, outer[:last-1]...), end...)
		edges = append(edges, drawnEdge{"outer", seam, true, append(points, neck[0])})
	}
	return append(edges, drawnEdge{"neck", seam, true, neck})
}

// sleeve has a cap like a bell.
func sleeve(m measures) []drawnEdge {
	wide, cap, length := m.of(3.5, 5.5), m.of(1.25, 3.5), m.of(1, 11)
	wrist := math.Max(2.5, wide-m.of(-0.5, 1.75))
	bell := []complex128{at(wide, length), at(wide*0.72, length+cap*(0.2+0.15*m.Float64())), at(wide*0.4, length+cap*0.82),
		at(0, length+cap), at(-wide*0.4, length+cap*0.78), at(-wide*0.72, length+cap*(0.2+0.15*m.Float64())), at(-wide, length)}
	return []drawnEdge{
		{"wrist", hem, false, []complex128{at(-wrist, 0), at(wrist, 0)}},
		{"underarm", seam, false, []complex128{at(wrist, 0), at(wide, length)}},
		{"cap", seam, true, bell},
		{"other underarm", seam, false, []complex128{at(-wide, length), at(-wrist, 0)}},
	}
}

// bib is bound most of the way: a round body, a neck hole and a strap over the shoulder.
func bib(m measures) []drawnEdge {
	wide, deep := m.of(3.5, 5), m.of(6, 9)
	neckWide, strap, rise := m.of(1.75, 2.5), m.of(0.75, 1.75), m.of(1.5, 3.5)
	corner := m.of(1, 2.5)
	outmost := at(neckWide+strap, deep+rise)
	shape := append([]complex128{at(wide-corner, 0)}, hollow(at(wide-corner/2, corner/8), at(wide, 0), at(wide, corner), 0.55)...)
	shape = append(shape, at(wide, deep*0.6), at((wide+real(outmost))/2, deep+rise*0.4), outmost)
	return []drawnEdge{
		{"bottom", bound, false, []complex128{at(0, 0), at(wide-corner, 0)}},
		{"outer", bound, true, shape},
		{"strap", seam, false, []complex128{outmost, at(neckWide, deep+rise)}},
		{"neck", bound, true, hollow(at(neckWide, deep+rise), at(neckWide, deep), at(0, deep), 0.45+0.15*m.Float64())},
		{"centre", fold, false, []complex128{at(0, deep), at(0, 0)}},
	}
}

// cape is a part of a round, the front edge straight or with a round corner at the hem.
func cape(m measures) []drawnEdge {
	inner, long, spread := m.of(2, 3.5), m.of(6, 18), 60+120*m.Float64()
	neck, outer := arc(inner, spread, 0), arc(inner+long, 0, spread)
	edges := []drawnEdge{{"centre", fold, false, []complex128{neck[len(neck)-1], outer[0]}}}
	front := outer[len(outer)-1]
	if m.one(3) {
		last := len(outer) - 1
		down := front + (neck[0]-front)*complex(1.5/long, 0)
		round := hollow(outer[last-1], front, down, 0.6)
		rounded := seam // a wide hem does not turn so sharply
		if m.one(4) {
			rounded = hem
		}
		edges = append(edges, drawnEdge{"hem", hem, true, outer[:last]},
			drawnEdge{"corner", rounded, true, round})
		front = down
	} else {
		edges = append(edges, drawnEdge{"hem", hem, true, outer})
	}
	return append(edges, drawnEdge{"front", opening, false, []complex128{front, neck[0]}},
		drawnEdge{"neck", bound, true, neck})
}

// gore is a panel of a skirt, its sides straight or round over the hip.
func gore(m measures) []drawnEdge {
	waist, length, flare := m.of(1.5, 5), m.of(7, 20), m.of(0.25, 5)
	dip, sag := m.of(0, 0.5), m.of(0, 0.75)
	foot := at(waist+flare, sag)
	top := at(waist, length+dip)
	side := []complex128{foot, top}
	round := m.one(2)
	if round {
		hip := foot + (top-foot)*0.6
		side = []complex128{foot, foot + (top-foot)*0.3, hip + at(m.of(0, 0.375), 0), foot + (top-foot)*0.82 + at(m.of(0, 0.25), 0), top}
	}
	edges := []drawnEdge{{"hem", hem, sag > 0, hemCurve(at(0, 0), foot)}, {"side", seam, round, side}}
	if dip > 0 {
		edges = append(edges, drawnEdge{"waist", seam, true, []complex128{top, at(waist/2, length+dip*0.3), at(0, length)}})
	} else {
		edges = append(edges, drawnEdge{"waist", seam, false, []complex128{top, at(0, length)}})
	}
	return append(edges, drawnEdge{"centre", fold, false, []complex128{at(0, length), at(0, 0)}})
}

// gusset is a diamond for an underarm, half of one, or a godet with a round hem.
func gusset(m measures) []drawnEdge {
	wide, long := m.of(1.25, 3), m.of(2, 5)
	switch m.Intn(3) {
	case 0:
		skew := m.of(-0.5, 0.5)
		a, b, c, d := at(0, -long), at(wide, skew), at(0, long), at(-wide, -skew)
		return []drawnEdge{{"front side", seam, false, []complex128{a, b}}, {"front sleeve", seam, false, []complex128{b, c}},
			{"back sleeve", seam, false, []complex128{c, d}}, {"back side", seam, false, []complex128{d, a}}}
	case 1:
		a, b, c := at(-wide, 0), at(wide, 0), at(m.of(-0.5, 0.5), long)
		return []drawnEdge{{"base", seam, false, []complex128{a, b}}, {"front", seam, false, []complex128{b, c}},
			{"back", seam, false, []complex128{c, a}}}
	default:
		half := 10 + 35*m.Float64()
		round := arc(long*2, 270-half, 270+half)
		last := round[len(round)-1]
		return []drawnEdge{{"hem", hem, true, round}, {"right", seam, false, []complex128{last, 0}},
			{"left", seam, false, []complex128{0, round[0]}}}
	}
}

// placket is a back whose opening ends in a seam: the centre hardly turns there.
func placket(m measures) []drawnEdge {
	chest, length := m.of(5, 7.5), m.of(10, 18)
	neckWide, neckDeep, shoulder, drop := m.of(1.5, 2.5), m.of(0.25, 1), m.of(1.5, 3.5), m.of(0.25, 0.75)
	open, slant := m.of(4, length-4), m.of(-0.25, 1.75)
	tip := at(neckWide+shoulder, length+neckDeep-drop)
	top := at(neckWide, length+neckDeep)
	side := at(math.Max(chest, real(tip))+m.of(0, 2), 0)
	end := at(0, length-open)
	return []drawnEdge{
		{"hem", hem, false, []complex128{at(slant, 0), side}},
		{"side", seam, false, []complex128{side, tip}},
		{"shoulder", seam, false, []complex128{tip, top}},
		{"neck", bound, true, hollow(top, at(neckWide, length), at(0, length), 0.4+0.2*m.Float64())},
		{"placket", opening, false, []complex128{at(0, length), end}},
		{"seam", seam, false, []complex128{end, at(slant, 0)}},
	}
}

// trousers have a crotch curve that ends in a point.
func trousers(m measures) []drawnEdge {
	hip, rise, leg := m.of(4.5, 7), m.of(6, 9), m.of(1.5, 16)
	fork := m.of(0.75, 2.5)
	waist := hip - m.of(0, 1)
	knee := m.of(0, 1.5)
	crotch := at(hip+fork, leg)
	foot := at(hip+fork-knee, m.of(0, 0.125))
	up := at(hip-m.of(0, 0.75), leg+rise+m.of(0, 0.75))
	bend := at(hip, leg+m.of(0.25, 0.75))
	curve := append(hollow(crotch, bend, at(hip-0.05, leg+rise*0.45), 0.5), up)
	edges := []drawnEdge{{"hem", hem, false, []complex128{at(0, 0), foot}},
		{"inside leg", seam, false, []complex128{foot, crotch}}, {"crotch", seam, true, curve},
		{"waist", hem, false, []complex128{up, at(hip-waist, leg+rise)}}}
	return append(edges, drawnEdge{"side", seam, false, []complex128{at(hip-waist, leg+rise), at(0, 0)}})
}

// yoke has a square or pointed neck, and an armhole with a ledge, each drawn as one edge.
func yoke(m measures) []drawnEdge {
	length, neckWide, neckDeep := m.of(3, 10), m.of(1.75, 3), m.of(1.5, 4)
	strap, ledge, armhole := m.of(1.75, 3.5), m.of(1.25, 2.5), m.of(3, 5)
	tip, top := at(neckWide+strap, length+neckDeep), at(neckWide, length+neckDeep)
	inner := at(real(tip)+m.of(-0.25, 0.375), imag(tip)-armhole)
	under := inner + at(ledge, m.of(-0.5, 0.5))
	foot := at(real(under)+m.of(-0.5, 2), min(imag(under), 0)-m.of(1.5, 3))
	neck := []complex128{top, at(neckWide+m.of(-0.5, 0.375), length), at(0, length)}
	if m.one(3) {
		neck = append(neck[:2], at(0, length-m.of(-0.5, 1.25)))
	}
	end := neck[len(neck)-1]
	return []drawnEdge{
		{"hem", hem, false, []complex128{at(0, imag(foot)), foot}},
		{"side", seam, false, []complex128{foot, under}},
		{"armhole", bound, false, []complex128{under, inner, tip}},
		{"shoulder", seam, false, []complex128{tip, top}},
		{"neck", opening, false, neck},
		{"centre", fold, false, []complex128{end, at(0, imag(foot))}},
	}
}

// allowance writes what an edge is given.
func (m measures) allowance(u use) string {
	one := func(words ...string) string { return words[m.Intn(len(words))] }
	narrow := "allowance = " + one("0", "0.25", "0.375", "0.375", "0.5", "0.625", "0.75", "1")
	hemmed := fmt.Sprintf("hem = %s\nturn = %s", one("0.5", "0.75", "1", "1.5", "2", "3"), one("0", "0.25", "0.375"))
	switch {
	case u == seam || u == fold:
		return narrow
	case u == bound && m.one(2):
		return "allowance = 0"
	case u == bound:
		return narrow
	case m.one(4):
		return narrow
	}
	return hemmed
}

// traced returns a smooth edge as a tablet takes it down: many points, each to a tenth
// of a millimetre.
func traced(points []complex128) []complex128 {
	line := []complex128{points[0]}
	n := len(points)
	for i := range n - 1 {
		before, a, b, after := points[max(i-1, 0)], points[i], points[i+1], points[min(i+2, n-1)]
		steps := int(math.Ceil(cmplx.Abs(b-a) / 0.25))
		for k := 1; k <= steps; k++ {
			t := float64(k) / float64(steps)
			s := 1 - t
			// A cubic from a to b, at each along the steps on both sides of it.
			third := cmplx.Abs(b-a) / 3
			p, r := a+times(unit(unit(b-a)+unit(a-before)), third), b-times(unit(unit(b-a)+unit(after-b)), third)
			q := complex(s*s*s, 0)*a + complex(3*s*s*t, 0)*p + complex(3*s*t*t, 0)*r + complex(t*t*t, 0)*b
			line = append(line, q)
		}
	}
	tenth := func(v float64) float64 { return math.Round(v*254) / 254 }
	for i := 1; i < len(line)-1; i++ {
		line[i] = complex(tenth(real(line[i])), tenth(imag(line[i])))
	}
	return line
}

// fileOf writes a random piece as a file.
func fileOf(k kind, r *rand.Rand) string {
	m := measures{r}
	edges := k.draw(m)
	folded := m.one(2) && edges[len(edges)-1].use == fold || k.name == "collar" || k.name == "cape"
	tracing, over, turn := m.one(8), m.one(2), complex128(1)
	if m.one(2) {
		turn = cmplx.Rect(1, 2*math.Pi*r.Float64())
	}
	var b strings.Builder
	fmt.Fprintf(&b, "title = %q\nunit = \"in\"\nallowance = 0\n[piece.%s]\n", k.name, k.name)
	for _, e := range edges {
		if folded && e.use == fold {
			fmt.Fprintf(&b, "fold = %q\n", e.key)
		}
	}
	for _, e := range edges {
		points := e.points
		smooth := e.smooth && len(points) > 2
		if smooth && tracing {
			points, smooth = traced(points), false
		}
		var words []string
		for _, q := range points {
			if over {
				q = complex(-real(q), imag(q))
			}
			q *= turn
			words = append(words, fmt.Sprintf("[%.4f, %.4f]", real(q), imag(q)))
		}
		fmt.Fprintf(&b, "[piece.%s.edge.%q]\npoints = [%s]\n", k.name, e.key, strings.Join(words, ", "))
		if smooth {
			b.WriteString("smooth = true\n")
		}
		if !(folded && e.use == fold) {
			b.WriteString(m.allowance(e.use) + "\n")
		}
	}
	return b.String()
}
