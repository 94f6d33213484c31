package source

import (
	"fmt"
	"reflect"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/fault"
	"tuckmark/marking/sketch"
)

// front is a piece that others are like.
const front = `
[piece.front]
name = "Front"
cut = 2
[piece.front.edge.hem]
points = [[0, 0], [8, 0]]
hem = 2
turn = "1/4"
[piece.front.edge."centre front"]
points = [[0, 0], [0, 12]]
[piece.front.edge.neck]
points = [[0, 12], [8, 0]]
smooth = true
[piece.front.tuck.yoke]
beside = "centre front"
width = "1/8"
count = 6
first = "3/8"
gap = "1/16"
`

// besideHem is a line of it.
const besideHem = "[piece.front.line.l]\nbeside = \"hem\"\nat = 1\nside = \"neck\"\nfrom = \"neck\"\nlength = 2\n"

// sewn is what one file and another with layers come to, places left out.
func sewn(t *testing.T, rd Reader, text string) *Spec {
	t.Helper()
	rd.Printable = func(rune) bool { return true }
	spec, err := rd.Read("pinafore.toml", []byte(text))
	require.NoError(t, err, "%s", text)
	spec.Views, spec.View, spec.Others = nil, "", nil
	nowhere(reflect.ValueOf(spec).Elem())
	return spec
}

// nowhere takes every place, and every line, out of a value, and what was laid over another.
func nowhere(v reflect.Value) {
	switch v.Kind() {
	case reflect.Struct:
		if v.Type() == reflect.TypeFor[fault.Place]() {
			v.SetZero()
			return
		}
		if v.Type() == reflect.TypeFor[Points]() {
			p := v.Addr().Interface().(*Points)
			p.lines = nil
		}
		if v.Type() == reflect.TypeFor[EdgeSpec]() {
			v.FieldByName("Redrawn").SetBool(false)
		}
		for i := range v.NumField() {
			if v.Field(i).CanSet() {
				nowhere(v.Field(i))
			}
		}
	case reflect.Slice, reflect.Array:
		for i := range v.Len() {
			nowhere(v.Index(i))
		}
	case reflect.Pointer:
		if !v.IsNil() {
			nowhere(v.Elem())
		}
	}
}

