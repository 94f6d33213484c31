package sheet

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/garment"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/source"
)

const necks = `
unit = "mm"
allowance = 6
[piece.front]
[piece.front.edge.neck]
points = [[0, 100], [80, 100]]
[piece.front.edge.rest]
points = [[80, 100], [80, 0], [0, 0], [0, 100]]
[piece.back]
rectangle = [50, 60]
[view.round.piece.front.edge.neck]
points = [[0, 100], [40, 80], [80, 100]]
smooth = true
[view.narrow.piece.back.edge.top]
allowance = 10
`

// inView is the pattern of a text in one of its views.
func inView(t *testing.T, text, view string) *garment.Pattern {
	t.Helper()
	spec, err := source.Reader{Printable: sketch.HasLetter, View: view}.Read("f.toml", []byte(text))
	require.NoError(t, err)
	pattern, err := garment.Check(spec)
	require.NoError(t, err)
	return pattern
}

// What a view changes is drawn beside what the file has, each with its name; what it leaves
// as it is, is drawn once.
func TestLinesOfOtherViews(t *testing.T) {
	whole, round, narrow := inView(t, necks, ""), inView(t, necks, "round"), inView(t, necks, "narrow")
	own := Of(whole)
	all := WithViews(own, whole, []*garment.Pattern{round, narrow})
	require.Len(t, all, len(own))
	var added [2][]string
	for i := range all {
		for _, m := range all[i].Marks {
			if (m.Role == mark.Cut || m.Role == mark.Stitch) && m.Name != "" {
				added[i] = append(added[i], m.Role.String()+" "+m.Name)
			}
		}
	}
	assert.Contains(t, added[0], "cutting line neck, as it stands")
	assert.Contains(t, added[0], "cutting line neck, round")
	assert.Contains(t, added[0], "cutting line rest", "which no view changes")
	assert.NotContains(t, added[0], "cutting line rest, round")
	assert.Contains(t, added[1], "cutting line top", "whose cutting line no view changes")
	assert.NotContains(t, added[1], "cutting line top, narrow")
	assert.Contains(t, all[0].Notes, "It has lines of other views too, named round. Choose one view, and mark and cut by its lines alone.")
	assert.Contains(t, all[1].Notes, "It has lines of other views too, named narrow. Choose one view, and mark and cut by its lines alone.")
	assert.NotContains(t, own[0].Notes, "It has lines of other views too, named round. Choose one view, and mark and cut by its lines alone.", "the sheets handed in stay as they are")

	// Whatever is cut or sewn in the view is on the sheet.
	var drawn []*plane.Tree
	for _, m := range all[0].Marks {
		drawn = append(drawn, plane.NewTree(m.Path))
	}
	for _, m := range Of(round)[0].Marks {
		if m.Role != mark.Cut && m.Role != mark.Stitch {
			continue
		}
		for along := 0.0; along < m.Path.Length(); along += 0.7 {
			q, _ := m.Path.At(along)
			near := 1e9
			for _, d := range drawn {
				near = min(near, d.Distance(q, near))
			}
			assert.LessOrEqual(t, near, 0.11, "%s %s at %v", m.Role, m.Name, q)
		}
	}
}

// drawnOf are the names of the cutting and stitch lines of a sheet, and where they lie.
func drawnOf(m mark.Marking) map[string]plane.Box {
	drawn := map[string]plane.Box{}
	for _, one := range m.Marks {
		if (one.Role == mark.Cut || one.Role == mark.Stitch) && one.Name != "" {
			drawn[one.Name] = one.Path.Bounds()
		}
	}
	return drawn
}

