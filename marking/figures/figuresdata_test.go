package figures

import (
	"encoding/json"
	"fmt"
	"math"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/sketch"
	"tuckmark/marking/terminal"
	"tuckmark/marking/wording"
)

// asData reads the figures of a pattern as any script does.
func asData(t *testing.T, p *garment.Pattern) map[string]any {
	t.Helper()
	text := JSON(p)
	require.True(t, strings.HasSuffix(string(text), "}\n"), "it ends with a line end")
	var data map[string]any
	require.NoError(t, json.Unmarshal(text, &data))
	return data
}

// everyValue visits every value of the data with its path, such as trims[].buy.mm.
func everyValue(path string, v any, visit func(path string, v any)) {
	visit(path, v)
	switch v := v.(type) {
	case map[string]any:
		for key, value := range v {
			everyValue(strings.TrimPrefix(path+"."+key, "."), value, visit)
		}
	case []any:
		for _, value := range v {
			everyValue(path+"[]", value, visit)
		}
	}
}

// The keys are a promise to whoever wrote a script: none may vanish or be renamed. A
// length is written as its key alone, though it has the keys mm and printed.
const dataKeys = `
bindings bindings[].along bindings[].along[].edge bindings[].along[].each bindings[].along[].piece
bindings[].along[].times bindings[].along[].together bindings[].cloth bindings[].cut_width bindings[].edge
bindings[].fold bindings[].join_takes bindings[].joining bindings[].joins bindings[].key bindings[].length
bindings[].square bindings[].strips bindings[].width
cautions
cloth cloth.buy cloth.length cloth.parts cloth.parts[].folded cloth.parts[].from cloth.parts[].pieces
cloth.parts[].pieces[].from cloth.parts[].pieces[].left cloth.parts[].pieces[].name cloth.parts[].pieces[].on_fold
cloth.parts[].pieces[].right cloth.parts[].pieces[].to cloth.parts[].pieces[].upper_layer_only
cloth.parts[].to cloth.too_wide cloth.width
cut cut[].across cut[].along cut[].count cut[].name cut[].on_fold cut[].what
pieces pieces[].block pieces[].block.length pieces[].block.take_up pieces[].block.top_when_sewn pieces[].block.width
pieces[].cut pieces[].edge_pleats pieces[].edge_pleats[].at pieces[].edge_pleats[].depth pieces[].edge_pleats[].edge
pieces[].edge_pleats[].from pieces[].edge_pleats[].key pieces[].edge_pleats[].take_up
pieces[].edges pieces[].edges[].allowance pieces[].edges[].cut pieces[].edges[].hem pieces[].edges[].key
pieces[].edges[].on_fold pieces[].edges[].sewn pieces[].edges[].turn pieces[].key pieces[].layers
pieces[].name pieces[].on_fold
pieces[].pleats pieces[].pleats[].beside pieces[].pleats[].count pieces[].pleats[].each pieces[].pleats[].each[].fold
pieces[].pleats[].each[].lines pieces[].pleats[].each[].number pieces[].pleats[].each[].when_sewn
pieces[].pleats[].in_all pieces[].pleats[].key pieces[].pleats[].kind pieces[].pleats[].take_up_in_all pieces[].pleats[].width
pieces[].tucks pieces[].tucks[].beside pieces[].tucks[].count pieces[].tucks[].each pieces[].tucks[].each[].fold
pieces[].tucks[].each[].lines pieces[].tucks[].each[].number pieces[].tucks[].each[].when_sewn
pieces[].tucks[].in_all pieces[].tucks[].key pieces[].tucks[].kind pieces[].tucks[].take_up_in_all pieces[].tucks[].width
remarks remarks[].key remarks[].line remarks[].text
ruffles ruffles[].along ruffles[].along[].each ruffles[].along[].edge ruffles[].along[].piece ruffles[].along[].times
ruffles[].along[].together ruffles[].cut_depth ruffles[].depth ruffles[].edge ruffles[].fullness ruffles[].hem
ruffles[].joining ruffles[].joins ruffles[].joins_from ruffles[].key ruffles[].length ruffles[].quarter_of_edge
ruffles[].quarter_of_ruffle ruffles[].seam ruffles[].strips ruffles[].turn
seams seams[].cut seams[].cut_difference seams[].cut_matches seams[].difference seams[].ease seams[].ends
seams[].ends[].bend_degrees seams[].ends[].cut_jog seams[].ends[].cut_past seams[].ends[].jog
seams[].ends[].neighbours seams[].ends[].past
seams[].fullness seams[].gathered seams[].key seams[].matches seams[].sewn seams[].sides seams[].sides[][].each
seams[].sides[][].edge seams[].sides[][].piece seams[].sides[][].times seams[].sides[][].together seams[].within
sewing sewing[].name sewing[].value size
tear tear[].across tear[].along tear[].count tear[].name tear[].on_fold tear[].what title
trims trims[].along trims[].along[].each trims[].along[].edge trims[].along[].piece trims[].along[].times
trims[].along[].together trims[].buy trims[].corners trims[].corners[].piece trims[].corners[].takes
trims[].corners[].times trims[].corners[].turn_degrees trims[].fullness trims[].gathered trims[].join_takes
trims[].joins trims[].key trims[].kind trims[].line trims[].total trims[].width
unit
`

