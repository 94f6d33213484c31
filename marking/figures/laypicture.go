package figures

import (
	"fmt"

	"tuckmark/marking/garment"
	"tuckmark/marking/lay"
	"tuckmark/marking/mark"
)

// Rules of this file: the lay is told with how it was made, for it promises no least
// cloth. Its picture says how far along the cloth each part of it reaches, rounded
// up as the whole length is.

// clothSection says how much cloth to buy, and draws how it was reckoned. There is no
// cloth where its width is not known.
func clothSection(p *garment.Pattern, laid *lay.Lay, w writer) mark.Section {
	s := mark.Section{Title: "Cloth to buy"}
	if laid == nil {
		s.Lines.Say("the width of the cloth is not given, so how much to buy is not reckoned")
		s.Lines.Hint("with [cloth] and, say, width = %q this says how much to buy", p.Unit.AsWritten(p.Unit.Either(44*25.4, 1120)))
		return s
	}
	for _, name := range laid.TooWide {
		s.Lines.Warn("%s is wider than the cloth and is not reckoned in", name)
	}
	if laid.Length == 0 {
		return s
	}
	if width, length := w.chosen(p.ClothWidth), w.length(p.Unit.AtLeast(laid.Length)); len(laid.TooWide) > 0 {
		s.Lines.Warn("the rest takes %s of cloth that is %s between the selvages, which is not enough for the whole", length, width)
	} else {
		s.Lines.Say("buy %s of cloth that is %s between the selvages: laid out, the pieces take %s, and fill %.0f %% of that",
			w.buy(p.Unit.Buy(laid.Length)), width, length, 100*laid.ShareUsed())
	}
	s.Lines.Say("%s It has nothing to spare for shrinking, for a nap or for matching a pattern.", lay.HowLaid)
	if laid.Repeats > 0 {
		s.Lines.Say("It is the lay of one garment, %d times, one behind the other.", laid.Repeats)
	}
	if p.Garments() > 1 && laid.Length > mostWidths*laid.Width {
		s.Lines.Say("The lay for %d is too long to be drawn here; that for fewer garments shows how it goes.", p.Garments())
		return s
	}
	s.Picture = layPicture(laid, w)
	return s
}

// mostWidths is how many times as long as its cloth is wide a lay may be for a picture of it to
// be read on a page.
const mostWidths = 12

// layPicture draws the lay: a band for each part of it, and what lies there.
func layPicture(laid *lay.Lay, w writer) *mark.Picture {
	pic := &mark.Picture{
		Caption: fmt.Sprintf("%s wide, %s long", w.chosen(laid.Width), w.length(w.unit.AtLeast(laid.Length))),
		Width:   laid.Width, Height: laid.Length,
	}
	from := w.unit.Amount(0)
	for _, part := range laid.Parts {
		to := w.unit.AtLeast(part.To)
		b := mark.Band{From: part.From, To: part.To, Width: laid.Width, Text: "single"}
		if part.Folded {
			b.Width, b.Text = laid.Width/2, "folded lengthwise, fold at the left"
		}
		b.Text += fmt.Sprintf(": %s to %s", w.cell(from), w.length(to))
		from = to
		pic.Bands = append(pic.Bands, b)
		for _, one := range part.Placed {
			name := one.Name
			switch {
			case one.Upper:
				name += ", upper layer only"
			case one.OnFold:
				name += ", on the fold"
			}
			pic.Shapes = append(pic.Shapes, mark.Shape{Name: name, Piece: one.Name, Outline: one.Outline})
		}
	}
	return pic
}
