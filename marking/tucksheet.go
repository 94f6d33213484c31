package marking

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"tuckmark/marking/plane"
)

// Rules of this file. The tuck sheet is the part of a block that carries lines:
// from its torn top edge to below the end line, from the centre line to beyond the
// last stitching. Its lines run up to the torn edge, for the tucks are sewn before
// anything is cut. The tuck ruler has a tick at every line, for cloth that cannot
// be traced: ticked along the top edge and along the end line, and ruled between.

const (
	sheetFoot   = 25.4 * 7 / 4    // below the end line, in mm: room for what is to be read there
	sheetMargin = 25.4 / 2        // around the lines of a tuck sheet, in mm
	sheetReach  = 25.4 * 8        // from a line to the torn side that is drawn with it, at most, in mm
	rulerHeight = 25.4 * 5 / 4    // of a tuck ruler, in mm
	stitchTick  = rulerHeight / 3 // of a stitching, on a ruler, in mm
)

// at returns a place of the block, flat or finished.
func (b *Block) at(u, v float64) plane.Point {
	return b.folding.origin.Add(b.folding.out.Mul(u)).Add(b.folding.out.Left().Mul(v))
}

// rectangle returns a closed path, counter-clockwise.
func (b *Block) rectangle(us, vs stretch) plane.Path {
	return plane.Path{b.at(us.from, vs.from), b.at(us.to, vs.from), b.at(us.to, vs.to), b.at(us.from, vs.to), b.at(us.from, vs.from)}
}

// flatU returns where a distance from the base of a row lies on the flat block.
func (b *Block) flatU(r *row, u float64) float64 {
	return b.folding.offset(r) + b.folding.side(r)*u
}

// top and bottom are the v of the torn ends.
func (b *Block) top() float64 {
	if b.up > 0 {
		return b.vs.to + b.Ends
	}
	return b.vs.from - b.Ends
}

func (b *Block) bottom() float64 {
	if b.up > 0 {
		return b.vs.from - b.Ends
	}
	return b.vs.to + b.Ends
}

// begin returns the v of the torn end at which the folds of a row begin: the top,
// but for a row that hangs the other way, from an edge at the bottom.
func (b *Block) begin(r *row) float64 {
	if end := r.folds[0].end; end.given && b.up*end.down*r.base.along.Dot(b.folding.out.Left()) > 0 {
		return b.bottom()
	}
	return b.top()
}

// level returns the v at which a fold ends: its end line, or the torn bottom.
func (b *Block) level(r *row, f fold) float64 {
	if !f.end.given {
		return b.bottom()
	}
	return r.base.at(0, f.end.v).Sub(b.folding.origin).Dot(b.folding.out.Left())
}

// lines returns the stretches of u and v over which the block carries lines.
func (b *Block) lines() (us, vs stretch) {
	vs = stretch{b.top(), b.top()}
	for _, r := range b.folding.rows {
		for _, f := range r.folds {
			for _, u := range []float64{0, f.near, f.far()} {
				if u < 0 && b.folding.onAxis {
					continue
				}
				us.from, us.to = min(us.from, b.flatU(r, u)), max(us.to, b.flatU(r, u))
			}
			vs.from, vs.to = min(vs.from, b.begin(r), b.level(r, f)), max(vs.to, b.begin(r), b.level(r, f))
		}
	}
	return us, vs
}

