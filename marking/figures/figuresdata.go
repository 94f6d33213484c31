package figures

import (
	"bytes"
	"encoding/json"
	"math"

	"tuckmark/marking/garment"
	"tuckmark/marking/lay"
	"tuckmark/marking/length"
	"tuckmark/marking/piece"
)

// Rules of this file. These are the figures as data, for the scripts of somebody who
// hands sheets to others. A key keeps its meaning for good: what is new gets a new key.
// Every length is an object of mm, to a hundredth, and printed, as the figures print it;
// lists are never null.

// Figures are the numbers of a pattern as data.
type Figures struct {
	Title    string        `json:"title"`
	Size     string        `json:"size"`
	Unit     string        `json:"unit"`
	Remarks  []RemarkData  `json:"remarks"`
	Tear     []CuttingData `json:"tear"`
	Cut      []CuttingData `json:"cut"`
	Pieces   []PieceData   `json:"pieces"`
	Seams    []SeamData    `json:"seams"`
	Trims    []TrimData    `json:"trims"`
	Ruffles  []RuffleData  `json:"ruffles"`
	Bindings []BindingData `json:"bindings"`
	Cloth    *ClothData    `json:"cloth"` // null where the width of the cloth is not given
	Sewing   []SettingData `json:"sewing"`
	Cautions []string      `json:"cautions"`
}

// RemarkData is what may not be meant.
type RemarkData struct {
	Line int    `json:"line"` // of the file; 0 for the file as a whole
	Key  string `json:"key"`
	Text string `json:"text"`
}

// CuttingData is what is torn or cut.
type CuttingData struct {
	Name   string        `json:"name"`
	What   lay.CutKind   `json:"what"`
	Count  int           `json:"count"`
	OnFold bool          `json:"on_fold"`
	Across length.Amount `json:"across"`
	Along  length.Amount `json:"along"`
}

// PieceData is one piece.
type PieceData struct {
	Key       string        `json:"key"`
	Name      string        `json:"name"`
	Cut       int           `json:"cut"`
	Layers    int           `json:"layers"`
	OnFold    bool          `json:"on_fold"`
	Block     *BlockData    `json:"block"` // null where the piece is not cut from one
	Edges     []EdgeData    `json:"edges"`
	Tucks     []FoldSetData `json:"tucks"`
	Pleats    []FoldSetData `json:"pleats"`
	EdgePleat []PleatData   `json:"edge_pleats"`
}

// BlockData is the block that a piece is cut from.
type BlockData struct {
	Width  length.Amount `json:"width"`
	Length length.Amount `json:"length"`
	TakeUp length.Amount `json:"take_up"`
	Top    length.Amount `json:"top_when_sewn"`
}

// EdgeData is one edge.
type EdgeData struct {
	Key       string        `json:"key"`
	OnFold    bool          `json:"on_fold"`
	Cut       length.Amount `json:"cut"`
	Sewn      length.Amount `json:"sewn"`
	Allowance length.Amount `json:"allowance"`
	Hem       length.Amount `json:"hem"`
	Turn      length.Amount `json:"turn"`
}

// FoldSetData is a set of tucks, or of pleats across a piece.
type FoldSetData struct {
	Key    string        `json:"key"`
	Kind   string        `json:"kind"`
	Beside string        `json:"beside"`
	Width  length.Amount `json:"width"`
	Count  int           `json:"count"`
	InAll  int           `json:"in_all"`
	TakeUp length.Amount `json:"take_up_in_all"`
	Each   []FoldData    `json:"each"`
}

// FoldData is one fold.
type FoldData struct {
	Number int             `json:"number"`
	Fold   length.Amount   `json:"fold"`
	Lines  []length.Amount `json:"lines"`
	Sewn   length.Amount   `json:"when_sewn"`
}

// PleatData is one pleat in an edge.
type PleatData struct {
	Key    string        `json:"key"`
	Edge   string        `json:"edge"`
	From   string        `json:"from"`
	At     length.Amount `json:"at"`
	Depth  length.Amount `json:"depth"`
	TakeUp length.Amount `json:"take_up"`
}

// CourseData is an edge, or a line, that something runs along.
type CourseData struct {
	Piece    string        `json:"piece"`
	Edge     string        `json:"edge"`
	Times    int           `json:"times"`
	Each     length.Amount `json:"each"`
	Together length.Amount `json:"together"`
}

