package figures

import (
	"bytes"
	"math"

	"tuckmark/marking/garment"
	"tuckmark/marking/lay"
	"tuckmark/marking/length"
	"tuckmark/marking/piece"
	"tuckmark/marking/source"
)

// Rules of this file. These are the figures as data, for the scripts of somebody who
// hands sheets to others. A key keeps its meaning for good: what is new gets a new key.
// Every length is an object of mm, to a hundredth, and printed, as the figures print it;
// lists are never null.

// JSON gives the figures of a pattern as data: as text, indented, with a line end behind
// it.
func JSON(p *garment.Pattern) []byte {
	var b bytes.Buffer
	e := newEncoder(&b)
	e.SetIndent("", "  ")
	if err := e.Encode(data{p.Unit}.pattern(p)); err != nil {
		panic("figures are plain data: " + err.Error()) // no value of them can fail
	}
	return b.Bytes()
}

// data makes objects of what a pattern has, with lengths in the unit of its file.
type data struct{ length.Unit }

func (d data) pattern(p *garment.Pattern) object {
	torn, cut := lay.Cuttings(p)
	return object{
		{"title", p.Title},
		{"size", p.Size},
		{"unit", p.Unit.String()},
		{"garments", p.Garments()}, // that are made at once
		{"remarks", each(p.Remarks, d.remark)},
		{"tear", each(torn, d.cutting)},
		{"cut", each(cut, d.cutting)},
		{"pieces", each(p.Pieces, d.piece)},
		{"seams", each(p.Seams, d.seam)},
		{"girths", each(p.Measures.Girths, d.girth)},
		{"lengths", each(p.Measures.Drops, d.drop)},
		{"trims", each(p.Trims, func(t garment.Trim) object { return d.trim(t, p.Garments()) })},
		{"ruffles", each(p.Ruffles, d.ruffle)},
		{"bindings", each(p.Bindings, d.binding)},
		{"cloth", d.cloth(lay.Of(p))},
		{"sewing", each(p.Sewing, d.setting)},
		{"cautions", cautionsOf(p)},
	}
}

func (data) remark(r piece.Remark) object {
	return object{
		{"line", r.Line}, // of the file; 0 for the file as a whole
		{"key", r.Key},
		{"text", r.Text},
	}
}

func (data) cutting(c lay.Cutting) object {
	return object{
		{"name", c.Name},
		{"what", c.What},
		{"count", c.Count},
		{"on_fold", c.OnFold},
		{"across", c.Across},
		{"along", c.Along},
	}
}

func (d data) piece(p piece.Piece) object {
	return object{
		{"key", p.Key},
		{"name", p.Name},
		{"cut", p.Cut},
		{"layers", p.Layers},
		{"on_fold", p.OnFold},
		{"block", d.block(p.Block)},
		{"edges", each(edgeFigures(&p, d.Unit), d.edge)},
		{"tucks", each(p.TuckRows, func(t piece.TuckRow) object { return d.tucks(&p, t) })},
		{"pleats", each(p.PleatRows, func(pl piece.PleatRow) object { return d.pleats(&p, pl) })},
		{"edge_pleats", each(p.EdgePleats, func(pl piece.EdgePleat) object { return d.edgePleat(pl, p.Edges[pl.Edge]) })},
	}
}

// block is null where the piece is not cut from one.
func (d data) block(b *piece.Block) object {
	if b == nil {
		return nil
	}
	return object{
		{"width", d.AtLeast(b.Width)},
		{"length", d.AtLeast(b.Length)},
		{"take_up", d.Amount(b.TakeUp)},
		{"top_when_sewn", d.Amount(b.Width - b.TakenAtTop())},
	}
}

func (d data) edge(e edgeFigure) object {
	return object{
		{"key", e.Key},
		{"on_fold", e.OnFold},
		{"cut", e.cut},
		{"sewn", e.sewn},
		{"allowance", d.Chosen(e.Allowance)},
		{"hem", d.Chosen(e.Hem)},
		{"turn", d.Chosen(e.Turn)},
	}
}

// course is an edge, or a line, that something runs along.
func (data) course(c garment.Course) object {
	return object{
		{"piece", c.Piece.Key},
		{"edge", c.Key},
		{"times", c.Times},
		{"each", c.Length},
		{"together", c.Whole()},
	}
}

