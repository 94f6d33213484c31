package figures

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// What holds for every garment is said last (common practice).
var always = []string{
	"Try the marker on a scrap of the same cloth. Take its marks out with cold water, before any iron or detergent: heat can set them for good.",
	"Count the pins into the cloth, and count them out again.",
}

// What a caution has to name: the rule and what it holds for.
var (
	ofNeck  = []string{"16 CFR 1120.3", "ASTM F1816-97", "neck and hood", "sizes 2T to 12", "strangle"}                                                        // 16 CFR 1120.3 with ASTM F1816-97
	ofWaist = []string{"16 CFR 1120.3", "ASTM F1816-97", "waist and bottom", "sizes 2T to 16", "at most 3 in", "full width", "knots or toggles", "bar-tacked"} // 16 CFR 1120.3 with ASTM F1816-97
	ofLower = []string{"at the waist. Its ends can catch in a door or on a vehicle, and drag a child."}                                                        // common practice
	ofNight = []string{"16 CFR 1615", "flame tests", "sleepwear"}                                                                                              // 16 CFR 1615 and 1616
	ofAges  = []string{"16 CFR 1615 (sizes 0 to 6X) and 1616 (sizes 7 to 14)"}                                                                                 // 16 CFR 1615.1(a), 1616.2(a)
	ofClose = []string{"tight-fitting"}                                                                                                                        // 16 CFR 1615.1(o), 1616.2(m)
	ofYoung = []string{"nine months or smaller", "at most 64.8 cm (25 3/4 in) in one piece", "40 cm (15 3/4 in) each in two"}                                  // 16 CFR 1615.1(c)
	ofLaw   = []string{"where you live and where you sell", "no legal advice"}
)

// legal returns the cautions that come before those for every garment.
func legal(t *testing.T, cautions []string) []string {
	n := len(cautions) - len(always)
	require.GreaterOrEqual(t, n, 0)
	require.Equal(t, always, cautions[n:])
	return cautions[:n]
}

// requireNamed asks for one caution that names all of these for each of them, the last that
// no advice is legal, and for no other.
func requireNamed(t *testing.T, cautions []string, want ...[]string) {
	t.Helper()
	got := legal(t, cautions)
	if len(want) == 0 {
		require.Empty(t, got)
		return
	}
	want = append(want, ofLaw)
	require.Len(t, got, len(want))
	for i, names := range want {
		for _, name := range names {
			require.Contains(t, got[i], name)
		}
	}
}

func cautioned(t *testing.T, head, piece, beside string) []string {
	return cautionsOf(made.Of(t, head+"allowance = 0\n"+sketch.Front(piece)+"\n"+beside))
}

const neckRibbon = "[trim.tie]\nalong = \"front.neck\"\nkind = \"ribbon\"\n"

func TestForWhomACautionIs(t *testing.T) {
	for _, c := range []struct {
		name, head string
		child      bool
	}{
		{"no size", "", true},
		{"18 months", "size = \"18 months\"\n", true},
		{"2T", "size = \"2T\"\n", true},
		{"24M", "size = \"24M\"\n", true},
		{"3 years", "size = \"3 years\"\n", true},
		{"a number", "size = \"6\"\n", true},
		{"adult M", "size = \"adult M\"\n", false},
		{"Adult 12", "size = \"Adult 12\"\n", false},
		{"Women's 14", "size = \"Women's 14\"\n", false},
		{"a lady's blouse", "title = \"Ladies' blouse\"\nsize = \"M\"\n", false},
		{"a child's, also with an adult's word", "title = \"Little man shirt\"\nsize = \"2 years\"\n", true},
		{"a word within another", "title = \"Mandarin coat\"\n", true},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := cautioned(t, c.head, sketch.SquareNeck, neckRibbon)
			if c.child {
				requireNamed(t, got, ofNeck)
			} else {
				requireNamed(t, got)
			}
		})
	}
}

