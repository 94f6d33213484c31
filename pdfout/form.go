package pdfout

import (
	"fmt"
	"math"

	"tuckmark/marking"
	"tuckmark/marking/plane"
)

// Rules of this file: a form is a page of its own, to be sewn from and written
// on. Under its title its lines lie true to scale, turned by a quarter turn
// only where the page has no other room for them, with the check square beside
// them. Under them, or to their right, stand the steps, the lines to write on
// and the sum. The text is as large as there is room for; the room to write
// has one size. A form that does not fit its page is refused: nothing of it is
// left out or made smaller.

const (
	formTitleSize = 15.0 // in points
	formNoteSize  = 9.0
	formGap       = 5.0 // between two parts of a form, in mm
	// manyItems is how many steps, or lines to write on, go in two columns,
	// where those are leastColumn mm wide or more.
	manyItems   = 4
	leastColumn = 70.0
	// itemGap is kept free under each step, in sizes of its text.
	itemGap = 0.4
)

// What stands over the parts of a form.
const (
	stepsHeading  = "What to do"
	blanksHeading = "Write down"
	sumHeading    = "Work out"
)

// formSizes returns the sizes of a form's text, in points, largest first.
func formSizes() []float64 { return []float64{11, 10, 9, 8} }

// layForms lays every form on its page.
func layForms(forms []marking.Marking, set Set, paper Paper) ([]sheet, error) {
	var sheets []sheet
	for _, m := range forms {
		s, ok := layForm(m, set, paper)
		if !ok {
			return nil, formTooLarge(m, set.Unit, paper)
		}
		sheets = append(sheets, s)
	}
	return sheets, nil
}

// formTooLarge refuses a form that does not fit on its page.
func formTooLarge(m marking.Marking, unit marking.Unit, paper Paper) error {
	p := newPiece(m)
	window := pageOf(paper).window
	if !p.fits(window) && !p.quarterTurned().fits(window) {
		return &Refusal{
			Cause: fmt.Sprintf("piece %q must be whole on one page, and its lines, %s by %s, do not fit on %s",
				m.Key, unit.Print(p.bounds.Width()), unit.Print(p.bounds.Height()), paper.ShortTitle()),
			Hint: "choose larger paper, or make the piece smaller",
		}
	}
	return &Refusal{
		Cause: fmt.Sprintf("piece %q must be whole on one page, and what is to be read and written beside its lines does not fit on %s",
			m.Key, paper.ShortTitle()),
		Hint: "choose larger paper, make the piece smaller, or let it say less",
	}
}

// layForm lays a form on a sheet of one page: upright before turned, in large
// text before small, the text under the lines before to their right. It
// reports whether the page has room for it.
func layForm(m marking.Marking, set Set, paper Paper) (sheet, bool) {
	p := newPiece(m)
	p.brief = fewer(m.Notes, set)
	for _, laid := range []piece{p, p.quarterTurned()} {
		for _, size := range formSizes() {
			for _, where := range []textPlace{underLines, besideLines} {
				if s, ok := formSheet(laid, m.Form, size, where, set.Unit, paper); ok {
					return s, true
				}
			}
		}
	}
	return sheet{}, false
}

// textPlace is where the text of a form stands.
type textPlace int

const (
	underLines  textPlace = iota // under the lines of the form
	besideLines                  // to their right
)

// formSheet lays a form with its lines as they are turned, its text of a size
// in points.
func formSheet(p piece, form *marking.Form, size float64, where textPlace, unit marking.Unit, paper Paper) (sheet, bool) {
	window := pageOf(paper).window
	title := formTitle(p, window.X)
	upper := window.Y - title.height // of the lines
	room := p.room()
	lower := upper - room.Y
	if room.X > window.X || lower < 0 {
		return sheet{}, false
	}
	p = p.moved(plane.Point{X: spare - p.bounds.Min.X, Y: upper - spare - p.bounds.Max.Y})

	side := squareSize(unit)
	// The middle of the check square: at the right margin beside the lines,
	// or else in the lower right corner.
	square := plane.Point{X: window.X - side/2, Y: side / 2}
	at, width := plane.Point{Y: lower - formGap}, window.X
	switch {
	case where == besideLines:
		at = plane.Point{X: room.X + formGap, Y: upper}
		width -= at.X
		square = plane.Point{X: side/2 + spare, Y: lower - side/2}
		if width < leastColumn {
			return sheet{}, false
		}
	case window.X-room.X >= side+clearing+squareGrid:
		square.Y = upper - spare - side/2
		at.Y = min(at.Y, upper-spare-side-squareGrid-formGap)
	}
	text := formText(form, size, width)
	if text.height > at.Y {
		return sheet{}, false
	}

	s := newSheet([]piece{p}, pageOf(paper), []cell{{}})
	s.takeHeads()
	s.takeText(title, plane.Point{Y: window.Y})
	s.takeText(text, at)
	corner, ok := squares{side: side, paper: paper}.nearest(&s, s.field, square)
	if !ok {
		return sheet{}, false
	}
	s.squares = append(s.squares, corner)
	s.captionLines()
	return s, true
}

