package piece

import (
	"fmt"
	"math"
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file. What is sewn along a line of a piece lies on the finished cloth, beside the
// line. Where that runs along tucks, it may lie over some of them; lace at a neck lies over their
// ends on purpose, for it runs across them.

// laidStep is how far apart along a line it is looked at, in mm.
const laidStep = 5

// Side is a side of a line, as one goes along it.
type Side float64

// The two sides.
const (
	OnLeft  Side = 1
	OnRight Side = -1
)

// LaidOver names the tucks that something so wide, in mm, lies over beside a line of the piece as
// it is drawn, row by row: tucks 4 to 6 of "yoke". Tucks that the file does not press, and those of
// a piece that has no one finished shape, are left out.
func (p *Piece) LaidOver(line plane.Path, side Side, width float64) []string {
	var told []string
	for i, g := range p.Folded {
		numbers := map[int][]int{} // of tucks, by their rows
		for s := laidStep / 2.0; s < line.Length(); s += laidStep {
			at, along := line.At(s)
			if math.Abs(along.Dot(g.Along)) < besideWithin {
				continue
			}
			from := p.withFolded(i, at)
			to := from.Add(along.Left().Mul(float64(side) * width))
			for k, of := range g.Of {
				if of.Row.Makes == TuckFolds && of.Row.Pressed && liesOver(g.Folding, k, from, to) {
					numbers[of.Row.nth] = append(numbers[of.Row.nth], of.Number+1)
				}
			}
		}
		for _, r := range g.Rows {
			if n := numbers[r.nth]; len(n) > 0 {
				told = append(told, fmt.Sprintf("%s of %q", countedOff(slices.Min(n), slices.Max(n)), r.Key))
			}
		}
	}
	return told
}

// countedOff names tucks by their numbers.
func countedOff(first, last int) string {
	if first == last {
		return fmt.Sprintf("tuck %d", first)
	}
	return fmt.Sprintf("tucks %d to %d", first, last)
}

// withFolded returns where a place of the piece as it is drawn lies once a group of its folds is
// folded, and those before it, and none that comes later.
func (p *Piece) withFolded(group int, at plane.Point) plane.Point {
	if p.DrawnFinished {
		for _, later := range slices.Backward(p.Folded[group+1:]) {
			at = later.Folding.Flat(at)
		}
		return at
	}
	for _, g := range p.Folded[:group+1] {
		at = g.Folding.DrawnIn(at)
	}
	return at
}

// liesOver reports whether the way from one place of the folded plane to another lies over the flap
// of a fold, by more than the thickness of cloth.
func liesOver(folding *plane.Folding, k int, from, to plane.Point) bool {
	f, seam := folding.Folds()[k], folding.Seam(k)
	flap := Stretch{seam, seam + f.Width}
	if f.Back {
		flap = Stretch{seam - f.Width, seam}
	}
	a, b, v := folding.U(from), folding.U(to), folding.V(from)
	return min(max(a, b), flap.To)-max(min(a, b), flap.From) > leastCover && v >= f.From && v < f.To
}
