package source

import (
	"fmt"

	"tuckmark/marking/fault"
)

// Rules of this file: it knows which keys of the tables beside the pieces go together.

// mostAlong is how many edges one seam side, trim, ruffle or binding may name. It
// bounds the time of walking them.
const mostAlong = 100

// garment reads what stands beside the pieces.
func (t *fileTable) garment(spec *Spec) {
	spec.Seams = each(t, "seam", (*fileTable).seam)
	spec.Trims = each(t, "trim", (*fileTable).trim)
	spec.Ruffles = each(t, "ruffle", (*fileTable).ruffle)
	spec.Bindings = each(t, "binding", (*fileTable).binding)
	if s := t.table("sewing"); s != nil {
		s.know(sewingKeys...)
		spec.Sewing = SewingSpec{
			Needle: s.printed("needle"), Thread: s.printed("thread"), Stitch: s.printed("stitch"),
			Tension: s.printed("tension"), Position: s.printed("position"),
		}
	}
	if f := t.table("fit"); f != nil {
		f.know(fitKeys...)
		spec.Fit = FitSpec{Chest: f.length("chest", aboveZero), Waist: f.length("waist", aboveZero), Length: f.length("length", aboveZero)}
	}
}

const joinHint = `write join = ["front.shoulder", "back.shoulder"]; a side of several edges is a list of its own: join = ["sleeve.cap", ["front.armhole", "back.armhole"]]`

func (t *fileTable) seam() SeamSpec {
	t.know(seamKeys...)
	t.need("join", "it names the two edges that are sewn together: "+`join = ["front.shoulder", "back.shoulder"]`)
	s := SeamSpec{
		Key:      t.name,
		Place:    t.place,
		Join:     t.at("join"),
		Meet:     t.meet(),
		Ease:     t.length("ease", fromZero),
		Within:   t.length("within", fromZero),
		Gathered: t.yes("gathered"),
	}
	if s.Gathered {
		t.refuseBeside("within", "gathered", "a gathered side is drawn up to the other, whatever it measures: leave within out")
	}
	v, given := t.values["join"]
	if !given {
		return s
	}
	sides, isList := v.([]any)
	switch {
	case !isList:
		t.report(s.Join, "must be a list of two edges, but is "+asGiven(v), joinHint)
		return s
	case len(sides) != 2:
		t.report(s.Join, fmt.Sprintf("joins two sides, but names %d", len(sides)), joinHint)
		return s
	}
	for i, side := range sides {
		switch side := side.(type) {
		case string:
			s.Sides[i] = t.edgeNames("join", []any{side}, joinHint)
		case []any:
			if len(side) == 0 {
				t.report(s.Join, emptySide(i+1), joinHint)
				continue
			}
			s.Sides[i] = t.edgeNames("join", side, joinHint)
		default:
			t.report(s.Join, fmt.Sprintf("side %d must be the name of an edge, but is %s", i+1, asGiven(side)), joinHint)
		}
	}
	return s
}

const meetHint = `write meet = "hem", or meet = ["hem", "lower edge"] where the second side calls it otherwise`

// meet reads the names of the edges beside a seam that come together at one end of it.
func (t *fileTable) meet() [2]Text {
	at := t.at("meet")
	switch v := t.values["meet"].(type) {
	case nil:
		return [2]Text{}
	case string:
		name := t.reference("meet")
		return [2]Text{name, name}
	case []any:
		first, second, ok := twoTexts(v)
		if !ok {
			t.report(at, "must name one edge, or two, in quotes", meetHint)
			return [2]Text{}
		}
		t.note(at, checkName(first))
		t.note(at, checkName(second))
		return [2]Text{GivenAt(first, at), GivenAt(second, at)}
	default:
		t.report(at, "must be the name of an edge, but is "+asGiven(v), meetHint)
		return [2]Text{}
	}
}

// twoTexts returns the two texts of a list of two.
func twoTexts(list []any) (first, second string, ok bool) {
	if len(list) != 2 {
		return "", "", false
	}
	first, isText := list[0].(string)
	second, both := list[1].(string)
	return first, second, isText && both
}

const alongHint = `write along = ["front.neck", "back.neck"]: piece and edge`

// along reads the edges that something runs along.
func (t *fileTable) along() []Text {
	t.need("along", "it names the edges that it runs along: "+`along = ["front.neck", "back.neck"]`)
	switch v := t.values["along"].(type) {
	case nil:
		return nil
	case string:
		return t.edgeNames("along", []any{v}, alongHint)
	case []any:
		return t.edgeNames("along", v, alongHint)
	default:
		t.report(t.at("along"), "must be a list of edges, but is "+asGiven(v), alongHint)
		return nil
	}
}

// edgeNames reads the names of edges out of a list.
func (t *fileTable) edgeNames(key string, list []any, hint string) []Text {
	at := t.at(key)
	if err := refuseNames(len(list), hint); err != nil {
		t.note(at, err)
		return nil
	}
	var names []Text
	for i, v := range list {
		name, isText := v.(string)
		if !isText {
			t.report(at, fmt.Sprintf("name %d must be text in quotes, but is %s", i+1, asGiven(v)), hint)
			return nil
		}
		t.note(at, checkName(name))
		names = append(names, GivenAt(name, at))
	}
	return names
}

func emptySide(nth int) string { return fmt.Sprintf("side %d names no edge", nth) }

// refuseNames refuses no name at all, and more than are measured. The hint says how to
// write some.
func refuseNames(n int, hint string) error {
	switch {
	case n == 0:
		return &fault.Fault{Cause: "names no edge", Hint: hint}
	case n > mostAlong:
		return &fault.Fault{Cause: fmt.Sprintf("names %d edges; at most %d are measured", n, mostAlong), Hint: "divide it"}
	}
	return nil
}

func (t *fileTable) trim() TrimSpec {
	t.know(trimKeys...)
	return TrimSpec{
		Key:       t.name,
		Place:     t.place,
		Along:     t.along(),
		Kind:      choice[TrimKind](t, "kind", trimWords[:]),
		Width:     t.length("width", aboveZero),
		Fullness:  t.factor("fullness", fullnesses),
		Lies:      choice[Lies](t, "lies", liesWords[:]),
		Joins:     t.count("joins", maxFolds),
		JoinTakes: t.length("join-takes", fromZero),
	}
}

func (t *fileTable) ruffle() RuffleSpec {
	t.know(ruffleKeys...)
	t.need("fullness", "it is how many times as long as its edge the ruffle is cut: fullness = 2")
	t.need("depth", `it is how deep the finished ruffle hangs: depth = "3 1/2"`)
	return RuffleSpec{
		Key:      t.name,
		Place:    t.place,
		Along:    t.along(),
		Fullness: t.factor("fullness", fullnesses),
		Depth:    t.length("depth", aboveZero),
		Hem:      t.length("hem", fromZero),
		Turn:     t.length("turn", fromZero),
		Seam:     t.length("seam", fromZero),
		Joining:  t.length("joining", fromZero),
		Round:    t.yes("round"),
	}
}

func (t *fileTable) binding() BindingSpec {
	t.know(bindingKeys...)
	t.need("width", `it is how wide the finished binding shows: width = "1/4"`)
	return BindingSpec{
		Key:     t.name,
		Place:   t.place,
		Along:   t.along(),
		Width:   t.length("width", aboveZero),
		Fold:    choice[BindingFold](t, "fold", bindingWords[:]),
		Joins:   t.count("joins", maxFolds),
		Joining: t.length("joining", fromZero),
		Square:  t.length("square", aboveZero),
	}
}
