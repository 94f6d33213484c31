package garment

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"tuckmark/marking/fault"
	"tuckmark/marking/piece"
	"tuckmark/marking/source"
	"tuckmark/marking/wording"
)

// Rules of this file: what a maker may have left out, which makes the garment another one
// without being a mistake: the unit, an allowance, a fold, a turn, the word for a lining.
// Names are asked where nothing else tells what an edge is.

// omissions returns what a maker may have left out of the whole file.
func omissions(p *Pattern, spec *source.Spec) []piece.Remark {
	var all []piece.Remark
	say := func(text string) {
		all = append(all, piece.Remark{Place: fault.Place{File: spec.File}, Text: text})
	}
	if !spec.Unit.Given() {
		say(`no unit is given, so bare numbers were taken for inches; unit = "in", "cm" or "mm" says it`)
	}
	if !p.hasAllowance() {
		say(`no edge has an allowance or a hem, so there are no stitch lines; allowance = "3/8" at the top gives one to every edge`)
	}
	return all
}

// atCentre matches the names of edges that lie in the middle of the body, and of those
// that are called after the fold.
var atCentre = wording.FormOf(`^(?:centre|center|mid|middle)(?:[ -]?(?:front|back))?(?: line)?$|^c\.? ?[fb]\.?$|\bfold\b`)

// oneOfTwo matches the names of pieces of which one side of the body has one.
var oneOfTwo = wording.FormOf(`\b(?:left|right|half)\b`)

// noFold says of a piece that is cut once that it makes one half only: an edge that is
// called after the centre lies on no fold, has no hem and is sewn to nothing.
func (p *Pattern) noFold(one *piece.Piece) []piece.Remark {
	if one.OnFold || one.Times() > 1 || oneOfTwo.MatchString(one.Words()) {
		return nil
	}
	for i, e := range one.Edges {
		another := func(o piece.Edge) bool {
			return o.Key != e.Key && calls(o.Key, strings.ToLower(e.Key))
		}
		if e.Hem > 0 || !atCentre.MatchString(wording.InWords(e.Key)) || e.Given.Straightness() > piece.Straightness ||
			slices.ContainsFunc(one.Edges, another) || p.isSewn(one, i) {
			continue
		}
		in := piece.Inward(e.Given)
		us, _ := piece.Frame{Origin: e.Given[0], Out: in, Along: in.Left()}.Extent(one.Outline)
		return []piece.Remark{{Place: e.Place, Text: fmt.Sprintf(
			"%q lies on no fold, nothing is sewn to it, and the piece is cut once: that makes one half, %s wide; fold = %q makes both in one, cut = 2 makes two",
			e.Key, p.Unit.OnRuler(us.To), e.Key)}}
	}
	return nil
}

// isSewn reports whether an edge of a piece is joined to another, or has something sewn
// along it.
func (p *Pattern) isSewn(one *piece.Piece, edge int) bool {
	e := edgeOf{one, edge}
	return seams(p.Seams).joins(e) || slices.ContainsFunc(p.AllSewnOn(), func(s SewnOn) bool { return slices.ContainsFunc(s.Courses, e.isRun) })
}

// AllSewnOn returns all that is sewn to the garment: trims, ruffles and bindings.
func (p *Pattern) AllSewnOn() []SewnOn {
	var all []SewnOn
	for _, t := range p.Trims {
		all = append(all, t.SewnOn)
	}
	for _, r := range p.Ruffles {
		all = append(all, r.SewnOn)
	}
	for _, b := range p.Bindings {
		all = append(all, b.SewnOn)
	}
	return all
}

// noAllowance says which edges of a seam have no allowance; "" where all have, or where
// none of the garment has any, which is said of the whole file.
func (p *Pattern) noAllowance(s Seam) string {
	if !p.hasAllowance() {
		return ""
	}
	var bare []string
	most := 0.0
	for _, side := range s.Sides {
		for _, c := range side.Courses {
			e := c.drawn()
			most = max(most, e.Allowance)
			if name := wording.Quoted(c.Piece.Key + "." + c.Key); e.Allowance == 0 && !e.OnFold && !slices.Contains(bare, name) {
				bare = append(bare, name)
			}
		}
	}
	if len(bare) == 0 {
		return ""
	}
	has, its := "has", "its cut edge"
	if len(bare) > 1 {
		has, its = "have", "their cut edges"
	}
	text := fmt.Sprintf("%s %s no allowance, and would be sewn on %s", wording.Listed(bare, "and"), has, its)
	if most > 0 {
		text += ", beside an allowance of " + p.Unit.AsWritten(most)
	}
	return text
}