// Cords in a garment of a child, by where they lie. The rules name neck and hood, waist and
// bottom of upper garments (16 CFR 1120.3 with ASTM F1816-97); what is no cord, or cannot
// catch a child, is common practice.
func TestCords(t *testing.T) {
	const (
		square = sketch.SquareNeck
		strip  = "\n[piece.tie]\nname = \"NAME\"\n[piece.tie.edge.end]\npoints = [[0, 0], [1, 0]]\n[piece.tie.edge.rest]\npoints = [[1, 0], [1, 9], [0, 9], [0, 0]]\n"
	)
	named := func(name string) string { return "name = \"" + name + "\"\n" + square }
	drawn := func(name string) string { return strings.Replace(strip, "NAME", name, 1) }
	sewn := func(to string) string { return "\n[seam.x]\njoin = [\"tie.end\", \"front." + to + "\"]\n" }
	line := func(name, along string) string {
		return square + "---\n\n[line." + name + "]\nalong = \"" + along + "\"\ndistance = \"1/2\"\n"
	}
	trim := func(name, along, kind string) string {
		return "[trim.\"" + name + "\"]\nalong = \"front." + along + "\"\nkind = \"" + kind + "\"\n"
	}
	neck, waist, both, none := [][]string{ofNeck}, [][]string{ofWaist}, [][]string{ofNeck, ofWaist}, [][]string(nil)
	lower := [][]string{ofLower}
	anyhow := [][]string{{"16 CFR 1120.3", "ASTM F1816-97", "At a neck or a hood", "sizes 2T to 12", "waist and bottom, sizes 2T to 16", "at most 3 in"}}
	for _, c := range []struct {
		name, title, piece, beside string
		want                       [][]string
	}{
		{"no trim", "", square, "", none},
		{"ribbon at the neck", "", square, neckRibbon, neck},
		{"cord at the neck", "", square, trim("tie", "neck", "cord"), neck},
		{"lace at the neck", "", square, trim("edging", "neck", "lace"), none},
		{"braid at the neck", "", square, trim("edging", "neck", "braid"), none},
		{"lace that is called a drawstring", "", square, trim("Drawstring", "neck", "lace"), neck},
		{"ribbon for the neck, sewn on elsewhere", "", square, trim("neck ribbon", "side", "ribbon"), neck},
		{"ribbon on a collar", "", named("Round collar"), trim("x", "hem", "ribbon"), neck},
		{"lace on a collar", "", named("Round collar"), trim("x", "hem", "lace"), none},
		{"a casing along the neck", "", line("casing", "neck"), "", neck},
		{"a casing for elastic along the neck", "", line("\"elastic casing\"", "neck"), "", none},
		{"a casing along the edge of a hood", "", "name = \"Hood\"\n" + line("casing", "hem"), "", neck},
		{"a line of another kind along the neck", "", line("facing", "neck"), "", none},
		{"a binding with ends to tie", "", square, "[binding.\"neck ties\"]\nalong = \"front.neck\"\nwidth = \"1/4\"\n", neck},
		{"a plain binding at the neck", "", square, "[binding.neck]\nalong = \"front.neck\"\nwidth = \"1/4\"\n", none},
		{"a word within another", "", named("Patties"), "", none},

		{"a cord at the waist", "", square, trim("waist", "side", "cord"), waist},
		{"a cord at the hem", "", square, trim("x", "hem", "cord"), waist},
		{"a casing along the hem", "", line("casing", "hem"), "", waist},
		{"a casing at the waist", "", line("\"waist casing\"", "hem"), "", waist},
		{"a casing for elastic at the waist", "", line("\"waist elastic, casing\"", "hem"), "", none},
		{"a ribbon at the waist", "", square, trim("waist ribbon", "side", "ribbon"), waist},
		{"a ribbon that is sewn flat along the hem", "", square, trim("x", "hem", "ribbon"), none},
		{"lace along the hem", "", square, trim("x", "hem", "lace"), none},
		{"a casing along the hem of a sleeve", "", "name = \"Sleeve\"\n" + line("casing", "hem"), "", none},
		{"a cord at the waist of trousers", "", named("Trousers"), trim("waist", "side", "cord"), lower},
		{"a drawstring at the waist of bloomers, by the title", "Bloomers", square, trim("waist drawstring", "side", "cord"), lower},
		{"a cord at the waist of the bloomers of a suit", "Play suit", named("Bloomers"), trim("waist", "side", "cord"), lower},
		{"a tie that is drawn for the waist of bloomers", "Bloomers", square, drawn("Waist tie"), lower},
		{"a cord at the leg of bloomers", "Bloomers", square, trim("leg", "side", "cord"), none},
		{"a cord at the waist of a skirt", "Lawn skirt", square, trim("waist", "side", "cord"), lower},
		{"a cord at the waist of a frock with a skirt", "Frock and skirt", named("Skirt"), trim("waist", "side", "cord"), waist},
		{"a casing at the waist of bloomers, by the title", "Bloomers", line("\"waist casing\"", "hem"), "", none},
		{"a casing at the waist of a frock with bloomers", "Frock and bloomers", line("\"waist casing\"", "hem"), "", waist},
		{"a ribbon at the neck and a cord at the waist of trousers", "", named("Trousers"), neckRibbon + trim("waist", "side", "cord"), [][]string{ofNeck, ofLower}},
		{"at the neck and at the waist", "", line("\"waist casing\"", "hem"), neckRibbon, both},

		{"a string that is drawn for the neck", "", named("Neck string"), "", neck},
		{"a tie that is drawn for the waist", "", named("Waist tie"), "", waist},
		{"a necktie", "", square, drawn("Necktie"), neck},
		{"a necktie by its key alone, with an underscore", "", square, strings.ReplaceAll(strings.ReplaceAll(drawn("Tie"), "name = \"Tie\"\n", ""), "piece.tie", "piece.neck_tie"), neck},
		{"a casing at the waist, with an underscore", "", line("waist_casing", "side"), "", waist},
		{"a tie that is drawn", "", square, drawn("Tie"), anyhow},
		{"a tie that is sewn to the neck", "", square, drawn("Tie") + sewn("neck"), neck},
		{"a tie that is sewn to the hem", "", square, drawn("Tie") + sewn("hem"), waist},
		{"a tie beside a ribbon at the neck", "", square, drawn("Tie") + neckRibbon, neck},
		{"the tie of a sleeve", "", square, drawn("Sleeve tie"), none},
		{"a bow for the hair", "", square, strings.ReplaceAll(drawn("Hair ribbon bow"), "piece.tie", "piece.bow"), none},
		{"a ribbon that is drawn", "", square, strings.ReplaceAll(drawn("Ribbon"), "piece.tie", "piece.ribbon"), none},
		{"a sash", "", square, strings.ReplaceAll(drawn("Sash"), "piece.tie", "piece.sash"), none},

		{"the ties of a bonnet", "Lawn bonnet", square, drawn("Tie"), neck},
		{"a bonnet with a ribbon", "", named("Bonnet"), trim("x", "hem", "ribbon"), neck},
		{"a bonnet without ties", "Lawn bonnet", square, "", none},
		{"the strings of a bib", "Bib", square, drawn("String"), neck},
		{"a dress and a bonnet, a tie at the waist", "Dress and bonnet", square, drawn("Waist tie"), waist},
	} {
		t.Run(c.name, func(t *testing.T) {
			head := "size = \"2T\"\n"
			if c.title != "" {
				head += "title = \"" + c.title + "\"\n"
			}
			requireNamed(t, cautioned(t, head, c.piece, c.beside), c.want...)
		})
	}
	adult := "size = \"adult M\"\n"
	requireNamed(t, cautioned(t, adult, line("casing", "hem"), neckRibbon+drawn("Tie")))
	requireNamed(t, cautioned(t, adult, named("Trousers"), trim("waist", "side", "cord")))
}

