package main

import (
	"io"
	"slices"
	"strconv"
	"strings"

	"github.com/urfave/cli/v2"

	"tuckmark/marking"
	"tuckmark/marking/figures"
	"tuckmark/marking/garment"
	"tuckmark/marking/gauge"
	"tuckmark/marking/length"
	"tuckmark/marking/sheet"
	"tuckmark/marking/source"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/paper"
)

// Rules of this file: what the command line says of paper and printer, and which pieces are
// meant; what was measured is in measured.go, and what an SVG takes in format.go. Lengths count
// in the unit of the file, which is known only when that has been read.

// printing is how the sheets are to be printed. What is nil was not given.
type printing struct {
	paper           paper.Paper
	margin, overlap *string
	across, down    *string // of the check square, or of a longer line, as it was measured
	of              *string // how long that is to be, where it was no check square
	pieces          []string
	transfers       []source.Transfer
	dots            *string
	figures, gauges bool
	allViews        bool
	view            string
	times           int // how many garments the figures are for
	// said are the options that name the paper and the pieces, as they were given,
	// and added those that say what is printed besides: whoever prints the same again
	// repeats them.
	said, added []string
	progress    *progress // tells what takes time
	stdout      io.Writer // where sheets go that are written into no file
}

// onOrOff is an option without a value.
func onOrOff(name, usage string) *cli.BoolFlag {
	return &cli.BoolFlag{Name: name, Usage: usage, DisableDefaultText: true}
}

// given is the value of an option, nil where it was not given.
func given(c *cli.Context, name string) *string {
	if !c.IsSet(name) {
		return nil
	}
	value := c.String(name)
	return &value
}

// paperFlags are the options that say what is printed on.
func paperFlags() []cli.Flag {
	return []cli.Flag{
		&cli.StringFlag{Name: "paper", Value: "letter", Usage: "the `PAPER` in the printer: " + paper.Choices()},
		onOrOff("landscape", "lay the pages on their long side"),
		&cli.StringFlag{Name: "margin", Usage: "keep `LENGTH` free at every edge of the paper (without it: a little over 10 mm; most printers need 1/4 in)"},
		&cli.StringFlag{Name: "overlap", Usage: "let pages that are joined share a strip `LENGTH` wide (without it: 10 mm)"},
	}
}

// pieceFlags are the options that say which pieces are printed, and how; which view of them
// is said by viewFlag.
func pieceFlags() []cli.Flag {
	return []cli.Flag{
		&cli.StringFlag{Name: "pieces", Usage: "print only these pieces, such as `front,back`, and no figures"},
		&cli.StringFlag{Name: "transfer", Usage: "how the lines come onto the cloth: `WAY` is " + source.TransferChoices() + ", or several with commas between them (without it: what the file says)"},
		&cli.StringFlag{Name: "dots", Usage: "prick lines no farther apart than `LENGTH` (without it: 1/4 in, on curves)"},
	}
}

// viewFlag is the option that says which view of a file is made.
func viewFlag() cli.Flag {
	return &cli.StringFlag{Name: "view", Usage: "make `VIEW` of the file, such as round (without it: the file as it stands)"}
}

// pageFlags are the options that say which pages there are besides those of the pieces.
func pageFlags() []cli.Flag {
	return []cli.Flag{
		onOrOff("no-figures", "leave out the pages with the figures for the cutting table"),
		onOrOff("gauges", "add the gauges, to be cut from card"),
		onOrOff("all-views", "draw the lines of the other views of the file too, to choose between them on the cloth"),
		timesFlag(),
	}
}

