package source

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"time"
	"unicode"
	"unicode/utf8"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/plane"
	"tuckmark/marking/wording"
)

// Rules of this file: each value is checked by itself, and a faulty one is
// reported once and counts as given, so that no second message says that it is
// missing. What two values have to do with each other is said in read.go.

// printed reads text that comes onto the sheets, letter by letter.
func (t *fileTable) printed(key string) Text { return t.text(key, t.checkPrinted) }

// reference reads text that names something else in the file.
func (t *fileTable) reference(key string) Text { return t.text(key, t.checkText) }

func (t *fileTable) text(key string, check func(fault.Place, string) bool) Text {
	v, ok := t.values[key]
	if !ok {
		return Text{}
	}
	s, ok := v.(string)
	if !ok {
		t.report(t.at(key), "must be text in quotes, but is "+asGiven(v), fmt.Sprintf(`write %s = "..."`, key))
		return GivenAt("", t.at(key))
	}
	check(t.at(key), s)
	return GivenAt(s, t.at(key))
}

// checkText reports text that is empty or too long.
func (r *fileReader) checkText(at fault.Place, s string) (ok bool) {
	if strings.TrimSpace(s) == "" {
		r.report(at, "the name or text is empty", "write at least one letter, or leave the line out")
		return false
	}
	if n := utf8.RuneCountInString(s); n > maxText {
		r.report(at, fmt.Sprintf("the text has %d letters", n), fmt.Sprintf("a text has at most %d letters", maxText))
		return false
	}
	return true
}

// checkPrinted reports text that cannot be printed.
func (r *fileReader) checkPrinted(at fault.Place, s string) (ok bool) {
	if !r.checkText(at, s) {
		return false
	}
	for _, c := range s {
		if unicode.IsControl(c) {
			r.report(at, fmt.Sprintf("has a character that cannot be printed (U+%04X)", c), "write the text on one line, without tabs")
			return false
		}
		if !r.printable(c) {
			r.report(at, fmt.Sprintf("the sheets' font has no %q (U+%04X)", string(c), c), "write it with other letters")
			return false
		}
	}
	return true
}

// choice reads one of a few words, each of which stands at its constant.
func choice[E ~int](t *fileTable, key string, words []string) Value[E] {
	v, ok := t.values[key]
	if !ok {
		return Value[E]{}
	}
	var quoted []string
	for _, w := range words {
		if w != "" {
			quoted = append(quoted, wording.Quoted(w))
		}
	}
	hint := "write " + wording.Listed(quoted, "or")
	s, isText := v.(string)
	chosen := slices.Index(words, s)
	switch {
	case !isText:
		t.report(t.at(key), "must be text in quotes, but is "+asGiven(v), hint)
	case s == "" || chosen < 0:
		t.report(t.at(key), wording.Quoted(s)+" is not known here", hint)
	}
	return GivenAt(E(max(0, chosen)), t.at(key))
}

// yes reads true or false; what is not given is false.
func (t *fileTable) yes(key string) bool {
	v, ok := t.values[key]
	if !ok {
		return false
	}
	b, ok := v.(bool)
	if !ok {
		t.report(t.at(key), "must be true or false, but is "+asGiven(v), fmt.Sprintf("write %s = true without quotes", key))
	}
	return b
}

// flag reads yes or no where it matters whether the file says it at all.
func (t *fileTable) flag(key string) Flag {
	if !t.has(key) {
		return Flag{}
	}
	return GivenAt(t.yes(key), t.at(key))
}

// count reads a whole number from 1 to most.
func (t *fileTable) count(key string, most int) Count {
	v, ok := t.values[key]
	if !ok {
		return Count{}
	}
	n, ok := v.(int64)
	switch {
	case !ok:
		example := "2"
		if s, isText := v.(string); isText && s != "" && strings.Trim(s, "0123456789") == "" {
			example = s
		}
		t.report(t.at(key), "must be a whole number, but is "+asGiven(v), fmt.Sprintf("write a number such as %s = %s, without quotes and without a point", key, example))
	case n < 1 || n > int64(most):
		t.report(t.at(key), fmt.Sprintf("must be from 1 to %d, but is %d", most, n), "")
	default:
		return GivenAt(int(n), t.at(key))
	}
	return GivenAt(1, t.at(key))
}

// Bounds of what is called fullness: below the least nothing is gathered, beyond the
// most nobody could draw it up.
const (
	leastFactor = 1
	mostFactor  = 20
)

const factorHint = `it is a number such as 2 or "1 1/2": how many times as long as the edge`

