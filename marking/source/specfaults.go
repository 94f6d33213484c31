package source

import (
	"fmt"
	"slices"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/wording"
)

// Rules of this file: a Spec that was made without a file is held to what Read sees to in
// one, so that nothing behind it meets a value that cannot be: an edge without points, a
// width of 0, a choice that there is not. Which keys go together is not looked at, but for
// those without which nothing can be worked out. A value without a place of its own is told
// by the key that a file would have it under. One that was not given and is no zero value
// all the same counts as given.

// Faults returns what of a Spec no file could have brought, in the order in which it stands
// there; none of one that Read returned.
func (s *Spec) Faults() fault.List {
	c := &specFaults{}
	top := fault.Place{File: s.File}
	units := []string{length.Inch.String(), length.Centimetre.String(), length.Millimetre.String()}
	chosen(c, top, "unit", s.Unit, units)
	c.length(top, "allowance", s.Allowance, fromZero)
	c.length(top.Under("cloth"), "width", s.ClothWidth, aboveZero)
	c.some(top, "piece", len(s.Pieces))
	for _, p := range s.Pieces {
		c.piece(p)
	}
	c.few(top, "seam", len(s.Seams))
	for _, seam := range s.Seams {
		for _, side := range seam.Sides {
			c.note(seam.Join, seam.Place, "join", refuseNames(len(side), joinHint))
		}
		c.length(seam.Place, "ease", seam.Ease, fromZero)
		c.length(seam.Place, "within", seam.Within, fromZero)
	}
	c.few(top, "trim", len(s.Trims))
	for _, trim := range s.Trims {
		c.trim(trim)
	}
	c.few(top, "ruffle", len(s.Ruffles))
	for _, r := range s.Ruffles {
		c.ruffle(r)
	}
	c.few(top, "binding", len(s.Bindings))
	for _, b := range s.Bindings {
		c.binding(b)
	}
	return c.list
}

// specFaults collects what cannot be.
type specFaults struct{ list fault.List }

func (c *specFaults) piece(p PieceSpec) {
	c.count(p.Place, "cut", p.Cut, maxCut)
	c.count(p.Place, "layers", p.Layers, maxCut)
	chosen(c, p.Place, "drawn", p.Drawn, drawnWords[:])
	chosen(c, p.Place, "print", p.Print, printWords[:])
	for _, way := range p.Transfer.V {
		chosen(c, p.Place, "transfer", GivenAt(way, p.Transfer.Place), transferWords[:])
	}
	c.points(p.Place, "grain", p.GrainPoints)
	c.some(p.Place, "edge", len(p.Edges))
	for _, e := range p.Edges {
		c.neededPoints(e.Place, "points", e.Points)
		c.length(e.Place, "allowance", e.Allowance, fromZero)
		c.length(e.Place, "hem", e.Hem, aboveZero)
		c.length(e.Place, "turn", e.Turn, fromZero)
	}
	c.few(p.Place, "tuck", len(p.Tucks))
	for _, t := range p.Tucks {
		c.tuck(t)
	}
	c.few(p.Place, "pleat", len(p.Pleats)+len(p.Pleatings))
	for _, k := range p.Pleatings {
		c.pleating(k)
	}
	for _, k := range p.Pleats {
		c.pleat(k)
	}
	c.few(p.Place, "line", len(p.Lines))
	for _, l := range p.Lines {
		chosen(c, l.Place, "kind", l.Kind, lineWords[:])
		if l.Along.Given() {
			c.needed(l.Place, "distance", l.Distance, aboveZero)
		} else {
			c.neededPoints(l.Place, "points", l.Points)
		}
	}
	c.few(p.Place, "notch", len(p.Notches))
	for _, n := range p.Notches {
		c.needed(n.Place, "at", n.At, fromZero)
	}
	if b := p.Block; b != nil {
		c.length(b.Place, "ends", b.Ends, fromZero)
		c.length(b.Place, "sides", b.Sides, fromZero)
		c.length(b.Place, "measured", b.Measured, aboveZero)
	}
}

func (c *specFaults) tuck(t TuckSpec) {
	c.needed(t.Place, "width", t.Width, aboveZero)
	c.neededCount(t.Place, "count", t.Count, maxFolds)
	c.needed(t.Place, "first", t.First, fromZero)
	c.length(t.Place, "spacing", t.Spacing, aboveZero)
	c.length(t.Place, "gap", t.Gap, fromZero)
	chosen(c, t.Place, "press", t.Press, pressWords[:])
	chosen(c, t.Place, "sewn", t.Sewn, stitchingWords[:])
	c.end(t.Place, t.End)
	if s := t.Sample; s != nil {
		c.neededCount(s.Place, "tucks", s.Tucks, maxFolds)
		c.needed(s.Place, "flat", s.Flat, aboveZero)
		c.needed(s.Place, "sewn", s.Sewn, aboveZero)
	}
}

func (c *specFaults) pleating(k PleatingSpec) {
	chosen(c, k.Place, "kind", k.Kind, pleatWords[:])
	c.needed(k.Place, "depth", k.Depth, aboveZero)
	c.count(k.Place, "count", k.Count, maxFolds)
	c.needed(k.Place, "first", k.First, fromZero)
	c.length(k.Place, "spacing", k.Spacing, aboveZero)
	c.length(k.Place, "gap", k.Gap, fromZero)
	chosen(c, k.Place, "press", k.Press, pressWords[:])
	c.end(k.Place, k.End)
}

