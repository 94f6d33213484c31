package piece_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// A growth tuck of 1/2 in lengthens the garment by 1 in when it is let down: twice its width
// (derived). Tucks that run anywhere else than along a foot of it lengthen nothing.
func TestWhichTucksAreLetDown(t *testing.T) {
	const skirt = "waist: 10,12 0,12\nleft: 0,12 0,0\nFOOT: 0,0 10,0 | KIND\nright: 10,0 10,12\n---\n"
	one := func(foot, kind, beside string) string {
		return sketch.Swap(skirt, "FOOT", foot, "KIND", kind) + sketch.Rows("tuck growth "+beside+" 1/2 1 4")
	}
	seam := sketch.Piece("back", "top: 10,0 0,0\nrest: 0,0 0,-5 10,-5 10,0\n") + "[seam.waist]\njoin = [\"front.hem\", \"back.top\"]\n"
	for _, c := range []struct {
		name, text string
		want       float64 // in
		more       string  // beside the piece
	}{
		{"beside a hem", one("hem", "hem = 2", "hem"), 1, ""},
		{"beside a lower edge that is hemmed", one("lower", "hem = 2", "lower"), 1, ""},
		{"beside one that is called a hem, faced or bound", one("back hem", `allowance = "1/4"`, "waist"), 1, ""},
		{"the same with an underscore", one("back_hem", `allowance = "1/4"`, "waist"), 1, ""},
		{"measured from the waist, along the hem", one("hem", "hem = 2", "waist"), 1, ""},
		{"beside a line along the hem", one("hem", "hem = 2", "casing") + "\n[line.casing]\nalong = \"hem\"\ndistance = 3\n", 1, ""},
		// From end to end it lies 1/2 in off the level over 10.
		{"above a hem that curves", sketch.Swap(skirt, "FOOT: 0,0 10,0 | KIND", "hem: 0,0 5,-0.25 10,0.5 | smooth = true; hem = 1", "10,0 10,12", "10,0.5 10,12") +
			sketch.Rows("tuck growth waist 1/2 1 4"), 1, ""},
		{"of a sleeve", "name = \"Sleeve\"\n" + one("wrist", "hem = 1", "wrist"), 1, ""},
		{"what a sample took", one("hem", "hem = 2", "hem") + "sample = {tucks = 2, flat = 4, sewn = \"1 7/8\"}\n", 1.0625, ""},

		{"beside a lower edge that is sewn to something", one("lower", `allowance = "1/4"`, "lower"), 0, ""},
		{"beside a hem that a seam joins", one("hem", `allowance = "1/4"`, "hem"), 0, seam},
		{"up and down, beside a placket", sketch.Swap(one("hem", "hem = 2", "left"), "left: 0,12 0,0", "left: 0,12 0,0 | hem = 0.75"), 0, ""},
		{"beside a placket that is drawn at the foot", one("placket", `hem = "3/4"`, "placket"), 0, ""},
		{"of a bonnet", "name = \"Baby's bonnet\"\n" + one("hem", "hem = 2", "hem"), 0, ""},
		{"of a bonnet with an underscore", "name = \"baby_bonnet\"\n" + one("hem", "hem = 2", "hem"), 0, ""},
		{"of a brim, along the face", one("face", "hem = 1", "face"), 0, ""},
		{"of a yoke", "name = \"Front yoke\"\n" + one("lower", "hem = 1", "lower"), 0, ""},
		{"of a cape, which is no cap", "name = \"Cape\"\n" + one("hem", "hem = 1", "hem"), 1, ""},
		{"a hemmed side, drawn upright", sketch.Swap(one("lower", `allowance = "1/4"`, "right"), "right: 10,0 10,12", "right: 10,0 10,12 | hem = 1"), 0, ""},
		{"that end on the piece", one("hem", "hem = 2", "hem") + "below = \"left\"\nlength = 3\n", 0, ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := made.Of(t, "unit = \"in\"\nallowance = 0\n"+sketch.Front(c.text)+c.more).Pieces[0]
			assert.InDelta(t, c.want, p.TuckRows[0].LetDown/25.4, 1e-9)
		})
	}
}
