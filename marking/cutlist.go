package marking

import (
	"fmt"
	"strings"
)

// firstSection lists what is torn and cut.
func firstSection(p *Pattern, w Wording) Section {
	s := Section{Title: "Tear and cut first"}
	torn, cut := cutList(p)
	heads := func(what string) []string { return []string{what, "how many", "across the cloth", "along it"} }
	rows := func(list []Cutting) []Row {
		var rows []Row
		for _, c := range list {
			count := fmt.Sprint(c.Count)
			if c.OnFold {
				count += ", on the fold"
			}
			rows = append(rows, Row{Cells: []string{c.title(), count, w.cell(c.Across), w.cell(c.Along)}})
		}
		return rows
	}
	if len(torn) > 0 {
		s.Tables = append(s.Tables, Table{Heads: heads("tear"), Rows: rows(torn)})
	}
	if len(cut) > 0 {
		t := Table{Heads: heads("cut"), Rows: rows(cut)}
		for _, c := range cut {
			if c.OnFold {
				t.Lines = []Sentence{{Text: "Sizes are over all; of a piece on the fold, those of the half that is drawn."}}
			}
		}
		s.Tables = append(s.Tables, t)
	}
	for _, piece := range p.Pieces {
		if b := piece.Block; b != nil {
			s.Lines = append(s.Lines, Sentence{Text: fmt.Sprintf("%s: once it is tucked, the top edge of its block must measure %s; draw the bottom edge in to the same",
				piece.Name, w.length(p.Unit.amount(b.Top)))})
		}
	}
	if text := guessedGrain(p); text != "" {
		s.Lines = append(s.Lines, Sentence{Text: text})
	}
	for _, r := range p.Ruffles {
		if r.Strips == 0 {
			s.Lines = append(s.Lines, Sentence{Text: fmt.Sprintf("%s: tear strips %s deep; how many follows from the width of the cloth, which the file does not give", r.Key, w.length(r.CutDepth))})
		}
	}
	return s
}

// guessedGrain says along what the grain of the pieces was taken whose file does not say
// it; nothing where all do, or lie on the fold.
func guessedGrain(p *Pattern) string {
	var guessed []string
	for _, piece := range p.Pieces {
		if piece.grainGiven || piece.OnFold {
			continue
		}
		along := "straight up"
		if piece.grainAlong != "" {
			along = "along " + piece.grainAlong
		}
		guessed = append(guessed, piece.Name+" "+along)
	}
	if len(guessed) == 0 {
		return ""
	}
	return "The file does not give every grain; it was taken so: " + strings.Join(guessed, ", ") + "."
}
