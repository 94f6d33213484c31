package garment

import (
	"fmt"
	"slices"
	"strings"

	"tuckmark/marking/piece"
	"tuckmark/marking/source"
)

// Rules of this file: what stands beside the pieces names their edges, as "front.neck".
// Every name must stand for something, once, that can be sewn. The names are held
// against the file as it is written, so that they are looked at also where a piece has
// mistakes of its own.

// checkNames looks at every name of everything beside the pieces.
func checkNames(spec *source.Spec, found *piece.Findings) {
	n := namesOf{spec.Names(), spec, found}
	for _, s := range spec.Seams {
		n.check(slices.Concat(s.Sides[0], s.Sides[1]), edgesOnly)
		for _, side := range s.Sides {
			checkOnce(side, found)
		}
		n.checkJoined(s)
	}
	n.checkJoinedOnce()
	along := func(names []source.Text) {
		n.check(names, edgesAndLines)
		checkOnce(names, found)
	}
	for _, s := range spec.Trims {
		along(s.Along)
	}
	for _, s := range spec.Ruffles {
		along(s.Along)
	}
	for _, s := range spec.Bindings {
		along(s.Along)
	}
}

// splitName parts "front.centre back" into the key of a piece and that of an edge,
// either of which may have points of its own. Where nothing fits, ok is false and
// the parts are those at the first point.
func splitName(name string, known func(piece, edge string) bool) (piece, edge string, ok bool) {
	for i, r := range name {
		if r == '.' && known(name[:i], name[i+1:]) {
			return name[:i], name[i+1:], true
		}
	}
	piece, edge, _ = strings.Cut(name, ".")
	return piece, edge, false
}

// mayName is what a name may stand for.
type mayName int

const (
	edgesOnly mayName = iota
	edgesAndLines
)

// namesOf are the names of a file that is looked at.
type namesOf struct {
	source.Names
	spec  *source.Spec
	found *piece.Findings
}

// check looks whether every name stands for an edge of the file, or for a
// line where it may.
func (n namesOf) check(names []source.Text, may mayName) {
	has, found := n.HasEdge, n.found
	if may == edgesAndLines {
		has = n.HasCourse
	}
	for _, name := range names {
		if found.List.Full() {
			return // a hint takes time, for each
		}
		if _, _, known := splitName(name.V, has); known {
			continue
		}
		// The name of the piece may have points too; the one that is there was meant.
		key, edge, isPiece := splitName(name.V, func(piece, _ string) bool { return n.Piece(piece) != nil })
		switch {
		case !strings.Contains(name.V, "."):
			found.Add(name.Place, `write the piece, a dot, and the edge: "front.neck"`, "%q does not say which edge of which piece", name.V)
		case !isPiece:
			found.Add(name.Place, piece.HintFor(key, pieceKeys(n.spec)), "there is no piece %q", key)
		case may == edgesAndLines:
			found.Add(name.Place, piece.HintFor(edge, keysOf(n.Piece(key), may)), "there is no edge or line %q in the piece %q", edge, key)
		case n.HasCourse(key, edge):
			found.Add(name.Place, "name the edges that are sewn together", "%q is a line inside the piece %q, and only edges are joined", edge, key)
		default:
			found.Add(name.Place, piece.HintFor(edge, keysOf(n.Piece(key), may)), "there is no edge %q in the piece %q", edge, key)
		}
	}
}

// pieceKeys lists the keys of all pieces.
func pieceKeys(spec *source.Spec) []string {
	var keys []string
	for _, p := range spec.Pieces {
		keys = append(keys, p.Key)
	}
	return keys
}

// keysOf lists what of a piece may be named.
func keysOf(p *source.PieceSpec, may mayName) []string {
	var keys []string
	for _, e := range p.Edges {
		keys = append(keys, e.Key)
	}
	if may == edgesAndLines {
		for _, l := range p.Lines {
			keys = append(keys, l.Key)
		}
	}
	return keys
}

// checkOnce looks whether an edge is named twice, and tells it once.
func checkOnce(names []source.Text, found *piece.Findings) {
	times := map[string]int{}
	for _, name := range names {
		if times[name.V]++; times[name.V] == 2 {
			found.Add(name.Place, "name it once; an edge counts for every piece that is cut", "%q is named twice", name.V)
		}
	}
}

// checkJoinedOnce looks whether two seams join the same two sides, in whatever order these and
// their edges are named. Each seam counts for every piece that is cut, so the second would be
// sewn once more.
func (n namesOf) checkJoinedOnce() {
	first := map[[2]string]string{} // the seam of two sides
	for _, s := range n.spec.Seams {
		var sides [2]string
		for i, side := range s.Sides {
			var names []string
			for _, name := range side {
				names = append(names, name.V)
			}
			slices.Sort(names)
			sides[i] = fmt.Sprintf("%q", names)
		}
		slices.Sort(sides[:])
		if other, again := first[sides]; again {
			n.found.Add(s.Join, "leave one of them out; a seam counts for every piece that is cut", "the same is joined as in seam %q", other)
			continue
		}
		first[sides] = s.Key
	}
}

// checkJoined looks whether the edges of a seam can be sewn: none of them lies on the
// fold of the cloth, and one that is joined with itself is there twice. What names
// nothing is told elsewhere.
func (n namesOf) checkJoined(s source.SeamSpec) {
	found := n.found
	named := func(side []source.Text, name source.Text) bool {
		return slices.ContainsFunc(side, func(t source.Text) bool { return t.V == name.V })
	}
	for i, side := range s.Sides {
		for _, name := range side {
			piece, edge, known := splitName(name.V, n.HasEdge)
			if !known || i == 1 && named(s.Sides[0], name) {
				continue
			}
			switch ps := n.Piece(piece); {
			case ps.Fold.V == edge:
				found.Add(name.Place, "name another edge; for a seam there, leave fold out of the piece and write cut = 2",
					"%q lies on the fold of the cloth, where nothing is sewn", name.V)
			case !ps.Fold.Given() && max(1, ps.Cut.V)/max(1, ps.Layers.V) < 2 && named(s.Sides[1], name) && i == 0:
				found.Add(name.Place, "name the edge that it is sewn to, or write cut = 2 for the piece",
					"%q is joined with itself, but there is only one of it", name.V)
			}
		}
	}
}
