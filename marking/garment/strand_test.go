package garment_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// Pieces that strands run along: without allowances every edge is as long as it is drawn.
const (
	sleevePiece = "left: 0,0 0,5\ncap: 0,5 3,8 9,8 12,5\nright: 12,5 12,0\nwrist: 12,0 0,0\n"
	bodiceFront = "fold = \"centre\"\ncentre: 0,0 0,8\nneck: 0,8 2,10\nshoulder: 2,10 4,9\narmhole: 4,9 5,6\nside: 5,6 5,0\nwaist: 5,0 0,0\n"
	bodiceBack  = "cut = 2\ncentre: 0,0 0,9\nneck: 0,9 2,10\nshoulder: 2,10 4,9\narmhole: 4,9 5,6\nside: 5,6 5,0\nwaist: 5,0 0,0\n"
	panelPiece  = "left: 0,0 0,9\ntop: 0,9 8,9\nright: 8,9 8,0\nhem: 8,0 0,0\n"
)

// What goes on over folds and seams is one length; what no seam joins has one each (derived).
func TestStrands(t *testing.T) {
	bodice := sketch.Piece("front", bodiceFront) + sketch.Piece("back", bodiceBack)
	const sewn = "[seam.shoulder]\njoin = [\"front.shoulder\", \"back.shoulder\"]\n[seam.side]\njoin = [\"front.side\", \"back.side\"]\n"
	const underarm = "[seam.underarm]\njoin = [\"sleeve.left\", \"sleeve.right\"]\n"
	const sides = "[seam.sides]\njoin = [\"skirt.left\", \"skirt.right\"]\n"
	for _, c := range []struct{ name, text, along, want string }{
		{"two sleeves, each closed by its underarm", sketch.Piece("sleeve", "cut = 2\n"+sleevePiece) + underarm, `["sleeve.wrist"]`, "2 x 12 in"},
		{"two sleeves in two armholes, by whatever name", bodice + sketch.Piece("puff", "cut = 2\n"+sleevePiece) + sewn +
			"[seam.under]\njoin = [\"puff.left\", \"puff.right\"]\n[seam.cap]\njoin = [\"puff.cap\", [\"front.armhole\", \"back.armhole\"]]\ngathered = true\n", `["puff.wrist"]`, "2 x 12 in"},
		{"two legs that are sewn together", sketch.Piece("drawers", "cut = 2\n"+sleevePiece) +
			"[seam.inside]\njoin = [\"drawers.left\", \"drawers.right\"]\n[seam.middle]\njoin = [\"drawers.cap\", \"drawers.cap\"]\n", `["drawers.wrist"]`, "2 x 12 in"},
		{"two panels in a round", sketch.Piece("skirt", "cut = 2\n"+panelPiece) + sides, `["skirt.hem"]`, "1 x 16 in"},
		{"six panels in a round", sketch.Piece("skirt", "cut = 6\n"+panelPiece) + sides, `["skirt.hem"]`, "1 x 48 in"},
		{"one panel", sketch.Piece("skirt", panelPiece) + sides, `["skirt.hem"]`, "1 x 8 in"},
		{"two halves that meet in a seam", sketch.Piece("skirt", "cut = 2\n"+panelPiece) + "[seam.middle]\njoin = [\"skirt.left\", \"skirt.left\"]\n", `["skirt.hem"]`, "1 x 16 in"},
		{"two halves that no seam joins", bodice + sewn, `["back.waist"]`, "2 x 5 in"},
		{"a neck, from back to back", bodice + sewn, `["front.neck", "back.neck"]`, "1 x 10 1/8 in"},
		{"two armholes", bodice + sewn, `["front.armhole", "back.armhole"]`, "2 x 6 3/8 in"},
		{"a waist over the sides", bodice + sewn, `["front.waist", "back.waist"]`, "1 x 20 in"},
		{"a neck and two armholes", bodice + sewn, `["front.neck", "back.neck", "front.armhole", "back.armhole"]`, "1 x 10 1/8 in, 2 x 6 3/8 in"},
		{"back and waist in one", bodice + sewn, `["back.centre", "front.waist", "back.waist"]`, "1 x 38 in"},
		{"a whole back between halves", sketch.Piece("front", bodiceFront) + sketch.Piece("back", "left: 0,6 0,0\nhem: 0,0 10,0\nright: 10,0 10,6\nneck: 10,6 0,6\n") +
			"[seam.side]\njoin = [[\"back.left\", \"back.right\"], \"front.side\"]\n", `["front.waist", "back.hem"]`, "1 x 20 in"},
		{"without any seam, two pieces", bodice, `["front.neck", "back.neck"]`, "1 x 10 1/8 in"},
		{"without any seam, two cuffs", sketch.Piece("cuff", "cut = 2\n"+panelPiece), `["cuff.left", "cuff.hem", "cuff.right"]`, "2 x 26 in"},
		{"lines of a piece that end in two edges", sketch.Piece("front", bodiceFront+"---\n\n[line.row]\nbeside = \"centre\"\nat = 1\n") + sketch.Piece("back", bodiceBack) + sewn,
			`["front.row"]`, "2 x 9 in"},
		{"a line over a seam", sketch.Piece("front", bodiceFront+"---\n\n[line.row]\nalong = \"waist\"\ndistance = 2\n") +
			sketch.Piece("back", bodiceBack+"---\n\n[line.row]\nalong = \"waist\"\ndistance = 2\n") + sewn, `["front.row", "back.row"]`, "1 x 20 in"},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := made.Of(t, "unit = \"in\"\nallowance = 0\n"+c.text+"[trim.lace]\nalong = "+c.along+"\n")
			var all []string
			for _, l := range p.Trims[0].Lengths {
				all = append(all, fmt.Sprintf("%d x %s", l.Times, l.Line))
			}
			assert.Equal(t, c.want, strings.Join(all, ", "))
			assert.Equal(t, p.Trims[0].Count(), p.Trims[0].Joins, "a join each")
			assert.Equal(t, p.Trims[0].LineLength.String(), lengthsOf(p.Trims[0]).String())
		})
	}
}

