package garment

import (
	"fmt"
	"slices"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/piece"
	"tuckmark/marking/source"
)

// Rules of this file. Ease is by how much the garment is larger than the child. Woven cloth does
// not give: about the chest 2 in of it or more let a child breathe and play, about the waist
// 1 in (common practice).

// leastEase is the least ease in mm before it is worth a word.
func leastEase(l Level, u length.Unit) float64 {
	if l == AtChest {
		return u.Either(2*25.4, 50)
	}
	return u.Either(25.4, 25)
}

// Measures are how large the finished garment is, as far as its seams tell.
type Measures struct {
	Girths []Girth // from the chest down
	Drops  []Drop
	// Untold says why the garment has no measure to hold against one of the child.
	Untold []piece.Remark
}

// Fit is how a measure of the garment is to one of the child.
type Fit struct {
	Given bool          // the file gives the child's; else the rest is nothing
	Child length.Amount // as the file gives it
	Ease  length.Amount // by how much the garment is larger, as both are printed; below 0, smaller

	place fault.Place // of the child's
}

// measures works out how large a pattern is, and holds it against a child.
func measures(p *Pattern, of source.FitSpec) Measures {
	m := measurer{p, p.Seams}
	girths, missing := m.girths()
	for level, why := range map[Level]string{
		AtChest: "no seam joins what would go round under the arms", AtWaist: "no edge and no seam is called a waist", AtHem: "no hem goes round",
	} {
		missing.note(level, why)
	}
	all := Measures{Girths: girths, Drops: m.drops()}
	untold := func(child source.Length, what, why string) {
		all.Untold = append(all.Untold, piece.Remark{Place: child.Place, Text: fmt.Sprintf("the finished %s is not known: %s", what, why), InTable: true})
	}
	for level, child := range []source.Length{AtChest: of.Chest, AtWaist: of.Waist} {
		known := !child.Given()
		for i := range all.Girths {
			if g := &all.Girths[i]; int(g.Level) == level && child.Given() {
				g.Fit, known = m.fit(g.Round, child), true
			}
		}
		if !known {
			untold(child, Level(level).String(), missing[level])
		}
	}
	if known := !of.Length.Given(); !known {
		wanted := all.wanted()
		for i := range all.Drops {
			if d := &all.Drops[i]; wanted(*d) {
				d.Fit, known = m.fit(d.Length, of.Length), true
			}
		}
		if !known {
			untold(of.Length, "length at the back", all.noLength(missing[AtHem]))
		}
	}
	return all
}

// wanted returns which lengths are held against that of the child: those at the back; where a
// garment begins at the waist and none is called so, those at any fold or centre.
func (m Measures) wanted() func(Drop) bool {
	back := func(d Drop) bool { return d.Back }
	if slices.ContainsFunc(m.Drops, back) {
		return back
	}
	return func(d Drop) bool { return d.FromWaist && d.middle }
}

// noLength says why no length at the back is known, where it is not; noHem is why no hem goes
// round, where none does.
func (m Measures) noLength(noHem string) string {
	atHem := slices.ContainsFunc(m.Girths, func(g Girth) bool { return g.Level == AtHem })
	switch {
	case len(m.Drops) > 0:
		return "no piece that is measured, and no edge of one, is called the back"
	case atHem:
		return "no fold, centre or opening leads from the hem up to one edge at the top"
	}
	return noHem
}

// fit holds a measure of the garment against one of the child.
func (m measurer) fit(garment length.Amount, child source.Length) Fit {
	of := m.Unit.Chosen(child.V)
	return Fit{Given: true, Child: of, Ease: garment.Less(of), place: child.Place}
}

// remarks says where a garment is too small to be worn, or hardly larger than the child.
func (m Measures) remarks() []piece.Remark {
	all := m.Untold
	for _, g := range m.Girths {
		if text := g.Tight(length.Amount.String); text != "" {
			all = append(all, piece.Remark{Place: g.Fit.place, Text: text, InTable: true})
		}
	}
	return all
}

// Tight says that the ease is less than is worn with comfort; "" where it is not.
func (g Girth) Tight(say func(length.Amount) string) string {
	least := leastEase(g.Level, g.Round.Unit)
	if !g.Fit.Given || g.Fit.Ease.MM > least-g.Round.Unit.Ruler() {
		return ""
	}
	opens := ""
	if g.Opens.Piece == nil {
		opens = "; its seams tell of no opening"
	}
	if g.Fit.Ease.Steps < 0 {
		return fmt.Sprintf("the finished %s, %s, is smaller than the child's by %s%s", g.Level, say(g.Round), say(g.Fit.Ease.Magnitude()), opens)
	}
	ease := "no ease"
	if g.Fit.Ease.Steps > 0 {
		ease = say(g.Fit.Ease) + " of ease"
	}
	return fmt.Sprintf("the finished %s, %s, has %s; woven cloth wants %s or more%s", g.Level, say(g.Round), ease, say(g.Round.Unit.Chosen(least)), opens)
}
