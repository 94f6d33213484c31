package figures

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// halfOfShirt is half a front or a back, and shirtSeams join the two.
const (
	halfOfShirt = "fold = \"centre\"\ncentre: 0,0 0,10\nneck: 0,10 2,10 2,12\nshoulder: 2,12 4,12\narmhole: 4,12 4,8 5,8\nside: 5,8 6,0\nhem: 6,0 0,0\n"
	shirtSeams  = "[seam.shoulder]\njoin = [\"front.shoulder\", \"back.shoulder\"]\n[seam.side]\njoin = [\"front.side\", \"back.side\"]\n"
)

// How large the garment is, level by level, with the child beside it where the file says
// what it measures.
func TestFinishedMeasures(t *testing.T) {
	const (
		front = "name = \"Front\"\nfold = \"centre\"\ncentre: 0,0 0,10\nneck: 0,10 2,10 2,12\nshoulder: 2,12 4,12\narmhole: 4,12 4,8 5,8\nside: 5,8 6,0\nhem: 6,0 0,0\n"
		back  = "name = \"Back\"\ncut = 2\ncentre back: 0,0 0,11 | hem = 1\nneck: 0,11 3,11 3,12\nshoulder: 3,12 5,12\narmhole: 5,12 5,8 6,8\nside: 6,8 7,0\nhem: 7,0 0,0\n"
		line  = "---\n\n[line.middle]\nalong = \"centre back\"\ndistance = 2\nkind = \"centre\"\n"
	)
	shirt := func(back, fit string) string {
		return "unit = \"in\"\nallowance = 0\n" + sketch.Piece("front", front) + sketch.Piece("back", back) + shirtSeams + fit
	}
	p := made.Of(t, shirt(back, ""))
	assert.Equal(t, `  round the chest, under the arms
            each  times  together
  Front        5      2        10
  Back         5      2        10
                         --------
  finished                     20
  it opens at the centre back of Back, and is measured with its two edges
  meeting; what one laps over the other is to be taken off

  round the hem
              each  times  together
  Front, hem     6      2        12
  Back, hem      6      2        12
                           --------
  finished                       24
  it opens at the centre back of Back, and is measured with its two edges
  meeting; what one laps over the other is to be taken off

  length
                                                       finished
  Front, centre, from neck to hem                            10
  Front, straight down, from neck and shoulder to hem        12
  Back, centre back, from neck to hem                        11
  Back, straight down, from neck and shoulder to hem         12
`, printedSection(p, "Finished measures"))

	fitted := printedSection(made.Of(t, shirt(back+line, "[fit]\nchest = 19\nwaist = 18\nlength = 10\n")), "Finished measures")
	assert.Contains(t, fitted, `
  Front          5      2        10
  Back           4      2         8
                           --------
  finished                       18
  the child                      19
                           --------
  smaller by                      1
  it opens at the centre back of Back, and is closed with one "middle" on the
  other
! the finished chest, 18 in, is smaller than the child's by 1 in
`)
	assert.Contains(t, fitted, "  at the back that is 1 in longer than was wanted, 10 in\n\n! the finished waist is not known: no edge and no seam is called a waist\n")
	for length, want := range map[string]string{"11": "is as long as was wanted, 11 in", "12": "is 1 in shorter than was wanted, 12 in"} {
		assert.Contains(t, printedSection(made.Of(t, shirt(back, "[fit]\nlength = "+length+"\n")), "Finished measures"), "  at the back that "+want+"\n")
	}
}

// A length is that to the lower edge of what hangs from the hem: a ruffle of 3 in, of lace
// 1/2 in wide that lies beyond it; not ribbon, nor a ruffle elsewhere. Derived.
func TestLengthWithWhatHangsFromTheHem(t *testing.T) {
	const (
		hems = "along = [\"front.hem\", \"back.hem\"]\n"
		full = "fullness = 2\ndepth = 3\nseam = 0\n"
	)
	for _, c := range []struct{ name, more, want string }{
		{"a ruffle", "[ruffle.frill]\nround = true\n" + hems + full, `  length
                                                                    finished
  front, centre, from neck to hem, with ruffle                            13
  front, straight down, from neck and shoulder to hem, with ruffle        15
  back, centre, from neck to hem, with ruffle                             13
  back, straight down, from neck and shoulder to hem, with ruffle         15
  at the back that is 1 in longer than was wanted, 12 in
  with ruffle: the 3 in by which frill hangs below is counted in
`},
		{"lace at the back alone", "[trim.edging]\nalong = [\"back.hem\"]\nkind = \"lace\"\nwidth = 0.5\n", `  length
                                                                 finished
  front, centre, from neck to hem                                      10
  front, straight down, from neck and shoulder to hem                  12
  back, centre, from neck to hem, with lace                        10 1/2
  back, straight down, from neck and shoulder to hem, with lace    12 1/2
  at the back that is 1 1/2 in shorter than was wanted, 12 in
  with lace: the 1/2 in by which edging hangs below is counted in
`},
		{"ribbon, and a ruffle at the neck", "[trim.band]\n" + hems + "kind = \"ribbon\"\nwidth = 0.5\n[ruffle.frill]\nalong = [\"front.neck\", \"back.neck\"]\n" + full, `  length
                                                       finished
  front, centre, from neck to hem                            10
  front, straight down, from neck and shoulder to hem        12
  back, centre, from neck to hem                             10
  back, straight down, from neck and shoulder to hem         12
  at the back that is 2 in shorter than was wanted, 12 in
`},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := made.Of(t, "unit = \"in\"\nallowance = 0\n[cloth]\nwidth = 36\n"+sketch.Piece("front", halfOfShirt)+sketch.Piece("back", halfOfShirt)+shirtSeams+"[fit]\nlength = 12\n"+c.more)
			assert.Contains(t, printedSection(p, "Finished measures"), c.want)
		})
	}
}

