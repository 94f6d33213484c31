package garment_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/sketch"
)

// halfFront is half a front, 8 in wide, whose middle edge is called MIDDLE.
const halfFront = "MIDDLE: 0,0 0,10\nneck: 0,10 3,10\nshoulder: 3,10 8,9\nside: 8,9 8,0\nhem: 8,0 0,0\n"

// Half a piece that is cut once is half a garment.
func TestNoFold(t *testing.T) {
	const says = ` lies on no fold, nothing is sewn to it, and the piece is cut once: that makes one half, 8 in wide; fold = `
	piece := func(key, middle, head, edge string) string {
		return sketch.Piece(key, head+sketch.Swap(halfFront, "MIDDLE:", middle+":", "0,0 0,10", "0,0 0,10"+edge))
	}
	for _, c := range []struct {
		name, text string
		want       []string
	}{
		{"half a front", piece("front", "centre front", "", ""), []string{`pinafore.toml:4: piece.front.edge."centre front": "centre front"` + says + `"centre front" makes both in one, cut = 2 makes two`}},
		{"spelt otherwise", piece("front", "Center Back", "", ""), []string{`pinafore.toml:4: piece.front.edge."Center Back": "Center Back"` + says + `"Center Back" makes both in one, cut = 2 makes two`}},
		{"in short", piece("front", "cf", "", ""), []string{`pinafore.toml:4: piece.front.edge.cf: "cf"` + says + `"cf" makes both in one, cut = 2 makes two`}},
		{"half a skirt", piece("skirt", "centre", "", ""), []string{`pinafore.toml:4: piece.skirt.edge.centre: "centre"` + says + `"centre" makes both in one, cut = 2 makes two`}},
		{"half an apron", piece("apron", "Middle", "", ""), []string{`pinafore.toml:4: piece.apron.edge.Middle: "Middle"` + says + `"Middle" makes both in one, cut = 2 makes two`}},
		{"by its line", piece("skirt", "centre line", "", ""), []string{`pinafore.toml:4: piece.skirt.edge."centre line": "centre line"` + says + `"centre line" makes both in one, cut = 2 makes two`}},
		{"by the line of its back", piece("skirt", "center back line", "", ""), []string{`pinafore.toml:4: piece.skirt.edge."center back line": "center back line"` + says + `"center back line" makes both in one, cut = 2 makes two`}},
		{"the middle of a strip that is drawn whole", piece("skirt", "middle join", "", ""), nil},
		{"called after the fold", piece("front", "on the fold", "", ""), []string{`pinafore.toml:4: piece.front.edge."on the fold": "on the fold"` + says + `"on the fold" makes both in one, cut = 2 makes two`}},
		{"on the fold", piece("front", "centre front", "fold = \"centre front\"\n", ""), nil},
		{"cut twice", piece("front", "centre front", "cut = 2\n", ""), nil},
		{"cut twice, one of them a lining", piece("front", "centre front", "cut = 2\nlayers = 2\n", ""), []string{`pinafore.toml:6: piece.front.edge."centre front": "centre front"` + says + `"centre front" makes both in one, cut = 2 makes two`}},
		{"with an opening", piece("back", "centre back", "", " | hem = 1"), nil},
		{"not straight", sketch.Piece("front", sketch.Swap(halfFront, "MIDDLE: 0,0 0,10", "centre front: 0,0 0.5,5 0,10")), nil},
		{"with one in the edge", piece("front", "centre_front", "", ""), []string{`pinafore.toml:4: piece.front.edge.centre_front: "centre_front"` + says + `"centre_front" makes both in one, cut = 2 makes two`}},
		{"the left front", piece("left-front", "centre front", "", ""), nil},
		{"the same with an underscore", piece("left_front", "centre_front", "", ""), nil},
		{"a front by its name", piece("front", "centre front", "name = \"Right front\"\n", ""), nil},
		{"two edges of the centre", sketch.Piece("front", sketch.Swap(halfFront, "MIDDLE", "centre back", "side", "other centre back")), nil},
		{"another edge", piece("front", "inner edge", "", ""), nil},
		{"sewn to another", piece("front", "centre front", "", "") + piece("placket", "edge", "", "") + "[seam.s]\njoin = [\"front.centre front\", \"placket.edge\"]\n", nil},
		{"bound", piece("front", "centre front", "", "") + "[binding.b]\nalong = [\"front.centre front\"]\nwidth = 0.25\n", nil},
	} {
		t.Run(c.name, func(t *testing.T) { assert.Equal(t, c.want, saidOf(t, "unit = \"in\"\nallowance = 0.25\n"+c.text)) })
	}
}

