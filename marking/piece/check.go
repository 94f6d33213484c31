package piece

import (
	"fmt"
	"strconv"
	"strings"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/source"
	"tuckmark/marking/wording"
)

// CheckNames looks for two pieces that would be called the same on the sheets.
func CheckNames(spec *source.Spec, found *Findings) {
	owner := map[string]string{}
	for _, ps := range spec.Pieces {
		name, at := ps.Title(), ps.Name.Place
		if !ps.Name.Given() {
			at = ps.Place
		}
		if other, taken := owner[name]; taken {
			found.Add(at, "give each piece a name of its own, so that they can be told apart on the sheets",
				"the piece %q is called %q as well", other, name)
			continue
		}
		owner[name] = ps.Key
	}
}

// likePiece returns the key of an earlier piece that a key may be a slip for.
func likePiece(spec *source.Spec, key string) string {
	var earlier []string
	for _, ps := range spec.Pieces {
		if ps.Key == key {
			break
		}
		earlier = append(earlier, ps.Key)
	}
	return wording.Nearest(key, earlier)
}

// Check works out one piece: the outline first, then its stitch lines,
// then what refers to them. Without an outline nothing further can be said, and
// without stitch lines nothing of what is measured from them.
func Check(ps source.PieceSpec, spec *source.Spec, found *Findings) *Piece {
	piece := &Piece{Key: ps.Key, Place: ps.Place, Name: ps.Title(), Cut: 1, Layers: 1, OnFold: ps.Fold.Given(), Whole: ps.Print.V == source.PrintWhole, Pair: ps.Print.V == source.PrintLeftAndRight, Transfers: ps.Transfer.V, DrawnFinished: ps.Drawn.V == source.DrawnFinished}
	if ps.Cut.Given() {
		piece.Cut = ps.Cut.V
	}
	if ps.Layers.Given() {
		piece.Layers = ps.Layers.V
		if piece.Cut%piece.Layers != 0 {
			found.Add(ps.Layers.Place, "a piece with a lining of the same shape is cut = 2, or 4 for left and right, with layers = 2",
				"%d are cut, which do not come out even in layers of %d", piece.Cut, piece.Layers)
			return nil
		}
	}
	if piece.Pair && !piece.OnFold && piece.Cut/piece.Layers < 2 {
		found.Add(ps.Print.Place, "give it cut = 2 (or 4, of which 2 are layers of one), or leave the line out", "only one is cut, so there is no left and right of it")
	}
	if !checkOutline(piece, ps, spec, found) {
		return nil
	}
	if !checkStitches(piece, ps, spec.Allowance, found) {
		return nil
	}
	checkLines(piece, ps, found)
	checkGrain(piece, ps, found)
	checkPleats(piece, ps, found)
	checkNotches(piece, ps, found)
	checkFolds(piece, ps, spec, piece.DrawnMarks(spec.Unit.V), found)
	checkTakeUps(piece, found)
	flatGrain(piece, ps)
	return piece
}

// Findings collects mistakes while the checks run.
type Findings struct {
	Unit length.Unit
	List fault.List
}

// Add notes a mistake. The hint may be "".
func (f *Findings) Add(at fault.Place, hint, cause string, args ...any) {
	f.List = append(f.List, &fault.Fault{Place: at, Cause: fmt.Sprintf(cause, args...), Hint: hint})
}

// Length prints a length that was worked out, as it is read on a ruler.
func (f *Findings) Length(v float64) string { return f.Unit.Print(v) }

// Written prints a length that the file gives, as it may stand there.
func (f *Findings) Written(v float64) string { return f.Unit.Names(v) }

// unknown notes that a name stands for nothing, and says which was likely
// meant. what is the kind of thing, such as "edge".
func (f *Findings) unknown(at fault.Place, what, name string, known []string) {
	f.Add(at, Meant(name, known), "there is no %s %q in this piece", what, name)
}

// Meant returns the hint for a misspelt name: the nearest known one, or all
// when none is near.
func Meant(name string, known []string) string {
	if near := wording.Nearest(name, known); near != "" {
		return fmt.Sprintf("did you mean %q?", near)
	}
	quoted := make([]string, len(known))
	for i, k := range known {
		quoted[i] = strconv.Quote(k)
	}
	return "there is " + strings.Join(quoted, ", ")
}

// edgeKeys returns the keys of the edges of a piece.
func edgeKeys(p *Piece) []string {
	keys := make([]string, len(p.Edges))
	for i, e := range p.Edges {
		keys[i] = e.Key
	}
	return keys
}

// findEdge returns the edge a text names, or notes that there is none and
// returns -1.
func (f *Findings) findEdge(p *Piece, name source.Text) int {
	i := p.Edge(name.V)
	if i < 0 {
		f.unknown(name.Place, "edge", name.V, edgeKeys(p))
	}
	return i
}
