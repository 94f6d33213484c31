package figures

import (
	"fmt"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/gauge"
	"tuckmark/marking/mark"
	"tuckmark/marking/sheet"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
	"tuckmark/marking/source"
)

// told are steps of the work as a test writes them: "what is done: its number, [pages]".
func told(tasks []mark.Task) []string {
	var all []string
	for _, t := range tasks {
		text := t.Do
		if t.Number != "" {
			text += ": " + t.Number
		}
		if len(t.Keys) > 0 {
			text += " [" + strings.Join(t.Keys, ", ") + "]"
		}
		all = append(all, text)
	}
	return all
}

func TestTheOrderOfWork(t *testing.T) {
	const (
		plain  = "left: 0,8 0,0\nhem: 0,0 10,0\nright: 10,0 10,8\ntop: 10,8 0,8"
		hemmed = "hem: 0,0 10,0 | hem = 2\nrest: 10,0 10,8 0,8 0,0"
		tucked = `[piece.bib]
name = "Bib"
fold = "centre"
drawn = "finished"
[piece.bib.edge]
centre = {points = [[0, 0], [0, 6]]}
top = {points = [[0, 6], [4, 6]]}
side = {points = [[4, 6], [4, 0]]}
foot = {points = [[4, 0], [0, 0]], hem = "1/2"}
[piece.bib.tuck.pin]
beside = "centre"
width = "1/8"
count = 4
first = "1/2"
gap = "1/8"
[piece.bib.block]
sides = 1
`
	)
	for _, c := range []struct {
		name, text string
		want       []string
	}{
		{"one flat piece", "allowance = 0\n" + sketch.Front(plain), []string{"Mark and cut the pieces: 1 in all [front]"}},
		// 8 tucks that take 1/4 in each: 8 + 2 + 2 = 12 wide, of which 10 are left; 6 + 2 x 1/2
		// long. Fold lines lie 3 x 1/8 + 1/8 apart. The sample: 9 x 1/2 + 2 (1/8 + 1/2) =
		// 5 3/4 is too wide; 8 x 1/2 + 1 1/4 = 5 1/4 for nine.
		{"a tucked block", "allowance = \"1/4\"\n" + tucked, []string{
			"Sew the sample of the pin tucks: flat 5 1/4 in [bib pin sample]",
			"Tear the block for Bib, and press it: 12 in by 7 in [bib tuck sheet]",
			"Rule the centre and the tucks of Bib: 1/2 in from fold to fold [bib tuck sheet, bib tuck ruler]",
			"Sew the tucks of Bib, press them, and measure the top edge: 10 in [bib tuck sheet]",
			"Lay the cutting sheet of Bib on the block, and cut one layer at a time: cut 1 [bib cutting sheet]",
			"Fold in and sew the foot of Bib: 1/2 in deep [bib cutting sheet]",
		}},
		{"a tucked block and another piece", "allowance = \"1/4\"\n" + tucked + sketch.Front(plain+"\n---\n[seam.one]\njoin = [\"bib.side\", \"front.left\"]\nwithin = 3"), []string{
			"Sew the sample of the pin tucks: flat 5 1/4 in [bib pin sample]",
			"Tear the block for Bib, and press it: 12 in by 7 in [bib tuck sheet]",
			"Rule the centre and the tucks of Bib: 1/2 in from fold to fold [bib tuck sheet, bib tuck ruler]",
			"Sew the tucks of Bib, press them, and measure the top edge: 10 in [bib tuck sheet]",
			"Lay the cutting sheet of Bib on the block, and cut one layer at a time: cut 1 [bib cutting sheet]",
			"Mark and cut the other pieces: 1 in all [front]",
			"Sew the seam: one: 1/4 in from the cut edge",
			"Fold in and sew the foot of Bib: 1/2 in deep [bib cutting sheet]",
			"See to the edges that no step above finishes: the top of Bib and the hem, right and top of front [bib cutting sheet, front]",
		}},
		// What runs up a piece is folded before what runs across its foot, however they are drawn.
		{"the hem of an opening", "allowance = 0\n" + sketch.Piece("a", "hem: 0,0 10,0 | hem = 2\nopening: 10,0 10,8 | hem = 1\nrest: 10,8 0,8 0,0"), []string{
			"Mark and cut the pieces: 1 in all [a]",
			"Fold in and sew the opening of a: 1 in deep [a]",
			"Fold in and sew the hem of a: 2 in deep [a]",
		}},
		// Two hems of one depth on pieces of one name for it are one step; a third is another.
		{"hems", "allowance = 0\n" + sketch.Piece("a", hemmed) + sketch.Piece("b", hemmed) + sketch.Piece("c", sketch.Swap(hemmed, "hem = 2", "hem = 1")), []string{
			"Mark and cut the pieces: 3 in all [a, c]",
			"Fold in and sew the hem of a and b: 2 in deep [a]",
			"Fold in and sew the hem of c: 1 in deep [c]",
		}},
	} {
		t.Run(c.name, func(t *testing.T) {
			pattern := made.Of(t, c.text)
			assert.Equal(t, c.want, told(Work(pattern, sheet.Of(pattern))))
		})
	}
}