// Of what is worn below the waist the rule for upper outerwear is not named (ASTM F1816-97).
func TestCordsBelowTheWaist(t *testing.T) {
	for _, head := range []string{"title = \"Bloomers\"\n", "title = \"Lawn petticoat\"\n"} {
		got := legal(t, cautioned(t, head, sketch.SquareNeck, "[trim.\"waist cord\"]\nalong = \"front.side\"\nkind = \"cord\"\n"))
		assert.Equal(t, []string{
			"A cord, ribbon, tie or casing lies at the waist. Its ends can catch in a door or on a vehicle, and drag a child.",
			"Follow the rules where you live and where you sell; this is no legal advice.",
		}, got)
	}
}

// What counts as sleepwear (16 CFR 1616.2(a), with robes, and loungewear by a letter of the
// commission of 9 December 1996), and what does not.
func TestSleepwear(t *testing.T) {
	for _, c := range []struct {
		head    string
		applies bool
	}{
		{"title = \"Lawn nightgown\"\nsize = \"4 years\"\n", true},
		{"title = \"Night-gown\"\n", true},
		{"title = \"NIGHTDRESSES\"\n", true},
		{"title = \"Pyjamas for a boy\"\n", true},
		{"title = \"Pajama trousers\"\n", true},
		{"title = \"Sleeping suit\"\n", true},
		{"title = \"A bed gown\"\n", true},
		{"title = \"A bedgown\"\n", true},
		{"title = \"Bed jacket\"\n", true},
		{"title = \"Dressing gown\"\n", true},
		{"title = \"Dressing-gown for a girl\"\n", true},
		{"title = \"Robe\"\n", true},
		{"title = \"Quilted bathrobe\"\n", true},
		{"title = \"Bath robe\"\n", true},
		{"title = \"House coat\"\n", true},
		{"title = \"Loungewear\"\n", true},
		{"title = \"Lounge wear set\"\n", true},
		{"title = \"Lounging suit\"\n", true},
		{"sleepwear = true\n", true},
		{"title = \"Play frock\"\nsleepwear = true\n", true},
		{"title = \"Christening robe\"\nsleepwear = true\n", true},
		{"title = \"Play frock\"\n", false},
		{"title = \"Nightingale pinafore\"\n", false},
		{"title = \"Bedford cord jacket\"\n", false},
		{"title = \"Sleeveless frock\"\n", false},
		{"title = \"Dressing table cover\"\n", false},
		{"title = \"Christening robe\"\n", false},
		{"title = \"Choir-robe\"\n", false},
		{"title = \"Robe of state\"\n", false},
		{"title = \"Wardrobe bag\"\n", false},
		{"title = \"Day gown\"\n", false},
		{"title = \"Woman's nightgown\"\n", false},
		{"title = \"Nightgown\"\nsize = \"adult M\"\nsleepwear = true\n", false},
	} {
		t.Run(strings.ReplaceAll(strings.TrimSpace(c.head), "\n", ", "), func(t *testing.T) {
			got := cautioned(t, c.head, sketch.VNeck, "")
			if c.applies {
				requireNamed(t, got, ofNight)
			} else {
				requireNamed(t, got)
			}
		})
	}
	requireNamed(t, cautioned(t, "title = \"Nightgown\"\n", sketch.SquareNeck, neckRibbon), ofNeck, ofNight)
}

