package figures

import (
	"fmt"
	"slices"
	"strings"

	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
)

// Rules of this file: an edge of the garment that is neither sewn to another, hemmed, nor has
// anything sewn along it is raw when all else is done, and the maker is told of it as the last
// thing to see to: bound, faced or turned in, it is hers to choose, and so is the lower edge of a
// ruffle that has no hem. It is told of pieces that the seams of the file join: of any other
// piece, and of a file without seams, nobody knows what its edges are sewn to.

// raw adds the edges that no step finishes, pieces with the same ones together, and those of
// ruffles that have no hem.
func (w *work) raw() {
	var ruffles []string
	for _, r := range w.pattern.Ruffles {
		if r.Hem.MM == 0 && r.Turn.MM == 0 {
			ruffles = append(ruffles, "the "+named(r.Key, "ruffle"))
		}
	}
	if ruffles != nil {
		w.add("See to the lower edge of what has no hem: "+namesOf(ruffles), "", nil)
		w.last().Section = trimsTitle
	}
	type edges struct{ keys, pieces []string }
	var all []edges
	var names, lines []string
	joined, sewn := map[string]bool{}, map[[2]string]bool{} // pieces, and edges of pieces, by their keys
	for _, s := range w.pattern.Seams {
		for _, c := range s.Courses() {
			joined[c.Piece.Key], sewn[[2]string{c.Piece.Key, c.Key}] = true, true
		}
	}
	for _, on := range w.pattern.AllSewnOn() {
		for _, c := range on.Courses {
			sewn[[2]string{c.Piece.Key, c.Key}] = true
		}
	}
	for i := range w.pattern.Pieces {
		p := &w.pattern.Pieces[i]
		keys := rawOf(p, sewn)
		if keys == nil || !joined[p.Key] {
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

// rawOf returns the names of the edges of a piece that no step finishes, in their order; sewn are those
// that something is sewn to.
func rawOf(p *piece.Piece, sewn map[[2]string]bool) []string {
	var keys []string
	for _, e := range p.Edges {
		if !e.OnFold && e.Hem == 0 && !sewn[[2]string{p.Key, e.Key}] {
			keys = append(keys, e.Key)
		}
	}
	return keys
}
