package pdfout

import (
	"fmt"
	"math"
	"strings"

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
	// writeStep is from one line to write on to the next, in mm: a
	// comfortable height for handwriting.
	writeStep = 9.0
	// leastToWrite is the least a line to write on is long, in mm.
	leastToWrite = 45.0
	// sumStep is the height of a line of the sum that has a space in it, in
	// mm: fractions are written higher than words.
	sumStep = 11.0
	// sumSpace is the width of that space, in mm: "10 1/16 in" written by
	// hand, 10 signs of some 3 mm each, and a little to spare.
	sumSpace = 34.0
	// sumMark is what stands for a space in the text of a sum.
	sumMark = "____"
	// ruleUnder is how far a line to write on lies under the base line of its
	// words, in mm.
	ruleUnder = 0.6
	// ruleAway is what is kept free between words and a line to write on, in
	// mm.
	ruleAway = 1.5
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
			for _, beside := range []bool{false, true} {
				if s, ok := laid.formSheet(m.Form, size, beside, set.Unit, paper); ok {
					return s, true
				}
			}
		}
	}
	return sheet{}, false
}

// formSheet lays a form with its lines as they are turned, its text of a size
// in points under them or to their right.
func (p piece) formSheet(form *marking.Form, size float64, beside bool, unit marking.Unit, paper Paper) (sheet, bool) {
	window := pageOf(paper).window
	title := p.formTitle(window.X)
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
	case beside:
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
	s.write(title, plane.Point{Y: window.Y})
	s.write(text, at)
	corner, ok := squares{side: side, paper: paper}.nearest(&s, s.field, square)
	if !ok {
		return sheet{}, false
	}
	s.squares = append(s.squares, corner)
	s.captionLines()
	return s, true
}

// part is some of a form's text, and the lines to write on in it, as they lie
// with the part's upper left corner at (0, 0).
type part struct {
	labels []label
	rules  []plane.Path
	height float64 // in mm
}

// say adds a line of text with its base line at a place.
func (p *part) say(text string, f *face, size float64, at plane.Point) {
	p.labels = append(p.labels, label{text: text, face: f, size: size, colour: black(), at: at, u: across()})
}

// rule adds a line to write on, from a place to the right.
func (p *part) rule(from plane.Point, length float64) {
	p.rules = append(p.rules, plane.Path{from, from.Add(plane.Point{X: length})})
}

// with adds another part, moved by a step; the height stays as it is.
func (p *part) with(other part, step plane.Point) {
	for _, l := range other.labels {
		l.at = l.at.Add(step)
		p.labels = append(p.labels, l)
	}
	for _, r := range other.rules {
		p.rules = append(p.rules, plane.Path{r[0].Add(step), r[1].Add(step)})
	}
}

// under adds another part under what there is.
func (p *part) under(other part) {
	p.with(other, plane.Point{Y: -p.height})
	p.height += other.height
}

// write puts a part on the sheet and takes its room: of a line to write on,
// the height of handwriting over it as well.
func (s *sheet) write(p part, at plane.Point) {
	var moved part
	moved.with(p, at)
	for _, l := range moved.labels {
		l = l.measured()
		s.field.take(l.room)
		s.labels = append(s.labels, l)
	}
	for _, r := range moved.rules {
		s.field.take(upright(plane.Box{Min: r[0], Max: r[1].Add(plane.Point{Y: writeStep})}))
		s.rules = append(s.rules, r)
	}
}

// paragraphOf sets a text in lines no longer than width mm.
func paragraphOf(text string, f *face, size, width float64) part {
	var p part
	for _, line := range f.wrap(text, size, width) {
		p.height += leading * size * point
		p.say(line, f, size, plane.Point{Y: -p.height + footOfLine(size)})
	}
	return p
}

// footOfLine is how far the base line lies over the foot of a line of text, in
// mm.
func footOfLine(size float64) float64 { return (descent + (leading-1)/2) * size * point }

// formTitle sets the name and the notes that no header says.
func (p piece) formTitle(width float64) part {
	title := paragraphOf(p.name, bold(), formTitleSize, width)
	if len(p.brief) > 0 {
		title.under(paragraphOf(joinedNotes(p.brief), regular(), formNoteSize, width))
	}
	title.height += formGap / 2
	return title
}

// formText sets all that is to be read and written.
func formText(form *marking.Form, size, width float64) part {
	var all part
	add := func(heading string, items part) {
		if len(items.labels)+len(items.rules) == 0 {
			return
		}
		if all.height > 0 {
			all.height += formGap
		}
		all.under(paragraphOf(heading, bold(), size+1, width))
		all.height += itemGap * size * point
		all.under(items)
	}
	add(stepsHeading, stepsOf(form.Steps, size, width))
	add(blanksHeading, blanksOf(form.Blanks, size, width))
	add(sumHeading, sumOf(form.Sum, size, width))
	return all
}

