package seen

import (
	"slices"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
)

// Rules of this file: a canvas that keeps what it is told, word for word, to tell it to another:
// that one then works as much as it must for the same pages, and nobody else works at all.

// Record is an ink.Canvas that nothing is drawn on.
type Record struct {
	told  []func(ink.Canvas)
	roles []mark.Role // that have layers
}

var _ ink.Canvas = (*Record)(nil)

// Tell tells another canvas what the record was told.
func (r *Record) Tell(d ink.Canvas) {
	for _, tell := range r.told {
		tell(d)
	}
}

// Roles are those that have layers, in their usual order.
func (r *Record) Roles() []mark.Role {
	return slices.DeleteFunc(mark.Roles(), func(role mark.Role) bool { return !slices.Contains(r.roles, role) })
}

func (r *Record) keep(tell func(ink.Canvas)) { r.told = append(r.told, tell) }

// NewPage and all that follow keep what they are told.
func (r *Record) NewPage(on paper.Paper) { r.keep(func(d ink.Canvas) { d.NewPage(on) }) }

func (r *Record) Place(origin plane.Point, scale float64) {
	r.keep(func(d ink.Canvas) { d.Place(origin, scale) })
}
func (r *Record) Layer(role mark.Role) {
	r.roles = append(r.roles, role)
	r.keep(func(d ink.Canvas) { d.Layer(role) })
}
func (r *Record) EndLayer() { r.keep(ink.Canvas.EndLayer) }
func (r *Record) Mark(piece, line string) {
	r.keep(func(d ink.Canvas) { d.Mark(piece, line) })
}
func (r *Record) EndMark()             { r.keep(ink.Canvas.EndMark) }
func (r *Record) Save()                { r.keep(ink.Canvas.Save) }
func (r *Record) Restore()             { r.keep(ink.Canvas.Restore) }
func (r *Record) Shift(to plane.Point) { r.keep(func(d ink.Canvas) { d.Shift(to) }) }
func (r *Record) Clip(b plane.Box)     { r.keep(func(d ink.Canvas) { d.Clip(b) }) }
func (r *Record) Pen(p ink.Pen)        { r.keep(func(d ink.Canvas) { d.Pen(p) }) }
func (r *Record) Dashes(p ink.Pen, phase float64) {
	r.keep(func(d ink.Canvas) { d.Dashes(p, phase) })
}
func (r *Record) Ink(c ink.Colour) { r.keep(func(d ink.Canvas) { d.Ink(c) }) }
func (r *Record) Path(p plane.Path) {
	kept := slices.Clone(p)
	r.keep(func(d ink.Canvas) { d.Path(kept) })
}
func (r *Record) Box(b plane.Box) { r.keep(func(d ink.Canvas) { d.Box(b) }) }
func (r *Record) Circle(centre plane.Point, radius float64) {
	r.keep(func(d ink.Canvas) { d.Circle(centre, radius) })
}
func (r *Record) Stroke() { r.keep(ink.Canvas.Stroke) }
func (r *Record) Fill()   { r.keep(ink.Canvas.Fill) }
func (r *Record) Between(outer, inner plane.Box) {
	r.keep(func(d ink.Canvas) { d.Between(outer, inner) })
}
func (r *Record) Text(at, u plane.Point, s ink.Style, text string) {
	r.keep(func(d ink.Canvas) { d.Text(at, u, s, text) })
}
