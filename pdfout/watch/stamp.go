package watch

import (
	"maps"
	"os"
	"slices"
)

// stamp is how a file stands, nil if it is not there or cannot be reached.
type stamp struct{ os.FileInfo }

// stamps returns how files stand now, those to which links lead.
func stamps(files []string) map[string]stamp {
	all := map[string]stamp{}
	for _, file := range files {
		info, err := os.Stat(file)
		if err != nil {
			info = nil
		}
		all[file] = stamp{info}
	}
	return all
}

// same reports whether a file has been left as it was, as far as can be told without reading.
func (s stamp) same(as stamp) bool {
	if s.FileInfo == nil || as.FileInfo == nil {
		return s.FileInfo == nil && as.FileInfo == nil
	}
	return os.SameFile(s.FileInfo, as.FileInfo) && s.Size() == as.Size() && s.ModTime().Equal(as.ModTime())
}

// holds reports whether there is something in the file.
func (s stamp) holds() bool { return s.FileInfo != nil && s.Size() > 0 }

// differ reports whether any file does not stand as it was told of, or was not told of.
func differ(told, now map[string]stamp) bool {
	for file, stamp := range now {
		if before, known := told[file]; !known || !stamp.same(before) {
			return true
		}
	}
	return false
}

// torn reports whether a file that held something is missing or empty, as it is in the midst
// of some saves.
func torn(told, now map[string]stamp) bool {
	for file, stamp := range now {
		if told[file].holds() && !stamp.holds() {
			return true
		}
	}
	return false
}

// keepOnly forgets files that are not in a list any more.
func keepOnly(told map[string]stamp, files []string) {
	maps.DeleteFunc(told, func(file string, _ stamp) bool { return !slices.Contains(files, file) })
}