// SeamData is one seam.
type SeamData struct {
	Key           string           `json:"key"`
	Sides         [2][]CourseData  `json:"sides"`
	Sewn          [2]length.Amount `json:"sewn"`
	Cut           [2]length.Amount `json:"cut"`
	Difference    length.Amount    `json:"difference"`
	CutDifference *length.Amount   `json:"cut_difference"` // null where folds lie in the seam
	Ease          length.Amount    `json:"ease"`
	Within        length.Amount    `json:"within"`
	Gathered      bool             `json:"gathered"`
	Fullness      float64          `json:"fullness"`
	Matches       bool             `json:"matches"`
	CutMatches    bool             `json:"cut_matches"`
	Ends          []SeamEndData    `json:"ends"`
}

// SeamEndData is one end of a seam.
type SeamEndData struct {
	Neighbours [2]string      `json:"neighbours"`
	Jog        length.Amount  `json:"jog"`
	CutJog     *length.Amount `json:"cut_jog"` // null where it is not known
	Past       int            `json:"past"`
	CutPast    int            `json:"cut_past"`
	Bend       float64        `json:"bend_degrees"`
}

// TrimData is one trim.
type TrimData struct {
	Key       string          `json:"key"`
	Kind      string          `json:"kind"`
	Width     length.Amount   `json:"width"`
	Fullness  float64         `json:"fullness"`
	Along     []CourseData    `json:"along"`
	Line      length.Amount   `json:"line"`
	Gathered  length.Amount   `json:"gathered"`
	Corners   []CornerData    `json:"corners"`
	Joins     int             `json:"joins"`
	JoinTakes length.Amount   `json:"join_takes"`
	Total     length.Amount   `json:"total"`
	Buy       length.Purchase `json:"buy"`
}

// CornerData is an outside corner of a trim.
type CornerData struct {
	Piece string        `json:"piece"`
	Turn  float64       `json:"turn_degrees"`
	Times int           `json:"times"`
	Takes length.Amount `json:"takes"`
}

// RuffleData is one ruffle.
type RuffleData struct {
	Key           string          `json:"key"`
	Fullness      float64         `json:"fullness"`
	Along         []CourseData    `json:"along"`
	Edge          length.Amount   `json:"edge"`
	Length        length.Amount   `json:"length"`
	Depth         length.Amount   `json:"depth"`
	Hem           length.Amount   `json:"hem"`
	Turn          length.Amount   `json:"turn"`
	Seam          length.Amount   `json:"seam"`
	CutDepth      length.Amount   `json:"cut_depth"`
	Strips        int             `json:"strips"` // 0 where the width of the cloth is not given
	Joining       length.Amount   `json:"joining"`
	Joins         []length.Amount `json:"joins"`
	JoinsFrom     string          `json:"joins_from"`
	QuarterEdge   length.Amount   `json:"quarter_of_edge"`
	QuarterRuffle length.Amount   `json:"quarter_of_ruffle"`
}

// BindingData is one binding.
type BindingData struct {
	Key     string         `json:"key"`
	Fold    string         `json:"fold"`
	Along   []CourseData   `json:"along"`
	Edge    length.Amount  `json:"edge"`
	Width   length.Amount  `json:"width"`
	Cut     length.Amount  `json:"cut_width"`
	Joins   int            `json:"joins"`
	Ends    length.Amount  `json:"join_takes"`
	Length  length.Amount  `json:"length"`
	Strips  int            `json:"strips"`
	Joining length.Amount  `json:"joining"`
	Square  *length.Amount `json:"square"` // null where it is cut from selvage to selvage
	Cloth   *length.Amount `json:"cloth"`  // null where it is cut from a square
}

// ClothData is the cloth to buy.
type ClothData struct {
	Width   length.Amount   `json:"width"`
	Length  length.Amount   `json:"length"`
	Buy     length.Purchase `json:"buy"`
	TooWide []string        `json:"too_wide"`
	Parts   []PartData      `json:"parts"`
}

// PartData is a stretch of the lay.
type PartData struct {
	Folded bool          `json:"folded"`
	From   length.Amount `json:"from"`
	To     length.Amount `json:"to"`
	Pieces []LaidData    `json:"pieces"`
}

// LaidData is one thing that lies on the cloth: the box around it, from the fold or the
// left selvage and from the beginning of the cloth.
type LaidData struct {
	Name   string        `json:"name"`
	OnFold bool          `json:"on_fold"`
	Upper  bool          `json:"upper_layer_only"`
	Left   length.Amount `json:"left"`
	Right  length.Amount `json:"right"`
	From   length.Amount `json:"from"`
	To     length.Amount `json:"to"`
}

