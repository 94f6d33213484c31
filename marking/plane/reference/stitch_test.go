package reference

import (
	"flag"
	"fmt"
	"maps"
	"math"
	"math/cmplx"
	"math/rand"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking"
)

var (
	seed   = flag.Int64("seed", 1, "of the random pieces")
	pieces = flag.Int("pieces", 5000, "how many random pieces are held")
	only   = flag.Int("piece", -1, "the one piece to hold")
	faults = flag.String("faults", "", "a directory that the files of faults are written to")
)

const (
	sameLine = 0.1  // mm; what differs by less is the same
	keepsTo  = 0.03 // mm by which a line may come nearer than its allowance
)

// verdict is what came out for one piece.
type verdict struct {
	refused   bool
	faults    []fault
	explained map[string]int
	worst     map[string]float64
}

type fault struct{ sort, text string }

func (v *verdict) fault(sort, text string, args ...any) {
	v.faults = append(v.faults, fault{sort, fmt.Sprintf(text, args...)})
}

func (v *verdict) measure(what string, off float64) { v.worst[what] = max(v.worst[what], off) }

var quoted = regexp.MustCompile(`"([^"]+)"`)
var placed = regexp.MustCompile(`\.edge\.(?:"([^"]+)"|([\w-]+(?: [\w-]+)*)):`)

// named returns the edges that a mistake names.
func (p piece) named(message string) []int {
	var all []int
	for k, s := range p.sides {
		for _, m := range append(quoted.FindAllStringSubmatch(message, -1), placed.FindAllStringSubmatch(message, -1)...) {
			if slices.Contains(m[1:], s.key) && !slices.Contains(all, k) {
				all = append(all, k)
			}
		}
	}
	return all
}

func (p piece) keys(edges []int) string {
	var all []string
	for _, k := range edges {
		all = append(all, p.sides[k].key)
	}
	return strings.Join(all, ", ")
}

// holdPiece compares what came out for a piece with the reckoning.
func holdPiece(text string) (v verdict) {
	v.explained, v.worst = map[string]int{}, map[string]float64{}
	given, err := check(text)
	if err != nil {
		v.refused = true
		v.refusal(text, err)
		return v
	}
	p := newPiece(given)
	for _, b := range p.lonely() {
		if b.why == "nothing keeps the allowance" {
			v.fault("accepted", "%s: %s", p.keys(b.edges), b.why)
			return v
		}
	}
	v.corners(p, given)
	return v
}

// sizes are the lines of a file that say how wide an allowance is, after their edge.
var sizes = regexp.MustCompile(`(?m)^(?:\[piece\.[^.]+\.edge\."([^"]+)"\]|(?:allowance|hem|turn) = ([0-9.]+))$`)

// allowances returns how wide the allowance of each edge is in a file in inches, in mm, and
// the file without them.
func allowances(text string) (wide map[string]float64, bare string) {
	wide = map[string]float64{}
	edge := ""
	bare = sizes.ReplaceAllStringFunc(text, func(s string) string {
		m := sizes.FindStringSubmatch(s)
		if m[1] != "" {
			edge = m[1]
			return s
		}
		size, _ := strconv.ParseFloat(m[2], 64)
		wide[edge] += 25.4 * size
		return ""
	})
	return wide, "allowance = 0\n" + bare
}

// check reads and checks a file with one piece.
func check(text string) (marking.Piece, error) {
	spec, err := marking.Read("piece.toml", []byte(text), func(rune) bool { return true })
	if err != nil {
		return marking.Piece{}, err
	}
	pattern, err := marking.Check(spec)
	if err != nil {
		return marking.Piece{}, err
	}
	return pattern.Pieces[0], nil
}

