package pdfout

import (
	"fmt"
	"io"
	"slices"

	"tuckmark/marking/fault"
	"tuckmark/marking/mark"
	"tuckmark/marking/wording"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/report"
	"tuckmark/pdfout/text"
)

// Draw writes a set as a PDF for the paper. Nothing is written when the set cannot be
// drawn; such an error is a *fault.Fault without a place. Pieces without any line are
// left out and named in the summary.
func Draw(w io.Writer, set arrange.Set, p paper.Paper) (Summary, error) {
	return draw(w, set, p, onPDF, (*Book).drawAll)
}

// DrawSVG is Draw that writes an SVG, for paper that has everything on one single page: the
// lines of each piece in groups of their own, with the names of the file.
func DrawSVG(w io.Writer, set arrange.Set, p paper.Paper) (Summary, error) {
	return draw(w, set, p, onSVG, (*Book).drawAll)
}

// DrawFirst is Draw that writes only the first page, by which the scale is proved
// before the others are printed; the summary is that of all pages. Paper that has
// everything on one page has no first one: that is an error.
func DrawFirst(w io.Writer, set arrange.Set, p paper.Paper) (Summary, error) {
	if p.WhollyOnOne() {
		return Summary{}, &fault.Fault{
			Cause: fmt.Sprintf("on %s there is no first page to be printed by itself", p.ShortTitle()),
			Hint:  "its check square is on the page with the pieces",
		}
	}
	return draw(w, set, p, onPDF, (*Book).drawFirst)
}

// document is what a book is drawn on, and written as.
type document interface {
	ink.Canvas
	Finish(io.Writer) error
}

func onPDF(b *Book) document { return ink.NewPDF(b.paper, b.fullTitle(), b.roles, b.chapters()) }

func onSVG(b *Book) document { return ink.NewSVG(b.fullTitle()) }

// draw plans a set, draws of it what is wanted on a document, and writes that.
func draw(w io.Writer, set arrange.Set, p paper.Paper, begin func(*Book) document, wanted func(*Book, ink.Canvas)) (Summary, error) {
	b, err := Plan(set, p)
	if err != nil {
		return Summary{}, err
	}
	on := begin(b)
	wanted(b, on)
	if err := on.Finish(w); err != nil {
		return Summary{}, err
	}
	return b.summary(), nil
}

// Plan plans a set for the paper, to the page, with all that is written on it. An error is a
// *fault.Fault without a place, as it is of Draw.
func Plan(set arrange.Set, p paper.Paper) (*Book, error) {
	b, err := plan(set, p)
	if err != nil {
		return nil, err
	}
	b.letter()
	if b.pages > paper.MaxPages { // with what has no room beside its piece
		return nil, tooMany(b.set, text.PageCount(b.pages), p)
	}
	return b, nil
}

// plan lays everything on its page, in the order of use, without joins and lettering.
func plan(set arrange.Set, p paper.Paper) (*Book, error) {
	if err := check(set, p); err != nil {
		return nil, err
	}
	set.Pieces = mark.Numbered(set.Pieces)
	if p.WhollyOnOne() {
		return planWhole(set, p)
	}
	laid := arrange.Arrange(set, p)
	if n := laid.Least + len(laid.Forms); n > paper.MaxPages {
		return nil, tooMany(set, "at least "+text.PageCount(n), p)
	}
	if len(laid.Sheets)+len(laid.Forms) == 0 {
		return nil, nothingToDraw()
	}
	b := newBook(set, p, p)
	b.left = laid.Left
	if err := b.layLeaves(laid.Forms); err != nil {
		return nil, err
	}
	for _, s := range laid.Sheets {
		b.sheets = append(b.sheets, &laidSheet{Sheet: s})
	}
	b.number()
	if b.pages > paper.MaxPages {
		return nil, tooMany(set, text.PageCount(b.pages), p)
	}
	return b, nil
}

// layLeaves lays the forms and the figures, each on a leaf of its own.
func (b *Book) layLeaves(forms []mark.Marking) (err error) {
	if b.forms, err = layForms(forms, b.set.Unit, b.leaf); err != nil {
		return err
	}
	b.figures, err = report.Lay(withParts(b.set.Report, b.set.Pieces), b.leaf)
	return err
}

func nothingToDraw() error {
	return &fault.Fault{Cause: "there is no line to draw", Hint: "give the file at least one piece with an outline"}
}

// tooMany refuses a set that needs too many pages.
func tooMany(set arrange.Set, need string, p paper.Paper) error {
	who := "the pieces"
	if set.Report != nil {
		who += " and the figures"
	}
	return &fault.Fault{
		Cause: fmt.Sprintf("%s need %s of %s; %s is the most", who, need, p.ShortTitle(), wording.Thousands(paper.MaxPages)),
		Hint:  "see whether the file's unit is the one meant, print fewer pieces, or choose larger paper",
	}
}

// withParts returns a report whose pictures have the numbers that pieces have as parts: that of
// the sheet on which the outline of the piece is, or of the first thing that is printed of it.
func withParts(r *mark.Report, all []mark.Marking) *mark.Report {
	if r == nil {
		return nil
	}
	partOf := func(name string) int {
		part := 0
		for _, m := range all {
			if whole := m.Kind == mark.Piece || m.Kind == mark.CuttingSheet; name != "" && m.IsOf(name) && (part == 0 || whole) {
				part = m.Part
			}
		}
		return part
	}
	numbered := *r
	numbered.Sections = slices.Clone(r.Sections)
	for i := range numbered.Sections {
		s := &numbered.Sections[i]
		if s.Picture == nil {
			continue
		}
		drawn := *s.Picture
		drawn.Shapes = slices.Clone(drawn.Shapes)
		for k := range drawn.Shapes {
			drawn.Shapes[k].Part = partOf(drawn.Shapes[k].Piece)
		}
		s.Picture = &drawn
	}
	return &numbered
}
