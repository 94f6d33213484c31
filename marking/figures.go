package marking

import (
	"fmt"
	"math"
	"strings"
)

// Rules of this file. The figures are read at the cutting table, in the order in which
// they are needed there: what is torn first comes first. A table without rows is left
// out, and so is a section with nothing to say.

// wording is how lengths are put into words: in the unit of the file, or in both
// systems.
type wording struct{ both bool }

// length gives a length with its unit.
func (w wording) length(a Amount) string {
	if w.both {
		return a.Both()
	}
	return a.String()
}

// cell gives a length without its unit, which the head of the figures says.
func (w wording) cell(a Amount) string { return w.paired(a, a.bare()) }

// reading gives a place on a ruler, without its unit.
func (w wording) reading(a Amount) string { return w.paired(a, a.reading()) }

func (w wording) paired(a Amount, own string) string {
	switch {
	case !w.both:
		return own
	case a.foreign():
		own = bare(a.inUnit())
	}
	return own + " (" + bare(a.other()) + ")"
}

// buy gives what is bought.
func (w wording) buy(p Purchase) string {
	if w.both {
		return p.Both()
	}
	return p.String()
}

// Report gives the figures of the pattern for the cutting table, with lengths in its
// own unit, or in inches and millimetres both.
func (p *Pattern) Report(both bool) Report {
	w := wording{both}
	r := Report{Title: p.Title, Notes: []string{p.scaleNote(both)}}
	if p.Size != "" {
		r.Title = strings.TrimPrefix(r.Title+", size "+p.Size, ", ")
	}
	for _, s := range []Section{
		p.firstSection(w), p.foldSection(w), p.edgeSection(w), p.seamSection(w), p.trimSection(w),
		p.clothSection(w), p.sewingSection(w), p.cautionSection(),
	} {
		if len(s.Tables)+len(s.Lines) > 0 || s.Picture != nil {
			r.Sections = append(r.Sections, s)
		}
	}
	return r
}

func (p *Pattern) scaleNote(both bool) string {
	names := map[Unit]string{Inch: "inches, to the nearest 1/16", Centimetre: "centimetres, to the nearest millimetre", Millimetre: "millimetres"}
	note := "Lengths are in " + names[p.Unit] + ". Totals are those of the lengths as printed."
	if both {
		other := "inches"
		if p.Unit == Inch {
			other = "millimetres"
		}
		note += " In brackets is the exact length in " + other + ", rounded."
	}
	return note
}

// firstSection lists what is torn and cut.
func (p *Pattern) firstSection(w wording) Section {
	s := Section{Title: "Tear and cut first"}
	torn, cut := p.cutList()
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
	for _, r := range p.Ruffles {
		if r.Strips == 0 {
			s.Lines = append(s.Lines, Sentence{Text: fmt.Sprintf("%s: tear strips %s deep; how many follows from the width of the cloth, which the file does not give", r.Key, w.length(r.CutDepth))})
		}
	}
	return s
}

// title names what is torn or cut.
func (c Cutting) title() string {
	switch c.What {
	case "block":
		return c.Name + ", block to be tucked"
	case "strip":
		return c.Name + ", strips"
	case "square":
		return c.Name + ", square for bias strips"
	case "bias":
		return c.Name + ", cloth for bias strips"
	case "rectangle":
		return c.Name + ", a rectangle"
	}
	return c.Name
}

func (p *Pattern) foldSection(w wording) Section {
	s := Section{Title: "Tucks and pleats, on the flat cloth"}
	for i := range p.Pieces {
		s.Tables = append(s.Tables, p.Pieces[i].foldTables(p.Unit, w)...)
	}
	return s
}

