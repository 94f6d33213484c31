package figures

import (
	"fmt"
	"slices"

	"tuckmark/marking/garment"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/wording"
)

// Rules of this file: what the garment measures when it is finished, for every level with the pieces
// it adds up from, and beside it what the child measures, where the file says that.

// measureSection tells how large the finished garment is; nothing where the seams do not
// tell it.
func measureSection(p *garment.Pattern, w writer) mark.Section {
	s := mark.Section{Title: "Finished measures"}
	for _, g := range p.Measures.Girths {
		s.Tables = append(s.Tables, girthTable(g, p.Seams, w))
	}
	if len(p.Measures.Drops) > 0 {
		s.Tables = append(s.Tables, dropTable(p.Measures.Drops, p.Bindings, w))
	}
	for _, r := range p.Measures.Untold {
		s.Lines.Warn("%s", r.Text)
	}
	return s
}

// girthTable is how far it is round at one level.
func girthTable(g garment.Girth, seams []garment.Seam, w writer) mark.Table {
	t := mark.Table{Title: "round the " + g.Level.String(), Heads: []string{"", "each", "times", "together"}}
	if g.Level == garment.AtChest {
		t.Title = "round the chest, under the arms"
	}
	for _, part := range g.Parts {
		name := part.Piece
		if part.Edge != "" {
			name += ", " + part.Edge
		}
		addTimes(&t, name, part.Each, part.Times, w)
	}
	if g.Gathered {
		t.Lines.Say("it is gathered: drawn up to what it is sewn to, it measures %s", w.length(g.Round))
	} else {
		t.AddTotal("finished", "", "", w.cell(g.Round))
	}
	fitRows(&t, g.Fit, "ease", w)
	for _, part := range g.Parts {
		if part.HeldIn {
			t.Lines.Say("tucks or pleats of %s end within %s of that level, and still hold it in", part.Piece, w.length(g.Round.Unit.Amount(piece.NearFoldEnd)))
		}
	}
	if gathers := gathersOf(g, seams); len(gathers) > 0 {
		t.Lines.Say("the gathers make it loose: %s", wording.Listed(gathers, "and"))
	}
	switch at := g.Opens; {
	case at.Closed != "":
		t.Lines.Say("it opens at %s, and is closed with one %q on the other", at.Title(), at.Closed)
	case at.Piece != nil:
		t.Lines.Say("it opens at %s, and is measured with its two edges meeting; what one laps over the other is to be taken off", at.Title())
	}
	if text := g.Tight(w.length); text != "" {
		t.Lines.Warn("%s", text)
	}
	return t
}

// gathersOf lists the seams by which what goes round across its pieces is gathered in, above that
// level or below it.
func gathersOf(g garment.Girth, seams []garment.Seam) []string {
	var all []string
	for _, s := range seams {
		longer, shorter := s.Longer(s.Difference)
		if s.Gathered && slices.ContainsFunc(g.Parts, func(part garment.GirthPart) bool {
			return part.Edge == "" && slices.ContainsFunc(longer.Courses, func(c garment.Course) bool { return c.Piece.Name == part.Piece })
		}) {
			all = append(all, fmt.Sprintf("%s is drawn up to %s", longer.Title(), shorter.Title()))
		}
	}
	return all
}

// fitRows adds the measure of the child, and by how much the garment is larger.
func fitRows(t *mark.Table, f garment.Fit, larger string, w writer) {
	if !f.Given {
		return
	}
	before := make([]string, t.Columns()-2)
	t.Add(append(append([]string{"the child"}, before...), w.cell(f.Child))...)
	if f.Ease.Steps < 0 {
		t.AddTotal(append(append([]string{"smaller by"}, before...), w.cell(f.Ease.Magnitude()))...)
		return
	}
	t.AddTotal(append(append([]string{larger}, before...), w.cell(f.Ease))...)
}

// dropTable is how long the finished garment is, from the stitch line of its top: what is bound there
// reaches beyond that by the width of the binding.
func dropTable(drops []garment.Drop, bindings []garment.Binding, w writer) mark.Table {
	t := mark.Table{Title: "length", Heads: []string{"", "finished"}}
	var told []string // of what hangs from a hem
	for _, d := range drops {
		where := d.Piece + ", " + d.Along
		if d.Along == "" {
			where = d.Piece + ", straight down"
		}
		to := d.Bottom
		if d.Hangs.Key != "" {
			to += ", with " + d.Hangs.What
			counted := fmt.Sprintf("with %s: the %s by which %s hangs below is counted in", d.Hangs.What, w.length(d.Hangs.Depth), d.Hangs.Key)
			if !slices.Contains(told, counted) {
				told = append(told, counted)
			}
		}
		t.Add(fmt.Sprintf("%s, from %s to %s", where, d.Top, to), w.cell(d.Length))
		if !d.Fit.Given {
			continue
		}
		at := "at the back"
		if d.FromWaist {
			at = "from the waist"
		}
		way := "longer"
		if d.Fit.Ease.Steps < 0 {
			way = "shorter"
		}
		if d.Fit.Ease.Steps == 0 {
			t.Lines.Say("%s that is as long as was wanted, %s", at, w.length(d.Fit.Child))
			continue
		}
		t.Lines.Say("%s that is %s %s than was wanted, %s", at, w.length(d.Fit.Ease.Magnitude()), way, w.length(d.Fit.Child))
	}
	for _, counted := range told {
		t.Lines.Say("%s", counted)
	}
	for _, b := range bindings {
		if slices.ContainsFunc(drops, func(d garment.Drop) bool {
			return slices.ContainsFunc(b.Courses, func(c garment.Course) bool { return c.Piece.Name == d.Piece && c.Key == d.Top })
		}) {
			t.Lines.Say("it ends at the stitch line of the top; the binding %s reaches %s beyond that", b.Key, w.length(b.Width))
		}
	}
	return t
}
