package source

// Rules of this file: it knows which keys of tucks and of pleats go together.

func (t *fileTable) tuck() TuckSpec {
	t.know(tuckKeys...)
	t.need("beside", `it names the edge or line that the tucks run along: beside = "centre front"`)
	t.need("width", `it is measured from the fold to the stitching: width = "1/8"`)
	t.need("count", "it says how many tucks there are: count = 6")
	t.need("first", `it is measured from the edge or line to the first fold: first = "3/8"`)
	k := TuckSpec{
		Key:      t.name,
		Place:    t.place,
		Beside:   t.reference("beside"),
		Side:     t.reference("side"),
		Width:    t.length("width", aboveZero),
		Count:    t.count("count", maxFolds),
		First:    t.length("first", fromZero),
		Spacing:  t.length("spacing", aboveZero),
		Gap:      t.length("gap", fromZero),
		Groups:   t.count("groups", maxFolds),
		Between:  t.length("between", fromZero),
		Betweens: t.lengths("betweens", fromZero),
		Press:    choice[Press](t, "press", pressWords[:]),
		End:      t.end("tucks are stitched"),
		Sewn:     choice[Stitching](t, "sewn", stitchingWords[:]),
	}
	t.refuseBeside("gap", "spacing", "spacing is from fold to fold, gap is what shows between two tucks: leave one of them out")
	t.inGroups(k)
	k.End.From, k.End.To = t.reference("from"), t.reference("to")
	const between = `from = "yoke line" and to = "waist line" have tucks stitched from one line to the other, free on both sides; each may be an edge`
	t.refuseWithout("from", "to", between)
	t.refuseWithout("to", "from", between)
	t.refuseBeside("below", "from", "below and length end tucks so far below one edge, from and to at two lines: choose one")
	if v, given := t.values["sample"]; given {
		// A sample is written on one line, not as a table of its own.
		if s := t.asTable("sample", v, sampleForm); s != nil {
			k.Sample = s.sample()
		}
	}
	return k
}

// end reads where folds end. sewn begins the sentence about it: "tucks are
// stitched".
func (t *fileTable) end(sewn string) EndSpec {
	first, also := t.below()
	e := EndSpec{
		Below:  first,
		Also:   also,
		Length: t.length("length", aboveZero),
		Shape:  choice[EndShape](t, "end", endWords[:]),
		Step:   t.length("step", anywhere),
	}
	together := sewn + ` to "length" below the edge that "below" names; leave both out to have them run from edge to edge`
	t.refuseWithout("below", "length", together)
	t.refuseWithout("length", "below", together)
	t.refuseWithout("end", "below", "end is the shape of the end line of folds that do not run from edge to edge")
	switch {
	case e.Shape.V == EndStepped:
		t.need("step", `it says how much longer each is than the one before, or, below 0, how much shorter: step = "1/4"`)
	case t.has("step"):
		t.report(t.at("step"), stepAlone, "a step makes each fold longer or shorter than the one before")
	}
	return e
}

const belowHint = `it names an edge, below = "neck", or edges that lie next to each other: below = ["neck", "shoulder"]`

// below reads the edges that folds hang from.
func (t *fileTable) below() (first Text, also []Text) {
	list, isList := t.values["below"].([]any)
	if !isList {
		return t.reference("below"), nil
	}
	names := t.edgeNames("below", list, belowHint)
	if names == nil {
		return GivenAt("", t.at("below")), nil
	}
	return names[0], names[1:]
}

const stepAlone = `has no meaning without end = "stepped"`

const sampleForm = `write sample = {tucks = 10, flat = "6", sewn = "3 9/16"}: how many were sewn, and how far apart two marks lay before and after`

func (t *fileTable) sample() *SampleSpec {
	t.know(sampleKeys...)
	t.need("tucks", sampleForm)
	t.need("flat", sampleForm)
	t.need("sewn", sampleForm)
	return &SampleSpec{
		Place: t.place,
		Tucks: t.count("tucks", maxFolds),
		Flat:  t.length("flat", aboveZero),
		Sewn:  t.length("sewn", aboveZero),
	}
}

func (t *fileTable) pleatRow() PleatRowSpec {
	if t.has("toward") { // which is known, though not here
		t.report(t.at("toward"), "belongs to a pleat in one edge", `which way a pleat across the piece is laid says press = "toward" or press = "away"`)
		delete(t.values, "toward")
	}
	t.know(pleatRowKeys...)
	t.need("depth", `it is how far the fold of the pleat lies over: depth = "1"`)
	t.need("first", `it is measured from the edge or line to the first fold line, or to the middle of the first box pleat: first = "2"`)
	p := PleatRowSpec{
		Key:     t.name,
		Place:   t.place,
		Beside:  t.reference("beside"),
		Side:    t.reference("side"),
		Kind:    choice[PleatKind](t, "kind", pleatWords[:]),
		Depth:   t.length("depth", aboveZero),
		Count:   t.count("count", maxFolds),
		First:   t.length("first", fromZero),
		Spacing: t.length("spacing", aboveZero),
		Gap:     t.length("gap", fromZero),
		Press:   choice[Press](t, "press", pressWords[:]),
		End:     t.end("pleats are pressed"),
	}
	t.refuseBeside("gap", "spacing", "spacing is from pleat to pleat on the flat cloth, gap is what shows between two: leave one of them out")
	if p.Kind.V != KnifePleat {
		t.refuseBeside("press", "kind", "the two folds of a box or inverted pleat lie opposite ways; press is for knife pleats")
	}
	return p
}

func (t *fileTable) edgePleat() EdgePleatSpec {
	t.know(edgePleatKeys...)
	t.need("edge", `it names the edge that is pleated: edge = "armhole"; a pleat across the whole piece has beside = "centre front" instead`)
	t.need("from", `it names the edge at whose corner measuring starts: from = "side"`)
	t.need("at", "it is measured along the edge to the fold line: at = 1")
	t.need("depth", `it is half the way from the fold line to the placement line: depth = "3/8"`)
	t.need("toward", `it names the edge that the fold is laid toward: toward = "side"`)
	t.need("length", `it says how long the lines are: length = "1 1/2"`)
	p := EdgePleatSpec{
		Key:     t.name,
		Place:   t.place,
		Edge:    t.reference("edge"),
		From:    t.reference("from"),
		At:      t.length("at", fromZero),
		Depth:   t.length("depth", aboveZero),
		Toward:  t.reference("toward"),
		Length:  t.length("length", aboveZero),
		Count:   t.count("count", maxFolds),
		Spacing: t.length("spacing", aboveZero),
		Run:     choice[Run](t, "run", runWords[:]),
	}
	if p.Count.V > 1 {
		t.need("spacing", `it is measured from fold line to fold line: spacing = "1 1/2"`)
	}
	return p
}