// The steps of the examples, each with its number, which is derived by hand from the file.
func TestNumbersOfTheWorkOfExamples(t *testing.T) {
	for file, want := range map[string][]string{
		"shirt": {
			"Sew the sample of the bosom tucks: flat 5 1/4 in", // 8 spaces of 1/2 in between 9 folds, and 1/8 + 1/2 in at either end
			// Half of the top is 6 5/8 in, and 1/2 in for the side: 14 1/4 in; 14 tucks take 1/4 in
			// each: 17 3/4 in. From the hem to the shoulder 14 in, and 1/2 in at either end.
			"Tear the block for Front, and press it: 17 3/4 in by 15 in",
			"Rule the centre and the tucks of Front: 1/2 in from fold to fold", // 3 x 1/8 in and the gap of 1/8 in
			"Sew the tucks of Front, press them, and measure the top edge: 14 1/4 in",
			"Lay the cutting sheet of Front on the block, and cut one layer at a time: cut 1",
			"Mark and cut the other pieces: 2 in all", // two backs
			"Fold in and sew the centre back of Back: 3/4 in deep",
			"Sew the seams: shoulder and side: 3/8 in from the cut edge",
			"Fold in and sew the hem of Front and Back: 1 1/2 in deep, 1/4 in turned in",
			"See to the edges that no step above finishes: the armhole and neck of Front and Back",
			// 13 1/4 in, less 3/8 in at the neck and 1 3/4 in for the hem and its turn.
			`Close the centre back of Back, with one "centre back line" on the other: 11 1/8 in long`,
		},
		"nightgown": {
			"Mark and cut the pieces: 6 in all", // two halves of the back of the yoke, and four
			"Fold in and sew the top of Pocket: 1.5 cm deep, 0.5 cm turned in",
			// Round 9 cm by 10 cm, 1 cm inside: twice 10 - 2 - 1 cm and 9 - 2 cm are 21 cm; two
			// corners of twice 1.2 cm, and 1.2 cm to turn in.
			"Cut the pocket lace, and sew it on: 27 cm",
			"Sew in its place: Pocket: 1 piece",
			"Fold in and sew the centre back of Yoke back: 2 cm deep",
			// 22 cm less 1.1 cm, and 11.5 cm less 1.1 cm, across the slope of the armholes; 14.6 cm
			// less 1.1 cm and the facing of 2 cm.
			"Gather the top of Skirt front to the foot of Yoke front, in each half: 20.9 cm to 10.4 cm",
			"Gather the top of Skirt back to the foot of Yoke back, in each half: 20.9 cm to 11.5 cm",
			"Sew the seams: shoulder, side, front gathers and back gathers: 1 cm from the cut edge",
			"Cut the neck ribbon, and sew it on: 77 cm",                        // twice 9.5 and 9 cm, and 40 cm to tie
			"Gather the foot ruffle, and sew it on: 168 cm to 112 cm",          // four times 28 cm, and half as much again
			"Cut the armhole binding on the bias, and sew it on: 2 of 42.4 cm", // 22 + 21.8 + 18.8 + 18.8 cm, and twice 1.7 cm
			"Close the centre back of Yoke back, edge to edge: 10 cm long",     // 12 cm, less 1 cm at either end
		},
	} {
		t.Run(file, func(t *testing.T) {
			text, err := os.ReadFile("../../examples/" + file + ".toml")
			require.NoError(t, err)
			pattern := made.Of(t, string(text))
			tasks := Work(pattern, sheet.Of(pattern))
			for i := range tasks {
				tasks[i].Keys = nil
			}
			assert.Equal(t, want, told(tasks))
		})
	}
}

