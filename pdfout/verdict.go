package pdfout

import (
	"math"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/paper"
)

// Rules of this file: whether a scale matters is told by the line that comes out
// most off, as it lies on its sheet: over the longest line |m/N - 1| of its length
// where both ways have one scale. A line that runs across has nothing of the scale
// down. What was read may be off by half a step of the ruler, and that grows with the
// line as well: sheets are true only where the longest has room for it.

// Verdict is what a scale does to the lines of a set.
type Verdict struct {
	Printed paper.Scale // what the printer makes of a mm
	// Worst is the line that comes out most off; of lines that come out true, the
	// longest. Of several that are told in the same numbers it is one of Longer, so that
	// no two lines are named that measure the same; and so is Unsure.
	Worst Line
	// Off is how much longer the worst comes out than it is, in mm; less than 0 where it
	// comes out shorter.
	Off float64
	// Unsure is the line of which the reading leaves most open, Open how much longer or
	// shorter than it seems that may come out, in mm.
	Unsure Line
	Open   float64
	// Most is how far any line may be off, in mm: what it seems to be and what the reading
	// leaves open of it.
	Most float64
	// Longer are lines to be measured in place of the check square, since they show
	// more.
	Longer    Longer
	straights straights // all that could have been measured
}

// Line is a line on the sheets.
type Line struct {
	Piece  string    // the name of its piece; "" of a rule of the first page
	Name   string    // what stands beside it; may be ""
	Role   mark.Role // what it is for
	Length float64   // in mm
}

// Judge says what becomes of the lines of a set, drawn true on the paper, when they
// are printed at a scale, which may be off by a doubt. The error is that of Draw.
func Judge(set arrange.Set, on paper.Paper, printed, doubt paper.Scale) (Verdict, error) {
	on.Printed = paper.Scale{}
	b, err := plan(set, on)
	if err != nil {
		return Verdict{}, err
	}
	v := Verdict{Printed: printed.OrTrue(), Longer: b.longer(), straights: b.straights()}
	var all []lineAsPrinted
	most := 0.0
	for _, s := range b.all() {
		printed, doubt := v.Printed, doubt
		if b.otherWay(s) {
			printed, doubt = printed.OtherWay(), doubt.OtherWay()
		}
		for _, p := range s.Pieces {
			for _, l := range p.Lines {
				one := asPrinted(p.Name, l, printed, doubt)
				all = append(all, one)
				most = max(most, math.Abs(one.off))
				v.Most = max(v.Most, math.Abs(one.off)+one.open)
			}
		}
	}
	// Of lines that are as bad but for rounding the longest is named, the first of those as long.
	var worst, unsure lineAsPrinted
	for _, one := range all {
		if math.Abs(one.off) >= most-length.Rounding && one.Length > worst.Length+length.Rounding {
			worst = one
		}
		if one.open > unsure.open+length.Rounding {
			unsure = one
		}
	}
	if worst.open >= unsure.open-length.Rounding { // one line is named rather than two
		unsure = worst
	}
	v.Off, v.Open = worst.off, unsure.open
	v.Worst, v.Unsure = v.Longer.amongLike(worst, all, set.Unit), v.Longer.amongLike(unsure, all, set.Unit)
	return v, nil
}

// amongLike returns a line that is to be measured where one of all is told in the same numbers
// as a line; else that line itself.
func (l Longer) amongLike(line lineAsPrinted, all []lineAsPrinted, unit length.Unit) Line {
	for _, one := range all {
		alike := unit.OnRuler(one.Length) == unit.OnRuler(line.Length) && offTheSameWay(one.off, line.off) &&
			unit.OnRuler(one.off) == unit.OnRuler(line.off) && unit.OnRuler(one.open) == unit.OnRuler(line.open)
		if alike && (one.Line == l.Across.Line || one.Line == l.Down.Line) {
			return one.Line
		}
	}
	return line.Line
}

// offTheSameWay reports whether of two lines, off by so much, none comes out too long and the
// other too short: a ruler may show both alike, as less than its step. What is off by no more
// than rounding is off neither way.
func offTheSameWay(a, b float64) bool {
	return max(a, b) <= length.Rounding || min(a, b) >= -length.Rounding
}

// lineAsPrinted is a line, how much longer it seems to come out than it is, and how much
// of that the reading leaves open, in mm.
type lineAsPrinted struct {
	Line
	off, open float64
}

func asPrinted(piece string, l arrange.Line, at, doubt paper.Scale) lineAsPrinted {
	drawn, printed := l.Length(), printedLength(l.Path(), at)
	larger := paper.Scale{Across: at.Across + doubt.Across, Down: at.Down + doubt.Down}
	return lineAsPrinted{Line{piece, l.Name, l.Role, drawn}, printed - drawn, printedLength(l.Path(), larger) - printed}
}

// printedLength is how long a path comes out at a scale.
func printedLength(p plane.Path, s paper.Scale) float64 {
	sum := 0.0
	for i := 1; i < len(p); i++ {
		step := p[i].Sub(p[i-1])
		sum += math.Hypot(step.X*s.Across, step.Y*s.Down)
	}
	return sum
}

// UsualWithin is how far the line that is most off may be off, in mm, for sheets to
// count as true: half of the smallest step of her ruler, which is as near as a line
// can be ruled. It is 1/32 in, or 0.5 mm.
func UsualWithin(unit length.Unit) float64 {
	if unit == length.Inch {
		return unit.MM() / 32
	}
	return 0.5
}

// SeemsTrue reports whether no line is off by more than within mm, as far as the reading
// shows.
func (v Verdict) SeemsTrue(within float64) bool { return math.Abs(v.Off) <= within+length.Rounding }

// IsTrue reports whether no line is off by more than within mm, whatever the reading may
// have missed.
func (v Verdict) IsTrue(within float64) bool { return v.Most <= within+length.Rounding }
