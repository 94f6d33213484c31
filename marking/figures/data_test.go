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
	"tuckmark/marking/sketch/made"
	"tuckmark/marking/terminal"
	"tuckmark/marking/wording"
)

// read is an object of the data.
type read map[string]any

// asData reads the figures of a pattern as any script does.
func asData(t *testing.T, p *garment.Pattern) read {
	t.Helper()
	text := JSON(p)
	require.True(t, strings.HasSuffix(string(text), "}\n"), "it ends with a line end")
	var data read
	require.NoError(t, json.Unmarshal(text, &data))
	return data
}

// each are the objects of a list.
func (r read) each(key string) []read { return readAll(r[key]) }

func readAll(list any) []read {
	var all []read
	for _, one := range list.([]any) {
		all = append(all, one.(map[string]any))
	}
	return all
}

// printed is what stands in print of a length.
func (r read) printed(key string) string { return read(r[key].(map[string]any))["printed"].(string) }

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
bindings[].lengths bindings[].lengths[].along bindings[].lengths[].length bindings[].lengths[].line bindings[].lengths[].times
bindings[].lengths[].along[].each bindings[].lengths[].along[].edge bindings[].lengths[].along[].piece bindings[].lengths[].along[].times bindings[].lengths[].along[].together
bindings[].square bindings[].strips bindings[].width
cautions
cloth cloth.buy cloth.length cloth.parts cloth.parts[].folded cloth.parts[].from cloth.parts[].pieces
cloth.parts[].pieces[].from cloth.parts[].pieces[].left cloth.parts[].pieces[].name cloth.parts[].pieces[].on_fold
cloth.parts[].pieces[].right cloth.parts[].pieces[].to cloth.parts[].pieces[].upper_layer_only
cloth.parts[].to cloth.share_used cloth.too_wide cloth.width
cut cut[].across cut[].along cut[].count cut[].name cut[].on_fold cut[].what
garments girths girths[].child girths[].closed_on girths[].ease girths[].finished girths[].gathered girths[].level
girths[].opens_at girths[].pieces girths[].pieces[].each girths[].pieces[].edge girths[].pieces[].name
girths[].pieces[].times girths[].pieces[].together
lengths lengths[].along lengths[].child lengths[].finished lengths[].from lengths[].hangs lengths[].longer lengths[].name lengths[].to
pieces pieces[].block pieces[].block.length pieces[].block.take_up pieces[].block.top_when_sewn pieces[].block.width
pieces[].cut pieces[].edge_pleats pieces[].edge_pleats[].at pieces[].edge_pleats[].depth pieces[].edge_pleats[].edge
pieces[].edge_pleats[].from pieces[].edge_pleats[].key pieces[].edge_pleats[].take_up
pieces[].edges pieces[].edges[].allowance pieces[].edges[].cut pieces[].edges[].hem pieces[].edges[].key
pieces[].edges[].on_fold pieces[].edges[].sewn pieces[].edges[].turn pieces[].key pieces[].layers
pieces[].name pieces[].on_fold
pieces[].pleats pieces[].pleats[].beside pieces[].pleats[].count pieces[].pleats[].each pieces[].pleats[].each[].fold
pieces[].pleats[].each[].lines pieces[].pleats[].each[].number pieces[].pleats[].each[].when_sewn
pieces[].pleats[].ends pieces[].pleats[].in_all pieces[].pleats[].key pieces[].pleats[].kind pieces[].pleats[].take_up_in_all pieces[].pleats[].width
pieces[].tucks pieces[].tucks[].beside pieces[].tucks[].betweens pieces[].tucks[].per_group pieces[].tucks[].count pieces[].tucks[].each pieces[].tucks[].each[].fold
pieces[].tucks[].each[].lines pieces[].tucks[].each[].number pieces[].tucks[].each[].when_sewn
pieces[].tucks[].ends pieces[].tucks[].ends[].below_cut_edge pieces[].tucks[].ends[].below_stitch_line
pieces[].tucks[].ends[].below_torn_edge pieces[].tucks[].ends[].edge pieces[].tucks[].ends[].number
pieces[].tucks[].field pieces[].tucks[].field.count_to_fill pieces[].tucks[].field.edge pieces[].tucks[].field.edge_reaches
pieces[].tucks[].field.reaches pieces[].tucks[].field.wider_to_fill
pieces[].tucks[].in_all pieces[].tucks[].key pieces[].tucks[].kind pieces[].tucks[].take_up_in_all pieces[].tucks[].width
remarks remarks[].key remarks[].line remarks[].text
ruffles ruffles[].along ruffles[].along[].each ruffles[].along[].edge ruffles[].along[].piece ruffles[].along[].times
ruffles[].along[].together ruffles[].corners ruffles[].corners[].piece ruffles[].corners[].takes ruffles[].corners[].times
ruffles[].corners[].turn_degrees ruffles[].curves ruffles[].curves[].needs ruffles[].curves[].piece ruffles[].curves[].takes
ruffles[].curves[].times ruffles[].curves[].turn_degrees
ruffles[].cut_depth ruffles[].depth ruffles[].edge ruffles[].fullness ruffles[].gathered ruffles[].hem
ruffles[].apart ruffles[].joining ruffles[].joins ruffles[].joins_from ruffles[].key ruffles[].length
ruffles[].lengths ruffles[].lengths[].along ruffles[].lengths[].gathered ruffles[].lengths[].joins ruffles[].lengths[].joins_from ruffles[].lengths[].length ruffles[].lengths[].line
ruffles[].lengths[].quarter_of_edge ruffles[].lengths[].quarter_of_ruffle ruffles[].lengths[].strips ruffles[].lengths[].times
ruffles[].lengths[].along[].each ruffles[].lengths[].along[].edge ruffles[].lengths[].along[].piece ruffles[].lengths[].along[].times ruffles[].lengths[].along[].together
ruffles[].quarter_of_edge
ruffles[].quarter_of_ruffle ruffles[].seam ruffles[].strips ruffles[].turn
seams seams[].advice seams[].cut seams[].cut_difference seams[].cut_matches seams[].difference seams[].drawn_up seams[].ease seams[].ends
seams[].ends[].bend_degrees seams[].ends[].cut_jog seams[].ends[].cut_past seams[].ends[].jog
seams[].ends[].neighbours seams[].ends[].past seams[].ends_told_by
seams[].fullness seams[].gathered seams[].key seams[].matches seams[].sewn seams[].sides seams[].sides[][].each
seams[].sides[][].edge seams[].sides[][].piece seams[].sides[][].times seams[].sides[][].together seams[].within
sewing sewing[].name sewing[].value size
tear tear[].across tear[].along tear[].count tear[].name tear[].on_fold tear[].what title
trims trims[].along trims[].along[].each trims[].along[].edge trims[].along[].piece trims[].along[].times
trims[].along[].together trims[].buy trims[].corners trims[].corners[].piece trims[].corners[].takes
trims[].corners[].times trims[].corners[].turn_degrees trims[].curves trims[].curves[].needs trims[].curves[].piece
trims[].curves[].takes trims[].curves[].times trims[].curves[].turn_degrees trims[].fullness trims[].gathered
trims[].hollow_without_room trims[].join_takes
trims[].joins trims[].key trims[].kind trims[].line
trims[].lengths trims[].lengths[].along trims[].lengths[].gathered trims[].lengths[].joins trims[].lengths[].line trims[].lengths[].times trims[].lengths[].total
trims[].lengths[].along[].each trims[].lengths[].along[].edge trims[].lengths[].along[].piece trims[].lengths[].along[].times trims[].lengths[].along[].together
trims[].spare_at_corners trims[].spare_in_hollows trims[].total trims[].total_of_all trims[].width
unit
`

// cape has an outward curve, with lace, and corners beside it, with a ruffle round both.
const cape = `
[piece.cape.edge.hem]
points = [[0, 0], [9, 0], [14.5, 4], [16, 12]]
smooth = true
[piece.cape.edge.rest]
points = [[0, 0], [0, 12], [16, 12]]
[trim."cape lace"]
along = "cape.hem"
width = 1
[ruffle.cape]
along = ["cape.hem", "cape.rest"]
fullness = 2
depth = 3
`

func TestKeysOfTheData(t *testing.T) {
	found := map[string]bool{}
	for _, p := range []*garment.Pattern{made.Of(t, sketch.Frock+cape), made.Example(t, "shirt.toml"), garmentOf(t, half+sketch.Rows(`tuck yoke centre 1/8 3 7/16 | groups = 2; between = "1/2"`), "")} {
		everyValue("", map[string]any(asData(t, p)), func(path string, _ any) {
			if path != "" && !strings.HasSuffix(path, "[]") && !strings.HasSuffix(path, ".mm") && !strings.HasSuffix(path, ".printed") {
				found[path] = true
			}
		})
	}
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
var mayBeNull = []string{"cloth", "pieces[].tucks[].field", "pieces[].tucks[].field.wider_to_fill",
	"pieces[].block", "pieces[].tucks[].ends[].below_torn_edge", "pieces[].pleats[].ends[].below_torn_edge",
	"seams[].cut_difference", "seams[].drawn_up", "seams[].ends[].cut_jog", "seams[].ends[].bend_degrees", "trims[].hollow_without_room",
	"bindings[].square", "bindings[].cloth",
	"girths[].child", "girths[].ease", "lengths[].child", "lengths[].hangs", "lengths[].longer"}

func TestDataOfEveryPattern(t *testing.T) {
	all := patterns(t)
	bare := made.Of(t, "[piece.a.edge.one]\npoints = [[0, 0], [4, 0], [4, 3]]\n[piece.a.edge.other]\npoints = [[0, 0], [0, 3], [4, 3]]\n")
	all["hardly anything"] = bare
	for name, p := range all {
		lengths := 0
		everyValue("", map[string]any(asData(t, p)), func(path string, v any) {
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
	added = regexp.MustCompile(`\.(together|line|gathered|total|total_of_all|length|difference|cut_difference|jog|cut_jog|cut_depth|quarter_of_\w+|buy|ease|longer)$|` +
		`^(girths\[\]\.finished|seams\[\]\.(sewn|cut)\[\]|ruffles\[\]\.edge|bindings\[\]\.edge|tear\[\]\.along)$`)
	// roundedUp are lengths of which less would not do.
	roundedUp = regexp.MustCompile(`\.(join_takes|takes|needs|buy)$|^(tear\[\]\.(across|along)|cloth\.length|bindings\[\]\.cloth|pieces\[\]\.block\.(width|length))$`)
)

// What is printed is the length in mm to half a step of the ruler, or to the next step
// above it. Sums are those of their parts, which TestTotalsAddUpAsTheyArePrinted adds.
func TestWhatIsPrintedIsTheLength(t *testing.T) {
	for name, p := range patterns(t) {
		step := p.Unit.Ruler()
		everyValue("", map[string]any(asData(t, p)), func(path string, v any) {
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
		// bare are lengths as they stand in a table.
		bare := func(of read, keys ...string) string {
			var all []string
			for _, key := range keys {
				all = append(all, strings.TrimSuffix(of.printed(key), " "+p.Unit.String()))
			}
			return strings.Join(all, " ")
		}
		f := asData(t, p)
		for _, c := range slices.Concat(f.each("tear"), f.each("cut")) {
			fold := ""
			if c["on_fold"] == true {
				fold = ", on the fold"
			}
			has("%v%s %s\n", c["count"], fold, bare(c, "across", "along"))
		}
		for _, piece := range f.each("pieces") {
			for _, e := range piece.each("edges") {
				has("%s %s", e["key"], bare(e, "cut", "sewn"))
			}
			for _, set := range slices.Concat(piece.each("tucks"), piece.each("pleats")) {
				of := "pleat"
				if set["kind"] == "tuck" {
					of = "tuck"
				}
				for _, one := range set.each("each") {
					fold, lines := []string{bare(one, "fold")}, []string{}
					for _, l := range readAll(one["lines"]) {
						lines = append(lines, bare(read{"line": map[string]any(l)}, "line"))
					}
					if len(lines) == 2 {
						fold, lines = append(lines[:1:1], fold...), lines[1:]
					}
					has("%s %v %s %s", of, one["number"], strings.Join(append(fold, lines...), " "), bare(one, "when_sewn"))
				}
				assert.Contains(t, text, set.printed("take_up_in_all"), "%s: what %s takes up", name, set["key"])
			}
			for _, pleat := range piece.each("edge_pleats") {
				has("%s", bare(pleat, "at", "take_up"))
			}
		}
		along := func(courses any) {
			for _, c := range readAll(courses) {
				has("%s %s %v %s", c["edge"], bare(c, "each"), c["times"], bare(c, "together"))
			}
		}
		for _, trim := range f.each("trims") {
			along(trim["along"])
			has("the line %s", bare(trim, "line"))
			for _, c := range trim.each("corners") {
				has("%s %v", bare(c, "takes"), c["times"])
			}
			has("joining or turning in %s %v", bare(trim, "join_takes"), trim["joins"])
			for _, l := range trim.each("lengths") {
				if l["times"] == 1.0 && len(trim.each("lengths")) == 1 {
					has("to cut %s\n", bare(trim, "total"))
				} else {
					has(" %s\n", bare(trim, "total"))
					has("%s", l.printed("total"))
				}
			}
			has("buy %s\n", trim.printed("buy"))
		}
		for _, r := range f.each("ruffles") {
			along(r["along"])
			has(" %s\n", bare(r, "length"))
			has("tear strips %s deep: %s finished", r.printed("cut_depth"), r.printed("depth"))
			for _, at := range r.each("joins") {
				assert.Contains(t, text, at["printed"])
			}
			if len(r.each("joins")) > 0 {
				has("%s", r["joins_from"])
			}
			has("the edge every %s, the ruffle every %s", r.printed("quarter_of_edge"), r.printed("quarter_of_ruffle"))
		}
		for _, b := range f.each("bindings") {
			along(b["along"])
			has("joining or turning in %s %v", bare(b, "join_takes"), b["joins"])
			has(" %s\n", bare(b, "length"))
			for _, l := range b.each("lengths") {
				has("%s", bare(l, "length"))
			}
			has("cut it %s wide", b.printed("cut_width"))
			strips := wording.Counted(int(b["strips"].(float64)), "strip")
			if b["square"] != nil {
				has("%s from a square of %s", strips, b.printed("square"))
			} else {
				has("%s from selvage to selvage, out of %s of cloth", strips, b.printed("cloth"))
			}
		}
		for _, s := range f.each("seams") {
			for i, side := range s["sides"].([]any) {
				of := read{"cut": s["cut"].([]any)[i], "sewn": s["sewn"].([]any)[i]}
				together := ""
				if len(side.([]any)) > 1 {
					together = "together"
				}
				has("%s %s\n", together, bare(of, "cut", "sewn"))
			}
			difference := strings.TrimPrefix(bare(s, "difference"), "-")
			switch {
			case s["gathered"] == true:
			case s["cut_difference"] != nil:
				has("difference %s %s\n", strings.TrimPrefix(bare(s, "cut_difference"), "-"), difference)
			default:
				has("difference %s\n", difference)
			}
		}
		for _, text := range f["cautions"].([]any) {
			has("%s", text)
		}
	}
}

// A small file, whole: a rectangle of 4 in by 3 in.
func TestDataInFull(t *testing.T) {
	p := made.Of(t, "title = \"Cloth & <sample>\"\nallowance = \"1/4\"\nunit = \"in\"\n[piece.a.edge.one]\npoints = [[0, 0], [4, 0], [4, 3]]\n[piece.a.edge.other]\npoints = [[0, 0], [0, 3], [4, 3]]\n")
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
	assert.Equal(t, `{"title": "Cloth & <sample>","size": "","unit": "in","garments": 1,"remarks": [],`+
		`"tear": [{"name": "a","what": "rectangle","count": 1,"on_fold": false,"across": `+length(76.2, "3 in")+`,"along": `+length(101.6, "4 in")+`}],"cut": [],`+
		`"pieces": [{"key": "a","name": "a","cut": 1,"layers": 1,"on_fold": false,"block": null,"edges": [`+edge("one")+","+edge("other")+`],"tucks": [],"pleats": [],"edge_pleats": []}],`+
		`"seams": [],"girths": [],"lengths": [],"trims": [],"ruffles": [],"bindings": [],"cloth": null,`+
		`"sewing": [`+strings.Join([]string{setting("stitch length"), setting("needle"), setting("thread"), setting("tension"), setting("needle position")}, ",")+`],`+
		`"cautions": ["`+strings.Join(cautionsOf(p), `","`)+`"]}`, b.String())
}

// Cloth too narrow for everything: nothing is laid, and nothing is bought.
func TestDataOfClothTooNarrowForAnything(t *testing.T) {
	for unit, want := range map[string]string{"in": "0 yd", "cm": "0 m"} {
		p := made.Of(t, "unit = \""+unit+"\"\nallowance = 0\n[cloth]\nwidth = 4\n"+sketch.Front(sketch.SquareCollar))
		cloth := read(asData(t, p)["cloth"].(map[string]any))
		assert.Equal(t, []any{"front"}, cloth["too_wide"])
		assert.Equal(t, want, cloth.printed("buy"))
		assert.Equal(t, "0 "+unit, cloth.printed("length"))
	}
}

// shopLength parses "2 3/8 yd" and "1.25 m" into mm.
func shopLength(t require.TestingT, printed string) float64 {
	for unit, mm := range map[string]float64{" yd": 914.4, " m": 1000} {
		if number, ok := strings.CutSuffix(printed, unit); ok {
			n, err := length.Parse(number, length.Millimetre)
			require.NoError(t, err)
			return n * mm
		}
	}
	require.Failf(t, "no length of a shop", "%q", printed)
	return 0
}
