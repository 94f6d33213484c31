package garment_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/length"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// meetings writes how the ends of every seam come together, and by what that is known:
// "side, by names: hem hem; armhole armhole". Behind a bar no line goes over the seam.
func meetings(t *testing.T, text string) []string {
	var all []string
	for _, s := range made.Of(t, text).Seams {
		var ends []string
		for _, e := range s.Ends {
			end := e.Neighbours[0] + " + " + e.Neighbours[1]
			if !e.GoesOver {
				end += " |"
			} else {
				assert.Greater(t, e.Bend, -180.0, "%s at %v", s.Key, e.Neighbours)
				assert.LessOrEqual(t, e.Bend, 180.0, "%s at %v", s.Key, e.Neighbours)
			}
			ends = append(ends, end)
		}
		all = append(all, fmt.Sprintf("%s, by %s: %s", s.Key, s.ToldBy, strings.Join(ends, "; ")))
	}
	return all
}

// seams writes a file of pieces, and of seams in a line each: "side front.side back.side".
func seams(pieces []string, lines ...string) string {
	text := "unit = \"in\"\nallowance = 0.25\n" + strings.Join(pieces, "")
	for _, line := range lines {
		line, more, _ := strings.Cut(line, "|")
		w := strings.Split(strings.TrimSpace(line), ", ")
		text += fmt.Sprintf("[seam.%q]\njoin = [%q, %q]\n%s\n", w[0], w[1], w[2], strings.TrimSpace(more))
	}
	return text
}

// A gown whose sleeves are in one with its body, a slip with raglan sleeves, and a bonnet
// of a brim and a round crown, each half on the fold; common practice.
func TestMeetingsOfThreeGarments(t *testing.T) {
	gown := func(key, neck, over, wrist, under, hem string) string {
		return sketch.Piece(key, sketch.Swap("fold = \"centre\"\ncentre: 0,0 0,19.5\nneck: 0,19.5 1.25,19.75 2.25,21 | smooth = true\nover: 2.25,21 11,20.25\n"+
			"wrist: 11,20.25 11,16.75 | hem = 0.5; turn = 0.25\nunder: 11,16.75 6,16.25\nside: 6,16.25 9,0\nhem: 9,0 0,0 | hem = 2; turn = 0.25",
			"neck:", neck+":", "over:", over+":", "wrist:", wrist+":", "under:", under+":", "\nhem:", "\n"+hem+":"))
	}
	body := func(key, neck string) string {
		return sketch.Piece(key, "fold = \"centre\"\ncentre: 0,12 0,0\nhem: 0,0 8,0 | hem = 1; turn = 0.25\nside: 8,0 6.5,8\n"+
			"raglan: 6.5,8 4,10 2.5,13.75 | smooth = true\n"+neck+": 2.5,13.75 1.5,12.375 0,12 | smooth = true")
	}
	sleeve := sketch.Piece("sleeve", "cut = 2\nwrist: 0,0 8,0 | hem = 1; turn = 0.25\nunderarm: 8,0 9,5\nfront raglan: 9,5 7,8 5.75,11.25 | smooth = true\n"+
		"top: 5.75,11.25 4.25,11.5 2.5,11.5 | smooth = true\nback raglan: 2.5,11.5 1.25,8 -1,5 | smooth = true\nunderarm back: -1,5 0,0")
	brim := sketch.Piece("brim", "fold = \"top\"\ntop: 0,0 4.5,0\nface: 4.5,0 4.75,6.75\nneck: 4.75,6.75 0.5,6\nback: 0.5,6 0,3 0,0 | smooth = true")
	crown := sketch.Piece("crown", "fold = \"middle\"\nmiddle: 0,0 0,4.5\nround: 0,4.5 1.25,4 2,2.5 1.875,0 | smooth = true\nnape: 1.875,0 0,0")
	for _, c := range []struct {
		name, text string
		want       []string
	}{
		{"a kimono gown of one set of names",
			seams([]string{gown("front", "neck", "over", "wrist", "under", "hem"), gown("back", "neck", "over", "wrist", "under", "hem")},
				"over, front.over, back.over", "under, front.under, back.under", "side, front.side, back.side"),
			[]string{"over, by names: neck + neck; wrist + wrist", "under, by seams: wrist + wrist; side + side |", "side, by seams: under + under |; hem + hem"}},
		{"a kimono gown of two sets of names",
			seams([]string{gown("front", "neck", "over", "wrist", "under", "hem"), gown("back", "throat", "shoulder", "opening", "below sleeve", "bottom")},
				"over, front.over, back.shoulder", "under, front.under, back.below sleeve", "side, front.side, back.side"),
			[]string{"over, by hems: neck + throat |; wrist + opening", "under, by seams: wrist + opening; side + side |", "side, by seams: under + below sleeve |; hem + bottom"}},
		{"a raglan slip", seams([]string{sleeve, body("front", "neck"), body("back", "neckline")},
			"side, front.side, back.side", "under, sleeve.underarm, sleeve.underarm back", "front, sleeve.front raglan, front.raglan", "back, sleeve.back raglan, back.raglan"),
			[]string{"side, by names: hem + hem; raglan + raglan |", "under, by names: wrist + wrist; front raglan + back raglan |",
				"front, by sewing: underarm + side |; top + neck |", "back, by sewing: top + neckline |; underarm back + side |"}},
		{"a raglan slip whose neck is bound", seams([]string{sleeve, body("front", "neck"), body("back", "neckline")},
			"front, sleeve.front raglan, front.raglan", "back, sleeve.back raglan, back.raglan") + "[binding.neck]\nalong = [\"sleeve.top\", \"front.neck\", \"back.neckline\"]\nwidth = 0.25\n",
			[]string{"front, by seams: underarm + side |; top + neck", "back, by seams: top + neckline; underarm back + side |"}},
		{"a bonnet", seams([]string{brim, crown}, "crown, brim.back, crown.round | gathered = true"), []string{"crown, by the centre: top + middle |; neck + nape |"}},
	} {
		t.Run(c.name, func(t *testing.T) { assert.Equal(t, c.want, meetings(t, c.text)) })
	}
}

