package lay

// Rules of this file: what is cut from folded cloth and what from single, in three
// ways.
//
//   - On folded cloth a piece with an edge on the fold lies with it there. Of any other
//     piece two are cut at a time, one out of each layer: a left and a right.
//   - On single cloth a piece with an edge on the fold is opened out, and each is cut
//     by itself.
//   - What is wider than folded cloth is cut from single cloth.

// poses is a piece in all the ways it can be laid.
type poses struct {
	count  int
	whole  *pose
	half   *pose // lies on the fold; nil where it has none along the grain
	double *pose // the whole as it lies on folded cloth; nil where it is too wide for that
	opened bool  // it has a fold, but none to lie on
}

// posesOn returns the ways in which a piece, of which the whole is given, can be laid
// on cloth, single and folded.
func (i item) posesOn(cloth, folded *band, whole *pose) poses {
	p := poses{count: i.count, whole: whole}
	if i.fold != nil && i.foldsAlongGrain() {
		onFold := newPose(i.name, i.outline, i.foldDirection())
		// A fold drawn a hair crooked may make the half wider than half the whole.
		if folded.fits(onFold.width) {
			onFold.onFold = true
			onFold.see(cloth, 1)
			p.half = onFold
		}
	}
	p.opened = i.fold != nil && p.half == nil
	faces := 1
	if i.fold == nil && i.count > 1 {
		faces = 2
	}
	whole.see(cloth, faces)
	if folded.fits(whole.width) {
		double := *whole
		double.faces = whole.faces[:1] // the layer below is the one turned over
		p.double = &double
	}
	return p
}

// batch is so many of a thing to lay on one part of the cloth, one after another.
type batch struct {
	pose  *pose
	count int  // of places it takes, may be 0
	upper bool // they are cut out of the upper layer only
	// before is how many of it lie already: every second is turned over.
	before int
}

// shares are pieces shared out between folded and single cloth.
type shares struct{ folded, single []batch }

// way shares pieces out, in their order.
type way func(pieces []poses) shares

// foldedThenSingle lays on single cloth what folded cloth is not for: the odd one of
// three or five, and a piece that is opened out.
func foldedThenSingle(pieces []poses) (s shares) {
	for _, p := range pieces {
		switch {
		case p.half != nil:
			s.folded = append(s.folded, batch{pose: p.half, count: p.count})
		case p.double != nil && !p.opened:
			s.folded = append(s.folded, batch{pose: p.double, count: p.count / 2})
			s.single = append(s.single, batch{pose: p.whole, count: p.count % 2})
		default:
			s.single = append(s.single, batch{pose: p.whole, count: p.count})
		}
	}
	return s
}

// foldedThroughout lays on folded cloth all that is narrow enough, an odd one on the
// upper layer. Where nothing is cut out of both layers there is no use in folding, and
// it shares out as foldedThenSingle does.
func foldedThroughout(pieces []poses) (s shares) {
	both := false
	for _, p := range pieces {
		switch {
		case p.half != nil:
			s.folded = append(s.folded, batch{pose: p.half, count: p.count})
			both = true
		case p.double != nil:
			s.folded = append(s.folded, batch{pose: p.double, count: p.count / 2},
				batch{pose: p.double, count: p.count % 2, upper: true})
			both = both || p.count > 1
		default:
			s.single = append(s.single, batch{pose: p.whole, count: p.count})
		}
	}
	if !both {
		return foldedThenSingle(pieces)
	}
	return s
}

// singleThroughout lays everything on single cloth.
func singleThroughout(pieces []poses) (s shares) {
	for _, p := range pieces {
		s.single = append(s.single, batch{pose: p.whole, count: p.count})
	}
	return s
}
