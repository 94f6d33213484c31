package sketch

import (
	"fmt"
	"strings"
)

// Bosom is half a front as it is when finished, 12 in across at its widest, whole,
// and 12 in long. Its neck reaches 2 1/2 in from the centre.
const Bosom = `fold = "cf"
drawn = "finished"
cf: 0,0 0,10
neck: 0,10 1.5,10 2.5,11 2.5,12
shoulder: 2.5,12 5,11.5
side: 5,11.5 6,0
hem: 6,0 0,0
---

`

// Bib is a whole front as it is when finished, with a line down its middle.
const Bib = `drawn = "finished"
left: -6,12 -6,0
hem: -6,0 6,0
right: 6,0 6,12
top: 6,12 -6,12
---

[line.middle]
points = [[0, 0], [0, 12]]
kind = "centre"

`

const Box = "bottom: 0,0 4,0\nright: 4,0 4,3\ntop: 4,3 0,3\nleft: 0,3 0,0"

// The centre back of a dress in two edges: a placket, hemmed wide, above a seam.
const PlacketAboveSeam = "placket: 0,15 0,9 | hem = 1; turn = 0.25\nseam: 0,9 X,0\nhem: X,0 9,0\nside: 9,0 8,15\ntop: 8,15 0,15"

// Six corners as they are sewn on children's clothes, straight, so that each length
// follows by hand.
const (
	RaglanSleeve = "wrist: 0,0 8,0 | hem = 1; turn = 0.25\nunder 1: 8,0 9,5\nraglan 1: 9,5 5.5,11.5\n" +
		"neck: 5.5,11.5 2.5,11.5 | allowance = 0.25\nraglan 2: 2.5,11.5 -1,5\nunder 2: -1,5 0,0"
	KimonoBack = "fold = \"centre\"\ncentre: 0,13 0,0\nhem: 0,0 7,0 | hem = 1; turn = 0.25\nside: 7,0 6,8\nunderarm: 6,8 11,9 | allowance = 0.375\n" +
		"wrist: 11,9 10.5,12.5 | hem = 0.75\noverarm: 10.5,12.5 2.5,14\nneck: 2.5,14 1.2,13.1 0,13 | smooth = true; allowance = 0.25"
	Slashed = "top: 9,10 0,10\nleft: 0,10 0,0\nhem: 0,0 8,0\nside: 8,0 8,5\nbelow: 8,5 5,6 | allowance = 0.25\n" +
		"above: 5,6 8.2,5.9 | allowance = 0.25\nsleeve: 8.2,5.9 9,10"
	GussetDiamond = "a: 0,-3 1.5,0\nb: 1.5,0 0,3\nc: 0,3 -1.5,0\nd: -1.5,0 0,-3"
	BareBib       = "fold = \"centre\"\ncentre: 0,0 0,6\nneck: 0,6 2,7.6 2.2,9 | allowance = 0\nstrap: 2.2,9 3.4,9 | allowance = 0.375\n" +
		"outer: 3.4,9 3.6,6 4.5,0 | allowance = 0\nwaist: 4.5,0 0,0"
	FlatSetCollar = "fold = \"back\"\nback: 0,3 0,0\nneck: 0,0 5.5,1.3 | allowance = 0.375\nfront: 5.5,1.3 6.8,4.4 | allowance = 0.25\nouter: 6.8,4.4 0,3 | allowance = 0.25"
)

// Slope is half a piece drawn finished, on the fold: its neck rises by a half of
// what it goes across, its shoulder falls by three quarters.
const Slope = `drawn = "finished"
fold = "centre"
centre: 0,0 0,10
neck: 0,10 4,12
shoulder: 4,12 8,9
side: 8,9 8,0
hem: 8,0 0,0
---
`

