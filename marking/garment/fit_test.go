package garment_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/garment"
	"tuckmark/marking/piece"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// plain is a front and a back on the fold, so wide at the side, straight down, without
// seams; the arm is cut out square.
func plain(half string) string {
	return sketch.Swap("fold = \"centre\"\ncentre: 0,0 0,10\nneck: 0,10 2,10 2,12\nshoulder: 2,12 4,12\narmhole: 4,12 4,8 W,8\nside: W,8 W,0\nhem: W,0 0,0\n", "W", half)
}

// ofFit are the remarks of a pattern that speak of its fit.
func ofFit(p *garment.Pattern) []piece.Remark {
	return slices.DeleteFunc(slices.Clone(p.Remarks), func(r piece.Remark) bool { return !strings.HasPrefix(r.Key, "fit") })
}

// What is said of the ease: woven cloth wants 2 in of it about the chest, 1 in about the waist
// (common practice).
func TestEase(t *testing.T) {
	both := []string{"front", "back"}
	shirt := func(half, fit string) string {
		return sewnTogether("0", map[string]string{"front": plain(half), "back": plain(half)}, both, shoulders, sides) + "[fit]\n" + fit
	}
	cm := func(half, fit string) string {
		return strings.Replace(shirt(half, fit), `unit = "in"`, `unit = "cm"`, 1)
	}
	opened := strings.Replace(plain("5"), "fold = \"centre\"\n", "cut = 2\n", 1)
	skirt := "cut = 2\nfold = \"centre\"\ncentre: 0,0 0,10\nwaist: 0,10 5,10\nside: 5,10 5,0\nhem: 5,0 0,0\n"
	for _, c := range []struct {
		name, text string
		want       []string
	}{
		{"none is asked", sewnTogether("0", map[string]string{"front": plain("5"), "back": plain("5")}, both, shoulders, sides), nil},
		{"enough", shirt("5", "chest = 18"), nil},
		{"little", shirt("5", "chest = \"18 1/2\""), []string{"the finished chest, 20 in, has 1 1/2 in of ease; woven cloth wants 2 in or more; its seams tell of no opening"}},
		{"none", shirt("5", "chest = 20"), []string{"the finished chest, 20 in, has no ease; woven cloth wants 2 in or more; its seams tell of no opening"}},
		{"too small", shirt("5", "chest = 21"), []string{"the finished chest, 20 in, is smaller than the child's by 1 in; its seams tell of no opening"}},
		{"too small, and opens", sewnTogether("0", map[string]string{"front": opened, "back": plain("5")}, both, shoulders, sides) + "[fit]\nchest = 21\n",
			[]string{"the finished chest, 20 in, is smaller than the child's by 1 in"}},
		{"enough in centimetres", cm("14", "chest = 51"), nil},
		{"little in centimetres", cm("14", "chest = 52"), []string{"the finished chest, 56 cm, has 4 cm of ease; woven cloth wants 5 cm or more; its seams tell of no opening"}},
		{"a waist", sewnTogether("0", map[string]string{"skirt": skirt}, []string{"skirt"}, `side: ["skirt.side", "skirt.side"]`) + "[fit]\nwaist = 19.5\n",
			[]string{"the finished waist, 20 in, has 1/2 in of ease; woven cloth wants 1 in or more; its seams tell of no opening"}},
		{"a length", shirt("5", "length = 9"), nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			var got []string
			for _, r := range ofFit(made.Of(t, c.text)) {
				assert.True(t, r.InTable)
				got = append(got, r.Text)
			}
			assert.Equal(t, c.want, got)
		})
	}
}

