package source

// Rules of this file: a line runs along an edge, or through points of its own.

const (
	lineNowhere = "where the line runs is missing"
	endsAnyway  = "from and to name the edges that a line through points runs from and to; one along an edge runs from cutting line to cutting line anyway"
)

func (t *fileTable) line() LineSpec {
	t.know("along", "distance", "points", "smooth", "centre", "from", "to", "kind")
	const either = "give the edge it runs along and its distance from it, or give its points"
	if t.has("points") {
		t.refuseBeside("along", "points", either)
		t.refuseBeside("distance", "points", either)
	} else {
		t.refuseWithout("smooth", "points", "smooth draws a curve through points; a line along an edge is as that edge is")
		t.refuseWithout("centre", "points", either)
		t.refuseWithout("from", "points", endsAnyway)
		t.refuseWithout("to", "points", endsAnyway)
		t.refuseWithout("along", "distance", either)
		t.refuseWithout("distance", "along", either)
		if !t.has("along") && !t.has("distance") && len(t.meant) == 0 {
			t.report(t.place, lineNowhere, either)
		}
	}
	line := LineSpec{
		Key:      t.name,
		Place:    t.place,
		Along:    t.reference("along"),
		Distance: t.length("distance", aboveZero),
		Points:   t.points("points"),
		Smooth:   t.yes("smooth"),
		Centre:   t.centre(),
		From:     t.reference("from"),
		To:       t.reference("to"),
		Kind:     choice[LineKind](t, "kind", lineWords[:]),
	}
	t.arc(line.Points, line.Centre)
	return line
}
