package pdfout

import (
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

// Rules of this file: the key shows lines as they look in use, those together that are met
// together: a corner of a piece with its stitch line, a fold of a tuck between its
// stitchings, a notch at an edge. A sample is drawn where a line that it names occurs, with
// those of its other lines that do. A name stands at the height of its line, and goes on
// under it where its column is narrow: what lies below makes room.

const (
	keyWide = 21.0 // of a sample, in mm
	keyStep = 4.4  // from one name to the next: a line of text, and a little
	keyAway = 2.5  // between a sample and its names
	keyGap  = 1.3  // between two samples
	// keyLetter is how far along its line the letter of a line stands.
	keyLetter = 16.4
)

// keySample is a part of the key: lines that are met together. Places are counted from the
// left end of its first name's line.
type keySample struct {
	lines []mark.Mark
	// names are the roles that are named here, from the top down; over is the room that the
	// lines take above the first of them, in mm.
	names []mark.Role
	over  float64
	// words are the lines of each name, as many as it needs in its column; an empty one where
	// a line has its name already.
	words [][]string
}

// height is what a sample takes down the page, in mm.
func (s keySample) height() float64 { return s.over + float64(s.linesTo(len(s.names)))*keyStep }

// linesTo is how many lines of text stand over the name of a number.
func (s keySample) linesTo(n int) int {
	lines := 0
	for _, words := range s.words[:n] {
		lines += len(words)
	}
	return lines
}

// keySamples are all samples there are.
func keySamples() []keySample {
	at := func(x, steps float64) plane.Point { return plane.Point{X: x, Y: -steps * keyStep} }
	one := func(role mark.Role, path ...plane.Point) mark.Mark { return mark.Mark{Role: role, Path: path} }
	across := func(role mark.Role, steps float64) mark.Mark { return one(role, at(0, steps), at(keyWide, steps)) }
	const middle, tuck = keyWide/2 - 1, 4.0
	area := plane.Box{Min: plane.Point{Y: -1}, Max: plane.Point{X: keyWide, Y: 1}}.Outline()
	upright := func(x float64, role mark.Role) mark.Mark { return one(role, at(x, -0.7), at(x, 0)) }
	atEdge := func(role mark.Role) []mark.Mark {
		return []mark.Mark{across(mark.Cut, 0.5), one(role, at(middle, 0.5), at(middle, -0.4))}
	}
	var strokes []mark.Mark
	for from := area[0]; from.X < keyWide-2; from.X += 1.5 {
		strokes = append(strokes, one(mark.Laid, from, from.Add(plane.Point{X: 2, Y: 2})))
	}
	return []keySample{
		{[]mark.Mark{
			across(mark.Stitch, 0), one(mark.Stitch, at(keyStep, -0.6), at(keyStep, 1)),
			one(mark.Cut, at(0, -0.6), at(0, 1), at(keyWide, 1)),
		}, []mark.Role{mark.Stitch, mark.Cut}, keyStep / 2, nil},
		{[]mark.Mark{across(mark.FoldEdge, 0)}, []mark.Role{mark.FoldEdge}, 0, nil},
		{[]mark.Mark{across(mark.BlockEdge, 0)}, []mark.Role{mark.BlockEdge}, 0, nil},
		{[]mark.Mark{across(mark.Fold, 0)}, []mark.Role{mark.Fold}, 0, nil},
		{[]mark.Mark{
			across(mark.Centre, 0), one(mark.Cross, at(middle-keyStep, 0), at(middle+keyStep, 0)), one(mark.Cross, at(middle, 1), at(middle, -1)),
		}, []mark.Role{mark.Centre, mark.Cross}, keyStep / 2, nil},
		{[]mark.Mark{across(mark.TuckStitch, 0), across(mark.TuckFold, 1), across(mark.TuckStitch, 2)},
			[]mark.Role{mark.TuckStitch, mark.TuckFold, mark.TuckStitch}, 0, nil},
		{[]mark.Mark{
			upright(middle-tuck, mark.TuckStitch), upright(middle, mark.TuckFold), upright(middle+tuck, mark.TuckStitch), across(mark.TuckEnd, 0),
		}, []mark.Role{mark.TuckEnd}, keyStep / 2, nil},
		{[]mark.Mark{across(mark.Placement, 0), one(mark.Arrow, at(middle, 2), at(middle, 0)), across(mark.PleatFold, 2)},
			[]mark.Role{mark.Placement, mark.Arrow, mark.PleatFold}, 0, nil},
		{atEdge(mark.Notch), []mark.Role{mark.Notch}, keyStep / 2, nil},
		{atEdge(mark.Match), []mark.Role{mark.Match}, keyStep / 2, nil},
		{[]mark.Mark{across(mark.Grain, 0)}, []mark.Role{mark.Grain}, 0, nil},
		{[]mark.Mark{one(mark.Waste, area...), one(mark.Window, area...), one(mark.DrawHere, at(middle, 1.1), at(middle, 0.25))},
			[]mark.Role{mark.Window, mark.DrawHere}, 0, nil},
		{append(strokes, one(mark.Cut, area[0], area[1])), []mark.Role{mark.Laid}, 0, nil},
		{[]mark.Mark{one(mark.Waste, area...)}, []mark.Role{mark.Waste}, 0, nil},
		{[]mark.Mark{across(mark.Stitch, 0), one(mark.Prick, at(0, 0), at(7, 0), at(14, 0), at(keyWide, 0))},
			[]mark.Role{mark.Prick}, 0, nil},
		{[]mark.Mark{across(mark.RuledWhole, 0), across(mark.RuledHalf, 1), across(mark.RuledFine, 2)},
			[]mark.Role{mark.RuledWhole, mark.RuledHalf, mark.RuledFine}, 0, nil},
	}
}