// Frock is a file with all that figures can tell.
const Frock = `title = "Everything frock"
size = "3 years"
unit = "in"
allowance = "3/8"
[cloth]
width = 45
[sewing]
needle = "70"
stitch = "2 mm"
[piece.front]
name = "Front"
fold = "centre"
drawn = "finished"
[piece.front.edge.centre]
points = [[0, 0], [0, 9]]
[piece.front.edge.neck]
points = [[0, 9], [2, 9], [2, 11]]
[piece.front.edge.shoulder]
points = [[2, 11], [4, "10 1/2"]]
[piece.front.edge.side]
points = [[4, "10 1/2"], ["6 1/2", 0]]
[piece.front.edge.hem]
points = [["6 1/2", 0], [0, 0]]
hem = 2
turn = "1/4"
[piece.front.tuck.bosom]
beside = "centre"
width = "1/8"
count = 5
first = "1/2"
gap = "1/16"
press = "away"
below = "neck"
length = 3
sample = {tucks = 10, flat = "10", sewn = "7 3/8"}
[piece.front.block]
ends = "1/2"
sides = "1/2"
[piece.back]
name = "Back"
cut = 2
[piece.back.edge.centre]
points = [[0, 0], [0, 10]]
[piece.back.edge.neck]
points = [[0, 10], [2, 11]]
[piece.back.edge.shoulder]
points = [[2, 11], ["4 1/4", "10 1/2"]]
[piece.back.edge.side]
points = [["4 1/4", "10 1/2"], [7, 0]]
[piece.back.edge.hem]
points = [[7, 0], [0, 0]]
[piece.back.pleat.dart]
edge = "side"
from = "hem"
at = 5
depth = "1/4"
toward = "hem"
length = "1/2"
[piece.skirt]
name = "Skirt"
fold = "middle"
[piece.skirt.edge.middle]
points = [[0, 0], [0, 12]]
[piece.skirt.edge.waist]
points = [[0, 12], [20, 12]]
[piece.skirt.edge.side]
points = [[20, 12], [20, 0]]
[piece.skirt.edge.hem]
points = [[20, 0], [0, 0]]
allowance = "3/4"
[piece.skirt.pleat.fine]
beside = "middle"
depth = "1/2"
count = 2
first = 2
[piece.collar]
name = "Collar"
cut = 2
[piece.collar.edge.neck]
points = [[0, 3], [9, 3]]
[piece.collar.edge.outer]
points = [[9, 3], [9, 0], [0, 0], [0, 3]]
[seam.shoulder]
join = ["front.shoulder", "back.shoulder"]
ease = "1/8"
[seam.side]
join = ["front.side", "back.side"]
[seam.waist]
join = ["skirt.waist", ["front.hem", "back.hem"]]
gathered = true
[trim.lace]
along = "collar.outer"
width = "1/2"
fullness = "1 1/2"
[trim."neck ribbon"]
along = ["front.neck", "back.neck"]
kind = "ribbon"
[ruffle.hem]
along = ["skirt.hem"]
fullness = 2
depth = 4
hem = "1/2"
turn = "1/4"
[binding.armhole]
along = ["back.side"]
width = "1/4"
[binding."round everything"]
along = ["skirt.hem", "skirt.side", "front.hem", "front.side", "back.hem", "back.side", "collar.outer", "collar.neck", "back.neck", "front.neck", "skirt.waist", "back.shoulder", "front.shoulder"]
width = "1 1/4"
fold = "double"
joins = 13
`

// Skirt is a plain skirt of cloth so wide, in inches: half its front, on the fold, and
// two backs of half that, each 10 in long. Its hem is 4 times half in all.
func Skirt(half float64) string {
	return fmt.Sprintf("name = \"Front\"\nfold = \"centre\"\ncentre: 0,0 0,10\ntop: 0,10 %[1]g,10\nside: %[1]g,10 %[1]g,0\nhem: %[1]g,0 0,0\n", half)
}

func SkirtBack(half float64) string {
	return fmt.Sprintf("[piece.back]\nname = \"Back\"\ncut = 2\n[piece.back.edge.hem]\npoints = [[0, 0], [%[1]g, 0]]\n[piece.back.edge.rest]\npoints = [[%[1]g, 0], [%[1]g, 10], [0, 10], [0, 0]]\n", half)
}

// Rect is a piece so many inches wide and 8 in high.
func Rect(wide string) string {
	return Swap("bottom: 0,0 W,0\nright: W,0 W,8\ntop: W,8 0,8\nleft: 0,8 0,0", "W", wide)
}

const Tops = `join = ["front.top", "back.top"]`

// Right-angled trapezoids whose right side leaves the top at an angle of 135 and of 45
// degrees. With 1/2 in all round, the stitch lines of the corner meet cot(67.5°)/2 =
// 0.2071 in and cot(22.5°)/2 = 1.2071 in beside it: sewn, 10 in leave 9.2929 in, and 11 in
// leave as much.
const (
	Outward  = "bottom: 0,0 18,0\nright: 18,0 10,8\ntop: 10,8 0,8\nleft: 0,8 0,0"
	Inward45 = "bottom: 0,0 3,0\nright: 3,0 11,8\ntop: 11,8 0,8\nleft: 0,8 0,0"
)

// A square collar, 6 in across and 5 in deep, whole; its neck edge lies at the top.
const SquareCollar = "neck: 0,5 6,5\nouter: 6,5 6,0 0,0 0,5\n"

// One whose ends slant the same way: its outer edge turns by 60 degrees (tan 30 = 0.577)
// and by 120 (tan 60 = 1.732); it is 5 + 4 + 5 long.
const PointedCollar = "neck: 0,4.330127 4,4.330127\nouter: 4,4.330127 6.5,0 2.5,0 0,4.330127\n"

// Half a front with a square neck, 2 in across and 2 in deep, and one with a V neck,
// which is 2.5 in long and rises from the fold by atan(2 / 1.5) = 53.13 degrees.
const (
	SquareNeck = "fold = \"centre\"\ncentre: 0,0 0,8\nneck: 0,8 2,8 2,10\nshoulder: 2,10 5,10\nside: 5,10 5,0\nhem: 5,0 0,0\n"
	VNeck      = "fold = \"centre\"\ncentre: 0,0 0,8\nneck: 0,8 1.5,10\nshoulder: 1.5,10 5,10\nside: 5,10 5,0\nhem: 5,0 0,0\n"
)

// Yoke is a front on the fold with a tucked yoke, as a maker writes it.
func Yoke(change ...string) string {
	text := `fold = "centre front"
centre front: 0,0 0,10
neck: 0,10 1.5,10 2.5,11 2.5,12
shoulder: 2.5,12 5,11.5
side: 5,11.5 6,0
hem: 6,0 0,0
---

[tuck.yoke]
beside = "centre front"
width = "1/8"
count = 6
first = "3/8"
spacing = "3/8"
below = "neck"
length = "2 1/8"
`
	return strings.NewReplacer(change...).Replace(text)
}
