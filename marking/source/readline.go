package source

// Rules of this file: a line runs along an edge, or straight beside one or beside another
// line, or through points of its own; only one of these.

const (
	lineNowhere = "where the line runs is missing"
	endsAnyway  = "from and to name the edges that a line through points runs from and to; one along an edge runs from cutting line to cutting line anyway"
	oneCourse   = "give the edge it runs along and its distance from it, or what it lies beside and at what distance, or give its points"
	toLength    = "a line of a length begins at the edge that from names: leave length out where it runs to another"
)

func (t *fileTable) line() LineSpec {
	t.know(lineKeys...)
	switch {
	case t.has("beside"):
		for _, key := range []string{"along", "distance", "points", "smooth", "centre"} {
			t.refuseBeside(key, "beside", oneCourse)
		}
		t.need("at", `it is how far from that edge or line it lies: at = "5/8"`)
	case t.has("points"):
		t.refuseBeside("along", "points", oneCourse)
		t.refuseBeside("distance", "points", oneCourse)
	default:
		t.refuseWithout("smooth", "points", "smooth draws a curve through points; a line along an edge is as that edge is")
		t.refuseWithout("centre", "points", oneCourse)
		t.refuseWithout("from", "points", endsAnyway)
		t.refuseWithout("to", "points", endsAnyway)
		t.refuseWithout("along", "distance", oneCourse)
		t.refuseWithout("distance", "along", oneCourse)
		if !t.has("along") && !t.has("distance") && !t.has("at") && len(t.meant) == 0 {
			t.report(t.place, lineNowhere, oneCourse)
		}
	}
	for _, key := range []string{"at", "side", "length"} {
		t.refuseWithout(key, "beside", oneCourse)
	}
	if t.has("beside") {
		t.refuseWithout("length", "from", toLength)
		t.refuseBeside("length", "to", toLength)
	}
	line := LineSpec{
		Key:      t.name,
		Place:    t.place,
		Along:    t.reference("along"),
		Distance: t.length("distance", aboveZero),
		Beside:   t.reference("beside"),
		At:       t.length("at", aboveZero),
		Side:     t.reference("side"),
		Points:   t.points("points"),
		Smooth:   t.yes("smooth"),
		Centre:   t.centre(),
		From:     t.reference("from"),
		To:       t.reference("to"),
		Length:   t.length("length", aboveZero),
		Kind:     choice[LineKind](t, "kind", lineWords[:]),
	}
	t.arc(line.Points, line.Centre)
	return line
}