// edgeWords is what two edges of a box say besides their points.
type edgeWords struct{ hem, right string }

// joinedBoxes is a file with a "front" and a "back" of one size, and a seam of their right
// edges.
func joinedBoxes(allowance string, front, back edgeWords) string {
	box := func(key string, words edgeWords) string {
		return sketch.Piece(key, "hem: 0,0 10,0 | "+words.hem+"\nright: 10,0 10,8 | "+words.right+"\ntop: 10,8 0,8\nleft: 0,8 0,0")
	}
	return "unit = \"in\"\nallowance = " + allowance + "\n" + box("front", front) + box("back", back) + "[seam.side]\njoin = [\"front.right\", \"back.right\"]\n"
}

func TestNoAllowanceInASeam(t *testing.T) {
	bare, none := edgeWords{right: "allowance = 0"}, edgeWords{}
	for _, c := range []struct {
		name, allowance string
		front, back     edgeWords
		want            []string
	}{
		{"both have one", "0.375", none, none, nil},
		{"one has none", "0.375", bare, none, []string{`pinafore.toml:31: seam.side: "front.right" has no allowance, and would be sewn on its cut edge, beside an allowance of 3/8 in`}},
		{"neither has", "0.375", bare, bare, []string{`pinafore.toml:31: seam.side: "front.right" and "back.right" have no allowance, and would be sewn on their cut edges`}},
		{"none of the garment", "0", none, none, []string{`pinafore.toml: no edge has an allowance or a hem, so there are no stitch lines; allowance = "3/8" at the top gives one to every edge`}},
		{"two that differ", "0.375", edgeWords{right: "allowance = 0.25"}, none, []string{`pinafore.toml:31: seam.side: the allowances of its two sides differ, 1/4 in and 3/8 in: the cut edges do not lie on each other when it is sewn`}},
	} {
		t.Run(c.name, func(t *testing.T) { assert.Equal(t, c.want, saidOf(t, joinedBoxes(c.allowance, c.front, c.back))) })
	}
}

// A hem of 2 in takes 2 1/4 in with a turn of 1/4 in.
func TestAHemWithoutItsTurn(t *testing.T) {
	with, without := edgeWords{hem: "hem = 2; turn = 0.25"}, edgeWords{hem: "hem = 2"}
	for _, c := range []struct {
		name, text string
		want       []string
	}{
		{"both with", joinedBoxes("0.375", with, with), nil},
		{"neither", joinedBoxes("0.375", without, without), nil},
		{"the second without", joinedBoxes("0.375", with, without),
			[]string{`pinafore.toml:19: piece.back.edge.hem: the hem has no turn, and "front.hem" has one of 1/4 in: folded back they take 2 in and 2 1/4 in, and the edge of this one is left raw`}},
		{"the first without", joinedBoxes("0.375", without, with),
			[]string{`pinafore.toml:4: piece.front.edge.hem: the hem has no turn, and "back.hem" has one of 1/4 in: folded back they take 2 in and 2 1/4 in, and the edge of this one is left raw`}},
		{"beside it over the seam, called otherwise and deeper", strings.ReplaceAll(joinedBoxes("0.375", with, edgeWords{hem: "hem = 2.25"}), `back.edge."hem"`, `back.edge."hem edge"`),
			[]string{`pinafore.toml:19: piece.back.edge."hem edge": the hem has no turn, and "front.hem" has one of 1/4 in: folded back they take 2 1/4 in and 2 1/4 in, and the edge of this one is left raw`}},
		{"of one name without a seam", strings.Split(joinedBoxes("0.375", with, without), "[seam")[0],
			[]string{`pinafore.toml:19: piece.back.edge.hem: the hem has no turn, and "front.hem" has one of 1/4 in: folded back they take 2 in and 2 1/4 in, and the edge of this one is left raw`}},
		{"of one name and another depth", strings.Split(joinedBoxes("0.375", with, edgeWords{hem: "hem = 1"}), "[seam")[0], nil},
		// A facing on a selvage needs no turn.
		{"round the corner", "unit = \"in\"\nallowance = 0.25\n" + sketch.Front("centre back: 0,10 0,0 | hem = 1\nhem: 0,0 8,0 | hem = 1; turn = 0.25\nside: 8,0 8,10\ntop: 8,10 0,10"), nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			var got []string
			for _, one := range saidOf(t, c.text) {
				if !strings.Contains(one, "seam.side: sewn") { // for the hems take as much as they do
					got = append(got, one)
				}
			}
			assert.Equal(t, c.want, got)
		})
	}
}