// edgeSection lists the edges of every piece.
func (p *Pattern) edgeSection(w wording) Section {
	s := Section{Title: "Edges"}
	for i := range p.Pieces {
		piece := &p.Pieces[i]
		t := Table{Title: piece.Name, Heads: []string{"", "cut", "sewn", "allowance"}}
		if piece.OnFold {
			t.Title += ", half of it"
		}
		for _, e := range piece.edgeFigures(p.Unit) {
			t.Rows = append(t.Rows, Row{Cells: []string{e.Key, w.cell(e.Cut), w.cell(e.Sewn), e.edge.allowanceIn(w, p.Unit)}})
		}
		if len(piece.rows())+len(piece.Pleats) > 0 {
			t.Lines = []Sentence{{Text: "sewn: with the tucks and pleats in"}}
		}
		s.Tables = append(s.Tables, t)
	}
	return s
}

// allowanceIn says what lies beyond the stitch line of an edge.
func (e Edge) allowanceIn(w wording, unit Unit) string {
	switch {
	case e.OnFold:
		return "on the fold"
	case e.Hem > 0 && e.Turn > 0:
		return "hem " + w.cell(unit.chosen(e.Hem)) + ", turn " + w.cell(unit.chosen(e.Turn))
	case e.Hem > 0:
		return "hem " + w.cell(unit.chosen(e.Hem))
	case e.Allowance > 0:
		return w.cell(unit.chosen(e.Allowance))
	}
	return "none"
}

// EdgeFigure is how long one edge is.
type EdgeFigure struct {
	Key  string
	Cut  Amount // on the flat cloth
	Sewn Amount // with tucks and pleats in

	edge Edge
}

// cutLengths returns the length of every edge on the flat cloth.
func (p *Piece) cutLengths() []float64 {
	cut := make([]float64, len(p.Edges))
	for _, run := range p.flat.runs() {
		cut[run.edge] += run.path.Length()
	}
	return cut
}

// edgeFigures lists the lengths of the edges of a piece.
func (p *Piece) edgeFigures(unit Unit) []EdgeFigure {
	cut := p.cutLengths()
	var all []EdgeFigure
	for i, e := range p.Edges {
		all = append(all, EdgeFigure{Key: e.Key, Cut: unit.amount(cut[i]), Sewn: unit.amount(e.Folded), edge: e})
	}
	return all
}

// seamSection walks the seams.
func (p *Pattern) seamSection(w wording) Section {
	s := Section{Title: "Seams"}
	for _, seam := range p.Seams {
		t := Table{Title: seam.Key, Heads: []string{"", "cut", "sewn"}}
		for _, side := range seam.Sides {
			for _, c := range side.Courses {
				t.Rows = append(t.Rows, Row{Cells: []string{c.title(), w.cell(c.cut.Times(c.Times)), w.cell(c.Whole())}})
			}
			if len(side.Courses) > 1 {
				t.Rows = append(t.Rows, Row{Cells: []string{"together", w.cell(side.Cut), w.cell(side.Sewn)}, Total: true})
			}
		}
		cut := ""
		if seam.Plain {
			cut = w.cell(apart(seam.CutDifference))
		}
		if !seam.Gathered {
			t.Rows = append(t.Rows, Row{Cells: []string{"difference", cut, w.cell(apart(seam.Difference))}, Total: true})
		}
		t.Lines = append(seam.verdict(w), seam.endLines(w)...)
		s.Tables = append(s.Tables, t)
	}
	if len(p.Seams) > 0 {
		s.Lines = []Sentence{{Text: "The two sides are matched at the end named first. A jog is a step where the edge beside the seam goes over it, a point sticks out there, a dip falls in."}}
	}
	return s
}

// verdict says whether the sides of a seam match.
func (s Seam) verdict(w wording) []Sentence {
	var lines []Sentence
	if text := s.mismatch(w.length); text != "" {
		lines = append(lines, Sentence{Text: text, Warning: true})
	}
	longer, shorter := s.longer(s.Difference)
	switch off := math.Abs(s.Difference.MM); {
	case s.Gathered && s.Fullness() < leastFull:
		lines = append(lines, Sentence{Text: fmt.Sprintf("%s is only %s times as long as %s, scant for gathers", longer.title(), factor(s.Fullness()), shorter.title()), Warning: true})
	case s.Gathered:
		lines = append(lines, Sentence{Text: fmt.Sprintf("gather %s, %s times as long, into %s", longer.title(), factor(s.Fullness()), shorter.title())})
	case s.Matches() && off > s.Within.MM+sameLength:
		lines = append(lines, Sentence{Text: fmt.Sprintf("ease %s in: by %s, and the ease allowed is %s", longer.title(), w.length(apart(s.Difference)), w.length(s.Ease))})
	case s.Matches():
		text := fmt.Sprintf("sewn, they match within %s", w.length(s.Within))
		if math.Abs(s.Difference.steps) > s.Within.steps {
			text += ": more than that is only the rounding of each length"
		}
		lines = append(lines, Sentence{Text: text})
	}
	if s.Matches() && !s.CutMatches() {
		lines = append(lines, Sentence{Text: "the cut edges differ in length because their corners do; match the stitch lines"})
	}
	return lines
}

