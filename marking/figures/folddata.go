package figures

import (
	"slices"

	"tuckmark/marking/length"
	"tuckmark/marking/piece"
)

// Rules of this file: tucks and pleats as data, under the promise of data.go.

func (d data) tucks(p *piece.Piece, t piece.TuckRow) object {
	return slices.Concat(d.folds(p, t.FoldRow, "tuck", t.Width), object{{"field", d.field(p, t)}}, d.groups(t))
}

// groups is nothing but of tucks in groups.
func (d data) groups(t piece.TuckRow) object {
	if t.PerGroup == 0 {
		return nil
	}
	betweens := []length.Amount{}
	for _, between := range t.Betweens {
		betweens = append(betweens, d.Chosen(between))
	}
	return object{{"per_group", t.PerGroup}, {"betweens", betweens}}
}

// field is null where a set of tucks does not end before the neck does.
func (d data) field(p *piece.Piece, t piece.TuckRow) object {
	f, short := p.Field(t, d.Unit)
	if !short {
		return nil
	}
	return object{
		{"edge", p.Edges[f.Edge].Key},
		{"reaches", d.Amount(f.Tucks)},
		{"edge_reaches", d.Amount(f.Neck)},
		{"count_to_fill", f.Fill},
		{"wider_to_fill", orNull(d.Amount(f.Wider), !p.DrawnFinished)}, // null where the outline is drawn finished
	}
}

func (d data) pleats(p *piece.Piece, row piece.PleatRow) object {
	return d.folds(p, row.FoldRow, row.Kind.String(), row.Depth)
}

// folds is a set of tucks, or of pleats across a piece.
func (d data) folds(p *piece.Piece, r piece.FoldRow, kind string, width float64) object {
	return object{
		{"key", r.Key},
		{"kind", kind},
		{"beside", r.Base.Name},
		{"width", d.Chosen(width)},
		{"count", r.Count},
		{"in_all", r.InAll()},
		{"take_up_in_all", d.Amount(r.Taken())},
		{"each", each(foldPlaces(p, r, d.Unit), d.fold)},
		{"ends", each(foldEnds(p, r, d.Unit), func(e foldEnd) object { return foldEndData(p, e) })},
	}
}

func (data) fold(p foldPlace) object {
	return object{
		{"number", p.number},
		{"fold", p.fold},
		{"lines", p.others},
		{"when_sewn", p.sewn},
	}
}

// foldEndData is how deep a fold ends, and how long one is that begins on the piece as well.
func foldEndData(p *piece.Piece, e foldEnd) object {
	data := object{
		{"number", e.number},
		{"edge", e.edge},
		{"below_stitch_line", e.sewn},
		{"below_cut_edge", e.cut},
		{"below_torn_edge", orNull(e.torn, p.Block != nil)}, // null where the piece is not cut from a block
	}
	if e.long.MM > 0 {
		data = append(data, field{"long", e.long})
	}
	return data
}

func (d data) edgePleat(p piece.EdgePleat, in piece.Edge) object {
	return object{
		{"key", p.Key},
		{"edge", in.Key},
		{"from", p.From},
		{"at", d.Amount(p.At).AsRead()},
		{"depth", d.Chosen(p.Depth)},
		{"take_up", d.Amount(p.TakeUp())},
	}
}