// factor reads how many times as long something is as its edge.
func (t *fileTable) factor(key string) Factor {
	v, ok := t.values[key]
	if !ok {
		return Factor{}
	}
	n, at := 0.0, t.at(key)
	switch v := v.(type) {
	case int64:
		n = float64(v)
	case float64:
		n = v
	case string:
		var err error
		if n, err = length.ParseNumber(v); err != nil {
			t.report(at, wording.Quoted(v)+" is not a number", factorHint)
			return GivenAt[float64](leastFactor, at)
		}
	default:
		t.report(at, "must be a number, but is "+asGiven(v), factorHint)
		return GivenAt[float64](leastFactor, at)
	}
	if !(n >= leastFactor && n <= mostFactor) {
		t.report(at, fmt.Sprintf("must be from %d to %d, but is %s", leastFactor, mostFactor, asGiven(v)), factorHint)
		n = leastFactor
	}
	return GivenAt(n, at)
}

// span is which lengths make sense for a key.
type span int

const (
	anywhere  span = iota // a coordinate: below 0, 0, above
	fromZero              // 0 and above
	aboveZero             // above 0
)

// length reads a length in the unit of the file.
func (t *fileTable) length(key string, allowed span) Length {
	v, ok := t.values[key]
	if !ok {
		return Length{}
	}
	mm, err := t.measure(v, allowed)
	if err != nil {
		t.faults = append(t.faults, fault.At(t.at(key), err))
	}
	return GivenAt(mm, t.at(key))
}

// measure returns the length of a value of the file in mm.
func (r *fileReader) measure(v any, allowed span) (float64, error) {
	var mm float64
	var err error
	switch v := v.(type) {
	case int64:
		mm, err = length.Bounded(asGiven(v), float64(v)*r.unit.MM())
	case float64:
		mm, err = length.Bounded(asGiven(v), v*r.unit.MM())
	case string:
		mm, err = length.Parse(v, r.unit)
	default:
		err = &fault.Fault{Cause: "must be a length, but is " + asGiven(v), Hint: length.Hint}
	}
	switch {
	case err != nil:
		return 0, err
	case mm < 0 && allowed != anywhere:
		return 0, &fault.Fault{Cause: "must not be negative, but is " + asGiven(v)}
	case mm == 0 && allowed == aboveZero:
		return 0, &fault.Fault{Cause: "must be more than 0, but is " + asGiven(v)}
	}
	return mm, nil
}

const (
	pointsForm = `[[0, 0], [3, "4 1/2"]]`
	pointsHint = "a point is [x, y], and points are listed as " + pointsForm
)

// points reads a list of at least two points.
func (t *fileTable) points(key string) Points {
	v, ok := t.values[key]
	if !ok {
		return Points{}
	}
	where := t.spot.child(key)
	p := Points{Value: GivenAt([]plane.Point(nil), t.at(key))}
	elements, ok := v.([]any)
	if !ok {
		t.report(p.Place, "must be a list of points, but is "+asGiven(v), pointsHint)
		return p
	}
	if len(elements) < 2 {
		t.report(p.Place, fmt.Sprintf("has %s, and needs at least two", wording.Counted(len(elements), "point")), pointsHint)
	}
	p.V = make([]plane.Point, 0, len(elements))
	p.Lines = make([]int, 0, len(elements))
	for i, e := range elements {
		at := p.Place.On(where.element(i).lineOf())
		pair, ok := e.([]any)
		if !ok {
			// Most likely the inner brackets were left out, and every other
			// element would be reported too.
			t.report(at, fmt.Sprintf("point %d must be two numbers in brackets, but is %s", i+1, asGiven(e)), pointsHint)
			return p
		}
		p.V = append(p.V, t.point(at, i+1, pair))
		p.Lines = append(p.Lines, at.Line)
	}
	return p
}

// point reads the two coordinates of the nth point, counted from 1.
func (r *fileReader) point(at fault.Place, nth int, pair []any) plane.Point {
	if len(pair) != 2 {
		hint := pointsHint
		if len(pair) == 3 || len(pair) == 4 {
			hint = "a decimal is written with a point, not with a comma: [1.5, 3]"
		}
		r.report(at, fmt.Sprintf("point %d has %s, and needs two", nth, wording.Counted(len(pair), "number")), hint)
		return plane.Point{}
	}
	x, errX := r.measure(pair[0], anywhere)
	y, errY := r.measure(pair[1], anywhere)
	for _, err := range []error{errX, errY} {
		if err != nil {
			f := fault.At(at, err)
			f.Cause = fmt.Sprintf("point %d: %s", nth, f.Cause)
			r.faults = append(r.faults, f)
		}
	}
	return plane.Point{X: x, Y: y}
}

// asGiven gives a value as a message repeats it: what it is, where it is too long
// to be repeated.
func asGiven(v any) string {
	switch v := v.(type) {
	case string:
		return wording.Quoted(v)
	case []any:
		return "a list"
	case []map[string]any:
		return "a list of tables"
	case map[string]any:
		return "a table"
	case time.Time:
		return "a date or a time"
	case float64:
		if math.IsInf(v, 0) || math.IsNaN(v) {
			return strings.ToLower(strings.TrimPrefix(fmt.Sprint(v), "+"))
		}
	}
	return fmt.Sprint(v)
}
