package marking

import (
	"fmt"
	"math"
	"strings"

	"tuckmark/marking/plane"
)

// Rules of this file. Before a set of tucks is sewn on the piece, a strip of the
// same cloth is sewn with the same tucks: it tells what one really takes, and with
// which needle, thread and stitch it looks right. There is a sheet for every set
// of tucks of which the file does not say yet what its sample took; none for a
// tuck by itself, or for those that a piece grows by, where a thread more or less
// is no matter.

const (
	mostSampled  = 10         // tucks of a sample
	sampleWidest = 25.4 * 6.5 // of its strip, in mm, so that it fits across every paper
	sampleHigh   = 25.4 * 2.5 // of its strip, in mm
	sampleEnd    = 25.4 / 2   // beyond each mark, in mm
	sampleBeside = 25.4 / 2   // between a mark and the stitching next to it, at least, in mm
)

// sampleKey is what makes two sets of tucks alike enough for one sample.
type sampleKey struct {
	width, space float64
	twin         bool
}

// samples returns a sheet for every kind of tucks that has none in the file yet,
// which names every set of that kind.
func (p *Pattern) samples() []Marking {
	type kind struct {
		tuck   Tuck
		piece  *Piece
		tables []string
	}
	var kinds []*kind
	known := map[sampleKey]*kind{}
	for i := range p.Pieces {
		piece := &p.Pieces[i]
		for _, t := range piece.Tucks {
			key := sampleKey{math.Round(t.Width * 1000), math.Round(t.Space * 1000), t.Twin}
			if t.Sampled || !t.wantsSample() {
				continue
			}
			k := known[key]
			if k == nil {
				k = &kind{tuck: t, piece: piece}
				known[key] = k
				kinds = append(kinds, k)
			}
			k.tables = append(k.tables, "["+Place{Path: "piece"}.Under(piece.Key).Under("tuck").Under(t.Key).Path+"]")
		}
	}
	var all []Marking
	for _, k := range kinds {
		if m, fits := k.tuck.sampleSheet(p, k.piece, k.tables); fits {
			all = append(all, m)
		}
	}
	return all
}

// wantsSample reports whether a set of tucks is worth a trial.
func (t Tuck) wantsSample() bool { return t.Count >= 2 && t.LetDown == 0 }

// sampleSheet returns the sheet for one kind of tucks, which stands under these
// tables of the file; fits is false when not even two of them have room across a
// sheet.
func (t Tuck) sampleSheet(pattern *Pattern, piece *Piece, tables []string) (m Marking, fits bool) {
	step := 25.4 / 4 // what a distance between marks is a multiple of
	if pattern.Unit != Inch {
		step = 5
	}
	// From mark to mark, for n tucks.
	marks := func(n int) float64 {
		return math.Ceil((float64(n-1)*t.Space+2*(t.Width+sampleBeside))/step-rounding) * step
	}
	n := mostSampled
	for n >= 2 && marks(n)+2*sampleEnd > sampleWidest {
		n--
	}
	if n < 2 {
		return m, false
	}
	flat := marks(n)
	wide := flat + 2*sampleEnd
	length := pattern.Unit.Names
	m = Marking{
		Key:     piece.Key + " " + t.Key + " sample",
		Name:    fmt.Sprintf("%s: sample of the %s tucks", piece.Name, t.Key),
		Outline: plane.Path{{X: 0, Y: 0}, {X: wide, Y: 0}, {X: wide, Y: sampleHigh}, {X: 0, Y: sampleHigh}, {X: 0, Y: 0}},
	}
	across := func(role Role, name string, x float64) {
		m.Marks = append(m.Marks, Mark{role, name, plane.Path{{X: x, Y: 0}, {X: x, Y: sampleHigh}}})
	}
	for i := 1; i < len(m.Outline); i++ {
		m.Marks = append(m.Marks, Mark{Cut, "", plane.Path{m.Outline[i-1], m.Outline[i]}})
	}
	across(Placement, "first mark", sampleEnd)
	across(Placement, "second mark", sampleEnd+flat)
	first := (wide - float64(n-1)*t.Space) / 2
	for k := range n {
		at := first + float64(k)*t.Space
		across(TuckFold, "", at)
		if !t.Twin {
			across(TuckStitch, "", at-t.Width)
			across(TuckStitch, "", at+t.Width)
		}
	}
	sew := "fold on each fold line and stitch on the line beside it, with the needle and thread you mean to use"
	if t.Twin {
		sew = "sew along each fold line with the twin needle and thread you mean to use"
	}
	m.Form = &Form{
		Steps: []string{
			"tear or cut a strip of the cloth of the piece itself, along the same grain",
			fmt.Sprintf("mark it as ruled here: %d tucks %s wide, and the two marks, %s apart", n, length(t.Width), length(flat)),
			sew,
			"press it as you will press the piece, and let it lie until it is cool",
			"measure from the first mark to the second, at the top and at the bottom",
			"write down what you used, so that the piece is sewn with the same",
		},
		Blanks: []string{"cloth and date", "needle", "thread", "stitch length", "tension", "needle position or foot"},
		Sum: []string{
			fmt.Sprintf("flat, from mark to mark: %s", length(flat)),
			"sewn, from mark to mark: ____",
			fmt.Sprintf("flat less sewn, over %d tucks: ( %s - ____ ) / %d = ____ for each; by the drawing it is %s", n, length(flat), n, length(2*t.Width)),
			fmt.Sprintf("in the file, under %s: sample = {tucks = %d, flat = %q, sewn = \"____\"}",
				strings.Join(tables, " and "), n, length(flat)),
		},
	}
	return m, true
}