// What is taken from elsewhere is as if it had been written out.
func TestSaidOnce(t *testing.T) {
	asBack := strings.NewReplacer("piece.front", "piece.back", "name = \"Front\"\n", "").Replace(front)
	for _, c := range []struct{ name, text, view, whole string }{
		{"a piece like another", front + "[piece.back]\nlike = \"front\"", "", front + asBack},
		{"it has no name of it", front + "[piece.back]\nlike = \"front\"\nname = \"Back\"", "",
			front + strings.Replace(asBack, "[piece.back]\n", "[piece.back]\nname = \"Back\"\n", 1)},
		{"and values of its own", front + "[piece.back]\nlike = \"front\"\ncut = 1\n[piece.back.tuck.yoke]\ncount = 3", "",
			front + strings.NewReplacer("cut = 2", "cut = 1", "count = 6", "count = 3").Replace(asBack)},
		{"a spacing in place of a gap", front + "[piece.back]\nlike = \"front\"\n[piece.back.tuck.yoke]\nspacing = 1", "",
			front + strings.Replace(asBack, `gap = "1/16"`, "spacing = 1", 1)},
		{"an allowance in place of a hem", front + "[piece.back]\nlike = \"front\"\n[piece.back.edge.hem]\nallowance = 1", "",
			front + strings.Replace(asBack, "hem = 2\nturn = \"1/4\"", "allowance = 1", 1)},
		{"from line to line in place of below an edge", front + "[piece.back]\nlike = \"front\"\n[piece.back.tuck.yoke]\nfrom = \"neck\"\nto = \"hem\"\n[view.v.piece.back.tuck.yoke]\nbelow = \"neck\"\nlength = 2", "v",
			"title = \"v\"\n" + front + strings.Replace(asBack, "gap = \"1/16\"", "gap = \"1/16\"\nbelow = \"neck\"\nlength = 2", 1)},
		{"new points in place of an arc", "[piece.p.edge.a]\npoints = [[0, 5], [5, 0]]\ncentre = [0, 0]\n[view.v.piece.p.edge.a]\npoints = [[0, 4], [5, 0]]", "v",
			"title = \"v\"\n[piece.p.edge.a]\npoints = [[0, 4], [5, 0]]"},
		{"an edge called outline beside one called rectangle", "[piece.p.edge.rectangle]\npoints = [[0, 5], [5, 0]]\n[view.v.piece.p.edge.outline]\npoints = [[5, 0], [0, 5]]", "v",
			"title = \"v\"\n[piece.p.edge.rectangle]\npoints = [[0, 5], [5, 0]]\n[piece.p.edge.outline]\npoints = [[5, 0], [0, 5]]"},
		{"a line beside an edge in place of an arc", front + "[piece.front.line.l]\npoints = [[0, 5], [5, 0]]\ncentre = [0, 0]\n[view.v.piece.front.line.l]\nbeside = \"hem\"\nat = 1", "v",
			"title = \"v\"\n" + front + "[piece.front.line.l]\nbeside = \"hem\"\nat = 1"},
		{"a line through points in place of one beside an edge", front + besideHem + "[view.v.piece.front.line.l]\npoints = [[0, 5], [5, 0]]", "v",
			"title = \"v\"\n" + front + "[piece.front.line.l]\npoints = [[0, 5], [5, 0]]\nfrom = \"neck\""},
		{"a line along an edge in place of one beside it", front + besideHem + "[view.v.piece.front.line.l]\nalong = \"neck\"\ndistance = 1", "v",
			"title = \"v\"\n" + front + "[piece.front.line.l]\nalong = \"neck\"\ndistance = 1"},
		{"a seam that is gathered in place of one that matches", front + "[seam.s]\njoin = [\"front.neck\", \"front.hem\"]\nwithin = 3\n[view.v.seam.s]\ngathered = true", "v",
			"title = \"v\"\n" + front + "[seam.s]\njoin = [\"front.neck\", \"front.hem\"]\ngathered = true"},
		{"without its tucks", front + "[piece.back]\nlike = \"front\"\nwithout = [\"tuck.yoke\"]", "",
			front + asBack[:strings.Index(asBack, "[piece.back.tuck")]},
		{"without a curve", front + "[piece.back]\nlike = \"front\"\nwithout = [\"edge.neck.smooth\"]", "",
			front + strings.Replace(asBack, "smooth = true\n", "", 1)},
		{"a name with a point", front + "[piece.back]\nlike = \"front\"\nwithout = [\"edge.c.f\"]\n[piece.front.edge.\"c.f\"]\npoints = [[0,0],[1,1]]", "",
			front + "[piece.front.edge.\"c.f\"]\npoints = [[0,0],[1,1]]\n" + asBack},
		{"one like one that is like another", "[piece.side]\nlike = \"back\"\n[piece.back]\nlike = \"front\"\ncut = 4\n" + front, "",
			strings.NewReplacer("piece.back", "piece.side", "cut = 2", "cut = 4").Replace(asBack) + strings.Replace(asBack, "cut = 2", "cut = 4", 1) + front},
		{"a view that is not chosen", front + "[view.deep.piece.front.tuck.yoke]\ncount = 9", "", front},
		{"a view", "title = \"Sunday\"\n" + front + "[view.deep.piece.front.tuck.yoke]\ncount = 9", "deep",
			"title = \"Sunday, deep\"\n" + strings.Replace(front, "count = 6", "count = 9", 1)},
		{"a view with a title of its own", "title = \"Sunday\"\n" + front + "[view.deep]\ntitle = \"Deep tucks\"", "deep",
			"title = \"Deep tucks\"\n" + front},
		{"a view without a part of the file", "title = \"Sunday\"\n" + front + "[piece.back]\nlike=\"front\"\n[view.deep]\nwithout = [\"piece.back\", \"title\"]", "deep",
			"title = \"deep\"\n" + front},
		{"a view changes what others take", front + "[piece.back]\nlike = \"front\"\n[view.deep.piece.front]\nwithout = [\"tuck.yoke\"]\n[view.deep]\ntitle = \"a\"", "deep",
			"title = \"a\"\n" + front[:strings.Index(front, "[piece.front.tuck")] + asBack[:strings.Index(asBack, "[piece.back.tuck")]},
		{"a view takes out what a piece takes", front + "[piece.back]\nlike = \"front\"\n[view.deep]\ntitle = \"a\"\n[view.deep.piece.back]\nwithout = [\"tuck.yoke\"]", "deep",
			"title = \"a\"\n" + front + asBack[:strings.Index(asBack, "[piece.back.tuck")]},
		{"a view says what a piece is like", front + "[piece.back]\nlike = \"front\"\n[view.deep]\ntitle = \"a\"\n[view.deep.piece.side]\nlike = \"back\"", "deep",
			"title = \"a\"\n" + front + asBack + strings.ReplaceAll(asBack, "piece.back", "piece.side")},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, sewn(t, Reader{}, c.whole), sewn(t, Reader{View: c.view}, c.text))
		})
	}
}