// lengthsOf is how long the lines of all lengths of a trim are together.
func lengthsOf(t garment.Trim) length.Amount {
	all := length.Amount{Unit: length.Inch}
	for _, l := range t.Lengths {
		all = all.Plus(l.Line.Times(l.Times))
	}
	return all
}

// Two lengths of lace have two joins, unless the file says otherwise: 11 in, and 1/2 in for each;
// of three joins two lengths have not as many, so that it is cut in one.
func TestJoinsOfSeveralLengths(t *testing.T) {
	for _, c := range []struct{ joins, lengths, total string }{
		{"", "2 x 6 in", "12 in"},
		{"joins = 4\n", "2 x 6 1/2 in", "13 in"},
		{"joins = 1\n", "1 x 11 1/2 in", "11 1/2 in"},
		{"joins = 3\n", "1 x 12 1/2 in", "12 1/2 in"},
	} {
		trim := made.Of(t, "unit = \"in\"\nallowance = 0.25\n"+sketch.Piece("cuff", "cut = 2\nbottom: 0,0 6,0\nright: 6,0 6,3\ntop: 6,3 0,3\nleft: 0,3 0,0")+
			"[trim.lace]\nalong = [\"cuff.bottom\"]\n"+c.joins).Trims[0]
		var all []string
		for _, l := range trim.Lengths {
			all = append(all, fmt.Sprintf("%d x %s", l.Times, l.Total))
		}
		assert.Equal(t, c.lengths, strings.Join(all, ", "), c.joins)
		assert.Equal(t, c.total, trim.Total.String(), c.joins)
	}
}

// Short ruffles come several out of one strip: 2 x 5 in and 1/4 in at each end are 10 1/2 in, of
// which four come out of cloth of 44 in; of 21 in and more two do not.
func TestRufflesOutOfOneStrip(t *testing.T) {
	for _, c := range []struct {
		wide, cut string
		strips    int
	}{{"5", "4", 1}, {"5", "5", 2}, {"10.75", "2", 1}, {"11", "2", 2}, {"25", "2", 4}} {
		r := made.Of(t, "unit = \"in\"\nallowance = 0\n[cloth]\nwidth = 44\n"+sketch.Piece("cuff", "cut = "+c.cut+"\n"+sketch.Rect(c.wide))+
			"[ruffle.r]\nalong = \"cuff.bottom\"\nfullness = 2\ndepth = 1\n").Ruffles[0]
		assert.Equal(t, c.strips, r.Strips, "%s of %s in", c.cut, c.wide)
	}
}
