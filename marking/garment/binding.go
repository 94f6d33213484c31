package garment

import (
	"math"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/piece"
	"tuckmark/marking/source"
)

// Rules of this file. A binding is cut on the true bias, at 45 degrees to the threads,
// so that it goes round a curve. A single one is folded in four, a double one in six
// with two layers showing on either side (common practice). Its strips are joined
// along a thread, at 45 degrees across them, so each join takes the square root of two
// times what two allowances do; the two ends together take as much as one join.
//
// Strips come from a square of cloth that is cut from corner to corner and then
// parallel to that cut on both sides of it: few strips, where a square of half the
// cloth's width gives them, for every join shows. The k-th on either side is as long, along
// its shorter side, as the diagonal less 2k times its width: the sides of the square
// meet it at 45 degrees. Where no square within the width of the cloth gives enough,
// strips are cut from selvage to selvage, at 45 degrees, beside one another.

// Binding is a bias strip along edges.
type Binding struct {
	Key     string
	Fold    source.BindingFold
	Courses []Course
	Edge    length.Amount // of all courses together
	Width   length.Amount // finished
	Cut     length.Amount // how wide the strip is cut
	Joining length.Amount // the allowance of each joining seam
	Joins   int           // how many times its ends are joined: once for every round
	Ends    length.Amount // what each of these takes
	Length  length.Amount // of the whole strip
	Strips  int
	// Square is the side of the square it is cut from; 0 where it is cut from the
	// whole width of the cloth. Then Along is how much of its length that takes.
	Square length.Amount
	Along  length.Amount

	place fault.Place
}

const (
	FoldsSingle = 4 // widths of a single binding
	FoldsDouble = 6 // widths of a double one
	// largestSquare is the largest square of cloth that is cut for bias strips where
	// the width of the cloth is not known, in mm: the width of a narrow cloth.
	largestSquare = 36 * 25.4
	// mostBias is the most strips that one binding is cut in. One for each round is
	// tried first, and then twice as many each time.
	mostBias = 512
)

// squareStep is in what steps a square of cloth is given, in mm: halves of an inch or of a
// centimetre, for a square that is torn.
func squareStep(u length.Unit) float64 { return u.Either(length.Inch.MM(), length.Centimetre.MM()) / 2 }

// newBinding works out a binding whose names have been checked; ok is false where it
// cannot be.
func (p *Pattern) newBinding(s source.BindingSpec, spec *source.Spec, found *piece.Findings) (b Binding, ok bool) {
	b = Binding{
		Key: s.Key, Fold: s.Fold.V, Courses: p.courses(s.Along, spec), place: s.Place,
		Width: p.Unit.Chosen(s.Width.V), Joining: p.Unit.Chosen(usualJoining(p.Unit)), Joins: 1,
	}
	if s.Joins.Given() {
		b.Joins = s.Joins.V
	}
	if s.Joining.Given() {
		b.Joining = p.Unit.Amount(s.Joining.V)
	}
	folds := FoldsSingle
	if b.Fold == source.DoubleFold {
		folds = FoldsDouble
	}
	b.Cut = p.Unit.Amount(s.Width.V * float64(folds))
	b.Edge = p.length(b.Courses)
	b.Ends = p.Unit.AtLeast(b.perJoin())
	b.Length = b.Edge.Plus(b.Ends.Times(b.Joins))
	if s.Square.Given() {
		if p.ClothWidth > 0 && s.Square.V > p.ClothWidth+length.Rounding {
			found.Add(s.Square.Place, "take a smaller square, or leave it out", "a square of %s is wider than the cloth, which is %s between the selvages",
				found.Written(s.Square.V), found.Written(p.ClothWidth))
			return b, false
		}
		b.Square = p.Unit.Chosen(s.Square.V)
		b.Strips = b.stripsOf(s.Square.V, mostBias)
		if b.Strips == 0 {
			found.Add(s.Square.Place, "take a larger square", "a square of %s does not give the %s of bias strip, %s wide, that this binding takes",
				found.Written(s.Square.V), b.Length, b.Cut)
		}
		return b, b.Strips > 0
	}
	largest := p.ClothWidth
	if largest == 0 {
		largest = largestSquare
	}
	for strips := b.Joins; strips <= mostBias; strips *= 2 {
		most := largest / 2
		if 2*strips > mostBias {
			most = largest // many short strips, before none at all
		}
		if side := b.leastSquare(squareStep(p.Unit), most, strips); side > 0 {
			b.Square, b.Strips = p.Unit.Chosen(side), b.stripsOf(side, strips)
			return b, true
		}
	}
	if p.ClothWidth > 0 && b.fromWidth(p) {
		return b, true
	}
	found.Add(s.Place, "see whether its width and the lengths of its edges are in the units meant, or divide it",
		"the binding takes %s of bias strip, %s wide: more than is cut from one cloth", b.Length, b.Cut)
	return b, false
}

// WidestAllowance returns the widest allowance of the edges that are bound, and reports
// whether it is wider than the finished binding, which goes round it.
func (b Binding) WidestAllowance() (widest length.Amount, wide bool) {
	most := 0.0
	for _, c := range b.Courses {
		if c.At >= 0 {
			most = math.Max(most, c.Of.Edges[c.At].Allowance)
		}
	}
	return b.Width.Unit.Chosen(most), most > b.Width.MM+length.Rounding
}

// perJoin is what one join takes of the length of the strip, in mm.
func (b Binding) perJoin() float64 { return 2 * b.Joining.MM * math.Sqrt2 }

// stripsOf returns how many strips of a square give the whole length, 0 where so many
// do not.
func (b Binding) stripsOf(side float64, most int) int {
	got := b.perJoin() // the first has none
	for n := 1; n <= most; n++ {
		k := float64((n + 1) / 2) // of its side of the diagonal
		long := side*math.Sqrt2 - 2*k*b.Cut.MM
		if long <= b.perJoin() {
			return 0
		}
		if got += long - b.perJoin(); got >= b.Length.Enough()-length.Rounding {
			return n
		}
	}
	return 0
}

// leastSquare returns the side of the least square that gives enough in so many strips,
// in whole steps and no larger than largest; 0 where there is none.
func (b Binding) leastSquare(step, largest float64, strips int) float64 {
	low, high := 0, int(largest/step+length.Rounding)
	if high < 1 || b.stripsOf(float64(high)*step, strips) == 0 {
		return 0
	}
	for high-low > 1 { // the larger the square, the more it gives
		if middle := (low + high) / 2; b.stripsOf(float64(middle)*step, strips) > 0 {
			high = middle
		} else {
			low = middle
		}
	}
	return float64(high) * step
}

// fromWidth cuts the strips from selvage to selvage.
func (b *Binding) fromWidth(p *Pattern) bool {
	// Such a strip is slanted alike at both ends, and so are several joined: the slant is
	// lost once.
	long := p.ClothWidth*math.Sqrt2 - b.perJoin()
	if long <= b.Cut.MM {
		return false
	}
	n := math.Ceil((b.Length.Enough() + b.Cut.MM - b.perJoin() - length.Rounding) / long)
	if n > mostBias {
		return false
	}
	b.Strips = max(1, int(n))
	b.Square = length.Amount{Unit: p.Unit}
	b.Along = p.Unit.AtLeast(p.ClothWidth + float64(b.Strips)*b.Cut.MM*math.Sqrt2)
	return true
}
