// Package pdfout puts marks on paper: it arranges pieces on sheets, cuts the
// sheets into pages a home printer can print, gives every role its line type,
// and writes the PDF. It knows roles, not sewing.
//
// The way of the data, and of a reader of these files: a Set of pieces is laid
// on sheets of a paper (paper.go, findpaper.go; sheet.go: a large one each on its own,
// where gridplace.go finds the fewest pages; small ones together, shelf.go, or in what large
// ones leave free, share.go and freeroom.go; all on one page or a roll, whole.go; each
// page is filled by pack.go), a
// sheet is cut into tiles (tile.go) that are joined (join.go), its
// lines and pieces are lettered where there is room (lettering.go, title.go,
// field.go), every tile becomes a page (page.go, with the pens of pen.go), in
// front of which go the page that proves the scale (cover.go) and the pictures
// of how the pages are joined (assembly.go). All of it is drawn on a Canvas
// (canvas.go) in a few strokes and letters, and all text is set in Lines (lines.go);
// that it becomes a PDF is known where bytes are made, here and in pdf.go, which
// alone touches the PDF library. A piece with a form, to be sewn and filled in before anything is
// marked, is laid on a sheet of one page at once (form.go); these pages come
// before those of all other sheets. A report of figures is set in bands
// (report.go, with its tables in reporttable.go and its pictures in
// reportpicture.go), which fill pages (band.go) between those in front and the
// forms. What a printer that is off does to a set is said by verdict.go, what may have
// done it by fit.go; scale.go is what it prints at.
package pdfout

import (
	"fmt"
	"io"
	"slices"
)

// Draw writes the set as a PDF for the paper. Nothing is written when the set
// cannot be drawn; such an error is a *Refusal. Pieces without any line are
// left out and named in the summary.
func Draw(w io.Writer, set Set, paper Paper) (Summary, error) {
	return draw(w, set, paper, (*book).draw)
}

// DrawFirst is Draw that writes only the first page, by which the scale is proved
// before the others are printed; the summary is that of all pages. Paper that has
// everything on one page has no first one: that is an error.
func DrawFirst(w io.Writer, set Set, paper Paper) (Summary, error) {
	if paper.WhollyOnOne() {
		return Summary{}, &Refusal{
			Cause: fmt.Sprintf("on %s there is no first page to be printed by itself", paper.ShortTitle()),
			Hint:  "its check square is on the page with the pieces",
		}
	}
	return draw(w, set, paper, (*book).drawFirst)
}

// draw plans a set, draws of it what is wanted, and writes that.
func draw(w io.Writer, set Set, paper Paper, wanted func(*book, Canvas)) (Summary, error) {
	book, left, err := plan(set, paper)
	if err != nil {
		return Summary{}, err
	}
	number := 1
	for i := book.forms; i < len(book.sheets); i++ {
		number = book.sheets[i].findJoins(number)
		book.sheets[i].letter(set.Unit)
	}
	d := NewPDF(paper, book.fullTitle(), book.roles)
	wanted(book, d)
	if err := d.Finish(w); err != nil {
		return Summary{}, err
	}
	return book.summary(left), nil
}

// plan lays everything on its page, without joins and lettering, and returns the
// names of the pieces that have no line as well.
func plan(set Set, paper Paper) (*book, []string, error) {
	if err := check(set, paper); err != nil {
		return nil, nil, err
	}
	if paper.WhollyOnOne() {
		return planWhole(set, paper)
	}
	laid := arrange(set, paper)
	if len(laid.sheets)+len(laid.forms) == 0 {
		return nil, nil, nothingToDraw()
	}
	if !laid.exact {
		return nil, nil, tooMany(set, "more than "+counted(laid.pages(), "page"), paper)
	}
	if n := len(laid.forms); n > MaxPages {
		return nil, nil, tooMany(set, "more than "+counted(n, "page"), paper)
	}
	forms, err := layForms(laid.forms, set, paper)
	if err != nil {
		return nil, nil, err
	}
	figures, err := layReport(set, paper)
	if err != nil {
		return nil, nil, err
	}
	book := newBook(set, paper, figures, forms, laid.sheets)
	if book.pages > MaxPages {
		return nil, nil, tooMany(set, counted(book.pages, "page"), paper)
	}
	for i := range book.sheets {
		book.sheets[i].paper = paper
	}
	return book, laid.left, nil
}

func nothingToDraw() error {
	return &Refusal{Cause: "there is no line to draw", Hint: "give the file at least one piece with an outline"}
}

// tooMany refuses a set that needs too many pages.
func tooMany(set Set, need string, paper Paper) error {
	who := "the pieces"
	if set.Report != nil {
		who += " and the figures"
	}
	return &Refusal{
		Cause: fmt.Sprintf("%s need %s of %s; %s is the most", who, need, paper.ShortTitle(), thousands(MaxPages)),
		Hint:  "see whether the file's unit is the one meant, print fewer pieces, or choose larger paper",
	}
}

// check refuses what the fonts cannot print, places that are no places, and
// paper that is too small or too large.
func check(set Set, paper Paper) error {
	if err := paper.check(); err != nil {
		return err
	}
	if bad, found := unprintable(set.Title); found {
		return noLetter(bad, "the title")
	}
	if bad, found := unprintable(set.Size); found {
		return noLetter(bad, "the size")
	}
	for _, text := range set.Cautions {
		if bad, found := unprintable(text); found {
			return noLetter(bad, "a caution")
		}
	}
	if err := checkReport(set.Report); err != nil {
		return err
	}
	for _, piece := range set.Pieces {
		texts := append([]string{piece.Name}, piece.Notes...)
		if form := piece.Form; form != nil {
			texts = slices.Concat(texts, form.Steps, form.Blanks, form.Sum)
		}
		for _, text := range texts {
			if bad, found := unprintable(text); found {
				return noLetter(bad, fmt.Sprintf("piece %q", piece.Key))
			}
		}
		for _, m := range piece.Marks {
			if bad, found := unprintable(m.Name); found {
				return noLetter(bad, fmt.Sprintf("a line of piece %q", piece.Key))
			}
			for _, p := range m.Path {
				if !isPlace(p) {
					return &Refusal{Cause: fmt.Sprintf("piece %q has a line that leads nowhere on paper", piece.Key)}
				}
			}
		}
	}
	return nil
}
