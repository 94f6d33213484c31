package main

import (
	"bytes"
	"errors"
	"io"
	"maps"
	"os"
	"path/filepath"
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
	read  texts         // last
	wrong string        // with that, as it is said; "" for nothing
	good  []viewed      // the views, before the first mistake; nil for none
	scene *screen.Scene // that is shown
}

// begin reads the file for the first time. Where it has mistakes they are shown; one that
// cannot be read at all or is, by its name too, none of ours, or options that do not go with it, are
// an error.
func (l *looking) begin() error {
	l.read = texts{}
	all, err := l.openAll(l.read, l.in)
	named := strings.EqualFold(filepath.Ext(l.in), ".toml")
	if err != nil && (l.read[l.in] == nil || !named || errors.As(err, new(usageFault))) {
		return err
	}
	l.wrong = said(err)
	l.showing(all, err)
	return nil
}

// said is an error as it is said; "" for none.
func said(err error) string {
	if err == nil {
		return ""
	}
	return err.Error()
}

// follow reads the file again, and reports whether there is something else to be shown.
func (l *looking) follow() bool {
	before, wrong := l.read, l.wrong
	l.read = texts{}
	all, err := l.openAll(l.read, l.in)
	if !exists(l.in) {
		err = fileFault(l.in, "the file is not there any more", "save it there again, under the same name, and the picture follows it")
	}
	// What cannot be read, a folder for one, has no text that could be another.
	if l.wrong = said(err); l.wrong == wrong && maps.EqualFunc(before, l.read, bytes.Equal) {
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
	for _, file := range l.files() {
		if info, err := os.Stat(file); err == nil && info.ModTime().After(next.Saved) {
			next.Saved = info.ModTime()
		}
	}
	if l.scene != nil {
		next.Title, next.Unit, next.Views, next.Compared = l.scene.Title, l.scene.Unit, l.scene.Views, l.scene.Compared
		next.Version = max(next.Version, l.scene.Version+1)
	}
	// At first the views that are right are better than none.
	if err == nil || l.good == nil && len(all) > 0 {
		l.good, next.Views = nil, nil
		for _, one := range all {
			v := viewed{one, sync.OnceValue(func() arrange.Set { return l.set(one) })}
			l.good = append(l.good, v)
			next.Views = append(next.Views, v.shown(l.times))
		}
		next.Compared = comparing(all, l.times)
		first := all[0].pattern
		next.Title, next.Unit = strings.Join(first.Heading(), ", "), first.Unit
	}
	if err != nil {
		next.Mistakes = l.mistakes(err)
	}
	l.scene = next
}

// mistakes are why a file could not be read, each with its lines as they were read.
func (l *looking) mistakes(err error) []screen.Mistake {
	var found fault.List
	if !errors.As(err, &found) {
		found = fault.List{fault.At(fault.Place{File: l.in}, err)}
	}
	var before *garment.Pattern
	var drawn []mark.Marking
	if len(l.good) > 0 {
		before, drawn = l.good[0].pattern, l.good[0].set().Pieces
	}
	var mistakes []screen.Mistake
	told := found.Told()
	for i, notice := range figures.Mistakes(before, drawn, told) {
		at := told[i].Place
		mistakes = append(mistakes, screen.Mistake{Notice: notice, Lines: fault.ExcerptOfBoth(l.read[at.File], at, told[i].Other)})
	}
	return mistakes
}

// viewed is a view of the file, and what is drawn of it.
type viewed struct {
	opened
	set func() arrange.Set
}

// shown is the view as it is shown, with figures for so many garments. What of it takes time is
// made when somebody looks at it.
func (v viewed) shown(times int) screen.View {
	return screen.View{
		Name:    v.pattern.View,
		Title:   v.pattern.ViewName(),
		Book:    sync.OnceValues(func() (*pdfout.Book, error) { return pdfout.Plan(v.set(), v.paper) }),
		Pressed: func(halves mark.Halves) []mark.Pressed { return folded.All(v.pattern, halves) },
		Report:  func(u screen.Units) mark.Report { return figures.Report(v.pattern.ForGarments(times), unitsOf(u)) },
		Told:    sync.OnceValue(func() []mark.Told { return figures.Told(v.pattern, v.set().Pieces, figures.OwnUnit, v.others...) }),
		Remarks: sync.OnceValue(func() []mark.Notice { return figures.Remarks(v.pattern, v.set().Pieces) }),
		PDF: func(w io.Writer) error {
			_, err := pdfout.Draw(w, v.set(), v.paper)
			return err
		},
	}
}

// comparing tells the figures of several views, for so many garments, beside one another.
func comparing(views []opened, times int) func(screen.Units) mark.Report {
	return func(u screen.Units) mark.Report {
		var patterns []*garment.Pattern
		for _, view := range views {
			patterns = append(patterns, view.pattern.ForGarments(times))
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
