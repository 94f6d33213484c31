package save

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
)

// Rules of this file: whether a file can be put somewhere is tried, not reckoned: only the
// system knows who may write where.

// Place is where a file is to be.
type Place struct {
	given     string      // the name, as messages say it
	elsewhere string      // what may be done where it cannot be written
	file      string      // the name of the file itself, whatever links lead to it
	old       os.FileInfo // what stands there; nil for nothing
}

// At is the place of a name, relative to the folder one is in, or a fault where no file can be
// put there: no folder, one that takes no files, or what may not be replaced. Elsewhere is what
// a hint says then. Nothing is left there by asking.
func At(name, elsewhere string) (Place, error) {
	p := Place{given: name, elsewhere: elsewhere, file: name}
	info, err := os.Stat(name)
	switch {
	case err == nil && !info.Mode().IsRegular():
		return Place{}, p.refused("this is no ordinary file", elsewhere)
	case err == nil:
		p.old = info
	case !errors.Is(err, fs.ErrNotExist):
		return Place{}, p.unwritable(err)
	}
	if p.file, err = behindLinks(name); err != nil {
		return Place{}, p.unwritable(err)
	}
	if p.old != nil {
		f, err := os.OpenFile(p.file, os.O_WRONLY, 0)
		if err != nil {
			return Place{}, p.closed(err)
		}
		f.Close()
	}
	return p, held(func(func() bool) error { return p.try() })
}

// try puts an empty file beside the one to be, and takes it away again.
func (p Place) try() error {
	f, err := p.beside()
	if err != nil {
		return err
	}
	f.Close()
	if err := os.Remove(f.Name()); err != nil {
		return p.unwritable(err)
	}
	return nil
}

// mostLinks is how many links may lead to a file, one behind the other, as it is on Linux: more
// lead in a circle.
const mostLinks = 40

// behindLinks is the name of what links lead to, be it there or not.
func behindLinks(name string) (string, error) {
	for range mostLinks {
		to, err := os.Readlink(name)
		if err != nil {
			return name, nil // it is no link
		}
		if !filepath.IsAbs(to) {
			to = folderOf(name) + to
		}
		name = to
	}
	return "", errors.New("its links lead in a circle")
}

// folderOf is the folder of a name, as it can be put before another. Nothing of it is made
// shorter: what comes behind a link and .. is not where the name alone seems to say.
func folderOf(name string) string {
	folder, _ := filepath.Split(name)
	return folder
}
