// Package marking works out what goes on the cloth, and where.
//
// The way of the data: Read takes a file to a Spec, as it is written; Check
// takes a Spec to a Pattern, in which every line has been worked out and found
// to be possible; Piece.Marking takes a piece of it to its marks, each a
// finished line with a role. Lengths are in mm, y runs up. Nothing here knows of
// paper.
package marking

import (
	"fmt"

	"tuckmark/marking/plane"
)

// Markings returns the marking of every piece, in the order of the file.
func (p *Pattern) Markings() []Marking {
	all := make([]Marking, len(p.Pieces))
	for i := range p.Pieces {
		all[i] = p.Pieces[i].marking(p)
	}
	return all
}

// marking lists every line of the piece by role and says what is printed with
// it.
func (p *Piece) marking(pattern *Pattern) Marking {
	m := Marking{Key: p.Key, Name: p.Name, Outline: p.Outline}
	add := func(role Role, name string, path plane.Path) {
		m.Marks = append(m.Marks, Mark{Role: role, Name: name, Path: path})
	}
	length := pattern.Unit.Names
	for _, e := range p.Edges {
		if e.OnFold {
			add(FoldEdge, e.Key+": place on the fold", e.Path)
		} else {
			add(Cut, e.Key, e.Path)
		}
	}
	for _, e := range p.Edges {
		switch {
		case e.Hem > 0:
			if e.TurnLine != nil {
				add(Fold, "turn in "+length(e.Turn), e.TurnLine)
			}
			add(Fold, "hem "+length(e.Hem), e.Line)
		case e.Allowance > 0:
			add(Stitch, "stitch line, "+length(e.Allowance), e.Line)
		}
	}
	for _, l := range p.Lines {
		add(l.Role, l.Key, l.Path)
	}
	for _, t := range p.Tucks {
		p.addTucks(t, add)
	}
	for _, pleat := range p.Pleats {
		add(PleatFold, pleat.Key, pleat.Fold)
		add(Placement, "", pleat.Placement)
		add(Arrow, "", pleat.Arrow)
	}
	for _, n := range p.Notches {
		add(Notch, n.Key, n.Path)
	}
	if g := placeGrain(p, m.Marks); g != nil {
		add(Grain, "", g)
	}
	m.Notes = p.notes(pattern)
	return m
}

// addTucks lists the lines of a set of tucks.
func (p *Piece) addTucks(t Tuck, add func(Role, string, plane.Path)) {
	for _, one := range t.Each {
		for _, f := range one.Fold {
			add(TuckFold, "", f)
		}
		for _, s := range one.Sewn {
			add(TuckStitch, "", s)
		}
	}
	if t.End != nil {
		add(TuckEnd, "the "+t.Key+" tucks end here", t.End)
	}
}

// describe says what a set of tucks is, since its lines lie too close for
// words beside them.
func (t Tuck) describe(length func(float64) string) string {
	words := fmt.Sprintf("%s: 1 tuck, %s wide", t.Key, length(t.Width))
	if t.Count > 1 {
		words = fmt.Sprintf("%s: %d tucks, each %s wide", t.Key, t.Count, length(t.Width))
	}
	if t.Twin {
		words += ", twin needle"
	}
	switch t.Press {
	case "away":
		words += ", pressed away from " + t.base.name
	case "toward":
		words += ", pressed toward " + t.base.name
	}
	return words
}

// notes returns what is printed under the name of the piece.
func (p *Piece) notes(pattern *Pattern) []string {
	var notes []string
	if pattern.Title != "" {
		notes = append(notes, pattern.Title)
	}
	if pattern.Size != "" {
		notes = append(notes, "size "+pattern.Size)
	}
	cut := fmt.Sprintf("cut %d", p.Cut)
	if p.OnFold {
		cut += " on the fold"
	}
	notes = append(notes, cut)
	for _, t := range p.Tucks {
		notes = append(notes, t.describe(pattern.Unit.Names))
	}
	return notes
}
