package sheet

import (
	"fmt"
	"math"
	"slices"
	"strconv"

	"tuckmark/marking/fault"
	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/wording"
)

// Rules of this file. Before a set of tucks is sewn on the piece, a strip of the
// same cloth is sewn with the same tucks: it tells what one really takes, and with
// which needle, thread and stitch it looks right. There is a sheet for every set
// of tucks of which the file does not say yet what its sample took; none for a
// tuck by itself, or for those that a piece grows by, where a thread more or less
// is no matter, or for those of a block that is sewn and measured.

const (
	mostSampled  = 10         // tucks of a sample
	sampleWidest = 25.4 * 6.5 // of its strip, in mm, so that it fits across every paper
	sampleHigh   = 25.4 * 2.5 // of its strip, in mm
	sampleEnd    = 25.4 / 2   // beyond each mark, in mm
	sampleBeside = 25.4 / 2   // between a mark and the stitching next to it, at least, in mm
)

// sampledKind is tucks that one sample does for.
type sampledKind struct {
	tuck   piece.TuckRow
	piece  *piece.Piece
	tables []string // of the file, under which they stand
}

// samples returns a sheet for every kind of tucks that has none in the file yet,
// which names every set of that kind.
func samples(pattern *garment.Pattern) []mark.Marking {
	var all []mark.Marking
	for _, kind := range sampledKinds(pattern) {
		if m, fits := sampleSheet(kind, pattern.Unit); fits {
			all = append(all, m)
		}
	}
	return all
}

// sampledKinds sorts the tucks of a pattern that want a sample by kind.
func sampledKinds(pattern *garment.Pattern) []*sampledKind {
	var kinds []*sampledKind
	for i := range pattern.Pieces {
		p := &pattern.Pieces[i]
		for _, t := range p.TuckRows {
			if t.Sampled || !WantsSample(p, t) {
				continue
			}
			n := slices.IndexFunc(kinds, func(k *sampledKind) bool { return alike(k.tuck, t) })
			if n < 0 {
				n = len(kinds)
				kinds = append(kinds, &sampledKind{tuck: t, piece: p})
			}
			kinds[n].tables = append(kinds[n].tables, "["+fault.Place{Key: "piece"}.Under(p.Key).Under("tuck").Under(t.Key).Key+"]")
		}
	}
	return kinds
}

// alike reports whether one sample does for both, to a thousandth of 1 mm.
func alike(a, b piece.TuckRow) bool {
	return math.Round(a.Width*1000) == math.Round(b.Width*1000) && math.Round(a.Space*1000) == math.Round(b.Space*1000) && a.Twin == b.Twin
}

// WantsSample reports whether a set of tucks of a piece is worth a trial.
func WantsSample(p *piece.Piece, t piece.TuckRow) bool {
	return t.Count >= 2 && t.LetDown == 0 && !p.IsTucked()
}

// SampleLines says for every sample what is to be written into the file once it is sewn, and
// where: "under [piece.front.tuck.yoke]: sample = {...}".
func SampleLines(pattern *garment.Pattern) []string {
	var lines []string
	for _, kind := range sampledKinds(pattern) {
		if strip, fits := stripFor(kind.tuck, pattern.Unit); fits {
			lines = append(lines, fmt.Sprintf("under %s: sample = {tucks = %d, flat = %q, sewn = \"____\"}",
				wording.Listed(kind.tables, "and"), strip.tucks, pattern.Unit.AsWritten(strip.flat)))
		}
	}
	return lines
}

// sampleStrip is the strip that a sample is sewn on.
type sampleStrip struct {
	tucks int
	flat  float64 // from mark to mark
}

// wide is how wide the strip is.
func (s sampleStrip) wide() float64 { return s.flat + 2*sampleEnd }

// stripFor returns the strip for as many tucks as have room across a sheet; fits is
// false where not even two have.
func stripFor(t piece.TuckRow, unit length.Unit) (s sampleStrip, fits bool) {
	step := unit.Either(25.4/4, 5) // what a distance between marks is a multiple of
	for n := mostSampled; n >= 2; n-- {
		least := float64(n-1)*t.Space + 2*(t.Width+sampleBeside)
		s = sampleStrip{tucks: n, flat: math.Ceil(least/step-piece.Rounding) * step}
		if s.wide() <= sampleWidest {
			return s, true
		}
	}
	return s, false
}