// The outer edge of a collar, half of it drawn, is 7 1/2 in sewn, and 15 in whole: 7 3/4 in
// less 1/4 in at the front, and less nothing on the fold, where sewing takes nothing.
func TestALiningThatIsReckonedIn(t *testing.T) {
	collar := func(key, head string) string {
		return sketch.Piece(key, head+"centre back: 0,3 0,0\nneck: 0,0 7.75,0\nfront: 7.75,0 7.75,3\nouter: 7.75,3 0,3")
	}
	const fold = "fold = \"centre back\"\n"
	along := func(key string) string {
		return "[trim.lace]\nalong = [\"" + key + ".outer\"]\nwidth = 1\n[ruffle.frill]\nalong = [\"" + key + ".outer\"]\nfullness = 2\ndepth = 2\n"
	}
	const says = `, and its line is reckoned for all of them, 30 in; is half of it the lining? layers = 2 in the piece makes it 15 in`
	for _, c := range []struct {
		name, text string
		want       []string
	}{
		{"cut once on the fold", collar("collar", fold) + along("collar"), nil},
		{"cut twice on the fold", collar("collar", fold+"cut = 2\n") + along("collar"), []string{
			`pinafore.toml:19: trim.lace: "collar" is cut twice on the fold` + says, `pinafore.toml:22: ruffle.frill: "collar" is cut twice on the fold` + says}},
		// 7 25/32 in, read as 7 13/16 in, four times and twice: as the figures add it up.
		{"of a length between two sixteenths", strings.ReplaceAll(collar("collar", fold+"cut = 2\n"), "7.75", "8.03125") + along("collar"), []string{
			`pinafore.toml:19: trim.lace: "collar" is cut twice on the fold, and its line is reckoned for all of them, 31 1/4 in; is half of it the lining? layers = 2 in the piece makes it 15 5/8 in`,
			`pinafore.toml:22: ruffle.frill: "collar" is cut twice on the fold, and its line is reckoned for all of them, 31 1/4 in; is half of it the lining? layers = 2 in the piece makes it 15 5/8 in`}},
		{"front and back of a skirt by one pattern", strings.ReplaceAll(collar("skirt", fold+"cut = 2\n"), "centre back", "centre") + along("skirt"), nil},
		{"a skirt by its centre back", collar("skirt", fold+"cut = 2\n") + along("skirt"), []string{
			`pinafore.toml:19: trim.lace: "skirt" is cut twice on the fold` + says, `pinafore.toml:22: ruffle.frill: "skirt" is cut twice on the fold` + says}},
		{"with its lining said", collar("collar", fold+"cut = 2\nlayers = 2\n") + along("collar"), nil},
		{"four of a half", collar("yoke", "cut = 4\n") + along("yoke"), []string{
			`pinafore.toml:18: trim.lace: "yoke" is cut 4 times, and its line is reckoned for all of them, 29 in; is half of it the lining? layers = 2 in the piece makes it 14 1/2 in`,
			`pinafore.toml:21: ruffle.frill: "yoke" is cut 4 times, and its line is reckoned for all of them, 29 in; is half of it the lining? layers = 2 in the piece makes it 14 1/2 in`}},
		{"two of a half", collar("yoke", "cut = 2\n") + along("yoke"), nil},
		{"two sleeves on the fold", collar("sleeve", strings.Replace(fold, "centre back", "outer", 1)+"cut = 2\n") + strings.Replace(along("sleeve"), "outer", "neck", -1), nil},
		{"two sleeves of a front", collar("front sleeve", fold+"cut = 2\n") + along("front sleeve"), nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			text := strings.ReplaceAll(c.text, "[piece.front sleeve", "[piece.\"front sleeve\"")
			assert.Equal(t, c.want, saidOf(t, "unit = \"in\"\nallowance = 0.25\n"+text))
		})
	}
}
