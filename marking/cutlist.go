package marking

import (
	"fmt"
	"math"
	"strings"

	"tuckmark/marking/plane"
)

// Rules of this file. What is torn is torn first, while the cloth has its straight
// ends: blocks to be tucked, strips for ruffles, squares for bias strips, and pieces
// that are nothing but rectangles. The rest is cut round its outline.

// Cutting is something that is torn or cut from the cloth.
type Cutting struct {
	Name   string
	What   CutKind
	Count  int
	OnFold bool // cut on the fold: the sizes are those of the half that is drawn
	// Across and Along are its size over all, across the cloth and along it.
	Across, Along Amount
}

// CutKind is what is made of something that is torn or cut.
type CutKind int

// The kinds.
const (
	CutPiece CutKind = iota
	TornRectangle
	TornBlock
	TornStrips
	BiasSquare
	BiasCloth // that strips are cut from at a slant, from selvage to selvage
)

// cutKinds has the word of each kind for a script, what it is called in the figures,
// and what it is for where it is no piece.
var cutKinds = [...]struct{ word, title, use string }{
	CutPiece:      {word: "piece"},
	TornRectangle: {word: "rectangle", title: ", a rectangle"},
	TornBlock:     {word: "block", title: ", block to be tucked"},
	TornStrips:    {word: "strip", title: ", strips", use: "ruffle"},
	BiasSquare:    {word: "square", title: ", bias square", use: "binding"},
	BiasCloth:     {word: "bias", title: ", cloth for the bias", use: "binding"},
}

// MarshalText gives the word for a script.
func (k CutKind) MarshalText() ([]byte, error) { return []byte(cutKinds[k].word), nil }

// cutList lists what is torn, and then what is cut.
func cutList(p *Pattern) (torn, cut []Cutting) {
	var whole []Cutting // rectangles come after blocks, strips and squares
	for i := range p.Pieces {
		piece := &p.Pieces[i]
		if b := piece.Block; b != nil {
			across, along := b.onCloth(piece)
			torn = append(torn, Cutting{
				Name: piece.Name, What: TornBlock, Count: b.Cut, Across: p.Unit.atLeast(across), Along: p.Unit.atLeast(along),
			})
			continue
		}
		c := Cutting{Name: piece.Name, What: CutPiece, Count: piece.Cut, OnFold: piece.OnFold}
		outline, isTorn := piece.tornWhole()
		across, along := extentBy(outline, piece.grainDirection)
		c.Across, c.Along = p.Unit.amount(across), p.Unit.amount(along)
		if isTorn {
			c.What, c.OnFold = TornRectangle, false
			whole = append(whole, c)
			continue
		}
		cut = append(cut, c)
	}
	for _, r := range p.Ruffles {
		if r.Strips > 0 {
			torn = append(torn, Cutting{Name: r.Key, What: TornStrips, Count: r.Strips, Across: p.Unit.chosen(p.ClothWidth), Along: r.CutDepth})
		}
	}
	for _, b := range p.Bindings {
		if b.Square.MM > 0 {
			torn = append(torn, Cutting{Name: b.Key, What: BiasSquare, Count: 1, Across: b.Square, Along: b.Square})
		} else {
			torn = append(torn, Cutting{Name: b.Key, What: BiasCloth, Count: 1, Across: p.Unit.chosen(p.ClothWidth), Along: b.Along})
		}
	}
	return append(torn, whole...), cut
}

// tornWhole returns the outline that is cut of a piece, and reports whether it is a
// rectangle that can be torn along its threads: of one on the fold, the whole.
func (p *Piece) tornWhole() (outline plane.Path, torn bool) {
	outline = p.flat.outline.path
	if axis := p.foldEdge(); axis >= 0 && isRectangle(outline) {
		edge := p.flatEdge(axis)
		outline = wholeOutline(outline, edge[0], inward(edge))
	}
	if isRectangle(outline) && squareTo(outline, p.grainDirection) {
		return outline, true
	}
	return p.flat.outline.path, false
}

