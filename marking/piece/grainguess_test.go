package piece_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/sketch/made"
)

// degreesUp is how a direction lies: 0 across, 90 upward, below 180, to a tenth of a degree.
func degreesUp(x, y float64) string {
	degrees := math.Mod(math.Atan2(y, x)*180/math.Pi+360, 180)
	return fmt.Sprintf("%.1f", math.Mod(math.Round(degrees*10)/10, 180))
}

// Where a teacher of pattern drawing would lay the grain of what the file does not say it
// of: common practice. The angles of slanting edges are derived.
func TestGrainIsTakenAsATeacherWould(t *testing.T) {
	for _, c := range []struct{ name, piece, degrees, guess string }{
		{"the fold, though another edge is longer", "fold = \"a\"\na: 0,0 0,5\nb: 0,5 9,5\nc: 9,5 9,0\nd: 9,0 0,0\n", "90.0", ""},
		{"the file says it", "grain = \"d\"\na: 0,0 0,5\nb: 0,5 3,5\nc: 3,5 3,0\nd: 3,0 0,0\n", "0.0", ""},
		{"a belt of which a whole side and an end are one edge", "end: 0,0 0,1.5\nround: 0,1.5 24,1.5 24.75,0.75 24,0 0,0\n", "0.0", "along round"},
		{"a string drawn in two edges, slanting: 3 across for 4 up", "one: 0,0 -0.4,0.3 5.6,8.3\nother: 5.6,8.3 6,8 0,0\n", "53.1", "along other"},
		{"a tie that gets wider, the same on both sides", "a: 0,0 24,-1\nb: 24,-1 25,1 24,3\nc: 24,3 0,2\nd: 0,2 0,0\n", "0.0", "along its length"},
		{"a tie that gets wider on one side", "a: 0,0 24,0\nb: 24,0 25,1 23,3\nc: 23,3 0,2\nd: 0,2 0,0\n", "0.0", "along a"},
		{"a belt of which both long sides are curved a little", "a: 0,0 10,-0.3 20,0 | smooth = true\nb: 20,0 20,2\nc: 20,2 10,2.3 0,2 | smooth = true\nd: 0,2 0,0\n", "0.0", "along its length"},
		{"a waistband that is curved, though its halves lie across it", "a: 0,0 10,1 20,0 | smooth = true\nb: 20,0 20,2\nc: 20,2 10,3 0,2 | smooth = true\nd: 0,2 0,0\n", "0.0", "along its length"},
		{"four times as long as wide, with an edge called centre across", "centre back: 0,0 0,2\na: 0,2 8,2\nb: 8,2 8,0\nc: 8,0 0,0\n", "0.0", "along c"},
		{"three times as long as wide, with an edge called centre across", "centre back: 0,0 0,2\na: 0,2 6,2\nb: 6,2 6,0\nc: 6,0 0,0\n", "90.0", "along centre back"},
		{"a back with a slanting side that is longer than its centre", "Center Back: 0,0 0,9\nneck: 0,9 2,9.5 | smooth = true\nshoulder: 2,9.5 5,9\nside: 5,9 9,0\nhem: 9,0 0,0\n", "90.0", "along Center Back"},
		{"the same, its centre called in short", "CB: 0,0 0,9\nneck: 0,9 2,9.5 | smooth = true\nshoulder: 2,9.5 5,9\nside: 5,9 12,0\nhem: 12,0 0,0\n", "90.0", "along CB"},
		{"a centre line within the piece", "neck: -0.5,9 2,9.5\nshoulder: 2,9.5 5,9\nside: 5,9 9,0\nhem: 9,0 0,0\nfront: 0,0 -0.5,9\n---\n\n[line.middle]\nkind = \"centre\"\npoints = [[2, 1], [2, 8]]\n", "90.0", "along middle"},
		{"a bib drawn whole, wider at its foot than high", "foot: -5,0 5,0\nright: 5,0 3,7\nneck: 3,7 0,4 -3,7 | smooth = true\nleft: -3,7 -5,0\n", "90.0", "down its middle"},
		{"the same, turned on its side", "foot: 0,-5 0,5\nright: 0,5 7,3\nneck: 7,3 4,0 7,-3 | smooth = true\nleft: 7,-3 0,-5\n", "0.0", "down its middle"},
		{"the same with straight sides, which are shorter than its foot", "foot: -5,0 5,0\nright: 5,0 5,7\nneck: 5,7 3,7 0,4 -3,7 -5,7\nleft: -5,7 -5,0\n", "90.0", "down its middle"},
		{"a rectangle drawn in two edges: along the longer stretches", "one: 0,0 0,6 5,6\nother: 5,6 5,0 0,0\n", "90.0", "along other"},
		{"a skirt wider than it is long: square to its hem", "hem: 0,0 30,0 | hem = 2\nside: 30,0 30,14\nwaist: 30,14 0,14\nother: 0,14 0,0\n", "90.0", "down its middle"},
		{"a sleeve wider at its cuff than it is long: square to it", "name = \"Sleeve\"\nfront: 2,18 11,30\nneck: 11,30 14.5,29\nback: 14.5,29 25,18\nunder: 25,18 24,0\ncuff: 24,0 3,0\nother: 3,0 2,18\n", "90.0", "square to cuff"},
		{"the same, of which the edge with a hem has another name", "name = \"Raglan_sleeve\"\nfront: 2,18 11,30\nneck: 11,30 14.5,29\nback: 14.5,29 25,18\nunder: 25,18 24,0\nlower: 24,0 3,0 | hem = 1\nother: 3,0 2,18\n", "90.0", "square to lower"},
		{"the same, without a name: along the longest straight side", "front: 2,18 11,30\nneck: 11,30 14.5,29\nback: 14.5,29 25,18\nunder: 25,18 24,0\ncuff: 24,0 3,0\nother: 3,0 2,18\n", "0.0", "along cuff"},
		{"a sleeve of which the cuff is cut in a curve", "name = \"Sleeve\"\nfront: 2,18 11,30\nneck: 11,30 14.5,29\nback: 14.5,29 25,18\nunder: 25,18 24,0\nwrist: 24,0 12,-1 3,0 | smooth = true\nother: 3,0 2,18\n", "90.0", "square to wrist"},
		{"a sleeve turned on its side", "name = \"Sleeve\"\nfront: 18,-2 30,-11\nneck: 30,-11 29,-14.5\nback: 29,-14.5 18,-25\nunder: 18,-25 0,-24\ncuff: 0,-24 0,-3\nother: 0,-3 18,-2\n", "0.0", "square to cuff"},
		{"a sleeve that is a rectangle, its cuff along it", "name = \"Sleeve\"\ncuff: 0,0 9,0\nunder: 9,0 9,6\ntop: 9,6 0,6\nother: 0,6 0,0\n", "90.0", "down its middle"},
		{"the cuff of a sleeve: along its length", "name = \"Sleeve cuff\"\nwrist: 0,0 9,0\nend: 9,0 9,4\ntop: 9,4 0,4\nother: 0,4 0,0\n", "0.0", "along wrist"},
		{"a front with its sleeve, a hem and a wrist: along the longest straight side", "name = \"Front with sleeve\"\nmiddle: 0,0 0,12\nneck: 0,12 2,14 | smooth = true\ntop: 2,14 9,13\nwrist: 9,13 9,9\nunder: 9,9 5,8 6,0 | smooth = true\nhem: 6,0 0,0\n", "90.0", "along middle"},
		{"a cloth with a hem all round", "a: 0,0 30,0 | hem = 1\nb: 30,0 30,14 | hem = 1\nc: 30,14 0,14 | hem = 1\nd: 0,14 0,0 | hem = 1\n", "0.0", "along a"},
		{"a sash with a hem along one side", "a: 0,0 40,0 | hem = 1\nb: 40,0 40,8\nc: 40,8 0,8\nd: 0,8 0,0\n", "0.0", "along a"},
		{"a gusset that is a diamond", "a: 0,-4 2,0\nb: 2,0 0,4\nc: 0,4 -2,0\nd: -2,0 0,-4\n", "90.0", "along its length"},
		{"a square: the first of its edges", "a: 0,0 4,0\nb: 4,0 4,4\nc: 4,4 0,4\nd: 0,4 0,0\n", "0.0", "along a"},
		{"a side in two edges, of which each is shorter than the hem", "lower: 0,0 0,4\nupper: 0,4 0,7\nneck: 0,7 3,6\nside: 3,6 6,0\nhem: 6,0 0,0\n", "90.0", "along lower"},
		{"the longest stretch of an edge with corners", "hem: 0,0 5,0\nround: 5,0 6,8 2,9 0.5,8\nneck: 0.5,8 0,0\n", "82.9", "along round"},
		{"a skirt of which the slanting side is longer than the centre, which is square to hem and waist", "left: 0,0 0,20\nwaist: 0,20 4,20\nside: 4,20 9,0\nhem: 9,0 0,0\n", "90.0", "along left"},
		{"but not by far shorter, though it is square", "left: 0,0 0,13\nwaist: 0,13 4,13\nside: 4,13 16,0\nhem: 16,0 14,-0.2 0,0 | smooth = true\n", "132.7", "along side"},
		{"short straight shoulders tell nothing", "shoulder: 4,9 5,9\ninner: 5,9 7,4 0,-6 | smooth = true\nouter: 0,-6 -7,1 0,9 4,9 | smooth = true\n", "90.0", "straight up"},
	} {
		t.Run(c.name, func(t *testing.T) {
			p, _ := made.Front(t, "0", c.piece)
			assert.Equal(t, c.degrees, degreesUp(p.Flat.Grain.Direction.X, p.Flat.Grain.Direction.Y))
			assert.Equal(t, c.guess, p.Flat.Grain.Guess)
		})
	}
}

// The grain turns with the piece, and is the same from whichever corner and whichever way
// round the edges are written.
func TestGrainTurnsWithThePiece(t *testing.T) {
	const belt = "%s: 0,0 %s\n"
	for _, angle := range []float64{0, 0.3, 1, 2.5} {
		point := func(x, y float64) string {
			sin, cos := math.Sincos(angle)
			return fmt.Sprintf("%.6f,%.6f", x*cos-y*sin, x*sin+y*cos)
		}
		text := fmt.Sprintf(belt, "long", point(20, 0)+" "+point(21, 1)+" "+point(20, 2)+" "+point(0, 2)) + "end: " + point(0, 2) + " 0,0\n"
		p, _ := made.Front(t, "0", text)
		assert.Equal(t, degreesUp(math.Cos(angle), math.Sin(angle)), degreesUp(p.Flat.Grain.Direction.X, p.Flat.Grain.Direction.Y), "turned by %g", angle)
		assert.Equal(t, "along long", p.Flat.Grain.Guess)
	}
}
