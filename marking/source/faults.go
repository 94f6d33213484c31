package source

import (
	"tuckmark/marking/fault"
)

// Rules of this file: a Spec that a program makes is held to what Read sees to in a file,
// so that whoever works with one may rely on it: what must be there is there, every value
// lies within its bounds, no key comes twice. Bounds and causes are those of Read. A fault
// stands at the place of its value; where that has none, at its dotted path.

// Faults returns all that a Spec breaks of what Read sees to; none of one that Read made, but that it
// has more, all together, than is worked out (bounds.go).
// Letters are not held against a font. A nil Spec describes nothing.
func (s *Spec) Faults() fault.List {
	if s == nil {
		s = &Spec{}
	}
	var faults fault.List
	p := part{fault.Place{File: s.File}, &faults}
	p.printed("title", s.Title)
	p.printed("size", s.Size)
	word(p, "unit", s.Unit, unitWords())
	p.length("allowance", s.Allowance, fromZero)
	p.under("cloth").length("width", s.ClothWidth, aboveZero)
	p.under("cloth").flag("see-through", s.SeeThrough)
	if len(s.Pieces) == 0 {
		p.report(p.place, noneDescribed("piece"))
	}
	all := p.group("piece", len(s.Pieces))
	for _, one := range s.Pieces {
		one.faults(all.next(one.Key, one.Place))
	}
	all = p.group("seam", len(s.Seams))
	for _, one := range s.Seams {
		one.faults(all.next(one.Key, one.Place))
	}
	all = p.group("trim", len(s.Trims))
	for _, one := range s.Trims {
		one.faults(all.next(one.Key, one.Place))
	}
	all = p.group("ruffle", len(s.Ruffles))
	for _, one := range s.Ruffles {
		one.faults(all.next(one.Key, one.Place))
	}
	all = p.group("binding", len(s.Bindings))
	for _, one := range s.Bindings {
		one.faults(all.next(one.Key, one.Place))
	}
	s.Sewing.faults(p.under("sewing"))
	s.Fit.faults(p.under("fit"))
	if len(faults) == 0 {
		all := noAmounts(1)
		all.count(s)
		faults = all.tooMuch("the file has")
	}
	return faults
}

func (s PieceSpec) faults(p part) {
	p.printed("name", s.Name)
	p.count("cut", s.Cut, maxCut)
	p.count("layers", s.Layers, maxCut)
	fold := p.text("fold", s.Fold)
	word(p, "drawn", s.Drawn, drawnWords[:])
	word(p, "drawn-to", s.DrawnTo, drawnToWords[:])
	printed := word(p, "print", s.Print, printWords[:])
	if s.Print.V == PrintHalf || s.Print.V == PrintWhole {
		p.refuseWithout(printed, fold)
	}
	p.transfers(s.Transfer)
	p.factor("enlarge", s.Enlarge, enlargements)
	p.note(p.at("enlarge", s.Enlarge.Place), s.refuseEnlarged())
	grain := p.text("grain", s.GrainAlong)
	if line := p.points("grain", s.GrainPoints); line.given {
		if len(s.GrainPoints.V) > 2 {
			p.report(line.at, notTwoPoints(len(s.GrainPoints.V)))
		}
		p.refuseBeside(grain, line)
	}
	if s.Block != nil {
		s.Block.faults(p.within("block", s.Block.Place))
	}
	if len(s.Edges) == 0 {
		p.report(p.place, noneDescribed("edge"))
	}
	all := p.group("edge", len(s.Edges))
	for _, one := range s.Edges {
		one.faults(all.next(one.Key, one.Place))
	}
	all = p.group("tuck", len(s.Tucks))
	for _, one := range s.Tucks {
		one.faults(all.next(one.Key, one.Place))
	}
	all = p.group("pleat", len(s.EdgePleats)+len(s.PleatRows))
	for _, one := range s.EdgePleats {
		one.faults(all.next(one.Key, one.Place))
	}
	for _, one := range s.PleatRows {
		one.faults(all.next(one.Key, one.Place))
	}
	all = p.group("line", len(s.Lines))
	for _, one := range s.Lines {
		one.faults(all.next(one.Key, one.Place))
	}
	all = p.group("notch", len(s.Notches))
	for _, one := range s.Notches {
		one.faults(all.next(one.Key, one.Place))
	}
}

func (s BlockSpec) faults(p part) {
	p.length("ends", s.Ends, fromZero)
	p.length("sides", s.Sides, fromZero)
	p.length("measured", s.Measured, aboveZero)
}

func (s EdgeSpec) faults(p part) {
	points := p.points("points", s.Points)
	p.need(points)
	p.centre(s.Centre, s.Smooth, points, len(s.Points.V))
	allowance := p.length("allowance", s.Allowance, fromZero)
	hem := p.length("hem", s.Hem, aboveZero)
	turn := p.length("turn", s.Turn, fromZero)
	p.flag("marked", s.Marked)
	p.refuseBeside(allowance, hem)
	p.refuseWithout(turn, hem)
}