// Which exemptions may apply: tight-fitting garments, which gowns never are, and those of
// infants, sized nine months or smaller.
func TestExemptionsOfSleepwear(t *testing.T) {
	for _, c := range []struct {
		title, size             string
		close, young, bothRules bool
	}{
		{"Pyjamas", "", true, true, true},
		{"Pyjamas", "4 years", true, false, true},
		{"Pyjama jacket and trousers", "4T", true, false, true},
		{"Sleepsuit", "6 months", false, true, false},
		{"Nightgown", "", false, true, true},
		{"Nightgown", "4 years", false, false, true},
		{"Nightgown", "9 months", false, true, false},
		{"Nightgown", "9M", false, true, false},
		{"Nightgown", "6-9 mo", false, true, false},
		{"Nightgown", "newborn", false, true, false},
		{"Nightgown", "9 to 12 months", false, false, true},
		{"Nightgown", "10 months", false, false, true},
		{"Nightgown", "18 months", false, false, true},
		{"Nightgown", "99999999999999999999 months", false, false, true},
		{"Nightgown", "toddler", false, false, true},
		{"Nightgown", "6", false, true, true},
		{"Bathrobe", "2 yrs", false, false, true},
		{"Baby's nightshirt", "3 months", false, true, false},
	} {
		t.Run(c.title+", "+c.size, func(t *testing.T) {
			head := "title = \"" + c.title + "\"\n"
			if c.size != "" {
				head += "size = \"" + c.size + "\"\n"
			}
			got := cautioned(t, head, sketch.VNeck, "")
			requireNamed(t, got, ofNight)
			for _, names := range []struct {
				all  []string
				said bool
			}{{ofClose, c.close}, {ofYoung, c.young}, {ofAges, c.bothRules}} {
				for _, name := range names.all {
					assert.Equal(t, names.said, strings.Contains(got[0], name), "%q in %q", name, got[0])
				}
			}
		})
	}
}

