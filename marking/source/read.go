package source

import (
	"fmt"
	"io/fs"
	"maps"
	"math"
	"slices"
	"strconv"
	"strings"

	"tuckmark/marking/drawing"
	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/wording"
)

// Rules of this file: it knows which keys of a file and of its pieces go
// together. Whether a name stands for anything is not looked at here.

// MaxFileSize is how large a file may be, in bytes. It bounds the time and the
// memory of reading one; a thousand edges fit in less than a tenth of it.
const MaxFileSize = 10 << 20

const (
	// maxText is how many letters a name or any other text may have. It
	// bounds what is printed and what a message repeats.
	maxText  = 200
	maxCut   = 99  // the most pieces cut from one outline
	maxFolds = 500 // the most tucks, or pleats, of one set
	// mostOfAKind is the most pieces, seams, or lines or notches of one piece, and mostTold the
	// most of what has a paragraph each on the sheets: edges of one piece, and sets of tucks or of
	// pleats, trims, ruffles, bindings. Each may have to be held against each other.
	mostOfAKind = 1000
	mostTold    = 250
)

// MostOf is how many of a kind, such as "edge" or "seam", a file, or a piece of it, may have.
func MostOf(kind string) int {
	if slices.Contains([]string{"edge", "tuck", "pleat", "trim", "ruffle", "binding"}, kind) {
		return mostTold
	}
	return mostOfAKind
}

// Reader is how files are read.
type Reader struct {
	// Printable reports whether the sheets' font has a character; every text that is
	// printed is held against it.
	Printable func(rune) bool
	// Folder is the folder of the file, with what is below it. Files that the file names are
	// read from there; where it is nil, it may name none.
	Folder fs.FS
	// Opened is told, where it is not nil, of each file that the file names and that is looked
	// for in the folder: what messages call it, and all that was read of it, nil where it
	// cannot be had. It is told so whatever is wrong with the files, of one as often as it is
	// looked for. What it is handed must not be changed.
	Opened func(file string, data []byte)
	// View is the view that Read makes; "" is the file as it stands.
	View string
}

// Read reads a file that names no others, as it stands.
func Read(file string, data []byte, printable func(rune) bool) (*Spec, error) {
	return Reader{Printable: printable}.Read(file, data)
}

// Read turns the bytes of a file into a Spec. file is what messages call it. The error is a
// fault.List in the order of the lines: the slips where the text is not TOML, up to the first of
// which it is not certain what was meant, else all that is wrong with the values, of all views.
func (rd Reader) Read(file string, data []byte) (*Spec, error) {
	all, faults := rd.read(file, data)
	wanted := slices.IndexFunc(all, func(s *Spec) bool { return s.View == rd.View })
	if wanted < 0 && len(all) > 0 {
		faults = append(faults, NoView(file, rd.View, all[0].Views))
	}
	if len(faults) > 0 {
		return nil, faults.Sorted()
	}
	return all[wanted], nil
}

// ReadAll reads a file as Read does: as it stands, and then in each of its views, whichever is
// the Reader's own.
func (rd Reader) ReadAll(file string, data []byte) ([]*Spec, error) {
	all, faults := rd.read(file, data)
	if len(faults) == 0 && len(all) > 1 {
		together := noAmounts(moreInViews)
		for _, spec := range all {
			together.count(spec)
		}
		faults = together.tooMuch("the file and its views have")
	}
	if len(faults) > 0 {
		return nil, faults.Sorted()
	}
	return all, nil
}

