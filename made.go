package main

import (
	"bytes"
	"fmt"

	"tuckmark/marking/fault"
	"tuckmark/marking/wording"
	"tuckmark/pdfout"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/paper"
)

// Rules of this file: how pages come into a file, and what is said when they are there.

// draw draws those pages of a set, which come from the file in.
func (p printing) draw(in string, out output, set arrange.Set, on paper.Paper, which pages) (made, error) {
	draw := pdfout.Draw
	if formatOf(out.name) == svgFormat {
		set.Scale = "" // a machine that is off is set right in its own program
	}
	switch {
	case which == firstPage:
		draw = pdfout.DrawFirst
	case formatOf(out.name) == svgFormat:
		draw = pdfout.DrawSVG
	}
	p.progress.at("placing the pieces on pages, and drawing them")
	var whole bytes.Buffer
	summary, err := draw(&whole, set, on)
	if err != nil {
		return made{}, fault.At(fault.Place{File: called(in)}, err)
	}
	p.progress.at("writing " + wording.FileName(out.name))
	return made{printing: p, file: in, out: out.name, summary: summary, pages: which}, out.put(whole.Bytes())
}

// made is what was made of a file.
type made struct {
	printing
	file, out string
	summary   pdfout.Summary
	pages     pages
}

// text says what was made, and how to go on.
func (m made) text() string {
	how := "print page 1 at 100 % and measure its check square before you print the rest"
	switch {
	case formatOf(m.out) == svgFormat:
		how = "it has its real size, in mm; draw its check square with the machine that will draw or cut the rest, and measure that first"
	case m.across != nil:
		how = "print on the paper and with the settings of the page that was measured; measure the check square again before you mark cloth"
	case m.paper.WhollyOnOne():
		how = "measure the check square on paper, at 100 %, before you mark cloth"
	}
	what := m.summary.String()
	if m.pages == firstPage {
		what = fmt.Sprintf("page 1 of %d, which proves the scale", m.summary.Pages)
		how += "; then `" + m.again(m.file, m.correction()...) + "` makes them all"
	}
	return fmt.Sprintf("%s: %s\n%s\n", wording.FileName(m.out), what, how)
}
