package marking

import (
	"fmt"
	"strconv"
	"strings"
)

// Check works out every line of every piece and turns a Spec into a Pattern.
// It goes on after a mistake as far as the mistake allows, and reports all it
// finds together, as Faults.
func Check(spec *Spec) (*Pattern, error) {
	pattern := &Pattern{
		Title:      spec.Title.V,
		Size:       spec.Size.V,
		Unit:       spec.Unit.V,
		ClothWidth: spec.ClothWidth.V,
		SeeThrough: spec.SeeThrough.V,
		Transfers:  usualTransfers(spec.SeeThrough),
		Sleepwear:  spec.Sleepwear,
		Sewing:     settings(spec.Sewing),
	}
	found := &findings{unit: spec.Unit.V}
	checkNames(spec, found)
	for _, ps := range spec.Pieces {
		if piece := checkPiece(ps, spec, found); piece != nil {
			pattern.Pieces = append(pattern.Pieces, *piece)
		}
	}
	if checkNamesAlong(spec, found) && len(found.list) == 0 {
		pattern.checkGarment(spec, found)
	}
	if len(found.list) > 0 {
		return nil, found.list.Sorted()
	}
	remarkOmissions(pattern, spec)
	for i := range pattern.Pieces {
		pattern.Remarks = append(pattern.Remarks, pattern.Pieces[i].remarks(spec.Unit.V)...)
	}
	pattern.remarkGarment()
	pattern.Remarks = append(pattern.Remarks, widerThanCloth(pattern)...)
	return pattern, nil
}

// remarkOmissions notes what a maker may have left out.
func remarkOmissions(p *Pattern, spec *Spec) {
	if !spec.Unit.Given() {
		p.Remarks = append(p.Remarks, Remark{Place: Place{File: spec.File}, Text: `no unit is given, so bare numbers were taken for inches; unit = "in", "cm" or "mm" says it`})
	}
	for _, piece := range p.Pieces {
		for _, e := range piece.Edges {
			if e.Allowance > 0 {
				return
			}
		}
	}
	p.Remarks = append(p.Remarks, Remark{Place: Place{File: spec.File}, Text: `no edge has an allowance or a hem, so there are no stitch lines; allowance = "3/8" at the top gives one to every edge`})
}

// checkNames looks for two pieces that would be called the same on the sheets.
func checkNames(spec *Spec, found *findings) {
	owner := map[string]string{}
	for _, ps := range spec.Pieces {
		name, at := ps.name(), ps.Name.Place
		if !ps.Name.Given() {
			at = ps.Place
		}
		if other, taken := owner[name]; taken {
			found.add(at, "give each piece a name of its own, so that they can be told apart on the sheets",
				"the piece %q is called %q as well", other, name)
			continue
		}
		owner[name] = ps.Key
	}
}

// likePiece returns the key of an earlier piece that a key may be a slip for.
func likePiece(spec *Spec, key string) string {
	var earlier []string
	for _, ps := range spec.Pieces {
		if ps.Key == key {
			break
		}
		earlier = append(earlier, ps.Key)
	}
	return nearestKey(key, earlier)
}

// checkPiece works out one piece: the outline first, then its stitch lines,
// then what refers to them. Without an outline nothing further can be said, and
// without stitch lines nothing of what is measured from them.
func checkPiece(ps PieceSpec, spec *Spec, found *findings) *Piece {
	piece := &Piece{Key: ps.Key, place: ps.Place, Name: ps.name(), Cut: 1, Layers: 1, OnFold: ps.Fold.Given(), Whole: ps.Print.V == Whole, Pair: ps.Print.V == LeftAndRight, Transfers: ps.Transfer.V, Finished: ps.Drawn.V == Finished}
	if ps.Cut.Given() {
		piece.Cut = ps.Cut.V
	}
	if ps.Layers.Given() {
		piece.Layers = ps.Layers.V
		if piece.Cut%piece.Layers != 0 {
			found.add(ps.Layers.Place, "a piece with a lining of the same shape is cut = 2, or 4 for left and right, with layers = 2",
				"%d are cut, which do not come out even in layers of %d", piece.Cut, piece.Layers)
			return nil
		}
	}
	if piece.Pair && !piece.OnFold && piece.Cut/piece.Layers < 2 {
		found.add(ps.Print.Place, "give it cut = 2 (or 4, of which 2 are layers of one), or leave the line out", "only one is cut, so there is no left and right of it")
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
	checkFolds(piece, ps, spec, piece.drawnMarks(spec.Unit.V), found)
	checkTakeUps(piece, found)
	flatGrain(piece, ps)
	return piece
}

// findings collects mistakes while the checks run.
type findings struct {
	unit Unit
	list Faults
}

// add notes a mistake. The hint may be "".
func (f *findings) add(at Place, hint, cause string, args ...any) {
	f.list = append(f.list, &Fault{Place: at, Cause: fmt.Sprintf(cause, args...), Hint: hint})
}

// mm prints a length that was worked out, as it is read on a ruler.
func (f *findings) mm(v float64) string { return f.unit.Print(v) }

// given prints a length that the file gives, as it may stand there.
func (f *findings) given(v float64) string { return f.unit.Names(v) }

// unknown notes that a name stands for nothing, and says which was likely
// meant. what is the kind of thing, such as "edge".
func (f *findings) unknown(at Place, what, name string, known []string) {
	f.add(at, meant(name, known), "there is no %s %q in this piece", what, name)
}

// meant returns the hint for a misspelt name: the nearest known one, or all
// when none is near.
func meant(name string, known []string) string {
	if near := nearestKey(name, known); near != "" {
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
func (f *findings) findEdge(p *Piece, name Text) int {
	i := p.edge(name.V)
	if i < 0 {
		f.unknown(name.Place, "edge", name.V, edgeKeys(p))
	}
	return i
}