// flatEdge returns an edge that is one straight part on the flat cloth.
func (p *Piece) flatEdge(edge int) plane.Path {
	for _, run := range p.flat.outline.runs() {
		if run.edge == edge {
			return run.path
		}
	}
	return nil
}

// extentBy returns the size of a shape across a direction and along it.
func extentBy(p plane.Path, direction plane.Point) (across, along float64) {
	us, vs := base{along: direction, out: direction.Left()}.extent(p)
	return us.to - us.from, vs.to - vs.from
}

// isRectangle reports whether an outline has four corners and all of them square.
func isRectangle(outline plane.Path) bool {
	corners := ringCorners(outline)
	if len(corners) != 4 {
		return false
	}
	for i := range corners {
		a, b, c := corners[i], corners[(i+1)%4], corners[(i+2)%4]
		// How far the farther end of one side lies off square to the other.
		if math.Abs(b.Sub(a).Unit().Dot(c.Sub(b))) > straightness {
			return false
		}
	}
	return true
}

// ringCorners returns the corners of a closed outline, without points on straight
// parts of it.
func ringCorners(outline plane.Path) plane.Path {
	ring := outline[:len(outline)-1]
	n := len(ring)
	var corners plane.Path
	for i, q := range ring {
		before, after := ring[(i+n-1)%n], ring[(i+1)%n]
		if away := math.Abs(after.Sub(before).Unit().Cross(q.Sub(before))); away > rounding {
			corners = append(corners, q)
		}
	}
	return corners
}

// squareTo reports whether a rectangle lies along a direction.
func squareTo(outline plane.Path, direction plane.Point) bool {
	corners := ringCorners(outline)
	side := corners[1].Sub(corners[0])
	return math.Min(math.Abs(side.Dot(direction)), math.Abs(side.Cross(direction))) < straightness
}

// firstSection lists what is torn and cut.
func firstSection(p *Pattern, w Wording) Section {
	s := Section{Title: "Tear and cut first"}
	torn, cut := cutList(p)
	heads := func(what string) []string { return []string{what, "how many", "across the cloth", "along it"} }
	rows := func(list []Cutting) []Row {
		var rows []Row
		for _, c := range list {
			count := fmt.Sprint(c.Count)
			if c.OnFold {
				count += ", on the fold"
			}
			rows = append(rows, Row{Cells: []string{c.title(), count, w.cell(c.Across), w.cell(c.Along)}})
		}
		return rows
	}
	if len(torn) > 0 {
		s.Tables = append(s.Tables, Table{Heads: heads("tear"), Rows: rows(torn)})
	}
	if len(cut) > 0 {
		t := Table{Heads: heads("cut"), Rows: rows(cut)}
		for _, c := range cut {
			if c.OnFold {
				t.Lines = []Sentence{{Text: "Sizes are over all; of a piece on the fold, those of the half that is drawn."}}
			}
		}
		s.Tables = append(s.Tables, t)
	}
	for _, piece := range p.Pieces {
		if b := piece.Block; b != nil {
			s.Lines = append(s.Lines, Sentence{Text: fmt.Sprintf("%s: once it is tucked, the top edge of its block must measure %s; draw the bottom edge in to the same",
				piece.Name, w.length(p.Unit.amount(b.Top)))})
		}
	}
	if text := guessedGrain(p); text != "" {
		s.Lines = append(s.Lines, Sentence{Text: text})
	}
	for _, r := range p.Ruffles {
		if r.Strips == 0 {
			s.Lines = append(s.Lines, Sentence{Text: fmt.Sprintf("%s: tear strips %s deep; how many follows from the width of the cloth, which the file does not give", r.Key, w.length(r.CutDepth))})
		}
	}
	return s
}

// title names what is torn or cut.
func (c Cutting) title() string { return c.kind() + cutKinds[c.What].title }

// kind is its name with what it is for, where that is no piece and the name does not say
// it: a ruffle called "hem" is not the hem.
func (c Cutting) kind() string {
	use := cutKinds[c.What].use
	if strings.Contains(strings.ToLower(c.Name), use) {
		return c.Name
	}
	return c.Name + " " + use
}
