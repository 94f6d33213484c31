package figures

import (
	"fmt"
	"slices"

	"tuckmark/marking/garment"
	"tuckmark/marking/gauge"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/sheet"
	"tuckmark/marking/wording"
)

// Rules of this file: the order of work from marking to the finished edge, only of what the
// file holds. A step has one number at most, and a hem its turn, which are among those in the
// tables; what is to be known besides is read there. Steps that are alike but for their piece are
// one.

// mostInStep is how many names a step lists.
const mostInStep = 6

// work gathers steps.
type work struct {
	pattern  *garment.Pattern
	markings []mark.Marking
	tasks    []mark.Task
}

// Work returns the order of work by the markings of a pattern; none without any.
func Work(p *garment.Pattern, markings []mark.Marking) []mark.Task {
	w := work{pattern: p, markings: markings}
	if len(markings) == 0 {
		return nil
	}
	w.sampled()
	for i := range p.Pieces {
		if p.Pieces[i].Block != nil {
			w.tucked(&p.Pieces[i])
		}
	}
	w.marked()
	w.folded()
	pockets, others := w.unjoined()
	w.sewnInPlace(pockets)
	w.hemmed(beforeGathers)
	inPlace := func(on garment.SewnOn) bool { return liesOn(on, pockets) || liesOn(on, others) }
	w.sewnOn(func(on garment.SewnOn) bool { return !inPlace(on) && w.isInserted(on) })
	w.seamed()
	w.sewnInPlace(others)
	w.hemmed(beforeTrims)
	w.sewnOn(func(on garment.SewnOn) bool { return !inPlace(on) && !w.isInserted(on) })
	w.hemmed(atLast)
	w.raw()
	w.closed()
	return w.tasks
}

// add adds a step; Number may be "".
func (w *work) add(do, number string, keys []string) {
	w.tasks = append(w.tasks, mark.Task{Do: do, Number: number, Keys: keys})
}

// last is the last step, of which more is to be said.
func (w *work) last() *mark.Task { return &w.tasks[len(w.tasks)-1] }

// keys are those of the markings of some kinds; of the pieces that are named, or of all
// where none is.
func (w *work) keys(names []string, kinds ...mark.Kind) []string {
	var keys []string
	for _, m := range w.markings {
		if slices.Contains(kinds, m.Kind) && (names == nil || slices.ContainsFunc(names, m.IsOf)) {
			keys = append(keys, m.Key)
		}
	}
	return keys
}

// drawn are the keys of the markings on which the lines of pieces are drawn: the finished
// piece, or its template where there is no other.
func (w *work) drawn(names []string) []string {
	var keys []string
	for _, name := range names {
		own := w.keys([]string{name}, mark.CuttingSheet, mark.Piece)
		if own == nil {
			own = w.keys([]string{name}, mark.Template)
		}
		for _, key := range own {
			if !slices.Contains(keys, key) { // pieces that are alike have one
				keys = append(keys, key)
			}
		}
	}
	return keys
}

// sampled adds the samples, each to be measured against its strip as it is ruled.
func (w *work) sampled() {
	for i := range w.pattern.Pieces {
		p := &w.pattern.Pieces[i]
		for _, t := range p.TuckRows {
			key := sheet.SampleKey(p, t)
			if slices.ContainsFunc(w.markings, func(m mark.Marking) bool { return m.Key == key }) {
				w.add(fmt.Sprintf("Sew the sample of the %s", t.Called()), "flat "+w.pattern.Unit.AsWritten(sheet.SampleFlat(t, w.pattern.Unit)), []string{key})
			}
		}
	}
}

// tucked adds what is done with the block of a piece until the piece is cut from it.
func (w *work) tucked(p *piece.Piece) {
	b, unit, name := p.Block, w.pattern.Unit, []string{p.Name}
	lines, cutting := w.keys(name, mark.TuckSheet, mark.TuckRuler), w.keys(name, mark.CuttingSheet)
	if b.Measured != nil {
		w.add(fmt.Sprintf("Measure %s of the stitched block of %s once more", b.WhereMeasured(), p.Name), unit.Amount(b.TopIs()).String(), w.keys(name, mark.TuckSheet))
	} else {
		blocks := "the block"
		if b.Cut > 1 {
			blocks = wording.Counted(b.Cut, "block")
		}
		w.add(fmt.Sprintf("Tear %s for %s, and press it", blocks, p.Name),
			unit.Amount(b.Width).String()+" by "+unit.Amount(b.Length).String(), w.keys(name, mark.TuckSheet))
		w.add(fmt.Sprintf("Rule the centre and the %s of %s", b.What(), p.Name), ruled(p, unit), lines)
		w.add(fmt.Sprintf("Sew the %s of %s, press them, and measure %s", b.What(), p.Name, b.WhereMeasured()), unit.Amount(b.TopIs()).String(), w.keys(name, mark.TuckSheet))
	}
	if cutting != nil {
		w.add(fmt.Sprintf("Lay the cutting sheet of %s on the block, and cut one layer at a time", p.Name), fmt.Sprintf("cut %d", p.Cut), cutting)
	}
}

