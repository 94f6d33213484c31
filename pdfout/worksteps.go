package pdfout

import (
	"cmp"
	"maps"
	"slices"
	"strconv"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/text"
)

// Rules of this file: the order of work, from measuring this page on, in numbered steps:
// what is done, the one number it is done to, and the pages it is done with. What room a
// step takes does not hang on the numbers of its pages, which are not known before the
// pages in front are laid.

const workHeading = "The order of work"

const (
	stepRoom    = 1.3  // free above and below a step, in mm
	stepGap     = 4.0  // between its columns
	pagesColumn = 31.0 // for its pages: "pages 1888 to 1999"
	numberShare = 0.26 // of the width, for its number
)

// workStep is a step of the work.
type workStep struct {
	do, number string
	pages      []int // in rising order
}

// workSteps are the steps: those of paper, and then those of the set.
func (b *Book) workSteps() []workStep {
	square := paper.FrameFor(b.set.Unit).Name + " both ways"
	steps := []workStep{{"Print page 1, and measure it", square, []int{1}}}
	if b.paper.WhollyOnOne() {
		steps[0].do = "Measure the check square"
	}
	if n := len(b.figures); n > 0 {
		steps = append(steps, workStep{"Read the figures for the cutting table", "", pagesFrom(len(b.front)+1, n)})
	}
	told := map[string]bool{}
	for _, t := range b.set.Work {
		for _, key := range t.Keys {
			told[key] = true
		}
	}
	var forms, joined []int
	for _, s := range b.forms {
		if !told[s.Pieces[0].Key] {
			forms = append(forms, s.first)
		}
	}
	if len(forms) > 0 {
		steps = append(steps, workStep{"Sew and fill in what has steps to follow", "", forms})
	}
	for _, s := range b.sheets {
		if len(s.Cells) > 1 {
			joined = append(joined, pagesFrom(s.first, len(s.Cells))...)
		}
	}
	work := b.set.Work
	for ; len(work) > 0 && b.ofForms(work[0]); work = work[1:] {
		steps = append(steps, b.workStep(work[0]))
	}
	if len(joined) > 0 {
		steps = append(steps, workStep{"Join the pages of " + cmp.Or(b.set.What, "each piece"), "", joined})
	}
	for _, t := range work {
		steps = append(steps, b.workStep(t))
	}
	if b.paper.WhollyOnOne() {
		for i := range steps {
			steps[i].pages = nil
		}
	}
	return steps
}

// pagesFrom are n pages from a first one on.
func pagesFrom(first, n int) []int {
	var pages []int
	for k := range n {
		pages = append(pages, first+k)
	}
	return pages
}

// ofForms reports whether a task is done with pages that are filled in: what comes out may
// have the others drawn anew, so that it comes before they are joined.
func (b *Book) ofForms(t mark.Task) bool {
	return len(t.Keys) > 0 && !slices.ContainsFunc(t.Keys, func(key string) bool {
		return !slices.ContainsFunc(b.forms, func(s *laidSheet) bool { return s.Pieces[0].Key == key })
	})
}

// workStep is the step of a task, with the pages of its lines.
func (b *Book) workStep(t mark.Task) workStep {
	pages := b.pagesOf(t.Keys, t)
	if pages == nil {
		pages = b.pagesOf(t.Keys, mark.Task{})
	}
	for i, figures := range b.figures {
		if t.Section != "" && figures.Tells(t.Section) {
			pages = append(pages, len(b.front)+1+i)
		}
	}
	slices.Sort(pages)
	return workStep{t.Do, t.Number, pages}
}

// pagesOf are the pages on which lines lie that a task is done along, of some markings, by their
// keys, in rising order; none on paper that has everything whole.
func (b *Book) pagesOf(keys []string, along mark.Task) []int {
	if b.paper.WhollyOnOne() {
		return nil
	}
	pages := map[int]bool{}
	for _, key := range keys {
		for _, one := range b.laid[key] {
			if len(one.sheet.Cells) == 1 && along.Roles == nil {
				pages[one.sheet.first] = true
				continue
			}
			on := map[int]bool{}
			for i, l := range one.piece.Lines {
				if len(on) == len(one.cores) {
					break // it is on all
				}
				if (along.Roles == nil || slices.Contains(along.Roles, l.Role)) && (along.Lines == nil || slices.Contains(along.Lines, l.Name)) {
					for _, k := range one.cellsOf(i) {
						on[k], pages[one.sheet.first+k] = true, true
					}
				}
			}
		}
	}
	return slices.Sorted(maps.Keys(pages))
}

// cellsOf are the cells of its sheet within whose joins a line of the piece lies, by its number:
// they are found once, for many tasks may be done along it.
func (p laidPiece) cellsOf(line int) []int {
	cells, found := p.cells[line]
	if !found {
		l := p.piece.Lines[line]
		for k, core := range p.cores {
			if l.Bounds().Meets(core) && len(l.Clip(core)) > 0 {
				cells = append(cells, k)
			}
		}
		p.cells[line] = cells
	}
	return cells
}

// workSection are the steps, each an entry; the heading belongs to the first.
func (b *Book) workSection(width, _ float64) []entry {
	var entries []entry
	steps := b.workSteps()
	if len(steps) == 1 { // the page says it anyhow
		return nil
	}
	for i, s := range steps {
		var one entry
		if i == 0 {
			one = underHeading(workHeading, width)
		}
		one.under(s.entry(i+1, width, b.asWide()))
		entries = append(entries, one)
	}
	return entries
}

// entry sets a step under a fine line, with room for numbers of pages to which wide is added.
func (s workStep) entry(number int, width float64, wide int) entry {
	heavy, light := ink.StrongText(), ink.Text()
	first := heavy.Width("88") + 2
	counted := numberShare * width
	do := width - first - counted - pagesColumn - 2*stepGap
	words := text.WrapMeasures(s.do, light, do)
	numbers := text.WrapMeasures(s.number, heavy, counted)
	pages := text.Wrap(pagesNamed(s.pages, 0), light, pagesColumn)
	lines := max(len(words), len(numbers), len(text.Wrap(pagesNamed(s.pages, wide), light, pagesColumn)))

	var row entry
	row.RuleOff(plane.Point{}, width)
	for _, column := range []struct {
		lines []string
		style ink.Style
		at    float64
	}{{[]string{strconv.Itoa(number)}, heavy, 0}, {words, light, first}, {numbers, heavy, first + do + stepGap}, {pages, light, width - pagesColumn}} {
		row.With(text.LinesOf(column.lines, column.style), plane.Point{X: column.at, Y: -stepRoom})
	}
	row.Height = 2*stepRoom + float64(lines)*light.Step()
	return row
}

// pagesNamed names pages, each with something added to its number; "" for none.
func pagesNamed(pages []int, add int) string {
	if len(pages) == 0 {
		return ""
	}
	numbers := make([]int, len(pages))
	for i, n := range pages {
		numbers[i] = n + add
	}
	return text.Numbers("page", numbers)
}
