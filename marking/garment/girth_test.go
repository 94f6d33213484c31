package garment_test

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/garment"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// inInches writes a length in inches, to three decimals.
func inInches(mm float64) string {
	return strconv.FormatFloat(math.Round(mm/25.4*1000)/1000, 'f', -1, 64)
}

// measured writes what is known of the size of a garment: every level, what each piece has
// of it, how it opens, and the lengths.
func measured(p *garment.Pattern) []string {
	var all []string
	for _, g := range p.Measures.Girths {
		var parts []string
		for _, part := range g.Parts {
			parts = append(parts, fmt.Sprintf("%s %s x %d", part.Piece, inInches(part.Each.MM), part.Times))
		}
		text := fmt.Sprintf("%s %s: %s", g.Level, inInches(g.Round.MM), strings.Join(parts, ", "))
		switch {
		case g.Opens.Closed != "":
			text += "; closed on " + g.Opens.Closed
		case g.Opens.Title() != "":
			text += "; opens at " + g.Opens.Title()
		}
		all = append(all, text)
	}
	for _, d := range p.Measures.Drops {
		along := d.Along
		if along == "" {
			along = "straight down"
		}
		all = append(all, fmt.Sprintf("%s %s, %s to %s: %s", d.Piece, along, d.Top, d.Bottom, inInches(d.Length.MM)))
	}
	return all
}

// sewnTogether writes a file of pieces with an allowance for every edge, and seams, each
// given by its key and the edges it joins.
func sewnTogether(allowance string, pieces map[string]string, order []string, seams ...string) string {
	text := "unit = \"in\"\nallowance = " + allowance + "\n"
	for _, key := range order {
		text += sketch.Piece(key, pieces[key])
	}
	for _, s := range seams {
		key, join, _ := strings.Cut(s, ": ")
		text += fmt.Sprintf("[seam.%q]\njoin = %s\n", key, join)
	}
	return text
}

const (
	shoulders = `shoulder: ["front.shoulder", "back.shoulder"]`
	sides     = `side: ["front.side", "back.side"]`
)

// The full-size draft of a child's underwaist, McGlauflin, Handicraft for Girls, 1910, p. 53,
// by its corner points and straight lines between them, as it is cut. Under the arms the front
// is 6 in from the centre, the back 6 less the inch that its hem line lies inside the edge;
// along the hem they are 5 1/2 in and, from (5.5, 0.5) to (1, 0), 4.5277 in. From neck and
// shoulder the back is 9 1/2 less 1/6 in long, for there its hem has risen by 1.5/4.5 of 1/2 in
// (derived).
func TestUnderwaistDraftRound(t *testing.T) {
	front := "fold = \"centre\"\nneck: 0,7 2.5,9.5\nshoulder: 2.5,9.5 5,8.5\narmhole: 5,8.5 4,6.1 6,5\nside: 6,5 5.5,0\nhem: 5.5,0 0,0\ncentre: 0,0 0,7"
	back := "cut = 2\nneck: 0,8.5 1,8.5 2.5,9.5\nshoulder: 2.5,9.5 4.75,8.25\narmhole: 4.75,8.25 6,5.5\nside: 6,5.5 5.5,0.5\nhem: 5.5,0.5 1,0 0,0\ncentre: 0,0 0,8.5 | hem = 0.75; turn = 0.25"
	p := made.Of(t, sewnTogether("0", map[string]string{"front": front, "back": back}, []string{"front", "back"}, shoulders, sides))
	assert.Equal(t, []string{
		"chest 22: front 6 x 2, back 5 x 2; opens at the centre of back",
		"hem 20.055: front 5.5 x 2, back 4.528 x 2; opens at the centre of back",
		"front centre, neck to hem: 7",
		"front straight down, neck and shoulder to hem: 9.5",
		"back centre, neck to hem: 8.5",
		"back straight down, neck and shoulder to hem: 9.333",
	}, measured(p))
}

// The same draft as the example has it, with seams of 1/4 in. The stitch line of the side
// lies at x = 5.5 - 0.25 x sqrt(1.01) + y/10 in front, and 0.05 less in back. Under the arms it is
// measured between 4 1/2 and 4 3/4 in up in front, for the curve of the armhole may dip by no
// more than its seam, and 1/2 in higher in back: half the front between 5.699 and 5.724, and the
// back an inch less (derived).
func TestUnderwaistRound(t *testing.T) {
	p := made.Example(t, "underwaist.toml")
	require.NotEmpty(t, p.Measures.Girths)
	chest := p.Measures.Girths[0]
	assert.Equal(t, garment.AtChest, chest.Level)
	assert.InDelta(t, 20.845, chest.Round.MM/25.4, 0.05)
}