// readPrinting takes up these options, as far as a command has them.
func readPrinting(c *cli.Context, at *progress) (printing, error) {
	p := printing{
		progress: at, stdout: c.App.Writer,
		margin: given(c, "margin"), overlap: given(c, "overlap"), dots: given(c, "dots"),
		across: given(c, "across"), down: given(c, "down"), of: given(c, "of"),
		view:    c.String("view"),
		figures: !c.Bool("no-figures") && !c.IsSet("pieces"), gauges: c.Bool("gauges"), allViews: c.Bool("all-views"),
	}
	var err error
	if p.paper, err = readPaper(c); err != nil {
		return p, err
	}
	if c.Bool("landscape") {
		if p.paper, err = p.paper.Lying(); err != nil {
			return p, optionFault("landscape", err)
		}
		p.said = append(p.said, "--landscape")
	}
	if c.IsSet("pieces") {
		p.pieces = strings.Split(c.String("pieces"), ",")
	}
	if c.IsSet("transfer") {
		if p.transfers, err = source.ParseTransfers(c.String("transfer")); err != nil {
			return p, optionFault("transfer", err)
		}
	}
	for _, name := range []string{"paper", "margin", "overlap", "view", "pieces", "transfer", "dots"} {
		if c.IsSet(name) {
			p.said = append(p.said, "--"+name+" "+inShell(c.String(name)))
		}
	}
	if p.pieces != nil && c.Bool("no-figures") {
		return p, misuse("--no-figures was given, and with --pieces there are no figures", "leave one of them out")
	}
	for _, name := range []string{"no-figures", "gauges", "all-views"} {
		if c.Bool(name) {
			p.added = append(p.added, "--"+name)
		}
	}
	if p.times, err = readTimes(c); err != nil {
		return p, err
	}
	if c.IsSet("times") {
		if !p.figures {
			return p, misuse("--times was given, and the figures, which it is for, are left out", "leave --times out, or --no-figures and --pieces")
		}
		p.added = append(p.added, "--times "+strconv.Itoa(p.times))
	}
	return p, checkMeasured(c)
}

// paperIn returns the paper, with lengths that count in the unit of the file. It is
// corrected for what was measured.
func (p printing) paperIn(unit length.Unit) (paper.Paper, error) {
	on := p.paper
	for _, option := range []struct {
		name  string
		value *string
		set   func(float64) (paper.Paper, error)
	}{
		{"margin", p.margin, func(mm float64) (paper.Paper, error) { return on.WithMargin(mm) }},
		{"overlap", p.overlap, func(mm float64) (paper.Paper, error) { return on.WithOverlap(mm) }},
	} {
		if option.value == nil {
			continue
		}
		mm, err := length.Parse(*option.value, unit)
		if err != nil {
			return on, optionFault(option.name, err)
		}
		if on, err = option.set(mm); err != nil {
			return on, optionFault(option.name, err)
		}
	}
	if p.across == nil {
		return on, nil
	}
	measured, err := p.measured(unit)
	if err != nil {
		return on, err
	}
	on.Printed = measured.Scale()
	return on, nil
}

// set is what is drawn of a file.
func (p printing) set(o opened) arrange.Set {
	p.progress.at("working out every line")
	pattern := o.pattern
	set := newSet(pattern)
	set.Pieces = sheet.WithViews(set.Pieces, pattern, o.others)
	if p.figures {
		set = withFigures(set, pattern.ForGarments(p.times))
	}
	if p.gauges {
		set.Pieces = append(set.Pieces, gauge.Of(pattern)...)
	}
	if p.view != pattern.View { // it is one of several that are looked at
		p.said = append(slices.Clone(p.said), "--view "+inShell(pattern.View))
	}
	set.Scale = p.onPage("tuckmark scale", anyFile)
	set.Included = figures.Included(pattern)
	set.Work = figures.Work(pattern, set.Pieces)
	set.Cautions = figures.Cautions(pattern, set.Pieces)
	return set
}

// chosen is the pattern with the pieces that are meant, to be transferred as it is
// asked for.
func (p printing) chosen(pattern *garment.Pattern) (*garment.Pattern, error) {
	if p.pieces != nil {
		only, err := marking.Choose(pattern, p.pieces)
		if err != nil {
			return nil, optionFault("pieces", err)
		}
		pattern = only
	}
	if p.transfers != nil {
		pattern = sheet.Transferred(pattern, p.transfers)
	}
	if p.dots == nil {
		return pattern, nil
	}
	mm, err := length.Parse(*p.dots, pattern.Unit)
	if err != nil {
		return nil, optionFault("dots", err)
	}
	dotted, err := sheet.Dotted(pattern, mm)
	if err != nil {
		return nil, optionFault("dots", err)
	}
	if !sheet.HasPricked(pattern) {
		return nil, misuse("--dots was given, and nothing is pricked", "add --transfer prick, or leave --dots out")
	}
	return dotted, nil
}
