package source

import (
	"fmt"
	"slices"
	"strings"
	"unicode"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/plane"
	"tuckmark/marking/wording"
)

// Rules of this file: a step leads from the point before to the next one, as a drafting book
// tells it: "up 10", "right 3 1/2, down 1/4". It has a word and a length for each way it
// goes, in any order, and goes at most one way across and one way up or down.

// way is one of the four ways a step goes.
type way struct {
	word     string
	across   bool
	sign     float64
	opposite string
}

var ways = [...]way{{"up", false, 1, "down"}, {"down", false, -1, "up"}, {"left", true, -1, "right"}, {"right", true, 1, "left"}}

// wayNamed matches a word for one of the ways.
var wayNamed = wording.FormOf(`\b(up|down|left|right)\b`)

// mostOthers bounds how many places are remembered that a point may be meant to lie at,
// which are those of every step before it.
const mostOthers = 16

const stepHint = `a step says which way and how far: "up 10", or "right 3 1/2, down 1/4"`

// isStep reports whether a text is meant for a step: it begins with a word, or has one of
// a step.
func isStep(written string) bool {
	word, _ := firstWord(written)
	return word != "" || wayNamed.MatchString(written)
}

// firstWord returns the letters that a text begins with, and what follows.
func firstWord(s string) (word, rest string) {
	s = strings.TrimSpace(s)
	end := strings.IndexFunc(s, func(c rune) bool { return !unicode.IsLetter(c) })
	if end < 0 {
		end = len(s)
	}
	return s[:end], strings.TrimSpace(s[end:])
}

// wayBefore cuts a step of one way into its word, with the space behind it, and its length;
// before any other text stands no word.
func wayBefore(written string) (word, rest string) {
	word, rest = firstWord(written)
	if slices.ContainsFunc(ways[:], func(w way) bool { return w.word == word }) {
		return word + " ", rest
	}
	return "", written
}

// stepped returns the point that a step leads to from the last of p, and what it may be
// meant as, if a space is missing in a fraction.
func (r *fileReader) stepped(at fault.Place, p Points, written string) (plane.Point, []Other) {
	i := len(p.V)
	if i == 0 {
		r.report(at, fmt.Sprintf("point 1: %s is a step, and there is no point before it", wording.Quoted(written)),
			fmt.Sprintf("begin with a point: [[0, 0], %s]", wording.Quoted(written)))
		return plane.Point{}, nil
	}
	before := p.V[i-1]
	moves, err := r.moves(written)
	if err != nil {
		r.note(at, ofNth("point", i+1, err))
		return before, nil
	}
	xs, ys := []number{{mm: before.X}}, []number{{mm: before.Y}}
	for _, m := range moves {
		r.noteUnspaced(at, m.written, nil)
		if m.across {
			xs = r.moved(before.X, m)
		} else {
			ys = r.moved(before.Y, m)
		}
	}
	q := plane.Point{X: xs[0].mm, Y: ys[0].mm}
	_, errX := length.Bounded("the distance across", q.X)
	_, errY := length.Bounded("the distance up", q.Y)
	for _, err := range []error{errX, errY} {
		if err != nil {
			r.note(at, ofNth("point", i+1, err))
			return before, nil
		}
	}
	others := combined(xs, ys)
	for _, o := range p.others[i-1] {
		others = append(others, Other{V: o.V.Add(q.Sub(before)), By: o.By})
	}
	return q, others[:min(len(others), mostOthers)]
}

// move is one part of a step.
type move struct {
	way
	written string  // its length
	mm      float64 // from 0
}

// moved returns where a move leads from a coordinate, as it was read and as it may be meant.
func (r *fileReader) moved(from float64, m move) []number {
	all := r.spaced(m.mm, m.written)
	for i := range all {
		all[i].mm = from + m.sign*all[i].mm
	}
	return all
}

