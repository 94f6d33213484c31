package piece

import (
	"slices"
	"strings"

	"tuckmark/marking/source"
)

// Rules of this file: where an outline is wrong as it is read, and a fraction in it may lack
// a space, the hint says so.

// readings are the places where the point of an end may be meant to lie, the first of
// them as it is read.
func (e edgeEnd) readings(ps source.PieceSpec) []source.Other {
	points := ps.Edges[e.edge].Points
	i := 0
	if e.last {
		i = len(points.V) - 1
	}
	return append([]source.Other{{V: points.V[i]}}, points.Others(i)...)
}

// metWithASpace returns the open end that another one meets if a space is missing in a
// fraction of either, and how that is to be written; ok is false where there is none.
func metWithASpace(ps source.PieceSpec, e edgeEnd, open []edgeEnd, told map[edgeEnd]bool) (o edgeEnd, by string, ok bool) {
	for _, o := range open {
		if o.edge == e.edge || told[o] {
			continue
		}
		for _, a := range e.readings(ps) {
			for _, b := range o.readings(ps) {
				if a.V.Distance(b.V) <= cornerTolerance {
					ways := slices.DeleteFunc([]string{a.By, b.By}, func(by string) bool { return by == "" })
					return o, strings.Join(slices.Compact(ways), " and "), true
				}
			}
		}
	}
	return edgeEnd{}, "", false
}

// spaceMissing asks whether a space is missing in a fraction of a piece; it says nothing
// where none can be.
func spaceMissing(ps source.PieceSpec) string {
	for _, es := range ps.Edges {
		for i := range es.Points.V {
			if others := es.Points.Others(i); len(others) > 0 {
				return "; is a space missing, " + others[0].By + "?"
			}
		}
	}
	return ""
}
