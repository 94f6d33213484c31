package figures

import (
	"fmt"
	"slices"
	"strings"

	"tuckmark/marking/fault"
	"tuckmark/marking/garment"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
)

// Rules of this file. What is said of a place of the file is about the lines of what the key there
// names: of an edge its cutting line, its stitch line and the folds of its hem; of a set of tucks
// all of their lines, or those of the tucks that a remark tells of; of a seam, or of what is sewn
// on, those of all its edges. What is no edge, row or line is about its piece as a whole.

// Remarks are what is no mistake but may not be meant, each with the lines it is about in what is
// drawn.
func Remarks(p *garment.Pattern, drawn []mark.Marking) []mark.Notice {
	find := finderOf(p, drawn)
	var all []mark.Notice
	for _, r := range p.Remarks {
		all = append(all, mark.Notice{Text: r.Text, Of: ofWhat(p, r.Place), Place: r.Place, At: ofFolds(find.at(r.Place), r)})
	}
	return all
}

// ofFolds returns those lines of a row of folds that belong to the folds a remark is about, or all
// where it names none.
func ofFolds(lines []mark.At, r piece.Remark) []mark.At {
	parts := r.Place.Parts()
	if len(r.Folds) == 0 || len(parts) == 0 {
		return lines
	}
	row := parts[len(parts)-1]
	return slices.DeleteFunc(slices.Clone(lines), func(at mark.At) bool {
		return !slices.ContainsFunc(r.Folds, func(n int) bool { return strings.HasPrefix(at.Line, fmt.Sprintf("%s %d ", row, n)) })
	})
}

// Mistakes are what is wrong with a file, each with the lines it is about in what was drawn of it
// before; p is nil where nothing was.
func Mistakes(p *garment.Pattern, drawn []mark.Marking, found fault.List) []mark.Notice {
	if p == nil {
		p = &garment.Pattern{}
	}
	find := finderOf(p, drawn)
	var all []mark.Notice
	for _, f := range found {
		all = append(all, mark.Notice{Text: f.Cause, Hint: f.Hint, Of: ofWhat(p, f.Place), Place: f.Place, At: find.at(f.Place)})
	}
	return all
}

// finder finds lines where they are drawn.
type finder struct {
	*garment.Pattern
	lines map[ofPattern][]mark.At
}

// ofPattern is a thing of a piece, which is known by its key.
type ofPattern struct {
	piece string
	thing thing
}

// finderOf finds the lines of what is drawn of a pattern, and of its pieces as they are sewn.
func finderOf(p *garment.Pattern, drawn []mark.Marking) finder {
	f := finder{p, map[ofPattern][]mark.At{}}
	pieces := teller{p, writer{unit: p.Unit}}.pieces()
	add := func(of ofPattern, at mark.At) {
		if !slices.Contains(f.lines[of], at) {
			f.lines[of] = append(f.lines[of], at)
		}
	}
	for _, one := range pieces {
		key := one.piece.Key
		for _, m := range drawn {
			if m.Kind == mark.Sample || !m.IsOf(one.piece.Name) {
				continue
			}
			add(ofPattern{piece: key}, mark.At{Piece: m.Key})
			for _, l := range linesIn(m) {
				for _, known := range one.lines {
					if known.key == l.key {
						add(ofPattern{key, known.of}, mark.At{Piece: m.Key, Line: l.called})
					}
				}
			}
		}
		add(ofPattern{piece: key}, mark.At{Piece: key})
		for _, known := range one.lines {
			add(ofPattern{key, known.of}, mark.At{Piece: key, Line: known.key})
		}
	}
	return f
}

// at returns the lines of what the key of a place names; none of what is not drawn.
func (f finder) at(place fault.Place) []mark.At {
	parts := place.Parts()
	if len(parts) > 2 && parts[0] == "view" {
		parts = parts[2:]
	}
	if len(parts) < 2 {
		return nil
	}
	kind, name := parts[0], parts[1]
	if kind != "piece" {
		return f.sewn(kind, name)
	}
	of := ofPattern{piece: name}
	if len(parts) > 2 {
		of.thing.kind = parts[2]
	}
	if len(parts) > 3 && of.thing.kind != blockThing {
		of.thing.name = parts[3]
	}
	if lines := f.lines[of]; len(lines) > 0 {
		return lines
	}
	return f.lines[ofPattern{piece: name}]
}

// sewn returns the lines along which a seam, or what is sewn on, runs.
func (f finder) sewn(kind, name string) []mark.At {
	var courses []garment.Course
	add := func(of, key string, more []garment.Course) {
		if of == kind && key == name {
			courses = append(courses, more...)
		}
	}
	for _, s := range f.Seams {
		add("seam", s.Key, s.Sides[0].Courses)
		add("seam", s.Key, s.Sides[1].Courses)
	}
	for _, t := range f.Trims {
		add("trim", t.Key, t.Courses)
	}
	for _, r := range f.Ruffles {
		add("ruffle", r.Key, r.Courses)
	}
	for _, b := range f.Bindings {
		add("binding", b.Key, b.Courses)
	}
	var all []mark.At
	for _, c := range courses {
		of := thing{"edge", c.Key}
		if c.Piece.EdgeNumber(c.Key) < 0 {
			of.kind = "line"
		}
		for _, at := range f.lines[ofPattern{c.Piece.Key, of}] {
			if !slices.Contains(all, at) {
				all = append(all, at)
			}
		}
	}
	return all
}
