package folded

import (
	"math"
	"slices"
	"strings"

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
// end where that is most, and what the folds are that end there: tucks, pleats, or both.
func letGo(g piece.FlatGroup) (open float64, what string) {
	var takes [2]float64
	var kinds [2][]string
	for k, one := range g.Folding.Folds() {
		kind := g.Of[k].Row.Makes.String() + "s"
		for i, v := range []float64{one.From, one.To} {
			if math.IsInf(v, 0) {
				continue
			}
			takes[i] += 2 * one.Width
			if !slices.Contains(kinds[i], kind) {
				kinds[i] = append(kinds[i], kind)
			}
		}
	}
	end := 0
	if takes[1] > takes[0] {
		end = 1
	}
	return takes[end], strings.Join(kinds[end], " and ")
}
