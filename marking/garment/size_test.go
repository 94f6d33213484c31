package garment_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// saidOf returns what is said of a pattern, each with its place.
func saidOf(t *testing.T, text string) []string {
	t.Helper()
	var all []string
	for _, r := range made.Of(t, text).Remarks {
		all = append(all, r.String())
	}
	return all
}

// A front 10 in wide and 12 in long, and a pocket of 3 by 4 in, in numbers without a unit.
func TestSizesOutOfTheCommon(t *testing.T) {
	front := func(wide, high string) string {
		return sketch.Piece("front", "bottom: 0,0 W,0\nright: W,0 W,H\ntop: W,H 0,H\nleft: 0,H 0,0")
	}
	text := func(unit, wide, high, rest string) string {
		return "unit = \"" + unit + "\"\nallowance = \"1/4 in\"\n" + sketch.Swap(front(wide, high), "W", wide, "H", high) + rest
	}
	pocket := sketch.Piece("pocket", "bottom: 0,0 3,0\nright: 3,0 3,4\ntop: 3,4 0,4\nleft: 0,4 0,0")
	const doll = "no larger than a doll's: is the unit right?"
	for _, c := range []struct {
		name, text string
		want       []string
	}{
		{"inches", text("in", "10", "12", pocket), nil},
		{"centimetres taken for millimetres", text("mm", "25", "30", ""),
			[]string{`linden.toml:3: piece.front: the largest piece, "front", is 25 mm by 30 mm, ` + doll + ` unit = "cm" would make it 25 cm by 30 cm`}},
		{"inches taken for centimetres", text("cm", "10", "12", ""),
			[]string{`linden.toml:3: piece.front: the largest piece, "front", is 10 cm by 12 cm, ` + doll + ` unit = "in" would make it 10 in by 12 in`}},
		{"a draft of quarter size", text("in", "3", "3.5", ""), []string{`linden.toml:3: piece.front: the largest piece, "front", is 3 in by 3 1/2 in, ` + doll}},
		{"just larger than 5 in", text("in", "4", "5.0625", ""), nil},
		{"for a doll", "title = \"Doll's frock\"\n" + text("in", "3", "3.5", ""), nil},
		{"a pocket alone", "unit = \"in\"\nallowance = 0.25\n" + pocket, nil},
		{"millimetres taken for inches", text("in", "250", "300", pocket),
			[]string{`linden.toml:3: piece.front: "front" is 250 in by 300 in, larger than a bed: is the unit right? unit = "mm" would make it 250 mm by 300 mm`}},
		{"the skirt of a christening gown", text("in", "110", "42", ""), nil},
		{"a circular cape", text("in", "70", "70", ""), nil},
		{"a sash", text("in", "8", "120", ""), nil},
	} {
		t.Run(c.name, func(t *testing.T) { assert.Equal(t, c.want, saidOf(t, c.text)) })
	}
}