// endLines says how the edges beside a seam go over it.
func (s Seam) endLines(w wording) []Sentence {
	var lines []Sentence
	for _, end := range s.Ends {
		where := "at " + end.Neighbours[0]
		if !end.Alike() {
			where += " and " + end.Neighbours[1]
		}
		jogs := func(a Amount) bool { return a.steps > s.Within.steps }
		parts := s.jogs(end, w)
		switch degrees := math.Round(math.Abs(end.Bend)); {
		case end.Straight():
			parts = append(parts, "no point")
		case end.Bend > 0:
			parts = append(parts, fmt.Sprintf("a point of %.0f degrees", degrees))
		default:
			parts = append(parts, fmt.Sprintf("a dip of %.0f degrees", degrees))
		}
		lines = append(lines, Sentence{
			Text:    where + ": " + strings.Join(parts, ", "),
			Warning: end.Alike() && (!end.Straight() || jogs(end.Jog) || end.CutJogKnown && jogs(end.CutJog)),
		})
	}
	return lines
}

// jogs says which side runs past the other at an end of a seam, sewn and cut.
func (s Seam) jogs(end SeamEnd, w wording) []string {
	past := func(side int, of string, by Amount) string {
		names := s.names()
		if side < 0 {
			names[0], names[1] = names[1], names[0]
		}
		return fmt.Sprintf("%s%s runs %s past %s", of, names[0], w.length(by), names[1])
	}
	sewn := end.Past != 0 && end.Jog.steps > 0
	cut := end.CutJogKnown && end.CutPast != 0 && end.CutJog.steps > 0
	switch {
	case sewn && cut && end.Past == end.CutPast && end.Jog.steps == end.CutJog.steps:
		return []string{past(end.Past, "", end.Jog)}
	case sewn && cut:
		return []string{past(end.Past, "", end.Jog), past(end.CutPast, "the cut edge of ", end.CutJog)}
	case sewn:
		return []string{past(end.Past, "", end.Jog)}
	case cut:
		return []string{past(end.CutPast, "the cut edge of ", end.CutJog)}
	}
	return []string{"no jog"}
}

// sewingSection notes how the garment is sewn.
func (p *Pattern) sewingSection(w wording) Section {
	s := Section{Title: "Settings to keep"}
	for _, one := range p.Sewing {
		s.Lines = append(s.Lines, Sentence{Text: strings.TrimSuffix(one.Name+": "+one.Value, " "), Blank: one.Value == ""})
	}
	for i := range p.Pieces {
		for _, t := range p.Pieces[i].Tucks {
			name := fmt.Sprintf("sample of %s, %s: ", p.Pieces[i].Name, t.Key)
			if t.Sampled {
				s.Lines = append(s.Lines, Sentence{Text: name + fmt.Sprintf("%s took up %s", counted(t.Sample.Tucks.N, "tuck"),
					w.length(p.Unit.amount(t.Sample.Flat.MM-t.Sample.Sewn.MM)))})
			} else if t.wantsSample() {
				s.Lines = append(s.Lines, Sentence{Text: strings.TrimSuffix(name, " "), Blank: true})
			}
		}
	}
	return s
}

func (p *Pattern) cautionSection() Section {
	s := Section{Title: "Cautions"}
	for _, text := range p.cautions() {
		s.Lines = append(s.Lines, Sentence{Text: text})
	}
	return s
}