// tuckSheet returns the tuck sheet of a piece.
func (p *Piece) tuckSheet(pattern *Pattern) Marking {
	b := p.Block
	us, vs := b.lines()
	below := vs
	if b.up > 0 {
		below.from = max(vs.from-sheetFoot, b.bottom())
	} else {
		below.to = min(vs.to+sheetFoot, b.bottom())
	}
	// The name of the torn edge stands over it, clear of the lines.
	paper := below
	if b.up > 0 {
		paper.to += sheetMargin
	} else {
		paper.from -= sheetMargin
	}
	wide, torn, side := b.besides(us)
	m := Marking{Key: p.Key + " tuck sheet", Name: p.Name + ": tuck sheet", Outline: b.rectangle(wide, paper)}
	add := func(role Role, name string, path plane.Path) {
		m.Marks = append(m.Marks, Mark{role, name, path})
	}
	top := plane.Path{b.at(wide.from, b.top()), b.at(wide.to, b.top())}
	if b.up < 0 {
		top = top.Reversed()
	}
	add(BlockEdge, "top edge of the block", top)
	if b.bottom() == below.from || b.bottom() == below.to {
		add(BlockEdge, "bottom edge of the block", plane.Path{b.at(wide.from, b.bottom()), b.at(wide.to, b.bottom())})
	}
	if side {
		add(BlockEdge, "side edge of the block", plane.Path{b.at(torn, paper.from), b.at(torn, paper.to)})
	}
	for _, line := range b.baseLines(p) {
		add(Centre, line.name, plane.Path{b.at(line.u, paper.from), b.at(line.u, paper.to)})
		if side {
			m.Notes = append(m.Notes, fmt.Sprintf("%s lies %s from the torn side", line.name, pattern.Unit.Print(math.Abs(line.u-torn))))
		}
	}
	for _, cross := range p.crosses() {
		if v := cross.Sub(b.folding.origin).Dot(b.folding.out.Left()); b.folding.onAxis && v > below.from && v < below.to {
			m.Marks = append(m.Marks, crossAt(cross, b.folding.out)...)
		}
	}
	for _, r := range b.folding.rows {
		for _, f := range r.folds {
			for _, l := range f.lines {
				u := b.flatU(r, l.u)
				if b.folding.onAxis && u < samePoint {
					continue // the centre line, or the other half
				}
				add(l.role, "", plane.Path{b.at(u, b.begin(r)), b.at(u, b.level(r, f))})
			}
			if r.of == ofPleats {
				v := b.begin(r) + arrowDown*(b.level(r, f)-b.begin(r))
				add(Arrow, "", plane.Path{b.at(b.flatU(r, f.at), v), b.at(b.flatU(r, f.near+f.far()-f.at), v)})
			}
		}
		if end := r.endLine(); end != nil {
			add(TuckEnd, fmt.Sprintf("the %s %ss end here", r.key, r.of), end)
		}
	}
	m.Notes = slices.Concat(b.notes(pattern.Unit), m.Notes)
	for _, t := range p.Tucks {
		m.Notes = append(m.Notes, t.describe(pattern.Unit.Names)...)
	}
	for _, pleats := range p.Pleatings {
		m.Notes = append(m.Notes, pleats.describe(pattern.Unit.Names)...)
	}
	if b.Measure != nil {
		m.Notes = append(m.Notes, b.measured(p, pattern.Unit)...)
	}
	if b.folding.onAxis {
		return p.printed(m, b.folding.origin, b.folding.out)
	}
	return m
}

// besides returns how far a tuck sheet reaches to the sides of its lines. On the
// fold it begins at the centre. Elsewhere it goes on to the nearer torn side of the
// block, where that is near enough: torn is its u, side tells whether there is one.
func (b *Block) besides(us stretch) (wide stretch, torn float64, side bool) {
	wide = stretch{us.from - sheetMargin, us.to + sheetMargin}
	if b.folding.onAxis {
		wide.from = 0
		return wide, 0, false
	}
	flat := func(u float64) float64 { return b.flat.U(b.flat.Flat(b.at(u, 0))) }
	left, right := flat(b.us.from)-b.Sides, flat(b.us.to)+b.Sides
	if us.from-left <= right-us.to {
		torn, side = left, us.from-left <= sheetReach
	} else {
		torn, side = right, right-us.to <= sheetReach
	}
	if side {
		wide = stretch{min(wide.from, torn), max(wide.to, torn)}
	}
	return wide, torn, side
}

