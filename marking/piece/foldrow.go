package piece

import (
	"fmt"
	"math"
	"slices"

	"tuckmark/marking/fault"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/source"
	"tuckmark/marking/wording"
)

// Rules of this file. Tucks and pleats are one thing: a row of folds along one
// straight line. A fold takes up a strip of the flat cloth, two widths wide, that
// comes to lie as a flap one width wide beside the line its two sides meet on:
// the stitching of a tuck, or where the fold of a pleat lies. Distances are
// measured from the base, on the side of it on which the row lies.

// FoldKind is what a fold makes.
type FoldKind int

const (
	TuckFolds  FoldKind = iota // a tuck: its sides are stitched together
	PleatFolds                 // a pleat: one of its sides is laid on the other
)

// String names one of the kind.
func (k FoldKind) String() string { return [...]string{"tuck", "pleat"}[k] }

// FoldRow is folds made alike beside one line. What it is made of is known as soon as
// the file is read; Stitching, End and Flat of its folds when it is folded.
type FoldRow struct {
	Makes    FoldKind
	Key      string
	Count    int // of tucks or pleats; a box pleat has two folds
	PerGroup int // of tucks in each group; 0 where they are in none
	Base     BaseLine
	Folds    []Fold // from the base outward
	Pressed  bool   // the file says which way the flaps lie
	Mirrored bool   // on the other half of a piece on the fold there is as much again
	// FlatEnds are the lines along which the row ends on the flat cloth, where it ends first;
	// none from edge to edge.
	FlatEnds []plane.Path
	Place    fault.Place

	nth      int // among the rows of the piece: its tucks, then the pleats across it
	ends     source.EndSpec
	keyWhole bool // its key is not shortened where it is named
	halved   bool // of the first pleat, one fold lies on the other half
	// moved is, of a row that is drawn finished, the step from there to its place on the
	// flat cloth.
	moved plane.Point
}

// Fold is one fold of a row.
type Fold struct {
	Number int     // of the tuck or pleat it belongs to, from 0
	Near   float64 // where its strip begins, flat
	Width  float64 // of the flap
	Toward bool    // the flap lies toward the base
	At     float64 // the fold line, flat
	// Stitching is where the two sides of the strip meet, finished: the stitching of a
	// tuck, the placement line of a pleat.
	Stitching float64
	End       FoldEnd    // where it ends that does not run from edge to edge
	Lines     []FoldLine // its crease first
	endLine   Stretch    // over which the end line crosses the strip, as distances from the base, flat
}

// FoldLine is a line that is drawn for a fold.
type FoldLine struct {
	Role mark.Role
	U    float64 // from the base, flat
	// Flat is the line on the flat cloth; in parts where the edge of the piece comes in
	// between. A piece that is cut from a tucked block never lies flat, and has none.
	Flat []plane.Path
}

// crease is the line that a fold is folded at.
func (f Fold) crease() FoldLine { return f.Lines[0] }

// Far is where the strip ends, flat.
func (f Fold) Far() float64 { return f.Near + 2*f.Width }

// Placement is where the fold line of a pleat is laid to, flat: the other side of
// the strip.
func (f Fold) Placement() float64 { return f.Near + f.Far() - f.At }

// nameElsewhere names one fold of a row in a message about another row: "tuck 3 of
// "yoke"".
func (r FoldRow) nameElsewhere(f Fold) string {
	if r.Count == 1 {
		return fmt.Sprintf("the %s %q", r.Makes, r.Key)
	}
	return fmt.Sprintf("%s %d of %q", r.Makes, f.Number+1, r.Key)
}

// stitchingName is what a maker calls the line that the flap of a fold lies beside.
func (r FoldRow) stitchingName() string {
	if r.Makes == PleatFolds {
		return "placement line"
	}
	return "stitching"
}

// snapped returns how far a strip lies from the base, which one that begins on it
// does exactly: sums of lengths are off by rounding.
func snapped(near float64) float64 {
	if math.Abs(near) < SamePoint {
		return 0
	}
	return near
}

// About reports whether the strip lies on both sides of the base.
func (f Fold) About() bool { return f.Near < 0 }

// reach is how far from the base the flap lies, finished.
func (f Fold) reach() Stretch {
	if f.Toward {
		return Stretch{f.Stitching - f.Width, f.Stitching}
	}
	return Stretch{f.Stitching, f.Stitching + f.Width}
}

// takeUp is the cloth that the whole row takes, in mm. Of a fold about the base,
// half belongs to the row.
func (r FoldRow) takeUp() float64 {
	sum := 0.0
	for _, f := range r.Folds {
		sum += f.Far() - max(0, f.Near)
	}
	return sum
}

// changed returns the row with a change made to each of its folds, by its number.
func (r FoldRow) changed(change func(k int, f *Fold)) FoldRow {
	r.Folds = slices.Clone(r.Folds)
	for k := range r.Folds {
		change(k, &r.Folds[k])
	}
	return r
}

// byItself returns the row with its stitching where it lies when the row is finished
// and nothing else lies between it and the base.
func (r FoldRow) byItself() FoldRow {
	taken := 0.0
	return r.changed(func(_ int, f *Fold) {
		if f.About() {
			f.Stitching = 0
			taken += f.Width
			return
		}
		f.Stitching = f.Near - taken
		taken += 2 * f.Width
	})
}

