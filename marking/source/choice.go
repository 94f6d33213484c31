package source

// Rules of this file: where a file has the choice of a few words, there is a type for
// the choice, a constant for each word, and one table with the words. The first
// constant is what counts where the file does not say; where it has no word, that
// cannot be written.

// Drawn is how the outline of a piece is drawn.
type Drawn int

// DrawnFlat has room for what the folds take up; DrawnFinished has none yet.
const (
	DrawnFlat Drawn = iota
	DrawnFinished
)

var drawnWords = [...]string{DrawnFlat: "flat", DrawnFinished: "finished"}

// DrawnTo is which line of a piece its outline is drawn to.
type DrawnTo int

// The lines: allowances and hems lie inside the outline, or are added outside it.
const (
	DrawnToCutting DrawnTo = iota
	DrawnToStitching
)

var drawnToWords = [...]string{DrawnToCutting: "cutting", DrawnToStitching: "stitching"}

// Print is how much of a piece is printed.
type Print int

// Of a piece on the fold half is printed unless the whole is asked for; others are
// printed as they are drawn, or turned over as well. PrintAsDrawn cannot be written.
const (
	PrintAsDrawn Print = iota
	PrintHalf
	PrintWhole
	PrintLeftAndRight
)

var printWords = [...]string{PrintHalf: "half", PrintWhole: "whole", PrintLeftAndRight: "left and right"}

// Press is to which side of its stitching, or of where it is folded, a tuck or a pleat
// is laid.
type Press int

// The sides, seen from the line that the folds run beside.
const (
	Unpressed Press = iota // the file does not say
	PressedAway
	PressedToward
)

var pressWords = [...]string{PressedAway: "away", PressedToward: "toward"}

// EndShape is the shape of the line at which folds end.
type EndShape int

// The shapes: all at one level, all equally long from the stitch line, or each longer
// by a step than the one before.
const (
	EndLevel EndShape = iota
	EndFollow
	EndStepped
)

var endWords = [...]string{EndLevel: "level", EndFollow: "follow", EndStepped: "stepped"}

// Stitching is how a tuck is sewn.
type Stitching int

// TwinNeedle has one line of stitching, on the fold; EdgeStitched one on either side of
// it, which are sewn together, and so has a tuck of which nothing is said.
const (
	TwinNeedle Stitching = iota + 1
	EdgeStitched
)

var stitchingWords = [...]string{TwinNeedle: "twin needle", EdgeStitched: "edge"}

// PleatKind is how the folds of a pleat across a piece are laid.
type PleatKind int

// The kinds.
const (
	KnifePleat    PleatKind = iota // one fold
	BoxPleat                       // two, turned from each other
	InvertedPleat                  // two, turned toward each other
)

var pleatWords = [...]string{KnifePleat: "knife", BoxPleat: "box", InvertedPleat: "inverted"}

// String gives the word that a file writes.
func (k PleatKind) String() string { return pleatWords[k] }

// Run is which way the lines of a pleat in an edge run.
type Run int

// The ways: square to the edge, or along the grain.
const (
	RunSquare Run = iota
	RunGrain
)

var runWords = [...]string{RunSquare: "square", RunGrain: "grain"}

// LineKind is what a line is for that a file draws by itself.
type LineKind int

// The kinds.
const (
	FoldLine LineKind = iota
	CentreLine
	PlacementLine
	StitchLine
)

var lineWords = [...]string{FoldLine: "fold", CentreLine: "centre", PlacementLine: "placement", StitchLine: "stitch"}

// TrimKind is what is sewn on along a line.
type TrimKind int

// The kinds.
const (
	Lace TrimKind = iota
	Ribbon
	Cord
	Braid
)

var trimWords = [...]string{Lace: "lace", Ribbon: "ribbon", Cord: "cord", Braid: "braid"}

// String gives the word that a file writes.
func (k TrimKind) String() string { return trimWords[k] }

// Lies is on which side of its line a trim lies.
type Lies int

// The sides: beyond the line, as lace at a neck does, or on the piece.
const (
	LiesBeyond Lies = iota
	LiesOn
)

var liesWords = [...]string{LiesBeyond: "beyond", LiesOn: "on"}

// String gives the word that a file writes.
func (l Lies) String() string { return liesWords[l] }

// BindingFold is in how many layers a binding shows on either side.
type BindingFold int

// The ways.
const (
	SingleFold BindingFold = iota
	DoubleFold
)

var bindingWords = [...]string{SingleFold: "single", DoubleFold: "double"}

// String gives the word that a file writes.
func (f BindingFold) String() string { return bindingWords[f] }
