package source

import (
	"slices"
	"strings"

	"tuckmark/marking/fault"
)

// Rules of this file: every key that a table of a file may have stands here, once, in the order
// in which messages list them. What a key is given, and what it may stand beside, is known where
// its table is read.

var (
	fileKeys      = []string{"title", "size", "unit", "allowance", "sleepwear", "cloth", "piece", "seam", "trim", "ruffle", "binding", "sewing", "fit", "like", "without", "view"}
	clothKeys     = []string{"width", "see-through"}
	pieceKeys     = []string{"name", "cut", "layers", "fold", "drawn", "drawn-to", "print", "transfer", "grain", "enlarge", "rectangle", "outline", "edge", "tuck", "pleat", "line", "notch", "block", "like", "without"}
	edgeKeys      = []string{"points", "smooth", "centre", "allowance", "hem", "turn", "marked"}
	outlineKeys   = []string{"from", "part", "edges", "corner", "lines"}
	tuckKeys      = []string{"beside", "side", "width", "count", "first", "spacing", "gap", "groups", "between", "betweens", "press", "below", "length", "end", "step", "from", "to", "sewn", "sample"}
	sampleKeys    = []string{"tucks", "flat", "sewn"}
	pleatRowKeys  = []string{"beside", "side", "kind", "depth", "count", "first", "spacing", "gap", "press", "below", "length", "end", "step"}
	edgePleatKeys = []string{"edge", "from", "at", "depth", "toward", "length", "count", "spacing", "run"}
	lineKeys      = []string{"along", "distance", "beside", "at", "side", "points", "smooth", "centre", "from", "to", "length", "kind"}
	notchKeys     = []string{"edge", "from", "at"}
	blockKeys     = []string{"ends", "sides", "measured"}
	seamKeys      = []string{"join", "meet", "ease", "within", "gathered"}
	trimKeys      = []string{"along", "kind", "width", "fullness", "lies", "joins", "join-takes"}
	ruffleKeys    = []string{"along", "fullness", "depth", "hem", "turn", "seam", "joining", "round"}
	bindingKeys   = []string{"along", "width", "fold", "joins", "joining", "square"}
	sewingKeys    = []string{"needle", "thread", "stitch", "tension", "position"}
	fitKeys       = []string{"chest", "waist", "length"}
	viewKeys      = []string{"title", "size", "allowance", "sleepwear", "cloth", "piece", "seam", "trim", "ruffle", "binding", "sewing", "fit", "without"}
)

// anyName stands in the Name of a Table for a name that the maker chooses.
const anyName = "NAME"

// Table is a kind of table that a file may have, and the keys that are known in it.
type Table struct {
	// Name is how it is called, with NAME for what the maker calls a thing:
	// "piece.NAME.tuck.NAME". It is "" for what stands at the top of the file.
	Name string
	Keys []string
}

// Tables are all kinds of tables of a file. Pleats have one name for two kinds, which have
// different keys: those in one edge, and those across a piece.
func Tables() []Table {
	all := slices.Clone(tables)
	for i := range all {
		all[i].Keys = slices.Clone(all[i].Keys)
	}
	return all
}

var tables = []Table{
	{"", fileKeys},
	{"cloth", clothKeys},
	{"piece.NAME", pieceKeys},
	{"piece.NAME.edge.NAME", edgeKeys},
	{"piece.NAME.outline", outlineKeys},
	{"piece.NAME.tuck.NAME", tuckKeys},
	{"piece.NAME.tuck.NAME.sample", sampleKeys},
	{"piece.NAME.pleat.NAME", edgePleatKeys},
	{"piece.NAME.pleat.NAME", pleatRowKeys},
	{"piece.NAME.line.NAME", lineKeys},
	{"piece.NAME.notch.NAME", notchKeys},
	{"piece.NAME.block", blockKeys},
	{"seam.NAME", seamKeys},
	{"trim.NAME", trimKeys},
	{"ruffle.NAME", ruffleKeys},
	{"binding.NAME", bindingKeys},
	{"sewing", sewingKeys},
	{"fit", fitKeys},
	{"view.NAME", viewKeys},
}

// TableNamed returns the Name of the table with this key, which may be in a view:
// "piece.front.tuck.yoke" is a "piece.NAME.tuck.NAME". It is false of a key that is none's.
func TableNamed(key string) (string, bool) {
	parts := fault.Place{Key: key}.Parts()
	if len(parts) == 0 {
		return "", key == ""
	}
	if len(parts) > 2 && parts[0] == "view" {
		parts = parts[2:]
	}
	for _, t := range tables {
		if t.isNamed(parts) {
			return t.Name, true
		}
	}
	return "", false
}

// isNamed reports whether a table of this kind may have these parts in its key.
func (t Table) isNamed(parts []string) bool {
	return slices.EqualFunc(fault.Place{Key: t.Name}.Parts(), parts, func(own, part string) bool {
		return own == anyName || own == part
	})
}

// Kind is the word for a table of this Name, by which help explains it: "tuck" of
// "piece.NAME.tuck.NAME"; "" of the top of the file.
func Kind(table string) string {
	return fault.Place{Key: strings.TrimSuffix(table, "."+anyName)}.Last()
}
