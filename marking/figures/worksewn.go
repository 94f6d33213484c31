package figures

import (
	"fmt"
	"slices"
	"strings"

	"tuckmark/marking/garment"
	"tuckmark/marking/piece"
	"tuckmark/marking/wording"
)

// Rules of this file: what no seam joins is finished first, with its hems and its trims, and
// then sewn in its place: a pocket while its ground lies flat, all else when the seams are sewn.
// Of a file without seams nothing is known of that but that pockets are sewn on. What is sewn
// along edges follows, and last the garment is closed where it opens. Pieces are the same by
// their keys: those of a set for another transfer are copies.
//
// An insertion whose ends lie in seams is sewn on before these, while its piece lies flat.

var pocketWords = anyOf(`pockets?`)

// isPocket reports whether a piece is called one.
func isPocket(p *piece.Piece) bool {
	return pocketWords.MatchString(p.Words())
}

// isUnjoined reports whether a piece is sewn to others and no seam says how.
func (w *work) isUnjoined(p *piece.Piece) bool {
	joined := slices.ContainsFunc(w.pattern.Seams, func(s garment.Seam) bool {
		return slices.ContainsFunc(s.Courses(), func(c garment.Course) bool { return c.Piece.Key == p.Key })
	})
	return !joined && len(w.pattern.Pieces) > 1 && (len(w.pattern.Seams) > 0 || isPocket(p))
}

// unjoined are the pieces that no seam joins: pockets, and others.
func (w *work) unjoined() (pockets, others []*piece.Piece) {
	for i := range w.pattern.Pieces {
		p := &w.pattern.Pieces[i]
		switch {
		case !w.isUnjoined(p):
		case isPocket(p):
			pockets = append(pockets, p)
		default:
			others = append(others, p)
		}
	}
	return pockets, others
}

// liesOn reports whether something runs along some pieces alone.
func liesOn(on garment.SewnOn, pieces []*piece.Piece) bool {
	return !slices.ContainsFunc(on.Courses, func(c garment.Course) bool {
		return !slices.ContainsFunc(pieces, func(p *piece.Piece) bool { return p.Key == c.Piece.Key })
	})
}

// isInserted reports whether something lies on lines inside pieces alone, none of which goes on
// over a seam, and ends at an edge that a seam joins, which holds its end: it is sewn on before that.
func (w *work) isInserted(on garment.SewnOn) bool {
	held := false
	for _, c := range on.Courses {
		ends := c.EndEdges()
		if ends == nil {
			return false
		}
		for _, s := range w.pattern.Seams {
			of := func(other garment.Course) bool {
				return other.Piece.Key == c.Piece.Key && slices.Contains(ends, other.Key)
			}
			beyond := func(other garment.Course) bool {
				return slices.ContainsFunc(on.Courses, func(o garment.Course) bool {
					return o.Piece.Key == other.Piece.Key && slices.Contains(o.EndEdges(), other.Key)
				})
			}
			for i, side := range s.Sides {
				if slices.ContainsFunc(side.Courses, of) {
					if slices.ContainsFunc(s.Sides[1-i].Courses, beyond) {
						return false
					}
					held = true
				}
			}
		}
	}
	return held
}

// sewnInPlace adds the hems and the trims of pieces that no seam joins, and that they are sewn
// in their place.
func (w *work) sewnInPlace(pieces []*piece.Piece) {
	var hems, places []step
	for _, p := range pieces {
		for _, e := range p.Edges {
			if e.Hem > 0 {
				hems = append(hems, w.hem(p, e))
			}
		}
		do := "Sew in its place"
		if p.Cut > 1 {
			do = "Sew in their places"
		}
		if stringWords.MatchString(p.Words()) {
			do = "Make, and s" + do[1:]
		}
		places = append(places, step{do: do + ":", number: wording.Counted(p.Cut, "piece"), piece: p.Name})
	}
	w.addSteps(hems)
	w.sewnOn(func(on garment.SewnOn) bool { return liesOn(on, pieces) })
	w.addSteps(places)
}

// closed adds that the garment is closed where it opens, with how long each edge there is.
func (w *work) closed() {
	for _, o := range w.pattern.Openings() {
		e := o.Piece.Edges[o.Edge]
		do, lines := "Close "+o.Title()+", edge to edge", []string{e.Key}
		if o.Closed != "" {
			do, lines = fmt.Sprintf("Close %s, with one %q on the other", o.Title(), o.Closed), []string{o.Closed}
		}
		w.add(do, w.pattern.Unit.Amount(e.FinishedLength).String()+" long", w.drawn([]string{o.Piece.Name}))
		w.last().Lines = lines
	}
}

// sewnOn adds those trims, ruffles and bindings that are wanted, each with how long it is cut.
func (w *work) sewnOn(wanted func(garment.SewnOn) bool) {
	add := func(do, number string, on garment.SewnOn) {
		if !wanted(on) {
			return
		}
		var names, lines []string
		for _, c := range on.Courses {
			names, lines = append(names, c.Piece.Name), append(lines, c.Key)
		}
		slices.Sort(names)
		w.add(do, number, w.drawn(slices.Compact(names)))
		w.last().Lines = lines
	}
	for _, t := range w.pattern.Trims {
		var long []string
		for _, l := range t.Lengths {
			long = append(long, several(l.Times, l.Total.String()))
		}
		add("Cut the "+named(t.Key, t.Kind.String())+", and sew it on", strings.Join(long, ", "), t.SewnOn)
	}
	for _, r := range w.pattern.Ruffles {
		var long []string
		for _, l := range r.Lengths {
			long = append(long, several(l.Times, l.Length.String()+" to "+l.Line.String()))
		}
		add("Gather the "+named(r.Key, "ruffle")+", and sew it on", strings.Join(long, ", "), r.SewnOn)
	}
	for _, b := range w.pattern.Bindings {
		var long []string
		for _, l := range b.Lengths {
			long = append(long, several(l.Times, l.Length.String()))
		}
		add("Cut the "+named(b.Key, "binding")+" on the bias, and sew it on", strings.Join(long, ", "), b.SewnOn)
	}
}

// several is a length that is cut so many times.
func several(times int, long string) string {
	if times == 1 {
		return long
	}
	return fmt.Sprintf("%d of %s", times, long)
}

// named is a key with what it is behind it, unless it says so itself.
func named(key, what string) string {
	if slices.Contains(strings.Fields(wording.InWords(key)), what) {
		return key
	}
	return key + " " + what
}
