package board

import (
	"fmt"
	"html"
	"strconv"
	"strings"
	"sync"

	"tuckmark/marking/plane"
	"tuckmark/marking/wording"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: drawings of one piece lie side by side on one paper, level at their upper
// edges, all to one scale. Under them stands what their shades mean, and what they cannot show.

// pair is such drawings.
type pair struct {
	prefix string // of the ids in them
	name   string
	key    string // of the piece
	sides  []side
	shades []shade // what its shades mean
	notes  []string
}

// side is one drawing: what it bounds, what is washed under its lines, and the lines, set by set.
type side struct {
	bounds plane.Box
	washes func(on surface) string
	lines  []lineSet
}

// lineSet is lines of a side; those of one view among several have its name.
type lineSet struct {
	view string
	draw func(d *ink.Picture)
}

// pairGap is kept free between two drawings, as a share of the width of all, and margin round
// them, and between them at least, in mm.
const (
	pairGap = 0.06
	margin  = 6.0
)

// noteSize is how large notes are, as a share of the letters of captions.
const noteSize = 0.8

// keyGrows is how many times as large as alone on a board letters of the key under it may be, so that
// they are no smaller than notes as a rule, and never wide for a small piece.
const keyGrows = 2.0

// gap is kept free between two drawings.
func (p pair) gap() float64 {
	wide := 0.0
	for _, s := range p.sides {
		wide += s.bounds.Width()
	}
	return max(pairGap*wide, margin)
}

// size is how large the paper under the drawings is, without notes.
func (p pair) size() plane.Point {
	size := plane.Point{X: 2*margin - p.gap(), Y: 2 * margin}
	for _, s := range p.sides {
		size.X += s.bounds.Width() + p.gap()
		size.Y = max(size.Y, s.bounds.Height()+2*margin)
	}
	return size
}

// part is the pair as part of a board whose captions are of a size.
func (p pair) part(letters float64) Part {
	size := p.size()
	style := captionStyle(noteSize * letters)
	var lines []string
	for _, note := range p.notes {
		lines = append(lines, text.WrapMeasures(wording.Capital(note)+".", style, size.X-2*margin)...)
	}
	whole, small := size, noteSize*min(letters, keyGrows*captionSize(size.X*size.Y))
	key := wrapped(p.shades, small, size.X-2*margin)
	if len(p.shades) > 0 {
		whole = plane.Point{X: max(whole.X, key.X+2*margin), Y: whole.Y + key.Y + margin}
	}
	noted := whole.Y
	if len(lines) > 0 {
		whole.Y += float64(len(lines))*style.Step() + margin
	}
	return Part{Name: p.name, Keys: []string{p.key}, Box: plane.Box{Max: whole}, Elements: sync.OnceValue(func() string {
		var out strings.Builder
		out.WriteString(paperBox(whole))
		p.draw(&out, size)
		notes := ink.NewPicture(p.prefix+"-notes", whole)
		if len(p.shades) > 0 {
			out.WriteString(drawShades(notes, p.shades, small, plane.Point{X: margin, Y: whole.Y - size.Y}))
		}
		for i, line := range lines {
			ink.Write(notes, plane.Point{X: margin, Y: whole.Y - noted - float64(i)*style.Step() - style.Up()}, style, line)
		}
		out.WriteString(notes.Elements())
		return out.String()
	})}
}

// draw writes the drawings, on paper of a size.
func (p pair) draw(out *strings.Builder, size plane.Point) {
	at, ids := margin, 0
	for _, s := range p.sides {
		if s.washes != nil {
			out.WriteString(s.washes(surface{at - s.bounds.Min.X, margin + s.bounds.Max.Y}))
		}
		for _, set := range s.lines {
			ids++
			picture := ink.NewPicture(p.prefix+"-"+strconv.Itoa(ids), size)
			picture.Place(plane.Point{X: at - s.bounds.Min.X, Y: size.Y - margin - s.bounds.Max.Y}, 1)
			set.draw(picture)
			if set.view == "" {
				out.WriteString(picture.Elements())
			} else {
				fmt.Fprintf(out, "<g class=\"view\" data-view=\"%s\">\n%s</g>\n", html.EscapeString(set.view), picture.Elements())
			}
		}
		at += s.bounds.Width() + p.gap()
	}
}

// lettersOn is how large the captions of some pairs are on one board.
func lettersOn(pairs []pair) float64 {
	area := 0.0
	for _, p := range pairs {
		size := p.size()
		area += size.X * size.Y
	}
	return captionSize(area)
}