// Where nothing is known to go round, nothing is said, but for the reason where a child is
// to be fitted.
func TestNothingGoesRound(t *testing.T) {
	both, pieces := []string{"front", "back"}, map[string]string{"front": plain("5"), "back": plain("5")}
	yoke := "fold = \"centre\"\ncentre: 0,0 0,4\nneck: 0,4 2,6\nshoulder: 2,6 4,5\narmhole: 4,5 4,0\nfoot: 4,0 0,0\n"
	loose := strings.Replace(plain("5"), "fold = \"centre\"\n", "cut = 2\n", 1)
	for _, c := range []struct {
		name, text string
		chest      string
	}{
		{"a bib", sewnTogether("0", map[string]string{"bib": sketch.Rect("6")}, []string{"bib"}), "no seam joins the left of bib"},
		{"the sides are left out", sewnTogether("0.25", pieces, both, shoulders), "no seam joins the side of front"},
		{"a seam at the centre is left out", sewnTogether("0.25", map[string]string{"front": strings.Replace(loose, "centre", "inner", 1), "back": plain("5")}, both, shoulders, sides),
			"no seam joins the inner of front"},
		{"a sleeve by itself", sewnTogether("0", map[string]string{"sleeve": "fold = \"middle\"\ncut = 2\nmiddle: 0,0 0,8\ncap: 0,8 5,5\nunder: 5,5 4,0\nhem: 4,0 0,0\n"}, []string{"sleeve"}, `under: ["sleeve.under", "sleeve.under"]`),
			"the hem of sleeve comes 4 times"},
		{"two of everything", sewnTogether("0", map[string]string{"front": "cut = 2\n" + plain("5"), "back": "cut = 2\n" + plain("5")}, both, shoulders, sides),
			"the hem of front comes 4 times"},
		{"a yoke", sewnTogether("0.25", map[string]string{"front": yoke, "back": yoke}, both, shoulders),
			"front ends at its armhole, and the chest is measured where a side seam runs up to one; where the dress hangs from a yoke, leave chest out of [fit]"},
		{"a skirt", sewnTogether("0", map[string]string{"front": sketch.Swap(sketch.Skirt(5), "name = \"Front\"\n", ""), "back": sketch.Swap(sketch.Skirt(5), "name = \"Front\"\n", "")}, both, sides),
			"no seam at a side of front runs up to an armhole or a sleeve"},
		{"two edges in one side", sewnTogether("0", map[string]string{"front": sketch.Swap(plain("5"), "side: 5,8 5,0", "side: 5,8 5,4\nskirt side: 5,4 5,0"), "back": plain("5")}, both, shoulders,
			`side: [["front.side", "front.skirt side"], "back.side"]`),
			"the skirt side of front is sewn to several edges at once, or not as often as there are of them, so that no one piece goes on there"},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Empty(t, ofFit(made.Of(t, c.text)), "silent where no child is to be fitted")
			p := made.Of(t, c.text+"[fit]\nchest = 20\nwaist = 19\nlength = 18\n")
			var got []string
			for _, r := range ofFit(p) {
				got = append(got, r.Text)
			}
			assert.Contains(t, got, "the finished chest is not known: "+c.chest)
			assert.Contains(t, got, "the finished waist is not known: no edge and no seam is called a waist")
		})
	}
}

// A piece whose other side leans out from its hem, so that no level runs to it, is not
// measured under the arms, and nothing else goes wrong.
func TestSideThatLeansOut(t *testing.T) {
	front := "cut = 2\nbottom: 0,0 6,0\nside: 6,0 6,8\narmhole: 6,8 4,8 4,12\nshoulder: 4,12 2,12\nneck: 2,12 -8,10\nlean: -8,10 -10,2\nin: -10,2 0,0\n"
	for _, seam := range []string{`mid: ["front.in", "front.in"]`, `mid: ["front.lean", "front.lean"]`} {
		p := made.Of(t, sewnTogether("0", map[string]string{"front": front, "back": plain("6")}, []string{"front", "back"}, `side: ["front.side", "back.side"]`, shoulders, seam)+"[fit]\nchest = 20\n")
		for _, g := range p.Measures.Girths {
			assert.NotEqual(t, garment.AtChest, g.Level)
		}
		assert.NotEmpty(t, ofFit(p))
	}
}