// A binding at the neck lies over the allowance, and ends beyond the line that is measured from.
func TestLengthOfABoundNeck(t *testing.T) {
	const bound = "it ends at the stitch line of the top; the binding neckband reaches 1/4 in beyond that"
	for along, told := range map[string]bool{`"front.neck", "back.neck"`: true, `"front.armhole", "back.armhole"`: false} {
		text := printedSection(made.Of(t, "unit = \"in\"\nallowance = \"1/4\"\n"+sketch.Piece("front", halfOfShirt)+sketch.Piece("back", halfOfShirt)+shirtSeams+"[binding.neckband]\nalong = ["+along+"]\nwidth = 0.25\n"), "Finished measures")
		assert.Equal(t, told, strings.Contains(strings.Join(strings.Fields(text), " "), bound), text)
	}
}

// The length of a skirt is that from its waist, and is said so. Derived.
func TestLengthFromTheWaistInPrint(t *testing.T) {
	skirt := "name = \"Skirt\"\ncut = 2\nfold = \"centre\"\ncentre: 0,0 0,10\nwaist: 0,10 5,10\nside: 5,10 5,0\nhem: 5,0 0,0\n"
	for length, want := range map[string]string{"10": "is as long as was wanted, 10 in", "12": "is 2 in shorter than was wanted, 12 in"} {
		p := made.Of(t, "unit = \"in\"\nallowance = 0\n"+sketch.Piece("skirt", skirt)+"[seam.side]\njoin = [\"skirt.side\", \"skirt.side\"]\n[fit]\nlength = "+length+"\n")
		assert.Contains(t, printedSection(p, "Finished measures"), `  length
                                    finished
  Skirt, centre, from waist to hem        10
  Skirt, side, from waist to hem          10
  from the waist that `+want+"\n")
	}
}

// Tucks that end within 1/4 in above the chest hold it in still, and that is said; those that end
// higher are open there. The side is 3 in, its seam at the arm 3/8, so that the chest lies at
// 2 5/8; eight tucks take 2 in of 2 x 5 in less two side seams of 3/8. Derived.
func TestTucksThatEndNearTheChest(t *testing.T) {
	half := func(more string) string {
		return "fold = \"centre\"\ncentre: 0,0 0,6\nneck: 0,6 2,6 2,8\nshoulder: 2,8 4,8\narmhole: 4,8 4,3 5,3\nside: 5,3 5,0\nhem: 5,0 0,0\n" + more
	}
	const note = "tucks or pleats of Front end within 1/4 in of that level, and still hold it in"
	for _, c := range []struct {
		name, length string // below the neck, whose stitch line lies at 5 5/8
		each         string
		noted        bool
	}{
		{"to the level", "3", "  Front  3 5/8", false},
		{"3/16 in above it", "2 13/16", "  Front  3 5/8", true},
		{"5/16 in above it", "2 11/16", "  Front  4 5/8", false},
		{"at the cut corner, 3/8 in above it", "2 5/8", "  Front  4 5/8", false},
	} {
		t.Run(c.name, func(t *testing.T) {
			front := "name = \"Front\"\n" + half("---\n\n"+sketch.Rows(`tuck yoke centre 1/8 4 1/4 | below = "neck"; length = "`+c.length+`"`)+"\n")
			p := made.Of(t, "unit = \"in\"\nallowance = 0.375\n"+sketch.Piece("front", front)+sketch.Piece("back", half(""))+shirtSeams)
			got := strings.Join(strings.Fields(printedSection(p, "Finished measures")), " ")
			assert.Contains(t, got, strings.Join(strings.Fields(c.each), " "))
			assert.Equal(t, c.noted, strings.Contains(got, note), "%s", got)
		})
	}
}