// moves takes a step apart.
func (r *fileReader) moves(written string) ([]move, error) {
	var all []move
	parts := strings.Split(written, ",")
	for i, part := range parts {
		if digits := strings.TrimSpace(part); i > 0 && part != "" && unicode.IsDigit(rune(part[0])) && !wayNamed.MatchString(digits) {
			return nil, &fault.Fault{
				Cause: wording.Quoted(written) + " is written with a comma",
				Hint:  "write a decimal with a point: " + wording.Quoted(strings.Join(parts[:i], ",")+"."+digits),
			}
		}
		m, err := r.move(written, part)
		if err != nil {
			return nil, err
		}
		if other := slices.IndexFunc(all, func(o move) bool { return o.across == m.across }); other >= 0 {
			return nil, twice(written, all[other], m)
		}
		all = append(all, m)
	}
	return all, nil
}

func twice(written string, one, other move) error {
	if one.word == other.word {
		return &fault.Fault{Cause: fmt.Sprintf("%s goes %s twice", wording.Quoted(written), one.word), Hint: "write how far it goes in all"}
	}
	return &fault.Fault{
		Cause: fmt.Sprintf("%s goes %s and %s", wording.Quoted(written), one.word, other.word),
		Hint:  "write what remains of the two, or make it two steps",
	}
}

// move reads one part of a step.
func (r *fileReader) move(written, part string) (move, error) {
	word, rest := firstWord(part)
	known := slices.IndexFunc(ways[:], func(w way) bool { return w.word == word })
	within := wayNamed().FindStringIndex(rest)
	switch {
	case strings.TrimSpace(part) == "":
		return move{}, &fault.Fault{Cause: wording.Quoted(written) + " has nothing beside a comma", Hint: "take the comma away, or add a length: " + `"right 3, up 1"`}
	case word == "" && within != nil:
		turned := rest[within[0]:within[1]] + " " + strings.TrimSpace(rest[:within[0]]+rest[within[1]:])
		return move{}, &fault.Fault{Cause: wording.Quoted(written) + " has the word behind the length", Hint: "write " + wording.Quoted(turned)}
	case word == "":
		return move{}, &fault.Fault{Cause: fmt.Sprintf("%s does not say which way %s goes", wording.Quoted(written), wording.Quoted(rest)), Hint: stepHint}
	case known < 0:
		return move{}, noWay(written, word)
	case rest == "":
		return move{}, &fault.Fault{Cause: fmt.Sprintf("%s does not say how far %s it goes", wording.Quoted(written), word), Hint: stepHint}
	case within != nil:
		first := strings.TrimSpace(strings.TrimSuffix(strings.TrimSpace(rest[:within[0]]), "and"))
		return move{}, &fault.Fault{
			Cause: fmt.Sprintf("%s has no comma between its two parts", wording.Quoted(written)),
			Hint:  "write " + wording.Quoted(word+" "+first+", "+rest[within[0]:]),
		}
	}
	mm, err := length.Parse(rest, r.unit)
	if err != nil {
		return move{}, err
	}
	if mm < 0 {
		turned := ways[known].opposite + " " + strings.TrimSpace(strings.TrimLeft(rest, "-−"))
		return move{}, &fault.Fault{Cause: fmt.Sprintf("%s goes %s by less than 0", wording.Quoted(written), word), Hint: "write " + wording.Quoted(turned)}
	}
	return move{ways[known], rest, mm}, nil
}

// noWay says that a word is none of a step's.
func noWay(written, word string) error {
	var known []string
	for _, w := range ways {
		known = append(known, w.word)
	}
	hint := "the words are " + wording.Listed(known, "and")
	if near := wording.Nearest(word, known); near != "" {
		hint = wording.DidYouMean(near)
	}
	return &fault.Fault{Cause: fmt.Sprintf("%s has the word %s, which is no way to go", wording.Quoted(written), wording.Quoted(word)), Hint: hint}
}
