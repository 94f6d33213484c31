package source

import "tuckmark/marking/fault"

// Rules of this file: what joins pieces, and what is sewn to them, is held to what Read sees to,
// as faults.go says.

func (s SeamSpec) faults(p part) {
	at := p.at("join", s.Join)
	for i, side := range s.Sides {
		if len(side) == 0 {
			p.note(at, &fault.Fault{Cause: emptySide(i + 1), Hint: joinHint})
			continue
		}
		p.note(at, refuseNames(len(side), joinHint))
		p.names(side, at)
	}
	first, second := p.text("meet", s.Meet[0]), p.text("meet", s.Meet[1])
	if first.given != second.given {
		p.report(p.place.Under("meet"), "names an edge beside one side alone")
	}
	p.length("ease", s.Ease, fromZero)
	p.refuseBeside(p.length("within", s.Within, fromZero), said{key: "gathered", given: s.Gathered})
}

func (s TrimSpec) faults(p part) {
	p.along(s.Along)
	word(p, "kind", s.Kind, trimWords[:])
	p.length("width", s.Width, aboveZero)
	p.factor("fullness", s.Fullness, fullnesses)
	word(p, "lies", s.Lies, liesWords[:])
	p.count("joins", s.Joins, maxFolds)
	p.length("join-takes", s.JoinTakes, fromZero)
}

func (s RuffleSpec) faults(p part) {
	p.along(s.Along)
	p.need(p.factor("fullness", s.Fullness, fullnesses), p.length("depth", s.Depth, aboveZero))
	p.length("hem", s.Hem, fromZero)
	p.length("turn", s.Turn, fromZero)
	p.length("seam", s.Seam, fromZero)
	p.length("joining", s.Joining, fromZero)
}

func (s BindingSpec) faults(p part) {
	p.along(s.Along)
	p.need(p.length("width", s.Width, aboveZero))
	word(p, "fold", s.Fold, bindingWords[:])
	p.count("joins", s.Joins, maxFolds)
	p.length("joining", s.Joining, fromZero)
	p.length("square", s.Square, aboveZero)
}

func (s FitSpec) faults(p part) {
	p.length("chest", s.Chest, aboveZero)
	p.length("waist", s.Waist, aboveZero)
	p.length("length", s.Length, aboveZero)
}

func (s SewingSpec) faults(p part) {
	p.printed("needle", s.Needle)
	p.printed("thread", s.Thread)
	p.printed("stitch", s.Stitch)
	p.printed("tension", s.Tension)
	p.printed("position", s.Position)
}
