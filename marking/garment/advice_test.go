package garment_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/length"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// Where a difference comes from, and what to move: rectangles with seams of 1/2 in and
// trapezoids, worked by hand.
func TestAdviceOnSeams(t *testing.T) {
	// Sides go down from the top, 8 in, to a hem of 2 in with a turn of 1/4 in: sewn, 5 1/4 in.
	const (
		hemmed = "bottom: 0,0 10,0 | hem = 2; turn = 0.25\nright: 10,0 10,8\ntop: 10,8 0,8\nleft: 0,8 0,0"
		sides  = `join = ["front.right", "back.right"]`
		hem    = `take 2 1/4 in off back at "bottom", or add it to front`
	)
	pleat := func(depth string) string {
		return "\n---\n\n[pleat.p]\nedge = \"right\"\nfrom = \"top\"\nat = 4\ndepth = " + depth + "\ntoward = \"top\"\nlength = 2\n"
	}
	for _, c := range []struct{ name, front, back, seam, want string }{
		{"they match", sketch.Rect("10"), sketch.Rect("10"), sketch.Tops, ""},
		{"no cause", sketch.Rect("10.2"), sketch.Rect("10"), sketch.Tops, `take 3/16 in off front at "left", or add it to back; or allow an ease of 3/16 in`},
		// Sewn 6.045 in and 6.33 in, which are read as 6 1/16 in and 6 5/16 in.
		{"by the exact difference", sketch.Rect("7.045"), sketch.Rect("7.33"), sketch.Tops, `take 5/16 in off back at "left", or add it to front; or allow an ease of 5/16 in, back named first`},
		{"more than ease", sketch.Rect("11.2"), sketch.Rect("10"), sketch.Tops, `take 1 3/16 in off front at "left", or add it to back`},
		{"beyond the ease", sketch.Rect("10.5"), sketch.Rect("10"), sketch.Tops + "\nease = \"3/8\"\nwithin = 0", `that is as much as the allowance of "right": is back drawn without it? If not, take 1/8 in off front at "left", or add it to back; or allow an ease of 1/2 in`},
		{"ease on the other side", sketch.Rect("10"), sketch.Rect("10.25"), sketch.Tops + "\nease = \"3/8\"", "to have back eased in, name it first"},

		// 2 x 1/2 in.
		{"a pleat without room", hemmed + pleat("0.5"), hemmed, sides, `its tucks and pleats take as much of front: is it drawn without room for them? If not, take 1 in off back at "bottom", or add it to front`},
		{"pleats of two depths", hemmed + pleat("0.5"), hemmed + pleat("0.25"), sides,
			`tucks and pleats take 1 in of front and 1/2 in of back; take 1/2 in off back at "bottom", or add it to front`},
		{"tucks that have room twice", "drawn = \"finished\"\n" + sketch.Swap(hemmed, "8", "9") + "\n---\n" + sketch.Rows("tuck t bottom 1/4 2 4"), hemmed, sides,
			`its tucks and pleats take as much of front: is it drawn with room for them, and so not finished? If not, take 1 in off front at "bottom", or add it to back`},

		{"a hem of one alone", hemmed, sketch.Rect("10"), sides,
			`at "bottom" front has a hem of 2 in with a turn of 1/4 in, and back has an allowance of 1/2 in; take 1 3/4 in off back at "bottom", or add it to front`},
		{"a turn of one alone", hemmed, strings.Replace(hemmed, "; turn = 0.25", "", 1), sides,
			`at "bottom" front has a hem of 2 in with a turn of 1/4 in, and back has a hem of 2 in without a turn; take 1/4 in off back at "bottom", or add it to front; or allow an ease of 1/4 in, back named first`},
		{"an allowance at one end", sketch.Rect("10"), strings.Replace(sketch.Rect("10"), "left: 0,8 0,0", "left: 0,8 0,0 | allowance = 0", 1), sketch.Tops,
			`at "left" front has an allowance of 1/2 in, and back has no allowance; take 1/2 in off back at "left", or add it to front; or allow an ease of 1/2 in, back named first`},

		{"drawn without the hem", sketch.Swap(hemmed, "8", "5.75"), hemmed, sides,
			`that is as much as the hem and its turn at "bottom": is front drawn without it? If not, ` + hem + ""},
		{"drawn without its allowances", sketch.Rect("9"), sketch.Rect("10"), sketch.Tops,
			`that is as much as the allowances at its two ends: is front drawn without them? If not, take 1 in off back at "left", or add it to front`},

		{"corners", sketch.Outward, sketch.Swap(sketch.Inward45, "3,0", "2,0", "11,8", "10,8"), sketch.Tops,
			`the corners take 1 3/16 in of back and 3/16 in of front at "right"; take 1 in off front at "left", or add it to back`},
		{"whole inches", sketch.Rect("12"), sketch.Rect("10"), sketch.Tops, `that is 2 whole inches: look for a slip in its points; take 2 in off front at "left", or add it to back`},
		{"gathers", sketch.Rect("16.3"), sketch.Rect("10"), sketch.Tops, `if the longer side is to be gathered, 1.7 times as long, make the seam a gathered one; else take 6 5/16 in off front at "left", or add it to back`},
		// The right end is at the hem, and the left one at the fold.
		{"never at the centre", "fold = \"left\"\n" + sketch.Rect("10.2"), "fold = \"left\"\n" + sketch.Rect("10"), sketch.Tops,
			`take 3/16 in off front at "right", or add it to back; or allow an ease of 3/16 in`},
	} {
		t.Run(c.name, func(t *testing.T) {
			s := made.Seam(t, sketch.Joined("0.5", c.front, c.back, c.seam))
			assert.Equal(t, c.want, s.Advice(length.Amount.String))
		})
	}
}

