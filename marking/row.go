package marking

import (
	"fmt"
	"math"
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file. Tucks and pleats are one thing: a row of folds along one
// straight line. A fold takes up a strip of the flat cloth, two widths wide, that
// comes to lie as a flap one width wide beside the line its two sides meet on:
// the stitching of a tuck, or where the fold of a pleat lies. Distances are
// measured from the base, on the side of it on which the row lies.

// foldKind is what a fold makes.
type foldKind int

const (
	tuckFolds  foldKind = iota // a tuck: its sides are stitched together
	pleatFolds                 // a pleat: one of its sides is laid on the other
)

// String names one of the kind.
func (k foldKind) String() string { return [...]string{"tuck", "pleat"}[k] }

// row is folds made alike beside one line, as the piece is drawn.
type row struct {
	kind     foldKind
	key      string
	place    Place
	nth      int // among the rows of the piece: its tucks, then the pleats across it
	count    int // of tucks or pleats; a box pleat has two folds
	base     base
	folds    []fold // from the base outward
	ends     EndSpec
	mirrored bool // on the other half of a piece on the fold there is as much again
	halved   bool // of the first pleat, one fold lies on the other half
}

// fold is one fold of a row.
type fold struct {
	number int     // of the tuck or pleat it belongs to, from 0
	near   float64 // where its strip begins, flat
	width  float64 // of the flap
	toward bool    // the flap lies toward the base
	at     float64 // the fold line, flat
	// stitching is where the two sides of the strip meet, finished: the stitching of a
	// tuck, the placement line of a pleat.
	stitching float64
	end       tuckEnd
	lines     []foldLine
	endLine   stretch // over which the end line crosses the strip, as distances from the base, flat
}

// foldLine is a line that is drawn for a fold.
type foldLine struct {
	role Role
	u    float64 // from the base, flat
}

// laidRow is a row with its lines on the flat cloth.
type laidRow struct {
	row   row
	lines [][][]plane.Path // of each fold, and each of its lines, the parts
	end   plane.Path       // the line along which the row ends; nil from edge to edge
}

// far is where the strip ends, flat.
func (f fold) far() float64 { return f.near + 2*f.width }

// placement is where the fold line of a pleat is laid to, flat: the other side of
// the strip.
func (f fold) placement() float64 { return f.near + f.far() - f.at }

// nameElsewhere names one fold of a row in a message about another row: "tuck 3 of
// "yoke"".
func (r row) nameElsewhere(f fold) string {
	if r.count == 1 {
		return fmt.Sprintf("the %s %q", r.kind, r.key)
	}
	return fmt.Sprintf("%s %d of %q", r.kind, f.number+1, r.key)
}

// stitchingName is what a maker calls the line that the flap of a fold lies beside.
func (r row) stitchingName() string {
	if r.kind == pleatFolds {
		return "placement line"
	}
	return "stitching"
}

// snapped returns how far a strip lies from the base, which one that begins on it
// does exactly: sums of lengths are off by rounding.
func snapped(near float64) float64 {
	if math.Abs(near) < samePoint {
		return 0
	}
	return near
}

// about reports whether the strip lies on both sides of the base.
func (f fold) about() bool { return f.near < 0 }

// reach is how far from the base the flap lies, finished.
func (f fold) reach() stretch {
	if f.toward {
		return stretch{f.stitching - f.width, f.stitching}
	}
	return stretch{f.stitching, f.stitching + f.width}
}

// paths returns the lines of one role of fold k.
func (l laidRow) paths(k int, role Role) []plane.Path {
	var all []plane.Path
	for i, paths := range l.lines[k] {
		if l.row.folds[k].lines[i].role == role {
			all = append(all, paths...)
		}
	}
	return all
}

// takeUp is the cloth that the whole row takes, in mm. Of a fold about the base,
// half belongs to the row.
func (r row) takeUp() float64 {
	sum := 0.0
	for _, f := range r.folds {
		sum += f.far() - math.Max(0, f.near)
	}
	return sum
}

// byItself returns the row with its stitching where it lies when the row is finished
// and nothing else lies between it and the base.
func (r row) byItself() row {
	r.folds = slices.Clone(r.folds)
	taken := 0.0
	for k := range r.folds {
		f := &r.folds[k]
		if f.about() {
			f.stitching = 0
			taken += f.width
			continue
		}
		f.stitching = f.near - taken
		taken += 2 * f.width
	}
	return r
}

// stitchedAs returns the row with the stitching that another value of it has.
func (r row) stitchedAs(other row) row {
	r.folds = slices.Clone(r.folds)
	for k := range r.folds {
		r.folds[k].stitching = other.folds[k].stitching
	}
	return r
}

// name names one fold of a row in a message: "tuck 3 of 6".
func (r row) name(f fold) string {
	if r.count == 1 {
		return "the " + r.kind.String()
	}
	return fmt.Sprintf("%s %d of %d", r.kind, f.number+1, r.count)
}

// rows returns the rows of a piece: its tucks, then the pleats across it.
func (p *Piece) rows() []row {
	var rows []row
	for _, t := range p.Tucks {
		rows = append(rows, t.row)
	}
	for _, pleats := range p.Pleatings {
		rows = append(rows, pleats.row)
	}
	return rows
}

// laid draws the lines of a row on the flat cloth. Where one of them leaves it that is
// noted, and the row has those before it.
func (r row) laid(outline *plane.Tree, found *findings) (laid laidRow, ok bool) {
	laid = laidRow{row: r, lines: make([][][]plane.Path, len(r.folds)), end: r.endLine()}
	us, _ := r.base.extent(outline.Path())
	for k, f := range r.folds {
		laid.lines[k] = make([][]plane.Path, len(f.lines))
		for l, line := range f.lines {
			chords := r.base.chords(outline, line.u)
			if len(chords) == 0 {
				if r.base.onRim(line.u, us) {
					continue // the line lies on the edge of the piece itself
				}
				reportOutside(r, f, us, found)
				return laid, false
			}
			stretches := chords
			if f.end.given {
				var ok bool
				if stretches, ok = f.end.upTo(chords); !ok {
					reportEndOutside(r, f, line.u, chords, found)
					return laid, false
				}
			}
			for _, s := range stretches {
				laid.lines[k][l] = append(laid.lines[k][l], plane.Path{r.base.at(line.u, s.from), r.base.at(line.u, s.to)})
			}
		}
	}
	return laid, true
}

// onRim reports whether a line at u runs along the nearest or the farthest edge
// of an outline that lies over us, or lies on the other side of the base where
// that is such an edge: a tuck on the centre has its other half there.
func (b base) onRim(u float64, us stretch) bool {
	return math.Abs(u-us.from) < samePoint || math.Abs(u-us.to) < samePoint ||
		b.edge >= 0 && u < us.from && math.Abs(us.from) < samePoint
}

func reportOutside(r row, f fold, us stretch, found *findings) {
	found.add(r.place, howManyFit(f.number),
		"%s leaves the piece: it takes up the cloth from %s to %s from %q, and the piece ends at %s",
		r.name(f), found.mm(max(0, f.near)), found.mm(f.far()), r.base.name, found.mm(us.to))
}

// howManyFit is the hint for a row of which only the first k can be.
func howManyFit(k int) string {
	switch k {
	case 0:
		return "not even the first fits"
	case 1:
		return "only the first fits"
	}
	return fmt.Sprintf("the first %d fit", k)
}

// inAll returns how many tucks or pleats the whole piece has of a row, the other half
// included.
func (r row) inAll() int {
	switch {
	case !r.mirrored:
		return r.count
	case r.folds[0].about(), r.halved:
		return 2*r.count - 1
	}
	return 2 * r.count
}

// taken returns what the row takes of the whole piece, both halves of it.
func (r row) taken() float64 {
	if r.mirrored {
		return 2 * r.takeUp()
	}
	return r.takeUp()
}
