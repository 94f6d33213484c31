package start

import (
	"math"
)

// Rules of this file: a collar is as long as its neck is sewn, or less by a step. Pocket and cap are
// fitted to nothing.

func (b block) collar(p filling, s set) filling {
	p.draft, p.Note = "collar", "# Half of it, from the middle to its end."
	neck := 0.0
	for _, half := range []struct {
		deep  int
		upper []named
	}{{b.neckFront, upper(s.yoke, s.front)}, {b.neckBack, upper(s.backYoke, s.back)}} {
		middle := 0
		if half.upper != nil && !s.onFold(half.upper[0]) {
			middle = b.lap
		}
		neck += b.neckSewn(half.deep, middle)
	}
	long := int(math.Floor(neck/stepMM(b.unit))) + b.allowance
	deep := steps(b.unit, 51) + 2*b.allowance
	p.CentrePoints = b.straightUp(point{0, 0}, deep)
	p.Neck = b.points(point{0, 0}, point{long, 0})
	round := deep / 2
	p.Outer = b.points(point{0, deep}, point{(long - round) / 2, deep}, point{long - round, deep}, point{long - round/4, deep - round/4}, point{long, deep - round}, point{long, 0})
	return p
}

func (b block) pocket(p filling) filling {
	p.draft, p.Hem, p.Note = "pocket", written(b.unit, b.smallHem), "# A patch pocket, drawn whole."
	wide, high := 2*steps(b.unit, 54), steps(b.unit, 127)
	at := func(across, up float64) point {
		return point{int(across * float64(wide)), int(up * float64(high))}
	}
	p.Mouth = b.points(at(0, 1), at(1, 1))
	right := []point{at(1, 1), at(1, 0.75), at(1, 0.45), at(0.92, 0.16)}
	all := append(right, at(0.5, 0))
	for i := len(right) - 1; i >= 0; i-- {
		all = append(all, mirrored(right[i:i+1], wide)...)
	}
	p.Rim = b.points(all...)
	return p
}

// headRound is how far it is round a child's head, in mm: 12 1/2 in and a fifth of the height
// (from memory, and no more than a beginning).
func (c child) headRound() float64 { return 12.5*25.4 + c.height/5 }

func (b block) bonnet(p filling) filling {
	p.draft, p.Hem, p.Note = "cap", written(b.unit, b.smallHem), "# One side of a little cap; the fold runs over the head."
	deep := steps(b.unit, b.child.headRound()*0.36) + b.smallHem + b.turn
	high := steps(b.unit, b.child.headRound()*0.36)
	at := func(across, up float64) point {
		return point{int(across * float64(deep)), int(up * float64(high))}
	}
	p.Crown = b.points(point{0, high}, at(0.6, 1))
	p.Face = b.points(point{0, 0}, point{0, high})
	p.Neck = b.points(point{0, 0}, at(0.8, 0))
	p.Back = b.points(at(0.6, 1), at(0.85, 0.9), at(1, 0.62), at(0.97, 0.28), at(0.8, 0))
	return p
}