func (c *specFaults) end(of fault.Place, e EndSpec) {
	chosen(c, of, "end", e.Shape, endWords[:])
	if e.Below.Given() {
		c.needed(of, "length", e.Length, aboveZero)
	}
	c.length(of, "step", e.Step, anywhere)
}

func (c *specFaults) pleat(k PleatSpec) {
	c.needed(k.Place, "at", k.At, fromZero)
	c.needed(k.Place, "depth", k.Depth, aboveZero)
	c.needed(k.Place, "length", k.Length, aboveZero)
	c.count(k.Place, "count", k.Count, maxFolds)
	if k.Count.V > 1 {
		c.needed(k.Place, "spacing", k.Spacing, aboveZero)
	}
	chosen(c, k.Place, "run", k.Run, runWords[:])
}

func (c *specFaults) trim(t TrimSpec) {
	c.along(t.Place, t.Along)
	chosen(c, t.Place, "kind", t.Kind, trimWords[:])
	c.length(t.Place, "width", t.Width, aboveZero)
	if t.Fullness.Given() || t.Fullness.V != 0 {
		c.factor(t.Place, "fullness", t.Fullness)
	}
	chosen(c, t.Place, "lies", t.Lies, liesWords[:])
	c.count(t.Place, "joins", t.Joins, maxFolds)
	c.length(t.Place, "join-takes", t.JoinTakes, fromZero)
}

func (c *specFaults) ruffle(r RuffleSpec) {
	c.along(r.Place, r.Along)
	c.factor(r.Place, "fullness", r.Fullness)
	c.needed(r.Place, "depth", r.Depth, aboveZero)
	c.length(r.Place, "hem", r.Hem, fromZero)
	c.length(r.Place, "turn", r.Turn, fromZero)
	c.length(r.Place, "seam", r.Seam, fromZero)
	c.length(r.Place, "joining", r.Joining, fromZero)
}

func (c *specFaults) binding(b BindingSpec) {
	c.along(b.Place, b.Along)
	c.needed(b.Place, "width", b.Width, aboveZero)
	chosen(c, b.Place, "fold", b.Fold, bindingWords[:])
	c.count(b.Place, "joins", b.Joins, maxFolds)
	c.length(b.Place, "joining", b.Joining, fromZero)
	c.length(b.Place, "square", b.Square, aboveZero)
}

// note notes what is wrong with a value, if anything is, at its own place or else at the
// key of what it belongs to.
func (c *specFaults) note(own, of fault.Place, key string, err error) {
	switch {
	case err == nil:
	case own == fault.Place{}:
		c.list = append(c.list, fault.At(of.Under(key), err))
	default:
		c.list = append(c.list, fault.At(own, err))
	}
}

// length looks at a length that may be left out, needed at one that may not.
func (c *specFaults) length(of fault.Place, key string, l Length, allowed span) {
	if l.Given() || l.V != 0 {
		c.needed(of, key, l, allowed)
	}
}

func (c *specFaults) needed(of fault.Place, key string, l Length, allowed span) {
	written := inMM(l.V)
	mm, err := length.Bounded(written, l.V)
	if err == nil {
		err = allowed.refuse(mm, written)
	}
	c.note(l.Place, of, key, err)
}

// inMM gives a length as a message about a Spec repeats it.
func inMM(mm float64) string { return asGiven(mm) + " mm" }

// count looks at a count that may be left out, neededCount at one that may not.
func (c *specFaults) count(of fault.Place, key string, n Count, most int) {
	if n.Given() || n.V != 0 {
		c.neededCount(of, key, n, most)
	}
}

func (c *specFaults) neededCount(of fault.Place, key string, n Count, most int) {
	c.note(n.Place, of, key, refuseCount(int64(n.V), most))
}

func (c *specFaults) factor(of fault.Place, key string, f Factor) {
	c.note(f.Place, of, key, refuseFactor(f.V, f.V))
}

// points looks at points that may be left out, neededPoints at those that may not.
func (c *specFaults) points(of fault.Place, key string, p Points) {
	if p.Given() || len(p.V) > 0 {
		c.neededPoints(of, key, p)
	}
}

func (c *specFaults) neededPoints(of fault.Place, key string, p Points) {
	c.note(p.Place, of, key, refuseFew(len(p.V)))
	for i, q := range p.V {
		for _, v := range []float64{q.X, q.Y} {
			if _, err := length.Bounded(inMM(v), v); err != nil {
				c.note(p.Place, of, key, ofPoint(i+1, err))
			}
		}
	}
}

// some looks whether there is anything of a kind, and no more than is drawn.
func (c *specFaults) some(of fault.Place, kind string, n int) {
	if n == 0 {
		c.list = append(c.list, &fault.Fault{Place: of, Cause: "no " + kind + " is described"})
	}
	c.few(of, kind, n)
}

func (c *specFaults) few(of fault.Place, kind string, n int) {
	c.note(fault.Place{}, of, kind, refuseMany(n))
}

func (c *specFaults) along(of fault.Place, names []Text) {
	c.note(fault.Place{}, of, "along", refuseNames(len(names), alongHint))
}

// chosen looks whether a value is one of the choices, whose words these are.
func chosen[E ~int](c *specFaults, of fault.Place, key string, v Value[E], words []string) {
	if v.V < 0 || int(v.V) >= len(words) {
		known := slices.DeleteFunc(slices.Clone(words), func(word string) bool { return word == "" })
		c.note(v.Place, of, key, &fault.Fault{Cause: fmt.Sprintf("choice %d is none of %s", int(v.V), wording.Listed(known, "and"))})
	}
}
