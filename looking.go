package main

import (
	"bytes"
	"errors"
	"io"
	"maps"
	"os"
	"slices"
	"strings"
	"sync"
	"time"

	"tuckmark/marking/fault"
	"tuckmark/marking/figures"
	"tuckmark/marking/folded"
	"tuckmark/marking/garment"
	"tuckmark/marking/mark"
	"tuckmark/pdfout"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/screen"
)

// Rules of this file: what is shown follows the file. While that has mistakes, the views of
// before are shown with them.

// looking is a file that is looked at, and the pages that would be made of it.
type looking struct {
	printing
	in    string
	read  texts              // last
	good  []*garment.Pattern // the views of before the first mistake; nil for none
	scene *screen.Scene      // that is shown
}

// begin reads the file for the first time. Where it has mistakes they are shown; one that
// cannot be read at all, or options that do not go with it, are an error.
func (l *looking) begin() error {
	l.read = texts{}
	all, err := l.openAll(l.read, l.in)
	if l.read[l.in] == nil || errors.As(err, new(usageFault)) {
		return err
	}
	l.showing(all, err)
	return nil
}

// follow reads the file again, and reports whether there is something else to be shown.
func (l *looking) follow() bool {
	before := l.read
	l.read = texts{}
	all, err := l.openAll(l.read, l.in)
	if maps.EqualFunc(before, l.read, bytes.Equal) {
		return false
	}
	l.showing(all, err)
	return true
}

// files are those that what is shown follows.
func (l *looking) files() []string { return slices.Sorted(maps.Keys(l.read)) }

// showing makes what is to be shown of what was read, or of what is wrong with it.
func (l *looking) showing(all []opened, err error) {
	next := &screen.Scene{File: l.in, Version: time.Now().UnixMilli()}
	if info, err := os.Stat(l.in); err == nil {
		next.Saved = info.ModTime()
	}
	if l.scene != nil {
		next.Title, next.Unit, next.Views, next.Compared = l.scene.Title, l.scene.Unit, l.scene.Views, l.scene.Compared
		next.Version = max(next.Version, l.scene.Version+1)
	}
	if err != nil {
		next.Mistakes = l.mistakes(err)
	} else {
		l.good, next.Views = nil, nil
		for _, one := range all {
			l.good = append(l.good, one.pattern)
			next.Views = append(next.Views, l.shown(one))
		}
		next.Compared = comparing(l.good, l.times)
		next.Title, next.Unit = strings.Join(l.good[0].Heading(), ", "), l.good[0].Unit
	}
	l.scene = next
}

// mistakes are why a file could not be read, each with its lines as they were read.
func (l *looking) mistakes(err error) []screen.Mistake {
	var all fault.List
	if !errors.As(err, &all) {
		all = fault.List{fault.At(fault.Place{File: l.in}, err)}
	}
	var mistakes []screen.Mistake
	for _, one := range all {
		mistakes = append(mistakes, screen.Mistake{
			Notice: mark.Notice{Text: one.Cause, Hint: one.Hint, Place: one.Place},
			Lines:  fault.Excerpt(l.read[one.Place.File], one.Place),
		})
	}
	return mistakes
}

// shown is a view of the file, which is drawn when somebody looks at it.
func (l *looking) shown(o opened) screen.View {
	set := sync.OnceValue(func() arrange.Set { return l.set(o) })
	return screen.View{
		Name:    o.pattern.View,
		Title:   o.pattern.ViewName(),
		Book:    sync.OnceValues(func() (*pdfout.Book, error) { return pdfout.Plan(set(), o.paper) }),
		Pressed: func(halves mark.Halves) []mark.Pressed { return folded.All(o.pattern, halves) },
		Report:  func(u screen.Units) mark.Report { return figures.Report(o.pattern.ForGarments(l.times), unitsOf(u)) },
		Told:    func() []mark.Told { return nil },
		Remarks: sync.OnceValue(func() []mark.Notice { return notices(o.pattern) }),
		PDF: func(w io.Writer) error {
			_, err := pdfout.Draw(w, set(), o.paper)
			return err
		},
	}
}

// comparing tells the figures of several views, for so many garments, beside one another.
func comparing(views []*garment.Pattern, times int) func(screen.Units) mark.Report {
	return func(u screen.Units) mark.Report {
		var patterns []*garment.Pattern
		for _, view := range views {
			patterns = append(patterns, view.ForGarments(times))
		}
		return figures.Views(patterns, unitsOf(u))
	}
}

// unitsOf are the units of figures that are asked for on the screen.
func unitsOf(u screen.Units) figures.Units {
	if u == screen.AllUnits {
		return figures.AllUnits
	}
	return figures.OwnUnit
}

// notices are the remarks on a pattern.
func notices(p *garment.Pattern) []mark.Notice {
	var all []mark.Notice
	for _, r := range p.Remarks {
		all = append(all, mark.Notice{Text: r.Text, Place: r.Place})
	}
	return all
}
