package garment_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/garment"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
	"tuckmark/marking/source"
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
			[]string{`pinafore.toml:3: piece.front: the largest piece, "front", is 25 mm by 30 mm, ` + doll + ` unit = "cm" would make it 25 cm by 30 cm`}},
		{"inches taken for centimetres", text("cm", "10", "12", ""),
			[]string{`pinafore.toml:3: piece.front: the largest piece, "front", is 10 cm by 12 cm, ` + doll + ` unit = "in" would make it 10 in by 12 in`}},
		{"a draft of quarter size", text("in", "3", "3.5", ""), []string{`pinafore.toml:3: piece.front: the largest piece, "front", is 3 in by 3 1/2 in, ` + doll}},
		{"just larger than 5 in", text("in", "4", "5.0625", ""), nil},
		{"for a doll", "title = \"Doll's frock\"\n" + text("in", "3", "3.5", ""), nil},
		{"a pocket alone", "unit = \"in\"\nallowance = 0.25\n" + pocket, nil},
		{"millimetres taken for inches", text("in", "250", "300", pocket),
			[]string{`pinafore.toml:3: piece.front: "front" is 250 in by 300 in, larger than a bed: is the unit right? unit = "mm" would make it 250 mm by 300 mm`}},
		{"the skirt of a christening gown", text("in", "110", "42", ""), nil},
		{"a circular cape", text("in", "70", "70", ""), nil},
		{"a sash", text("in", "8", "120", ""), nil},
	} {
		t.Run(c.name, func(t *testing.T) { assert.Equal(t, c.want, saidOf(t, c.text)) })
	}
}

