package main

import (
	"cmp"
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"sync"

	"tuckmark/marking/fault"
	"tuckmark/marking/source"
	"tuckmark/marking/wording"
)

// Rules of this file: what comes in is a file, or what another program leads in, and of either no
// more is read than a file may be long.

// standard is a dash alone: where a file is read it stands for what comes in from another program,
// and where sheets are written for what goes out to one.
const standard = "-"

// called is what messages call a file that is read.
func called(in string) string {
	if in == standard {
		return "standard input"
	}
	return in
}

// readFile reads the description of a pattern.
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
	return readMost(name, f)
}

// standardInput is what comes in from another program, which can be read only once.
var standardInput = sync.OnceValues(func() ([]byte, error) {
	if isTerminal(os.Stdin) {
		return nil, misuse("no file comes in: the standard input is a terminal", "lead a file into it, or name the file")
	}
	return readMost(called(standard), os.Stdin)
})

// readMost reads what has a name, and may go on for ever: one byte more than the most tells that it
// is too large.
func readMost(name string, from io.Reader) ([]byte, error) {
	data, err := io.ReadAll(io.LimitReader(from, source.MaxFileSize+1))
	if err != nil {
		return nil, unreadable(name, err)
	}
	return data, nil
}

func unreadable(name string, err error) error {
	switch {
	case errors.Is(err, fs.ErrNotExist):
		hint := "look at its name, and at the folder you are in"
		if near := nearestFile(name); near != "" {
			hint = wording.DidYouMean(near)
		}
		return fileFault(name, "there is no such file", hint)
	case errors.Is(err, fs.ErrPermission):
		return fileFault(name, "the file may not be read", "look at its permissions")
	}
	return fileFault(name, "the file cannot be read: "+fault.Innermost(err), "")
}

// nearestFile is the description that lies where a name says, and whose own name is that with its
// ending, or comes nearest to it; "" where none is near.
func nearestFile(name string) string {
	if exists(name + ".toml") {
		return name + ".toml"
	}
	folder, own := filepath.Split(name)
	files, _ := os.ReadDir(cmp.Or(folder, ".")) // without a folder there is none
	var known []string
	for _, f := range files {
		if filepath.Ext(f.Name()) == ".toml" {
			known = append(known, f.Name())
		}
	}
	if near := wording.Nearest(own, known); near != "" {
		return folder + near
	}
	return ""
}

func exists(name string) bool {
	_, err := os.Stat(name)
	return err == nil
}
