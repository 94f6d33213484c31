package piece_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

func TestMistakesInAPattern(t *testing.T) {
	for _, c := range []struct {
		name, allowance, text string
		want                  string // without the name of the file
	}{
		{"a gap", "0", sketch.Swap(sketch.Box, "right: 4,0 4,3", "right: 4,0.25 4,3"),
			`4: piece.front.edge.bottom: the outline is open between "bottom" and "right": their ends at (4 in, 0 in) and, in line 7, (4 in, 1/4 in) are 1/4 in apart
hint: give both edges the same point for their corner, or add the edge that is missing between them`},
		{"a gap too narrow to read", "0", sketch.Swap(sketch.Box, "right: 4,0 4,3", "right: 4,0.01 4,3"),
			`4: piece.front.edge.bottom: the outline is open between "bottom" and "right": their ends at (4 in, 0 in) and, in line 7, (4 in, 0 in) are less than 1/16 in apart
hint: give both edges the same point for their corner, or add the edge that is missing between them`},
		{"two gaps", "0", sketch.Swap(sketch.Box, "right: 4,0 4,3", "right: 4,0.25 4,2.5"),
			`4: piece.front.edge.bottom: the outline is open between "bottom" and "right": their ends at (4 in, 0 in) and, in line 7, (4 in, 1/4 in) are 1/4 in apart
hint: give both edges the same point for their corner, or add the edge that is missing between them
7: piece.front.edge.right: the outline is open between "right" and "top": their ends at (4 in, 2 1/2 in) and, in line 10, (4 in, 3 in) are 1/2 in apart
hint: give both edges the same point for their corner, or add the edge that is missing between them`},
		{"a gap that a space closes", "0", `bottom: 0,0 3.875,0
right: "37/8",0 3.875,3
rest: 3.875,3 0,3 0,0`,
			`4: piece.front.edge.bottom: the outline is open between "bottom" and "right": their ends at (3 7/8 in, 0 in) and, in line 7, (4 5/8 in, 0 in) are 3/4 in apart
hint: a space may be missing: with "3 7/8" for 37/8 the two ends meet`},
		{"a gap that two spaces close, beside an end that is nearer", "0", `bottom: 0,0 "33/4",0
right: 3.75,0.125 3.75,3
more: 8.25,0.25 "37/8",0.5
rest: 3.75,3 0,3 0,0`,
			`4: piece.front.edge.bottom: the outline is open between "bottom" and "more": their ends at (8 1/4 in, 0 in) and, in line 10, (8 1/4 in, 1/4 in) are 1/4 in apart
hint: give both edges the same point for their corner, or add the edge that is missing between them
7: piece.front.edge.right: the outline is open between "right" and "more": their ends at (3 3/4 in, 1/8 in) and, in line 10, (4 5/8 in, 1/2 in) are 15/16 in apart
hint: give both edges the same point for their corner, or add the edge that is missing between them`},
		{"a gap across which each end lacks a space", "0", `bottom: 0,0 "33/4","11/8"
right: 3.75,"11/8" 3.75,3
rest: 3.75,3 0,3 0,0`,
			`4: piece.front.edge.bottom: the outline is open between "bottom" and "right": their ends at (8 1/4 in, 1 3/8 in) and, in line 7, (3 3/4 in, 1 3/8 in) are 4 1/2 in apart
hint: a space may be missing: with "3 3/4" for 33/4 the two ends meet`},
		{"a gap that two spaces close", "0", `bottom: 0,0 "33/4","11/8"
right: 3.75,1.125 3.75,3
rest: 3.75,3 0,3 0,0`,
			`4: piece.front.edge.bottom: the outline is open between "bottom" and "right": their ends at (8 1/4 in, 1 3/8 in) and, in line 7, (3 3/4 in, 1 1/8 in) are 4 1/2 in apart
hint: a space may be missing: with "3 3/4" for 33/4 and "1 1/8" for 11/8 the two ends meet`},
		{"a gap that a space in a step closes", "0", `bottom: 0,0 4,0
right: 4,0 4,3.875
---
[piece.front.edge.rest]
points = [[0, 0], "up 37/8", "right 4"]`,
			`7: piece.front.edge.right: the outline is open between "right" and "rest": their ends at (4 in, 3 7/8 in) and, in line 10, (4 in, 4 5/8 in) are 3/4 in apart
hint: a space may be missing: with "3 7/8" for 37/8 the two ends meet`},
		{"edges that cross, and may not with a space", "0", `bottom: 0,0 4,0
right: 4,0 "41/2",1.5 4,3
rest: 4,3 10,2 0,4 0,0`,
			`6: piece.front.edge.right: the outline crosses or touches itself: "right" and "rest" meet at (5 13/16 in, 2 13/16 in)
hint: a number may be wrong, or two points stand in the wrong order; is a space missing, "4 1/2" for 41/2?`},
		{"an edge missing", "0", "bottom: 0,0 4,0\nright: 4,0 4,3\ntop: 4,3 0,3",
			`4: piece.front.edge.bottom: the outline is open between "bottom" and "top": their ends at (0 in, 0 in) and, in line 10, (0 in, 3 in) are 3 in apart
hint: give both edges the same point for their corner, or add the edge that is missing between them`},
		{"one edge alone", "0", "bottom: 0,0 4,0",
			`4: piece.front.edge.bottom: the outline is open: no other edge ends at (0 in, 0 in)
hint: every corner is shared by two edges
4: piece.front.edge.bottom: the outline is open: no other edge ends at (4 in, 0 in)
hint: every corner is shared by two edges`},
		{"three edges in one corner", "0", sketch.Box + "\nmore: 4,3 5,3",
			`6: piece.front.edge.right: more than two edges meet in the corner at (4 in, 3 in): "right", "top" and "more"
hint: every corner is shared by two edges
16: piece.front.edge.more: the outline is open: no other edge ends at (5 in, 3 in)
hint: every corner is shared by two edges`},
		{"two outlines", "0", sketch.Box + "\na: 10,0 14,0\nb: 14,0 12,3 10,0",
			`15: piece.front.edge.a: the edge does not belong to the outline that "bottom" belongs to
hint: a piece has one outline; make the other one a piece of its own`},
		{"an edge that closes", "0", "round: 0,0 4,0 4,4 0,0",
			`3: piece.front.edge.round: the edge comes back to its own beginning
hint: divide it into two edges, so that each has two ends`},
		{"the same point twice", "0", sketch.Swap(sketch.Box, "4,0 4,3", "4,0 4,2 4,2 4,3"),
			`7: piece.front.edge.right: points 2 and 3 are the same
hint: take one of them out`},
		{"the same point twice, in two edges", "0", sketch.Swap(sketch.Box, "4,0 4,3", "4,0 4,2 4,2 4,3", "0,0 4,0", "0,0 0,0 4,0"),
			`4: piece.front.edge.bottom: points 1 and 2 are the same
hint: take one of them out
7: piece.front.edge.right: points 2 and 3 are the same
hint: take one of them out`},
		{"edges that cross", "0", "bottom: 0,0 4,0\nright: 4,0 1,4\ntop: 1,4 4,4\nleft: 4,4 0,0",
			`6: piece.front.edge.right: the outline crosses or touches itself: "right" and "left" meet at (2 5/16 in, 2 5/16 in)
hint: a number may be wrong, or two points stand in the wrong order`},
		{"an edge that crosses itself", "0", "loop: 0,0 4,0 2,2 2,-2 5,-2\nrest: 5,-2 8,5 0,5 0,0",
			`3: piece.front.edge.loop: the edge crosses or touches itself at (2 in, 0 in)
hint: a number may be wrong, or two points stand in the wrong order`},
		{"nothing inside", "0", "bottom: 0,0 0.01,0\nrest: 0.01,0 0,0.01 0,0",
			`3: piece.front.edge.bottom: the outline goes round nothing
hint: is the unit the right one?`},
		{"a fold that is no edge", "0", "fold = \"centre\"\n" + sketch.Box,
			`3: piece.front.fold: there is no edge "centre" in this piece
hint: there is "bottom", "right", "top", "left"`},
		{"a fold that bends", "0", "fold = \"left\"\n" + sketch.Swap(sketch.Box, "left: 0,3 0,0", "left: 0,3 0.5,1.5 0,0"),
			`13: piece.front.edge.left: the edge lies on the fold but is not straight
hint: cloth folds along a straight line; give this edge two points`},
		{"an allowance on the fold", "0", "fold = \"left\"\n" + sketch.Box + " | allowance = 0.5",
			`13: piece.front.edge.left: the edge lies on the fold of the cloth, where nothing is sewn
hint: leave its allowance and hem out; allowance = 0 takes away what it has of another piece`},
		{"an allowance wider than the piece", "5", sketch.Box,
			`3: piece.front.edge.bottom: an allowance of 5 in leaves nothing of the piece along this edge
hint: make it narrower; the allowance in line 1 is for every edge that gives none
6: piece.front.edge.right: an allowance of 5 in leaves nothing of the piece along this edge
hint: make it narrower; the allowance in line 1 is for every edge that gives none
9: piece.front.edge.top: an allowance of 5 in leaves nothing of the piece along this edge
hint: make it narrower; the allowance in line 1 is for every edge that gives none
12: piece.front.edge.left: an allowance of 5 in leaves nothing of the piece along this edge
hint: make it narrower; the allowance in line 1 is for every edge that gives none`},
		{"an allowance as wide as the piece", "3", sketch.Swap(sketch.Box, "4,0 4,3", "4,0 4,3 | allowance = 0", "left: 0,3 0,0", "left: 0,3 0,0 | allowance = 0"),
			`3: piece.front.edge.bottom: an allowance of 3 in leaves nothing of the piece along this edge
hint: make it narrower; the allowance in line 1 is for every edge that gives none
9: piece.front.edge.top: an allowance of 3 in leaves nothing of the piece along this edge
hint: make it narrower; the allowance in line 1 is for every edge that gives none`},
		{"allowances that meet", "1.6", sketch.Box,
			`6: piece.front.edge.right: the allowances of "bottom" and "top" leave nothing of this edge, which is 3 in long, to be sewn
hint: make their allowances narrower or this edge longer; a short edge may also be made part of the one beside it; the allowance in line 1 is for every edge that gives none
12: piece.front.edge.left: the allowances of "top" and "bottom" leave nothing of this edge, which is 3 in long, to be sewn
hint: make their allowances narrower or this edge longer; a short edge may also be made part of the one beside it; the allowance in line 1 is for every edge that gives none`},
		{"allowances that meet on a piece of 1/2 in", "0.25", "bottom: 0,0 0.75,0\nright: 0.75,0 0.75,0.5\ntop: 0.75,0.5 0,0.5\nleft: 0,0.5 0,0",
			`6: piece.front.edge.right: the allowances of "bottom" and "top" leave nothing of this edge, which is 1/2 in long, to be sewn
hint: make their allowances narrower or this edge longer; a short edge may also be made part of the one beside it; the allowance in line 1 is for every edge that gives none; or is the unit right? all that is drawn of this piece is 3/4 in by 1/2 in
12: piece.front.edge.left: the allowances of "top" and "bottom" leave nothing of this edge, which is 1/2 in long, to be sewn
hint: make their allowances narrower or this edge longer; a short edge may also be made part of the one beside it; the allowance in line 1 is for every edge that gives none; or is the unit right? all that is drawn of this piece is 3/4 in by 1/2 in`},
		{"an allowance wider than a piece of 1/2 in", "1", "bottom: 0,0 0.5,0 | allowance = 0\nright: 0.5,0 0.5,0.5 | allowance = 0\ntop: 0.5,0.5 0,0.5\nleft: 0,0.5 0,0 | allowance = 0",
			`9: piece.front.edge.top: an allowance of 1 in leaves nothing of the piece along this edge
hint: make it narrower; the allowance in line 1 is for every edge that gives none; or is the unit right? all that is drawn of this piece is 1/2 in by 1/2 in`},
		{"a strap too narrow for its allowances", "0.375", "neck: 2,10 2,14\nshoulder: 2,14 2.625,14\narmhole: 2.625,14 2.625,10 6,9\nrest: 6,9 6,0 0,0 0,10 2,10",
			`6: piece.front.edge.shoulder: the allowances of "armhole" and "neck" leave nothing of this edge, which is 5/8 in long, to be sewn
hint: make their allowances narrower or this edge longer; a short edge may also be made part of the one beside it; the allowance in line 1 is for every edge that gives none`},
		{"a strap that narrows", "0.375", "neck: 1.5,10 2.3,12 2,14\nshoulder: 2,14 3.5,14\narmhole: 3.5,14 2.9,12 6,9\nrest: 6,9 6,0 0,0 0,10 1.5,10",
			`9: piece.front.edge.armhole: the allowances of "armhole" and "neck", 3/8 in and 3/8 in, leave nothing between them at (2 5/8 in, 11 3/4 in): the edges come within 5/8 in of each other
hint: make the allowances narrower, or the piece wider there; the allowance in line 1 is for every edge that gives none`},
		{"a waist in one edge", "0.5", "edge: 3,2.7 0,3 0,0 10,0 10,3 7,2.7 | allowance = 0\nwaist: 7,2.7 6,3 5,2.5 4,3 3,2.7 | allowance = 2.6",
			`6: piece.front.edge.waist: an allowance of 2.6 in is wider than the piece: the line inside this edge leaves it at (5 13/16 in, 0 in)
hint: make it narrower, or the piece wider there`},
		{"a belly behind a narrow place", "0", "edge: 0,6 3,6 3,4 1,4 1,0 6,0 6,4 3.4,4 3.4,6 7,6 | allowance = 0.3\nrest: 7,6 7,9 0,9 0,6",
			`3: piece.front.edge.edge: an allowance of 0.3 in is too wide: the line inside this edge meets itself at (3 5/16 in, 6 5/16 in)
hint: make it narrower, or the piece wider there`},
		{"a line along no edge", "0.25", sketch.Box + "\n---\n\n[line.rule]\nalong = \"rihgt\"\ndistance = 1",
			`17: piece.front.line.rule.along: there is no edge "rihgt" in this piece
hint: did you mean "right"?`},
		{"a line too far inside", "0.25", sketch.Box + "\n---\n\n[line.rule]\nalong = \"right\"\ndistance = 4.5",
			`16: piece.front.line.rule: a distance of 4 1/2 in leaves nothing of the piece along this edge
hint: make it narrower`},
		{"a line with a point outside", "0.25", sketch.Box + "\n---\n\n[line.rule]\npoints = [[1, 1], [5, 1]]",
			`17: piece.front.line.rule.points: point 2, (5 in, 1 in), lies outside the piece by 1 in
hint: is a number wrong? x comes first, then y; a line that is to end at that edge has to = "right"`},
		{"a notch beyond the edge", "0.25", sketch.Box + "\n---\n\n[notch.one]\nedge = \"right\"\nfrom = \"top\"\nat = 3.5",
			`19: piece.front.notch.one.at: the notch leaves "right": it lies 3 1/2 in from "top", and the edge is 3 in long
hint: measure from the other corner, or from another edge`},
		{"a notch from an edge that is not next", "0.25", sketch.Box + "\n---\n\n[notch.one]\nedge = \"right\"\nfrom = \"left\"\nat = 1",
			`18: piece.front.notch.one.from: distances along "right" start at a corner with an edge next to it, and "left" is not
hint: from is "bottom" or "top"`},
		{"a grain line along no edge", "0.25", "grain = \"lfet\"\n" + sketch.Box,
			`3: piece.front.grain: there is no edge or line "lfet" in this piece
hint: did you mean "left"?`},
		{"a grain line outside", "0.25", "grain = [[1, 1], [1, 7]]\n" + sketch.Box,
			`3: piece.front.grain: point 2, (1 in, 7 in), lies outside the piece by 4 in
hint: is a number wrong? x comes first, then y`},
		{"tucks that overlap", "0.375", sketch.Yoke("spacing = \"3/8\"", "spacing = \"3/16\""),
			`20: piece.front.tuck.yoke: the tucks overlap: their fold lines lie 3/16 in apart, and each takes up 1/4 in
hint: fold lines of tucks that just touch lie 3/8 in apart`},
		{"a first tuck across the fold", "0.375", sketch.Yoke("first = \"3/8\"", "first = \"1/16\""),
			`20: piece.front.tuck.yoke: the first tuck crosses "centre front": its fold line lies 1/16 in from it and its stitching 1/8 in nearer
hint: give first at least 1/8 in`},
		{"tucks that leave the piece", "0.375", sketch.Yoke("count = 6", "count = 40", "below = \"neck\"", "", "length = \"2 1/8\"", ""),
			`20: piece.front.tuck.yoke: tuck 16 of 40 leaves the piece: it takes up the cloth from 5 7/8 in to 6 1/8 in from "centre front", and the piece ends at 6 in
hint: the first 14 fit; tuck 15 lies in the seam of "side"`},
		{"tucks that the cloth is too low for", "0.375", sketch.Yoke("count = 6", "count = 20", "shoulder: 2.5,12 5,11.5\nside: 5,11.5 6,0", "shoulder: 2.5,12 4,11.5\narmhole: 4,11.5 4,6 6,5\nside: 6,5 6,0"),
			`23: piece.front.tuck.yoke: tuck 11 of 20 has no cloth: 4 1/8 in from "centre front" the piece begins 3 11/16 in below the stitch line of "neck", and the tucks are to end 2 1/8 in below it
hint: the first 9 fit; tuck 10 lies in the seam of "armhole"`},
		{"a turn deeper than its hem", "0", sketch.Swap(sketch.Box, "left: 0,3 0,0", "left: 0,3 0,0 | hem = 0.5; turn = 0.75"),
			`15: piece.front.edge.left.turn: a turn of 3/4 in is deeper than the hem of 1/2 in
hint: the turn is folded under inside the hem; a hem turned twice alike has a turn as deep as itself`},
		{"an end line outside", "0.375", sketch.Yoke("length = \"2 1/8\"", "length = 15"),
			`27: piece.front.tuck.yoke.length: the end line lies outside the piece: at tuck 1, 3/8 in from "centre front", the cloth ends 9 5/8 in below the stitch line of "neck", and the tucks are to end 15 in below it
hint: tucks end on the piece, below the edge they begin at`},
		{"tucks below an edge that never meets the base", "0.375", sketch.Yoke("below = \"neck\"", "below = \"shoulder\""),
			`26: piece.front.tuck.yoke.below: the stitch line of "shoulder" does not meet "centre front", so nothing can be measured from there
hint: name the edge at whose stitch line the tucks begin`},
		{"tucks beside a curved edge", "0.375", sketch.Yoke("beside = \"centre front\"", "beside = \"neck\""),
			`21: piece.front.tuck.yoke.beside: "neck" is not straight: it bends by 15/16 in, and cloth folds along a straight line only
hint: name a straight edge, or a straight line of the piece`},
		{"tucks beside nothing", "0.375", sketch.Yoke("beside = \"centre front\"", "beside = \"center front\""),
			`21: piece.front.tuck.yoke.beside: there is no edge or line "center front" in this piece
hint: did you mean "centre front"?`},
		{"tucks on either side of a line", "0.375", sketch.Yoke("beside = \"centre front\"", "beside = \"rule\"") + "\n[line.rule]\npoints = [[2, 1], [2, 9]]\n",
			`21: piece.front.tuck.yoke.beside: "rule" has cloth on both sides, and nothing says on which of them the tucks lie
hint: add side = "..." with the name of an edge on that side`},
		{"two sets that overlap", "0.375", sketch.Yoke() + "\n[tuck.more]\nbeside = \"centre front\"\nwidth = \"1/4\"\ncount = 1\nfirst = 2.5",
			`29: piece.front.tuck.more: tuck 1 takes up cloth that tuck 6 of "yoke" takes up already
hint: move one of the two, or make it smaller`},
		{"pleats that overlap", "0", sketch.Pleated("toward = \"side\"", "toward = \"side\"\ncount = 2\nspacing = 0.5"),
			`19: piece.front.pleat.underarm: the pleats overlap: their fold lines lie 1/2 in apart, and each takes up 3/4 in
hint: pleats that just touch have their fold lines three depths apart`},
		{"a pleat past the end of its edge", "0", sketch.Pleated("at = \"1 1/8\"", "at = \"1/2\""),
			`19: piece.front.pleat.underarm: the pleat leaves "armhole": its fold line lies 1/2 in and its placement line -1/4 in from "side", and the edge is 3 9/16 in long
hint: move the pleat, or turn it the other way`},
		{"a pleat beyond its edge", "0", sketch.Pleated("at = \"1 1/8\"", "at = 9"),
			`19: piece.front.pleat.underarm: the pleat leaves "armhole": its fold line lies 9 in and its placement line 8 1/4 in from "side", and the edge is 3 9/16 in long
hint: move the pleat, or turn it the other way`},
		{"a pleat that leaves the piece", "0", sketch.Pleated("length = \"1 1/2\"", "length = 7"),
			`25: piece.front.pleat.underarm.length: the pleat leaves the piece by 1 in: its lines are 7 in long
hint: make the pleat shorter`},
		{"a pleat toward nothing beside it", "0", sketch.Pleated("toward = \"side\"", "toward = \"hem\""),
			`24: piece.front.pleat.underarm.toward: a pleat in "armhole" cannot be folded toward "hem", which is not next to it
hint: toward is "side" or "shoulder"`},
		{"two pleats in one place", "0", sketch.Pleated() + "\n[pleat.again]\nedge = \"armhole\"\nfrom = \"side\"\nat = 1\ndepth = \"1/4\"\ntoward = \"side\"\nlength = 1",
			`27: piece.front.pleat.again: the pleat takes up cloth that the pleat "underarm" takes up already
hint: move one of the two, or make it smaller`},
		{"a pleat over tucks", "0", sketch.Pleated() + "\n[tuck.side]\nbeside = \"side\"\nwidth = \"1/8\"\ncount = 2\nfirst = \"1/2\"\n", `19: piece.front.pleat.underarm: the pleat takes up cloth that tuck 1 of "side" takes up already
hint: move one of the two, or make it smaller`},
		{"tucks a little aslant over others", "0.375", sketch.Yoke() + "\n[line.rule]\npoints = [[1, 1], [1.1, 9]]\n\n[tuck.more]\nbeside = \"rule\"\nside = \"side\"\nwidth = \"1/8\"\ncount = 1\nfirst = 0.2\n", `32: piece.front.tuck.more: tuck 1 takes up cloth that tuck 3 of "yoke" takes up already
hint: move one of the two, or make it smaller`},
		{"a pleat along the grain in an edge along it", "0", sketch.Pleated("edge = \"armhole\"", "edge = \"side\"", "from = \"side\"", "from = \"hem\"", "toward = \"side\"", "toward = \"hem\"\nrun = \"grain\""), `25: piece.front.pleat.underarm.run: a pleat cannot run along the grain here: "side" runs along it too
hint: leave run out: the pleat then runs square to its edge`},
		{"a line over a gap", "0", "left: 0,8 0,0\nbottom: 0,0 10,0\nright: 10,0 10,8\ntop: 10,8 5,2 0,8\n---\n\n[line.rule]\npoints = [[1, 6], [9, 6]]\n", `16: piece.front.line.rule: the line leaves the piece between its points, by 2 9/16 in
hint: let it run round the gap, or make it two lines`},
		{"a line with the name of an edge", "0", sketch.Box + "\n---\n\n[line.top]\nalong = \"right\"\ndistance = 1\n", `16: piece.front.line.top: the line has the name of an edge
hint: give the line a name of its own`},
		{"a leaf thinner than its allowances", "1.6", "low: -5,0 -3,-1 0,-1.5 3,-1 5,0 | smooth = true\nhigh: 5,0 3,1 0,1.5 -3,1 -5,0 | smooth = true", `3: piece.front.edge.low: the allowances of "low" and "high", 1.6 in and 1.6 in, leave nothing between them at (5 in, 0 in)
hint: make the allowances narrower, or the piece wider there; the allowance in line 1 is for every edge that gives none
3: piece.front.edge.low: the allowances of "low" and "high", 1.6 in and 1.6 in, leave nothing between them at (-5 in, 0 in)
hint: make the allowances narrower, or the piece wider there; the allowance in line 1 is for every edge that gives none`},
		{"a strap inside one edge", "0", "top: 0,10 2,10 2,14 2.625,14 2.625,10 6,9 | allowance = 0.375\nrest: 6,9 6,0 0,0 0,10", `3: piece.front.edge.top: an allowance of 3/8 in is too wide: the line inside this edge meets itself at (2 3/8 in, 9 11/16 in)
hint: make it narrower, or the piece wider there`},
		{"several at once", "0.375", sketch.Yoke("beside = \"centre front\"", "beside = \"neck\"") + "\n[notch.one]\nedge = \"side\"\nfrom = \"hem\"\nat = 30\n\n[line.rule]\nalong = \"sied\"\ndistance = 1",
			`21: piece.front.tuck.yoke.beside: "neck" is not straight: it bends by 15/16 in, and cloth folds along a straight line only
hint: name a straight edge, or a straight line of the piece
32: piece.front.notch.one.at: the notch leaves "side": it lies 30 in from "hem", and the edge is 11 9/16 in long
hint: measure from the other corner, or from another edge
35: piece.front.line.rule.along: there is no edge "sied" in this piece
hint: did you mean "side"?`},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := made.Pattern("allowance = " + c.allowance + "\n" + sketch.Front(c.text))
			require.Error(t, err)
			assert.Equal(t, c.want, strings.ReplaceAll(err.Error(), "pinafore.toml:", ""))
		})
	}
}

// An edge under a misspelt piece makes a piece of its own.
func TestMisspeltPiece(t *testing.T) {
	text := sketch.Front(sketch.Box)
	_, err := made.Pattern(strings.Replace(text, `[piece.front.edge."top"]`, `[piece.frnt.edge."top"]`, 1))
	require.Error(t, err)
	assert.Contains(t, err.Error(), `is this piece meant to be "front"?`)
}

func TestTwoPiecesOfOneName(t *testing.T) {
	text := sketch.Front(sketch.Box)
	_, err := made.Pattern(text + strings.ReplaceAll(strings.Replace(text, "[piece.front]", "[piece.front]\nname = \"front\"", 1), "piece.front", "piece.back"))
	require.EqualError(t, err, `pinafore.toml:15: piece.back.name: the piece "front" is called "front" as well
hint: give each piece a name of its own, so that they can be told apart on the sheets`)
}