// Front and back are on the fold, W wide from it at the hem and under the arm, without
// allowances: the chest is 4 times W. That of a new-born child is 13 in (common practice), of one
// of a year 18 in (Holt, The Care and Feeding of Children, 1907).
func TestAGarmentThatGoesRoundNoChild(t *testing.T) {
	text := func(unit, wide, head, rest string) string {
		half := "fold = \"centre\"\n" + strings.ReplaceAll("centre: 0,0 0,24\nneck: 0,24 1,25\nshoulder: 1,25 2.5,24\narmhole: 2.5,24 2.5,20.25 W,20\nside: W,20 W,0\nhem: W,0 0,0 | hem = \"1/4 in\"", "W", wide)
		return head + "unit = \"" + unit + "\"\n" + sketch.Piece("front", half) + sketch.Piece("back", half) +
			"[seam.side]\njoin = [\"front.side\", \"back.side\"]\n[seam.shoulder]\njoin = [\"front.shoulder\", \"back.shoulder\"]\n" + rest
	}
	// The yoke is half as wide as what hangs from it, whose armhole is straight; 14 in to each side.
	half := "fold = \"centre\"\ncentre: 0,0 0,20\ntop: 0,20 10,20\narmhole: 10,20 14,17\nside: 14,17 14,0\nhem: 14,0 0,0 | hem = 1"
	yoke := "fold = \"centre\"\ncentre: 0,0 0,3\nneck: 0,3 2,4\nshoulder: 2,4 5,3\narmhole: 5,3 5,0\nlower: 5,0 0,0"
	gatheredToAYoke := "unit = \"in\"\n" + sketch.Piece("front", half) + sketch.Piece("back", half) + sketch.Piece("yoke", yoke) + sketch.Piece("backyoke", yoke) +
		"[seam.side]\njoin = [\"front.side\", \"back.side\"]\n[seam.yoke]\njoin = [\"front.top\", \"yoke.lower\"]\ngathered = true\n" +
		"[seam.back]\njoin = [\"back.top\", \"backyoke.lower\"]\ngathered = true\n"
	const chest = "[fit]\nchest = 21\n"
	for _, c := range []struct {
		name, text string
		want       []string
	}{
		{"inches taken for centimetres", text("cm", "5.5", "", ""),
			[]string{`pinafore.toml:1: unit: the finished chest, 22 cm, would fit a doll, for that of a new-born child is about 33 cm: is the unit right? unit = "in" would make it 22 in`}},
		{"23.2 cm of no size", text("cm", "5.8", "", ""), nil},
		{"23.2 cm by months", text("cm", "5.8", "size = \"18 months\"\n", ""),
			[]string{`pinafore.toml:2: unit: the finished chest, 23.2 cm, would fit a doll, for that of a new-born child is about 33 cm: is the unit right? unit = "in" would make it 23 3/16 in`}},
		{"34 cm by months", text("cm", "8.5", "size = \"3 months\"\n", ""), nil},
		{"for one born too soon", text("cm", "5.5", "title = \"Gown, premature\"\n", ""), nil},
		{"for a doll", text("cm", "5.5", "size = \"18 in doll\"\n", ""), nil},
		{"no other unit would do", text("in", "4.125", "size = \"3 years\"\n", ""), nil},
		{"half of what was meant", text("in", "3", "size = \"3 years\"\n", ""),
			[]string{`pinafore.toml:2: unit: the finished chest, 12 in, would fit a doll, for that of a new-born child is about 13 in: is the unit right?`}},
	} {
		t.Run(c.name, func(t *testing.T) {
			var got []string
			for _, one := range saidOf(t, c.text) {
				if strings.Contains(one, "doll") {
					got = append(got, one)
				}
			}
			assert.Equal(t, c.want, got)
		})
	}
	for _, c := range []struct {
		name, text string
		want       []string
	}{
		{"centimetres taken for inches", text("in", "15.9375", "size = \"2 years\"\n", ""),
			[]string{`pinafore.toml:2: unit: the finished chest, 63 3/4 in, is that of no child: is the unit right? unit = "cm" would make it 63.8 cm`}},
		{"as wide as a child's is at most", text("in", "12", "", ""), nil},
		{"a little wider", text("in", "12.125", "", ""),
			[]string{`pinafore.toml:1: unit: the finished chest, 48 1/2 in, is that of no child: is the unit right? unit = "cm" would make it 48.5 cm`}},
		{"a bishop", text("in", "17.5", "title = \"Bishop dress\"\n", ""), nil},
		{"the child's", text("cm", "15", "", "[fit]\nchest = 530\n"),
			[]string{`pinafore.toml:49: fit.chest: a chest of 530 cm is that of no child: is the unit right? unit = "mm" would make it 530 mm`}},
		{"a yoke that a wide skirt is gathered to", gatheredToAYoke, nil},
		{"and one that is not", strings.ReplaceAll(gatheredToAYoke, "gathered = true\n", ""),
			[]string{`pinafore.toml:1: unit: the finished chest, 56 in, is that of no child: is the unit right? unit = "cm" would make it 56 cm`}},
	} {
		t.Run(c.name, func(t *testing.T) {
			var got []string
			for _, one := range saidOf(t, c.text) {
				if strings.Contains(one, "no child") {
					got = append(got, one)
				}
			}
			assert.Equal(t, c.want, got)
		})
	}
	said := saidOf(t, text("cm", "5.5", "", chest))
	assert.Contains(t, said, `pinafore.toml:49: fit.chest: a chest of 21 cm is a doll's, for that of a new-born child is about 33 cm: is the unit right? unit = "in" would make it 21 in`)
	assert.NotContains(t, strings.Join(said, "\n"), "would fit a doll")
}

// What a drawing gives has its own size: the unit of the file does not make it another.
func TestASizeOutOfTheCommonFromADrawing(t *testing.T) {
	spec, err := source.Read("f.toml", []byte("unit = \"cm\"\nallowance = 1\n"+sketch.Piece("front", "bottom: 0,0 10,0\nright: 10,0 10,12\ntop: 10,12 0,12\nleft: 0,12 0,0")), sketch.HasLetter)
	require.NoError(t, err)
	spec.Pieces[0].FromDrawing = true
	p, err := garment.Check(spec)
	require.NoError(t, err)
	var said []string
	for _, r := range p.Remarks {
		said = append(said, r.Text)
	}
	assert.Equal(t, []string{`the largest piece, "front", is 10 cm by 12 cm, no larger than a doll's: is the drawing saved in its real size, width and height in mm or in?`}, said)
}
