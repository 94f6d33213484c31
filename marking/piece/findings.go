package piece

import (
	"fmt"
	"math"
	"strings"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/plane"
	"tuckmark/marking/source"
	"tuckmark/marking/wording"
)

// Findings collects mistakes while the checks run.
type Findings struct {
	Unit length.Unit
	List fault.List
	// enlarged is how many times as large as its points in the file the piece is that is
	// being checked; 0 before the first.
	enlarged float64
	work     work
	tooWide  []tooWide // of each piece for which the usual allowance is
}

// Add notes a mistake. The hint may be "".
func (f *Findings) Add(at fault.Place, hint, cause string, args ...any) {
	f.AddBetween(at, fault.Place{}, hint, cause, args...)
}

// AddBetween notes a mistake of two that do not fit.
func (f *Findings) AddBetween(at, other fault.Place, hint, cause string, args ...any) {
	f.List = f.List.With(&fault.Fault{Place: at, Other: other, Cause: fmt.Sprintf(cause, args...), Hint: hint})
}

// length prints a length that was worked out, as it is read on a ruler.
func (f *Findings) length(v float64) string { return f.Unit.OnRuler(v) }

// Written prints a length that the file gives, as it may stand there.
func (f *Findings) Written(v float64) string { return f.Unit.AsWritten(v) }

// point prints a place as the two numbers a maker finds in the file, or would write there.
func (f *Findings) point(p plane.Point) string {
	draft := ""
	if f.enlarged > 0 && f.enlarged != 1 {
		p, draft = p.Mul(1/f.enlarged), " of the draft"
	}
	number := func(v float64) string {
		if math.Abs(v) < f.Unit.MM()/32 {
			v = 0 // a place is on the line or it is not; a length may be less than
		}
		return f.length(v)
	}
	return fmt.Sprintf("(%s, %s)%s", number(p.X), number(p.Y), draft)
}

// fullSize is said behind a length of the piece itself where its points are those of a draft.
func (f *Findings) fullSize() string {
	if f.enlarged > 0 && f.enlarged != 1 {
		return " at full size"
	}
	return ""
}

// unknown notes that a name stands for nothing, and says which was likely
// meant. what is the kind of thing, such as "edge".
func (f *Findings) unknown(at fault.Place, what, name string, known []string) {
	if f.List.Full() {
		return // a hint takes time, for each
	}
	f.Add(at, HintFor(name, known), "there is no %s %q in this piece", what, name)
}

// HintFor returns the hint for a misspelt name: the nearest known one or, when none is near, those
// that are known, up to a dozen.
func HintFor(name string, known []string) string {
	if near := wording.Nearest(name, known); near != "" {
		return wording.DidYouMean(near)
	}
	return "there is " + strings.Join(wording.QuotedFew(known), ", ")
}

// edgeKeys returns the keys of the edges of a piece.
func edgeKeys(p *Piece) []string {
	keys := make([]string, len(p.Edges))
	for i, e := range p.Edges {
		keys[i] = e.Key
	}
	return keys
}

// noCourse notes that a text names neither an edge nor a line of a piece.
func (f *Findings) noCourse(p *Piece, name source.Text) {
	known := edgeKeys(p)
	for _, l := range p.Lines {
		known = append(known, l.Key)
	}
	f.unknown(name.Place, "edge or line", name.V, known)
}

// findEdge returns the edge a text names, or notes that there is none and
// returns -1.
func (f *Findings) findEdge(p *Piece, name source.Text) int {
	i := p.EdgeNumber(name.V)
	if i < 0 {
		f.unknown(name.Place, "edge", name.V, edgeKeys(p))
	}
	return i
}