// A step is done along the lines of what it is about, so that only their pages are told; by a
// seam stand the pages of its figures.
func TestStepsKnowTheirLines(t *testing.T) {
	text, err := os.ReadFile("../../examples/nightgown.toml")
	require.NoError(t, err)
	pattern := made.Of(t, string(text))
	for _, task := range Work(pattern, sheet.Of(pattern)) {
		switch {
		case strings.HasPrefix(task.Do, "Fold in and sew the top of Pocket"):
			assert.Equal(t, []string{"top turn", "top fold"}, task.Lines)
		case strings.HasPrefix(task.Do, "Gather the foot ruffle"):
			assert.Equal(t, []string{"hem", "hem"}, task.Lines)
		case strings.HasPrefix(task.Do, "Gather the top"), strings.HasPrefix(task.Do, "Sew the seams"):
			assert.Equal(t, "Seams", task.Section)
		}
	}
}

// Every step that has pages has those of markings that are printed.
func TestStepsNameMarkingsThatThereAre(t *testing.T) {
	for _, ways := range [][]source.Transfer{nil, {source.Trace}, {source.Template}, {source.Mirror}, {source.Prick}, {source.Trace, source.Template}} {
		pattern := sheet.Transferred(made.Of(t, sketch.Frock), ways)
		markings := append(sheet.Of(pattern), gauge.Of(pattern)...)
		known := map[string]bool{}
		for _, m := range markings {
			known[m.Key] = true
		}
		used := map[string]bool{}
		tasks := Work(pattern, markings)
		for _, task := range tasks {
			for _, key := range task.Keys {
				assert.True(t, known[key], "%s: there is no %q", task.Do, key)
				used[key] = true
			}
		}
		for _, m := range markings {
			assert.True(t, used[m.Key], "no step is done with %q", m.Key)
		}
		require.NotEmpty(t, tasks)
	}
}

func TestNoWorkWithoutMarkings(t *testing.T) {
	assert.Empty(t, Work(made.Of(t, sketch.Frock), nil))
}

// Many names are cut short, so that a step stays one.
func TestNamesInAStep(t *testing.T) {
	for _, c := range []struct {
		names []string
		want  string
	}{
		{[]string{"Front"}, "Front"},
		{[]string{"Front", "Back", "Yoke"}, "Front, Back and Yoke"},
		{[]string{"1", "2", "3", "4", "5", "6"}, "1, 2, 3, 4, 5 and 6"},
		{[]string{"1", "2", "3", "4", "5", "6", "7", "8"}, "1, 2, 3, 4, 5, 6 and 2 more"},
	} {
		assert.Equal(t, c.want, namesOf(c.names))
	}
}

// dos are what is done in some steps.
func dos(tasks []mark.Task) []string {
	var all []string
	for _, task := range tasks {
		all = append(all, task.Do)
	}
	return all
}

// An edge is finished by a seam, by its hem, or by what is sewn along it; one on the fold is none.
// Where no seam joins a piece nobody knows what its edges are sewn to.
func TestEdgesThatNothingFinishes(t *testing.T) {
	const (
		half   = "fold = \"centre\"\ncentre: 0,0 0,8\nneck: 0,8 3,8\nside: 3,8 3,0\nfoot: 3,0 0,0 | hem = 1"
		joined = "[seam.side]\njoin = [\"a.side\", \"b.side\"]\n"
	)
	for _, c := range []struct{ name, text, want string }{
		{"the neck of both", joined, "the neck of a and b"},
		{"with lace along one", joined + "[trim.lace]\nalong = \"a.neck\"\n", "the neck of b"},
		{"bound", joined + "[binding.neck]\nalong = [\"a.neck\", \"b.neck\"]\nwidth = \"1/4\"\n", ""},
		{"sewn together", joined + "[seam.neck]\njoin = [\"a.neck\", \"b.neck\"]\n", ""},
		{"without a seam", "", ""},
		{"a piece that no seam joins", "[seam.side]\njoin = [\"a.side\", \"a.neck\"]\nwithin = 9\n", ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			pattern := made.Of(t, "allowance = \"1/4\"\n"+sketch.Piece("a", half)+sketch.Piece("b", half)+c.text)
			got := ""
			for _, task := range Work(pattern, sheet.Of(pattern)) {
				if rest, ok := strings.CutPrefix(task.Do, "See to the edges that no step above finishes: "); ok {
					got = rest
				}
			}
			assert.Equal(t, c.want, got)
		})
	}
}

