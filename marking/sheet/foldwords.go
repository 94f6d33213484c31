package sheet

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// Rules of this file. The lines of tucks and pleats lie too close for names along them. So
// what is told of them stands in rows of words across their ends, as close to these as they
// come, each row with its head beside its last word. Which rows there are, the sheets decide
// (rowwords.go). Where the words of a row have no room beside one another, the first stands
// there, every fifth, or tenth, or twentieth, as far as those have room, and the last; of folds
// in groups, the first of every group, or of every second, or fifth, or tenth. Where even the
// first and the last have none, the first alone.

const (
	// digitWide is about how wide a digit is that can be read at arm's length (9 pt), in mm;
	// half of it a space or a point.
	digitWide = 1.8
	// fractionWide is the same of what stands in a fraction.
	fractionWide = 1.1
	// betweenWords is what is left free between two words of a row, in mm.
	betweenWords = 1.0
	// betweenRows is the same of two rows across whose words a maker reads one after the
	// other, so that they are not taken for one number.
	betweenRows = 2.5
	// wordRow is from one row of words to the next, in mm.
	wordRow = 4.5
	// wordHigh is how far apart two words are at least that stand above each other, in mm.
	wordHigh = 3.0
	// headLong is about how long the head of a row of words is, in mm.
	headLong = 45.0
	// headWide is about how wide the head of a column of words is, in mm: two or three lines of it.
	headWide = 10.0
)

// lineEnd is one end of a line, and the direction in which it would run on.
type lineEnd struct{ at, out plane.Point }

// endsOf returns the ends of a straight line.
func endsOf(line plane.Path) [2]lineEnd {
	first, last := line[0], line[len(line)-1]
	along := last.Sub(first).Unit()
	return [2]lineEnd{{first, along.Mul(-1)}, {last, along}}
}

// toldFold is a tuck or pleat with its number, and what is written at one of its ends.
type toldFold struct {
	number int
	group  int // how many folds are in each group; 0 without groups
	end    lineEnd
	text   string
}

// foldWords is the words at the ends of a row of folds.
type foldWords struct {
	m    *mark.Marking
	role mark.Role
	out  plane.Point // from the base of the row to its folds
}

// wordsFor returns the words of a row whose folds lie on that side of its base.
func wordsFor(m *mark.Marking, r piece.FoldRow, out plane.Point) foldWords {
	if r.Makes == piece.PleatFolds {
		return foldWords{m, mark.PleatFold, out}
	}
	return foldWords{m, mark.TuckFold, out}
}

// number writes the numbers of folds next to their ends, and returns where the next row of
// words begins.
func (w foldWords) number(folds []toldFold) (next float64) {
	folds = slices.Clone(folds)
	for i := range folds {
		folds[i].text = strconv.Itoa(folds[i].number)
	}
	return w.row(folds, 0, "")
}

// row writes what is told of folds in a row of words that begins so many mm from their ends,
// with its head beside the last; "" for their numbers. It returns where the next row begins: the sheet may
// be printed turned, and its rows stand as columns beside each other.
func (w foldWords) row(folds []toldFold, from float64, head string) (next float64) {
	if len(folds) == 0 {
		return from
	}
	shown, high := withRoom(folds), wordRow
	for _, f := range shown {
		w.m.Words = append(w.m.Words, mark.Word{Role: w.role, Text: f.text, Calls: head == "", At: f.end.at.Add(f.end.out.Mul(from)), Out: f.end.out})
		high = max(high, wide(f.text)+betweenRows)
	}
	if head != "" {
		last := shown[len(shown)-1]
		w.head(shown[0].end.at, mark.Word{Role: w.role, Text: head, At: last.end.at.Add(last.end.out.Mul(from)), Out: w.out,
			Head: &mark.Head{Last: last.text, Along: last.end.out, Wide: headWide}})
	}
	return from + high
}

// head writes the head of a row whose first word stands at the end of a line. Where that is right
// behind another row with the same head it is the head of both: in between it would part them.
func (w foldWords) head(first plane.Point, h mark.Word) {
	before := slices.IndexFunc(w.m.Words, func(o mark.Word) bool {
		if o.Head == nil || o.Text != h.Text || o.Out != h.Out || o.Head.Along != h.Head.Along {
			return false
		}
		gap := first.Sub(o.At).Dot(h.Out)
		return math.Abs(o.At.Sub(h.At).Dot(h.Head.Along)) < piece.SamePoint && gap > 0 && gap < headLong
	})
	if before >= 0 {
		w.m.Words[before] = h
		return
	}
	w.m.Words = append(w.m.Words, h)
}

// withRoom returns those of some folds whose words have room beside one another: every one, or
// as few as it takes.
func withRoom(folds []toldFold) []toldFold {
	everies := []int{1, 5, 10, 20}
	if group := folds[0].group; group > 1 {
		everies = []int{1, group, 2 * group, 5 * group, 10 * group}
	}
	for _, every := range everies {
		some := oneIn(every, folds)
		if len(slices.CompactFunc(slices.Clone(some), func(a, b toldFold) bool { return !haveRoom(a, b) })) == len(some) {
			return some
		}
	}
	return folds[:1]
}

// oneIn returns the first and the last of some folds, and between them every one whose
// number can be divided by that, or which is the first of so many; but none that crowds the two.
func oneIn(every int, folds []toldFold) []toldFold {
	first, last := folds[0], folds[len(folds)-1]
	some := []toldFold{first}
	for _, f := range folds[1:] {
		number := f.number
		if f.group > 1 {
			number--
		}
		if f == last || every == 1 || number%every == 0 && haveRoom(first, f) && haveRoom(f, last) {
			some = append(some, f)
		}
	}
	return some
}

// haveRoom reports whether the words at the ends of two folds have room beside each other.
func haveRoom(a, b toldFold) bool {
	apart := math.Abs(a.end.at.Sub(b.end.at).Dot(a.end.out.Left()))
	return apart >= max((wide(a.text)+wide(b.text))/2+betweenWords, wordHigh)
}

// wide is about how wide a number is as it is read, in mm.
func wide(number string) float64 {
	sum := 0.0
	for i, part := range strings.Fields(number) {
		if i > 0 {
			sum += digitWide / 2
		}
		for _, r := range part {
			switch {
			case strings.Contains(part, "/"):
				sum += fractionWide
			case r >= '0' && r <= '9':
				sum += digitWide
			default:
				sum += digitWide / 2
			}
		}
	}
	return sum
}
