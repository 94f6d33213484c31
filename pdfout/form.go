package pdfout

import (
	"fmt"
	"math"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/text"
)

// Rules of this file: a form is a page of its own, to be sewn from and written
// on. Under its title its lines lie true to scale, turned by a quarter turn
// only where the page has no other room for them. Under them, or to their right, stand the steps, the lines to write on
// and the sum. The text is as large as there is room for; the room to write
// has one size. A form that does not fit its page is refused: nothing of it is
// left out or made smaller.

const (
	formGap = 5.0 // between two parts of a form, in mm
	// manyItems is how many steps, or lines to write on, go in two columns,
	// where those are leastColumn mm wide or more.
	manyItems   = 4
	leastColumn = 70.0
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
func layForms(forms []mark.Marking, set arrange.Set, on paper.Paper) ([]*laidSheet, error) {
	var sheets []*laidSheet
	for _, m := range forms {
		s, ok := layForm(m, set, on)
		if !ok {
			return nil, formTooLarge(m, set.Unit, on)
		}
		sheets = append(sheets, &laidSheet{Sheet: s})
	}
	return sheets, nil
}

// formTooLarge refuses a form that does not fit on its page.
func formTooLarge(m mark.Marking, unit length.Unit, on paper.Paper) error {
	p := arrange.NewPiece(m)
	window := arrange.PageOf(on).Window
	if !p.Fits(window) && !p.QuarterTurned().Fits(window) {
		return &fault.Fault{
			Cause: fmt.Sprintf("piece %q must be whole on one page, and its lines, %s by %s, do not fit on %s",
				m.Key, unit.OnRuler(p.Bounds.Width()), unit.OnRuler(p.Bounds.Height()), on.ShortTitle()),
			Hint: "choose larger paper, or make the piece smaller",
		}
	}
	return &fault.Fault{
		Cause: fmt.Sprintf("piece %q must be whole on one page, and what is to be read and written beside its lines does not fit on %s",
			m.Key, on.ShortTitle()),
		Hint: "choose larger paper, make the piece smaller, or let it say less",
	}
}

// layForm lays a form on a sheet of one page: upright before turned, in large
// text before small, the text under the lines before to their right. It
// reports whether the page has room for it.
func layForm(m mark.Marking, set arrange.Set, on paper.Paper) (arrange.Sheet, bool) {
	p := arrange.NewPiece(m)
	for _, laid := range []arrange.Piece{p, p.QuarterTurned()} {
		for _, size := range formSizes() {
			for _, where := range []textPlace{underLines, besideLines} {
				if s, ok := formSheet(laid, m.Form, size, where, on); ok {
					return s, true
				}
			}
		}
	}
	return arrange.Sheet{}, false
}

// textPlace is where the text of a form stands.
type textPlace int

const (
	underLines  textPlace = iota // under the lines of the form
	besideLines                  // to their right
)

// formSheet lays a form with its lines as they are turned, its text of a size
// in points.
func formSheet(p arrange.Piece, form *mark.Form, size float64, where textPlace, on paper.Paper) (arrange.Sheet, bool) {
	window := arrange.PageOf(on).Window
	title := formTitle(p, window.X)
	upper := window.Y - title.Height // of the lines
	room := p.Room()
	lower := upper - room.Y
	if room.X > window.X || lower < 0 {
		return arrange.Sheet{}, false
	}
	p = p.Moved(plane.Point{X: arrange.Spare - p.Bounds.Min.X, Y: upper - arrange.Spare - p.Bounds.Max.Y})

	at, width := plane.Point{Y: lower - formGap}, window.X
	if where == besideLines {
		at = plane.Point{X: room.X + formGap, Y: upper}
		width -= at.X
		if width < leastColumn {
			return arrange.Sheet{}, false
		}
	}
	words := formText(p.Steps, form, size, width)
	if words.Height > at.Y {
		return arrange.Sheet{}, false
	}

	s := arrange.NewSheet([]arrange.Piece{p}, arrange.PageOf(on), []arrange.Cell{{}})
	s.Paper = on
	s.TakeHeads()
	s.TakeText(title, plane.Point{Y: window.Y})
	s.TakeText(words, at)
	s.LetterLines()
	return s, true
}

// formTitle sets the notes, which the title block over them does not say.
func formTitle(p arrange.Piece, width float64) text.Lines {
	var title text.Lines
	if len(p.Notes) > 0 {
		title.Add(text.WrapMeasures(text.JoinedNotes(p.Notes), ink.Text(), width), ink.Text())
	}
	return title
}

// formText sets all that is to be read and written.
func formText(steps []string, form *mark.Form, size, width float64) text.Lines {
	var all text.Lines
	light, heading := ink.Plain(size), ink.Strong(size+1)
	add := func(over string, items text.Lines) {
		if len(items.Labels)+len(items.Rules) == 0 {
			return
		}
		if all.Height > 0 {
			all.Space(formGap)
		}
		all.Under(text.LinesOf(text.WrapMeasures(over, heading, width), heading))
		all.Space(light.Ems(text.ItemGap))
		all.Under(items)
	}
	add(stepsHeading, stepsOf(steps, light, width))
	add(blanksHeading, blanksOf(form.Blanks, light, width))
	add(sumHeading, text.SumOf(form.Sum, light, width))
	return all
}

// stepsOf sets steps with their numbers before them.
func stepsOf(steps []string, s ink.Style, width float64) text.Lines {
	count, column := columnsFor(len(steps), width)
	number := func(i int) string { return fmt.Sprintf("%d.", i+1) }
	heavy := ink.Strong(s.Size)
	indent := heavy.Width(number(len(steps))) + text.RuleAway
	var items []text.Lines
	for i, words := range steps {
		var item text.Lines
		item.AddAt(text.WrapMeasures(words, s, column-indent), s, indent, s.Foot())
		item.Space(s.Ems(text.ItemGap))
		item.Say(number(i), heavy, plane.Point{Y: -s.Step() + s.Foot()})
		items = append(items, item)
	}
	return inColumns(items, count, column)
}

// blanksOf sets words, each before a line to write on that goes on to the end
// of its column.
func blanksOf(blanks []string, s ink.Style, width float64) text.Lines {
	count, column := columnsFor(len(blanks), width)
	for _, words := range blanks {
		if s.Width(words)+text.RuleAway+text.LeastToWrite > column {
			count, column = 1, width
		}
	}
	var items []text.Lines
	for _, words := range blanks {
		lines := text.WrapMeasures(words, s, column-text.RuleAway-text.LeastToWrite)
		// Over its words there is the height of handwriting.
		item := text.Lines{Height: text.WriteStep - s.Step()}
		item.Add(lines, s)
		from := text.LongestWord(lines, s) // clear of all its words
		if from > 0 {
			from += text.RuleAway
		}
		item.RuleOff(plane.Point{X: from, Y: -item.Height + s.Foot() - text.RuleUnder}, column-from)
		items = append(items, item)
	}
	return inColumns(items, count, column)
}

// columnsFor is how many columns some items take in a width, and how wide each
// is.
func columnsFor(items int, width float64) (count int, column float64) {
	if half := (width - text.Gutter) / 2; items >= manyItems && half >= leastColumn {
		return 2, half
	}
	return 1, width
}

// inColumns sets items in one column, or in two as equally high as they can
// be, the first the higher.
func inColumns(items []text.Lines, count int, column float64) text.Lines {
	whole := 0.0
	for _, item := range items {
		whole += item.Height
	}
	var all, next text.Lines
	for _, item := range items {
		if count > 1 && all.Height >= whole/2 {
			next.Under(item)
		} else {
			all.Under(item)
		}
	}
	all.With(next, plane.Point{X: column + text.Gutter})
	all.Height = math.Max(all.Height, next.Height)
	return all
}