// endsBelow says how far below the torn edge the folds end, for cloth that is ruled:
// in one number for each row, or in one for each of its folds.
func (b *Block) endsBelow(unit Unit) []string {
	var notes []string
	for _, r := range b.folding.rows {
		if !r.folds[0].end.given {
			continue
		}
		var ends []string
		for _, f := range r.folds {
			if end := unit.Print(math.Abs(b.level(r, f) - b.begin(r))); len(ends) <= f.number {
				ends = append(ends, end)
			}
		}
		if all := slices.Compact(slices.Clone(ends)); len(all) == 1 {
			notes = append(notes, fmt.Sprintf("the %s %ss end %s from the torn edge", r.key, r.of, all[0]))
		} else {
			notes = append(notes, fmt.Sprintf("the %s %ss end, measured from the torn edge, first to last: %s", r.key, r.of, strings.Join(ends, ", ")))
		}
	}
	return notes
}

// onCentre reports whether a tuck lies on the centre of a piece on the fold.
func (b *Block) onCentre() bool {
	return b.folding.onAxis && slices.ContainsFunc(b.folding.rows, func(r *row) bool { return r.folds[0].about() })
}

// baseLine is a line that tucks are measured from.
type baseLine struct {
	name string
	u    float64
}

// baseLines returns the lines that the rows of the block are measured from, each
// once; first the centre of a piece that lies on the fold, which they may be
// measured from or not.
func (b *Block) baseLines(piece *Piece) []baseLine {
	var lines []baseLine
	if b.folding.onAxis {
		name := piece.Edges[piece.foldEdge()].Key
		if b.onCentre() {
			name += ", and the fold of tuck 1"
		}
		lines = append(lines, baseLine{name, 0})
	}
	for _, r := range b.folding.rows {
		u := b.folding.offset(r)
		known := false
		for _, l := range lines {
			known = known || l.u-u < samePoint && u-l.u < samePoint
		}
		if !known {
			lines = append(lines, baseLine{r.base.name, u})
		}
	}
	return lines
}

// tuckRuler returns the tuck ruler of a piece.
func (p *Piece) tuckRuler(pattern *Pattern) Marking {
	b := p.Block
	us, _ := b.lines()
	wide := stretch{us.from - sheetMargin, us.to + sheetMargin}
	if b.folding.onAxis {
		wide.from = 0
	}
	high := stretch{0, rulerHeight}
	m := Marking{Key: p.Key + " tuck ruler", Name: p.Name + ": tuck ruler", Outline: b.rectangle(wide, high)}
	add := func(role Role, name string, path plane.Path) {
		m.Marks = append(m.Marks, Mark{role, name, path})
	}
	corners := m.Outline
	for i := 1; i < len(corners); i++ {
		add(Cut, "", plane.Path{corners[i-1], corners[i]})
	}
	tick := func(u, long float64) plane.Path { return plane.Path{b.at(u, 0), b.at(u, long)} }
	for _, line := range b.baseLines(p) {
		if !b.folding.onAxis || line.u > samePoint { // else the strip ends there
			add(Centre, line.name, tick(line.u, rulerHeight))
		}
	}
	for _, r := range b.folding.rows {
		told := -1
		for _, f := range r.folds {
			for _, l := range f.lines {
				u := b.flatU(r, l.u)
				if b.folding.onAxis && u < samePoint {
					continue
				}
				switch {
				case l.role == TuckStitch || l.role == Placement:
					add(l.role, "", tick(u, stitchTick))
				case told != f.number:
					add(l.role, strconv.Itoa(f.number+1), tick(u, 2*stitchTick))
					told = f.number
				default:
					add(l.role, "", tick(u, 2*stitchTick))
				}
			}
		}
	}
	m.Notes = append([]string{"a tick at every line: tick along the torn edge and along the end line, and rule between"}, b.endsBelow(pattern.Unit)...)
	if b.folding.onAxis {
		m.Notes = append(m.Notes, "its end lies on "+p.Edges[p.foldEdge()].Key+"; turn it over for the other half")
	}
	return m
}