// hasAllowance reports whether any edge of the garment has an allowance or a hem.
func (p *Pattern) hasAllowance() bool {
	sewn := func(e piece.Edge) bool { return e.Allowance > 0 }
	return slices.ContainsFunc(p.Pieces, func(p piece.Piece) bool { return slices.ContainsFunc(p.Edges, sewn) })
}

// hemmed is an edge with a hem, of a piece.
type hemmed struct {
	piece *piece.Piece
	piece.Edge
}

// noTurn says of hems without a turn that they go on in hems that have one.
func (p *Pattern) noTurn() []piece.Remark {
	var all []piece.Remark
	told := map[string]bool{}
	for _, pair := range p.hemsThatGoOn() {
		plain, turned := pair[0], pair[1]
		if plain.Turn > 0 {
			plain, turned = turned, plain
		}
		name := plain.piece.Key + "." + plain.Key
		if plain.Turn > 0 || turned.Turn == 0 || told[name] {
			continue
		}
		told[name] = true
		all = append(all, piece.Remark{Place: plain.Place, Text: fmt.Sprintf(
			"the hem has no turn, and %q has one of %s: folded back they take %s and %s, and the edge of this one is left raw",
			turned.piece.Key+"."+turned.Key, p.Unit.AsWritten(turned.Turn), p.Unit.AsWritten(plain.Allowance), p.Unit.AsWritten(turned.Allowance))})
	}
	return all
}

// hemsThatGoOn returns pairs of edges with hems that are one hem when they are sewn: a
// seam has them beside each other, or they have one name and one depth.
func (p *Pattern) hemsThatGoOn() [][2]hemmed {
	var pairs [][2]hemmed
	for _, s := range p.Seams {
		for _, end := range s.Ends {
			var pair [2]hemmed
			for i := range pair {
				one := s.Sides[i].Courses[0].Piece
				pair[i] = hemmed{one, one.Edges[one.EdgeNumber(end.Neighbours[i])]}
			}
			if end.GoesOver && pair[0].Hem > 0 && pair[1].Hem > 0 {
				pairs = append(pairs, pair)
			}
		}
	}
	for i := range p.Pieces {
		for j := range p.Pieces[:i] {
			a, b := &p.Pieces[j], &p.Pieces[i]
			for _, e := range b.Edges {
				if k := a.EdgeNumber(e.Key); k >= 0 && e.Hem > 0 && math.Abs(a.Edges[k].Hem-e.Hem) < piece.SamePoint {
					pairs = append(pairs, [2]hemmed{{a, a.Edges[k]}, {b, e}})
				}
			}
		}
	}
	return pairs
}

// comesOnce matches the names of pieces that a garment has one of, however often they are
// cut, and comesTwice of those it has two of. atOneCentre matches edges of pieces that come
// in front, or behind, alone: a skirt by its centre may come in both.
var (
	comesOnce   = wording.FormOf(`\b(?:collar|yoke|bib|bodice|front|back)\b`)
	atOneCentre = wording.FormOf(`^(?:centre|center|mid|middle)[ -]?(?:front|back)\b|^c\.? ?[fb]\.?$`)
	comesTwice  = wording.FormOf(`\b(?:sleeve|cuff|pocket|leg|strap|mitten|shoe|boot|bootee|tab|side)s?\b`)
)

// lined reports whether a piece is likely cut together with its lining, though the file
// does not say so: it is cut as often as two of it are, and the garment has one.
func lined(one *piece.Piece) bool {
	often := 4
	if one.OnFold {
		often = 2
	}
	names := one.Words()
	once := comesOnce.MatchString(names)
	if fold := one.EdgeOnFold(); fold >= 0 {
		once = once || atOneCentre.MatchString(wording.InWords(one.Edges[fold].Key))
	}
	return one.Layers == 1 && one.Cut == often && once && !comesTwice.MatchString(names)
}

// linings says of what is sewn on that it is reckoned for a piece and its lining.
func (p *Pattern) linings() []piece.Remark {
	var all []piece.Remark
	for _, s := range p.AllSewnOn() {
		of := map[*piece.Piece][]Course{}
		for _, c := range s.Courses {
			of[c.Piece] = append(of[c.Piece], c)
		}
		for i := range p.Pieces {
			one := &p.Pieces[i]
			own := of[one]
			if len(own) == 0 || !lined(one) {
				continue
			}
			cut := "cut 4 times"
			if one.OnFold {
				cut = "cut twice on the fold"
			}
			long := joiner{Pattern: p}.together(own)
			for k := range own {
				own[k].Times /= 2
			}
			once := joiner{Pattern: p}.together(own)
			all = append(all, piece.Remark{Place: s.place, Text: fmt.Sprintf(
				"%q is %s, and its line is reckoned for all of them, %s; is half of it the lining? layers = 2 in the piece makes it %s",
				one.Key, cut, long, once)})
		}
	}
	return all
}