// What a hand-made reckoning says of garments of several kinds; all numbers are derived
// from their points.
func TestRoundTheGarment(t *testing.T) {
	const (
		front = "fold = \"centre\"\ncentre: 0,0 0,10\nneck: 0,10 2,10 2,12\nshoulder: 2,12 5,12\narmhole: 5,12 5,8 7,8\nside: 7,8 8,0\nhem: 8,0 0,0\n"
		back  = "fold = \"centre\"\ncentre: 0,0 0,11\nneck: 0,11 2,11 2,12\nshoulder: 2,12 5,12\narmhole: 5,12 5,8 6,8\nside: 6,8 7,0\nhem: 7,0 0,0\n"
		// A raglan: its slanting seam begins at the arm, and ends at the neck.
		raglan = "fold = \"centre\"\ncentre: 0,0 0,10\nneck: 0,10 2,11\nraglan: 2,11 7,8\nside: 7,8 7,0\nhem: 7,0 0,0\n"
		sleeve = "cut = 2\nwrist: 0,0 6,0\nunder back: 6,0 7,5\nraglan back: 7,5 4,10\ntop: 4,10 3,10\nraglan front: 3,10 0,5\nunder front: 0,5 0,0\n"
		// A kimono gown: body and sleeve in one, side and underarm one edge.
		kimono = "fold = \"centre\"\ncentre: 0,0 0,18\nneck: 0,18 3,20\ntop: 3,20 14,20\nwrist: 14,20 14,15\nside: 14,15 8,14 9,0\nhem: 9,0 0,0\n"
		bodice = "fold = \"centre\"\ncentre: 0,0 0,5\nneck: 0,5 2,6\nshoulder: 2,6 5,6\narmhole: 5,6 5,4 6,4\nside: 6,4 6,0\nwaist: 6,0 0,0\n"
		skirt  = "cut = 2\nfold = \"centre\"\ncentre: 0,0 0,10\nwaist: 0,10 11,10\nside: 11,10 12,0\nhem: 12,0 0,0\n"
		open   = "cut = 2\ncentre front: 0,0 0,10 | hem = 1\nneck: 0,10 3,10 3,12\nshoulder: 3,12 6,12\narmhole: 6,12 6,8 8,8\nside: 8,8 9,0\nhem: 9,0 0,0\n"
		centre = "---\n\n[line.middle]\nalong = \"centre front\"\ndistance = 1.5\nkind = \"centre\"\n"
		yoke   = "fold = \"centre\"\ncentre: 0,0 0,4\nneck: 0,4 2,5\nshoulder: 2,5 5,5\narmhole: 5,5 5,0\nfoot: 5,0 0,0\n"
		full   = "fold = \"centre\"\ncentre: 0,0 0,12\ntop: 0,12 10,12\narmhole: 10,12 10,10 12,10\nside: 12,10 13,0\nhem: 13,0 0,0\n"
		panel  = "cut = 2\narmhole: 0,8 3,8\nfore: 0,0 0,8\nhem: 3,0 0,0\nhind: 3,8 3,0\n"
	)
	tucked := func(length string) string {
		return front + "---\n\n" + sketch.Rows(`tuck yoke centre 1/4 4 1/2 | below = "neck"; length = `+length) + "\n"
	}
	both := []string{"front", "back"}
	for _, c := range []struct {
		name  string
		text  string
		wants []string
	}{
		{"front and back on the fold", sewnTogether("0", map[string]string{"front": front, "back": back}, both, shoulders, sides),
			[]string{"chest 26: front 7 x 2, back 6 x 2", "hem 30: front 8 x 2, back 7 x 2", "front centre, neck to hem: 10", "front straight down, neck and shoulder to hem: 12", "back centre, neck to hem: 11", "back straight down, neck and shoulder to hem: 12"}},
		// Half an inch of seam at every edge: under the arms the side lies at 7 - 1/2 x
		// sqrt(65)/8 - 1/16 on the level of the armhole's seam, the hem is as much shorter.
		{"with seams", sewnTogether("0.5", map[string]string{"front": front, "back": back}, both, shoulders, sides),
			[]string{"chest 24.234: front 6.559 x 2, back 5.559 x 2", "hem 27.734: front 7.434 x 2, back 6.434 x 2", "front centre, neck to hem: 9", "front straight down, neck and shoulder to hem: 11", "back centre, neck to hem: 10", "back straight down, neck and shoulder to hem: 11"}},
		{"tucks that are open under the arms", sewnTogether("0", map[string]string{"front": tucked("1"), "back": back}, both, shoulders, sides),
			[]string{"chest 26: front 7 x 2, back 6 x 2", "hem 30: front 8 x 2, back 7 x 2", "front centre, neck to hem: 10", "front straight down, neck and shoulder to hem: 12", "back centre, neck to hem: 11", "back straight down, neck and shoulder to hem: 12"}},
		{"tucks that end on the level", sewnTogether("0", map[string]string{"front": tucked("2"), "back": back}, both, shoulders, sides),
			[]string{"chest 22: front 5 x 2, back 6 x 2", "hem 30: front 8 x 2, back 7 x 2", "front centre, neck to hem: 10", "front straight down, neck and shoulder to hem: 12", "back centre, neck to hem: 11", "back straight down, neck and shoulder to hem: 12"}},
		{"tucks that reach below it", sewnTogether("0", map[string]string{"front": tucked("5"), "back": back}, both, shoulders, sides),
			[]string{"chest 22: front 5 x 2, back 6 x 2", "hem 30: front 8 x 2, back 7 x 2", "front centre, neck to hem: 10", "front straight down, neck and shoulder to hem: 12", "back centre, neck to hem: 11", "back straight down, neck and shoulder to hem: 12"}},
		{"open in front, edge to edge", sewnTogether("0", map[string]string{"front": open, "back": back}, both, shoulders, sides),
			[]string{"chest 26: front 7 x 2, back 6 x 2; opens at the centre front of front", "hem 30: front 8 x 2, back 7 x 2; opens at the centre front of front", "front centre front, neck to hem: 10", "front straight down, neck and shoulder to hem: 12", "back centre, neck to hem: 11", "back straight down, neck and shoulder to hem: 12"}},
		{"open in front, closed on its centre", sewnTogether("0", map[string]string{"front": open + centre, "back": back}, both, shoulders, sides),
			[]string{"chest 25: front 6.5 x 2, back 6 x 2; closed on middle", "hem 29: front 7.5 x 2, back 7 x 2; closed on middle", "front centre front, neck to hem: 10", "front straight down, neck and shoulder to hem: 12", "back centre, neck to hem: 11", "back straight down, neck and shoulder to hem: 12"}},
		{"a raglan", sewnTogether("0", map[string]string{"front": raglan, "back": strings.NewReplacer("0,10\n", "0,10.5\n", "0,10 2", "0,10.5 2").Replace(raglan), "sleeve": sleeve}, []string{"front", "back", "sleeve"},
			sides, `front raglan: ["front.raglan", "sleeve.raglan front"]`, `back raglan: ["back.raglan", "sleeve.raglan back"]`, `under: ["sleeve.under front", "sleeve.under back"]`),
			[]string{"chest 28: front 7 x 2, back 7 x 2", "hem 28: front 7 x 2, back 7 x 2", "front centre, neck to hem: 10", "front straight down, neck and raglan to hem: 11", "back centre, neck to hem: 10.5", "back straight down, neck and raglan to hem: 11"}},
		{"a kimono gown", sewnTogether("0", map[string]string{"front": kimono, "back": kimono}, both, sides, `top: ["front.top", "back.top"]`),
			[]string{"chest 32: front 8 x 2, back 8 x 2", "hem 36: front 9 x 2, back 9 x 2", "front centre, neck to hem: 18", "front straight down, neck and top to hem: 20", "back centre, neck to hem: 18", "back straight down, neck and top to hem: 20"}},
		{"a bodice and its gathered skirt", sewnTogether("0", map[string]string{"front": bodice, "back": bodice, "skirt": skirt}, []string{"front", "back", "skirt"},
			shoulders, sides, `skirt side: ["skirt.side", "skirt.side"]`, "waist: [\"skirt.waist\", [\"front.waist\", \"back.waist\"]]\ngathered = true"),
			[]string{"chest 24: front 6 x 2, back 6 x 2", "waist 24: front 6 x 2, back 6 x 2", "hem 48: skirt 12 x 4", "front centre, neck to hem: 15", "back centre, neck to hem: 15"}},
		{"a skirt alone", sewnTogether("0", map[string]string{"skirt": skirt}, []string{"skirt"}, `side: ["skirt.side", "skirt.side"]`),
			[]string{"waist 44: skirt 11 x 4", "hem 48: skirt 12 x 4", "skirt centre, waist to hem: 10", "skirt side, waist to hem: 10.05"}},
		{"a gathered skirt on a yoke", sewnTogether("0", map[string]string{"front": full, "back": full, "yoke": yoke, "yokeback": yoke}, []string{"front", "back", "yoke", "yokeback"},
			sides, `shoulder: ["yoke.shoulder", "yokeback.shoulder"]`, "gathers: [\"front.top\", \"yoke.foot\"]\ngathered = true", "back gathers: [\"back.top\", \"yokeback.foot\"]\ngathered = true"),
			[]string{"chest 48: front 12 x 2, back 12 x 2", "hem 52: front 13 x 2, back 13 x 2", "yoke centre, neck to hem: 16", "yokeback centre, neck to hem: 16"}},
		{"a panel under each arm", sewnTogether("0", map[string]string{"front": front, "back": back, "panel": panel}, []string{"front", "back", "panel"},
			shoulders, `fore: ["front.side", "panel.fore"]`, `hind: ["panel.hind", "back.side"]`),
			[]string{"chest 32: front 7 x 2, back 6 x 2, panel 3 x 2", "hem 36: front 8 x 2, back 7 x 2, panel 3 x 2", "front centre, neck to hem: 10", "front straight down, neck and shoulder to hem: 12", "back centre, neck to hem: 11", "back straight down, neck and shoulder to hem: 12"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, c.wants, measured(made.Of(t, c.text)))
		})
	}
}

