package watch

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
)

// mostLinks is how many links may lead to a file before it counts as not to be found; Linux
// has this bound (path_resolution(7)).
const mostLinks = 40

// trail returns the names that, if they came to mean something else, could make a file
// another one: each link on the way, also of folders, and last the file itself, each in the
// folder in which it truly lies. Where the way ends at a folder that is not there, the last is
// this folder: when it is made, the way goes on.
func trail(file string) []string {
	file, err := filepath.Abs(file)
	if err != nil {
		return nil
	}
	var names []string
	at, rest := top(file), parts(file)
	for links := 0; len(rest) > 0 && links <= mostLinks; {
		part := rest[0]
		rest = rest[1:]
		if part == ".." {
			at = filepath.Dir(at)
			continue
		}
		name := filepath.Join(at, part)
		to, err := os.Readlink(name)
		switch {
		case err == nil:
			links++
			names = append(names, name)
			rest = append(parts(to), rest...)
			if filepath.IsAbs(to) {
				at = top(to)
			}
		case len(rest) == 0 || errors.Is(err, fs.ErrNotExist):
			return append(names, name)
		default:
			at = name
		}
	}
	return names
}

// top returns the folder that holds all others.
func top(path string) string {
	return filepath.VolumeName(path) + string(filepath.Separator)
}

// parts returns a path name by name. None is left out for one that leads back: if the first
// of them is a link, it does not lead back to where it lies.
func parts(path string) []string {
	path = filepath.ToSlash(strings.TrimPrefix(path, filepath.VolumeName(path)))
	return slices.DeleteFunc(strings.Split(path, "/"), func(part string) bool { return part == "" || part == "." })
}
