package marking

import (
	"fmt"
	"math"

	"tuckmark/marking/plane"
)

// Rules of this file. Tucks and pleats are one thing: a row of folds along one
// straight line. A fold takes up a strip of the flat cloth, two widths wide, that
// comes to lie as a flap one width wide beside the line its two sides meet on:
// the stitching of a tuck, or where the fold of a pleat lies. Distances are
// measured from the base, on the side of it on which the row lies.

// row is folds made alike beside one line.
type row struct {
	of       rowKind
	key      string
	place    Place
	count    int // of tucks or pleats; a box pleat has two folds
	base     base
	folds    []fold // from the base outward
	ends     EndSpec
	endPath  plane.Path  // the line along which it ends, on the flat cloth; nil from edge to edge
	mirrored bool        // on the other half of a piece on the fold there is as much again
	halved   bool        // of the first pleat, one fold lies on the other half
	moved    plane.Point // the step from the base as drawn to the base on the flat cloth
}

// rowKind is what the folds of a row are.
type rowKind int

const (
	ofTucks rowKind = iota
	ofPleats
)

// String names one of the folds.
func (k rowKind) String() string {
	if k == ofPleats {
		return "pleat"
	}
	return "tuck"
}

// fold is one fold of a row.
type fold struct {
	number  int     // of the tuck or pleat it belongs to, from 0
	near    float64 // where its strip begins, flat
	width   float64 // of the flap
	toward  bool    // the flap lies toward the base
	at      float64 // the fold line, flat
	seam    float64 // where the two sides of the strip meet, finished
	end     tuckEnd
	lines   []foldLine
	endLine stretch // over which the end line crosses the strip, as distances from the base, flat
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
		return fmt.Sprintf("the %s %q", r.of, r.key)
	}
	return fmt.Sprintf("%s %d of %q", r.of, f.number+1, r.key)
}

// seamName is what a maker calls the line that the flap of a fold lies beside.
func (r row) seamName() string {
	if r.of == ofPleats {
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
		return stretch{f.seam - f.width, f.seam}
	}
	return stretch{f.seam, f.seam + f.width}
}

// foldLine is a line that is drawn for a fold.
type foldLine struct {
	role  Role
	u     float64 // from the base, flat
	paths []plane.Path
}

// paths returns the paths of a row's lines of one role, for one fold.
func (f fold) paths(role Role) []plane.Path {
	var all []plane.Path
	for _, l := range f.lines {
		if l.role == role {
			all = append(all, l.paths...)
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

// findSeams works out where the seams lie when the row is finished and nothing
// else lies between it and the base.
func (r *row) findSeams() {
	taken := 0.0
	for k := range r.folds {
		f := &r.folds[k]
		if f.about() {
			f.seam = 0
			taken += f.width
			continue
		}
		f.seam = f.near - taken
		taken += 2 * f.width
	}
}

// name names one fold of a row in a message: "tuck 3 of 6".
func (r row) name(f fold) string {
	if r.count == 1 {
		return "the " + r.of.String()
	}
	return fmt.Sprintf("%s %d of %d", r.of, f.number+1, r.count)
}

// drawnBase returns the base of a row as the piece is drawn: unfolding has moved it.
func (p *Piece) drawnBase(r *row) base {
	b := r.base
	if b.edge >= 0 {
		b.origin = p.Edges[b.edge].Path[0]
	} else {
		b.origin = p.line(b.name).Path[0]
	}
	return b
}

// rows returns the rows of a piece: its tucks, then the pleats across it.
func (p *Piece) rows() []*row {
	var rows []*row
	for i := range p.Tucks {
		rows = append(rows, &p.Tucks[i].row)
	}
	for i := range p.Pleatings {
		rows = append(rows, &p.Pleatings[i].row)
	}
	return rows
}

// layRow draws the lines of a row on the flat cloth.
func layRow(r *row, outline *plane.Tree, found *findings) bool {
	us, _ := r.base.extent(outline.Path())
	for k := range r.folds {
		f := &r.folds[k]
		for l := range f.lines {
			line := &f.lines[l]
			chords := r.base.chords(outline, line.u)
			if len(chords) == 0 {
				if r.base.onRim(line.u, us) {
					continue // the line lies on the edge of the piece itself
				}
				reportOutside(r, *f, us, found)
				return false
			}
			stretches := chords
			if f.end.given {
				var ok bool
				if stretches, ok = f.end.upTo(chords); !ok {
					reportEndOutside(r, *f, line.u, chords, found)
					return false
				}
			}
			for _, s := range stretches {
				line.paths = append(line.paths, plane.Path{r.base.at(line.u, s.from), r.base.at(line.u, s.to)})
			}
		}
	}
	return true
}

// onRim reports whether a line at u runs along the nearest or the farthest edge
// of an outline that lies over us, or lies on the other side of the base where
// that is such an edge: a tuck on the centre has its other half there.
func (b base) onRim(u float64, us stretch) bool {
	return math.Abs(u-us.from) < samePoint || math.Abs(u-us.to) < samePoint ||
		b.edge >= 0 && u < us.from && math.Abs(us.from) < samePoint
}

func reportOutside(r *row, f fold, us stretch, found *findings) {
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
