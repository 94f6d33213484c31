package figures

import (
	"fmt"
	"slices"
	"strings"

	"tuckmark/marking/garment"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
)

// Rules of this file: an edge of the garment that is neither sewn to another, hemmed, nor has
// anything sewn along it is raw when all else is done, and the maker is told of it as the last
// thing to see to: bound, faced or turned in, it is hers to choose. It is told of pieces that
// the seams of the file join: of any other piece, and of a file without seams, nobody knows what
// its edges are sewn to.

// raw adds the edges that no step finishes, pieces with the same ones together.
func (w *work) raw() {
	type edges struct{ keys, pieces []string }
	var all []edges
	var names, lines []string
	for i := range w.pattern.Pieces {
		p := &w.pattern.Pieces[i]
		keys := w.rawOf(p)
		if keys == nil {
			continue
		}
		names, lines = append(names, p.Name), append(lines, keys...)
		for k := range keys {
			keys[k] = strings.TrimPrefix(keys[k], "the ")
		}
		if same := slices.IndexFunc(all, func(e edges) bool { return slices.Equal(e.keys, keys) }); same >= 0 {
			all[same].pieces = append(all[same].pieces, p.Name)
		} else {
			all = append(all, edges{keys, []string{p.Name}})
		}
	}
	if all == nil {
		return
	}
	var told []string
	for _, e := range all {
		told = append(told, fmt.Sprintf("the %s of %s", namesOf(e.keys), namesOf(e.pieces)))
	}
	w.add("See to the edges that no step above finishes: "+namesOf(told), "", w.drawn(names))
	w.last().Roles, w.last().Lines = []mark.Role{mark.Cut}, lines
}

// rawOf returns the names of the edges of a piece that no step finishes, in their order.
func (w *work) rawOf(p *piece.Piece) []string {
	var courses []garment.Course
	for _, s := range w.pattern.Seams {
		courses = append(courses, coursesOf(s)...)
	}
	of := func(c garment.Course) bool { return c.Piece.Key == p.Key }
	if !slices.ContainsFunc(courses, of) {
		return nil
	}
	for _, on := range w.sewn() {
		courses = append(courses, on.Courses...)
	}
	var keys []string
	for _, e := range p.Edges {
		finished := e.OnFold || e.Hem > 0 || slices.ContainsFunc(courses, func(c garment.Course) bool { return of(c) && c.Key == e.Key })
		if !finished {
			keys = append(keys, e.Key)
		}
	}
	return keys
}
