package main

import (
	"errors"
	"go/parser"
	"go/token"
	"io/fs"
	"maps"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The walls between the rooms. Each line is a room, what of this module it may import,
// and what of others; the standard library is free to all. A room stands below those
// that import it, so the lines can be read from the ground up.
const walls = `
marking/plane:
marking/wording:
marking/fault:       marking/wording
marking/length:      marking/fault marking/wording; golang.org/x/text/unicode/norm
marking/drawing:     marking/plane marking/fault marking/wording marking/length
marking/source:      marking/plane marking/fault marking/wording marking/length marking/drawing; github.com/BurntSushi/toml github.com/pelletier/go-toml/v2/unstable
marking/mark:        marking/plane marking/fault
marking/piece:       marking/plane marking/fault marking/wording marking/length marking/source marking/mark
marking/garment:     marking/plane marking/fault marking/wording marking/length marking/source marking/piece
marking/lay:         marking/plane marking/length marking/piece marking/garment
marking/sheet:       marking/plane marking/fault marking/wording marking/length marking/source marking/mark marking/piece marking/garment
marking/folded:      marking/plane marking/length marking/mark marking/piece marking/garment
marking/grid:        marking/plane marking/fault marking/length marking/mark
marking/gauge:       marking/plane marking/fault marking/wording marking/length marking/mark marking/piece marking/garment
marking/figures:     marking/fault marking/wording marking/length marking/source marking/mark marking/piece marking/garment marking/lay marking/sheet marking/gauge
marking/terminal:    marking/length marking/mark
marking/guide:       marking/fault marking/source marking/terminal; github.com/yuin/goldmark/ast github.com/yuin/goldmark/parser github.com/yuin/goldmark/text
marking/start:       marking/plane marking/fault marking/wording marking/length marking/source
marking:             marking/fault marking/wording marking/source marking/piece marking/garment marking/lay
marking/sketch:      marking/plane; pgregory.net/rapid
marking/sketch/made: marking/plane marking/fault marking/length marking/source marking/piece marking/garment marking/sketch; github.com/stretchr/testify/require
pdfout/paper:        marking/plane marking/fault marking/wording marking/length
pdfout/ink:          marking/plane marking/fault marking/mark pdfout/paper; codeberg.org/go-pdf/fpdf golang.org/x/image/font golang.org/x/image/font/gofont/gobold golang.org/x/image/font/gofont/goregular golang.org/x/image/font/sfnt golang.org/x/image/math/fixed
pdfout/text:         marking/plane marking/wording marking/length pdfout/ink
pdfout/arrange:      marking/plane marking/wording marking/length marking/mark pdfout/paper pdfout/ink pdfout/text
pdfout/report:       marking/plane marking/fault marking/wording marking/length marking/mark pdfout/paper pdfout/ink pdfout/text pdfout/arrange
pdfout/sample:       marking/plane marking/mark
pdfout/likeness:; github.com/stretchr/testify/assert github.com/stretchr/testify/require
pdfout/seen:         marking/plane marking/mark pdfout/paper pdfout/ink; github.com/stretchr/testify/require rsc.io/pdf
pdfout:              marking/plane marking/fault marking/wording marking/length marking/mark pdfout/paper pdfout/ink pdfout/text pdfout/arrange pdfout/report
pdfout/serve:        marking/fault
pdfout/save:         marking/fault
pdfout/watch:; github.com/fsnotify/fsnotify
pdfout/board:        marking/plane marking/wording marking/mark pdfout/paper pdfout/ink pdfout/text pdfout
pdfout/proof:; github.com/stretchr/testify/require
pdfout/screen:       marking/fault marking/length marking/wording marking/mark marking/plane pdfout/ink pdfout/report pdfout pdfout/board; golang.org/x/image/font/gofont/gobold golang.org/x/image/font/gofont/gomono golang.org/x/image/font/gofont/goregular
pdfout/screen/browser:
pdfout/sets:         marking/plane marking/length marking/source marking/mark marking/garment marking/sheet marking/sketch marking/sketch/made marking/grid marking pdfout/ink pdfout/arrange pdfout/sample; github.com/stretchr/testify/require pgregory.net/rapid
main:                marking/folded marking/start marking/guide marking/fault marking/wording marking/length marking/source marking/mark marking/garment marking/sheet marking/gauge marking/grid marking/figures marking/terminal marking pdfout/paper pdfout/ink pdfout/arrange pdfout pdfout/screen pdfout/serve pdfout/save pdfout/watch; github.com/urfave/cli/v2 golang.org/x/term
`

// wall is what one room may import.
type wall struct{ own, others []string }

// readWalls reads the table above: "room: own rooms; modules of others".
func readWalls(t *testing.T) map[string]wall {
	t.Helper()
	all := map[string]wall{}
	for _, line := range strings.Split(strings.TrimSpace(walls), "\n") {
		room, rest, ok := strings.Cut(line, ":")
		require.True(t, ok, "a line without a colon: %q", line)
		own, others, _ := strings.Cut(rest, ";")
		all[strings.TrimSpace(room)] = wall{strings.Fields(own), strings.Fields(others)}
	}
	return all
}

func TestTheWallsBetweenTheRooms(t *testing.T) {
	rooms, imported := readWalls(t), importsOfRooms(t)
	assert.ElementsMatch(t, slices.Collect(maps.Keys(rooms)), slices.Collect(maps.Keys(imported)), "every folder with Go files is a room of the table")
	for _, room := range slices.Sorted(maps.Keys(imported)) {
		var own, others []string
		for _, path := range imported[room] {
			if inside, ok := strings.CutPrefix(path, "tuckmark/"); ok {
				own = append(own, inside)
			} else if strings.Contains(path, ".") {
				others = append(others, path)
			}
		}
		assert.ElementsMatch(t, rooms[room].own, own, "what %s imports of this module, against what the table lets it", room)
		assert.ElementsMatch(t, rooms[room].others, others, "what %s imports of other modules, against what the table lets it", room)
	}
}

// A room that imports one above it could not be built; one that the table names too
// late would be read before what it stands on.
func TestRoomsStandAboveWhatTheyImport(t *testing.T) {
	rooms, seen := readWalls(t), map[string]bool{}
	for _, line := range strings.Split(strings.TrimSpace(walls), "\n") {
		room, _, _ := strings.Cut(line, ":")
		for _, below := range rooms[room].own {
			assert.True(t, seen[below], "%s imports %s, which stands further down in the table", room, below)
			assert.False(t, forTests(below) && !forTests(room), "%s imports %s, which is for tests", room, below)
		}
		seen[room] = true
	}
}

// forTests reports whether a room is there for the tests of others: what they draw, and
// how they read what was drawn.
func forTests(room string) bool {
	return slices.Contains([]string{"marking/sketch", "marking/sketch/made", "pdfout/sample", "pdfout/seen", "pdfout/likeness", "pdfout/proof", "pdfout/sets", "pdfout/screen/browser"}, room)
}

// importsOfRooms returns what the files of every folder import, tests left out.
func importsOfRooms(t *testing.T) map[string][]string {
	t.Helper()
	imported := map[string][]string{}
	err := filepath.WalkDir(".", func(path string, entry fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if entry.IsDir() {
			if name := entry.Name(); path != "." && (strings.HasPrefix(name, ".") || name == "testdata" || name == "reference") {
				return fs.SkipDir
			}
			return nil
		}
		if filepath.Ext(path) != ".go" || strings.HasSuffix(path, "_test.go") {
			return nil
		}
		file, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.ImportsOnly|parser.ParseComments)
		if err != nil {
			return err
		}
		room := filepath.ToSlash(filepath.Dir(path))
		if room == "." {
			room = "main"
		}
		imports := imported[room]
		for _, spec := range file.Imports {
			name, err := strconv.Unquote(spec.Path.Value)
			if err != nil {
				return err
			}
			if !slices.Contains(imports, name) {
				imports = append(imports, name)
			}
		}
		imported[room] = imports
		return nil
	})
	require.NoError(t, err)
	return imported
}