// A hem that ends at a gathered edge is folded before that is gathered, one that ends at
// what is sewn on before that, and one that ends at a seam after the seam. What no seam joins is
// finished before it is sewn in its place.
func TestWhenHemsAreFolded(t *testing.T) {
	const (
		yoke  = "foot: 0,0 10,0\nside: 10,0 10,4 | hem = 1\ntop: 10,4 0,4\nend: 0,4 0,0"
		skirt = "foot: 0,0 20,0 | hem = 2\nside: 20,0 20,9\nwaist: 20,9 0,9\nend: 0,9 0,0"
		purse = "foot: 0,0 5,0\nside: 5,0 5,5\nmouth: 5,5 0,5 | hem = 1\nend: 0,5 0,0"
	)
	pattern := made.Of(t, "allowance = 0\n"+sketch.Piece("yoke", yoke)+sketch.Piece("skirt", skirt)+sketch.Piece("purse", purse)+`
[seam.waist]
join = ["skirt.waist", "yoke.foot"]
gathered = true
[seam.back]
join = ["skirt.side", "skirt.end"]
[trim.lace]
along = "purse.side"
`)
	assert.Equal(t, []string{
		"Mark and cut the pieces",
		"Fold in and sew the side of yoke",
		"Sew the seam: back",
		"Gather the waist of skirt to the foot of yoke",
		"Sew the seam: waist",
		"Fold in and sew the mouth of purse",
		"Cut the lace, and sew it on",
		"Sew in its place: purse",
		"Fold in and sew the foot of skirt",
		"See to the edges that no step above finishes: the top and end of yoke",
	}, dos(Work(pattern, sheet.Of(pattern))))
}

// Lace that is sewn to a hem comes after it, at its fold.
func TestLaceAtAHemComesAfterIt(t *testing.T) {
	const skirt = "foot: 0,0 20,0 | hem = 2\nside: 20,0 20,9\nwaist: 20,9 0,9\nend: 0,9 0,0"
	pattern := made.Of(t, "allowance = \"1/4\"\n"+sketch.Piece("skirt", skirt)+"[seam.back]\njoin = [\"skirt.side\", \"skirt.end\"]\n[trim.lace]\nalong = \"skirt.foot\"\n")
	assert.Equal(t, []string{
		"Mark and cut the pieces", "Sew the seam: back", "Fold in and sew the foot of skirt", "Cut the lace, and sew it on",
	}, dos(Work(pattern, sheet.Of(pattern)))[:4])
}

// Templates alone: the pieces are marked by them and cut; beside other sheets they are drawn along
// afterwards.
func TestWorkWithTemplatesAlone(t *testing.T) {
	pattern := sheet.Transferred(made.Of(t, "allowance = \"1/4\"\n"+sketch.Front("hem: 0,0 10,0 | hem = 1\nright: 10,0 10,8\ntop: 10,8 0,8 | marked = true\nleft: 0,8 0,0")), []source.Transfer{source.Template})
	steps := told(Work(pattern, sheet.Of(pattern)))
	assert.Equal(t, "Mark front by its template, and cut it: 1 piece [front template]", steps[0])
	assert.NotContains(t, strings.Join(steps, "\n"), "Draw along")

	pattern = sheet.Transferred(pattern, []source.Transfer{source.Trace, source.Template})
	markings := sheet.Of(pattern)
	assert.Equal(t, []string{
		"Mark and cut the pieces: 1 in all [front]",
		"Draw along the templates, and through their windows [front template]",
	}, told(Work(pattern, markings))[:2])
	for i := range markings {
		markings[i].Marks = slices.DeleteFunc(markings[i].Marks, func(one mark.Mark) bool { return one.Role == mark.Window })
	}
	assert.Equal(t, "Draw along the templates", Work(pattern, markings)[1].Do, "without a window")
}