// SettingData is one thing noted of how the garment is sewn.
type SettingData struct {
	Name  string `json:"name"`
	Value string `json:"value"`
}

// JSON gives the figures of a pattern as data: as text, indented, with a line end behind
// it.
func JSON(p *garment.Pattern) []byte {
	f := Of(p)
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	if err := e.Encode(f); err != nil {
		panic("figures are plain data: " + err.Error()) // no value of them can fail
	}
	return b.Bytes()
}

// Of returns the numbers of the pattern as data.
func Of(p *garment.Pattern) Figures {
	f := Figures{
		Title: p.Title, Size: p.Size, Unit: p.Unit.String(), Cautions: cautionsOf(p),
		Remarks: []RemarkData{}, Pieces: []PieceData{}, Seams: []SeamData{}, Trims: []TrimData{},
		Ruffles: []RuffleData{}, Bindings: []BindingData{}, Sewing: []SettingData{},
	}
	for _, r := range p.Remarks {
		f.Remarks = append(f.Remarks, RemarkData{r.Line, r.Path, r.Text})
	}
	torn, cut := lay.Cuttings(p)
	f.Tear, f.Cut = cuttingData(torn), cuttingData(cut)
	for i := range p.Pieces {
		f.Pieces = append(f.Pieces, pieceData(&p.Pieces[i], p.Unit))
	}
	for _, s := range p.Seams {
		f.Seams = append(f.Seams, seamData(s))
	}
	for _, t := range p.Trims {
		f.Trims = append(f.Trims, trimData(t, p.Unit))
	}
	for _, r := range p.Ruffles {
		f.Ruffles = append(f.Ruffles, ruffleData(r))
	}
	for _, b := range p.Bindings {
		f.Bindings = append(f.Bindings, bindingData(b))
	}
	if cloth := lay.Of(p); cloth != nil {
		f.Cloth = clothData(*cloth, p.Unit)
	}
	for _, s := range p.Sewing {
		f.Sewing = append(f.Sewing, SettingData(s))
	}
	return f
}

func cuttingData(list []lay.Cutting) []CuttingData {
	all := []CuttingData{}
	for _, c := range list {
		all = append(all, CuttingData(c))
	}
	return all
}

func pieceData(p *piece.Piece, unit length.Unit) PieceData {
	d := PieceData{
		Key: p.Key, Name: p.Name, Cut: p.Cut, Layers: p.Layers, OnFold: p.OnFold,
		Edges: []EdgeData{}, Tucks: []FoldSetData{}, Pleats: []FoldSetData{}, EdgePleat: []PleatData{},
	}
	if b := p.Block; b != nil {
		d.Block = &BlockData{unit.AtLeast(b.Width), unit.AtLeast(b.Length), unit.Amount(b.TakeUp), unit.Amount(b.Top)}
	}
	for _, e := range edgeFigures(p, unit) {
		d.Edges = append(d.Edges, EdgeData{
			Key: e.Key, OnFold: e.edge.OnFold, Cut: e.Cut, Sewn: e.Sewn,
			Allowance: unit.Chosen(e.edge.Allowance), Hem: unit.Chosen(e.edge.Hem), Turn: unit.Chosen(e.edge.Turn),
		})
	}
	for _, t := range p.TuckRows {
		d.Tucks = append(d.Tucks, foldSetData(t.FoldRow, "tuck", t.Width, tuckPlaces(t, unit), unit))
	}
	for _, pl := range p.PleatRows {
		d.Pleats = append(d.Pleats, foldSetData(pl.FoldRow, pl.Kind.String(), pl.Depth, pleatingPlaces(pl, unit), unit))
	}
	for _, pl := range p.EdgePleats {
		d.EdgePleat = append(d.EdgePleat, PleatData{
			Key: pl.Key, Edge: p.Edges[pl.Edge].Key, From: pl.From,
			At: unit.Amount(pl.At).AsRead(), Depth: unit.Chosen(pl.Depth), TakeUp: unit.Amount(pl.TakeUp()),
		})
	}
	return d
}

func foldSetData(r piece.FoldRow, kind string, width float64, places []FoldPlace, unit length.Unit) FoldSetData {
	d := FoldSetData{
		Key: r.Key, Kind: kind, Beside: r.Base.Name, Width: unit.Chosen(width),
		Count: r.Count, InAll: r.InAll(), TakeUp: unit.Amount(r.Taken()), Each: []FoldData{},
	}
	for _, p := range places {
		lines := []length.Amount{}
		for _, l := range p.Others {
			lines = append(lines, l.AsRead())
		}
		d.Each = append(d.Each, FoldData{Number: p.Number, Fold: p.Fold.AsRead(), Lines: lines, Sewn: p.Sewn})
	}
	return d
}

