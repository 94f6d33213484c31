package piece

import (
	"fmt"
	"strings"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/plane"
)

// Rules of this file: what a teacher would point at before the cloth is touched.
// Nothing here is a mistake, and the sheets are made all the same. Every warning
// has its numbers.

// Remark is something in a file that is no mistake but may not be meant, or that
// follows from it.
type Remark struct {
	fault.Place
	Text string

	Folds   []int // which of the folds of its row it is about, from 1; nil for no row, or all of it
	InTable bool  // a table of the figures says it too
}

// String gives the remark behind its place.
func (r Remark) String() string { return r.Place.Before(r.Text) }

// remarker collects what is said of one piece.
type remarker struct {
	piece *Piece
	sewn  []*plane.Tree // of each edge, the part of its line that is sewn
	unit  length.Unit
	list  []Remark
}

// shown bounds, in mm, by how much something must lie on the wrong side of a line before that
// is remarked: half a step of the ruler of the file, from which on that shows it. What is less is
// lost where a line is traced, and would be told as a distance that is the line's own.
func (m *remarker) shown() float64 { return m.unit.Ruler() / 2 }

func (m *remarker) say(at fault.Place, text string, args ...any) {
	m.list = append(m.list, Remark{Place: at, Text: fmt.Sprintf(text, args...)})
}

// Remarks returns what is to be said of a piece that could be made.
func (p *Piece) Remarks(unit length.Unit) []Remark {
	m := &remarker{piece: p, unit: unit}
	for _, e := range p.Edges {
		m.sewn = append(m.sewn, plane.NewTree(e.Sewn))
	}
	for i := range p.TuckRows {
		t := &p.TuckRows[i]
		m.fine(t)
		m.gap(t)
		m.groups(t)
		m.tops(t.FoldRow)
		m.inSeams(t.FoldRow)
		m.ends(t)
		m.endsInHem(t)
	}
	for i := range p.PleatRows {
		m.tops(p.PleatRows[i].FoldRow)
		m.creases(&p.PleatRows[i])
	}
	m.pleatsInSeams()
	m.hems()
	m.tooLarge()
	for i := range p.Edges {
		m.bendsToAndFro(&p.Edges[i])
	}
	if p.IsTucked() {
		told := p.Block.MeasuredNotes(p, unit)
		if next := p.Block.SampleForNext(unit); next != "" {
			told = append(told, next)
		}
		m.say(p.Block.Measured.place, "%s", strings.Join(told, "; "))
	}
	return m.list
}
