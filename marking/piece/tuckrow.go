package piece

import (
	"fmt"

	"tuckmark/marking/mark"
	"tuckmark/marking/source"
)

// Rules of this file (w is the width of a tuck, fold to stitching; g the cloth
// that shows between one tuck's fold and the next tuck's stitching):
//
//   - A tuck takes up 2w of the cloth: w on either side of its fold line. The
//     spaces between tucks take up nothing (Baldt, Clothing for Women, 1916,
//     Self-Trimmings; Kinne and Cooley, Clothing and Health, 1916, p. 99).
//   - Flat, fold lines lie 3w + g apart: a tuck covers w and takes 2w (Kinne and
//     Cooley, p. 99; Patton, Home and School Sewing, about 1901), and from one
//     stitching to the next fold line it is 2w + g (McGlauflin, Handicraft for
//     Girls, 1910, p. 89).
//   - Finished, the stitching of tuck k, counted from 0, lies at f - w - 2wk,
//     where f is its fold line on the flat cloth.
//   - Cloth and needle take a little of their own. A sample says how much a tuck
//     really takes; that stands for 2w wherever the finished piece is worked
//     out, and where a gap is asked for. The lines stay w beside the fold.
//   - Take-ups may touch; they never overlap, for cloth folds only once.
//   - A tuck whose fold line lies on the centre of a piece on the fold is one
//     tuck of the whole piece, half of it on either side.

// TuckRow is a set of tucks.
type TuckRow struct {
	FoldRow
	Width float64 // of one tuck, fold to stitching
	Takes float64 // of the cloth, by one tuck: twice the width, or what the sample took
	first float64 // from the base to the first fold line, flat
	Space float64 // from fold line to fold line, flat; in groups, of one group
	Gap   float64 // of cloth that shows between two tucks; below 0 one covers the next stitching
	// Betweens is the cloth that shows behind each group but the last, to the stitching of the next;
	// nil where the tucks are in none.
	Betweens []float64
	Press    source.Press
	Twin     bool // sewn with a twin needle along the fold line
	// Sampled tells that Takes is what a sample took, which Sample has.
	Sampled bool
	Sample  source.SampleSpec
	// LetDown is how much one tuck of a row along a hem lengthens the garment
	// when it is let down; 0 for other tucks.
	LetDown float64
}

// Shows returns how much cloth shows between two tucks of the set, or of one of its groups, when
// they are sewn, in mm: 0 where each lies against the next stitching. ok is false for a single tuck,
// and where each covers the next stitching, which is remarked.
func (t TuckRow) Shows() (mm float64, ok bool) {
	switch {
	case t.Together() < 2 || t.covers():
		return 0, false
	case t.Gap < leastCover:
		return 0, true
	}
	return t.Gap, true
}

// onCentre reports whether the first tuck has its fold line on the base.
func (t TuckRow) onCentre() bool { return t.first < SamePoint }

// newTuckRow reads a set of tucks off its part of the file, with its folds as they
// lie beside its base.
func newTuckRow(piece *Piece, ts source.TuckSpec, found *Findings) (TuckRow, bool) {
	t := TuckRow{
		FoldRow: FoldRow{Makes: TuckFolds, Key: ts.Key, Place: ts.Place, Count: ts.Count.V, ends: ts.End},
		Width:   ts.Width.V, Takes: 2 * ts.Width.V, first: ts.First.V,
		Press: ts.Press.V, Twin: ts.Sewn.V == source.TwinNeedle,
	}
	if piece.DrawnFinished && t.Press == source.Unpressed {
		t.Press = source.PressedAway // the layers must lie one way or the other
	}
	t.Pressed = t.Press != source.Unpressed
	if ts.Sample != nil {
		if !t.takeSample(*ts.Sample, found) {
			return t, false
		}
	}
	t.Space = t.Takes + t.Width + ts.Gap.V
	if ts.Spacing.Given() {
		t.Space = ts.Spacing.V
	}
	t.Gap = t.Space - t.Takes - t.Width
	t.takeGroups(ts)
	var ok bool
	if t.Base, ok = findBase(piece, ts.Beside, ts.Side, found); !ok {
		return t, false
	}
	if !t.fits(piece, found) {
		return t, false
	}
	for k := range t.Count {
		at := t.foldLine(k)
		f := Fold{Number: k, At: at, Near: snapped(at - t.Takes/2), Width: t.Takes / 2, Toward: t.Press == source.PressedToward}
		f.endLine = Stretch{at - t.Width, at + t.Width}
		f.Lines = []FoldLine{{Role: mark.TuckFold, U: at}}
		if k == 0 && t.onCentre() {
			f.Near = -f.Width // exactly, so that the strip lies about the base
			f.endLine.From = 0
		}
		if !t.Twin {
			f.Lines = append(f.Lines, FoldLine{Role: mark.TuckStitch, U: at - t.Width}, FoldLine{Role: mark.TuckStitch, U: at + t.Width})
		}
		t.Folds = append(t.Folds, f)
	}
	return t, true
}

// fits looks whether the cloth can be folded as the set asks for: within the
// set, and against the base.
func (t TuckRow) fits(piece *Piece, found *Findings) bool {
	base := t.Base
	if t.Together() > 1 && t.Space < t.Takes-SamePoint {
		found.Add(t.Place, fmt.Sprintf("fold lines of tucks that just touch lie %s apart", found.Written(t.Takes+t.Width)),
			"the tucks overlap: their fold lines lie %s apart, and each takes up %s", found.Written(t.Space), found.Written(t.Takes))
		return false
	}
	centred := t.onCentre() && (base.Edge < 0 || piece.Edges[base.Edge].OnFold)
	if base.Edge >= 0 && !centred && t.first < t.Takes/2-SamePoint {
		found.Add(t.Place, fmt.Sprintf("give first at least %s", found.Written(t.Takes/2)),
			"the first tuck crosses %q: its fold line lies %s from it and its stitching %s nearer",
			base.Name, found.Written(t.first), found.Written(t.Takes/2))
		return false
	}
	return true
}
