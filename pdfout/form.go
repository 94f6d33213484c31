package pdfout

import (
	"fmt"

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
// only where the page has no other room for them. Under them, or to their right, stand
// the steps, the lines to write on and the sum; what is typed into the file stands to
// their right, and a table takes what is left of the page (formtable.go). The text is larger
// where there is room for it; the room to write has one size. A form that does not fit its
// page is refused: nothing of it is left out or made smaller.

const (
	formGap  = 5.0 // between two parts of a form, in mm
	wordRoom = 5.0 // free over its lines for words at their ends, in mm
	// manyItems is how many steps, or lines to write on, go in two columns, and half as many
	// again in three, where those are leastColumn mm wide or more.
	manyItems   = 4
	leastColumn = 70.0
	// leastBeside is how wide a page is that has the lines to write on beside the sum, in mm.
	leastBeside = 220.0
	// blanksShare is the share of its width that the lines to write on have then.
	blanksShare = 0.4
)

// What stands over the parts of a form.
const (
	stepsHeading  = "What to do"
	blanksHeading = "Write down"
	sumHeading    = "Work out"
	typedHeading  = "What is typed into the file"
)

// formStyles returns the styles that a form's text may have, the larger first.
func formStyles() []ink.Style { return []ink.Style{ink.Lead(), ink.Text()} }

// layForms lays every form on its page.
func layForms(forms []mark.Marking, unit length.Unit, on paper.Paper) ([]*laidSheet, error) {
	var sheets []*laidSheet
	for _, m := range forms {
		s, ok := layForm(m, on)
		if !ok {
			return nil, formTooLarge(m, unit, on)
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
// text before small, the text under the lines before to their right; ruled paper without
// room for numbers before its lines only where it has no other. It
// reports whether the page has room for it.
func layForm(m mark.Marking, on paper.Paper) (arrange.Sheet, bool) {
	p := arrange.NewPiece(m)
	for _, laid := range []arrange.Piece{p.Numbered(arrange.PageOf(on)), p, p.QuarterTurned()} {
		for _, style := range formStyles() {
			for _, where := range []textPlace{underLines, stepsBeside, besideLines} {
				if s, ok := formSheet(laid, m, style, where, on); ok {
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
	underLines  textPlace = iota // under the lines of the form, and what is typed to their right
	stepsBeside                  // the steps to their right, what is written under them
	besideLines                  // to their right
)

// formSheet lays a form with its lines as they are turned, its text in a style.
func formSheet(p arrange.Piece, m mark.Marking, style ink.Style, where textPlace, on paper.Paper) (arrange.Sheet, bool) {
	window := arrange.PageOf(on).Window
	title := formTitle(p, window.X)
	upper := window.Y - title.Height // of the lines
	if len(m.Words) > 0 {
		upper -= wordRoom
	}
	room := p.Room()
	lower := upper - room.Y
	if room.X > window.X || lower < 0 {
		return arrange.Sheet{}, false
	}
	p = p.Moved(plane.Point{Y: lower}.Sub(p.Corner()))

	stepsAt := plane.Point{Y: lower - formGap}
	writtenAt := stepsAt
	if where != underLines {
		stepsAt = plane.Point{X: room.X + formGap, Y: upper}
	}
	if where == besideLines {
		writtenAt = stepsAt
	}
	if window.X-stepsAt.X < leastColumn {
		return arrange.Sheet{}, false
	}
	typed, typedAt := formTyped(m.Form.Listing), plane.Point{X: room.X + formGap, Y: upper}
	if typed.width > window.X-typedAt.X {
		return arrange.Sheet{}, false
	}
	if typed.Height > 0 {
		if under := upper - typed.Height - formGap; where == underLines {
			stepsAt.Y, writtenAt.Y = min(stepsAt.Y, under), min(writtenAt.Y, under)
		} else {
			stepsAt.Y = under
		}
	}
	steps := formSteps(m.Steps, style, window.X-stepsAt.X)
	written := formWritten(m.Form, style, window.X-writtenAt.X)
	if steps.Height > 0 {
		writtenAt.Y = min(writtenAt.Y, stepsAt.Y-steps.Height-formGap)
	}
	tableAt := writtenAt.Sub(plane.Point{Y: written.Height + formGap})
	table, fits := tableOf(m.Form.Columns, window.X-tableAt.X, tableAt.Y)
	if !fits || steps.Height > stepsAt.Y || written.Height > writtenAt.Y {
		return arrange.Sheet{}, false
	}

	if len(p.Lines) == 0 { // what is written on is all there is
		p.Bounds = plane.Box{Max: window}
	}
	s := arrange.NewSheet([]arrange.Piece{p}, arrange.PageOf(on), []arrange.Cell{{}})
	s.Paper = on
	s.TakeHeads()
	s.TakeText(title, plane.Point{Y: window.Y})
	s.TakeText(steps, stepsAt)
	s.TakeText(written, writtenAt)
	s.TakeText(typed.Lines, typedAt)
	s.TakeText(table, tableAt)
	s.LetterLines()
	return s, true
}

// formTitle sets the notes, which the title block over them does not say.
func formTitle(p arrange.Piece, width float64) text.Lines {
	var title text.Lines
	if len(p.Notes) > 0 {
		title.Space(2 * underStrip)
		title.Add(text.WrapMeasures(text.JoinedNotes(p.Notes), ink.Text(), width), ink.Text())
	}
	return title
}

// typedLines are lines that are typed, and how wide they are.
type typedLines struct {
	text.Lines
	width float64 // in mm
}

// formTyped sets what is typed into a file, each line whole.
func formTyped(listing []string) typedLines {
	style := ink.Text()
	return typedLines{headed(typedHeading, text.LinesOf(listing, style), style), text.LongestWord(listing, style)}
}

// formSteps sets what is to be done.
func formSteps(steps []string, light ink.Style, width float64) text.Lines {
	return headed(stepsHeading, stepsOf(steps, light, width), light)
}

// formWritten sets what is to be written and worked out, side by side on a wide page.
func formWritten(form *mark.Form, light ink.Style, width float64) text.Lines {
	left, right := width, width
	if width >= leastBeside {
		left = blanksShare * (width - text.Gutter)
		right = width - text.Gutter - left
	}
	blanks := headed(blanksHeading, blanksOf(form.Blanks, light, left), light)
	sum := headed(sumHeading, text.SumOf(form.Sum, light, right), light)
	if left < width {
		blanks.With(sum, plane.Point{X: left + text.Gutter})
		blanks.Height = max(blanks.Height, sum.Height)
		return blanks
	}
	if blanks.Height > 0 && sum.Height > 0 {
		blanks.Space(formGap)
	}
	blanks.Under(sum)
	return blanks
}

// headed sets a heading over what it is of; nothing over nothing.
func headed(over string, items text.Lines, light ink.Style) text.Lines {
	if len(items.Labels)+len(items.Rules) == 0 {
		return text.Lines{}
	}
	all := text.LinesOf([]string{over}, ink.Heading())
	all.Space(light.Ems(text.ItemGap))
	all.Under(items)
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
		item.Say(number(i), heavy, plane.Point{Y: -s.Step() + s.Foot()})
		item.AddAt(text.WrapMeasures(words, s, column-indent), s, indent, s.Foot())
		item.Space(s.Ems(text.ItemGap))
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
	for count = min(3, 2*items/manyItems); count > 1; count-- {
		if column = (width+text.Gutter)/float64(count) - text.Gutter; column >= leastColumn {
			return count, column
		}
	}
	return 1, width
}

// inColumns sets items in some columns, as equally high as they can be, the first the
// highest.
func inColumns(items []text.Lines, count int, column float64) text.Lines {
	whole := 0.0
	for _, item := range items {
		whole += item.Height
	}
	var all, set text.Lines
	k := 0
	for i, item := range items {
		set.Under(item)
		if i == len(items)-1 || k < count-1 && set.Height >= whole/float64(count) {
			all.With(set, plane.Point{X: float64(k) * (column + text.Gutter)})
			all.Height = max(all.Height, set.Height)
			set, k = text.Lines{}, k+1
		}
	}
	return all
}