// formTitle sets the name and the notes that no header says.
func formTitle(p piece, width float64) Lines {
	heavy, light := strong(formTitleSize), plain(formNoteSize)
	title := linesOf(wrap(p.name, heavy, width), heavy)
	if len(p.brief) > 0 {
		title.under(linesOf(wrap(joinedNotes(p.brief), light, width), light))
	}
	title.space(formGap / 2)
	return title
}

// formText sets all that is to be read and written.
func formText(form *marking.Form, size, width float64) Lines {
	var all Lines
	light, heading := plain(size), strong(size+1)
	add := func(over string, items Lines) {
		if len(items.labels)+len(items.rules) == 0 {
			return
		}
		if all.height > 0 {
			all.space(formGap)
		}
		all.under(linesOf(wrap(over, heading, width), heading))
		all.space(itemGap * size * point)
		all.under(items)
	}
	add(stepsHeading, stepsOf(form.Steps, light, width))
	add(blanksHeading, blanksOf(form.Blanks, light, width))
	add(sumHeading, sumOf(form.Sum, light, width))
	return all
}

// stepsOf sets steps with their numbers before them.
func stepsOf(steps []string, s Style, width float64) Lines {
	count, column := columnsFor(len(steps), width)
	number := func(i int) string { return fmt.Sprintf("%d.", i+1) }
	heavy := strong(s.size)
	indent := heavy.width(number(len(steps))) + ruleAway
	var items []Lines
	for i, text := range steps {
		var item Lines
		item.addAt(wrap(text, s, column-indent), s, indent, s.foot())
		item.space(itemGap * s.size * point)
		item.say(number(i), heavy, plane.Point{Y: -s.step() + s.foot()})
		items = append(items, item)
	}
	return inColumns(items, count, column)
}

// blanksOf sets words, each before a line to write on that goes on to the end
// of its column.
func blanksOf(blanks []string, s Style, width float64) Lines {
	count, column := columnsFor(len(blanks), width)
	for _, text := range blanks {
		if s.width(text)+ruleAway+leastToWrite > column {
			count, column = 1, width
		}
	}
	var items []Lines
	for _, text := range blanks {
		lines := wrap(text, s, column-ruleAway-leastToWrite)
		// Over its words there is the height of handwriting.
		item := Lines{height: writeStep - s.step()}
		item.add(lines, s)
		from := longestWord(lines, s) // clear of all its words
		if from > 0 {
			from += ruleAway
		}
		item.ruleOff(plane.Point{X: from, Y: -item.height + s.foot() - ruleUnder}, column-from)
		items = append(items, item)
	}
	return inColumns(items, count, column)
}

// columnsFor is how many columns some items take in a width, and how wide each
// is.
func columnsFor(items int, width float64) (count int, column float64) {
	if half := (width - gutter) / 2; items >= manyItems && half >= leastColumn {
		return 2, half
	}
	return 1, width
}

// inColumns sets items in one column, or in two as equally high as they can
// be, the first the higher.
func inColumns(items []Lines, count int, column float64) Lines {
	whole := 0.0
	for _, item := range items {
		whole += item.height
	}
	var all, next Lines
	for _, item := range items {
		if count > 1 && all.height >= whole/2 {
			next.under(item)
		} else {
			all.under(item)
		}
	}
	all.with(next, plane.Point{X: column + gutter})
	all.height = math.Max(all.height, next.height)
	return all
}
