package drawing

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/length"
)

// svg puts elements into a drawing of 200 by 300 mm; they begin in line 2.
func svg(within ...string) string {
	return `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" width="200mm" height="300mm" viewBox="0 0 200 300">` +
		"\n" + strings.Join(within, "\n") + "\n</svg>"
}

// ask is what a piece asks for in these tests.
var ask = Ask{Part: "front", Piece: "front", Edges: []string{"left", "top", "right", "bottom"}, Corner: 20, Unit: length.Millimetre}

// refused returns what is said of a drawing that cannot be read, or taken from.
func refused(t *testing.T, text string, a Ask) string {
	t.Helper()
	d, err := Read("front.svg", []byte(text))
	if err != nil {
		require.Nil(t, d)
		return err.Error()
	}
	_, f := d.Take(a)
	require.NotNil(t, f, "nothing is wrong")
	return f.Error()
}

func TestBadDrawings(t *testing.T) {
	square := `<path id="front" d="M10 10h100v100h-100z"/>`
	for _, c := range badDrawings {
		t.Run(c.name, func(t *testing.T) {
			a := ask
			if c.ask != nil {
				c.ask(&a)
			}
			assert.Equal(t, c.want, refused(t, strings.ReplaceAll(c.text, "SQUARE", square), a))
		})
	}
}

type badDrawing struct {
	name, text string
	ask        func(*Ask)
	want       string
}

