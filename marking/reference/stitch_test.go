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
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/garment"
	"tuckmark/marking/piece"
	"tuckmark/marking/source"
)

// More pieces, or others, are held on request: go test . -seed 7 -pieces 20000.
var (
	seed   = flag.Int64("seed", 1, "of the random pieces")
	pieces = flag.Int("pieces", 5000, "how many random pieces are held")
	only   = flag.Int("piece", -1, "the one piece to hold")
	faults = flag.String("faults", "", "a directory that files of what differs are written to, each with what differs on top")
)

const (
	inch = 25.4 // mm

	sameLine = 0.1  // mm; places that differ by less are the same
	sameRing = 2.0  // mm²; what a difference of sameLine at the ends of wide seams may make
	keepsTo  = 0.03 // mm by which a seam may come nearer than its allowance, which its chords do
)

// verdict is what came out for one piece.
type verdict struct {
	refused   bool
	faults    []fault
	explained map[string]int     // how often a rule allowed what was not expected
	worst     map[string]float64 // by how much, at most, what was compared differs
}

// fault is a disagreement that no rule explains.
type fault struct{ sort, text string }

func (v *verdict) fault(sort, text string, args ...any) {
	v.faults = append(v.faults, fault{sort, fmt.Sprintf(text, args...)})
}

func (v *verdict) measure(what string, off float64) { v.worst[what] = max(v.worst[what], off) }

// same measures how far two things are apart, which is a fault above some bound.
func (v *verdict) same(what string, off, bound float64, text string, args ...any) {
	v.measure(what, off)
	if off > bound {
		v.fault(what, text, args...)
	}
}

// holdPiece compares what came out for a piece with the reckoning.
func holdPiece(text string) verdict {
	v := verdict{explained: map[string]int{}, worst: map[string]float64{}}
	made, given, err := check(text)
	if err != nil {
		v.refused = true
		v.refusal(text, err)
		return v
	}
	p := newDraft(made, given)
	for _, b := range p.lonely() {
		if b.why == nothingLeft {
			v.fault("accepted", "%s: %s", p.keys(b.edges), b.why)
			return v
		}
	}
	drawn, sewn := make([]line, len(p.sides)), ring{make([]line, len(p.sides))}
	for k, e := range made.Edges {
		drawn[k], sewn.seams[k] = lineOf(e.Line).simple(), lineOf(e.Sewn).simple()
		if len(drawn[k]) < 2 || len(sewn.seams[k]) < 2 {
			v.fault("accepted", "%s has no seam", e.Key)
			return v
		}
	}
	var taken []option
	for k := range p.sides {
		o, ok := v.corner(p, k, drawn, sewn)
		if !ok {
			return v
		}
		taken = append(taken, o)
	}
	v.seams(p, p.sewn(taken), sewn)
	for k, s := range p.sides {
		if s.d > 0 {
			v.keepsAway(s, append(drawn[k].places(), sewn.seams[k].places()...))
		}
	}
	for _, b := range p.blames(sewn) {
		if b.by > sameLine {
			v.fault("accepted", "%s: %s by %.2f mm", p.keys(b.edges), b.why, b.by)
		}
	}
	v.acrossTheGarment(p, sewn, drawn)
	for k, e := range made.Edges {
		v.turnLine(p, k, e, given[e.Key], taken)
	}
	return v
}

// check reads and checks a file with one piece, and returns also the points that the file
// gives its edges by, under their keys.
func check(text string) (piece.Piece, map[string]line, error) {
	spec, err := source.Read("piece.toml", []byte(text), func(rune) bool { return true })
	if err != nil {
		return piece.Piece{}, nil, err
	}
	pattern, err := garment.Check(spec)
	if err != nil {
		return piece.Piece{}, nil, err
	}
	given := map[string]line{}
	for _, e := range spec.Pieces[0].Edges {
		given[e.Key] = lineOf(e.Points.V)
	}
	return pattern.Pieces[0], given, nil
}

