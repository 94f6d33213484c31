package main

import (
	"slices"

	"tuckmark/marking/garment"
	"tuckmark/marking/gauge"
	"tuckmark/marking/sheet"
	"tuckmark/marking/source"
	"tuckmark/pdfout/paper"
)

// Rules of this file: a file is read together with what the command line says of it. One that
// is printed is read in one view; one that is looked at, in all.

// opened is a file that was read.
type opened struct {
	pattern *garment.Pattern   // with the pieces that are meant
	others  []*garment.Pattern // the other views of it, where they are drawn too
	paper   paper.Paper        // that they are for
	keys    []string           // of all its pieces
}

// open reads a file: the pieces of it that are meant, and the paper they are for.
func (p printing) open(in string) (opened, error) {
	p.progress.at(reading(in))
	if !p.allViews {
		whole, err := readPattern(in, p.view)
		if err != nil {
			return opened{}, err
		}
		return p.take(whole, nil)
	}
	views, err := readViews(in)
	if err != nil {
		return opened{}, err
	}
	whole := slices.IndexFunc(views, func(one *garment.Pattern) bool { return one.View == p.view })
	if whole < 0 {
		return opened{}, source.NoView(called(in), p.view, views[0].Views)
	}
	return p.take(views[whole], views)
}

// openFor opens a file whose sheets go to out, or to a PDF that lies beside it, with what it is
// behind its name, where that is "". What cannot be written is found before the file is read,
// where its name is known then, and the file is not one of sheets itself.
func (p printing) openFor(in, out, behind string) (o opened, to output, err error) {
	if in == standard && out == "" {
		return o, to, misuse("sheets of what comes in from elsewhere have no name of their own", "give them one: -o sheets.pdf, or -o - for the standard output")
	}
	if out == "" && p.pieces == nil && p.view == "" && formatOf(in) == noFormat {
		out = outName(in, nil, nil, nil, "", behind)
	}
	if out != "" && (in == standard || exists(in)) {
		if to, err = p.outputTo(out, in); err != nil {
			return o, to, err
		}
	}
	if o, err = p.open(in); err != nil {
		return o, to, err
	}
	if out == "" {
		out = p.outName(in, o, behind)
	}
	to, err = p.outputTo(out, o.pattern.Files...) // those that it is like are known now
	return o, to, err
}

// openAll reads a file as it stands, and then in each of its views, if it has some. What was
// read is noted in t, whatever is wrong.
func (p printing) openAll(t texts, in string) ([]opened, error) {
	views, err := t.readAll(in)
	var all []opened
	for _, whole := range views {
		one, err := p.take(whole, views)
		if err != nil {
			return nil, err
		}
		all = append(all, one)
	}
	return all, err
}

// take takes of a pattern what is meant; views are all of its file, of which the others are
// taken too where they are to be drawn.
func (p printing) take(whole *garment.Pattern, views []*garment.Pattern) (o opened, err error) {
	o.keys = keysOf(whole)
	if o.pattern, err = p.chosen(whole); err == nil {
		err = sheet.Check(o.pattern)
	}
	if err == nil && p.gauges {
		err = gauge.Check(o.pattern)
	}
	if err == nil && p.figures {
		_, err = forGarments(o.pattern, p.times)
	}
	if err != nil {
		return opened{}, err
	}
	for _, other := range views {
		if !p.allViews || other.View == whole.View {
			continue
		}
		if other, err = p.chosen(other); err != nil {
			return opened{}, err
		}
		o.others = append(o.others, other)
	}
	o.paper, err = p.paperIn(whole.Unit)
	return o, err
}

// keysOf are the keys of the pieces of a pattern.
func keysOf(p *garment.Pattern) []string {
	var keys []string
	for _, one := range p.Pieces {
		keys = append(keys, one.Key)
	}
	return keys
}

// outName is the name of the PDF that is made of what was opened, with what it is behind it.
func (p printing) outName(in string, o opened, behind string) string {
	var part []string
	if p.pieces != nil {
		part = keysOf(o.pattern)
	}
	return outName(in, o.keys, part, o.pattern.Views, p.view, behind)
}
