package pdfout

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"tuckmark/marking/length"
	"tuckmark/marking/wording"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/text"
)

// Rules of this file: what was drawn is told in a sentence or two, in the order of the
// pages.

// Summary says what was drawn.
type Summary struct {
	// Paper is what it was drawn for; of paper that has everything on one page, that page
	// with the size it came to.
	Paper   paper.Paper
	Pages   int            // of the whole PDF
	Front   int            // in front: the first, and those that say how to work; 0 where these are panels
	Figures int            // pages of figures, right behind those in front
	Blank   int            // pages of the sheets that are left out: no line falls on them
	Forms   []FormSummary  // in the order of their pages
	Sheets  []SheetSummary // in the order of their pages
	Left    []string       // the names of the pieces that have no line to draw
	Unit    length.Unit    // that of the set
	What    string         // what the set calls its pieces together; may be ""
	// FormsFor is what it says that pages with forms are for; may be "".
	FormsFor string
	Card     bool // besides pieces there is what is cut out of card
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
	card          int      // how many of the pieces are cut out of card
	Turned        []string // pieces that lie on it by a quarter turn
}

// summary says what the book holds.
func (b *Book) summary() Summary {
	s := Summary{Paper: b.paper, Pages: b.pages, Front: len(b.front), Figures: len(b.figures), Blank: b.blank(), Left: b.left, Unit: b.set.Unit, What: b.set.What, FormsFor: b.set.FormsFor}
	if b.paper.WhollyOnOne() {
		s.Paper, s.Front = b.sheets[0].Paper, 0
	}
	for _, form := range b.forms {
		p := form.Pieces[0]
		s.Forms = append(s.Forms, FormSummary{Piece: p.Name, Page: form.first, Turned: p.Turned})
	}
	cards, all := 0, 0
	for _, sheet := range b.sheets {
		one := sheet.summary()
		s.Sheets = append(s.Sheets, one)
		cards, all = cards+one.card, all+len(one.Pieces)
	}
	s.Card = 0 < cards && cards < all
	return s
}

// summary says what is on the sheet.
func (s *laidSheet) summary() SheetSummary {
	one := SheetSummary{
		Pieces: s.Names(),
		Rows:   s.Grid.Rows, Columns: s.Grid.Columns,
		First: s.first, Last: s.first + len(s.Cells) - 1,
		Blank: s.Blank(),
	}
	for _, p := range s.Pieces {
		if p.Kind.OfCard() {
			one.card++
		}
		if p.Turned {
			one.Turned = append(one.Turned, p.Name)
		}
	}
	return one
}

// usualFormsFor is what pages with forms are for where the set does not say.
const usualFormsFor = "to be sewn and filled in"

// usualWhat is what the pieces of a set are called together where it does not say.
const usualWhat = "the pieces"

// ofCard is what is cut out of card, beside the pieces.
const ofCard = "what is to be cut from card"

// firstOfCard is the number of the first page of what is cut out of card, which comes
// last; one past the last page where nothing is, or everything.
func (s Summary) firstOfCard() int {
	if !s.Card {
		return s.Pages + 1
	}
	return s.Sheets[slices.IndexFunc(s.Sheets, func(sheet SheetSummary) bool { return sheet.card > 0 })].First
}

// String says it in a sentence or two: "9 pages: the first proves the scale,
// pages 2 to 9 hold the pieces".
func (s Summary) String() string {
	if s.Paper.WhollyOnOne() {
		return s.whole()
	}
	var b strings.Builder
	fmt.Fprintf(&b, "%s: the first proves the scale, ", text.PageCount(s.Pages))
	if s.Front > 1 {
		fmt.Fprintf(&b, "%s how to work, ", text.PageRange(2, s.Front, "says", "say"))
	}
	behind := s.Front + s.Figures + 1 // the first page behind the figures
	if s.Figures > 0 {
		fmt.Fprintf(&b, "%s the figures, ", text.PageRange(s.Front+1, behind-1, "has", "have"))
	}
	pieces := behind + len(s.Forms) // their first page
	if len(s.Forms) > 0 {
		fmt.Fprintf(&b, "%s %s", text.PageRange(behind, pieces-1, "is", "are"), cmp.Or(s.FormsFor, usualFormsFor))
		if pieces <= s.Pages {
			b.WriteString(" first, ")
		}
	}
	if pieces <= s.Pages {
		card := s.firstOfCard()
		fmt.Fprintf(&b, "%s %s", text.PageRange(pieces, card-1, "holds", "hold"), cmp.Or(s.What, usualWhat))
		if card <= s.Pages {
			fmt.Fprintf(&b, ", %s %s", text.PageRange(card, s.Pages, "", ""), ofCard)
		}
	}
	if s.Blank > 0 {
		fmt.Fprintf(&b, "; %s on which no line falls %s left out", text.PageCount(s.Blank), text.IsAre(s.Blank))
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
		what = append(what, "what is "+cmp.Or(s.FormsFor, usualFormsFor)+" first")
	}
	if slices.ContainsFunc(s.Sheets, func(sheet SheetSummary) bool { return len(sheet.Pieces) > 0 }) {
		what = append(what, cmp.Or(s.What, usualWhat))
	}
	if s.Card {
		what = append(what, ofCard)
	}
	size := s.Unit.OnRuler(s.Paper.Width) + " wide"
	if s.Pages == 1 {
		size += " and " + s.Unit.OnRuler(s.Paper.Height) + " high"
	}
	return fmt.Sprintf("%s, %s, with %s", text.PageCount(s.Pages), size, wording.Listed(what, "and")) + s.leftOut()
}

// leftOut says which pieces have no line.
func (s Summary) leftOut() string {
	if len(s.Left) == 0 {
		return ""
	}
	return fmt.Sprintf("; %s %s no line and %s left out", wording.Listed(s.Left, "and"), text.HasHave(len(s.Left)), text.IsAre(len(s.Left)))
}