// Whoever opens a room is told at its door what comes in, what goes out and what is
// never known there.
func TestEveryRoomHasADoor(t *testing.T) {
	for room := range importsOfRooms(t) {
		folder := room
		if room == "main" {
			folder = "."
		}
		files, err := filepath.Glob(filepath.Join(folder, "*.go"))
		require.NoError(t, err)
		doors := 0
		for _, name := range files {
			file, err := parser.ParseFile(token.NewFileSet(), name, nil, parser.PackageClauseOnly|parser.ParseComments)
			require.NoError(t, err)
			if file.Doc != nil && !strings.HasSuffix(name, "_test.go") {
				doors++
			}
		}
		assert.Equal(t, 1, doors, "files of %s whose package has a comment", room)
	}
}

// listedFile is a file in an indented line of a package's comment.
var listedFile = regexp.MustCompile(`[a-z0-9_]+\.go\b`)

// A door that is a file of its own lists every other file of its room once, and none that is
// not there.
func TestEveryDoorListsItsFiles(t *testing.T) {
	for room := range importsOfRooms(t) {
		door, err := parser.ParseFile(token.NewFileSet(), filepath.Join(room, "doc.go"), nil, parser.PackageClauseOnly|parser.ParseComments)
		if errors.Is(err, fs.ErrNotExist) {
			continue
		}
		require.NoError(t, err)
		var listed []string
		for line := range strings.Lines(door.Doc.Text()) {
			if strings.HasPrefix(line, "\t") {
				listed = append(listed, listedFile.FindAllString(line, -1)...)
			}
		}
		for _, name := range listed {
			assert.FileExists(t, filepath.Join(room, name), "a file that %s/doc.go lists", room)
		}
		listed = slices.DeleteFunc(listed, func(name string) bool { return strings.HasSuffix(name, "_test.go") })
		files, err := filepath.Glob(filepath.Join(room, "*.go"))
		require.NoError(t, err)
		var there []string
		for _, file := range files {
			if name := filepath.Base(file); name != "doc.go" && !strings.HasSuffix(name, "_test.go") {
				there = append(there, name)
			}
		}
		assert.ElementsMatch(t, there, listed, "files of %s, and those its doc.go lists", room)
	}
}