// refusal looks whether the edges named are those to blame.
func (v *verdict) refusal(text string, refused error) {
	wide, bare := allowances(text)
	given, err := check(bare)
	if err != nil {
		v.explained["no outline"]++
		return
	}
	for i := range given.Edges {
		given.Edges[i].Allowance = wide[given.Edges[i].Key]
	}
	p := newPiece(given)
	blames := p.lonely()
	if !slices.ContainsFunc(p.sides, func(s side) bool { return s.gone }) {
		ways := make([][]option, len(p.sides))
		for k := range p.sides {
			next := p.next(k)
			a, b := p.sides[k], p.sides[next]
			ways[k] = p.corner(k)
			if len(ways[k]) == 0 {
				blames = append(blames, blame{[]int{k, next}, "passes by", 1})
				ways[k] = []option{{a: a.main[len(a.main)-1], b: b.main[0], out: a.out, in: b.in}}
			}
			if _, most := p.turn(k); (a.d == 0) != (b.d == 0) && ways[k][0].a != ways[k][0].b && most > gentle-about {
				blames = append(blames, blame{[]int{k, next}, "passes by", 0})
			}
			if slices.ContainsFunc(ways[k], func(o option) bool { return o.rule == neverCross || o.rule == swallowed }) {
				// Nothing of one of the two is left by the allowance of the other.
				blames = append(blames, blame{[]int{p.before(k), k, next}, neverCross, 1},
					blame{[]int{k, next, p.next(next)}, neverCross, 1})
			}
		}
		for k := range ways { // each corner in each of its ways, the others as expected
			for i := range ways[k] {
				if k > 0 && i == 0 {
					continue
				}
				var taken []option
				for j := range ways {
					taken = append(taken, ways[j][0])
				}
				taken[k] = ways[k][i]
				blames = append(blames, p.blames(p.sewn(taken))...)
			}
		}
	}
	var told []string
	for _, b := range blames {
		told = append(told, fmt.Sprintf("%s: %s by %.2f mm", p.keys(b.edges), b.why, b.by))
	}
	for _, message := range mistakes(refused) {
		names := p.named(message)
		blamed := slices.ContainsFunc(blames, func(b blame) bool {
			two := func(k int) bool { return slices.Contains(b.edges, k) }
			return !slices.ContainsFunc(names, func(k int) bool { return !two(k) })
		})
		switch {
		case len(blames) == 0:
			v.fault("refused", "%s\nthe reckoning finds nothing", message)
		case !blamed:
			v.fault("wrong names", "%s\nbut these are to blame:\n%s", message, strings.Join(told, "\n"))
		}
	}
}

// mistakes divides what Check says into its mistakes, without hints.
func mistakes(err error) []string {
	var all []string
	for _, l := range strings.Split(err.Error(), "\n") {
		if strings.Contains(l, "piece.toml:") {
			all = append(all, l)
		}
	}
	return all
}

