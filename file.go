package main

import (
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"

	"tuckmark/marking"
	"tuckmark/marking/fault"
	"tuckmark/marking/garment"
	"tuckmark/marking/source"
	"tuckmark/marking/wording"
	"tuckmark/pdfout/ink"
)

// Rules of this file: a file is read once, and no more of it than one may be long. What it names
// is read from its own folder and below.

// readFile reads the description of a pattern, and no more of it than one may
// be long.
func readFile(name string) ([]byte, error) {
	if name == standard {
		return standardInput()
	}
	info, err := os.Stat(name)
	if err != nil {
		return nil, unreadable(name, err)
	}
	if info.IsDir() {
		return nil, fileFault(name, "this is a folder, not a file", "name the .toml file in it")
	}
	if info.Size() > source.MaxFileSize {
		return nil, source.TooLarge(name, info.Size())
	}
	f, err := os.Open(name)
	if err != nil {
		return nil, unreadable(name, err)
	}
	defer f.Close()
	// What is no regular file may go on for ever; one byte more than the most
	// tells that it is too large.
	data, err := io.ReadAll(io.LimitReader(f, source.MaxFileSize+1))
	if err != nil {
		return nil, unreadable(name, err)
	}
	return data, nil
}

func unreadable(name string, err error) error {
	switch {
	case errors.Is(err, fs.ErrNotExist) && exists(name+".toml"):
		return fileFault(name, "there is no such file", wording.DidYouMean(name+".toml"))
	case errors.Is(err, fs.ErrNotExist):
		return fileFault(name, "there is no such file", "look at its name, and at the folder you are in")
	case errors.Is(err, fs.ErrPermission):
		return fileFault(name, "the file may not be read", "look at its permissions")
	}
	return fileFault(name, "the file cannot be read: "+fault.Innermost(err), "")
}

func exists(name string) bool {
	_, err := os.Stat(name)
	return err == nil
}

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
	reader := source.Reader{Printable: ink.CanPrint, Opened: t.opened}
	if folder, err := os.OpenRoot(filepath.Dir(in)); err == nil {
		defer folder.Close()
		reader.Folder = folder.FS()
	}
	return read(reader, data)
}
