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

// The rules that a caution names are those of the United States: 16 CFR 1120.3 with
// ASTM F1816-97, and 16 CFR 1615 and 1616.
const (
	cordCaution  = "A ribbon, cord or casing lies at the neck. It can catch and strangle a child: sew it down, or leave it out. In the United States 16 CFR 1120.3 (with ASTM F1816-97) deals with neck and hood drawstrings on children's upper outerwear, sizes 2T to 12."
	sleepCaution = "Children's sleepwear must meet flammability rules in many countries. In the United States 16 CFR 1615 and 1616 ask for cloth that passes flame tests, unless the garment is tight-fitting or an infant's of nine months or smaller."
	legalCaution = "Follow the rules where you live and where you sell; this is no legal advice."
)

// What holds for every garment is said last (common practice).
var always = []string{
	"Try the marker on a scrap of the same cloth. Take its marks out with cold water, before any iron or detergent: heat can set them for good.",
	"Count the pins into the cloth, and count them out again.",
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
				assert.Equal(t, append([]string{cordCaution, legalCaution}, always...), got)
			} else {
				assert.Equal(t, always, got)
			}
		})
	}
}

func TestCordsAtTheNeck(t *testing.T) {
	collar := "name = \"Round collar\"\n" + sketch.SquareNeck
	for _, c := range []struct {
		name, piece, beside string
		applies             bool
	}{
		{"no trim", sketch.SquareNeck, "", false},
		{"ribbon at the neck", sketch.SquareNeck, neckRibbon, true},
		{"cord at the neck", sketch.SquareNeck, strings.Replace(neckRibbon, "ribbon", "cord", 1), true},
		{"lace at the neck", sketch.SquareNeck, "[trim.edging]\nalong = \"front.neck\"\n", false},
		{"braid at the neck", sketch.SquareNeck, strings.NewReplacer("ribbon", "braid", "tie", "edging").Replace(neckRibbon), false},
		{"lace that is called a drawstring", sketch.SquareNeck, "[trim.Drawstring]\nalong = \"front.neck\"\n", true},
		{"a cord elsewhere", sketch.SquareNeck, "[trim.waist]\nalong = \"front.hem\"\nkind = \"cord\"\n", false},
		{"ribbon for the neck, sewn on elsewhere", sketch.SquareNeck, "[trim.\"neck ribbon\"]\nalong = \"front.side\"\nkind = \"ribbon\"\n", true},
		{"ribbon on a collar", collar, "[trim.x]\nalong = \"front.hem\"\nkind = \"ribbon\"\n", true},
		{"lace on a collar", collar, "[trim.x]\nalong = \"front.hem\"\n", false},
		{"a casing along the neck", sketch.SquareNeck + "---\n\n[line.casing]\nalong = \"neck\"\ndistance = \"1/2\"\n", "", true},
		{"a casing along the hem", sketch.SquareNeck + "---\n\n[line.casing]\nalong = \"hem\"\ndistance = \"1/2\"\n", "", false},
		{"a casing along the edge of a hood", "name = \"Hood\"\n" + sketch.SquareNeck + "---\n\n[line.casing]\nalong = \"hem\"\ndistance = \"1/2\"\n", "", true},
		{"a line of another kind along the neck", sketch.SquareNeck + "---\n\n[line.facing]\nalong = \"neck\"\ndistance = \"1/2\"\n", "", false},
		{"a binding with ends to tie", sketch.SquareNeck, "[binding.\"neck ties\"]\nalong = \"front.neck\"\nwidth = \"1/4\"\n", true},
		{"a plain binding at the neck", sketch.SquareNeck, "[binding.neck]\nalong = \"front.neck\"\nwidth = \"1/4\"\n", false},
		{"a piece to be tied at the neck", "name = \"Neck string\"\n" + sketch.VNeck, "", true},
		{"a piece to be tied at the waist", "name = \"Waist tie\"\n" + sketch.VNeck, "", false},
		{"a word within another", "name = \"Patties\"\n" + sketch.SquareNeck, "", false},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := cautioned(t, "size = \"2T\"\n", c.piece, c.beside)
			if c.applies {
				assert.Equal(t, append([]string{cordCaution, legalCaution}, always...), got)
			} else {
				assert.Equal(t, always, got)
			}
		})
	}
}

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
		{"sleepwear = true\n", true},
		{"title = \"Play frock\"\nsleepwear = true\n", true},
		{"title = \"Play frock\"\n", false},
		{"title = \"Nightingale pinafore\"\n", false},
		{"title = \"Bedford cord jacket\"\n", false},
		{"title = \"Sleeveless frock\"\n", false},
		{"title = \"Woman's nightgown\"\n", false},
		{"title = \"Nightgown\"\nsize = \"adult M\"\nsleepwear = true\n", false},
	} {
		t.Run(strings.ReplaceAll(strings.TrimSpace(c.head), "\n", ", "), func(t *testing.T) {
			got := cautioned(t, c.head, sketch.VNeck, "")
			if c.applies {
				assert.Equal(t, append([]string{sleepCaution, legalCaution}, always...), got)
			} else {
				assert.Equal(t, always, got)
			}
		})
	}
	assert.Equal(t, append([]string{cordCaution, sleepCaution, legalCaution}, always...),
		cautioned(t, "title = \"Nightgown\"\n", sketch.SquareNeck, neckRibbon), "both, and the rules once")
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
}

// What every first page says, and what it says besides where the sheets are cut.
func TestCautionsOfSheets(t *testing.T) {
	const knife = "Cut paper and card with a sharp blade on a cutting mat, the fingers well behind it."
	line := plane.Path{{}, {X: 10}}
	for _, c := range []struct {
		name  string
		sheet mark.Marking
		cut   bool
	}{
		{"traced", mark.Marking{Marks: []mark.Mark{{Role: mark.Cut, Path: line}, {Role: mark.Stitch, Path: line}}}, false},
		{"with windows", mark.Marking{Marks: []mark.Mark{{Role: mark.Window, Path: line}}}, true},
		{"laid by match marks", mark.Marking{Marks: []mark.Mark{{Role: mark.Match, Path: line}}}, true},
		{"a match mark without length", mark.Marking{Marks: []mark.Mark{{Role: mark.Match, Path: plane.Path{{}, {}}}}}, false},
		{"of card", mark.Marking{Card: true}, true},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := Cautions([]mark.Marking{{}, c.sheet})
			require.GreaterOrEqual(t, len(got), 3)
			assert.Contains(t, got[1], "Cords and ribbons at a child's neck can catch, and nightwear can burn")
			if c.cut {
				assert.Equal(t, knife, got[len(got)-1])
			} else {
				assert.NotContains(t, got, knife)
			}
		})
	}
}
