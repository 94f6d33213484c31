package start

import (
	"math"
)

// Rules of this file: the cap of a sleeve is longer than its armhole by what is eased in, and that is
// worked out by stitch lines, as it is sewn.

// capEase is how much longer a cap may be than its armhole, in steps.
func (b block) capEase() int { return either(b.unit, 6, 4) }

func (b block) sleeve(p filling, n named) filling {
	p.draft, p.Note, p.Hem = "sleeve", "# Half of it, from the middle to the underarm.", written(b.unit, b.smallHem)
	if !n.isHalf() {
		p.Cut = "2"
	}
	long, high := steps(b.unit, 40)+b.smallHem+b.turn, steps(b.unit, 0.09*b.child.chest)
	wide := b.sleeveWidth(long, high)
	p.CentrePoints = b.straightUp(point{0, 0}, long+high)
	p.Cap = b.points(b.capLine(long, high, wide)...)
	p.Underarm = b.points(point{wide, long}, point{wide, 0})
	p.FootPoints = b.points(point{wide, 0}, point{0, 0})
	return p
}

// capLine goes from the middle of a sleeve to its underarm.
func (b block) capLine(long, high, wide int) []point {
	at := func(across, up float64) point {
		return point{int(across*float64(wide) + 0.5), long + int(up*float64(high)+0.5)}
	}
	return []point{at(0, 1), at(0.32, 0.92), at(0.65, 0.48), at(0.85, 0.14), at(1, 0)}
}

// sleeveWidth is how wide half a sleeve is for its cap to be longer than the armhole by about
// half of what may be eased in.
func (b block) sleeveWidth(long, high int) int {
	want := b.armSewn() + float64(b.capEase())*stepMM(b.unit)/4 // of half a cap
	best, off := 0, math.Inf(1)
	for wide := b.arm / 2; wide < 2*b.arm; wide++ {
		underarm := b.seamOf([]point{{wide, long}, {wide, 0}})
		if by := math.Abs(b.sewn(b.curve(b.capLine(long, high, wide), level), b.upright(0), underarm) - want); by < off {
			best, off = wide, by
		}
	}
	return best
}