// marked adds how the pieces that have no block are marked and cut, and what is drawn with
// templates and gauges.
func (w *work) marked() {
	count, blocks, templates := 0, false, false
	var names []string
	for i := range w.pattern.Pieces {
		p := &w.pattern.Pieces[i]
		blocks = blocks || p.Block != nil
		templates = templates || w.onlyTemplate(p)
		if p.Block == nil && w.keys([]string{p.Name}, mark.Piece) != nil {
			count, names = count+p.Cut, append(names, p.Name)
		}
	}
	if count > 0 {
		which := "the pieces"
		switch {
		case templates:
			which = namesOf(names)
		case blocks:
			which = "the other pieces"
		}
		w.add("Mark and cut "+which, fmt.Sprintf("%d in all", count), w.keys(nil, mark.Piece))
	}
	w.templated()
	w.tasks = append(w.tasks, gauge.Work(w.markings)...)
}

// onlyTemplate reports whether a piece has a template and no other sheet to be cut by.
func (w *work) onlyTemplate(p *piece.Piece) bool {
	name := []string{p.Name}
	return w.keys(name, mark.Template) != nil && w.keys(name, mark.CuttingSheet, mark.Piece) == nil
}

// templated adds how the pieces are marked and cut of which there is only a template, and then what
// is drawn along the other templates, which are laid on the cut pieces.
func (w *work) templated() {
	keys := w.keys(nil, mark.Template)
	if keys == nil {
		return
	}
	var names, own []string
	count := 0
	for i := range w.pattern.Pieces {
		p := &w.pattern.Pieces[i]
		if !w.onlyTemplate(p) {
			continue
		}
		names, own = append(names, p.Name), append(own, w.keys([]string{p.Name}, mark.Template)...)
		count += p.Cut
	}
	if own != nil {
		do := "Mark the pieces by their templates, and cut them"
		switch {
		case len(names) == 1:
			do = fmt.Sprintf("Mark %s by its template, and cut it", names[0])
		case len(names) < len(w.pattern.Pieces):
			do = fmt.Sprintf("Mark %s by their templates, and cut them", namesOf(names))
		}
		w.add(do, wording.Counted(count, "piece"), own)
	}
	keys = slices.DeleteFunc(keys, func(key string) bool { return slices.Contains(own, key) })
	if len(keys) == 0 {
		return
	}
	do := "Draw along the templates"
	if slices.ContainsFunc(w.markings, func(m mark.Marking) bool {
		return slices.Contains(keys, m.Key) && slices.ContainsFunc(m.Marks, func(one mark.Mark) bool { return one.Role == mark.Window })
	}) {
		do += ", and through their windows"
	}
	w.add(do, "", keys)
}

// step is one that may be the same for several pieces.
type step struct {
	do, number, piece string
	roles             []mark.Role // of the lines it is done along; nil for all of the piece
	lines             []string    // what they are called; nil for any
}

// addSteps adds steps, those that are alike as one, with the names of their pieces behind.
func (w *work) addSteps(all []step) {
	for len(all) > 0 {
		first := all[0]
		var names, lines []string
		all = slices.DeleteFunc(all, func(s step) bool {
			alike := s.do == first.do && s.number == first.number
			if alike && !slices.Contains(names, s.piece) {
				names = append(names, s.piece)
				lines = append(lines, s.lines...)
			}
			return alike
		})
		w.add(first.do+" "+namesOf(names), first.number, w.drawn(names))
		w.last().Roles, w.last().Lines = first.roles, lines
	}
}

// namesOf lists names, as many as a step has room for.
func namesOf(names []string) string { return wording.Listed(wording.FirstOf(names, mostInStep), "and") }

// folded adds the tucks and pleats of the pieces that are marked flat.
func (w *work) folded() {
	unit := w.pattern.Unit
	tucks, pleats := []mark.Role{mark.TuckFold, mark.TuckStitch}, []mark.Role{mark.PleatFold, mark.Placement}
	var all []step
	for i := range w.pattern.Pieces {
		p := &w.pattern.Pieces[i]
		if p.Block == nil {
			for _, t := range p.TuckRows {
				number := unit.AsWritten(t.Width) + " from the fold"
				if t.Twin {
					number = foldedApart(t, unit)
				}
				all = append(all, step{do: "Sew the tucks of", number: number, piece: p.Name, roles: tucks})
			}
			for _, r := range p.PleatRows {
				all = append(all, step{do: "Lay the pleats of", number: unit.AsWritten(r.Depth) + " deep", piece: p.Name, roles: pleats})
			}
		}
		for _, pleat := range p.EdgePleats {
			all = append(all, step{do: "Lay the pleats of", number: unit.AsWritten(pleat.Depth) + " deep", piece: p.Name, roles: pleats})
		}
	}
	w.addSteps(all)
}