// corners compares the seams and lines of an accepted piece.
func (v *verdict) corners(p piece, given marking.Piece) {
	n := len(p.sides)
	var lines, seams []line
	for _, e := range given.Edges {
		lines, seams = append(lines, lineOf(e.Line).simple()), append(seams, lineOf(e.Sewn).simple())
	}
	for k := range n {
		if len(lines[k]) < 2 || len(seams[k]) < 2 {
			v.fault("no seam", "%s has no seam", p.sides[k].key)
			return
		}
	}
	taken := make([]option, n)
	for k := range n {
		next := p.next(k)
		corner := fmt.Sprintf("the corner of %s (%.4g mm) and %s (%.4g mm)", p.sides[k].key, p.sides[k].d, p.sides[next].key, p.sides[next].d)
		least, most := p.turn(k)
		if most-least > 0.05 {
			corner += fmt.Sprintf(", which turns %.2f to %.2f degrees", least, most)
		} else {
			corner += fmt.Sprintf(", which turns %.2f degrees", least)
		}
		options := p.corner(k)
		if len(options) == 0 {
			v.fault("passes by", "%s: the allowance of one passes the other by, and no mistake was found", corner)
			return
		}
		a, b := seams[k][len(seams[k])-1], seams[next][0]
		off := func(o option) float64 { return max(cmplx.Abs(a-o.a), cmplx.Abs(b-o.b)) }
		taken[k] = slices.MinFunc(options, func(x, y option) int {
			switch x, y := off(x), off(y); {
			case x < y-sameLine/2:
				return -1
			case y < x-sameLine/2:
				return 1
			}
			return 0
		})
		if off(taken[k]) > sameLine {
			sort := "seam ends"
			if p.sides[k].hookedOut || p.sides[next].hookedIn {
				sort = "tight curve"
			}
			v.fault(sort, "%s: the seams end %.2f mm apart from where they should\n%s ends at %.3f, expected %.3f; %s begins at %.3f, expected %.3f",
				corner, off(options[0]), p.sides[k].key, a/25.4, options[0].a/25.4, p.sides[next].key, b/25.4, options[0].b/25.4)
			return
		}
		if taken[k].rule != "" {
			v.explained[taken[k].rule]++
			v.measure("seam ends, "+taken[k].rule, max(cmplx.Abs(a-options[0].a), cmplx.Abs(b-options[0].b)))
		} else {
			v.measure("seam ends", off(taken[k]))
		}
		var mayA, mayB []ending
		for _, o := range append([]option{taken[k]}, options...) {
			if off(o) < sameLine {
				mayA, mayB = append(mayA, endings(o.rule, o.lineA)...), append(mayB, endings(o.rule, o.lineB)...)
			}
		}
		v.lineEnd(corner, p.sides[k], lines[k][len(lines[k])-1], mayA)
		v.lineEnd(corner, p.sides[next], lines[next][0], mayB)
	}
	expected, got := p.sewn(taken), ring{seams}
	for k, s := range p.sides {
		if len(expected.seams[k]) == 0 {
			v.fault("accepted", "nothing of %s is left to be sewn", s.key)
			return
		}
		off := math.Abs(seams[k].length() - expected.seams[k].length())
		v.measure("sewn length", off)
		if off > sameLine {
			v.fault("sewn length", "%s is sewn %.3f mm long, expected %.3f", s.key, seams[k].length(), expected.seams[k].length())
		}
		apart := max(straysLine(seams[k], expected.seams[k]), straysLine(expected.seams[k], seams[k]))
		v.measure("seams apart", apart)
		if apart > sameLine {
			v.fault("seams apart", "the seam of %s lies %.3f mm off where it should", s.key, apart)
		}
		if s.d == 0 {
			continue
		}
		v.keepsAway(s, "seam", seams[k], keepsTo)
		v.keepsAway(s, "line", lines[k], sameLine) // what is ruled on keeps it but roughly
	}
	area, want := got.closed().area(), expected.closed().area()
	v.measure("area of the ring, mm²", math.Abs(area-want))
	if math.Abs(area-want) > sameLine/4*got.closed().length() {
		v.fault("area", "what is sewn goes round %.2f mm², expected %.2f", area, want)
	}
	for _, b := range p.blames(got) {
		if b.by > sameLine {
			v.fault("accepted", "%s: %s by %.2f mm", p.keys(b.edges), b.why, b.by)
		}
	}
	v.acrossTheGarment(p, got, lines)
}

func given2(seams []line) ring { return ring{seams} }

// keepsAway looks whether a line keeps the allowance from its edge.
func (v *verdict) keepsAway(s side, what string, l line, to float64) {
	near, at := 0.0, complex128(0)
	for _, q := range l.places() {
		if f := s.path.nearest(q, s.d-near); f.segment >= 0 {
			near, at = s.d-f.away, q
		}
	}
	v.measure(what+" nearer than its allowance", near)
	if near > to {
		v.fault("too near", "the %s of %s lies nearer to it than %.4g mm by %.3f at %.3f in", what, s.key, s.d, near, at/25.4)
	}
}

// ending is where a drawn line may end, and the rule that allows it.
type ending struct {
	at   complex128
	rule string
}

// endings gives the ends that one way of making a corner allows: the first is expected.
func endings(rule string, may line) []ending {
	var all []ending
	for i, q := range may {
		if i > 0 {
			rule = "line ruled on at a gentle corner"
		}
		all = append(all, ending{q, rule})
	}
	return all
}