// stepsOf sets steps with their numbers before them.
func stepsOf(steps []string, size, width float64) part {
	count, column := columnsFor(len(steps), width)
	number := func(i int) string { return fmt.Sprintf("%d.", i+1) }
	indent := bold().width(number(len(steps)), size) + ruleAway
	var items []part
	for i, text := range steps {
		words := paragraphOf(text, regular(), size, column-indent)
		item := part{height: words.height + itemGap*size*point}
		item.with(words, plane.Point{X: indent})
		item.say(number(i), bold(), size, plane.Point{Y: -leading*size*point + footOfLine(size)})
		items = append(items, item)
	}
	return inColumns(items, count, column)
}

// blanksOf sets words, each before a line to write on that goes on to the end
// of its column.
func blanksOf(blanks []string, size, width float64) part {
	count, column := columnsFor(len(blanks), width)
	for _, text := range blanks {
		if regular().width(text, size)+ruleAway+leastToWrite > column {
			count, column = 1, width
		}
	}
	var items []part
	for _, text := range blanks {
		lines := regular().wrap(text, size, column-ruleAway-leastToWrite)
		item := part{height: writeStep + float64(len(lines)-1)*leading*size*point}
		from := 0.0 // clear of all its words
		for i, line := range lines {
			over := float64(len(lines)-1-i) * leading * size * point
			item.say(line, regular(), size, plane.Point{Y: -item.height + over + footOfLine(size)})
			from = math.Max(from, regular().width(line, size))
		}
		if from > 0 {
			from += ruleAway
		}
		item.rule(plane.Point{X: from, Y: -item.height + footOfLine(size) - ruleUnder}, column-from)
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
func inColumns(items []part, count int, column float64) part {
	whole := 0.0
	for _, item := range items {
		whole += item.height
	}
	var all, next part
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

// sumOf sets a sum, line by line.
func sumOf(lines []string, size, width float64) part {
	var all part
	for _, line := range lines {
		all.under(sumLine(line, size, width))
	}
	return all
}

// sumWord is a word of a sum or a space for a number.
type sumWord struct {
	text  string // "" for a space
	apart bool   // from the word before it
}

// length is how long the word is, without what keeps it apart.
func (w sumWord) length(size float64) float64 {
	if w.text == "" {
		return sumSpace
	}
	return regular().width(w.text, size)
}

// wordsOfSum takes the text of a sum apart. A word longer than limit mm is cut.
func wordsOfSum(text string, size, limit float64) []sumWord {
	var words []sumWord
	for _, word := range strings.Fields(text) {
		apart := true
		for i, piece := range strings.Split(word, sumMark) {
			if i > 0 {
				words = append(words, sumWord{"", apart})
				apart = false
			}
			if piece == "" {
				continue
			}
			for _, cut := range regular().wrap(piece, size, limit) {
				words = append(words, sumWord{cut, apart})
				apart = false
			}
		}
	}
	return words
}

// sumLine sets a line of a sum, in more lines than one where it must.
func sumLine(text string, size, width float64) part {
	words := wordsOfSum(text, size, width)
	gap := regular().width(" ", size)
	var p part
	for len(words) > 0 {
		n, long, space := 0, 0.0, false
		for n < len(words) {
			next := long + words[n].length(size)
			if n > 0 {
				next += words[n-1].before(words[n], gap)
			}
			if n > 0 && next > width {
				break
			}
			long, space = next, space || words[n].text == ""
			n++
		}
		if space {
			p.height += sumStep
		} else {
			p.height += (leading + itemGap) * size * point
		}
		p.sumWords(words[:n], size, gap)
		words = words[n:]
	}
	return p
}

// before is how far the next word of a sum stays from this one, in mm.
func (w sumWord) before(next sumWord, gap float64) float64 {
	switch {
	case w.text == "" || next.text == "":
		return ruleAway
	case next.apart:
		return gap
	}
	return 0
}

// sumWords sets words of a sum as the last line of a part. Words between two
// spaces are one text.
func (p *part) sumWords(words []sumWord, size, gap float64) {
	base := plane.Point{Y: -p.height + footOfLine(size)}
	for i := 0; i < len(words); {
		if i > 0 {
			base.X += ruleAway
		}
		if words[i].text == "" {
			p.rule(base.Sub(plane.Point{Y: ruleUnder}), sumSpace)
			base.X += sumSpace
			i++
			continue
		}
		text := words[i].text
		for i++; i < len(words) && words[i].text != ""; i++ {
			if words[i].apart {
				text += " "
			}
			text += words[i].text
		}
		p.say(text, regular(), size, base)
		base.X += regular().width(text, size)
	}
}