func (d data) seam(s garment.Seam) object {
	a, b := s.Sides[0], s.Sides[1]
	return object{
		{"key", s.Key},
		{"sides", [2][]object{each(a.Courses, d.course), each(b.Courses, d.course)}},
		{"sewn", [2]length.Amount{a.Sewn, b.Sewn}},
		{"cut", [2]length.Amount{a.Cut, b.Cut}},
		{"difference", s.Difference},
		{"cut_difference", orNull(s.CutDifference, s.Plain)}, // null where folds lie in the seam
		{"ease", s.Ease},
		{"within", s.Within},
		{"gathered", s.Gathered},
		{"drawn_up", orNull(s.DrawnUp(), s.Gathered)}, // null where it is not gathered
		{"fullness", length.Hundredth(s.Fullness())},
		{"matches", s.Matches()},
		{"advice", s.Advice(length.Amount.String)}, // "" where they match
		{"cut_matches", s.CutMatches()},
		{"ends", each(s.Ends, d.seamEnd)},
		{"ends_told_by", s.ToldBy.String()},
	}
}

func (data) seamEnd(e garment.SeamEnd) object {
	return object{
		{"neighbours", e.Neighbours},
		{"jog", e.Jog},
		{"cut_jog", orNull(e.CutJog, e.CutJogKnown)},
		{"past", e.Past},
		{"cut_past", e.CutPast},
		{"bend_degrees", bendOrNull(e)},
	}
}

func (d data) girth(g garment.Girth) object {
	return object{
		{"level", g.Level.String()},
		{"pieces", each(g.Parts, d.girthPart)},
		{"gathered", g.Gathered},
		{"finished", g.Round},
		{"opens_at", g.Opens.Title()},
		{"closed_on", g.Opens.Closed},
		{"child", orNull(g.Fit.Child, g.Fit.Given)},
		{"ease", orNull(g.Fit.Ease, g.Fit.Given)},
	}
}

func (data) girthPart(g garment.GirthPart) object {
	return object{
		{"name", g.Piece},
		{"edge", g.Edge},
		{"times", g.Times},
		{"each", g.Each},
		{"together", g.Whole()},
	}
}

func (data) drop(d garment.Drop) object {
	return object{
		{"name", d.Piece},
		{"along", d.Along},
		{"from", d.Top},
		{"to", d.Bottom},
		{"hangs", orNull(d.Hangs.Depth, d.Hangs.Key != "")},
		{"finished", d.Length},
		{"child", orNull(d.Fit.Child, d.Fit.Given)},
		{"longer", orNull(d.Fit.Ease, d.Fit.Given)},
	}
}

func (d data) trim(t garment.Trim, garments int) object {
	return object{
		{"key", t.Key},
		{"kind", t.Kind.String()},
		{"width", d.Chosen(t.Width)},
		{"fullness", t.Fullness},
		{"along", each(t.Courses, d.course)},
		{"line", t.LineLength},
		{"gathered", t.Gathered},
		{"corners", each(t.Corners, d.bend)},
		{"curves", each(t.Curves, d.curve)},
		{"spare_in_hollows", t.Spare},
		{"spare_at_corners", t.SpareAtCorners},
		{"hollow_without_room", orNull(t.Hollow, t.Hollow.MM > 0)}, // its radius; null where there is room
		{"joins", t.Joins},
		{"join_takes", t.JoinTakes},
		{"lengths", each(t.Lengths, d.trimLength)}, // that it is cut in
		{"total", t.Total},
		{"total_of_all", t.Total.Times(garments)}, // that are made at once
		{"buy", t.Total.Times(garments).Buy()},
	}
}

func (d data) trimLength(l garment.TrimLength) object {
	return append(d.strand(l.Strand), object{
		{"gathered", l.Gathered},
		{"joins", l.Joins},
		{"total", l.Total}, // of one
	}...)
}

// strand is what one length is sewn along.
func (d data) strand(s garment.Strand) object {
	return object{
		{"times", s.Times}, // how many are alike
		{"along", each(s.Courses, d.course)},
		{"line", s.Line},
	}
}

func (data) bend(b garment.Bend) object {
	return object{
		{"piece", b.Piece},
		{"turn_degrees", tenth(b.Turn)},
		{"times", b.Times},
		{"takes", b.Takes},
	}
}

// curve is a bend of which gathers may give what it needs.
func (d data) curve(b garment.Bend) object {
	return append(d.bend(b), field{"needs", b.Needs})
}

