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
		"linden.toml:21: trim.cord: the line has corners, and no width is given: what they take is not reckoned in",
		"linden.toml:17: ruffle.frill: a ruffle no longer than its edge hangs flat; 1 1/4 times its edge is the least that hangs in folds",
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

// What may have been left out of the whole file is said first, without a line.
func TestRemarksOnWhatIsLeftOut(t *testing.T) {
	for _, c := range []struct {
		name, head string
		want       []string
	}{
		{"nothing", "unit = \"in\"\nallowance = 0.25\n", nil},
		{"the unit", "allowance = 0.25\n", []string{`linden.toml: no unit is given, so bare numbers were taken for inches; unit = "in", "cm" or "mm" says it`}},
		{"every allowance", "unit = \"in\"\n", []string{`linden.toml: no edge has an allowance or a hem, so there are no stitch lines; allowance = "3/8" at the top gives one to every edge`}},
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
