package plane

import "math"

// Rules of this file: where the area of a closed path has its middle, and which way most
// of it lies. Measured from the first point, so that a shape far from the origin loses no
// digits. The sums over triangles are those of the second moments of an area (derived).

// leastSpread is how much farther an area spreads one way than the other, as a share of
// both together, before it has a long way: of a square or a circle rounding alone decides.
const leastSpread = 0.01

// Middle returns the place at which a closed path of card would balance. An open path counts
// as closed by a straight line; of one without an area it is the first point, and the
// origin where there is none.
func (p Path) Middle() Point {
	if len(p) == 0 {
		return Point{}
	}
	area, sum := 0.0, Point{}
	for i := 2; i < len(p); i++ {
		a, b := p[i-1].Sub(p[0]), p[i].Sub(p[0])
		area += a.Cross(b)
		sum = sum.Add(a.Add(b).Mul(a.Cross(b) / 3))
	}
	if area == 0 {
		return p[0]
	}
	return p[0].Add(sum.Mul(1 / area))
}

// LongWay returns the direction, of length 1, in which the area of a closed path spreads
// farthest from its middle: of a rectangle that of its longer sides. It is false where all
// ways are alike, as of a square, or there is no area.
func (p Path) LongWay() (direction Point, ok bool) {
	middle, xx, yy, xy := p.Middle(), 0.0, 0.0, 0.0
	for i := range p {
		a, b := p[i].Sub(middle), p[(i+1)%len(p)].Sub(middle)
		twice := a.Cross(b)
		xx += twice * (a.X*a.X + a.X*b.X + b.X*b.X)
		yy += twice * (a.Y*a.Y + a.Y*b.Y + b.Y*b.Y)
		xy += twice * (a.X*b.Y + 2*a.X*a.Y + 2*b.X*b.Y + b.X*a.Y) / 2
	}
	if xx+yy < 0 { // it runs clockwise
		xx, yy, xy = -xx, -yy, -xy
	}
	if more := math.Hypot(xx-yy, 2*xy); !(more > leastSpread*(xx+yy)) {
		return Point{}, false
	}
	sin, cos := math.Sincos(math.Atan2(2*xy, xx-yy) / 2)
	return Point{cos, sin}, true
}