func TestKeysOfTheData(t *testing.T) {
	p, err := check(sketch.Frock)
	require.NoError(t, err)
	found := map[string]bool{}
	everyValue("", asData(t, p), func(path string, _ any) {
		if path != "" && !strings.HasSuffix(path, "[]") && !strings.HasSuffix(path, ".mm") && !strings.HasSuffix(path, ".printed") {
			found[path] = true
		}
	})
	var keys []string
	for key := range found {
		keys = append(keys, key)
	}
	want := strings.Fields(dataKeys)
	slices.Sort(keys)
	slices.Sort(want)
	assert.Equal(t, strings.Join(want, "\n"), strings.Join(keys, "\n"))
}

// mayBeNull are the keys that stand for something a pattern need not have.
var mayBeNull = []string{"cloth", "pieces[].block", "seams[].cut_difference", "seams[].ends[].cut_jog", "bindings[].square", "bindings[].cloth"}

func TestDataOfEveryPattern(t *testing.T) {
	all := patterns(t)
	bare, err := check("[piece.a.edge.one]\npoints = [[0, 0], [4, 0], [4, 3]]\n[piece.a.edge.other]\npoints = [[0, 0], [0, 3], [4, 3]]\n")
	require.NoError(t, err)
	all["hardly anything"] = bare
	for name, p := range all {
		lengths := 0
		everyValue("", asData(t, p), func(path string, v any) {
			if v == nil {
				assert.Contains(t, mayBeNull, path, name)
			}
			if length, ok := v.(map[string]any); ok && length["mm"] != nil {
				lengths++
				assert.Len(t, length, 2, "%s, %s: mm and printed", name, path)
				printed, _ := length["printed"].(string)
				assert.Regexp(t, `^-?\d[0-9 /.]*( [+-] \d[0-9/.]*)? (in|cm|mm|yd|m)$`, printed, "%s, %s", name, path)
			}
		})
		assert.Positive(t, lengths, name)
	}
}

var (
	// added are sums of lengths that were rounded before they were added, and what
	// follows from such sums.
	added = regexp.MustCompile(`\.(together|line|gathered|total|length|difference|cut_difference|jog|cut_jog|cut_depth|quarter_of_\w+|buy)$|` +
		`^(seams\[\]\.(sewn|cut)\[\]|ruffles\[\]\.edge|bindings\[\]\.edge|tear\[\]\.along)$`)
	// roundedUp are lengths of which less would not do.
	roundedUp = regexp.MustCompile(`\.(join_takes|takes|buy)$|^(tear\[\]\.(across|along)|cloth\.length|bindings\[\]\.cloth|pieces\[\]\.block\.(width|length))$`)
)

// What is printed is the length in mm to half a step of the ruler, or to the next step
// above it. Sums are those of their parts, which TestTotalsAddUpAsTheyArePrinted adds.
func TestWhatIsPrintedIsTheLength(t *testing.T) {
	for name, p := range patterns(t) {
		step := p.Unit.Ruler()
		everyValue("", asData(t, p), func(path string, v any) {
			length, ok := v.(map[string]any)
			if !ok || length["mm"] == nil {
				return
			}
			mm, printed := length["mm"].(float64), length["printed"].(string)
			if strings.HasSuffix(printed, "yd") || strings.HasSuffix(printed, " m") {
				assert.GreaterOrEqual(t, shopLength(t, printed), mm-0.011*114.3, "%s, %s: %v", name, path, length)
				return
			}
			read := readLength(t, p.Unit, printed)
			switch {
			case roundedUp.MatchString(path):
				assert.GreaterOrEqual(t, read, mm-step*0.011-0.005, "%s, %s: %v", name, path, length)
				assert.Less(t, read, mm+step+0.005, "%s, %s: %v", name, path, length)
			case !added.MatchString(path):
				assert.LessOrEqual(t, math.Abs(read-mm), step/2+0.005, "%s, %s: %v", name, path, length)
			}
		})
	}
}

