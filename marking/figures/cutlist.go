package figures

import (
	"slices"
	"strconv"
	"strings"

	"tuckmark/marking/garment"
	"tuckmark/marking/lay"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
)

// cutSection lists what is torn and cut, for all the cloth that is bought: a block that is tucked
// already too, which says so.
func cutSection(p *garment.Pattern, w writer) mark.Section {
	s := mark.Section{Title: "Tear and cut first"}
	torn, cut := lay.Cuttings(p)
	if len(torn) > 0 {
		s.Tables = append(s.Tables, cutTable("tear", torn, w))
	}
	if len(cut) > 0 {
		t := cutTable("cut", cut, w)
		if slices.ContainsFunc(cut, func(c lay.Cutting) bool { return c.OnFold }) {
			t.Lines.Say("Sizes are over all; of a piece on the fold, those of the half that is drawn.")
		}
		s.Tables = append(s.Tables, t)
	}
	for _, one := range p.Pieces {
		if one.Block != nil {
			s.Lines.Say("%s: %s", one.Name, tuckedMeasure(one.Block, w))
		}
	}
	if guessed := guessedGrain(p); len(guessed) > 0 {
		s.Lines.Say("Not every grain is given; it was taken so: %s.", strings.Join(guessed, ", "))
	}
	for _, r := range p.Ruffles {
		if r.Strips == 0 {
			s.Lines.Say("%s: tear strips %s deep; how many follows from the width of the cloth, which is not given", r.Key, w.length(r.CutDepth))
		}
	}
	return s
}

// tuckedMeasure says what a block must measure once it is tucked, or does where that was
// measured, and what is drawn in to the same where folds are open at one end.
func tuckedMeasure(b *piece.Block, w writer) string {
	long := w.length(w.unit.Amount(b.TopIs()))
	measures := func(what string) string {
		if b.Measured != nil {
			return what + " measures " + long
		}
		return "once it is tucked, " + what + " must measure " + long
	}
	if b.Across() {
		return measures("its block") + " across the " + b.What()
	}
	top := measures("the top edge of its block")
	switch {
	case b.OpenAtTop() > 0:
		return top
	case b.OpenBelow() > 0:
		return top + "; draw the bottom edge in to the same"
	}
	return top + ", and so must the bottom edge"
}

// cutTable lists things that are all torn, or all cut.
func cutTable(what string, list []lay.Cutting, w writer) mark.Table {
	t := mark.Table{Heads: []string{what, "how many", "across the cloth", "along it"}}
	for _, c := range list {
		count := strconv.Itoa(c.Count)
		if c.OnFold {
			count += ", on the fold"
		}
		t.Add(c.Title(), count, w.cell(c.Across), w.cell(c.Along))
	}
	return t
}

// guessedGrain says how the grain of each piece was taken of which the file does not say it;
// nothing where it does, or the piece lies on the fold.
func guessedGrain(p *garment.Pattern) []string {
	var guessed []string
	for _, piece := range p.Pieces {
		if how := piece.Flat.Grain.Guess; how != "" {
			guessed = append(guessed, piece.Name+" "+how)
		}
	}
	return guessed
}