// A gown with something set in under the arm, where the side goes on almost straight: across the
// lower end of that, where the side seam ends, half a front is 8 1/4 in, and 8 in at the upper
// end, where the set-in piece would be to be added. With nothing set in it is measured on the
// level of the lower end of the slit that is left above, 15 in up: 8 1/16 in. Derived.
func TestChestBelowWhatIsSetIn(t *testing.T) {
	const gown = "fold = \"centre\"\ncentre: 0,0 0,18\nneck: 0,18 3,20\ntop: 3,20 14,20\nwrist: 14,20 14,15\ninner: 14,15 10,15\n" +
		"outer slit: 10,15 8,15.5\nslit: 8,15.5 8.25,13.5\nside: 8.25,13.5 10,0\nhem: 10,0 0,0\n"
	square := func(name string) string {
		return "name = \"" + name + "\"\ncut = 2\na: 0,0 2,0\nb: 2,0 2,2\nc: 2,2 0,2\nd: 0,2 0,0\n"
	}
	ring := []string{sides, `top: ["front.top", "back.top"]`, `inner: ["front.inner", "back.inner"]`}
	set := []string{`g1: ["inset.a", "front.outer slit"]`, `g2: ["inset.b", "back.outer slit"]`, `g3: ["inset.d", "front.slit"]`, `g4: ["inset.c", "back.slit"]`}
	robe := func(name string, seams ...string) *garment.Pattern {
		return made.Of(t, sewnTogether("0", map[string]string{"front": gown, "back": gown, "inset": square(name)}, []string{"front", "back", "inset"}, append(slices.Clone(ring), seams...)...)+"[fit]\nchest = 24\n")
	}
	for _, c := range []struct {
		name  string
		p     *garment.Pattern
		chest string
		said  []string
	}{
		{"a gusset", robe("Gusset", set...), "chest 33: front 8.25 x 2, back 8.25 x 2", nil},
		{"a piece that may be anything", robe("Inset", set[2:]...), "", []string{"the finished chest is not known: no seam at a side of front runs up to an armhole or a sleeve"}},
		{"a side in two seams, nothing set in", robe("Pocket", `g3: ["front.slit", "back.slit"]`), "chest 32.25: front 8.063 x 2, back 8.063 x 2", nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			chest := ""
			for _, text := range measured(c.p) {
				if strings.HasPrefix(text, "chest") {
					chest = text
				}
			}
			var said []string
			for _, r := range ofFit(c.p) {
				said = append(said, r.Text)
			}
			assert.Equal(t, c.chest, chest)
			assert.Equal(t, c.said, said)
		})
	}
}