// read reads a file as it stands and in all its views; it returns none of them only with
// faults.
func (rd Reader) read(file string, data []byte) ([]*Spec, fault.List) {
	if len(data) > MaxFileSize {
		return nil, fault.List{TooLarge(file, int64(len(data)))}
	}
	r := &fileReader{file: file, folder: rd.Folder, opened: rd.Opened, printable: rd.Printable, bytes: len(data), inherited: new(int), alsoRead: map[string]bool{}, drawings: map[string]*drawing.Drawing{}, drawn: new(drawing.Reader)}
	layers := r.fileLayers(data, "", nil)
	if layers == nil {
		return nil, r.faults
	}
	views := append([]view{{}}, r.views(layers)...)
	var names []string
	for _, v := range views[1:] {
		names = append(names, v.name)
	}
	var all []*Spec
	for _, v := range views {
		one := *r
		one.faults, one.unspaced, one.outlined = nil, nil, nil
		read := (&fileTable{fileReader: &one, written: one.laid(slices.Concat(layers, v.layers))}).pattern()
		r.faults = append(r.faults, one.faults...)
		read.File, read.Views = file, names
		all = append(all, v.chosen(read))
		if r.faults.Full() {
			break
		}
	}
	for _, spec := range all {
		spec.Others = slices.Sorted(maps.Keys(r.alsoRead))
	}
	return all, r.faults
}

// parsed returns the values of a file, and where they stand. The faults have their lines,
// and no file; with one of them the values count for nothing.
func parsed(data []byte) (root *spot, values map[string]any, faults fault.List) {
	// The libraries panic where their halves disagree about a text. No such text is
	// known; it would still be the file's fault, not a reason to stop the program.
	defer func() {
		if broken := recover(); broken != nil {
			faults = fault.List{{Cause: fmt.Sprintf("the file cannot be understood: %v", broken)}}
		}
	}()
	text, f := plainText(data)
	if f == nil && strings.TrimSpace(text) == "" {
		f = &fault.Fault{Cause: "the file is empty", Hint: emptyHint}
	}
	if f != nil {
		return nil, nil, fault.List{f}
	}
	return readOn(text)
}

const emptyHint = "describe each piece under a line such as [piece.front], and each of its edges under [piece.front.edge.neck]"

// TooLarge is the mistake of handing over a file of so many bytes, more than
// MaxFileSize, for whoever sees the size before reading it all.
func TooLarge(file string, bytes int64) *fault.Fault {
	return &fault.Fault{
		Place: fault.Place{File: file},
		Cause: fmt.Sprintf("the file is %s; a pattern is at most %s", megabytes(bytes), megabytes(MaxFileSize)),
		Hint:  "is this the file you meant?",
	}
}

// megabytes gives a size as a person says it, rounded up to a tenth.
func megabytes(bytes int64) string {
	tenths := math.Ceil(float64(bytes) * 10 / (1 << 20))
	return strconv.FormatFloat(tenths/10, 'f', -1, 64) + " MB"
}

func (t *fileTable) pattern() *Spec {
	t.know(fileKeys...)
	unit := choice[length.Unit](t, "unit", unitWords())
	t.unit = unit.V
	spec := &Spec{
		Title:     t.printed("title"),
		Size:      t.printed("size"),
		Unit:      unit,
		Allowance: t.length("allowance", fromZero),
		Sleepwear: t.yes("sleepwear"),
	}
	if cloth := t.table("cloth"); cloth != nil {
		cloth.know(clothKeys...)
		spec.ClothWidth = cloth.length("width", aboveZero)
		spec.SeeThrough = cloth.flag("see-through")
	}
	t.needSome("piece", emptyHint)
	pieces, _ := t.values["piece"].(map[string]any)
	for _, name := range slices.Sorted(maps.Keys(pieces)) {
		if one, isTable := pieces[name].(map[string]any); isTable && (one["edge"] != nil || one["rectangle"] != nil || one["outline"] != nil) {
			t.outlined = append(t.outlined, name)
		}
	}
	spec.Pieces = each(t, "piece", (*fileTable).piece)
	t.garment(spec)
	slices.SortStableFunc(t.unspaced, func(a, b Value[length.Unspaced]) int { return a.Place.Line - b.Place.Line })
	spec.Unspaced = t.unspaced
	return spec
}

