package main

import (
	"fmt"
	"path/filepath"
	"strings"

	"github.com/urfave/cli/v2"

	"tuckmark/marking/fault"
	"tuckmark/pdfout/paper"
)

// Rules of this file: the ending of its name says what a file becomes, capitals or not. An
// SVG is for programs that draw, and for machines that draw or cut: it is one page, as large
// as it needs to be, and of its real size, so that it is not corrected for a printer.

// format is what pages are written as.
type format int

const (
	noFormat format = iota
	pdfFormat
	svgFormat
)

// formatOf is the format that a name asks for; noFormat of another ending.
func formatOf(name string) format {
	switch strings.ToLower(filepath.Ext(name)) {
	case ".pdf":
		return pdfFormat
	case ".svg":
		return svgFormat
	}
	return noFormat
}

// endings says how the name of a file ends that pages are written into.
const endings = "give -o a name that ends in .pdf, or in .svg for a drawing program, a plotter or a cutter"

// readPaper takes up the paper that is asked for. That of an SVG is one single page, whether
// it is asked for or not.
func readPaper(c *cli.Context) (paper.Paper, error) {
	name, drawn := c.String("paper"), formatOf(c.String("output")) == svgFormat
	if drawn && !c.IsSet("paper") {
		name = "single"
	}
	on, err := paper.Find(name)
	if err != nil {
		return on, optionFault("paper", err)
	}
	if drawn && on.Cut != paper.Single {
		return on, optionFault("paper", &fault.Fault{
			Cause: fmt.Sprintf("an SVG is one single page, not %s", on.ShortTitle()),
			Hint:  "leave --paper out, or give -o a name that ends in .pdf",
		})
	}
	for _, measured := range []string{"across", "down", "of"} {
		if drawn && c.IsSet(measured) {
			return on, misuse("--"+measured+" is for sheets that are printed: an SVG has its real size",
				"leave --across, --down and --of out: a plotter or a cutter that is off is set right in its own program")
		}
	}
	return on, nil
}