func TestViewsAreNamed(t *testing.T) {
	spec, err := Reader{View: "square", Printable: func(rune) bool { return true }}.Read("f.toml", []byte(front+"[view.round]\n[view.square]\n"))
	require.NoError(t, err)
	assert.Equal(t, []string{"round", "square"}, spec.Views)
	assert.Equal(t, "square", spec.View)
}

// All views that are read together are as each is by itself.
func TestAllViewsAreRead(t *testing.T) {
	rd := Reader{Printable: func(rune) bool { return true }}
	text := []byte("title = \"Sunday\"\n" + front + "[view.deep.piece.front.tuck.yoke]\ncount = 9\n[view.plain.piece.front]\nwithout = [\"tuck.yoke\"]\n")
	all, err := rd.ReadAll("f.toml", text)
	require.NoError(t, err)
	require.Len(t, all, 3)
	for i, view := range []string{"", "deep", "plain"} {
		rd.View = view
		one, err := rd.Read("f.toml", text)
		require.NoError(t, err)
		assert.Equal(t, one, all[i], "the view %q", view)
	}
	assert.Equal(t, []int{6, 9}, []int{all[0].Pieces[0].Tucks[0].Count.V, all[1].Pieces[0].Tucks[0].Count.V})
	assert.Empty(t, all[2].Pieces[0].Tucks)
	_, err = rd.ReadAll("f.toml", []byte(front+"[view.deep]\ncolour = 1"))
	assert.ErrorContains(t, err, "f.toml:21: view.deep.colour: this key is not known")
}

func TestAFileLikeAnother(t *testing.T) {
	folder := fstest.MapFS{
		"dress.toml":       {Data: []byte("title = \"Dress\"\nunit = \"in\"\n" + front)},
		"sizes/two.toml":   {Data: []byte("like = \"base.toml\"\nsize = \"2\"")},
		"sizes/base.toml":  {Data: []byte("title = \"Base\"\n" + front)},
		"round/dress.toml": {Data: []byte(front + "[view.round.piece.front]\ncut = 3")},
	}
	for _, c := range []struct{ name, text, view, whole string }{
		{"nothing of its own", `like = "dress.toml"`, "", "title = \"Dress\"\nunit = \"in\"\n" + front},
		{"what it says itself", "like = \"dress.toml\"\nsize = \"4\"\n[piece.front.edge.hem]\nhem = 3", "",
			"title = \"Dress\"\nsize = \"4\"\nunit = \"in\"\n" + strings.Replace(front, "hem = 2", "hem = 3", 1)},
		{"without a part", "like = \"dress.toml\"\nwithout = [\"title\"]\n[piece.front]\nwithout = [\"tuck.yoke\"]", "",
			"unit = \"in\"\n" + front[:strings.Index(front, "[piece.front.tuck")]},
		{"from below, like one beside it", `like = "sizes/two.toml"`, "", "title = \"Base\"\nsize = \"2\"\n" + front},
		{"a view of both", "like = \"round/dress.toml\"\n[view.round.piece.front]\nname = \"F\"", "round",
			"title = \"round\"\n" + strings.NewReplacer("cut = 2", "cut = 3", `"Front"`, `"F"`).Replace(front)},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, sewn(t, Reader{}, c.whole), sewn(t, Reader{Folder: folder, View: c.view}, c.text))
		})
	}
}