// lineEnd looks whether a drawn line ends where it may.
func (v *verdict) lineEnd(corner string, s side, q complex128, may []ending) {
	nearest := may[0]
	for _, e := range may[1:] {
		if cmplx.Abs(q-e.at) < cmplx.Abs(q-nearest.at)-sameLine/2 {
			nearest = e
		}
	}
	off := cmplx.Abs(q - nearest.at)
	if off > sameLine {
		v.fault("line ends", "%s: the line of %s ends at %.3f in, expected %.3f", corner, s.key, q/25.4, may[0].at/25.4)
		return
	}
	v.measure("line ends", off)
	if nearest.rule != "" {
		v.explained["line: "+nearest.rule]++
	}
}

// acrossTheGarment looks whether a line, past its seam, comes back into what is sewn.
func (v *verdict) acrossTheGarment(p piece, r ring, lines []line) {
	whole := rule(r.closed())
	for k, l := range lines {
		if p.sides[k].d == 0 {
			continue
		}
		for _, q := range l.places() {
			if whole.holds(q) {
				if f := whole.nearest(q, 1e9); f.away > sameLine {
					v.fault("across", "the line of %s crosses the garment: at %.3f in it lies %.2f mm inside what is sewn", p.sides[k].key, q/25.4, f.away)
					break
				}
			}
		}
	}
}

// holds tells whether a closed line goes round q.
func (r ruled) holds(q complex128) bool {
	inside := false
	for i := 1; i < len(r.line); i++ {
		a, b := r.line[i-1], r.line[i]
		if (imag(a) > imag(q)) != (imag(b) > imag(q)) &&
			real(q) < real(a)+(imag(q)-imag(a))/(imag(b)-imag(a))*real(b-a) {
			inside = !inside
		}
	}
	return inside
}

// straysLine returns how far at most a place of one line lies from another.
func straysLine(a, b line) float64 {
	on, most := rule(b), 0.0
	for _, q := range a {
		most = max(most, on.nearest(q, math.Inf(1)).away)
	}
	return most
}

func TestStitchLinesOfGarments(t *testing.T) {
	explained, worst, sorts := map[string]int{}, map[string]float64{}, map[string]int{}
	accepted, refused := 0, 0
	for i := range *pieces {
		if *only >= 0 && i != *only {
			continue
		}
		k := kinds[i%len(kinds)]
		text := garment(k, rand.New(rand.NewSource(*seed*1_000_003+int64(i))))
		v := holdPiece(text)
		if v.refused {
			refused++
		} else {
			accepted++
		}
		for rule, n := range v.explained {
			explained[rule] += n
		}
		for what, off := range v.worst {
			worst[what] = max(worst[what], off)
		}
		for _, f := range v.faults {
			sorts[f.sort]++
			if *faults == "" {
				assert.Fail(t, f.text, "%s: %s %d; again with -seed %d -piece %d\n%s", f.sort, k.name, i, *seed, i, text)
			}
		}
		if len(v.faults) > 0 && *faults != "" {
			head := ""
			for _, f := range v.faults {
				head += "# " + f.sort + ": " + strings.ReplaceAll(f.text, "\n", "\n# ") + "\n"
			}
			name := fmt.Sprintf("%s-%s-%d-%d.toml", strings.ReplaceAll(v.faults[0].sort, " ", "-"), k.name, *seed, i)
			assert.NoError(t, os.WriteFile(filepath.Join(*faults, name), []byte(head+text), 0o644))
		}
	}
	t.Logf("%d pieces accepted, %d refused", accepted, refused)
	for _, rule := range slices.Sorted(maps.Keys(explained)) {
		t.Logf("%6d by the rule: %s", explained[rule], rule)
	}
	for _, what := range slices.Sorted(maps.Keys(worst)) {
		t.Logf("%9.4f mm at most: %s", worst[what], what)
	}
	for _, sort := range slices.Sorted(maps.Keys(sorts)) {
		t.Logf("%6d faults: %s", sorts[sort], sort)
	}
}
