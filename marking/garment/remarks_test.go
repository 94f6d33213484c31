package garment_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// What is sewn on is remarked on, each at its place in the file, in the order of the
// pattern: trims before ruffles.
func TestRemarksOnWhatIsSewnOn(t *testing.T) {
	pattern := made.Of(t, "unit = \"in\"\nallowance = 0.25\n"+sketch.Front(sketch.Rect("10"))+`
[ruffle.frill]
along = "front.bottom"
fullness = 1
depth = 2
[trim.cord]
along = ["front.bottom", "front.right"]
`)
	var got []string
	for _, r := range pattern.Remarks {
		got = append(got, r.String())
		assert.True(t, r.InTable, "%s: the figures say it too", r.Text)
	}
	assert.Equal(t, []string{
		"pinafore.toml:21: trim.cord: the line has corners, and no width is given: what they take is not reckoned in",
		"pinafore.toml:17: ruffle.frill: a ruffle no longer than its edge hangs flat; 1 1/4 times its edge is the least that hangs in folds",
	}, got)
}

// Of a trim without a width it is said what of the line would take more of it; a cord is too
// thin to take any along a curve.
func TestRemarksOnTrimWithoutAWidth(t *testing.T) {
	for _, c := range []struct{ along, kind, want string }{
		{`"front.outer"`, "lace", "the line has outward curves, and no width is given: what they take is not reckoned in"},
		{`"front.outer", "front.up"`, "braid", "the line has corners and outward curves, and no width is given: what they take is not reckoned in"},
		{`"front.outer", "front.up"`, "cord", "the line has corners, and no width is given: what they take is not reckoned in"},
		{`"front.outer"`, "cord", ""},
		{`"front.up"`, "lace", ""},
	} {
		got := ""
		for _, r := range garmentOf(t, quarter, "[trim.x]\nalong = ["+c.along+"]\nkind = \""+c.kind+"\"\n").Remarks {
			if r.Key == "trim.x" {
				got += r.Text
			}
		}
		assert.Equal(t, c.want, got, "%s along %s", c.kind, c.along)
	}
}

// A fraction in which a space may be missing is asked about once, wherever it stands; what
// comes of it is reckoned as it is written.
func TestRemarksOnMissingSpaces(t *testing.T) {
	pattern := made.Of(t, `unit = "in"
allowance = 0.25
[piece.front]
[piece.front.edge.bottom]
points = [[0, 0], ["37/8", 0]]
hem = "11/8"
[piece.front.edge.rest]
points = [
  ["37/8", 0], ["37/8", "99/8"],
  ["15/16", 9], [0, 9], [0, 0]]
[ruffle.frill]
along = "front.bottom"
fullness = "13/8"
depth = "31/2 cm"
`)
	var got []string
	for _, r := range pattern.Remarks {
		got = append(got, r.String())
	}
	assert.Equal(t, []string{
		"pinafore.toml:5: piece.front.edge.bottom.points: 37/8 counts as 4 5/8; if a space is missing in it, write \"3 7/8\", here and in 2 other places",
		"pinafore.toml:6: piece.front.edge.bottom.hem: 11/8 counts as 1 3/8; if a space is missing in it, write \"1 1/8\"",
		"pinafore.toml:13: ruffle.frill.fullness: 13/8 counts as 1 5/8; if a space is missing in it, write \"1 3/8\"",
		"pinafore.toml:14: ruffle.frill.depth: 31/2 counts as 15 1/2; if a space is missing in it, write \"3 1/2\"",
	}, got)
	assert.InDelta(t, 4.625*25.4, pattern.Pieces[0].Outline.Bounds().Width(), 1e-9)
	assert.InDelta(t, 155, pattern.Ruffles[0].Depth.MM, 1e-9)
}

// What may have been left out of the whole file is said first, without a line.
func TestRemarksOnWhatIsLeftOut(t *testing.T) {
	for _, c := range []struct {
		name, head string
		want       []string
	}{
		{"nothing", "unit = \"in\"\nallowance = 0.25\n", nil},
		{"the unit", "allowance = 0.25\n", []string{`pinafore.toml: no unit is given, so bare numbers were taken for inches; unit = "in", "cm" or "mm" says it`}},
		{"every allowance", "unit = \"in\"\n", []string{`pinafore.toml: no edge has an allowance or a hem, so there are no stitch lines; allowance = "3/8" at the top gives one to every edge`}},
	} {
		t.Run(c.name, func(t *testing.T) {
			var got []string
			for _, r := range made.Of(t, c.head+sketch.Front(sketch.Rect("10"))).Remarks {
				got = append(got, r.String())
			}
			assert.Equal(t, c.want, got)
		})
	}
}
