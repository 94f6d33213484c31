package pdfout

import (
	"fmt"
	"io"
	"slices"

	"tuckmark/marking/fault"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/report"
	"tuckmark/pdfout/text"
)

// Draw writes the set as a PDF for the paper. Nothing is written when the set
// cannot be drawn; such an error is a *fault.Fault without a place. Pieces without
// any line are left out and named in the summary.
func Draw(w io.Writer, set arrange.Set, p paper.Paper) (Summary, error) {
	return draw(w, set, p, (*book).draw)
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
	return draw(w, set, p, (*book).drawFirst)
}

// draw plans a set, draws of it what is wanted, and writes that.
func draw(w io.Writer, set arrange.Set, p paper.Paper, wanted func(*book, ink.Canvas)) (Summary, error) {
	book, left, err := plan(set, p)
	if err != nil {
		return Summary{}, err
	}
	number := 1
	for i := book.forms; i < len(book.sheets); i++ {
		number = book.sheets[i].FindJoins(number)
		book.sheets[i].Letter(set.Unit)
	}
	d := ink.NewPDF(p, book.fullTitle(), book.roles)
	wanted(book, d)
	if err := d.Finish(w); err != nil {
		return Summary{}, err
	}
	return book.summary(left), nil
}

// plan lays everything on its page, without joins and lettering, and returns the
// names of the pieces that have no line as well.
func plan(set arrange.Set, p paper.Paper) (*book, []string, error) {
	if err := check(set, p); err != nil {
		return nil, nil, err
	}
	if p.WhollyOnOne() {
		return planWhole(set, p)
	}
	laid := arrange.Arrange(set, p)
	if len(laid.Sheets)+len(laid.Forms) == 0 {
		return nil, nil, nothingToDraw()
	}
	if !laid.Exact {
		return nil, nil, tooMany(set, "more than "+text.Counted(laid.Pages(), "page"), p)
	}
	if n := len(laid.Forms); n > paper.MaxPages {
		return nil, nil, tooMany(set, "more than "+text.Counted(n, "page"), p)
	}
	forms, err := layForms(laid.Forms, set, p)
	if err != nil {
		return nil, nil, err
	}
	figures, err := report.Lay(set, p)
	if err != nil {
		return nil, nil, err
	}
	book := newBook(set, p, figures, forms, laid.Sheets)
	if book.pages > paper.MaxPages {
		return nil, nil, tooMany(set, text.Counted(book.pages, "page"), p)
	}
	return book, laid.Left, nil
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
		Cause: fmt.Sprintf("%s need %s of %s; %s is the most", who, need, p.ShortTitle(), text.Thousands(paper.MaxPages)),
		Hint:  "see whether the file's unit is the one meant, print fewer pieces, or choose larger paper",
	}
}

// check refuses what the fonts cannot print, places that are no places, and
// paper that is too small or too large.
func check(set arrange.Set, on paper.Paper) error {
	if err := on.Check(); err != nil {
		return err
	}
	if bad, found := ink.Unprintable(set.Title); found {
		return ink.NoLetter(bad, "the title")
	}
	if bad, found := ink.Unprintable(set.Size); found {
		return ink.NoLetter(bad, "the size")
	}
	for _, words := range set.Cautions {
		if bad, found := ink.Unprintable(words); found {
			return ink.NoLetter(bad, "a caution")
		}
	}
	if err := report.Check(set.Report); err != nil {
		return err
	}
	for _, piece := range set.Pieces {
		texts := append([]string{piece.Name}, piece.Notes...)
		if form := piece.Form; form != nil {
			texts = slices.Concat(texts, form.Steps, form.Blanks, form.Sum)
		}
		for _, words := range texts {
			if bad, found := ink.Unprintable(words); found {
				return ink.NoLetter(bad, fmt.Sprintf("piece %q", piece.Key))
			}
		}
		for _, m := range piece.Marks {
			if bad, found := ink.Unprintable(m.Name); found {
				return ink.NoLetter(bad, fmt.Sprintf("a line of piece %q", piece.Key))
			}
			for _, p := range m.Path {
				if !ink.IsPlace(p) {
					return &fault.Fault{Cause: fmt.Sprintf("piece %q has a line that leads nowhere on paper", piece.Key)}
				}
			}
		}
	}
	return nil
}
