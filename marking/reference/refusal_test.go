package reference

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"
)

// Of a piece that is refused the edges that the mistakes name are compared with those that
// the reckoning blames. Its outline is told by the same file without allowances.

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

// The keys of edges in a mistake: in its words, and in its place.
var quoted = regexp.MustCompile(`"([^"]+)"`)
var placed = regexp.MustCompile(`\.edge\.(?:"([^"]+)"|([\w-]+(?: [\w-]+)*)):`)

// named returns the edges that a mistake names.
func (p draft) named(message string) []int {
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

// refusal looks whether the edges named are those to blame.
func (v *verdict) refusal(text string, refused error) {
	wide, bare := allowances(text)
	made, given, err := check(bare)
	if err != nil {
		v.fault("no outline", "%v", err)
		return
	}
	for i := range made.Edges {
		made.Edges[i].Allowance = wide[made.Edges[i].Key]
	}
	p := newDraft(made, given)
	blames := append(p.lonely(), p.cornered()...)
	var told []string
	for _, b := range blames {
		told = append(told, fmt.Sprintf("%s: %s by %.2f mm", p.keys(b.edges), b.why, b.by))
	}
	mistakes := 0
	for _, message := range strings.Split(refused.Error(), "\n") {
		if !strings.HasPrefix(message, "piece.toml:") {
			continue // a hint
		}
		mistakes++
		names := p.named(message)
		blamed := slices.ContainsFunc(blames, func(b blame) bool {
			return !slices.ContainsFunc(names, func(k int) bool { return !slices.Contains(b.edges, k) })
		})
		switch {
		case len(names) == 0:
			v.fault("wrong names", "%s\nno edge is named", message)
		case len(blames) == 0:
			v.fault("refused", "%s\nthe reckoning finds nothing", message)
		case !blamed:
			v.fault("wrong names", "%s\nbut these are to blame:\n%s", message, strings.Join(told, "\n"))
		}
	}
	if mistakes == 0 {
		v.fault("refused", "no mistake has its place: %v", refused)
	}
}

// cornered returns what the corners are to blame for, each in all its ways.
func (p draft) cornered() []blame {
	if slices.ContainsFunc(p.sides, func(s side) bool { return s.gone }) {
		return nil
	}
	var all []blame
	ways := make([][]option, len(p.sides))
	var expected []option
	for k, a := range p.sides {
		next := p.next(k)
		b := p.sides[next]
		ways[k] = p.corner(k)
		_, most := p.turn(k)
		mayPass := (a.d == 0) != (b.d == 0) && most > gentle-about
		if len(ways[k]) == 0 {
			ways[k] = []option{{a: a.main[len(a.main)-1], b: b.main[0], out: a.out, in: b.in}}
		} else if mayPass {
			// Where it hardly turns, or bends tightly, the line need not come out.
			mayPass = ways[k][0].a != ways[k][0].b || a.hookedOut || b.hookedIn
		}
		if mayPass {
			all = append(all, blame{[]int{k, next}, "passes by", 1})
		}
		if slices.ContainsFunc(ways[k], func(o option) bool { return o.rule == tight }) {
			all = append(all, blame{[]int{k, next}, tight, 1})
		}
		if slices.ContainsFunc(ways[k], func(o option) bool { return o.rule == neverCross || o.rule == swallowed }) {
			// Nothing of one of the two is left by the allowance of the other.
			all = append(all, blame{[]int{p.before(k), k, next}, neverCross, 1},
				blame{[]int{k, next, p.next(next)}, neverCross, 1})
		}
		expected = append(expected, ways[k][0])
	}
	all = append(all, p.blames(p.sewn(expected))...)
	for k := range ways { // the other corners as expected
		for _, o := range ways[k][1:] {
			taken := slices.Clone(expected)
			taken[k] = o
			all = append(all, p.blames(p.sewn(taken))...)
		}
	}
	return all
}