// A square gusset under the arm of a gown, whose body and sleeve go on nearly as its seams do:
// 5 and 14 degrees off, or 21 in front. Over its seams goes no line. Over the shoulder does the
// armhole of a sleeve that is sewn in by halves, and goes on from one to the other (common
// practice).
func TestNoLineGoesOverTheSeamsOfAGusset(t *testing.T) {
	gown := func(key, under string) string {
		return sketch.Piece(key, "centre: 0,0 0,24\nneck: 0,24 2,26\noverarm: 2,26 11,25.5\nwrist: 11,25.5 11,21.5\nunderarm: 11,21.5 7.5,21.5\n"+
			"gusset sleeve: 7.5,21.5 5.5,22\ngusset side: 5.5,22 6,20\nside: 6,20 "+under+"\nhem: "+under+" 0,0")
	}
	gusset := sketch.Piece("gusset", "front sleeve: 0,0 2,0\nback sleeve: 2,0 2,2\nback side: 2,2 0,2\nfront side: 0,2 0,0")
	lines := []string{"side, front.side, back.side", "under, front.underarm, back.underarm", "1, gusset.front sleeve, front.gusset sleeve",
		"2, gusset.back sleeve, back.gusset sleeve", "3, gusset.front side, front.gusset side", "4, gusset.back side, back.gusset side"}
	body := func(key string) string {
		return sketch.Piece(key, "armhole: 6,8 6,14\nshoulder: 6,14 3,14\nneck: 3,14 0,12\ncentre: 0,12 0,0\nhem: 0,0 8,0\nside: 8,0 6,8")
	}
	sleeve := sketch.Piece("sleeve", "front armhole: 6,0 0,0\nback armhole: 0,0 -6,0\nback under: -6,0 -5,-6\nwrist: -5,-6 5,-6\nfront under: 5,-6 6,0")
	for _, c := range []struct {
		name, text string
		seam       int
		want       string
	}{
		{"a gusset", seams([]string{gown("front", "9,0"), gown("back", "9,0"), gusset}, lines...), 4,
			"3, by seams: front sleeve + gusset sleeve |; back side + side |"},
		{"in a body that flares in front", seams([]string{gown("front", "20,0"), gown("back", "9,0"), gusset}, lines...), 4,
			"3, by seams: front sleeve + gusset sleeve |; back side + side |"},
		{"its other seam", seams([]string{gown("front", "9,0"), gown("back", "9,0"), gusset}, lines...), 5,
			"4, by seams: back sleeve + gusset sleeve |; front side + side |"},
		{"a sleeve in halves", seams([]string{body("front"), body("back"), sleeve}, "shoulder, front.shoulder, back.shoulder",
			"front, sleeve.front armhole, front.armhole", "back, sleeve.back armhole, back.armhole"), 0,
			"shoulder, by names: armhole + armhole; neck + neck"},
	} {
		t.Run(c.name, func(t *testing.T) { assert.Equal(t, c.want, meetings(t, c.text)[c.seam]) })
	}
}

