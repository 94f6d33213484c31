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
// of how the pages are joined (assembly.go). pdf.go alone touches the PDF
// library. A piece with a form, to be sewn and filled in before anything is
// marked, is laid on a sheet of one page at once (form.go); these pages come
// before those of all other sheets. A report of figures is set in bands
// (report.go, with its tables in reporttable.go and its pictures in
// reportpicture.go), which fill pages (band.go) between those in front and the
// forms. What a printer that is off does to a set is said by verdict.go, what may have
// done it by fit.go; scale.go is what it prints at.
package pdfout

import (
	"cmp"
	"fmt"
	"io"
	"math"
	"slices"
	"strings"

	"tuckmark/marking"
	"tuckmark/marking/plane"
)

// MaxPages is the most pages that one PDF may have, the pages in front and those
// of figures included. A set that needs more is refused before anything is drawn.
const MaxPages = 2000

// Set is what is drawn into one PDF.
type Set struct {
	Title  string // "Linden pinafore"; may be ""
	Size   string // "18 months"; may be ""
	Unit   marking.Unit
	Pieces []marking.Marking
	// What the pieces are called together; "" for "the pieces".
	What string
	// Cautions stand on the first page.
	Cautions []string
	// Kind says under the title what they are; "" for full-size marking sheets.
	Kind string
	// Report is printed on pages of figures right behind those in front. Nil,
	// and a report that says nothing, have none.
	Report *marking.Report
}

// size is the set's size as its pages say it; "" when it has none.
func (s Set) size() string {
	if s.Size == "" {
		return ""
	}
	return "size " + s.Size
}

// Refusal is why a set cannot be drawn.
type Refusal struct {
	Cause string
	Hint  string // "" when there is nothing to advise
}

// Error gives the cause, and the hint on a line of its own.
func (r *Refusal) Error() string {
	if r.Hint == "" {
		return r.Cause
	}
	return r.Cause + "\nhint: " + r.Hint
}

// Summary says what was drawn.
type Summary struct {
	Paper Paper
	Pages int // of the whole PDF
	Front int // pages in front: the first, and more if the pictures need them
	// Figures is how many pages of figures come right behind those in front.
	Figures int
	Blank   int // pages of the sheets that are left out: no line falls on them
	Forms   []FormSummary
	Sheets  []SheetSummary
	// Left names the pieces that have no line to draw.
	Left []string
	// Unit and What are those of the set.
	Unit marking.Unit
	What string
}

// FormSummary says where a form to be filled in is.
type FormSummary struct {
	Piece  string // its name
	Page   int    // its page number
	Turned bool   // its lines lie there by a quarter turn
}

// SheetSummary says what became of one sheet of pieces; a form is none.
type SheetSummary struct {
	Pieces        []string // their names
	Rows, Columns int      // of pages
	First, Last   int      // page numbers
	Blank         int      // pages left out
	Turned        []string // pieces that lie on it by a quarter turn
}

// thePieces is what the pieces of a set are called together.
const thePieces = "the pieces"

// String says it in a sentence or two: "9 pages: the first proves the scale,
// pages 2 to 9 hold the pieces".
func (s Summary) String() string {
	if s.Paper.WhollyOnOne() {
		return s.whole()
	}
	var b strings.Builder
	fmt.Fprintf(&b, "%s: the first proves the scale, ", counted(s.Pages, "page"))
	if s.Front > 1 {
		fmt.Fprintf(&b, "%s more of how pages are joined, ", pageRange(2, s.Front, "shows", "show"))
	}
	behind := s.Front + s.Figures + 1 // the first page behind the figures
	if s.Figures > 0 {
		fmt.Fprintf(&b, "%s the figures, ", pageRange(s.Front+1, behind-1, "has", "have"))
	}
	pieces := behind + len(s.Forms) // their first page
	if len(s.Forms) > 0 {
		fmt.Fprintf(&b, "%s to be sewn and filled in", pageRange(behind, pieces-1, "is", "are"))
		if pieces <= s.Pages {
			b.WriteString(" first, ")
		}
	}
	if pieces <= s.Pages {
		fmt.Fprintf(&b, "%s %s", pageRange(pieces, s.Pages, "holds", "hold"), cmp.Or(s.What, thePieces))
	}
	if s.Blank > 0 {
		fmt.Fprintf(&b, "; %s on which no line falls %s left out", counted(s.Blank, "page"), isAre(s.Blank))
	}
	return b.String() + s.leftOut()
}

// whole says what is on pages that have everything whole.
func (s Summary) whole() string {
	what := []string{"the check square"}
	if s.Figures > 0 {
		what = append(what, "the figures")
	}
	if len(s.Forms) > 0 {
		what = append(what, "what is to be sewn and filled in first")
	}
	if slices.ContainsFunc(s.Sheets, func(sheet SheetSummary) bool { return len(sheet.Pieces) > 0 }) {
		what = append(what, cmp.Or(s.What, thePieces))
	}
	size := s.Unit.Print(s.Paper.Width) + " wide"
	if s.Pages == 1 {
		size += " and " + s.Unit.Print(s.Paper.Height) + " high"
	}
	return fmt.Sprintf("%s, %s, with %s", counted(s.Pages, "page"), size, listOf(what)) + s.leftOut()
}

// leftOut says which pieces have no line.
func (s Summary) leftOut() string {
	if len(s.Left) == 0 {
		return ""
	}
	return fmt.Sprintf("; %s %s no line and %s left out", listOf(s.Left), hasHave(len(s.Left)), isAre(len(s.Left)))
}

// Draw writes the set as a PDF for the paper. Nothing is written when the set
// cannot be drawn; such an error is a *Refusal. Pieces without any line are
// left out and named in the summary.
func Draw(w io.Writer, set Set, paper Paper) (Summary, error) { return draw(w, set, paper, false) }

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
	return draw(w, set, paper, true)
}

func draw(w io.Writer, set Set, paper Paper, onlyFirst bool) (Summary, error) {
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
	book.draw(d, onlyFirst)
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

// farthest bounds the coordinates of a piece, in mm: 1,000 km. Beyond it the
// arithmetic would lose parts of a millimetre.
const farthest = 1e9

// isPlace reports whether a place is one, and not beyond farthest.
func isPlace(p plane.Point) bool {
	return math.Abs(p.X) <= farthest && math.Abs(p.Y) <= farthest
}

func unprintable(text string) (rune, bool) {
	for _, r := range text {
		if !CanPrint(r) {
			return r, true
		}
	}
	return 0, false
}

func noLetter(bad rune, where string) error {
	return &Refusal{
		Cause: fmt.Sprintf("%s has the sign %q, which the printed sheets have no letter for", where, bad),
		Hint:  "write it with letters, digits and common signs; eighths such as ⅛ can be printed",
	}
}
