package sheet

import (
	"slices"

	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/source"
)

// Rules of this file: which words the folds of a row have on each sheet. On the block, for
// cloth that is ruled, the distances from the base stand at the torn edge; on a piece, whose
// edge is not level, below the ends of its tucks. How deep they end stands there too where
// that is not the same for all.

// creased is a row with the fold lines of its tucks or pleats as a sheet has them, each from
// where it begins to where it ends; of a box pleat the first.
type creased struct {
	piece.FoldRow
	folds []piece.Fold
	lines []plane.Path
	out   plane.Point // from the base to the folds
}

// add adds a fold line of the row.
func (c *creased) add(f piece.Fold, line plane.Path) {
	if n := len(c.folds); n == 0 || c.folds[n-1].Number != f.Number {
		c.folds, c.lines = append(c.folds, f), append(c.lines, line)
	}
}

// told returns what is told of the folds at one of the ends of their lines, 0 or 1.
func (c creased) told(end int, text func(i int, f piece.Fold) string) []toldFold {
	var all []toldFold
	for i, f := range c.folds {
		all = append(all, toldFold{f.Number + 1, c.PerGroup, endsOf(c.lines[i])[end], text(i, f)})
	}
	return all
}

// numbered has no text of its own yet.
func numbered(int, piece.Fold) string { return "" }

// fromBase tells how far a fold line lies from the base.
func fromBase(unit length.Unit) func(int, piece.Fold) string {
	return func(_ int, f piece.Fold) string { return length.Bare(unit.OnRuler(f.At)) }
}

// baseOf says what the folds of a row are measured from; and how finely, where some lie
// between two steps of the ruler.
func (c creased) baseOf(unit length.Unit) string {
	base := "from " + c.Base.Name
	if slices.ContainsFunc(c.folds, func(f piece.Fold) bool { return unit.Amount(f.At).IsOff() }) {
		base += ", to the nearest " + unit.OnRuler(unit.Ruler())
	}
	return base
}

// onBlock returns a row as the tuck sheet has it. A tuck on the centre has its fold there,
// which is named.
func onBlock(b *piece.Block, r piece.FoldRow) creased {
	c := creased{FoldRow: r, out: b.At(b.FlatU(r, 1), 0).Sub(b.At(b.FlatU(r, 0), 0))}
	for _, f := range r.Folds {
		u := b.FlatU(r, f.At)
		if b.Group.OnAxis && u < piece.SamePoint {
			continue
		}
		c.add(f, b.Lengthwise(u, piece.Stretch{From: b.First(r, f), To: b.Level(r, f)}))
	}
	return c
}

// tellBlockRow writes the words of a row on its tuck sheet.
func tellBlockRow(m *mark.Marking, b *piece.Block, r piece.FoldRow, unit length.Unit) {
	c := onBlock(b, r)
	w := wordsFor(m, r, c.out)
	above := w.row(c.told(0, fromBase(unit)), w.number(c.told(0, numbered)), c.baseOf(unit))
	next := w.number(c.told(1, numbered))
	next = w.depths(c, blockDepths(b, r), above, next, unit)
	if r.Makes == piece.TuckFolds {
		w.press(c, next)
	}
}

// onPiece returns a row as it lies on the flat piece.
func onPiece(r piece.FoldRow) creased {
	c := creased{FoldRow: r, out: r.Base.Out}
	for _, f := range r.Folds {
		parts := f.Lines[0].Flat
		if len(parts) == 0 {
			continue // on the very edge of the piece
		}
		last := parts[len(parts)-1]
		line := plane.Path{parts[0][0], last[len(last)-1]}
		if line[1].Sub(line[0]).Dot(r.Downward()) < 0 {
			line = line.Reversed()
		}
		c.add(f, line)
	}
	return c
}

// tellRow writes the words of a row on the sheet of its flat piece, and returns the row as it lies
// there, and where more may stand below its ends.
func tellRow(m *mark.Marking, p *piece.Piece, r piece.FoldRow, unit length.Unit) (c creased, next float64) {
	c = onPiece(r)
	w := wordsFor(m, r, c.out)
	for end := range 2 {
		next = w.number(slices.DeleteFunc(c.told(end, numbered), func(f toldFold) bool { return p.OnFlatFold(f.end.at) }))
	}
	above, beside := next, next+headWide+betweenWords
	if ended := r.Folds[0].End.Given; ended {
		next = w.row(c.told(1, fromBase(unit)), next, c.baseOf(unit))
	}
	d := pieceDepths(p, r)
	if !level(d.ends) {
		next = max(next, beside)
	}
	next = w.depths(c, d, above, next, unit)
	c.measureEnd(m, d, unit)
	return c, next
}

// tellRows writes the words of all rows on the sheet of their flat piece.
func tellRows(m *mark.Marking, p *piece.Piece, unit length.Unit) {
	for _, t := range p.TuckRows {
		c, below := tellRow(m, p, t.FoldRow, unit)
		if t.Press != source.Unpressed {
			wordsFor(m, t.FoldRow, c.out).press(c, below)
		}
	}
	for _, pleats := range p.PleatRows {
		tellRow(m, p, pleats.FoldRow, unit)
	}
}

// besideHole is how far the number of a tuck stands from its end on a template, in mm: clear
// of the hole there.
const besideHole = 1.5

// tellInside writes the words of all rows on the template of a piece, at the ends that the
// lines have in its outline.
func tellInside(m *mark.Marking, p *piece.Piece, outline *plane.Tree, unit length.Unit) {
	for _, r := range p.FoldRows() {
		c := onPiece(r).within(outline)
		w := wordsFor(m, r, c.out)
		next := 0.0
		for end := range 2 {
			folds := slices.DeleteFunc(c.told(end, numbered), func(f toldFold) bool { return p.OnFlatFold(f.end.at) })
			for i := range folds {
				folds[i].end.at = folds[i].end.at.Add(folds[i].end.out.Mul(besideHole))
			}
			next = besideHole + w.number(folds)
		}
		if r.Folds[0].End.Given {
			w.row(c.told(1, fromBase(unit)), next, c.baseOf(unit))
		}
	}
}

// within returns the row with what of its lines lies in an outline, each from the first
// place to the last; without those of which nothing does.
func (c creased) within(outline *plane.Tree) creased {
	cut := creased{FoldRow: c.FoldRow, out: c.out}
	for i, f := range c.folds {
		parts := piece.InsideStretches(outline, plane.NewTree(c.lines[i]))
		if len(parts) == 0 {
			continue
		}
		if line := c.lines[i].Between(parts[0].From, parts[len(parts)-1].To); line.Length() > piece.LeastLine {
			cut.add(f, line)
		}
	}
	return cut
}