// Folds that lie no number of sixteenths apart are ruled by the ticks of the tuck ruler; of a
// block that is stitched only what remains is told.
func TestWorkOfABlock(t *testing.T) {
	number := func(tasks []mark.Task, do string) (string, bool) {
		for _, task := range tasks {
			if strings.HasPrefix(task.Do, do) {
				return task.Number, true
			}
		}
		return "", false
	}
	for _, c := range []struct{ file, want string }{
		// A tuck takes (10 - 7 3/8) / 10 = 0.2625 in: with its width and the gap 0.45 in from
		// fold to fold; without the sample 1/4 + 1/8 + 1/16.
		{sketch.Frock, "by the tuck ruler"},
		{sketch.Swap(sketch.Frock, `sample = {tucks = 10, flat = "10", sewn = "7 3/8"}`, ""), "7/16 in from fold to fold"},
		// From group to group it is 3/8 and what shows.
		{sketch.Swap(sketch.Frock, `sample = {tucks = 10, flat = "10", sewn = "7 3/8"}`, "groups = 2\nbetween = \"1/4\""), "7/16 in from fold to fold, 5/8 in from group to group"},
		{sketch.Swap(sketch.Frock, `sample = {tucks = 10, flat = "10", sewn = "7 3/8"}`, "betweens = [\"1/4\", \"1/8\"]"), ""},
	} {
		pattern := made.Of(t, c.file)
		got, _ := number(Work(pattern, sheet.Of(pattern)), "Rule the centre")
		assert.Equal(t, c.want, got)
	}
	pattern := made.Of(t, sketch.Swap(sketch.Frock, "[piece.front.block]\n", "[piece.front.block]\nmeasured = \"14 1/16\"\n"))
	tasks := Work(pattern, sheet.Of(pattern))
	for _, done := range []string{"Tear", "Rule", "Sew the tucks"} {
		_, there := number(tasks, done)
		assert.False(t, there, done)
	}
	got, _ := number(tasks, "Measure the top edge of the stitched block of Front once more")
	assert.Equal(t, "14 1/16 in", got)
}

func TestIncluded(t *testing.T) {
	const square = "foot: 0,0 10,0\nright: 10,0 10,8\ntop: 10,8 0,8\nleft: 0,8 0,0"
	for _, c := range []struct{ file, want string }{
		{"allowance = 0\n" + sketch.Front(square), "No seam allowances are included: every edge is cut where it is sewn."},
		{"allowance = 1\n" + sketch.Front(square), "Seam allowances and hems are included."},
		{"allowance = 1\n" + sketch.Front(sketch.Swap(square, "0,8 0,0", "0,8 0,0 | allowance = 0")), "Seam allowances and hems are included; the left of front has none."},
		{"allowance = 0\n" + sketch.Piece("a", square) + sketch.Piece("b", sketch.Swap(square, "10,0\nright", "10,0 | hem = 1\nright")),
			"Seam allowances and hems are included; the foot of a, the right of a, the top of a, the left of a, the right of b, the top of b and the left of b have none."},
	} {
		assert.Equal(t, c.want, Included(made.Of(t, c.file)))
	}
}

// What is sewn to what does not hang on how the lines come onto the cloth.
func TestOrderOfWorkOfOtherTransfers(t *testing.T) {
	text, err := os.ReadFile("../../examples/pinafore.toml")
	require.NoError(t, err)
	unsaid := regexp.MustCompile(`\[seam\."neck facing"\]\n.*\n`).ReplaceAllString(string(text), "")
	require.NotEqual(t, string(text), unsaid)
	pattern := made.Of(t, unsaid)
	traced := told(Work(pattern, sheet.Of(pattern)))
	other := sheet.Transferred(pattern, []source.Transfer{source.Template})
	templated := told(Work(other, sheet.Of(other)))
	sewn := func(steps []string) (all []string) {
		for _, s := range steps {
			if strings.HasPrefix(s, "Sew in") {
				s, _, _ = strings.Cut(s, " [")
				all = append(all, s)
			}
		}
		return all
	}
	assert.Equal(t, []string{"Sew in their places: Neck facing strip: 2 pieces"}, sewn(traced))
	assert.Equal(t, sewn(traced), sewn(templated))
	steps := strings.Join(templated, "\n")
	assert.Contains(t, steps, "Mark and cut Neck facing strip: 2 in all [neck strip]", "it has no template, but its plain sheet")
	assert.Contains(t, steps, "Mark Front and Back by their templates, and cut them: 3 pieces", "a front and two backs")
}