// readLength reads a length as it is printed, also one that lies off the ruler by so
// much: "2 3/8 + 1/64 in".
func readLength(t *testing.T, unit length.Unit, printed string) float64 {
	t.Helper()
	sum, sign := 0.0, 1.0
	for _, part := range regexp.MustCompile(` ([+-]) |$`).Split(printed, 2) {
		mm, err := length.Parse(part, unit)
		require.NoError(t, err, printed)
		sum, sign = sum+sign*mm, map[bool]float64{true: 1, false: -1}[strings.Contains(printed, " + ")]
	}
	return sum
}

// The data and the figures in print say the same: every row of a table can be written
// from the data.
func TestDataSayWhatIsPrinted(t *testing.T) {
	for name, p := range patterns(t) {
		text := words(terminal.Text(Report(p, OwnUnit), 1000))
		has := func(format string, args ...any) {
			t.Helper()
			row := strings.Join(strings.Fields(fmt.Sprintf(format, args...)), " ")
			assert.Contains(t, text, row, "%s: a row of the figures", name)
		}
		bareOf := func(a length.Amount) string {
			return strings.TrimSuffix(printedAs(t, a), " "+p.Unit.String())
		}
		f := Of(p)
		for _, list := range [][]CuttingData{f.Tear, f.Cut} {
			for _, c := range list {
				fold := ""
				if c.OnFold {
					fold = ", on the fold"
				}
				has("%d%s %s %s\n", c.Count, fold, bareOf(c.Across), bareOf(c.Along))
			}
		}
		for _, piece := range f.Pieces {
			for _, e := range piece.Edges {
				has("%s %s %s", e.Key, bareOf(e.Cut), bareOf(e.Sewn))
			}
			for _, set := range slices.Concat(piece.Tucks, piece.Pleats) {
				of := "pleat"
				if set.Kind == "tuck" {
					of = "tuck"
				}
				for _, one := range set.Each {
					switch len(one.Lines) {
					case 2:
						near, far := bareOf(one.Lines[0]), bareOf(one.Lines[1])
						has("%s %d %s %s %s %s", of, one.Number, near, bareOf(one.Fold), far, bareOf(one.Sewn))
					case 1:
						has("%s %d %s %s %s", of, one.Number, bareOf(one.Fold), bareOf(one.Lines[0]), bareOf(one.Sewn))
					default:
						has("%s %d %s %s", of, one.Number, bareOf(one.Fold), bareOf(one.Sewn))
					}
				}
				assert.Contains(t, text, printedAs(t, set.TakeUp), "%s: what %s takes up", name, set.Key)
			}
			for _, pleat := range piece.EdgePleat {
				has("%s %s", bareOf(pleat.At), bareOf(pleat.TakeUp))
			}
		}
		along := func(courses []CourseData) {
			for _, c := range courses {
				has("%s %s %d %s", c.Edge, bareOf(c.Each), c.Times, bareOf(c.Together))
			}
		}
		for _, trim := range f.Trims {
			along(trim.Along)
			has("the line %s", bareOf(trim.Line))
			for _, c := range trim.Corners {
				has("%s %d %s", bareOf(c.Takes), c.Times, bareOf(c.Takes.Times(c.Times)))
			}
			has("joining or turning in %s %d", bareOf(trim.JoinTakes), trim.Joins)
			has("to cut %s\n", bareOf(trim.Total))
			has("buy %s\n", trim.Buy)
		}
		for _, r := range f.Ruffles {
			along(r.Along)
			has("ungathered %s\n", bareOf(r.Length))
			has("tear strips %s deep: %s finished", r.CutDepth, r.Depth)
			for _, at := range r.Joins {
				assert.Contains(t, text, at.String())
			}
			if len(r.Joins) > 0 {
				has("%s", r.JoinsFrom)
			}
			has("the edge every %s, the ruffle every %s", r.QuarterEdge, r.QuarterRuffle)
		}
		for _, b := range f.Bindings {
			along(b.Along)
			has("joining or turning in %s %d", bareOf(b.Ends), b.Joins)
			has("bias strip %s\n", bareOf(b.Length))
			has("cut it %s wide", b.Cut)
			if b.Square != nil {
				has("%s from a square of %s", wording.Counted(b.Strips, "strip"), *b.Square)
			} else {
				has("%s from selvage to selvage, out of %s of cloth", wording.Counted(b.Strips, "strip"), *b.Cloth)
			}
		}
		for _, s := range f.Seams {
			for i, side := range s.Sides {
				if len(side) > 1 {
					has("together %s %s\n", bareOf(s.Cut[i]), bareOf(s.Sewn[i]))
				} else {
					has("%s %s\n", bareOf(s.Cut[i]), bareOf(s.Sewn[i]))
				}
			}
			switch {
			case s.Gathered:
			case s.CutDifference != nil:
				has("difference %s %s\n", strings.TrimPrefix(bareOf(*s.CutDifference), "-"), strings.TrimPrefix(bareOf(s.Difference), "-"))
			default:
				has("difference %s\n", strings.TrimPrefix(bareOf(s.Difference), "-"))
			}
		}
		for _, text := range f.Cautions {
			has("%s", text)
		}
	}
}

