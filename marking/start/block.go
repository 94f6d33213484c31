package start

import (
	"tuckmark/marking/length"
	"tuckmark/marking/plane"
)

// Rules of this file: all pieces of a garment are drafted from one block, in steps. Its
// proportions are common practice for a child's loose garment, and no more than a beginning:
// half the neck an eighth of the chest, the armhole as deep as a quarter of it and a little.
// Allowances and hems are inside.

// block are the measures that the pieces of a garment share.
type block struct {
	unit  length.Unit
	child child

	allowance, turn         int // of a seam, and what a hem turns in
	hem, smallHem, placket  int // depths of hems: of a skirt, a wrist or a pocket, an opening
	lap                     int // from the cut edge of an opening to the middle of the body
	neck                    int // from the middle of the body to the shoulder
	neckFront, neckBack     int // how deep the neck is
	shoulder, drop          int // to where the shoulder ends, and how much lower that is
	arm                     int // how deep the armhole ends below the neck's end
	wide                    int // from the middle to the side, under the arms
	flare, rise             int // how much wider that is at the hem, and how much higher the hem
	toHem, toWaist, toLower int // from under the arms, down to the cut edge; of a yoke to its own
	notch                   int // from the side along the armhole
}

func newBlock(u length.Unit, c child) block {
	of := func(mm float64) int { return steps(u, mm) }
	b := block{
		unit: u, child: c,
		allowance: either(u, 3, 2), turn: either(u, 2, 1), // 3/8 in or 1 cm, 1/4 in or 5 mm
		hem: either(u, 16, 10), smallHem: either(u, 6, 4), placket: either(u, 6, 4),
		neck: of(c.chest/8 + 3), neckFront: of(c.chest/8 + 9), neckBack: of(32),
		drop: of(0.045 * c.chest), arm: of(c.chest/4 + 12), flare: of(22), rise: of(6), notch: of(50),
	}
	b.shoulder = b.neck + of(0.115*c.chest)
	b.lap = b.placket + b.turn + either(u, 4, 2)
	b.wide = of(c.chest/4+25) + b.allowance
	b.toHem = of(0.36*c.height) + b.hem + b.turn
	b.toWaist = of(0.09*c.height) + b.allowance
	b.toLower = of(25) + b.allowance
	return b
}

// pastMiddle is how far the two halves of an opening reach beyond the middle of the body, folded
// back.
func (b block) pastMiddle() int { return b.lap - b.placket - b.turn }

// corner is where neck and shoulder meet on a piece: so far across from its left side is the
// middle of the body, and so far up that corner.
func (b block) corner(middle, top int) point { return point{middle + b.neck, top} }

// neckLine goes from the left edge of a piece, whose middle is so far across, to the shoulder.
// Both necks come to it square, so that the two shoulders are sewn alike.
func (b block) neckLine(middle, top, deep int) []point {
	at := func(across, down float64) point {
		return point{middle + int(float64(b.neck)*across+0.5), top - int(float64(deep)*down+0.5)}
	}
	points := []point{{0, top - deep}}
	if middle > 0 {
		points = append(points, at(0, 1))
	}
	if deep == b.neckFront {
		points = append(points, at(0.47, 0.89), at(0.82, 0.55))
	} else {
		points = append(points, at(0.5, 0.93), at(0.8, 0.7))
	}
	corner := b.corner(middle, top)
	return append(points, point{corner.across - 1, corner.up - either(b.unit, 3, 2)}, corner)
}

// shoulderLine goes from the neck to the arm.
func (b block) shoulderLine(middle, top int) []point {
	return []point{b.corner(middle, top), {middle + b.shoulder, top - b.drop}}
}

// armLine goes from the shoulder down to the side.
func (b block) armLine(middle, top int) []point {
	deep, out := float64(b.arm-b.drop), b.wide-b.shoulder
	at := func(across int, share float64) point {
		return point{middle + b.shoulder + across, top - b.drop - int(deep*share+0.5)}
	}
	return []point{at(0, 0), at(-steps(b.unit, 5), 0.14), at(-steps(b.unit, 10), 0.45), at(-steps(b.unit, 2), 0.76), at(out/3, 0.97), at(out, 1)}
}

// hemLine goes from the side back to the left edge, and rises to the side that is flared: so it
// comes to it square.
func hemLine(side point) []point {
	return []point{side, {side.across * 2 / 3, (side.up*4 + 4) / 9}, {side.across / 3, 0}, {0, 0}}
}

// mm are points in mm.
func (b block) mm(points []point) plane.Path {
	var path plane.Path
	for _, p := range points {
		path = append(path, plane.Point{X: float64(p.across) * stepMM(b.unit), Y: float64(p.up) * stepMM(b.unit)})
	}
	return path
}

// limit is a line that ends a seam: what counts lies to one side of it.
type limit struct{ origin, inward plane.Point }

// seamOf is the stitch line of a straight edge that has the piece to its right.
func (b block) seamOf(edge []point) limit {
	path := b.mm(edge)
	in := path.StartDirection().Left().Mul(-1)
	return limit{path[0].Add(in.Mul(float64(b.allowance) * stepMM(b.unit))), in}
}

// upright is a line straight up, so far across; what counts lies to the right of it.
func (b block) upright(across int) limit {
	return limit{plane.Point{X: float64(across) * stepMM(b.unit)}, plane.Point{X: 1}}
}

// curve is a smooth edge, which sets out level from a fold and freely from elsewhere.
func (b block) curve(edge []point, setsOut plane.Point) plane.Path {
	return plane.Curve(b.mm(edge), setsOut, plane.Point{})
}

var (
	level  = plane.Point{X: 1}
	freely = plane.Point{}
)

// sewn is how long a curved edge is sewn, in mm, that has the piece to its right: its stitch
// line between those of its neighbours.
func (b block) sewn(edge plane.Path, ends ...limit) float64 {
	line, ok := plane.Offset(edge.Reversed(), float64(b.allowance)*stepMM(b.unit), 0)
	if !ok {
		return 0
	}
	path := line.Path
	for _, end := range ends {
		if parts := plane.HalfPlane(path, make([]int, len(path)-1), end.origin, end.inward); len(parts) > 0 {
			path = parts[0].Path
		}
	}
	return path.Length()
}

// armSewn is how long an armhole is sewn, in mm.
func (b block) armSewn() float64 {
	side := []point{{b.wide, 0}, {b.wide, -b.toHem}}
	return b.sewn(b.curve(b.armLine(0, b.arm), freely), b.seamOf(b.shoulderLine(0, b.arm)), b.seamOf(side))
}

// neckSewn is how long one half of a neck is sewn, in mm, so deep, on a piece whose middle is
// so far across: 0 on the fold, else beside an opening.
func (b block) neckSewn(deep, middle int) float64 {
	setsOut, from := level, 0
	if middle > 0 {
		setsOut, from = freely, b.placket+b.turn
	}
	return b.sewn(b.curve(b.neckLine(middle, b.arm, deep), setsOut), b.upright(from), b.seamOf(b.shoulderLine(middle, b.arm)))
}