func (p draft) keys(edges []int) string {
	var all []string
	for _, k := range edges {
		all = append(all, p.sides[k].key)
	}
	return strings.Join(all, ", ")
}

// cornerName tells which corner is meant: the one after edge k.
func (p draft) cornerName(k int) string {
	a, b := p.sides[k], p.sides[p.next(k)]
	least, most := p.turn(k)
	return fmt.Sprintf("the corner of %s (%.4g mm) and %s (%.4g mm), which turns %.2f to %.2f degrees",
		a.key, a.d, b.key, b.d, least, most)
}

// corner looks how the corner after edge k came out, and returns which of its ways that is.
func (v *verdict) corner(p draft, k int, drawn []line, sewn ring) (option, bool) {
	options := p.corner(k)
	if len(options) == 0 {
		v.fault("passes by", "%s: the allowance of one passes the other by, and no mistake was found", p.cornerName(k))
		return option{}, false
	}
	next := p.next(k)
	a, b := sewn.seams[k][len(sewn.seams[k])-1], sewn.seams[next][0]
	off := func(o option) float64 { return max(cmplx.Abs(a-o.a), cmplx.Abs(b-o.b)) }
	taken := options[0] // the first of those that are about as near
	for _, o := range options[1:] {
		if off(o) < off(taken)-sameLine/2 {
			taken = o
		}
	}
	if off(taken) > sameLine {
		v.fault("seam ends", "%s: the seams end %.2f mm from where they should\n%s ends at %.3f in, expected %.3f; %s begins at %.3f, expected %.3f",
			p.cornerName(k), off(options[0]), p.sides[k].key, a/inch, options[0].a/inch, p.sides[next].key, b/inch, options[0].b/inch)
		return option{}, false
	}
	if taken.rule != "" {
		v.explained[taken.rule]++
		v.measure("seam ends, "+taken.rule, off(options[0]))
	} else {
		v.measure("seam ends", off(taken))
	}
	var mayA, mayB []ending
	for _, o := range append([]option{taken}, options...) {
		if off(o) < sameLine {
			mayA, mayB = append(mayA, endings(o.rule, o.lineA)...), append(mayB, endings(o.rule, o.lineB)...)
		}
	}
	v.lineEnd(p, k, k, drawn[k][len(drawn[k])-1], mayA)
	v.lineEnd(p, k, next, drawn[next][0], mayB)
	return taken, true
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
			rule = "at a gentle or tight corner, or two at once"
		}
		all = append(all, ending{q, rule})
	}
	return all
}

// lineEnd looks whether the drawn line of an edge ends at q where it may, at the corner
// after edge k.
func (v *verdict) lineEnd(p draft, k, edge int, q complex128, may []ending) {
	nearest := may[0]
	for _, e := range may[1:] {
		if cmplx.Abs(q-e.at) < cmplx.Abs(q-nearest.at)-sameLine/2 {
			nearest = e
		}
	}
	off := cmplx.Abs(q - nearest.at)
	v.same("line ends", off, sameLine, "%s: the line of %s ends at %.3f in, expected %.3f",
		p.cornerName(k), p.sides[edge].key, q/inch, may[0].at/inch)
	if off <= sameLine && nearest.rule != "" {
		v.explained["line, "+nearest.rule]++
	}
}

// seams compares what is sewn with what is expected when the corners come out as they did.
func (v *verdict) seams(p draft, expected, sewn ring) {
	for k, s := range p.sides {
		want, got := expected.seams[k], sewn.seams[k]
		if len(want) == 0 {
			v.fault("accepted", "nothing of %s is left to be sewn", s.key)
			return
		}
		v.same("sewn length", math.Abs(got.length()-want.length()), sameLine,
			"%s is sewn %.3f mm long, expected %.3f", s.key, got.length(), want.length())
		apart := max(got.farthest(want), want.farthest(got))
		v.same("seams apart", apart, sameLine, "the seam of %s lies %.3f mm off where it should", s.key, apart)
	}
	got, want := sewn.closed().area(), expected.closed().area()
	v.same("area of the ring, mm²", math.Abs(got-want), sameRing, "what is sewn goes round %.2f mm², expected %.2f", got, want)
}

