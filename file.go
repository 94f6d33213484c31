package main

import (
	"errors"
	"os"
	"path/filepath"
	"strings"

	"tuckmark/marking"
	"tuckmark/marking/fault"
	"tuckmark/marking/garment"
	"tuckmark/marking/source"
	"tuckmark/marking/wording"
	"tuckmark/pdfout/ink"
)

// Rules of this file: a file is read once, with what it names, and checked. What it names is read
// from its own folder and below.

// texts are the files that were looked for when one was read, by what messages call them, with
// what was read of each; nil of one that cannot be had.
type texts map[string][]byte

// opened notes a file.
func (t texts) opened(name string, data []byte) { t[name] = data }

// readPattern reads a file and checks it, in one of its views, or, where that is "", as it
// stands.
func readPattern(in, view string) (*garment.Pattern, error) {
	var spec *source.Spec
	err := texts{}.reading(in, func(r source.Reader, data []byte) (err error) {
		r.View = view
		spec, err = r.Read(called(in), data)
		return err
	})
	if err != nil {
		return nil, err
	}
	return marking.Check(spec)
}

// readViews reads a file as it stands, and then in each of its views.
func readViews(in string) ([]*garment.Pattern, error) {
	all, err := texts{}.readAll(in)
	if err != nil {
		return nil, err
	}
	if len(all) == 1 {
		return nil, fileFault(called(in), "the file has no views", "a view is made by a line such as [view.round], with what differs below it")
	}
	return all, nil
}

// readAll reads a file as it stands, and then in each of its views, if it has some. Where some of
// these have mistakes, those of all are told, and the others come all the same.
func (t texts) readAll(in string) ([]*garment.Pattern, error) {
	var specs []*source.Spec
	err := t.reading(in, func(r source.Reader, data []byte) (err error) {
		specs, err = r.ReadAll(called(in), data)
		return err
	})
	if err != nil {
		return nil, err
	}
	var all []*garment.Pattern
	var wrong []fault.List
	for _, spec := range specs {
		one, err := marking.Check(spec)
		var faults fault.List
		switch {
		case errors.As(err, &faults):
			wrong = append(wrong, faults)
		case err != nil:
			return nil, err
		default:
			all = append(all, one)
		}
	}
	if len(wrong) > 0 {
		return all, fault.Together(wrong...)
	}
	return all, nil
}

// reading has a file read. What it names is read from its own folder and below, and nowhere
// else.
func (t texts) reading(in string, read func(source.Reader, []byte) error) error {
	data, err := readFile(in)
	t.opened(in, data)
	if err != nil {
		return err
	}
	if of := madeOf(in); of != "" {
		what := map[format]string{pdfFormat: "a PDF", svgFormat: "an SVG"}[formatOf(in)]
		return fileFault(in, "this is "+what+", not the description of a pattern", wording.DidYouMean(of))
	}
	reader := source.Reader{Printable: ink.CanPrint, Opened: t.opened}
	if folder, err := os.OpenRoot(filepath.Dir(in)); err == nil {
		defer folder.Close()
		reader.Folder = folder.FS()
	}
	return read(reader, data)
}

// madeOf is the description beside a PDF or an SVG that was made of it, by their names: of
// "dress.pdf", and of "dress-front+back.pdf", it is "dress.toml"; "" where there is none.
func madeOf(name string) string {
	if formatOf(name) == noFormat {
		return ""
	}
	for own := strings.TrimSuffix(name, filepath.Ext(name)); ; {
		if exists(own + ".toml") {
			return own + ".toml"
		}
		part := strings.LastIndex(own, "-")
		if part <= strings.LastIndexAny(own, `/\`) {
			return ""
		}
		own = own[:part]
	}
}
