package figures

import (
	"fmt"
	"strings"

	"tuckmark/marking/garment"
	"tuckmark/marking/lay"
	"tuckmark/marking/mark"
)

// firstSection lists what is torn and cut.
func firstSection(p *garment.Pattern, w Wording) mark.Section {
	s := mark.Section{Title: "Tear and cut first"}
	torn, cut := lay.Cuttings(p)
	heads := func(what string) []string { return []string{what, "how many", "across the cloth", "along it"} }
	rows := func(list []lay.Cutting) []mark.Row {
		var rows []mark.Row
		for _, c := range list {
			count := fmt.Sprint(c.Count)
			if c.OnFold {
				count += ", on the fold"
			}
			rows = append(rows, mark.Row{Cells: []string{c.Title(), count, w.cell(c.Across), w.cell(c.Along)}})
		}
		return rows
	}
	if len(torn) > 0 {
		s.Tables = append(s.Tables, mark.Table{Heads: heads("tear"), Rows: rows(torn)})
	}
	if len(cut) > 0 {
		t := mark.Table{Heads: heads("cut"), Rows: rows(cut)}
		for _, c := range cut {
			if c.OnFold {
				t.Lines = []mark.Sentence{{Text: "Sizes are over all; of a piece on the fold, those of the half that is drawn."}}
			}
		}
		s.Tables = append(s.Tables, t)
	}
	for _, piece := range p.Pieces {
		if b := piece.Block; b != nil {
			s.Lines = append(s.Lines, mark.Sentence{Text: fmt.Sprintf("%s: once it is tucked, the top edge of its block must measure %s; draw the bottom edge in to the same",
				piece.Name, w.length(p.Unit.Amount(b.Top)))})
		}
	}
	if text := guessedGrain(p); text != "" {
		s.Lines = append(s.Lines, mark.Sentence{Text: text})
	}
	for _, r := range p.Ruffles {
		if r.Strips == 0 {
			s.Lines = append(s.Lines, mark.Sentence{Text: fmt.Sprintf("%s: tear strips %s deep; how many follows from the width of the cloth, which the file does not give", r.Key, w.length(r.CutDepth))})
		}
	}
	return s
}

// guessedGrain says along what the grain of the pieces was taken whose file does not say
// it; nothing where all do, or lie on the fold.
func guessedGrain(p *garment.Pattern) string {
	var guessed []string
	for _, piece := range p.Pieces {
		if piece.GrainGiven || piece.OnFold {
			continue
		}
		along := "straight up"
		if piece.GrainAlong != "" {
			along = "along " + piece.GrainAlong
		}
		guessed = append(guessed, piece.Name+" "+along)
	}
	if len(guessed) == 0 {
		return ""
	}
	return "The file does not give every grain; it was taken so: " + strings.Join(guessed, ", ") + "."
}
