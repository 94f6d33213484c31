package piece_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// measured lists what a shape measures, with its places in inches.
func measured(s *piece.Shape) []string {
	var all []string
	for _, d := range s.Dimensions(length.Inch) {
		all = append(all, d.Text+" "+sketch.Inches(plane.Path{d.From, d.To}))
	}
	return all
}

// A hem of 2 in that is turned in 1/4 in is folded at 2 1/4 in. The hem runs from 8 in to 0:
// four tenths of it are at 4.8 in, six at 3.2 in. All derived.
func TestWhatIsMeasuredFromTheCutEdge(t *testing.T) {
	const box = "left: 0,9 0,0\nhem: 0,0 8,0 | hem = 2; turn = 0.25\nright: 8,0 8,9\ntop: 8,9 0,9"
	for _, c := range []struct {
		name, text string
		want       []string
	}{
		{"a hem that is turned in", box, []string{
			"turn: 1/4 in 4.8,0 4.8,0.25",
			"hem fold: 2 1/4 in from the cut edge, hem 2 in and turn 1/4 in 3.2,0 3.2,2.25",
		}},
		{"a hem that is not", sketch.Swap(box, "; turn = 0.25", ""), []string{"hem fold: 2 in from the cut edge 3.2,0 3.2,2"}},
		{"a placket fold", sketch.Swap(box, " | hem = 2; turn = 0.25", "") + "\n---\n\n[line.placket]\nalong = \"right\"\ndistance = \"3/4\"\n",
			[]string{"placket: 3/4 in from the cut edge 8,4.5 7.25,4.5"}},
		{"a line through points", sketch.Swap(box, " | hem = 2; turn = 0.25", "") + "\n---\n\n[line.pocket]\npoints = [[2, 2], [4, 2]]\n", nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			p, _ := made.Front(t, "0\nunit = \"in\"", c.text)
			assert.Equal(t, c.want, measured(p.AsDrawn))
		})
	}
}

// On the flat cloth a dimension is where its place has come to lie: a knife pleat of 1 in
// from 2 in on takes 2 in, so what is at 3.2 in lies at 5.2 in.
func TestMeasuresOnTheFlatCloth(t *testing.T) {
	p, _ := made.Front(t, "0\nunit = \"in\"", "drawn = \"finished\"\nleft: 0,9 0,0\nhem: 0,0 8,0 | hem = 1\nright: 8,0 8,9\ntop: 8,9 0,9\n---\n"+sketch.Rows(`pleat a left 1 1 4 | press = "toward"`))
	assert.Equal(t, []string{"hem fold: 1 in from the cut edge 3.2,0 3.2,1"}, measured(p.AsDrawn))
	assert.Equal(t, []string{"hem fold: 1 in from the cut edge 5.2,0 5.2,1"}, measured(p.Flat))
}

// Where folds lie between a line and its edge, the flat distance is told, and measured. Half a
// skirt of 5 in by 7: an inverted pleat of 1/2 in on the fold takes 1 in of it, and two growth
// tucks of 1/4 in, sewn at 2 3/4 and 3 1/4 in from the hem, take 1 in of its length. All derived.
func TestMeasuresOverFolds(t *testing.T) {
	const head = "drawn = \"finished\"\nfold = \"centre\"\n"
	const half = "centre: 0,0 0,7\nwaist: 0,7 5,7\nside: 5,7 5,0\nhem: 5,0 0,0\n---\n"
	folds := sketch.Rows(`pleat middle centre 1/2 1 0 | kind = "inverted"`, "tuck growth hem 1/4 2 3 | gap = \"1/4\"")
	lines := func(which string) string {
		return map[string]string{
			"pocket": "\n[line.pocket]\nbeside = \"centre\"\nat = 3\n",
			"across": "\n[line.across]\nbeside = \"waist\"\nat = 2\n",
			"high":   "\n[line.high]\nbeside = \"hem\"\nat = 6\n",
			"along":  "\n[line.along]\nalong = \"hem\"\ndistance = \"5 1/2\"\n",
		}[which]
	}
	for _, c := range []struct{ name, head, line, drawn, flat string }{
		{"from the fold", head, "pocket", "pocket: 3 in from the fold 0,3.5 3,3.5", "pocket: 4 in from the fold, finished 3 in 0,4.5 4,4.5"},
		{"printed whole", head + "print = \"whole\"\n", "pocket", "pocket: 3 in from centre 0,3.5 3,3.5", "pocket: 4 in from centre, finished 3 in 0,4.5 4,4.5"},
		{"on one side of all folds", head, "across", "across: 2 in from the cut edge 2.5,7 2.5,5", "across: 2 in from the cut edge 3.5,8 3.5,6"},
		{"over tucks", head, "high", "high: 6 in from the cut edge 2.5,0 2.5,6", "high: 7 in from the cut edge, finished 6 in 3.5,0 3.5,7"},
		{"along an edge", head, "along", "along: 5 1/2 in from the cut edge 2.5,0 2.5,5.5", "along: 6 1/2 in from the cut edge, finished 5 1/2 in 3.5,0 3.5,6.5"},
	} {
		t.Run(c.name, func(t *testing.T) {
			p, _ := made.Front(t, "0\nunit = \"in\"", c.head+half+folds+lines(c.line))
			assert.Equal(t, []string{c.drawn}, measured(p.AsDrawn))
			assert.Equal(t, []string{c.flat}, measured(p.Flat))
		})
	}
}

