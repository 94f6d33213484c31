package source

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"path"
	"path/filepath"
	"strings"

	"tuckmark/marking/fault"
	"tuckmark/marking/wording"
)

// Rules of this file: a file may name others in its own folder and below. Nothing outside is
// read, whatever a name or a link says.

// mostLike is how many files may be like each other in a row. It bounds the time.
const mostLike = 10

// beside returns a file that is named at a place, from the folder of the file that is read;
// or notes why it cannot be had. end is how the names of such files end.
func (r *fileReader) beside(at fault.Place, name, end string) ([]byte, bool) {
	cause, hint := "", "it stands in the folder of this file, or in one below that"
	switch {
	case r.folder == nil:
		cause = "there is no folder to read " + wording.Quoted(name) + " from"
	case strings.ContainsAny(name, "\\:"):
		cause, hint = wording.Quoted(name)+" is no name of a file here", "write it without a drive, folders with / between: \"dresses/front"+end+"\""
	case !fs.ValidPath(name) || name == ".":
		cause = wording.Quoted(name) + " does not lie in the folder of this file"
	}
	if cause != "" {
		r.report(at, cause, hint)
		return nil, false
	}
	data, err := r.fromFolder(name)
	if r.opened != nil {
		r.opened(r.asNamed(name), data)
	}
	if err == nil {
		r.alsoRead[r.asNamed(name)] = true
		return data, r.smallEnough(at, name, data)
	}
	if errors.Is(err, fs.ErrNotExist) {
		if near := r.nearFile(name, end); near != "" {
			hint = wording.DidYouMean(near)
		}
		r.report(at, fmt.Sprintf("there is no file %s", wording.Quoted(name)), hint)
	} else {
		r.report(at, fmt.Sprintf("the file %s cannot be read", wording.Quoted(name)), hint)
	}
	return nil, false
}

// fromFolder returns a file of the folder, of one that is too large so much that it shows; nil
// with an error.
func (r *fileReader) fromFolder(name string) ([]byte, error) {
	f, err := r.folder.Open(name)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	data, err := io.ReadAll(io.LimitReader(f, MaxFileSize+1))
	if err != nil {
		return nil, err
	}
	return data, nil
}

func (r *fileReader) smallEnough(at fault.Place, name string, data []byte) bool {
	if len(data) <= MaxFileSize {
		return true
	}
	r.report(at, fmt.Sprintf("the file %s is more than %s", wording.Quoted(name), megabytes(MaxFileSize)), "is this the file you meant?")
	return false
}

// nearFile is the file with that end, in the folder of a name, that was most likely meant.
func (r *fileReader) nearFile(name, end string) string {
	folder := path.Dir(name)
	entries, _ := fs.ReadDir(r.folder, folder)
	var known []string
	for _, e := range entries {
		if strings.EqualFold(path.Ext(e.Name()), end) {
			known = append(known, path.Join(folder, e.Name()))
		}
	}
	return wording.Nearest(name, known)
}

// asNamed is what messages call a file of the folder: as the file itself was named.
func (r *fileReader) asNamed(name string) string {
	return filepath.Join(filepath.Dir(r.file), filepath.FromSlash(name))
}

// fileLayers returns a file and those that it is like, the last of them first; named is what
// it is called in the folder, "" for the file that is read itself, and above are those that
// are like it. Where one has a slip, that is noted and nothing counts.
func (r *fileReader) fileLayers(data []byte, named string, above []string) []written {
	file := r.file
	if named != "" {
		file = r.asNamed(named)
	}
	root, values, slips := parsed(data)
	for _, f := range slips {
		f.Place.File = file
	}
	if r.faults = append(r.faults, slips...); len(slips) > 0 {
		return nil
	}
	own := written{values, root, fault.Place{File: file}}
	like, given := values["like"]
	if !given {
		return []written{own}
	}
	at := own.at("like")
	other, isText := like.(string)
	if isText && named != "" {
		other = path.Join(path.Dir(named), other)
	}
	above = append(above, named)
	switch {
	case !isText:
		r.report(at, "must be the name of a file in quotes, but is "+asGiven(like), `write like = "dress.toml"`)
	case r.asNamed(other) == filepath.Clean(file):
		r.report(at, "the file is like itself", "name the file that it takes from")
	case len(above) >= mostLike:
		r.report(at, fmt.Sprintf("more than %d files are like each other in a row", mostLike), "are two of them like each other?")
	default:
		data, ok := r.beside(at, other, ".toml")
		if !ok {
			return nil
		}
		if r.bytes += len(data); r.bytes > MaxFileSize {
			r.report(at, fmt.Sprintf("files that are like each other have more than %s together", megabytes(MaxFileSize)), "is this the file you meant?")
			return nil
		}
		lower := r.fileLayers(data, other, above)
		if lower == nil {
			return nil
		}
		r.sameUnit(lower[len(lower)-1], own)
		for _, w := range append(lower, own) {
			w.spot.standIn(w.place.File)
		}
		return append(lower, own)
	}
	return nil
}

// sameUnit refuses a file in another unit than the one that it is like, whose bare numbers
// would be read wrong.
func (r *fileReader) sameUnit(lower, own written) {
	unit := func(w written) any {
		if v, given := w.values["unit"]; given {
			return v
		}
		return "in"
	}
	if own.has("unit") && unit(own) != unit(lower) {
		r.report(own.at("unit"), fmt.Sprintf("the file is in %s, and the one that it is like in %s", asGiven(unit(own)), asGiven(unit(lower))),
			"leave the unit out here, and write another one behind a number: \"2 cm\"")
	}
}