// Every mistake is told once, in the file and on the line where it stands.
func TestLayersSayWhatIsWrong(t *testing.T) {
	folder := fstest.MapFS{
		"dress.toml":  {Data: []byte("unit = \"in\"\n" + front)},
		"bad.toml":    {Data: []byte("titel = \"Bad\"\n" + strings.Replace(front, "count = 6", "count = 0", 1))},
		"broken.toml": {Data: []byte("title = \"Broken\n")},
		"a.toml":      {Data: []byte(`like = "b.toml"`)},
		"b.toml":      {Data: []byte(`like = "a.toml"`)},
		"sub/up.toml": {Data: []byte(`like = "../../x.toml"`)},
		"full.toml":   {Data: []byte("title = \"Full\"\n#" + strings.Repeat("-", 10<<20-30))},
		"large.toml":  {Data: []byte(strings.Repeat("#", 10<<20+1))},
	}
	deep := "f.toml:25: piece.back.like: "
	back := front + "\n[piece.back]\n\n\n\nlike = "
	for _, c := range []struct{ name, text, view, want string }{
		{"no such piece", back + `"frnt"`, "", deep + "there is no piece \"frnt\"\nhint: did you mean \"front\"?"},
		{"nothing near", back + `"collar"`, "", deep + "there is no piece \"collar\"\nhint: there is \"front\""},
		{"itself", back + `"back"`, "", deep + "the piece is like itself\nhint: name the piece that it takes from"},
		{"no text", back + `3`, "", deep + "must be the name of a piece in quotes, but is 3\nhint: write like = \"front\""},
		{"in a ring", front + "[piece.a]\nlike = \"b\"\n[piece.b]\nlike = \"a\"", "",
			"f.toml:23: piece.b.like: the piece is like \"a\", and that is like this one\nhint: give one of them all that it has"},
		{"a mistake is told of one", strings.Replace(front, "count = 6", "count = 0", 1) + "[piece.back]\nlike = \"front\"", "",
			"f.toml:17: piece.front.tuck.yoke.count: must be from 1 to 500, but is 0"},
		{"nothing to leave out", front + "[piece.back]\nlike = \"front\"\nwithout = [\"tuck.yolk\",\n\"tuck.x\"]", "",
			"f.toml:22: piece.back.without: there is no \"tuck.yolk\" to leave out\nhint: did you mean \"tuck.yoke\"?\n" +
				"f.toml:23: piece.back.without: there is no \"tuck.x\" to leave out\nhint: name the kind too, such as \"tuck.yoke\""},
		{"without anything it is like", "without = [\"piece.back\"]" + front, "",
			"f.toml:1: without: there is no \"piece.back\" to leave out\nhint: name the kind too, such as \"tuck.yoke\""},
		{"no list", front + "[piece.back]\nlike = \"front\"\nwithout = \"tuck.yoke\"", "",
			"f.toml:22: piece.back.without: must be a list of names, but is \"tuck.yoke\"\nhint: write what is left out, with its kind: without = [\"tuck.yoke\"]"},
		{"no names", front + "[piece.back]\nlike = \"front\"\nwithout = [3]", "",
			"f.toml:22: piece.back.without: must be names in quotes, but has 3\nhint: write what is left out, with its kind: without = [\"tuck.yoke\"]"},
		{"many names", front + "[piece.back]\nlike = \"front\"\nwithout = [" + strings.Repeat("\"cut\",", 101) + "]", "",
			"f.toml:22: piece.back.without: there are 101 names here; at most 100 are left out\nhint: name the tables that they stand in"},
		{"a name too long", front + "[piece.back]\nlike = \"front\"\nwithout = [\"" + strings.Repeat("a.", 101) + "\"]", "",
			"f.toml:22: piece.back.without: the text has 202 letters\nhint: a text has at most 200 letters"},
		{"a view that is not chosen", front + "[view.deep]\ncolour = 1\n[view.deep.piece.front.tuck.yoke]\ncuont = 9", "",
			"f.toml:21: view.deep.colour: this key is not known\nhint: known here are title, size, allowance, sleepwear, cloth, piece, seam, trim, ruffle, binding, sewing, fit, without; `tuckmark help view` explains them\n" +
				"f.toml:23: piece.front.tuck.yoke.cuont: this key is not known\nhint: did you mean \"count\"?"},
		{"a view that is no table", front + "[view]\ndeep = 1", "",
			"f.toml:21: view.deep: must be a table, but is 1\nhint: write [view.NAME] on a line of its own, with a name for each"},
		{"a view that is not there", front + "[view.round]\n[view.square]", "rond", "f.toml: there is no view \"rond\"\nhint: did you mean \"round\"?"},
		{"nor any near", front + "[view.round]\n[view.square]", "boat", "f.toml: there is no view \"boat\"\nhint: the views are round, square"},
		{"nor any", front, "round", "f.toml: there is no view \"round\"\nhint: it has none; one is made by a line such as [view.round] and what differs below it"},
		{"a slip in like", "[piece.back]\nlik = \"front\"" + front, "", "f.toml:2: piece.back.lik: this key is not known\nhint: did you mean \"like\"?"},
		{"no such file", `like = "dres.toml"`, "", "f.toml:1: like: there is no file \"dres.toml\"\nhint: did you mean \"dress.toml\"?"},
		{"a folder", `like = "sub"`, "", "f.toml:1: like: the file \"sub\" cannot be read\nhint: it stands in the folder of this file, or in one below that"},
		{"outside", `like = "../dress.toml"`, "", "f.toml:1: like: \"../dress.toml\" does not lie in the folder of this file\nhint: it stands in the folder of this file, or in one below that"},
		{"outside, from below", `like = "sub/up.toml"`, "", "sub/up.toml:1: like: \"../x.toml\" does not lie in the folder of this file\nhint: it stands in the folder of this file, or in one below that"},
		{"from the root", `like = "/etc/passwd"`, "", "f.toml:1: like: \"/etc/passwd\" does not lie in the folder of this file\nhint: it stands in the folder of this file, or in one below that"},
		{"a drive", `like = 'c:\dress.toml'`, "", "f.toml:1: like: \"c:\\\\dress.toml\" is no name of a file here\nhint: write it without a drive, folders with / between: \"dresses/front.toml\""},
		{"like itself", `like = "f.toml"`, "", "f.toml:1: like: the file is like itself\nhint: name the file that it takes from"},
		{"files in a ring", `like = "a.toml"`, "", "a.toml:1: like: more than 10 files are like each other in a row\nhint: are two of them like each other?"},
		{"too large", `like = "large.toml"`, "", "f.toml:1: like: the file \"large.toml\" is more than 10 MB\nhint: is this the file you meant?"},
		{"too large together", "like = \"full.toml\"\n", "", "f.toml:1: like: files that are like each other have more than 10 MB together\nhint: is this the file you meant?"},
		{"no name", `like = 5`, "", "f.toml:1: like: must be the name of a file in quotes, but is 5\nhint: write like = \"dress.toml\""},
		{"another unit", "like = \"dress.toml\"\nunit = \"cm\"", "",
			"f.toml:2: unit: the file is in \"cm\", and the one that it is like in \"in\"\nhint: leave the unit out here, and write another one behind a number: \"2 cm\""},
		{"no TOML", `like = "broken.toml"`, "", "broken.toml:1: a quotation mark is opened on this line and not closed\nhint: put \" at both ends of a text"},
		{"mistakes in both", "like = \"bad.toml\"\nsiez = 4", "",
			"bad.toml:1: titel: this key is not known\nhint: did you mean \"title\"?\n" +
				"bad.toml:18: piece.front.tuck.yoke.count: must be from 1 to 500, but is 0\n" +
				"f.toml:2: siez: this key is not known\nhint: did you mean \"size\"?"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := Reader{Printable: func(rune) bool { return true }, Folder: folder, View: c.view}.Read("f.toml", []byte(c.text))
			assert.EqualError(t, err, c.want)
		})
	}
}