// A line that runs on keeps its name, and so does what is beyond it of the other view.
func TestALineThatIsLongerInAView(t *testing.T) {
	text := strings.Replace(necks, "allowance = 6", "allowance = 0", 1) +
		"[view.long.piece.back]\nrectangle = [50, 90]\n[view.same.piece.back]\nrectangle = [50, 90]\n[view.wide.piece.back]\nrectangle = [90, 60]\n"
	for _, transfers := range [][]source.Transfer{{source.Trace}, {source.Mirror}, {source.Prick}} {
		in := func(view string) *garment.Pattern { return Transferred(inView(t, text, view), transfers) }
		whole := in("")
		own := Of(whole)
		sheets := WithViews(own, whole, []*garment.Pattern{in("long"), in("same"), in("wide")})
		drawn := drawnOf(sheets[len(sheets)-1])
		assert.Contains(t, drawn, "left", "most of it lies there in all views")
		assert.Contains(t, drawn, "top, as it stands", "in two views it lies elsewhere")
		assert.Contains(t, drawn, "bottom")
		require.Contains(t, drawn, "left, long and same", "one line of two views is drawn once")
		require.Contains(t, drawn, "top, long and same")
		require.Contains(t, drawn, "right, wide")
		assert.InDelta(t, 30, drawn["left, long and same"].Height(), 1, "by what it is longer")
		assert.InDelta(t, 30, drawn["top, long and same"].Max.Y-drawn["top, as it stands"].Max.Y, 1e-9)
		assert.InDelta(t, 40, math.Abs(drawn["right, wide"].Min.X-drawn["right, as it stands"].Min.X), 1e-9, "seen from behind as well")
		assert.NotContains(t, drawn, "left, wide", "it lies on itself, from behind as well")
	}
}

func TestThePartsOfALineThatLieElsewhere(t *testing.T) {
	line := func(xy ...float64) plane.Path {
		var p plane.Path
		for i := 0; i < len(xy); i += 2 {
			p = append(p, plane.Point{X: xy[i], Y: xy[i+1]})
		}
		return p
	}
	base := []*plane.Tree{plane.NewTree(line(0, 0, 100, 0))}
	for _, c := range []struct {
		name string
		path plane.Path
		want []float64 // how long the parts are
	}{
		{"on it", line(10, 0, 90, 0), nil},
		{"as near as the same line may be", line(10, 0.09, 90, 0.09), nil},
		{"beside it", line(10, 1, 90, 1), []float64{80}},
		{"past its end", line(50, 0, 150, 0), []float64{50}},
		{"from before its beginning to past its end", line(-20, 0, 130, 0), []float64{20, 30}},
		{"hardly past its end", line(0, 0, 104, 0), nil},
		{"away and back", line(0, 0, 30, 0, 50, 10, 70, 0, 100, 0), []float64{44.7}},
	} {
		t.Run(c.name, func(t *testing.T) {
			parts := elsewhere(c.path, base)
			require.Len(t, parts, len(c.want))
			for i := range parts {
				assert.InDelta(t, c.want[i], parts[i].Length(), 2, "up to a step of 1 mm at either end too long")
				assert.GreaterOrEqual(t, parts[i].Length(), c.want[i]-0.3)
			}
		})
	}
}

// Where a view's neck is higher, the fold goes on to it.
func TestTheFoldOfAHigherNeck(t *testing.T) {
	text := strings.Replace(necks, "[piece.front]\n", "[piece.front]\nfold = \"rest\"\n", 1)
	text = strings.NewReplacer("points = [[80, 100], [80, 0], [0, 0], [0, 100]]", "points = [[0, 0], [0, 100]]\n[piece.front.edge.side]\npoints = [[80, 100], [80, 0], [0, 0]]",
		"points = [[0, 100], [40, 80], [80, 100]]", "points = [[0, 120], [40, 108], [80, 100]]").Replace(text)
	whole, round := inView(t, text, ""), inView(t, text, "round")
	var fold []float64
	for _, m := range WithViews(Of(whole), whole, []*garment.Pattern{round})[0].Marks {
		if m.Role == mark.FoldEdge {
			fold = append(fold, m.Path.Length())
		}
	}
	require.Len(t, fold, 2)
	assert.InDelta(t, 100, fold[0], 1e-6)
	assert.InDelta(t, 20, fold[1], 1.1, "from the neck to the higher one, up to a step of 1 mm more")
}