// keepsAway looks whether places of a line keep the allowance from its edge: closely beside
// it, and roughly where the line is ruled on past its ends.
func (v *verdict) keepsAway(s side, places line) {
	beside, beyond := 0.0, 0.0
	var at complex128
	for _, q := range places {
		f := s.path.nearest(q, s.d)
		switch {
		case f.segment < 0:
		case s.path.atEnd(f):
			beyond = max(beyond, s.d-f.away)
		case s.d-f.away > beside:
			beside, at = s.d-f.away, q
		}
	}
	v.same("too near the edge", beside, keepsTo, "the line of %s lies nearer to it than %.4g mm by %.3f at %.3f in", s.key, s.d, beside, at/inch)
	v.same("too near the end of the edge", beyond, sameLine, "the line of %s, ruled on, lies nearer to its end than %.4g mm by %.3f", s.key, s.d, beyond)
}

// acrossTheGarment looks whether a drawn line, past its seam, comes back into what is sewn.
func (v *verdict) acrossTheGarment(p draft, sewn ring, drawn []line) {
	whole := rule(sewn.closed())
	for k, l := range drawn {
		if p.sides[k].d == 0 {
			continue
		}
		deep, at := 0.0, complex128(0)
		for _, q := range l.places() {
			if whole.holds(q) {
				if f := whole.nearest(q, math.Inf(1)); f.away > deep {
					deep, at = f.away, q
				}
			}
		}
		v.same("across the garment", deep, sameLine, "the line of %s lies %.2f mm inside what is sewn at %.3f in", p.sides[k].key, deep, at/inch)
	}
}

// The stitch lines of random garments are what region arithmetic makes of their edges, and
// whatever is refused is refused for the edges that are to blame.
func TestStitchLinesOfGarments(t *testing.T) {
	explained, worst := map[string]int{}, map[string]float64{}
	accepted, refused := map[string]int{}, 0
	for i := range *pieces {
		if *only >= 0 && i != *only {
			continue
		}
		k := kinds[i%len(kinds)]
		text := fileOf(k, rand.New(rand.NewSource(*seed*1_000_003+int64(i))))
		v := holdPiece(text)
		if v.refused {
			refused++
		} else {
			accepted[k.name]++
		}
		for rule, n := range v.explained {
			explained[rule] += n
		}
		for what, off := range v.worst {
			worst[what] = max(worst[what], off)
		}
		var told []string
		for _, f := range v.faults {
			told = append(told, f.sort+": "+f.text)
		}
		if len(told) > 0 {
			all := strings.Join(told, "\n")
			assert.Fail(t, all, "%s; again with go test -run TestStitchLinesOfGarments . -seed %d -piece %d\n%s", k.name, *seed, i, text)
			if *faults != "" {
				name := fmt.Sprintf("%s-%s-%d-%d.toml", strings.ReplaceAll(v.faults[0].sort, " ", "-"), k.name, *seed, i)
				all = "# " + strings.ReplaceAll(all, "\n", "\n# ") + "\n"
				assert.NoError(t, os.WriteFile(filepath.Join(*faults, name), []byte(all+text), 0o644))
			}
		}
	}
	t.Logf("refused: %d; accepted: %v", refused, accepted)
	for _, what := range slices.Sorted(maps.Keys(worst)) {
		t.Logf("%8.3f at most: %s", worst[what], what)
	}
	for _, rule := range slices.Sorted(maps.Keys(explained)) {
		t.Logf("%6d by a rule: %s", explained[rule], rule)
	}
	if *only < 0 && *pieces >= 100*len(kinds) {
		for _, k := range kinds {
			assert.Greater(t, accepted[k.name], *pieces/len(kinds)/2, "%s: most pieces can be sewn", k.name)
		}
		assert.Greater(t, refused, *pieces/50, "some pieces cannot be sewn")
	}
}
