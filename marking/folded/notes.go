package folded

import (
	"math"

	"tuckmark/marking/length"
	"tuckmark/marking/piece"
)

// notes says what a picture of the folded piece cannot show.
func (w *work) notes(unit length.Unit) []string {
	var notes []string
	if w.noShape() {
		notes = append(notes, "its folds lie one above the other and share cloth, so it has no one shape when they are in: it is drawn flat")
	}
	if w.bare {
		notes = append(notes, "it has more folds, one across the other, than can be shown: it is drawn without them")
	}
	if w.slant {
		notes = append(notes, "its folds run at a slant to the fold of the cloth: half of it is drawn")
	}
	for _, g := range w.groups {
		if open, what := letGo(g); open > piece.LeastLine {
			notes = append(notes, w.openNote(g, unit.OnRuler(open), what))
		}
	}
	if len(w.EdgePleats) > 0 {
		notes = append(notes, "a pleat in an edge is laid over, and the edge is drawn as long as it is cut")
	}
	return notes
}

// openNote says how much more cloth there is than is drawn where folds of a group are let go.
func (w *work) openNote(g piece.FlatGroup, more, what string) string {
	whole, large := "it", "wider"
	if w.OnFold {
		whole = "the whole piece"
	}
	if math.Abs(g.Out.Y) > math.Abs(g.Out.X) {
		large = "longer"
	}
	return "beyond the ends of its " + what + " the cloth is let go: there " + whole + " is " + more + " " + large + " than it is drawn"
}

// letGo returns how much the folds of a group take that end on the piece, on both halves of it, at the
// end where that is most, and what these folds are.
func letGo(g piece.FlatGroup) (open float64, what string) {
	var ends [2]float64
	for k, one := range g.Folding.Folds() {
		for i, v := range []float64{one.From, one.To} {
			if !math.IsInf(v, 0) {
				ends[i] += 2 * one.Width
				what = g.Of[k].Row.Makes.String() + "s"
			}
		}
	}
	return max(ends[0], ends[1]), what
}