func courseData(courses []garment.Course) []CourseData {
	all := []CourseData{}
	for _, c := range courses {
		all = append(all, CourseData{c.Piece.Key, c.Key, c.Times, c.Length, c.Whole()})
	}
	return all
}

func seamData(s garment.Seam) SeamData {
	a, b := s.Sides[0], s.Sides[1]
	d := SeamData{
		Key: s.Key, Sides: [2][]CourseData{courseData(a.Courses), courseData(b.Courses)},
		Sewn: [2]length.Amount{a.Sewn, b.Sewn}, Cut: [2]length.Amount{a.Cut, b.Cut},
		Difference: s.Difference, Ease: s.Ease, Within: s.Within, Gathered: s.Gathered,
		Fullness: length.Hundredth(s.Fullness()), Matches: s.Matches(), CutMatches: s.CutMatches(), Ends: []SeamEndData{},
	}
	if s.Plain {
		d.CutDifference = &s.CutDifference
	}
	for _, e := range s.Ends {
		end := SeamEndData{Neighbours: e.Neighbours, Jog: e.Jog, Past: e.Past, CutPast: e.CutPast, Bend: math.Round(e.Bend*10)/10 + 0}
		if e.CutJogKnown {
			end.CutJog = &e.CutJog
		}
		d.Ends = append(d.Ends, end)
	}
	return d
}

func trimData(t garment.Trim, unit length.Unit) TrimData {
	d := TrimData{
		Key: t.Key, Kind: t.Kind.String(), Width: unit.Chosen(t.Width), Fullness: t.Fullness, Along: courseData(t.Courses),
		Line: t.Line, Gathered: t.Gathered, Corners: []CornerData{}, Joins: t.Joins, JoinTakes: t.JoinTakes,
		Total: t.Total, Buy: t.Total.Buy(),
	}
	for _, c := range t.Corners {
		d.Corners = append(d.Corners, CornerData{c.Piece, math.Round(c.Turn*10) / 10, c.Times, c.Takes})
	}
	return d
}

func ruffleData(r garment.Ruffle) RuffleData {
	d := RuffleData{
		Key: r.Key, Fullness: r.Fullness, Along: courseData(r.Courses), Edge: r.Edge, Length: r.Length,
		Depth: r.Depth, Hem: r.Hem, Turn: r.Turn, Seam: r.Seam, CutDepth: r.CutDepth, Strips: r.Strips, Joining: r.Joining, Joins: r.Joins, JoinsFrom: ruffleFrom(r),
		QuarterEdge: r.Edge.Quarter(), QuarterRuffle: r.Length.Quarter(),
	}
	if d.Joins == nil {
		d.Joins = []length.Amount{}
	}
	return d
}

func bindingData(b garment.Binding) BindingData {
	d := BindingData{
		Key: b.Key, Fold: b.Fold.String(), Along: courseData(b.Courses), Edge: b.Edge, Width: b.Width,
		Cut: b.Cut, Joins: b.Joins, Ends: b.Ends, Length: b.Length, Strips: b.Strips, Joining: b.Joining,
	}
	if b.Square.MM > 0 {
		d.Square = &b.Square
	} else {
		d.Cloth = &b.Cloth
	}
	return d
}

func clothData(cloth lay.Cloth, unit length.Unit) *ClothData {
	d := &ClothData{
		Width: unit.Chosen(cloth.Width), Length: unit.AtLeast(cloth.Length), Buy: unit.Buy(cloth.Length),
		TooWide: append([]string{}, cloth.TooWide...), Parts: []PartData{},
	}
	for _, part := range cloth.Parts {
		one := PartData{Folded: part.Folded, From: unit.Amount(part.From), To: unit.Amount(part.To), Pieces: []LaidData{}}
		for _, piece := range part.Placed {
			box := piece.Outline.Bounds()
			one.Pieces = append(one.Pieces, LaidData{
				Name: piece.Name, OnFold: piece.OnFold, Upper: piece.Upper, Left: unit.Amount(box.Min.X), Right: unit.Amount(box.Max.X),
				From: unit.Amount(box.Min.Y), To: unit.Amount(box.Max.Y),
			})
		}
		d.Parts = append(d.Parts, one)
	}
	return d
}
