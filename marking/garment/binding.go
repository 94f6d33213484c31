package garment

import (
	"math"
	"sort"

	"tuckmark/marking/length"
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
	SewnOn
	Fold      source.BindingFold
	Width     length.Amount   // finished
	CutWidth  length.Amount   // how wide the strip is cut
	Joining   length.Amount   // the allowance of each joining seam
	Lengths   []BindingLength // that it is made in
	Joins     int             // how many times its ends are joined: once for every round
	JoinTakes length.Amount   // what each of these takes
	Length    length.Amount   // of all strips together
	Strips    int             // that it is joined of
	// Square is the side of the square it is cut from; 0 where it is cut from the
	// whole width of the cloth. Then Cloth is how much of its length that takes.
	Square length.Amount
	Cloth  length.Amount
}

// BindingLength is a binding of one strand.
type BindingLength struct {
	Strand
	Length length.Amount // of its strip, with its joins
}

const (
	foldsSingle = 4 // widths of a single binding
	foldsDouble = 6 // widths of a double one
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

// binding works out a binding; where its strips cannot be, that is noted.
func (j joiner) binding(s source.BindingSpec) Binding {
	b := Binding{
		SewnOn: j.sewnOn(s.Key, s.Place, s.Along), Fold: s.Fold.V,
		Width: j.Unit.Chosen(s.Width.V), Joining: j.Unit.Chosen(usualJoining(j.Unit)), Length: length.Amount{Unit: j.Unit},
	}
	if s.Joining.Given() {
		b.Joining = j.Unit.Amount(s.Joining.V)
	}
	b.CutWidth = j.Unit.Amount(s.Width.V * float64(b.Folds()))
	b.JoinTakes = j.Unit.AtLeast(b.perJoin())
	strands, joins := j.asGiven(b.Courses, s.Joins)
	for _, one := range strands {
		l := BindingLength{one, one.Line.Plus(b.JoinTakes.Times(joins))}
		b.Lengths = append(b.Lengths, l)
		b.Joins += one.Times * joins
		b.Length = b.Length.Plus(l.Length.Times(one.Times))
	}
	switch {
	case s.Square.Given():
		j.fromGiven(&b, s.Square)
	case !j.fromLeast(&b) && !j.fromWidth(&b):
		j.found.Add(s.Place, "see whether its width and the lengths of its edges are in the units meant, or divide it",
			"the binding takes %s of bias strip, %s wide: more than is cut from one cloth", b.Length, b.CutWidth)
	}
	return b
}

// fromGiven cuts the strips from a square that the file gives; where that gives too
// little, or is wider than the cloth, it is noted.
func (j joiner) fromGiven(b *Binding, square source.Length) {
	if j.ClothWidth > 0 && square.V > j.ClothWidth+length.Rounding {
		j.found.Add(square.Place, "take a smaller square, or leave it out", "a square of %s is wider than the cloth, which is %s between the selvages",
			j.found.Written(square.V), j.found.Written(j.ClothWidth))
		return
	}
	b.Square, b.Strips = j.Unit.Chosen(square.V), b.stripsOf(square.V, mostBias)
	if b.Strips == 0 {
		j.found.Add(square.Place, "take a larger square", "a square of %s does not give the %s of bias strip, %s wide, that this binding takes",
			j.found.Written(square.V), b.Length, b.CutWidth)
	}
}

// fromLeast cuts the strips from the least square that gives them in few strips; false
// where none does.
func (j joiner) fromLeast(b *Binding) bool {
	largest := j.ClothWidth
	if largest == 0 {
		largest = largestSquare
	}
	for strips := b.Joins; strips <= mostBias; strips *= 2 {
		most := largest / 2
		if 2*strips > mostBias {
			most = largest // many short strips, before none at all
		}
		if side := b.leastSquare(squareStep(j.Unit), most, strips); side > 0 {
			b.Square, b.Strips = j.Unit.Chosen(side), b.stripsOf(side, strips)
			return true
		}
	}
	return false
}

// Count is how many lengths it is made in, one for each strand.
func (b Binding) Count() int { return timesOf(b.Lengths) }

// Folds returns how many times its finished width the strip is cut.
func (b Binding) Folds() int {
	if b.Fold == source.DoubleFold {
		return foldsDouble
	}
	return foldsSingle
}

// WidestAllowance returns the widest allowance of the edges that are bound, and reports
// whether it is wider than the finished binding, which goes round it.
func (b Binding) WidestAllowance() (widest length.Amount, wide bool) {
	most := 0.0
	for _, c := range b.Courses {
		if c.isEdge() {
			most = max(most, c.drawn().Allowance)
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
		long := side*math.Sqrt2 - 2*k*b.CutWidth.MM
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
	most := int(largest/step + length.Rounding)
	// The larger the square, the more it gives.
	n := 1 + sort.Search(most, func(i int) bool { return b.stripsOf(float64(i+1)*step, strips) > 0 })
	if n > most {
		return 0
	}
	return float64(n) * step
}

// fromWidth cuts the strips from selvage to selvage; false where the width of the cloth
// is not known, or they would be too many or wider than long.
func (j joiner) fromWidth(b *Binding) bool {
	// Such a strip is slanted alike at both ends, and so are several joined: the slant is
	// lost once.
	long := j.ClothWidth*math.Sqrt2 - b.perJoin()
	if j.ClothWidth == 0 || long <= b.CutWidth.MM {
		return false
	}
	n := math.Ceil((b.Length.Enough() + b.CutWidth.MM - b.perJoin() - length.Rounding) / long)
	if n > mostBias {
		return false
	}
	b.Strips = max(1, int(n))
	b.Square = length.Amount{Unit: j.Unit}
	b.Cloth = j.Unit.AtLeast(j.ClothWidth + float64(b.Strips)*b.CutWidth.MM*math.Sqrt2)
	return true
}
