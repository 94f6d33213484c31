package save

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
)

// Rules of this file: whatever ends the writing, the folder holds what it held, or that and the
// whole new file.

// mostUnasked is how many bytes are written before it is asked whether the program is to end: a few
// thousandths of a second's worth.
const mostUnasked = 1 << 20

// Put puts a file of these bytes at its place.
func (p Place) Put(data []byte) error {
	return held(func(ending func() bool) error { return p.put(data, ending) })
}

// put is Put that asks whether the program is to end, and leaves the place as it was then.
func (p Place) put(data []byte, ending func() bool) error {
	f, err := p.beside()
	if err != nil {
		return err
	}
	err = fill(f, data, ending)
	if err != nil || ending() {
		os.Remove(f.Name())
		return p.unwritable(err)
	}
	if err := os.Rename(f.Name(), p.file); err != nil {
		os.Remove(f.Name())
		return p.notReplaced(err)
	}
	// That the name is on the disk too is as sure as the system makes it; some do not know the
	// question.
	if folder, err := os.Open(p.folder()); err == nil {
		_ = folder.Sync()
		folder.Close()
	}
	return nil
}

// fill writes a new file until it is on the disk, and closes it. When the program is to end it
// stops.
func fill(f *os.File, data []byte, ending func() bool) error {
	var err error
	for len(data) > 0 && err == nil && !ending() {
		part := data[:min(len(data), mostUnasked)]
		_, err = f.Write(part)
		data = data[len(part):]
	}
	if err == nil && !ending() {
		err = f.Sync()
	}
	if closed := f.Close(); err == nil {
		err = closed
	}
	return err
}

// beside creates a file of a name nobody uses, beside the one that it will replace, and with its
// owner and its rights; where that is new, with those that new files have here.
func (p Place) beside() (*os.File, error) {
	mode := fs.FileMode(0o666)
	if p.old != nil {
		mode = 0o600 // until it is known whose it is
	}
	for n := 0; ; n++ {
		name := fmt.Sprintf("%s.tuckmark-%d-%d%s", folderOf(p.file), os.Getpid(), n, filepath.Ext(p.file))
		f, err := os.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, mode)
		switch {
		case errors.Is(err, fs.ErrExist):
			continue
		case err != nil:
			return nil, p.unwritable(err)
		case p.old == nil:
			return f, nil
		}
		if err := keep(f, p.old); err != nil {
			f.Close()
			os.Remove(name)
			return nil, p.notKept(err)
		}
		return f, nil
	}
}
