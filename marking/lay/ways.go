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
	count    int // for each of the garments
	garments int
	whole    *pose
	half     *pose // lies on the fold; nil where it has none along the grain
	double   *pose // the whole as it lies on folded cloth; nil where it is too wide for that
	opened   bool  // it has a fold, but none to lie on
}

// posesOn returns the ways in which a piece, of which the whole is given, can be laid
// on cloth, single and folded.
func (i item) posesOn(cloth, folded *band, whole *pose) poses {
	p := poses{count: i.count, garments: i.garments, whole: whole}
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

// total is how many are cut.
func (p poses) total() int { return p.count * p.garments }

// pairs is how many twos of it are cut out of both layers of folded cloth: a left and a
// right of one garment, or any two of what is its own mirror image.
func (p poses) pairs() int {
	if p.opened {
		return p.total() / 2
	}
	return p.count / 2 * p.garments
}

// alike is a batch of what lies one way, however many there are.
func alike(pose *pose, count int) batch { return batch{pose: pose, count: count, each: 1} }

// single is a batch of all that are cut, one after another.
func (p poses) single() batch { return batch{pose: p.whole, count: p.total(), each: p.count} }

// batch is so many of a thing to lay on one part of the cloth, one after another.
type batch struct {
	pose  *pose
	count int  // of places it takes, may be 0
	upper bool // they are cut out of the upper layer only
	// each is how many of them belong to one garment, of which every second is turned over;
	// before is how many lie already.
	each, before int
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
			s.folded = append(s.folded, alike(p.half, p.total()))
		case p.double != nil && !p.opened:
			s.folded = append(s.folded, alike(p.double, p.pairs()))
			s.single = append(s.single, alike(p.whole, p.total()-2*p.pairs()))
		default:
			s.single = append(s.single, p.single())
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
			s.folded = append(s.folded, alike(p.half, p.total()))
			both = true
		case p.double != nil:
			odd := alike(p.double, p.total()-2*p.pairs())
			odd.upper = true
			s.folded = append(s.folded, alike(p.double, p.pairs()), odd)
			both = both || p.pairs() > 0
		default:
			s.single = append(s.single, p.single())
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
		s.single = append(s.single, p.single())
	}
	return s
}