// What tells which ends meet, one after the other, and what outweighs what.
func TestWhatTellsWhichEndsMeet(t *testing.T) {
	box := func(key, a, b, more string) string { // the seam is its top, from a on the right to b on the left
		return sketch.Piece(key, fmt.Sprintf("bottom: 0,0 10,0\n%s: 10,0 10,8\ntop: 10,8 0,8\n%s: 0,8 0,0\n---\n%s", a, b, more))
	}
	const top = "top, front.top, back.top"
	notched := func(from, at string) string {
		return fmt.Sprintf("\n[notch.n]\nedge = \"top\"\nfrom = %q\nat = %s\n", from, at)
	}
	for _, c := range []struct {
		name string
		text string
		want string
	}{
		{"nothing", seams([]string{box("front", "ra", "lo", ""), box("back", "mi", "su", "")}, top), "top, by nothing: ra + su |; lo + mi |"},
		{"the file", seams([]string{box("front", "ra", "lo", ""), box("back", "mi", "su", "")}, top+` | meet = ["lo", "su"]`), "top, by the file: ra + mi |; lo + su |"},
		{"the file, the other end", seams([]string{box("front", "ra", "lo", ""), box("back", "mi", "su", "")}, top+` | meet = ["lo", "mi"]`), "top, by the file: ra + su |; lo + mi |"},
		{"the file in one word, against notches", seams([]string{box("front", "ra", "lo", notched("ra", "2")), box("back", "mi", "ra", notched("mi", "2"))}, top+` | meet = "ra"`),
			"top, by the file: ra + ra; lo + mi |"},
		{"the centre, against names", seams([]string{sketch.Piece("front", "fold = \"ra\"\nbottom: 0,0 10,0\nra: 10,0 10,8\ntop: 10,8 0,8\nlo: 0,8 0,0"),
			sketch.Piece("back", "fold = \"lo\"\nbottom: 0,0 10,0\nra: 10,0 10,8\ntop: 10,8 0,8\nlo: 0,8 0,0")}, top), "top, by the centre: ra + lo |; lo + ra |"},
		{"a fold and a seam in the middle", seams([]string{sketch.Piece("front", "fold = \"ra\"\nbottom: 0,0 10,0\nra: 10,0 10,8\ntop: 10,8 0,8\nlo: 0,8 0,0"),
			sketch.Piece("back", "cut = 2\nbottom: 0,0 10.25,0\nmi: 10.25,0 10.25,8\ntop: 10.25,8 0,8\nsu: 0,8 0,0")}, top, "middle, back.mi, back.mi"), "top, by the centre: ra + mi |; lo + su |"},
		{"another seam, against names", seams([]string{box("front", "ra", "lo", ""), box("back", "lo", "ra", "")}, top, "second, front.ra, back.lo"), "top, by seams: ra + lo |; lo + ra |"},
		{"one name", seams([]string{box("front", "ra", "lo", ""), box("back", "ra", "su", "")}, top), "top, by names: ra + ra; lo + su |"},
		{"a word that is shared", seams([]string{box("front", "underarm", "lo", ""), box("back", "underarm curve", "su", "")}, top), "top, by names: underarm + underarm curve; lo + su |"},
		{"a word that tells nothing", seams([]string{box("front", "front edge", "lo", ""), box("back", "back edge", "su", "")}, top), "top, by nothing: front edge + su |; lo + back edge |"},
		{"a name against a word", seams([]string{box("front", "neck", "lo", ""), box("back", "neckline", "neck", "")}, top), "top, by names: neck + neck; lo + neckline |"},
		{"notches", seams([]string{box("front", "ra", "lo", notched("ra", "2")), box("back", "mi", "su", notched("mi", "2"))}, top), "top, by notches: ra + mi |; lo + su |"},
		{"notches from the other end", seams([]string{box("front", "ra", "lo", notched("ra", "2")), box("back", "mi", "su", notched("su", "2"))}, top), "top, by notches: ra + su |; lo + mi |"},
		{"names against notches", seams([]string{box("front", "ra", "lo", notched("ra", "2")), box("back", "ra", "su", notched("su", "2"))}, top), "top, by names: ra + ra; lo + su |"},
		{"notches in the middle tell nothing", seams([]string{box("front", "ra", "lo", notched("ra", "5.1")), box("back", "mi", "su", notched("mi", "5.1"))}, top), "top, by nothing: ra + su |; lo + mi |"},
		{"a free edge and one that is sewn", seams([]string{box("front", "ra", "lo", ""), box("back", "mi", "su", ""), box("third", "x", "y", "")}, top, "a, front.ra, third.x", "b, back.mi, third.y"),
			"top, by sewing: ra + mi |; lo + su |"},
		{"a hem", seams([]string{sketch.Piece("front", "bottom: 0,0 10,0\nra: 10,0 10,8 | hem = 1\ntop: 10,8 0,8\nlo: 0,8 0,0"), sketch.Piece("back", "bottom: 0,0 10,0\nmi: 10,0 10,8 | hem = 1\ntop: 10,8 0,8\nsu: 0,8 0,0")}, top),
			"top, by hems: ra + mi; lo + su |"},
		{"lengths", seams([]string{sketch.Piece("front", "bottom: 0,0 10,0\nra: 10,0 10,8\ntop: 10,8 0,5\nlo: 0,5 0,0"), sketch.Piece("back", "bottom: 0,0 10,0\nmi: 10,0 10,5\ntop: 10,5 0,8\nsu: 0,8 0,0")}, top),
			"top, by lengths: ra + su |; lo + mi |"},
		// 135 and 45 degrees, and two right angles; no two edges are of one length.
		{"angles", seams([]string{sketch.Piece("front", sketch.Swap(sketch.Outward, "right:", "ra:", "left:", "lo:")), sketch.Piece("back", "bottom: 0,0 4,0\nmi: 4,0 11,7\ntop: 11,7 0,7\nsu: 0,7 0,0")}, top),
			"top, by angles: ra + mi |; lo + su |"},
		// One line goes straight on at the right, and the other corner is meant: not two
		// half as sharp, which turn as much together.
		{"an angle that is meant", seams([]string{sketch.Piece("front", "bottom: 0,0 10,0\nra: 10,0 10,8\ntop: 10,8 0,8\nlo: 0,8 -16,0"+"\nrest: -16,0 0,0"),
			sketch.Piece("back", "bottom: 0,0 10,0\nmi: 10,0 10,7\ntop: 10,7 0,7\nsu: 0,7 -14,0"+"\nrest: -14,0 0,0")}, top),
			"top, by angles: ra + mi |; lo + su |"},
		{"cut edges", seams([]string{sketch.Piece("front", "bottom: 0,0 10,0\nra: 10,0 10,8 | allowance = 0.5\ntop: 10,8 0,8\nlo: 0,8 0,0"), sketch.Piece("back", "bottom: 0,0 10,0\nmi: 10,0 10,8 | allowance = 0.5\ntop: 10,8 0,8\nsu: 0,8 0,0")}, top),
			"top, by cut edges: ra + mi |; lo + su |"},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, c.want, meetings(t, c.text)[0])
		})
	}
}

