package sketch

import "fmt"

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

// Box is a piece 4 in wide and 3 in high.
const Box = "bottom: 0,0 4,0\nright: 4,0 4,3\ntop: 4,3 0,3\nleft: 0,3 0,0"

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

// Skirt is a plain skirt of cloth so wide, in inches: half its front, on the fold, and
// two backs of half that, each 10 in long. Its hem is 4 times half in all.
func Skirt(half float64) string {
	return fmt.Sprintf("name = \"Front\"\nfold = \"centre\"\ncentre: 0,0 0,10\ntop: 0,10 %[1]g,10\nside: %[1]g,10 %[1]g,0\nhem: %[1]g,0 0,0\n", half)
}

// SkirtBack is the back of such a skirt, which is cut twice.
func SkirtBack(half float64) string {
	return fmt.Sprintf("[piece.back]\nname = \"Back\"\ncut = 2\n[piece.back.edge.hem]\npoints = [[0, 0], [%[1]g, 0]]\n[piece.back.edge.rest]\npoints = [[%[1]g, 0], [%[1]g, 10], [0, 10], [0, 0]]\n", half)
}

// Rect is a piece so many inches wide and 8 in high.
func Rect(wide string) string {
	return Swap("bottom: 0,0 W,0\nright: W,0 W,8\ntop: W,8 0,8\nleft: 0,8 0,0", "W", wide)
}

// Tops is what a seam joins: the tops of "front" and of "back".
const Tops = `join = ["front.top", "back.top"]`

// SquareCollar is a square collar, 6 in across and 5 in deep, whole; its neck edge lies at
// the top.
const SquareCollar = "neck: 0,5 6,5\nouter: 6,5 6,0 0,0 0,5\n"

// PointedCollar is one whose ends slant the same way: its outer edge turns by 60 degrees
// (tan 30 = 0.577) and by 120 (tan 60 = 1.732); it is 5 + 4 + 5 long.
const PointedCollar = "neck: 0,4.330127 4,4.330127\nouter: 4,4.330127 6.5,0 2.5,0 0,4.330127\n"

// SquareNeck is half a front with a square neck, 2 in across and 2 in deep; VNeck has a
// neck which is 2.5 in long and rises from the fold by atan(2 / 1.5) = 53.13 degrees.
const (
	SquareNeck = "fold = \"centre\"\ncentre: 0,0 0,8\nneck: 0,8 2,8 2,10\nshoulder: 2,10 5,10\nside: 5,10 5,0\nhem: 5,0 0,0\n"
	VNeck      = "fold = \"centre\"\ncentre: 0,0 0,8\nneck: 0,8 1.5,10\nshoulder: 1.5,10 5,10\nside: 5,10 5,0\nhem: 5,0 0,0\n"
)

// Yoke is a front on the fold with a tucked yoke, as a maker writes it, with changes as
// Swap makes them.
func Yoke(change ...string) string {
	return Swap(`fold = "centre front"
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
`, change...)
}

// Pleated is a front with one pleat in its armhole, with changes as Swap makes them.
func Pleated(change ...string) string {
	return Swap(`centre: 0,8 0,0
hem: 0,0 6,0
side: 6,0 6,6
armhole: 6,6 4.5,6 4,8
shoulder: 4,8 0,8
---

[pleat.underarm]
edge = "armhole"
from = "side"
at = "1 1/8"
depth = "3/8"
toward = "side"
length = "1 1/2"
`, change...)
}

// Outward and Inward45 are right-angled trapezoids whose right side leaves the top at an
// angle of 135 and of 45 degrees. With 1/2 in all round, the stitch lines of the corner
// meet cot(67.5°)/2 = 0.2071 in and cot(22.5°)/2 = 1.2071 in beside it: sewn, 10 in leave
// 9.2929 in, and 11 in leave as much.
const (
	Outward  = "bottom: 0,0 18,0\nright: 18,0 10,8\ntop: 10,8 0,8\nleft: 0,8 0,0"
	Inward45 = "bottom: 0,0 3,0\nright: 3,0 11,8\ntop: 11,8 0,8\nleft: 0,8 0,0"
)