// A length is counted from the neck, whether a collar is sewn on there or not; and a piece that
// no seam joins is no reason why it is not known. The neck of each half is 4 in long. Derived.
func TestLengthWithACollarAndAnApron(t *testing.T) {
	const (
		collar = "cut = 2\nlayers = 2\nouter: 0,2 16,2\nright: 16,2 16,0\nneck: 16,0 0,0\nleft: 0,0 0,2\n"
		apron  = "fold = \"middle\"\nmiddle: 0,0 0,9\ntop: 0,9 4,9\nside: 4,9 4,0 | allowance = 0.25\nhem: 4,0 0,0\n"
		joined = `collar: ["collar.neck", ["front.neck", "back.neck"]]`
	)
	lengths := []string{"front centre, neck to hem: 10", "front straight down, neck and shoulder to hem: 12", "back centre, neck to hem: 10", "back straight down, neck and shoulder to hem: 12"}
	pieces := map[string]string{"apron": apron, "front": plain("5"), "back": plain("5"), "collar": collar}
	all := []string{"apron", "front", "back", "collar"}
	noBack := map[string]string{"apron": apron, "front": plain("5"), "rear": plain("5"), "collar": collar}
	open := map[string]string{"apron": apron, "front": sketch.Swap(plain("5"), "side: 5,8 5,0\n", "side: 5,8 5,0 | allowance = 0.25\n"), "back": plain("5")}
	for _, c := range []struct {
		name, text string
		lengths    []string
		said       []string
	}{
		{"a collar", sewnTogether("0", pieces, all, shoulders, sides, joined), lengths, nil},
		{"no collar", sewnTogether("0", pieces, all[:3], shoulders, sides), lengths, nil},
		{"no back", sewnTogether("0", noBack, []string{"apron", "front", "rear"}, `shoulder: ["front.shoulder", "rear.shoulder"]`, `side: ["front.side", "rear.side"]`),
			[]string{"front centre, neck to hem: 10", "front straight down, neck and shoulder to hem: 12", "rear centre, neck to hem: 10", "rear straight down, neck and shoulder to hem: 12"},
			[]string{"the finished length at the back is not known: no piece that is measured, and no edge of one, is called the back"}},
		{"no sides", sewnTogether("0", open, all[:3], shoulders), nil,
			[]string{"the finished length at the back is not known: no seam joins the side of front"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := made.Of(t, c.text+"[fit]\nlength = 10\n")
			var got, said []string
			for _, text := range measured(p) {
				if strings.Contains(text, " to hem: ") {
					got = append(got, text)
				}
			}
			for _, r := range ofFit(p) {
				said = append(said, r.Text)
			}
			assert.Equal(t, c.lengths, got)
			assert.Equal(t, c.said, said)
		})
	}
}

// A skirt is measured from its waist, whether a band is sewn on there or not, and held against
// the length that is wanted at its fold; at its back, where it has one. Derived.
func TestLengthFromTheWaist(t *testing.T) {
	const (
		skirt = "cut = 2\nfold = \"centre\"\ncentre: 0,0 0,10\nwaist: 0,10 5,10\nside: 5,10 5,0\nhem: 5,0 0,0\n"
		back  = "fold = \"centre\"\ncentre: 0,0 0,11\nwaist: 0,11 5,10\nside: 5,10 5,0\nhem: 5,0 0,0\n"
		band  = "cut = 1\ntop: 0,2 20,2\nright: 20,2 20,0\nbottom: 20,0 0,0\nleft: 0,0 0,2\n"
		brim  = "cut = 1\nback: 0,4 6,4\nneck: 6,4 6,0\nface: 6,0 0,0\nend: 0,0 0,4\n"
		crown = "cut = 1\nround: 0,6 6,6\nright: 6,6 6,0\nneck: 6,0 0,0\nleft: 0,0 0,6\n"
		loose = "cut = 1\nleft: 0,0 0,10\nwaist: 0,10 5,10\nright: 5,10 5,0\nhem: 5,0 0,0\n"
	)
	round := `side: ["skirt.side", "skirt.side"]`
	for _, c := range []struct {
		name, text string
		given      []string
		said       []string
	}{
		{"a skirt", sewnTogether("0", map[string]string{"skirt": skirt}, []string{"skirt"}, round), []string{"skirt centre -2"}, nil},
		{"with a band", sewnTogether("0", map[string]string{"skirt": skirt, "band": band}, []string{"skirt", "band"}, round, `waist: ["skirt.waist", "band.bottom"]`), []string{"skirt centre -2"}, nil},
		{"with a band and a bonnet", sewnTogether("0", map[string]string{"skirt": skirt, "band": band, "brim": brim, "crown": crown}, []string{"brim", "crown", "skirt", "band"},
			round, `waist: ["skirt.waist", "band.bottom"]`, `bonnet: ["brim.back", "crown.round"]`), []string{"skirt centre -2"}, nil},
		{"front and back", sewnTogether("0", map[string]string{"front": strings.Replace(skirt, "cut = 2", "cut = 1", 1), "back": back}, []string{"front", "back"}, sides), []string{"back centre -1"}, nil},
		{"no fold and no centre", sewnTogether("0.5", map[string]string{"fore": loose, "aft": loose}, []string{"fore", "aft"}, `a: ["fore.left", "aft.right"]`, `b: ["fore.right", "aft.left"]`), nil,
			[]string{"the finished length at the back is not known: no fold, centre or opening leads from the hem up to one edge at the top"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := made.Of(t, c.text+"[fit]\nlength = 12\n")
			var given, said []string
			for _, d := range p.Measures.Drops {
				assert.True(t, d.FromWaist, "%s of %s", d.Along, d.Piece)
				if d.Fit.Given {
					given = append(given, d.Piece+" "+d.Along+" "+inInches(d.Fit.Ease.MM))
				}
			}
			for _, r := range ofFit(p) {
				said = append(said, r.Text)
			}
			assert.Equal(t, c.given, given)
			assert.Equal(t, c.said, said)
		})
	}
}