// printedAs is what the data print of a length.
func printedAs(t *testing.T, a length.Amount) string {
	t.Helper()
	text, err := json.Marshal(a)
	require.NoError(t, err)
	var length struct{ Printed string }
	require.NoError(t, json.Unmarshal(text, &length))
	return length.Printed
}

// A small file, whole: a rectangle of 4 in by 3 in.
func TestDataInFull(t *testing.T) {
	p, err := check("title = \"Cloth & <napkin>\"\nallowance = \"1/4\"\nunit = \"in\"\n[piece.a.edge.one]\npoints = [[0, 0], [4, 0], [4, 3]]\n[piece.a.edge.other]\npoints = [[0, 0], [0, 3], [4, 3]]\n")
	require.NoError(t, err)
	var b strings.Builder
	for _, line := range strings.Split(string(JSON(p)), "\n") {
		b.WriteString(strings.TrimSpace(line))
	}
	length := func(mm float64, printed string) string { return fmt.Sprintf(`{"mm": %g,"printed": %q}`, mm, printed) }
	edge := func(key string) string {
		return fmt.Sprintf(`{"key": %q,"on_fold": false,"cut": %s,"sewn": %s,"allowance": %s,"hem": %s,"turn": %s}`,
			key, length(177.8, "7 in"), length(152.4, "6 in"), length(6.35, "1/4 in"), length(0, "0 in"), length(0, "0 in"))
	}
	setting := func(name string) string { return fmt.Sprintf(`{"name": %q,"value": ""}`, name) }
	assert.Equal(t, `{"title": "Cloth & <napkin>","size": "","unit": "in","remarks": [],`+
		`"tear": [{"name": "a","what": "rectangle","count": 1,"on_fold": false,"across": `+length(101.6, "4 in")+`,"along": `+length(76.2, "3 in")+`}],"cut": [],`+
		`"pieces": [{"key": "a","name": "a","cut": 1,"layers": 1,"on_fold": false,"block": null,"edges": [`+edge("one")+","+edge("other")+`],"tucks": [],"pleats": [],"edge_pleats": []}],`+
		`"seams": [],"trims": [],"ruffles": [],"bindings": [],"cloth": null,`+
		`"sewing": [`+strings.Join([]string{setting("stitch length"), setting("needle"), setting("thread"), setting("tension"), setting("needle position")}, ",")+`],`+
		`"cautions": ["`+strings.Join(cautionsOf(p), `","`)+`"]}`, b.String())
}

// Cloth too narrow for everything: nothing is laid, and nothing is bought.
func TestDataOfClothTooNarrowForAnything(t *testing.T) {
	for unit, want := range map[string]string{"in": "0 yd", "cm": "0 m"} {
		p, err := check("unit = \"" + unit + "\"\nallowance = 0\n[cloth]\nwidth = 4\n" + sketch.Front(sketch.SquareCollar))
		require.NoError(t, err)
		f := Of(p)
		assert.Equal(t, []string{"front"}, f.Cloth.TooWide)
		assert.Equal(t, want, f.Cloth.Buy.String())
		assert.Equal(t, "0 "+unit, f.Cloth.Length.String())
	}
}