// A piece from shoulder to hem is held against the limits for infants: 64.8 cm in one piece,
// 40 cm each in two (16 CFR 1615.1(c)). It has 1 cm of shoulder seam and 3 cm of hem.
func TestInfantsLimits(t *testing.T) {
	const gown = `title = "Nightgown"
size = "6 months"
unit = "cm"
[piece.front]
name = "Gown front"
[piece.front.edge.TOP]
points = [[0, HEIGHT], [20, HEIGHT]]
allowance = 1
[piece.front.edge.side]
points = [[20, HEIGHT], [20, 0]]
[piece.front.edge.BOTTOM]
points = [[20, 0], [0, 0]]
hem = 2
turn = 1
[piece.front.edge.centre]
points = [[0, 0], [0, HEIGHT]]
MORE`
	const across = `[piece.front.tuck.growth]
beside = "hem"
width = 1
count = 1
first = 12
`
	along := strings.Replace(across, `"hem"`, `"side"`, 1)
	frill := func(along, depth string) string {
		return "[cloth]\nwidth = 90\n[ruffle.frill]\nalong = [\"front." + along + "\"]\nfullness = 2\ndepth = " + depth + "\nseam = 1\n"
	}
	const lace = "[trim.edging]\nalong = [\"front.hem\"]\nkind = \"lace\"\nwidth = 3\n"
	for _, c := range []struct{ name, height, top, bottom, more, want string }{
		{"both", "44", "shoulder", "hem", "", ": Gown front is 40 cm long as sewn, within both."},
		{"one piece", "44.2", "shoulder", "hem", "", ": Gown front is 40.2 cm long as sewn, within the first."},
		{"one piece to the hair", "68.8", "shoulder", "hem", "", ": Gown front is 64.8 cm long as sewn, within the first."},
		{"neither", "69", "neck", "hem", "", ": Gown front is 65 cm long as sewn, more than either."},
		{"a ruffle that makes it too long", "62", "shoulder", "hem", frill("hem", "8"), ": Gown front is 66 cm long as sewn with its ruffle, more than either."},
		{"a ruffle that leaves it within", "62", "shoulder", "hem", frill("hem", "6"), ": Gown front is 64 cm long as sewn with its ruffle, within the first."},
		{"a ruffle elsewhere", "62", "shoulder", "hem", frill("side", "8"), ": Gown front is 58 cm long as sewn, within the first."},
		{"lace", "42", "shoulder", "hem", lace, ": Gown front is 41 cm long as sewn with its lace, within the first."},
		{"lace that lies on it", "42", "shoulder", "hem", lace + "lies = \"on\"\n", ": Gown front is 38 cm long as sewn, within both."},
		{"a ruffle and lace, perhaps one below the other", "42", "shoulder", "hem", frill("hem", "8") + lace, "each in two."},
		{"a ruffle on a line", "42", "shoulder", "hem", "[piece.front.line.low]\nalong = \"hem\"\ndistance = 6\n" + frill("low", "8"), "each in two."},
		{"a border sewn on below", "42", "shoulder", "hem", "[piece.border]\n[piece.border.edge.top]\npoints = [[0, 9], [20, 9]]\nallowance = 3\n[piece.border.edge.right]\npoints = [[20, 9], [20, 0]]\n[piece.border.edge.foot]\npoints = [[20, 0], [0, 0]]\n[piece.border.edge.left]\npoints = [[0, 0], [0, 9]]\n[seam.border]\njoin = [\"front.hem\", \"border.top\"]\n", "each in two."},
		{"a skirt", "69", "waist", "hem", "", "each in two."},
		{"a yoke", "69", "shoulder", "foot", "", "each in two."},
		{"tucks across that take it up", "69", "shoulder", "hem", across, "each in two."},
		{"tucks along, which do not", "69", "shoulder", "hem", along, ": Gown front is 65 cm long as sewn, more than either."},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := made.Of(t, strings.NewReplacer("HEIGHT", c.height, "TOP", c.top, "BOTTOM", c.bottom, "MORE", c.more).Replace(gown))
			said := cautionsOf(p)[0]
			assert.True(t, strings.HasSuffix(said, c.want), "%q ends %q", said, c.want)
		})
	}
}