func (s TuckSpec) faults(p part) {
	p.need(
		p.text("beside", s.Beside),
		p.length("width", s.Width, aboveZero),
		p.count("count", s.Count, maxFolds),
		p.length("first", s.First, fromZero),
	)
	p.text("side", s.Side)
	p.refuseBeside(p.length("gap", s.Gap, fromZero), p.length("spacing", s.Spacing, aboveZero))
	s.groupFaults(p)
	word(p, "press", s.Press, pressWords[:])
	s.End.faults(p)
	word(p, "sewn", s.Sewn, stitchingWords[:])
	if s.Sample != nil {
		s.Sample.faults(p.within("sample", s.Sample.Place))
	}
}

func (e EndSpec) faults(p part) {
	below, far := p.text("below", e.Below), p.length("length", e.Length, aboveZero)
	shape, step := word(p, "end", e.Shape, endWords[:]), p.length("step", e.Step, anywhere)
	p.names(e.Also, below.at)
	p.refuseWithout(said{"below", below.at, len(e.Also) > 0}, below)
	p.refuseWithout(below, far)
	p.refuseWithout(far, below)
	p.refuseWithout(shape, below)
	from, to := p.text("from", e.From), p.text("to", e.To)
	p.refuseWithout(from, to)
	p.refuseWithout(to, from)
	p.refuseBeside(below, from)
	switch {
	case e.Shape.V == EndStepped:
		p.need(step)
	case step.given:
		p.report(step.at, stepAlone)
	}
}

func (s SampleSpec) faults(p part) {
	p.need(
		p.count("tucks", s.Tucks, maxFolds),
		p.length("flat", s.Flat, aboveZero),
		p.length("sewn", s.Sewn, aboveZero),
	)
}

// tucksAlone is said of ends that no row of pleats has.
const tucksAlone = "only tucks run from one line to another"

func (s PleatRowSpec) faults(p part) {
	p.need(
		p.text("beside", s.Beside),
		p.length("depth", s.Depth, aboveZero),
		p.length("first", s.First, fromZero),
	)
	p.text("side", s.Side)
	kind := word(p, "kind", s.Kind, pleatWords[:])
	p.count("count", s.Count, maxFolds)
	p.refuseBeside(p.length("gap", s.Gap, fromZero), p.length("spacing", s.Spacing, aboveZero))
	if press := word(p, "press", s.Press, pressWords[:]); s.Kind.V != KnifePleat {
		p.refuseBeside(press, kind)
	}
	if s.End.From.Given() || s.End.To.Given() {
		p.report(p.place, tucksAlone)
	}
	s.End.faults(p)
}

func (s EdgePleatSpec) faults(p part) {
	p.need(
		p.text("edge", s.Edge),
		p.text("from", s.From),
		p.length("at", s.At, fromZero),
		p.length("depth", s.Depth, aboveZero),
		p.text("toward", s.Toward),
		p.length("length", s.Length, aboveZero),
	)
	p.count("count", s.Count, maxFolds)
	if spacing := p.length("spacing", s.Spacing, aboveZero); s.Count.V > 1 {
		p.need(spacing)
	}
	word(p, "run", s.Run, runWords[:])
}

func (s LineSpec) faults(p part) {
	along, distance := p.text("along", s.Along), p.length("distance", s.Distance, aboveZero)
	beside, at, side := p.text("beside", s.Beside), p.length("at", s.At, aboveZero), p.text("side", s.Side)
	points := p.points("points", s.Points)
	smooth := said{"smooth", p.place.Under("smooth"), s.Smooth}
	p.centre(s.Centre, s.Smooth, points, len(s.Points.V))
	from, to, long := p.text("from", s.From), p.text("to", s.To), p.length("length", s.Length, aboveZero)
	word(p, "kind", s.Kind, lineWords[:])
	switch {
	case beside.given:
		for _, other := range []said{along, distance, points, smooth} {
			p.refuseBeside(other, beside)
		}
		p.need(at)
		p.refuseWithout(long, from)
		p.refuseBeside(long, to)
		return
	case points.given:
		p.refuseBeside(along, points)
		p.refuseBeside(distance, points)
	case !along.given && !distance.given && !at.given:
		p.report(p.place, lineNowhere)
	default:
		p.refuseWithout(along, distance)
		p.refuseWithout(distance, along)
		p.refuseWithout(smooth, points)
		p.refuseWithout(from, points)
		p.refuseWithout(to, points)
	}
	for _, s := range []said{at, side, long} {
		p.refuseWithout(s, beside)
	}
}

func (s NotchSpec) faults(p part) {
	p.need(
		p.text("edge", s.Edge),
		p.text("from", s.From),
		p.length("at", s.At, fromZero),
	)
}