// A side of 10 in, whose notches stand 2 in from the right and 2 in from the left, sewn 9 1/2
// in: 1 3/4 and 7 3/4 in from the right.
func TestNotchesThatMissEachOther(t *testing.T) {
	notched := func(from, at string) string {
		return sketch.Rect("10") + "\n---\n" + fmt.Sprintf("\n[notch.n]\nedge = \"top\"\nfrom = %q\nat = %s\n", from, at)
	}
	for _, c := range []struct{ name, front, back, want string }{
		{"they meet", notched("right", "2"), notched("right", "2"), ""},
		{"nearly", notched("right", "2"), notched("right", "2.2"), ""},
		{"from the other end", notched("right", "2"), notched("left", "2"),
			"the notches miss each other by 6 in, and would meet if those of one side were measured from its other end"},
		{"from neither end", notched("right", "2"), notched("right", "3"), ""},
		{"on one side alone", notched("right", "2"), sketch.Rect("10"), ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			s := made.Seam(t, sketch.Joined("0.25", c.front, c.back, sketch.Tops))
			assert.Equal(t, c.want, s.NotchesTurned(length.Amount.String))
		})
	}
}

func TestMistakesInMeet(t *testing.T) {
	for _, c := range []struct{ name, back, seam, want string }{
		{"no such edge", sketch.Rect("10"), sketch.Tops + "\nmeet = \"rihgt\"",
			`33: seam.s.meet: "front.top" ends at "right" and "left", not at "rihgt"
hint: did you mean "right"?
33: seam.s.meet: "back.top" ends at "right" and "left", not at "rihgt"
hint: did you mean "right"?`},
		{"an edge that is not beside it", sketch.Rect("10"), sketch.Tops + "\nmeet = [\"right\", \"bottom\"]",
			`33: seam.s.meet: "back.top" ends at "right" and "left", not at "bottom"
hint: there is "right", "left"`},
		{"an edge at both ends", "top: 10,8 0,8\nround: 0,8 0,0 10,0 10,8", sketch.Tops + "\nmeet = [\"right\", \"round\"]",
			`27: seam.s.meet: both ends of "back.top" are at "round", so that tells nothing
hint: leave meet out`},
		{"a side of two edges", sketch.Rect("10"), "join = [\"front.top\", [\"back.top\", \"back.left\"]]\nmeet = \"right\"",
			`33: seam.s.meet: a side of this seam has several edges, and their ends are not put together
hint: leave meet out`},
		{"edges that do not come equally often", "cut = 2\n" + sketch.Rect("10"), sketch.Tops + "\nmeet = \"right\"",
			`34: seam.s.meet: the two edges do not come equally often, and their ends are not put together
hint: leave meet out`},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := made.Pattern(sketch.Joined("0.5", sketch.Rect("10"), c.back, c.seam))
			require.Error(t, err)
			assert.Equal(t, c.want, strings.ReplaceAll(err.Error(), "pinafore.toml:", ""))
		})
	}
}