func TestAFileWithoutAFolderIsLikeNone(t *testing.T) {
	_, err := Read("f.toml", []byte(`like = "dress.toml"`), func(rune) bool { return true })
	assert.EqualError(t, err, "f.toml:1: like: there is no folder to read \"dress.toml\" from\nhint: it stands in the folder of this file, or in one below that")
}

// What pieces take from each other is bounded, however little the file holds.
func TestPiecesTakeSoMuch(t *testing.T) {
	var b strings.Builder
	b.WriteString("[piece.p.edge.a]\npoints = [" + strings.Repeat("[0,0],", 1000) + "]\n")
	for i := range 999 {
		fmt.Fprintf(&b, "[piece.p%d]\nlike = \"p\"\n", i)
	}
	_, err := Read("f.toml", []byte(b.String()), func(rune) bool { return true })
	require.Error(t, err)
	assert.Contains(t, err.Error(), "pieces take more than 2,000,000 values from those that they are like\nhint: divide the file")
	views := ""
	for i := range 21 {
		views += fmt.Sprintf("[view.v%d]\n", i)
	}
	_, err = Read("f.toml", []byte(front+views), func(rune) bool { return true })
	assert.EqualError(t, err, "f.toml: view: there are 21 views; at most 20 are made\nhint: divide the file")
}

