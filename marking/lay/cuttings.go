package lay

import (
	"strings"

	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
)

// Rules of this file. What is torn is torn first, while the cloth has its straight
// ends: blocks to be tucked, strips for ruffles, and pieces that are nothing but
// rectangles. The rest is cut: squares for bias strips where there is room, and pieces
// round their outline.

// Cutting is something that is torn or cut from the cloth.
type Cutting struct {
	Name   string // of its piece, or what the file calls the ruffle or binding
	What   CutKind
	Count  int  // how many, at least 1
	Tucked bool // a block that is tucked already; it is listed, for it takes its share of the cloth
	OnFold bool // cut on the fold: the sizes are those of the half that is drawn
	// Across and Along are its size over all, across the cloth and along it.
	Across, Along length.Amount
}

// CutKind is what is made of something that is torn or cut.
type CutKind int

// The kinds.
const (
	CutPiece      CutKind = iota // a piece, round its outline
	TornRectangle                // a piece that is one, along its grain
	TornBlock                    // a piece is cut from it once it is tucked
	TornStrips                   // for a ruffle, from selvage to selvage
	BiasSquare                   // that bias strips are cut from
	BiasCloth                    // that strips are cut from at a slant, from selvage to selvage
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

// Cuttings lists what is torn, and then what is cut, for all garments that are made at once.
func Cuttings(p *garment.Pattern) (torn, cut []Cutting) {
	n := p.Garments()
	var whole []Cutting // rectangles come after blocks, strips and squares
	for i := range p.Pieces {
		piece := &p.Pieces[i]
		if b := piece.Block; b != nil {
			across, along := b.OnCloth(piece)
			torn = append(torn, Cutting{
				Name: piece.Name, What: TornBlock, Count: n * b.Cut, Tucked: b.Measured != nil,
				Across: p.Unit.AtLeast(across), Along: p.Unit.AtLeast(along),
			})
			continue
		}
		c := Cutting{Name: piece.Name, What: CutPiece, Count: n * piece.Cut, OnFold: piece.OnFold}
		outline, isTorn := piece.TornWhole()
		across, along := extentBy(outline, piece.Flat.Grain.Direction)
		c.Across, c.Along = p.Unit.Amount(across), p.Unit.Amount(along)
		if isTorn {
			c.What, c.OnFold = TornRectangle, false
			whole = append(whole, c)
			continue
		}
		cut = append(cut, c)
	}
	for _, r := range p.Ruffles {
		if r.Strips > 0 {
			torn = append(torn, Cutting{Name: r.Key, What: TornStrips, Count: n * r.Strips, Across: p.Unit.Chosen(p.ClothWidth), Along: r.CutDepth})
		}
	}
	for _, b := range p.Bindings {
		if b.Square.MM > 0 {
			cut = append(cut, Cutting{Name: b.Key, What: BiasSquare, Count: n, Across: b.Square, Along: b.Square})
		} else {
			torn = append(torn, Cutting{Name: b.Key, What: BiasCloth, Count: n, Across: p.Unit.Chosen(p.ClothWidth), Along: b.Cloth})
		}
	}
	return append(torn, whole...), cut
}

// extentBy returns the size of a shape across a direction and along it.
func extentBy(p plane.Path, direction plane.Point) (across, along float64) {
	us, vs := piece.Frame{Along: direction, Out: direction.Left()}.Extent(p)
	return us.To - us.From, vs.To - vs.From
}

// Title names what is torn or cut.
func (c Cutting) Title() string {
	if c.Tucked {
		return c.kind() + ", block, tucked already"
	}
	return c.kind() + cutKinds[c.What].title
}

// kind is its name with what it is for, where that is no piece and the name does not say
// it: a ruffle called "hem" is not the hem.
func (c Cutting) kind() string {
	use := cutKinds[c.What].use
	if strings.Contains(strings.ToLower(c.Name), use) {
		return c.Name
	}
	return c.Name + " " + use
}
