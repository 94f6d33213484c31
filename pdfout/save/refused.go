package save

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"syscall"

	"tuckmark/marking/fault"
)

// folder is that of the file.
func (p Place) folder() string {
	if folder := folderOf(p.file); folder != "" {
		return folder
	}
	return "."
}

// refused says why no file can be put at a place.
func (p Place) refused(cause, hint string) error {
	return &fault.Fault{Place: fault.Place{File: p.given}, Cause: cause, Hint: hint}
}

// closed says why what is there may not be written.
func (p Place) closed(err error) error {
	if errors.Is(err, fs.ErrPermission) {
		return p.refused("the file is there already and may not be written", "look at its permissions, or "+p.elsewhere)
	}
	return p.unwritable(err)
}

// notKept says that what is there could not stay whose it is.
func (p Place) notKept(err error) error {
	if errors.Is(err, fs.ErrPermission) {
		return p.refused("the file belongs to another person or group, and a new one could not be given to them", p.elsewhere)
	}
	return p.unwritable(err)
}

// notReplaced says why a whole file could not take its name.
func (p Place) notReplaced(err error) error {
	if p.old == nil || isInUse(err) {
		return p.unwritable(err)
	}
	return p.refused("what was there before cannot be replaced: "+fault.Innermost(err), "close the program that shows it, or "+p.elsewhere)
}

// unwritable says in plain words what the system says of a file; nil of no error.
func (p Place) unwritable(err error) error {
	if err == nil {
		return nil
	}
	in := fmt.Sprintf("the folder %q", filepath.Clean(p.folder()))
	if filepath.Clean(p.folder()) == "." {
		in = "the folder you are in"
	}
	file := fileOnTheWay(p.folder())
	switch {
	case errors.Is(err, fs.ErrNotExist) && IsFolder(p.folder()): // one of the system's own
		return p.refused(in+" takes no files", p.elsewhere)
	case file != "":
		return p.refused(fmt.Sprintf("%q is a file, not a folder", file), p.elsewhere)
	case errors.Is(err, fs.ErrNotExist), errors.Is(err, syscall.ENOTDIR):
		return p.refused("there is no folder "+in[len("the folder "):], "make the folder first, or "+p.elsewhere)
	case isInUse(err):
		return p.refused("another program has the file open", "close the program that shows it, or "+p.elsewhere)
	case errors.Is(err, fs.ErrPermission), isProtected(err):
		return p.refused("nothing may be written in "+in, p.elsewhere)
	case isFull(err):
		return p.refused("the disk is full; nothing was written", "make room, or "+p.elsewhere)
	case errors.Is(err, syscall.EFBIG):
		return p.refused("the disk takes no more of it; nothing was written", "make room, or "+p.elsewhere)
	}
	return p.refused("the file cannot be written: "+fault.Innermost(err), p.elsewhere)
}

// fileOnTheWay returns what is no folder, of a folder and those that it lies in; "" where all
// that are there are folders.
func fileOnTheWay(folder string) string {
	for name := filepath.Clean(folder); ; name = filepath.Dir(name) {
		if info, err := os.Stat(name); err == nil {
			if info.IsDir() {
				return ""
			}
			return name
		}
		if name == filepath.Dir(name) {
			return ""
		}
	}
}

// IsFolder reports whether a name, or what it leads to, is that of a folder.
func IsFolder(name string) bool {
	info, err := os.Stat(name)
	return err == nil && info.IsDir()
}
