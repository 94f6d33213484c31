package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/drawing"
)

// smallBib has a line of most kinds: half of it is drawn, and opened out.
const smallBib = `
unit = "mm"
allowance = 6
[piece.bib]
fold = "centre"
print = "whole"
edge.centre.points = [[0, 0], [0, 150]]
edge.neck = {points = [[0, 150], [40, 160], [60, 190]], allowance = 5}
edge.shoulder.points = [[60, 190], [80, 180]]
edge."left side".points = [[80, 180], [90, 0]]
edge.hem = {points = [[90, 0], [0, 0]], hem = 20, turn = 5}
tuck.row = {beside = "centre", width = 3, count = 2, first = 10, spacing = 12, below = "neck", length = 50}
line."pocket line".points = [[60, 40], [80, 40]]
notch.tie = {edge = "left side", from = "hem", at = 90}
`

// What an SVG has of one small piece, line by line, with its place on the page.
func TestSVGGolden(t *testing.T) {
	file, out := filepath.Join(t.TempDir(), "bib.toml"), filepath.Join(t.TempDir(), "bib.svg")
	require.NoError(t, os.WriteFile(file, []byte(smallBib), 0o644))
	var said, errs bytes.Buffer
	require.Equal(t, 0, run([]string{"tuckmark", "sheet", file, "--pieces", "bib", "-o", out}, &said, &errs), errs.String())
	svg, err := os.ReadFile(out)
	require.NoError(t, err)
	_, piece, found := strings.Cut(string(svg), `<g id="bib">`)
	require.True(t, found, "the piece has a group")
	piece, _, found = strings.Cut(piece, "</g>\n</g>\n")
	require.True(t, found, "and it ends")
	matchGolden(t, "bib-svg.txt", `<g id="bib">`+piece)
}

// A piece that went out as an SVG, and comes in again with its edges and lines by their
// names, is the same piece: so are the lines that are worked out of it. cameBack bounds by how
// much, in mm, they lie elsewhere.
func TestSVGTakenUpAgain(t *testing.T) {
	const (
		cameBack = 0.01
		head     = "unit = \"mm\"\nallowance = 6\n[piece.bib]\n"
		rest     = `
edge.neck.allowance = 5
edge.hem.hem = 20
edge.hem.turn = 5
tuck.row = {beside = "pocket line", side = "right side", width = 3, count = 2, first = 20, gap = 2, press = "away", below = "neck", length = 50}
notch.tie = {edge = "left side", from = "hem", at = 90}
`
		drawn = `
drawn = "flat"
edge.neck.points = [[0, 150], [40, 135], [80, 150]]
edge.neck.smooth = true
edge."right side".points = [[80, 150], [90, 0]]
edge.hem.points = [[90, 0], [0, 0]]
edge."left side".points = [[0, 150], [0, 0]]
line."pocket line".points = [[20, 40], [20, 90]]
`
		taken = `
drawn = "flat"
outline = {from = "bib.svg", part = "bib", edges = ["neck", "right side", "hem", "left side"], lines = ["pocket line"]}
`
	)
	folder := t.TempDir()
	shapes := func(name, text string) map[string]drawing.Shape {
		file, out := filepath.Join(folder, name+".toml"), filepath.Join(folder, name+".svg")
		require.NoError(t, os.WriteFile(file, []byte(text), 0o644))
		var said, errs bytes.Buffer
		require.Equal(t, 0, run([]string{"tuckmark", "sheet", file, "-o", out}, &said, &errs), errs.String())
		data, err := os.ReadFile(out)
		require.NoError(t, err)
		d, err := drawing.Read(out, data)
		require.NoError(t, err)
		all := map[string]drawing.Shape{}
		for _, s := range d.Under("bib") {
			all[s.ID] = s
		}
		return all
	}
	went, came := shapes("bib", head+drawn+rest), shapes("again", head+taken+rest)
	require.NotEmpty(t, went)
	require.Len(t, came, len(went))
	for id, s := range went {
		require.Len(t, came[id].Path, len(s.Path), id)
		for k, q := range s.Path {
			assert.Less(t, q.Distance(came[id].Path[k]), cameBack, "point %d of %s", k, id)
		}
	}
}
