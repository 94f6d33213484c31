package garment

import (
	"math"

	"tuckmark/marking/length"
)

// Rules of this file. What lies beside a line has an outer edge as far away as it is wide.
// Where the line turns outward that edge is longer than the line, and what is sewn on must be
// longer by as much, or it cups:
//
//   - At a corner by what a mitre takes, 2 x width x the tangent of half the turn: two widths
//     at a square one (Hapgood, School Needlework, about 1892). Gathered lace takes as much
//     at any fullness: 2 1/2 widths of it on each width of the edge beside a square corner
//     (McGlauflin, Handicraft for Girls, 1910, page 88) are 5 on 2, of which gathers half as
//     full again are 3.
//   - Along a curve by the width times the angle of its turn, in radians (plane geometry;
//     that curves are allowed for is in Hapgood too). Gathers give that, or some of it:
//     along the curve itself they have so much more than the line.
//
// Where the line is hollow the outer edge is shorter than the line and has as much too much,
// but gives none of it to a curve farther on: each outward curve takes its own. So the
// turns are added up, not the length of the outer edge as a whole, in which the hollow
// would be taken off. At an inside corner nothing is added.

// Reach is how something that lies beside a line goes round its corners and curves.
type Reach struct {
	Corners []Bend // outside ones
	Curves  []Bend // outward ones that a ruler shows
	// Spare is by how much its outer edge is longer than it need be where the line is
	// hollow, all together; SpareAtCorners the same at its inside corners.
	Spare, SpareAtCorners length.Amount
	// Hollow is the radius of the tightest hollow curve where what lies in it is as wide
	// as that, or wider, and its outer edge has no room; nothing where there is room.
	Hollow length.Amount
}

// Bend is an outside corner of a line, or an outward curve, as often as it comes.
type Bend struct {
	Piece string        // its name
	Turn  float64       // by which the line turns, in degrees
	Times int           // how often it comes in the garment
	Needs length.Amount // each: by how much its outer edge is longer than the line
	Takes length.Amount // each: what of that is added, since gathers do not give it
}

const (
	// mostCorner is the sharpest turn that is reckoned with, in radians (150
	// degrees): a mitre there is nearly four times as long as a square one, and
	// beyond it nobody would lay one.
	mostCorner = 150 * math.Pi / 180
	// sameTurn bounds by how much two bends may differ in their turn, in degrees, and be
	// listed as one.
	sameTurn = 0.5
	// wideCurve is the turn, in degrees, from which on a curve is told of though nothing
	// is added for it: as much as makes a corner.
	wideCurve = leastCorner * 180 / math.Pi
)

// Square reports whether the line turns square there.
func (b Bend) Square() bool { return math.Abs(b.Turn-90) < sameTurn }

// reach works out how something so wide, in mm, goes round corners and curves that turn
// outward; side is the sign of a turn to the left that does. Of a width of 0, which is
// not known, it tells what turns alone.
func (j joiner) reach(courses []Course, width, fullness, side float64) Reach {
	var r Reach
	spare, spareAtCorners, tightest := 0.0, 0.0, math.Inf(1)
	for _, c := range chains(courses) {
		for _, t := range turnings(c.line) {
			outward := side * t.angle
			bend := Bend{Piece: c.piece.Name, Turn: outward * 180 / math.Pi, Times: c.times}
			switch {
			case t.sharp() && outward > 0:
				if bend.Square() { // it is called so, and takes what a square one does
					bend.Turn, outward = 90, math.Pi/2
				}
				bend.Needs = j.Unit.AtLeast(2 * width * math.Tan(min(outward, mostCorner)/2))
				bend.Takes = bend.Needs
				r.Corners = withBend(r.Corners, bend)
			case outward > 0:
				bend.Needs = j.Unit.AtLeast(width * outward)
				bend.Takes = j.Unit.AtLeast(max(0, width*outward-(fullness-1)*t.length))
				if j.Unit.Amount(width*outward).Steps > 0 || width == 0 && bend.Turn >= wideCurve {
					r.Curves = withBend(r.Curves, bend)
				}
			case t.sharp():
				spareAtCorners += 2 * width * math.Tan(min(-outward, mostCorner)/2) * float64(c.times)
			default:
				spare -= width * outward * float64(c.times)
				tightest = min(tightest, t.radius)
			}
		}
	}
	r.SpareAtCorners = j.Unit.Amount(spareAtCorners)
	if r.Spare = j.Unit.Amount(spare); tightest <= width {
		r.Hollow = j.Unit.Amount(tightest)
	}
	return r
}

// atCorners is how something goes round the corners alone, that along curves bends by itself.
func (r Reach) atCorners() Reach {
	return Reach{Corners: r.Corners, Spare: length.Amount{Unit: r.Spare.Unit}, SpareAtCorners: length.Amount{Unit: r.Spare.Unit}}
}

// withBend lists a bend; together with one of the same piece that is like it.
func withBend(all []Bend, b Bend) []Bend {
	for i := range all {
		one := &all[i]
		if one.Piece == b.Piece && one.Takes.Steps == b.Takes.Steps && one.Needs.Steps == b.Needs.Steps && math.Abs(one.Turn-b.Turn) < sameTurn {
			one.Times += b.Times
			return all
		}
	}
	return append(all, b)
}

// Takes is what all corners and curves take together.
func (r Reach) Takes() length.Amount {
	return r.Spare.Unit.Sum(Taken(r.Corners), Taken(r.Curves))
}

// Taken is what bends take together.
func Taken(all []Bend) length.Amount {
	var total length.Amount
	for _, b := range all {
		total = b.Takes.Times(b.Times).Plus(total)
	}
	return total
}

// Given is what gathers give the outer edge along wide curves, of all that it needs there.
func (r Reach) Given() length.Amount {
	total := length.Amount{Unit: r.Spare.Unit}
	for _, b := range r.Curves {
		if b.Turn >= wideCurve {
			total = total.Plus(b.Needs.Less(b.Takes).Times(b.Times))
		}
	}
	return total
}