// What views have of their file is bounded, and so is how many pieces are laid over each other.
func TestViewsHaveSoMuch(t *testing.T) {
	read := func(text string) error {
		_, err := Read("f.toml", []byte(text), func(rune) bool { return true })
		return err
	}
	points := "[piece.p.edge.a]\npoints = [" + strings.Repeat("[0,0],", 50_000) + "]\n"
	views := ""
	for i := range 20 {
		views += fmt.Sprintf("[view.v%d]\n", i)
	}
	// Each point has three values. The tables and keys are the file, piece, p, edge, a, points,
	// view, and each view: 150_027 in the file and in each of 20 views.
	assert.EqualError(t, read(points+views), "f.toml: view: the file and its views have 3,150,567 values in all; at most 1,200,000 are read\nhint: a traced edge needs a point every 2 mm, or 1/16 in, where it bends, and no more; or divide the views among two files")
	var pieces strings.Builder
	for i := range 1001 {
		fmt.Fprintf(&pieces, "[piece.p%d]\nlike = \"none\"\n", i)
	}
	assert.EqualError(t, read(pieces.String()), "f.toml:1: piece: there are 1001 here; at most 1000 are drawn\nhint: divide the file")
}

// An outline of a drawing stands in the place of a rectangle, and the other way round.
func TestAnOutlineInPlaceOfARectangle(t *testing.T) {
	rd := Reader{View: "v", Printable: sketch.HasLetter, Folder: folderOf("bib.svg", bib)}
	const rectangle = "[piece.bib]\nrectangle = [8, 10]\n"
	for _, c := range []struct {
		name, text string
		drawn      bool
	}{
		{"an outline over a rectangle", rectangle + "[view.v." + onBib[1:], true},
		{"a rectangle over an outline", onBib + "[view.v.piece.bib]\nrectangle = [8, 10]\n", false},
	} {
		t.Run(c.name, func(t *testing.T) {
			spec, err := rd.Read("f.toml", []byte(c.text))
			require.NoError(t, err, c.text)
			assert.Equal(t, c.drawn, spec.Pieces[0].FromDrawing)
		})
	}
}