// stitchedAs returns the row with the stitching that another value of it has.
func (r FoldRow) stitchedAs(other FoldRow) FoldRow {
	return r.changed(func(k int, f *Fold) { f.Stitching = other.Folds[k].Stitching })
}

// laidAs returns the row with the lines on the flat cloth that another value of it has.
func (r FoldRow) laidAs(other FoldRow) FoldRow {
	r.FlatEnds = other.FlatEnds
	return r.changed(func(k int, f *Fold) { f.Lines = other.Folds[k].Lines })
}

// name names one fold of a row in a message: "tuck 3 of 6".
func (r FoldRow) name(f Fold) string {
	if r.Count == 1 {
		return "the " + r.Makes.String()
	}
	return fmt.Sprintf("%s %d of %d", r.Makes, f.Number+1, r.Count) + r.inGroup(f)
}

// FoldRows returns the rows of a piece: its tucks, then the pleats across it.
func (p *Piece) FoldRows() []FoldRow { return foldRows(p.TuckRows, p.PleatRows) }

func foldRows(tucks []TuckRow, pleats []PleatRow) []FoldRow {
	var rows []FoldRow
	for _, t := range tucks {
		rows = append(rows, t.FoldRow)
	}
	for _, p := range pleats {
		rows = append(rows, p.FoldRow)
	}
	return rows
}

// laid returns the row with its lines on the flat cloth. Where one of them leaves that,
// it is noted, and the row has those before it.
func (r FoldRow) laid(piece *Piece, outline *plane.Tree, found *Findings) (laid FoldRow, ok bool) {
	us, _ := r.Base.Extent(outline.Path())
	ok = true
	laid = r.changed(func(_ int, f *Fold) {
		f.Lines = slices.Clone(f.Lines)
		for l := range f.Lines {
			line := &f.Lines[l]
			var parts []Stretch
			if ok {
				parts, ok = r.parts(piece, *f, line.U, outline, us, found)
			}
			for _, s := range parts {
				line.Flat = append(line.Flat, r.Base.Lengthwise(line.U, s))
			}
		}
	})
	laid.FlatEnds = r.EndLines()
	return laid, ok
}

// parts returns the stretches over which a line of a fold lies on the flat cloth, which
// reaches over us; none where it lies on the edge of the piece itself.
func (r FoldRow) parts(piece *Piece, f Fold, u float64, outline *plane.Tree, us Stretch, found *Findings) ([]Stretch, bool) {
	chords := r.Base.Chords(outline, u)
	switch {
	case len(chords) == 0 && r.Base.onRim(u, us):
		return nil, true
	case len(chords) == 0:
		reportOutside(piece, r, f, us, found)
		return nil, false
	case !f.End.Given:
		return chords, true
	}
	upTo, ok := f.End.UpTo(chords)
	if !ok {
		reportEndOutside(piece, r, f, u, chords, found)
	}
	return upTo, ok
}

// onRim reports whether a line at u runs along the nearest or the farthest edge
// of an outline that lies over us, or lies on the other side of the base where
// that is such an edge: a tuck on the centre has its other half there.
func (b BaseLine) onRim(u float64, us Stretch) bool {
	return math.Abs(u-us.From) < SamePoint || math.Abs(u-us.To) < SamePoint ||
		b.Edge >= 0 && u < us.From && math.Abs(us.From) < SamePoint
}

func reportOutside(piece *Piece, r FoldRow, f Fold, us Stretch, found *Findings) {
	found.Add(r.Place, piece.howManyFit(r, f.Number),
		"%s leaves the piece: it takes up the cloth from %s to %s from %q, and the piece ends at %s",
		r.name(f), found.length(max(0, f.Near)), found.length(f.Far()), r.Base.Name, found.length(us.To))
}

// howManyFit is the hint for a row of which only the first k can be: those of them that no
// seam takes in.
func (p *Piece) howManyFit(r FoldRow, k int) string {
	onPiece := k
	k = p.clearOfSeams(r, k)
	taken := ""
	if k < onPiece {
		in, _ := p.seamedIn(r, r.Folds[k])
		which := fmt.Sprintf("%s %d lies", r.Makes, k+1)
		if k+1 < onPiece {
			which = fmt.Sprintf("%ss %d to %d lie", r.Makes, k+1, onPiece)
		}
		taken = fmt.Sprintf("; %s in the seam of %q", which, p.Edges[in.edge].Key)
	}
	switch {
	case k == 0:
		return "not even the first fits"
	case k == 1:
		return "only the first fits" + taken
	case r.PerGroup > 1:
		return fmt.Sprintf("the first %d fit: %s", k, wording.Counted(k/r.PerGroup, "whole group")) + taken
	}
	return fmt.Sprintf("the first %d fit", k) + taken
}

// InAll returns how many tucks or pleats the whole piece has of a row, the other half
// included.
func (r FoldRow) InAll() int {
	switch {
	case !r.Mirrored:
		return r.Count
	case r.Folds[0].About(), r.halved:
		return 2*r.Count - 1
	}
	return 2 * r.Count
}

// Taken returns what the row takes of the whole piece, both halves of it.
func (r FoldRow) Taken() float64 {
	if r.Mirrored {
		return 2 * r.takeUp()
	}
	return r.takeUp()
}