// Every name of a line says what it is, and to which edge it belongs.
func TestNamesOfLines(t *testing.T) {
	const box = "wrist: 0,0 8,0 | hem = 1; turn = 0.25\nright: 8,0 8,9\ntop: 8,9 0,9 | allowance = 0.375\nleft: 0,9 0,0\n---\n\n" +
		"[line.sleeve]\npoints = [[1, 3], [4, 3]]\nkind = \"stitch\"\n[line.\"dart stitching\"]\npoints = [[1, 4], [4, 4]]\nkind = \"stitch\"\n"
	p, _ := made.Front(t, "0\nunit = \"in\"", box)
	names := map[mark.Role][]string{}
	for _, m := range p.AsDrawn.Marks {
		names[m.Role] = append(names[m.Role], m.Name)
	}
	assert.Equal(t, []string{"wrist turn", "wrist fold"}, names[mark.Fold])
	assert.ElementsMatch(t, []string{"top stitch line, 3/8 in", "sleeve stitch line", "dart stitching"}, names[mark.Stitch])
}

// A pleat in an edge has its name once, at the ends of its lines, which are 1 1/2 in long.
func TestThePleatInAnEdgeIsNamedOnce(t *testing.T) {
	p, _ := made.Front(t, "0\nunit = \"in\"", sketch.Pleated())
	if assert.Len(t, p.AsDrawn.Words, 1) {
		w := p.AsDrawn.Words[0]
		assert.Equal(t, "underarm pleat, 3/8 in deep", w.Text)
		assert.Equal(t, "4.875,4.65 3.875,4.65", sketch.Inches(plane.Path{w.At, w.At.Add(w.Out.Mul(25.4))}))
	}
}

// Rows from edge to edge are named at their first fold, others at their end line.
func TestNamesOfRows(t *testing.T) {
	const square = "fold = \"centre\"\ncentre: 0,0 0,12\ntop: 0,12 9,12\nside: 9,12 9,0\nhem: 9,0 0,0\n---\n"
	for _, c := range []struct {
		name, row string
		role      mark.Role
		want      []string
	}{
		{"growth tucks", "tuck growth hem 1/2 2 4", mark.TuckFold, []string{"growth tucks", ""}},
		{"one of them", "tuck growth hem 1/2 1 4", mark.TuckFold, []string{"growth tuck"}},
		{"tucks that end", `tuck yoke centre 1/8 2 3/8 | below = "top"; length = 4`, mark.TuckFold, []string{"", ""}},
		{"and their end line", `tuck yoke centre 1/8 2 3/8 | below = "top"; length = 4`, mark.TuckEnd, []string{"yoke tucks end here, open below"}},
		{"pleats", "pleat front centre 1/2 2 1", mark.PleatFold, []string{"front pleats: fold here", ""}},
		{"and where they are laid", "pleat front centre 1/2 2 1", mark.Placement, []string{"lay to here", ""}},
	} {
		t.Run(c.name, func(t *testing.T) {
			p, _ := made.Front(t, "0\nunit = \"in\"", square+sketch.Rows(c.row))
			var names []string
			for _, m := range p.FoldMarks() {
				if m.Role == c.role {
					names = append(names, m.Name)
				}
			}
			assert.Equal(t, c.want, names)
		})
	}
}