// unitWords are the units that a file may be written in, each at its constant.
func unitWords() []string {
	return []string{length.Inch: length.Inch.String(), length.Centimetre: length.Centimetre.String(), length.Millimetre: length.Millimetre.String()}
}

// ReadUnit takes up the word for a unit, as a file has it or spelled out. The error is a
// *fault.Fault without a place.
func ReadUnit(said string) (length.Unit, error) {
	if u, known := length.UnitSpelled(said); known {
		return u, nil
	}
	return chosen[length.Unit](said, unitWords())
}

func (t *fileTable) piece() PieceSpec {
	t.know(pieceKeys...)
	p := PieceSpec{
		Key:    t.name,
		Place:  t.place,
		Name:   t.printed("name"),
		Cut:    t.count("cut", maxCut),
		Layers: t.count("layers", maxCut),
		Fold:   t.reference("fold"),
		Drawn:  choice[Drawn](t, "drawn", drawnWords[:]),
		Print:  choice[Print](t, "print", printWords[:]),
	}
	if p.Print.V == PrintHalf || p.Print.V == PrintWhole {
		t.refuseWithout("print", "fold", "print says whether half of a piece that lies on the fold is drawn, or the whole of it")
	}
	p.DrawnTo, p.Transfer = choice[DrawnTo](t, "drawn-to", drawnToWords[:]), t.transfers()
	p.GrainAlong, p.GrainPoints = t.grain()
	drawn := t.outline()
	p.FromDrawing = drawn != nil
	p.Edges = t.edges(drawn)
	p.Enlarge = t.factor("enlarge", enlargements)
	p.Tucks = each(t, "tuck", (*fileTable).tuck)
	for _, k := range t.named("pleat") {
		switch {
		case k.has("beside") && k.has("edge"):
			k.report(k.at("beside"), `cannot stand beside "edge"`,
				"a pleat lies in one edge (edge, from, at, toward), or across the whole piece (beside, first, press): choose one")
		case k.has("beside"):
			p.PleatRows = append(p.PleatRows, k.pleatRow())
		default:
			p.EdgePleats = append(p.EdgePleats, k.edgePleat())
		}
	}
	p.Lines = t.lines(drawn)
	p.Notches = each(t, "notch", (*fileTable).notch)
	if b := t.table("block"); b != nil {
		p.Block = b.block()
	}
	t.note(t.at("enlarge"), p.refuseEnlarged())
	return p
}

func (t *fileTable) block() *BlockSpec {
	t.know(blockKeys...)
	return &BlockSpec{
		Place:    t.place,
		Ends:     t.length("ends", fromZero),
		Sides:    t.length("sides", fromZero),
		Measured: t.length("measured", aboveZero),
	}
}

// grain reads the grain line: along an edge or a line, or from point to point.
func (t *fileTable) grain() (Text, Points) {
	switch v := t.values["grain"].(type) {
	case nil:
		return Text{}, Points{}
	case string:
		return t.reference("grain"), Points{}
	case []any:
		p := t.points("grain")
		if len(v) > 2 {
			t.report(p.Place, notTwoPoints(len(v)), "a grain line is straight: give its two ends")
		}
		return Text{}, p
	default:
		t.report(t.at("grain"), "must be a name or two points, but is "+asGiven(v),
			`write grain = "centre front", or grain = [[0, 0], [0, 5]]`)
		return GivenAt("", t.at("grain")), Points{}
	}
}

func notTwoPoints(n int) string {
	return fmt.Sprintf("has %s, and needs two", wording.Counted(n, "point"))
}

func (t *fileTable) notch() NotchSpec {
	t.know(notchKeys...)
	t.need("edge", `it names the edge that is notched: edge = "armhole"`)
	t.need("from", `it names the edge at whose corner measuring starts: from = "shoulder"`)
	t.need("at", "it is measured along the edge to the notch: at = 3")
	return NotchSpec{
		Key:   t.name,
		Place: t.place,
		Edge:  t.reference("edge"),
		From:  t.reference("from"),
		At:    t.length("at", fromZero),
	}
}
