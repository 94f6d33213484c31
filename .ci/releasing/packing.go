package main

import (
	"archive/zip"
	"bytes"
	"crypto/sha256"
	"fmt"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
)

// Rules of this file: a zip holds one folder; names stand in their order, every time is that of
// the commit, and of rights there are two kinds. Nothing else is noted in it.

// checksums is the file that `sha256sum -c` takes.
const checksums = "SHA256SUMS.txt"

// checksum is its line for a file.
func checksum(name string, data []byte) string {
	return fmt.Sprintf("%x  %s\n", sha256.Sum256(data), name)
}

// packed is a file in a zip.
type packed struct {
	name string // with slashes, from the zip's one folder
	data []byte
	mode fs.FileMode
}

// pack returns the zip of a program.
func pack(c commit, p program, version string) ([]byte, error) {
	files, err := packedFiles(c, p, version)
	if err != nil {
		return nil, err
	}
	var out bytes.Buffer
	w := zip.NewWriter(&out)
	for _, file := range files {
		header := &zip.FileHeader{Name: path.Join("tuckmark-"+version, file.name), Method: zip.Deflate, Modified: c.time}
		header.SetMode(file.mode)
		part, err := w.CreateHeader(header)
		if err != nil {
			return nil, err
		}
		if _, err := part.Write(file.data); err != nil {
			return nil, err
		}
	}
	err = w.Close()
	return out.Bytes(), err
}

// packedFiles are the files of a zip: the program, what to read first, the texts, the examples
// with the guide, and the pictures that these show.
func packedFiles(c commit, p program, version string) ([]packed, error) {
	program, err := os.ReadFile(p.file)
	if err != nil {
		return nil, err
	}
	first, err := readFirst(p.system, version)
	if err != nil {
		return nil, err
	}
	all := []packed{{p.program(), program, 0o755}, {firstName, first, 0o644}}
	names, err := c.texts()
	if err != nil {
		return nil, err
	}
	for _, name := range names {
		data, err := c.read(name)
		if err != nil {
			return nil, err
		}
		if p.os == "windows" && path.Ext(name) == "" { // what has no ending is opened by nothing there
			name += ".txt"
			data = linesFor(p.system, data)
		}
		all = append(all, packed{name, data, 0o644})
	}
	slices.SortFunc(all, func(a, b packed) int { return strings.Compare(a.name, b.name) })
	return all, nil
}

// linesFor are lines as they end on a system.
func linesFor(s system, text []byte) []byte {
	if s.os != "windows" {
		return text
	}
	return bytes.ReplaceAll(text, []byte("\n"), []byte("\r\n"))
}

// texts are the names of the files of a commit that every zip holds.
func (c commit) texts() ([]string, error) {
	names := []string{"README.md", "LICENSE", noticeName}
	err := fs.WalkDir(os.DirFS(c.folder), "examples", func(name string, entry fs.DirEntry, err error) error {
		if err == nil && !entry.IsDir() {
			names = append(names, name)
		}
		return err
	})
	if err != nil {
		return nil, err
	}
	for _, name := range slices.Clone(names) {
		if path.Ext(name) != ".md" {
			continue
		}
		pictures, err := c.picturesIn(name)
		if err != nil {
			return nil, err
		}
		names = append(names, pictures...)
	}
	slices.Sort(names)
	return slices.Compact(names), nil
}

// shown is a picture in a text: ![words](where it is).
var shown = regexp.MustCompile(`!\[[^\]]*\]\(([^)\s]+)\)`)

// picturesIn are the pictures that a text shows.
func (c commit) picturesIn(name string) ([]string, error) {
	text, err := c.read(name)
	if err != nil {
		return nil, err
	}
	var all []string
	for _, match := range shown.FindAllSubmatch(text, -1) {
		picture := path.Join(path.Dir(name), string(match[1]))
		if !filepath.IsLocal(filepath.FromSlash(picture)) {
			return nil, fmt.Errorf("%s shows %s, which is not in the project", name, match[1])
		}
		all = append(all, picture)
	}
	return all, nil
}