// SampleKey is the key of the sheet that a set of tucks is tried on, where it is the first
// of its kind and has one.
func SampleKey(p *piece.Piece, t piece.TuckRow) string { return p.Key + " " + t.Key + " sample" }

// SampleFlat is how far apart the two marks of the sample of a set of tucks are ruled, in mm.
func SampleFlat(t piece.TuckRow, unit length.Unit) float64 {
	strip, _ := stripFor(t, unit)
	return strip.flat
}

// sampleSheet returns the sheet for one kind of tucks; fits is false when not even two
// of them have room across a sheet.
func sampleSheet(kind *sampledKind, unit length.Unit) (m mark.Marking, fits bool) {
	t, p := kind.tuck, kind.piece
	strip, fits := stripFor(t, unit)
	if !fits {
		return m, false
	}
	m = mark.Marking{
		Key:     SampleKey(p, t),
		Name:    fmt.Sprintf("%s: sample of the %s", p.Name, t.Called()),
		Kind:    mark.Sample,
		Piece:   p.Name,
		Steps:   sampleSteps(t, strip, unit),
		Outline: plane.Box{Max: plane.Point{X: strip.wide(), Y: sampleHigh}}.Outline(),
		Form:    sampleFormOf(t, strip, unit),
	}
	cutAllRound(&m)
	across := func(role mark.Role, x float64) {
		m.Add(role, "", plane.Path{{X: x, Y: 0}, {X: x, Y: sampleHigh}})
	}
	said := func(role mark.Role, words string, x float64) {
		m.Words = append(m.Words, mark.Word{Role: role, Text: words, At: plane.Point{X: x, Y: sampleHigh}, Out: plane.Point{Y: 1}})
	}
	across(mark.Placement, sampleEnd)
	said(mark.Placement, "first mark", sampleEnd)
	across(mark.Placement, sampleEnd+strip.flat)
	said(mark.Placement, "second mark", sampleEnd+strip.flat)
	first := (strip.wide() - float64(strip.tucks-1)*t.Space) / 2
	for k := range strip.tucks {
		at := first + float64(k)*t.Space
		across(mark.TuckFold, at)
		said(mark.TuckFold, strconv.Itoa(k+1), at)
		if !t.Twin {
			across(mark.TuckStitch, at-t.Width)
			across(mark.TuckStitch, at+t.Width)
		}
	}
	return m, true
}

// sampleSteps says what is done with a sample.
func sampleSteps(t piece.TuckRow, strip sampleStrip, unit length.Unit) []string {
	sew := "fold on each fold line and stitch on the line beside it, with the needle and thread you mean to use"
	if t.Twin {
		sew = "sew along each fold line with the twin needle and thread you mean to use"
	}
	return []string{
		"tear or cut a strip of the cloth of the piece itself, along the same grain",
		fmt.Sprintf("mark it as ruled here: %d tucks %s wide, and the two marks, %s apart", strip.tucks, unit.AsWritten(t.Width), unit.AsWritten(strip.flat)),
		sew,
		"press it as you will press the piece, and let it lie until it is cool",
		"measure from the first mark to the second, at the top and at the bottom",
		"write down what you used, so that the piece is sewn with the same",
		"if a tuck took more or less than the drawing says, write both lengths, flat and sewn, into the file as the sample of these tucks, and make the sheets again before you mark the piece",
	}
}

// sampleFormOf returns what is written down of a sample.
func sampleFormOf(t piece.TuckRow, strip sampleStrip, unit length.Unit) *mark.Form {
	flat := unit.AsWritten(strip.flat)
	return &mark.Form{
		Blanks: []string{"cloth and date", "needle", "thread", "stitch length", "tension", "needle position or foot"},
		Sum: []string{
			fmt.Sprintf("flat, from mark to mark: %s", flat),
			"sewn, from mark to mark: ____",
			fmt.Sprintf("what all %d tucks took: %s - ____ = ____", strip.tucks, flat),
			fmt.Sprintf("what one tuck took: ____ / %d = ____", strip.tucks),
			fmt.Sprintf("what one takes by the drawing: %s", unit.AsWritten(2*t.Width)),
		},
	}
}