// The longer edge is 16.3 - 1 = 15.3 in sewn, the shorter 9 in: 1.7 times; 3.07 times at 28.65.
func TestGathersAreAskedAfterOnlyWhereTheyAreLikely(t *testing.T) {
	file := func(key, edge, wide, other, of string) string {
		return sketch.Sewn("0.5", fmt.Sprintf("join = [%q, %q]", key+"."+edge, other+"."+of),
			sketch.Piece(key, strings.Replace(sketch.Rect(wide), "top:", edge+":", 1)), sketch.Piece(other, strings.Replace(sketch.Rect("10"), "top:", of+":", 1)))
	}
	const asked = "if the longer side is to be gathered, 1.7 times as long, make the seam a gathered one; else take 6 5/16 in off "
	const plain = "take 6 5/16 in off "
	for _, c := range []struct{ name, text, begins string }{
		{"a skirt to a bodice", file("skirt", "waist", "16.3", "bodice", "waist"), asked},
		{"a skirt to a yoke, its edge called otherwise", file("skirt", "upper_edge", "16.3", "yoke", "lower_edge"), asked},
		{"the cap of a sleeve", file("sleeve", "cap", "16.3", "front", "armhole"), asked},
		{"a sleeve by its armhole", file("sleeve", "armhole", "16.3", "front", "armhole"), asked},
		{"a sleeve to a cuff", file("sleeve", "wrist_edge", "16.3", "cuff", "edge"), asked},
		{"the shoulders of two yokes", file("back", "shoulder", "16.3", "yoke", "shoulder"), plain},
		{"a sleeve to a gusset", file("front", "gusset_sleeve", "16.3", "gusset", "front_sleeve"), plain},
		{"a collar to a yoke", file("collar", "neck", "16.3", "yoke", "neck"), plain},
		{"a yoke to a skirt", file("yoke", "foot", "16.3", "skirt", "top"), plain},
		{"two edges that tell nothing", file("front", "inner", "16.3", "back", "inner"), plain},
		{"more than draws up", file("skirt", "waist", "28.65", "bodice", "waist"), "take 18 5/8 in off "},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := made.Seam(t, c.text).Advice(length.Amount.String)
			assert.True(t, strings.HasPrefix(got, c.begins), got)
		})
	}
}

// An armhole is 7 in front and 7 in back; the cap of 14 is joined to the front alone.
func TestAdviceOnAnEdgeThatIsForgotten(t *testing.T) {
	body := "armhole: 10,0 10,8\ntop: 10,8 0,8\ncentre: 0,8 0,0\nhem: 0,0 10,0"
	text := sketch.Sewn("0.5", `join = ["sleeve.cap", "front.armhole"]`, sketch.Piece("sleeve", "cut = 2\ncap: 15,6 0,6\nleft: 0,6 0,0\nwrist: 0,0 15,0\nright: 15,0 15,6"),
		sketch.Piece("front", "cut = 2\n"+body), sketch.Piece("back", "cut = 2\n"+body))
	assert.Equal(t, "that is as much as the armhole of back, which no seam joins: does it belong to that side?", made.Seam(t, text).Advice(length.Amount.String))
}

// In millimetres a slip is one of whole centimetres.
func TestAdviceInMillimetres(t *testing.T) {
	text := strings.Replace(sketch.Joined("1", sketch.Rect("210"), sketch.Rect("200"), sketch.Tops), `"in"`, `"mm"`, 1)
	text = strings.NewReplacer(",8]", ",80]").Replace(text)
	assert.Equal(t, `that is a whole centimetre: look for a slip in its points; take 10 mm off front at "left", or add it to back; or allow an ease of 10 mm`,
		made.Seam(t, text).Advice(length.Amount.String))
}