// What is sewn to a skirt and has a neck, also over another piece, makes the length go on
// over the waist; so does a bodice that no seam joins to it, for its seam may be left out.
func TestLengthOverTheWaist(t *testing.T) {
	const (
		skirt  = "cut = 2\nfold = \"centre\"\ncentre: 0,0 0,10\nwaist: 0,10 5,10\nside: 5,10 5,0\nhem: 5,0 0,0\n"
		band   = "cut = 1\ntop: 0,2 20,2\nright: 20,2 20,0\nbottom: 20,0 0,0\nleft: 0,0 0,2\n"
		bib    = "cut = 1\nneck: 0,6 20,6\nright: 20,6 20,0\nbottom: 20,0 0,0\nleft: 0,0 0,6\n"
		bodice = "cut = 1\nneck: 0,6 20,6\narmhole: 20,6 20,0\nbottom: 20,0 0,0\nleft: 0,0 0,6\n"
		round  = `side: ["skirt.side", "skirt.side"]`
		waist  = `waist: ["skirt.waist", "band.bottom"]`
	)
	for name, text := range map[string]string{
		"a neck over the band": sewnTogether("0", map[string]string{"skirt": skirt, "band": band, "bib": bib}, []string{"skirt", "band", "bib"}, round, waist, `bib: ["band.top", "bib.bottom"]`),
		"a bodice by itself":   sewnTogether("0", map[string]string{"skirt": skirt, "band": band, "bodice": bodice}, []string{"skirt", "band", "bodice"}, round, waist),
	} {
		drops := made.Of(t, text).Measures.Drops
		assert.NotEmpty(t, drops, name)
		for _, d := range drops {
			assert.False(t, d.FromWaist, "%s: %s of %s", name, d.Along, d.Piece)
		}
	}
	free := sewnTogether("0", map[string]string{"skirt": skirt, "band": band, "bib": bib}, []string{"skirt", "band", "bib"}, round, waist)
	drops := made.Of(t, free).Measures.Drops
	assert.NotEmpty(t, drops)
	for _, d := range drops {
		assert.True(t, d.FromWaist, "a neck that nothing joins: %s of %s", d.Along, d.Piece)
	}
}

// A garment of many pieces above each other, each joined to the next in three ways, has as many
// ways up as three to the power of its storeys; each is followed once.
func TestALengthOverManySeams(t *testing.T) {
	const storeys = 18
	pieces, order, seams := map[string]string{}, []string{}, []string{}
	for i := range storeys {
		key, below := fmt.Sprintf("p%d", i), fmt.Sprintf("p%d", i-1)
		foot := "foot: 9,0 0,0\ntoe: 10,0 9,0\n"
		if i == 0 {
			foot = "hem: 10,0 0,0\n"
		} else {
			seams = append(seams,
				fmt.Sprintf("a%d: [%q, %q]", i, below+".upper", key+".foot"),
				fmt.Sprintf("b%d: [[%q, %q], %q]", i, below+".upper", below+".ledge", key+".foot"),
				fmt.Sprintf("c%d: [%q, [%q, %q]]", i, below+".upper", key+".foot", key+".toe"))
		}
		pieces[key] = "fold = \"centre front\"\ncentre front: 0,0 0,1\nupper: 0,1 9,1\nledge: 9,1 10,1\ncentre back: 10,1 10,0\n" + foot
		order = append(order, key)
	}
	drops := made.Of(t, sewnTogether("0", pieces, order, seams...)).Measures.Drops
	if assert.NotEmpty(t, drops) {
		assert.Equal(t, "18 in", drops[0].Length.String())
	}
}