// The figures end with the cautions.
func TestCautionsInPrint(t *testing.T) {
	p := made.Of(t, "title = \"Nightgown\"\nallowance = 0\n"+sketch.Front(sketch.VNeck))
	sections := Report(p, OwnUnit).Sections
	last := sections[len(sections)-1]
	assert.Equal(t, "Cautions", last.Title)
	var said []string
	for _, s := range last.Lines {
		said = append(said, s.Text)
	}
	assert.Equal(t, cautionsOf(p), said)

	// Sheets have them in front, and nothing is lost there.
	assert.Equal(t, sections[:len(sections)-1], Tables(p, OwnUnit).Sections)
	assert.Subset(t, Cautions(p, nil), said)
}

// What every first page says, and what it says besides where the sheets are cut or pricked.
func TestCautionsOfSheets(t *testing.T) {
	line := plane.Path{{}, {X: 10}}
	for _, c := range []struct {
		name         string
		sheet        mark.Marking
		cut, pricked bool
	}{
		{"traced", mark.Marking{Marks: []mark.Mark{{Role: mark.Cut, Path: line}, {Role: mark.Stitch, Path: line}}}, false, false},
		{"with windows", mark.Marking{Marks: []mark.Mark{{Role: mark.Window, Path: line}}}, true, false},
		{"laid by match marks", mark.Marking{Marks: []mark.Mark{{Role: mark.Match, Path: line}}}, true, false},
		{"a match mark without length", mark.Marking{Marks: []mark.Mark{{Role: mark.Match, Path: plane.Path{{}, {}}}}}, false, false},
		{"of card", mark.Marking{Kind: mark.Gauge}, true, false},
		{"pricked", mark.Marking{Marks: []mark.Mark{{Role: mark.Prick, Path: line}}}, false, true},
		{"of card, and pricked", mark.Marking{Kind: mark.Gauge, Marks: []mark.Mark{{Role: mark.Prick, Path: line}}}, true, true},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := strings.Join(Cautions(made.Of(t, "title = \"Apron\"\nallowance = 0\n"+sketch.Front(sketch.VNeck)), []mark.Marking{{}, c.sheet}), "\n")
			for _, word := range []string{"scrap", "pins", "neck, hood, waist or hem", "nightwear and robes", "rules where you live"} {
				assert.Contains(t, got, word)
			}
			for _, word := range []string{"blade", "metal ruler", "cutting mat"} {
				assert.Equal(t, c.cut, strings.Contains(got, word), word)
			}
			for _, word := range []string{"Prick", "punch", "fine powder"} {
				assert.Equal(t, c.pricked, strings.Contains(got, word), word)
			}
		})
	}
}