var badDrawings = []badDrawing{
	// XML
	{"nothing", "", nil,
		"front.svg: the drawing is empty\nhint: save the drawing as plain SVG"},
	{"spaces", " \n ", nil,
		"front.svg: the drawing is empty\nhint: save the drawing as plain SVG"},
	{"another kind of file", "%PDF-1.7 <", nil,
		"front.svg: is no SVG\nhint: save the drawing as plain SVG"},
	{"a picture", "\x89PNG\r\n", nil,
		"front.svg: is no SVG\nhint: save the drawing as plain SVG"},
	{"words", "front, back", nil,
		"front.svg: is no SVG\nhint: save the drawing as plain SVG"},
	{"compressed", "\x1f\x8b\x08\x00", nil,
		"front.svg: the drawing is compressed\nhint: save it as plain SVG, not compressed"},
	{"UTF-16", "\xff\xfe<\x00s\x00", nil,
		"front.svg: is written in UTF-16\nhint: save it as UTF-8"},
	{"another alphabet", `<?xml version="1.0" encoding="koi8-r"?><svg/>`, nil,
		"front.svg: is written in \"koi8-r\"\nhint: save it as UTF-8"},
	{"no UTF-8", svg("<g id='\xe9'/>"), nil,
		"front.svg:2: has letters that are no UTF-8\nhint: save it as UTF-8"},
	{"a web page", "<html>\n<svg/></html>", nil,
		"front.svg:1: is no SVG: \"html\" stands where svg should\nhint: save the drawing as plain SVG"},
	{"an element of another kind", `<svg xmlns="http://example.org/other"/>`, nil,
		"front.svg:1: is no SVG: \"svg\" stands where svg should\nhint: save the drawing as plain SVG"},
	{"broken off", "<svg>\n<g><path", nil,
		"front.svg:2: the drawing breaks off here\nhint: open it in the drawing program and save it once more as plain SVG"},
	{"an element left open", "<svg>\n<g>\n</svg>", nil,
		"front.svg:3: the drawing is broken here: element <g> closed by </svg>\nhint: open it in the drawing program and save it once more as plain SVG"},
	{"a quote left open", "<svg>\n<g id=\"a>\n</svg>", nil,
		"front.svg:3: the drawing is broken here: unescaped < inside quoted string\nhint: open it in the drawing program and save it once more as plain SVG"},
	{"no quotes", "<svg>\n<g id=a/></svg>", nil,
		"front.svg:2: the drawing is broken here: unquoted or missing attribute value in e...\nhint: open it in the drawing program and save it once more as plain SVG"},
	{"two drawings", "<svg></svg>\n<svg></svg>", nil,
		"front.svg:2: is no SVG: \"svg\" stands where svg should\nhint: save the drawing as plain SVG"},
	{"an entity", svg(`<g id="&front;"/>`), nil,
		"front.svg:2: the name \"&front;\" stands for nothing\nhint: open it in the drawing program and save it once more as plain SVG"},
	{"a declared entity", "<!DOCTYPE svg [<!ENTITY a \"b\">]>\n" + svg("SQUARE"), nil,
		"front.svg:1: declares names of its own in its DOCTYPE, which are not read\nhint: open it in the drawing program and save it once more as plain SVG"},
	{"an entity bomb", "<?xml version=\"1.0\"?>\n<!DOCTYPE svg [\n<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;\">]><svg id=\"&b;\"/>", nil,
		"front.svg:2: declares names of its own in its DOCTYPE, which are not read\nhint: open it in the drawing program and save it once more as plain SVG"},
	{"an entity from outside", "<!DOCTYPE svg [<!ENTITY a SYSTEM \"file:///etc/hostname\">]><svg>&a;</svg>", nil,
		"front.svg:1: declares names of its own in its DOCTYPE, which are not read\nhint: open it in the drawing program and save it once more as plain SVG"},
	{"nested deeply", svg(strings.Repeat("<g>", 300) + strings.Repeat("</g>", 300)), nil,
		"front.svg:2: more than 200 elements stand in each other\nhint: take groups apart"},
	{"too many elements", svg(strings.Repeat("<g/>", 100_001)), nil,
		"front.svg:2: has more than 100000 elements\nhint: take out what belongs to no piece"},
	{"too large", svg(strings.Repeat(" ", 10<<20)), nil,
		"front.svg: the drawing has more than 10 MB\nhint: take pictures and what belongs to no piece out of it"},
	{"nothing drawn", svg(`<g id="front"/>`), func(a *Ask) { a.Part = "" },
		"front.svg: nothing is drawn in it\nhint: draw the outline of the piece as a path"},
	{"a sheet of styles that hides", svg("<style>.a { display : none }</style>", "SQUARE"), nil,
		"front.svg:2: style: a style sheet moves or hides parts of the drawing, which is not read\nhint: open it in the drawing program and save it once more as plain SVG"},
	{"a sheet of styles that moves", svg("<style>.a{Transform: scale(2)}</style>", "SQUARE"), nil,
		"front.svg:2: style: a style sheet moves or hides parts of the drawing, which is not read\nhint: open it in the drawing program and save it once more as plain SVG"},

	// sizes
	{"no width", `<svg width="0" height="10mm" viewBox="0 0 1 1">SQUARE</svg>`, nil,
		"front.svg:1: svg: width: the drawing has no size, being 0\nhint: give the drawing its real size in mm or in"},
	{"percent of nothing", `<svg width="100%" height="100%" viewBox="0 0 1 1">SQUARE</svg>`, nil,
		"front.svg:1: svg: width: \"100%\" is a share of nothing\nhint: give the drawing a size: width and height in mm or in"},
	{"a width below 0", `<svg width="-10mm" height="10mm">SQUARE</svg>`, nil,
		"front.svg:1: svg: width: \"-10mm\" is below 0\nhint: open it in the drawing program and save it once more as plain SVG"},
	{"a width that is none", `<svg width="wide" height="10mm">SQUARE</svg>`, nil,
		"front.svg:1: svg: width: \"wide\" is no length\nhint: a length is a number, with a unit or without: \"210mm\""},
	{"a unit that is not known", `<svg width="10em" height="10mm">SQUARE</svg>`, nil,
		"front.svg:1: svg: width: \"10em\" has the unit \"em\", which is not known here\nhint: the units are mm, cm, in, pt, pc, q and px"},
	{"a view of nothing", `<svg width="10mm" height="10mm" viewBox="0 0 0 100">SQUARE</svg>`, nil,
		"front.svg:1: svg: viewBox: shows nothing, being 0 wide and 100 high\nhint: it is four numbers, left, top, width and height: 0 0 210 297"},
	{"a view of three numbers", `<svg width="10mm" height="10mm" viewBox="0 0 100">SQUARE</svg>`, nil,
		"front.svg:1: svg: viewBox: has 3 numbers\nhint: it is four numbers, left, top, width and height: 0 0 210 297"},
	{"a view in letters", `<svg width="10mm" height="10mm" viewBox="0 0 a 100">SQUARE</svg>`, nil,
		"front.svg:1: svg: viewBox: a number is wanted, but there is \"a\"\nhint: it is four numbers, left, top, width and height: 0 0 210 297"},
	{"a view below 0", `<svg width="10mm" height="10mm" viewBox="0 0 100 -100">SQUARE</svg>`, nil,
		"front.svg:1: svg: viewBox: shows nothing, being 100 wide and -100 high\nhint: it is four numbers, left, top, width and height: 0 0 210 297"},
	{"a fit that is not known", `<svg width="10mm" height="10mm" viewBox="0 0 1 1" preserveAspectRatio="middle">SQUARE</svg>`, nil,
		"front.svg:1: svg: preserveAspectRatio: \"middle\" is not known\nhint: leave it out, or write none, or xMidYMid"},
	{"percent in a drawing without a size", `<svg><rect id="front" width="50%" height="10"/></svg>`, nil,
		"front.svg:1: rect \"front\": width: \"50%\" is a share of nothing\nhint: give the drawing a size: width and height in mm or in"},

	// transforms
	{"scaled to nothing", svg(`<g transform="scale(0)">`, "SQUARE</g>"), nil,
		"front.svg:3: path \"front\": its transform leaves nothing of it\nhint: a scale of 0 makes everything one line"},
	{"a transform that is none", svg(`<g transform="turn(30)">SQUARE</g>`), nil,
		"front.svg:2: g: its transform has \"turn(30)\", which is none\nhint: known are matrix, translate, scale, rotate, skewX and skewY"},
	{"a transform left open", svg(`<g transform="rotate(30">SQUARE</g>`), nil,
		"front.svg:2: g: its transform rotate breaks off at the end\nhint: numbers stand in brackets, without units: rotate(30)"},
	{"a transform of two numbers", svg(`<g transform="rotate(30 20)">SQUARE</g>`), nil,
		"front.svg:2: g: its transform rotate has 2 numbers\nhint: open it in the drawing program and save it once more as plain SVG"},
	{"a transform with a unit", svg(`<g transform="rotate(30deg)">SQUARE</g>`), nil,
		"front.svg:2: g: its transform rotate breaks off at \"deg)\"\nhint: numbers stand in brackets, without units: rotate(30)"},
	{"a sheet of styles with a remark of the file in it", svg("<style>.a{trans<!-- -->form: scale(2)}</style>", "SQUARE"), nil,
		"front.svg:2: style: a style sheet moves or hides parts of the drawing, which is not read\nhint: open it in the drawing program and save it once more as plain SVG"},
	{"a transform in a style", svg(`<g style="transform: rotate(30deg)">SQUARE</g>`), nil,
		"front.svg:2: g: its transform stands in a style, which is not read\nhint: open it in the drawing program and save it once more as plain SVG"},
	{"a transform about a place", svg(`<g transform="rotate(30)" transform-origin="center">SQUARE</g>`), nil,
		"front.svg:2: g: transform-origin is not read\nhint: open it in the drawing program and save it once more as plain SVG"},
	{"moved out of sight", svg(`<g transform="translate(1e7)">SQUARE</g>`), nil,
		"front.svg:2: path \"front\": it reaches more than 100 m from the corner of the drawing\nhint: is the size of the drawing the right one?"},
	{"no number", svg(`<g transform="translate(NaN)">SQUARE</g>`), nil,
		"front.svg:2: g: its transform translate breaks off at \"NaN)\"\nhint: numbers stand in brackets, without units: rotate(30)"},

	// paths
	{"a path from nowhere", svg(`<path id="front" d="L10 10"/>`), nil,
		"front.svg:2: path \"front\": letter 1 of its d: a path begins with M, not with \"L10\"\nhint: open it in the drawing program and save it once more as plain SVG"},
	{"no command", svg(`<path id="front" d="M0 0 X10 10"/>`), nil,
		"front.svg:2: path \"front\": letter 6 of its d: \"X10\" is no command of a path\nhint: open it in the drawing program and save it once more as plain SVG"},
	{"NaN", svg(`<path id="front" d="M0 0 L NaN 10"/>`), nil,
		"front.svg:2: path \"front\": letter 8 of its d: L wants 2 numbers; number 1 is \"NaN\"\nhint: open it in the drawing program and save it once more as plain SVG"},
	{"infinite", svg(`<path id="front" d="M0 0 L 10 inf"/>`), nil,
		"front.svg:2: path \"front\": letter 11 of its d: L wants 2 numbers; number 2 is \"inf\"\nhint: open it in the drawing program and save it once more as plain SVG"},
	{"too large a number", svg(`<path id="front" d="M0 0 L 1e999 10"/>`), nil,
		"front.svg:2: path \"front\": letter 8 of its d: L wants 2 numbers; number 1 is \"1e999\"\nhint: open it in the drawing program and save it once more as plain SVG"},
	{"far away", svg(`<path id="front" d="M0 0 L 1e300 10z"/>`), nil,
		"front.svg:2: path \"front\": it reaches more than 100 m from the corner of the drawing\nhint: is the size of the drawing the right one?"},
	{"an arc far away", svg(`<path id="front" d="M1e308 0A1 1 0 0 1-1e308 0L0 100z"/>`), nil,
		"front.svg:2: path \"front\": it reaches more than 100 m from the corner of the drawing\nhint: is the size of the drawing the right one?"},
	{"a curve broken off", svg(`<path id="front" d="M0 0 C 10 10 20"/>`), nil,
		"front.svg:2: path \"front\": letter 16 of its d: C wants 6 numbers; number 4 is the end\nhint: open it in the drawing program and save it once more as plain SVG"},
	{"a flag of 2", svg(`<path id="front" d="M0 0 A 10 10 0 2 1 20 20"/>`), nil,
		"front.svg:2: path \"front\": letter 16 of its d: an arc wants a 0 or a 1, but there is \"2\"\nhint: open it in the drawing program and save it once more as plain SVG"},
	{"a comma too many", svg(`<path id="front" d="M0 0 L 10 10,, 20 20"/>`), nil,
		"front.svg:2: path \"front\": letter 13 of its d: a number is wanted behind the comma\nhint: open it in the drawing program and save it once more as plain SVG"},
	{"a comma at the end", svg(`<path id="front" d="M0 0 L 10 10, z"/>`), nil,
		"front.svg:2: path \"front\": letter 13 of its d: a number is wanted behind the comma\nhint: open it in the drawing program and save it once more as plain SVG"},
	{"a path in a style", svg(`<path id="front" style="d: path('M0 0')"/>`), nil,
		"front.svg:2: path \"front\": its d stands in a style\nhint: open it in the drawing program and save it once more as plain SVG"},
	{"half a point", svg(`<polygon id="front" points="0 0 10 10 20"/>`), nil,
		"front.svg:2: polygon \"front\": its points: the last point has one number\nhint: open it in the drawing program and save it once more as plain SVG"},
	{"no point", svg(`<polygon id="front" points="0 0 10 x"/>`), nil,
		"front.svg:2: polygon \"front\": its points: a number is wanted, but there is \"x\"\nhint: open it in the drawing program and save it once more as plain SVG"},
	{"a radius below 0", svg(`<circle id="front" r="-10"/>`), nil,
		"front.svg:2: circle \"front\": r: \"-10\" is below 0\nhint: open it in the drawing program and save it once more as plain SVG"},
	{"a width in no unit", svg(`<rect id="front" width="10 km" height="10"/>`), nil,
		"front.svg:2: rect \"front\": width: \"10 km\" has the unit \"km\", which is not known here\nhint: the units are mm, cm, in, pt, pc, q and px"},
	{"too many lines", svg(`<path id="front" d="M0 0` + strings.Repeat(" 1 1", 200_001) + `"/>`), nil,
		"front.svg:2: path \"front\": there is too much in the drawing\nhint: at most 200000 lines and curves are drawn, with those that are used again; take out what belongs to no piece"},

	// uses
	{"a use of nothing", svg(`<use/>`), nil,
		"front.svg:2: use: it does not say what is used\nhint: open it in the drawing program and save it once more as plain SVG"},
	{"a use of what is not there", svg(`<use href="#back"/>`), nil,
		"front.svg:2: use: it uses \"back\", which is not there\nhint: open it in the drawing program and save it once more as plain SVG"},
	{"a use of itself", svg(`<g id="front">`, `<use href="#front"/></g>`), nil,
		"front.svg:3: use: it uses \"front\", which it is a part of\nhint: take it out"},
	{"a use in a ring", svg(`<g id="a"><use href="#b"/></g>`, `<g id="b"><use xlink:href="#a"/></g>`), nil,
		"front.svg:2: use: it uses \"b\", which it is a part of\nhint: take it out\nfront.svg:3: use: it uses \"a\", which it is a part of\nhint: take it out"},
	{"a use of another file", svg(`<use href="back.svg#back"/>`), nil,
		"front.svg:2: use: it uses what is in another file: \"back.svg#back\"\nhint: bring it into this drawing"},
	{"a use of the network", svg(`<use xlink:href="http://example.org/a.svg#b"/>`), nil,
		"front.svg:2: use: it uses what is in another file: \"http://example.org/a.svg#b\"\nhint: bring it into this drawing"},
	{"a thousand million points by use", bomb(9, 10), nil,
		"front.svg:2: path \"a\": there is too much in the drawing\nhint: at most 200000 lines and curves are drawn, with those that are used again; take out what belongs to no piece"},
	{"a use of much that is empty", strings.ReplaceAll(bomb(5, 10), "M0 0h1v1z", strings.Repeat(" ", 100_000)), nil,
		"front.svg:2: path \"a\": there is too much in the drawing\nhint: at most 200000 lines and curves are drawn, with those that are used again; take out what belongs to no piece"},

	// parts
	{"no such id", svg("SQUARE"), func(a *Ask) { a.Part = "frnt" },
		"front.svg: nothing has the id \"frnt\"\nhint: did you mean \"front\"?"},
	{"no such id at all", svg("SQUARE", `<g id="lace"/>`), func(a *Ask) { a.Part = "sleeve" },
		"front.svg: nothing has the id \"sleeve\"\nhint: known there are \"front\" and \"lace\""},
	{"letters as an outline", svg(`<text id="front">front</text>`), nil,
		"front.svg:2: text \"front\": it has no line in it\nhint: draw the outline of the piece as a path"},
	{"a picture as an outline", svg(`<image id="front" href="front.png" width="10" height="10"/>`), nil,
		"front.svg:2: image \"front\": it has no line in it\nhint: draw the outline of the piece as a path"},
	{"what is never drawn", svg(`<defs>SQUARE</defs>`), nil,
		"front.svg:2: path \"front\": no line of it is drawn\nhint: is it hidden, or kept in defs to be used elsewhere?"},
	{"what is not displayed", svg(`<g style="display:none">SQUARE</g>`), nil,
		"front.svg:2: path \"front\": no line of it is drawn\nhint: is it hidden, or kept in defs to be used elsewhere?"},
	{"what is hidden", svg(`<g visibility="hidden">SQUARE</g>`), nil,
		"front.svg:2: path \"front\": no line of it is drawn\nhint: is it hidden, or kept in defs to be used elsewhere?"},
	{"an open outline", svg(`<path id="front" d="M10 10h100v100h-100v-80"/>`), nil,
		"front.svg:2: path \"front\": the outline is open: its ends are 20 mm apart\nhint: close it in the drawing program, or give each edge a line of its own, with the name of the edge as its id"},
	{"a line as an outline", svg(`<line id="front" x2="10"/>`), nil,
		"front.svg:2: line \"front\": the outline is open: its ends are 10 mm apart\nhint: close it in the drawing program, or give each edge a line of its own, with the name of the edge as its id"},
	{"two outlines", svg(`<g id="front"><circle id="a" r="10"/><circle r="9"/></g>`), nil,
		"there are 2 outlines: circle \"a\" in line 2 and circle in line 2\nhint: name the id of one: part = \"...\""},
	{"an outline in two strokes", svg(`<path id="front" d="M0 0h10v10z m20 20h10v10z"/>`), nil,
		"there are 2 outlines: path \"front\" in line 2 and path \"front\" in line 2\nhint: name the id of one: part = \"...\""},
	{"no corners", svg(`<circle id="front" r="10"/>`), nil,
		"the outline has no corner, but edges has 4 names; an outline needs at least two\nhint: what turns by 20 degrees or more is a corner; name the edges in order, clockwise from the lower left, or give each edge a line of its own in the drawing, with its name as the id"},
	{"too few corners", svg(`<polygon id="front" points="10,10 60,10 10,90"/>`), nil,
		"the outline has 3 corners, but edges has 4 names: clockwise from the lower left, it turns by 148 degrees at (0 mm, 0 mm), by 90 at (0 mm, 80 mm) and by 122 at (50 mm, 80 mm); no edge is left for \"bottom\"\nhint: what turns by 20 degrees or more is a corner; name the edges in order, clockwise from the lower left, or give each edge a line of its own in the drawing, with its name as the id"},
	{"too many corners", svg(`<polygon id="front" points="10,10 60,10 90,40 100,90 10,90"/>`), nil,
		"the outline has 5 corners, but edges has 4 names: clockwise from the lower left, it turns by 90 degrees at (0 mm, 0 mm), by 90 at (0 mm, 80 mm), by 45 at (50 mm, 80 mm), by 34 at (80 mm, 50 mm) and by 101 at (90 mm, 0 mm); no name is left for the edge from (90 mm, 0 mm) to (0 mm, 0 mm)\nhint: with corner = 39 there are as many corners as names; else name the edges in order, clockwise from the lower left"},
	{"a corner too blunt", svg(`<polygon id="front" points="10,10 60,10 70,100 60,190 10,190"/>`), func(a *Ask) { a.Edges = append(a.Edges[:4:4], "tail") },
		"the outline has 4 corners, but edges has 5 names: clockwise from the lower left, it turns by 90 degrees at (0 mm, 0 mm), by 90 at (0 mm, 180 mm), by 84 at (50 mm, 180 mm) and by 84 at (50 mm, 0 mm); no edge is left for \"tail\"\nhint: with corner = 9 there are as many corners as names; else name the edges in order, clockwise from the lower left"},
	{"an edge without a line", svg(`<g id="front"><path id="front.left" d="M0 0v10"/><path id="top" d="M0 0h10"/><path id="r" d="M10 0v10"/></g>`), nil,
		"no line of the drawing has the name \"right\" or \"bottom\"\nhint: the ids of its lines are \"front.left\", \"top\" and \"r\"; a - or _ in an id stands for a space"},
	{"two lines for an edge", svg(`<g id="front"><path id="left" d="M0 0v10"/>`, `<path id="front.left" d="M0 0h10"/></g>`), nil,
		"front.svg:3: path \"front.left\": another line has the name \"left\", in line 2\nhint: give each line an id of its own"},
	{"a line that is not there", svg(`SQUARE`), func(a *Ask) { a.Lines = []string{"placket fold"} },
		"no line of the drawing has the name \"placket fold\"\nhint: the ids of its lines are \"front\"; a - or _ in an id stands for a space"},
}

// bomb uses a line many times over, by uses of uses.
func bomb(deep, wide int) string {
	name := func(i int) string { return string(rune('a' + i)) }
	all := []string{`<defs><path id="a" d="M0 0h1v1z"/>`}
	for i := range deep {
		all = append(all, `<g id="`+name(i+1)+`">`+strings.Repeat(`<use href="#`+name(i)+`"/>`, wide)+`</g>`)
	}
	return svg(append(all, `</defs><use href="#`+name(deep)+`"/>`)...)
}