// A bodice whose front has an insertion down to its waist, and whose back opens at a placket, sewn to
// a skirt that is open behind: what ends in a seam is done before that (common practice). A row round
// the skirt goes over its side seams, and comes after them.
func TestWhatEndsInASeamComesBeforeIt(t *testing.T) {
	const (
		front = "fold = \"centre\"\ncentre: 0,0 0,8\nneck: 0,8 5,8\nside: 5,8 5,0\nwaist: 5,0 0,0\n---\n\n[line.insertion]\nbeside = \"centre\"\nat = 2\n"
		back  = "cut = 2\nplacket: 0,0 0,8 | hem = 1\nneck: 0,8 6,8\nside: 6,8 6,0\nwaist: 6,0 0,0\n---\n\n[line.row]\nalong = \"waist\"\ndistance = 2\n"
		skirt = "cut = 2\nopening: 0,0 0,8\nwaist: 0,8 5,8\nside: 5,8 5,0\nfoot: 5,0 0,0 | hem = 1\n"
	)
	pattern := made.Of(t, "unit = \"in\"\nallowance = \"1/4\"\n"+sketch.Piece("front", front+"\n[line.row]\nalong = \"waist\"\ndistance = 2\n")+sketch.Piece("back", back)+sketch.Piece("skirt", skirt)+sketch.Piece("band", "fold = \"left\"\n"+sketch.Rect("5"))+`
[seam.side]
join = ["front.side", "back.side"]
[seam.waist]
join = ["back.waist", "skirt.waist"]
within = 3
[trim.row]
along = ["front.row", "back.row"]
[trim.insertion]
along = ["front.insertion"]
[seam.band]
join = ["front.waist", "band.top"]
`)
	var at []int
	all := dos(Work(pattern, sheet.Of(pattern)))
	for _, do := range []string{"Fold in and sew the placket of back", "Cut the insertion lace, and sew it on", "Sew the seams: side, waist and band", "Cut the row lace, and sew it on", "Fold in and sew the foot of skirt"} {
		at = append(at, slices.Index(all, do))
	}
	assert.True(t, slices.IsSorted(at) && at[0] >= 0, "%d of %q", at, all)
}

// A step lists all seams that are sewn then; of many there are several steps.
func TestNoSeamIsLeftOut(t *testing.T) {
	text := "allowance = \"1/4\"\n"
	for i := range 8 {
		text += sketch.Piece(fmt.Sprintf("p%d", i), "bottom: 0,0 5,0\nright: 5,0 5,5\ntop: 5,5 0,5\nleft: 0,5 0,0")
	}
	for i := range 8 {
		text += fmt.Sprintf("[seam.s%d]\njoin = [\"p%d.right\", \"p%d.left\"]\n", i, i, (i+1)%8)
	}
	pattern := made.Of(t, text)
	all := dos(Work(pattern, sheet.Of(pattern)))
	assert.Contains(t, all, "Sew the seams: s0, s1, s2, s3, s4 and s5")
	assert.Contains(t, all, "Sew the seams: s6 and s7")
}

// A ruffle without a hem has a raw edge, which is said as of an edge of a piece.
func TestARuffleWithoutAHem(t *testing.T) {
	for _, c := range []struct {
		hem  string
		told bool
	}{{"", true}, {"hem = \"1/4\"\n", false}, {"turn = \"1/8\"\n", false}} {
		pattern := made.Of(t, "allowance = \"1/4\"\n"+sketch.Piece("collar", "bottom: 0,0 5,0\nright: 5,0 5,5\ntop: 5,5 0,5\nleft: 0,5 0,0")+
			"[ruffle.frill]\nalong = \"collar.bottom\"\nfullness = 2\ndepth = 1\n"+c.hem)
		assert.Equal(t, c.told, slices.Contains(dos(Work(pattern, sheet.Of(pattern))), "See to the lower edge of what has no hem: the frill ruffle"), c.hem)
	}
}
