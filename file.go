package main

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"syscall"

	"tuckmark/marking"
	"tuckmark/marking/fault"
	"tuckmark/marking/garment"
	"tuckmark/marking/source"
	"tuckmark/marking/wording"
	"tuckmark/pdfout/ink"
)

// Rules of this file: nothing is written before everything is known to be
// right, and what is written appears under its name whole or not at all.

// readFile reads the description of a pattern, and no more of it than one may
// be long.
func readFile(name string) ([]byte, error) {
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

// writeFile writes what draw draws to the file out: to a file beside it first,
// which takes its name when it is complete. from are the files that were read, none of which
// out must replace; nor does it replace a folder or a device.
func writeFile(from []string, out string, draw func(io.Writer) error) error {
	switch info, err := os.Stat(out); {
	case err == nil && info.IsDir():
		return fileFault(out, "this is a folder, not a file", "give -o the name of a file in it, such as "+filepath.Join(out, "sheets.pdf"))
	case slices.ContainsFunc(from, func(in string) bool { return same(in, out) }):
		return fileFault(out, "this would write the sheets over what they are made from", "give -o another name, that ends in .pdf or .svg")
	case formatOf(out) == noFormat:
		return fileFault(out, "the sheets are a PDF or an SVG, and this is no name for one", endings)
	case err == nil && !info.Mode().IsRegular():
		return fileFault(out, "this is no ordinary file", "give -o another name")
	}
	// A link keeps pointing where it does: what it points to is replaced. Only one that
	// points to nothing is replaced itself.
	if target, err := filepath.EvalSymlinks(out); err == nil {
		out = target
	}
	var whole bytes.Buffer
	if err := draw(&whole); err != nil {
		return err
	}
	f, err := createBeside(out)
	if err == nil {
		err = writeAll(f, whole.Bytes())
	}
	if err != nil {
		return unwritable(out, filepath.Dir(out), sheetsElsewhere, err)
	}
	if err := os.Rename(f.Name(), out); err != nil {
		os.Remove(f.Name())
		return fileFault(out, "the sheets of before cannot be replaced: "+fault.Innermost(err), "close the program that shows them, or write the new ones elsewhere with -o")
	}
	return nil
}

// writeNew writes a file where nothing is, neither a file nor a folder nor a link.
func writeNew(out string, data []byte) error {
	f, err := os.OpenFile(out, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o666)
	if err == nil {
		err = writeAll(f, data)
	}
	if errors.Is(err, fs.ErrExist) {
		return taken(out)
	}
	if err != nil {
		return unwritable(out, filepath.Dir(out), fileElsewhere, err)
	}
	return nil
}

// writeAll writes all of a new file, or takes it away again.
func writeAll(f *os.File, data []byte) error {
	_, err := f.Write(data)
	if closed := f.Close(); err == nil {
		err = closed
	}
	if err != nil {
		os.Remove(f.Name())
	}
	return err
}

// createBeside creates a file of a name nobody uses, beside the one it will
// replace and with the same rights; a new file has those that new files have
// here. A file that may not be written is not replaced either.
func createBeside(out string) (*os.File, error) {
	mode := fs.FileMode(0o666)
	old, err := os.OpenFile(out, os.O_WRONLY, 0)
	switch {
	case err == nil:
		defer old.Close()
		info, err := old.Stat()
		if err != nil {
			return nil, err
		}
		mode = info.Mode().Perm()
	case !errors.Is(err, fs.ErrNotExist):
		return nil, err
	}
	for n := 0; ; n++ {
		name := filepath.Join(filepath.Dir(out), fmt.Sprintf(".tuckmark-%d-%d%s", os.Getpid(), n, filepath.Ext(out)))
		f, err := os.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, mode)
		if !errors.Is(err, fs.ErrExist) {
			return f, err
		}
	}
}

// same reports whether both names are one file.
func same(a, b string) bool {
	ia, errA := os.Stat(a)
	ib, errB := os.Stat(b)
	return errA == nil && errB == nil && os.SameFile(ia, ib)
}

func exists(name string) bool {
	_, err := os.Stat(name)
	return err == nil
}

func isFolder(name string) bool {
	info, err := os.Stat(name)
	return err == nil && info.IsDir()
}

// What may be done where something cannot be written.
const (
	sheetsElsewhere = "write the sheets elsewhere with -o"
	fileElsewhere   = "name a file elsewhere"
)

func unwritable(name, folder, elsewhere string, err error) error {
	in := fmt.Sprintf("the folder %q", folder)
	if folder == "." {
		in = "the folder you are in"
	}
	switch {
	case errors.Is(err, fs.ErrNotExist) && isFolder(folder): // one of the system's own
		return fileFault(name, in+" takes no files", elsewhere)
	case errors.Is(err, fs.ErrNotExist), errors.Is(err, syscall.ENOTDIR):
		return noFolder(name, folder, elsewhere)
	case errors.Is(err, fs.ErrPermission) && exists(name):
		return fileFault(name, "the file is there already and may not be written", "look at its permissions, or "+elsewhere)
	case errors.Is(err, fs.ErrPermission), errors.Is(err, syscall.EROFS):
		return fileFault(name, "nothing may be written in "+in, elsewhere)
	case errors.Is(err, syscall.ENOSPC), errors.Is(err, syscall.EDQUOT):
		return fileFault(name, "the disk is full; nothing was written", "make room, or "+elsewhere)
	case errors.Is(err, syscall.EFBIG):
		return fileFault(name, "the disk takes no more of it; nothing was written", "make room, or "+elsewhere)
	}
	return fileFault(name, "the file cannot be written: "+fault.Innermost(err), "")
}

// noFolder says that there is no folder for a file.
func noFolder(name, folder, elsewhere string) error {
	return fileFault(name, fmt.Sprintf("there is no folder %q", folder), "make the folder first, or "+elsewhere)
}

// writeOut writes what was asked for, such as "the figures", to the screen, or to where it
// is led.
func writeOut(w io.Writer, what string, data []byte) error {
	if _, err := w.Write(data); err != nil {
		return fileFault(program, what+" cannot be written: "+fault.Innermost(err), "")
	}
	return nil
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
		spec, err = r.Read(in, data)
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
		return nil, fileFault(in, "the file has no views", "a view is made by a line such as [view.round], with what differs below it")
	}
	return all, nil
}

// readAll reads a file as it stands, and then in each of its views, if it has some. Where some of
// these have mistakes, those of all are told, and the others come all the same.
func (t texts) readAll(in string) ([]*garment.Pattern, error) {
	var specs []*source.Spec
	err := t.reading(in, func(r source.Reader, data []byte) (err error) {
		specs, err = r.ReadAll(in, data)
		return err
	})
	if err != nil {
		return nil, err
	}
	var all []*garment.Pattern
	var wrong fault.List
	for _, spec := range specs {
		one, err := marking.Check(spec)
		var faults fault.List
		switch {
		case errors.As(err, &faults):
			wrong = append(wrong, faults...)
		case err != nil:
			return nil, err
		default:
			all = append(all, one)
		}
	}
	if len(wrong) > 0 {
		return all, wrong.Sorted()
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