func (d data) ruffle(r garment.Ruffle) object {
	first := r.Lengths[0]
	return object{
		{"key", r.Key},
		{"fullness", r.Fullness},
		{"along", each(r.Courses, d.course)},
		{"edge", r.LineLength},
		{"gathered", r.Gathered},
		{"corners", each(r.Corners, d.bend)},
		{"curves", each(r.Curves, d.curve)},
		{"length", r.Length},
		{"depth", r.Depth},
		{"hem", r.Hem},
		{"turn", r.Turn},
		{"seam", r.Seam},
		{"cut_depth", r.CutDepth},
		{"strips", r.Strips}, // 0 where the width of the cloth is not given
		{"joining", r.Joining},
		{"joins", append([]length.Amount{}, first.JoinPlaces...)}, // of the first length, as what follows
		{"joins_from", ruffleFrom(first)},
		{"apart", ruffles(r)},
		{"quarter_of_edge", first.Line.Quarter()},
		{"quarter_of_ruffle", first.Gathered.Quarter()}, // without what corners and curves take
		{"lengths", each(r.Lengths, d.ruffleLength)},    // that it is made in, those that are alike once
	}
}

// ruffles is how many ruffles one is; 0 where it is one.
func ruffles(r garment.Ruffle) int {
	if n := r.Count(); n > 1 {
		return n
	}
	return 0
}

func (d data) ruffleLength(r garment.RuffleLength) object {
	return append(d.strand(r.Strand), object{
		{"gathered", r.Gathered},
		{"length", r.Length}, // of one
		{"strips", r.Strips}, // of one
		{"joins", append([]length.Amount{}, r.JoinPlaces...)},
		{"joins_from", ruffleFrom(r)},
		{"quarter_of_edge", r.Line.Quarter()},
		{"quarter_of_ruffle", r.Gathered.Quarter()}, // without what corners and curves take
	}...)
}

func (d data) binding(b garment.Binding) object {
	ofSquare := b.Square.MM > 0
	return object{
		{"key", b.Key},
		{"fold", b.Fold.String()},
		{"along", each(b.Courses, d.course)},
		{"edge", b.LineLength},
		{"width", b.Width},
		{"cut_width", b.CutWidth},
		{"joins", b.Joins},
		{"join_takes", b.JoinTakes},
		{"length", b.Length},
		{"lengths", each(b.Lengths, func(l garment.BindingLength) object {
			return append(d.strand(l.Strand), field{"length", l.Length})
		})}, // that it is made in
		{"strips", b.Strips},
		{"joining", b.Joining},
		{"square", orNull(b.Square, ofSquare)}, // null where it is cut from selvage to selvage
		{"cloth", orNull(b.Cloth, !ofSquare)},  // null where it is cut from a square
	}
}

// cloth is null where the width of the cloth is not given.
func (d data) cloth(c *lay.Lay) object {
	if c == nil {
		return nil
	}
	return object{
		{"width", d.Chosen(c.Width)},
		{"length", d.AtLeast(c.Length)},
		{"buy", d.Buy(c.Length)},
		{"share_used", length.Hundredth(c.ShareUsed())},
		{"too_wide", append([]string{}, c.TooWide...)},
		{"parts", each(c.Parts, d.part)},
	}
}

// part is a stretch of the lay.
func (d data) part(p lay.Part) object {
	return object{
		{"folded", p.Folded},
		{"from", d.Amount(p.From)},
		{"to", d.Amount(p.To)},
		{"pieces", each(p.Placed, d.laid)},
	}
}

// laid is the box around what lies on the cloth, from the fold or the left selvage and
// from the beginning of the cloth.
func (d data) laid(l lay.Placed) object {
	box := l.Outline.Bounds()
	return object{
		{"name", l.Name},
		{"on_fold", l.OnFold},
		{"upper_layer_only", l.Upper},
		{"left", d.Amount(box.Min.X)},
		{"right", d.Amount(box.Max.X)},
		{"from", d.Amount(box.Min.Y)},
		{"to", d.Amount(box.Max.Y)},
	}
}

func (data) setting(s source.Setting) object {
	return object{
		{"name", s.Name},
		{"value", s.Value},
	}
}

// orNull is a length where it is known, else null.
func orNull(a length.Amount, known bool) any {
	if known {
		return a
	}
	return nil
}

// bendOrNull is how far the line turns that goes over a seam, null where none does.
func bendOrNull(e garment.SeamEnd) any {
	if e.GoesOver {
		return tenth(e.Bend)
	}
	return nil
}

// tenth rounds degrees to one decimal, with no sign at 0.
func tenth(degrees float64) float64 { return math.Round(degrees*10)/10 + 0 }
