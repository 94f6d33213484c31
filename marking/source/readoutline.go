package source

import (
	"fmt"
	"path"
	"path/filepath"
	"slices"

	"tuckmark/marking/drawing"
	"tuckmark/marking/fault"
	"tuckmark/marking/plane"
	"tuckmark/marking/wording"
)

// Rules of this file: a piece may have its outline, and lines, from a drawing in the folder of
// the file. They become edges and lines with points, measured from the lower left corner of the
// outline; what else these have is written in the same way as of others. A mistake stands where
// the drawing is named, with its place in the drawing behind that.

// mostDrawings is how many drawings the pieces of a file may come from. It bounds the time.
const mostDrawings = 100

// usualCorner is by how many degrees an outline turns at a corner at least, where the file does
// not say.
const usualCorner = 20

var (
	// cornerDegrees bound what is a corner: below the least, a curve in short steps would be
	// taken for several; beyond the most, an edge could turn back.
	cornerDegrees = factors{1, 170, "it is by how many degrees the outline turns at a corner at least: corner = 30"}

	edgesHint = `it names the edges in order, clockwise from the corner at the lower left: edges = ["centre front", "neck", "shoulder", "side", "hem"]`
	linesHint = `it names lines of the drawing by their ids: lines = ["placket fold"]`
)

// drawnPiece is what a piece has from a drawing.
type drawnPiece struct {
	edges []EdgeSpec
	lines []LineSpec
}

// outline reads which outline of which drawing a piece has; nil where it has none.
func (t *fileTable) outline() *drawnPiece {
	if !t.has("outline") {
		return nil
	}
	d, o := &drawnPiece{}, t.table("outline")
	if o == nil {
		return d
	}
	o.know(outlineKeys...)
	o.need("from", `it names the drawing, in the folder of this file: from = "front.svg"`)
	o.need("edges", edgesHint)
	from, part := o.reference("from"), o.reference("part")
	corner := o.factor("corner", cornerDegrees)
	ask := drawing.Ask{Part: part.V, Piece: t.name, Corner: corner.Or(usualCorner), Unit: t.unit}
	var fit [2]bool
	ask.Edges, fit[0] = o.drawnNames("edges", edgesHint)
	ask.Lines, fit[1] = o.drawnNames("lines", linesHint)
	at := o.place
	at.Key = t.place.Key
	for _, name := range ask.Edges {
		d.edges = append(d.edges, EdgeSpec{Key: name, Place: at.Under("edge").Under(name)})
	}
	for _, name := range ask.Lines {
		d.lines = append(d.lines, LineSpec{Key: name, Place: at.Under("line").Under(name)})
	}
	if from.V == "" || fit != [2]bool{true, true} {
		return d
	}
	if drawn := o.drawing(from.Place, from.V); drawn != nil {
		o.take(drawn, ask, d)
	}
	return d
}

// take finds what is asked for in a drawing.
func (t *fileTable) take(from *drawing.Drawing, ask drawing.Ask, d *drawnPiece) {
	taken, f := from.Take(ask)
	if f != nil {
		t.noteDrawn(t.place, f)
		return
	}
	for i, p := range taken.Edges {
		d.edges[i].Points = pointsOn(p, d.edges[i].Place)
	}
	for i, p := range taken.Lines {
		d.lines[i].Points = pointsOn(p, d.lines[i].Place)
	}
}

// noteDrawn notes what is wrong in a drawing where the file names it.
func (r *fileReader) noteDrawn(at fault.Place, f *fault.Fault) {
	r.report(at, f.Place.Before(f.Cause), f.Hint)
}

// pointsOn are points all of which stand on one line of the file.
func pointsOn(p plane.Path, at fault.Place) Points {
	return Points{Value: GivenAt([]plane.Point(p), at), lines: slices.Repeat([]int{at.Line}, len(p))}
}

// drawing returns the drawing of a name, read once for all pieces; nil where it cannot be had,
// which is noted once.
func (r *fileReader) drawing(at fault.Place, name string) *drawing.Drawing {
	// A name in a file that this one is like counts from that file's own folder.
	if below, err := filepath.Rel(filepath.Dir(r.file), filepath.Dir(at.File)); err == nil && below != "." {
		name = path.Join(filepath.ToSlash(below), name)
	}
	if d, known := r.drawings[name]; known {
		return d
	}
	if r.drawn.Full() { // it is told once
		return nil
	}
	if len(r.drawings) == mostDrawings {
		r.report(at, fmt.Sprintf("the pieces come from more than %d drawings", mostDrawings), "put several pieces into one drawing")
		return nil
	}
	r.drawings[name] = nil
	data, ok := r.beside(at, name, ".svg")
	if !ok {
		return nil
	}
	d, err := r.drawn.Read(r.asNamed(name), data)
	if all, isList := err.(fault.List); isList {
		for _, f := range all {
			r.noteDrawn(at, f)
		}
		return nil
	}
	r.drawings[name] = d
	return d
}

// drawnNames reads a list of names that become keys; false where it is none.
func (t *fileTable) drawnNames(key, hint string) ([]string, bool) {
	v, given := t.values[key]
	if !given {
		return nil, key != "edges"
	}
	list, isList := v.([]any)
	at := t.at(key)
	if !isList {
		t.report(at, "must be a list of names, but is "+asGiven(v), hint)
		return nil, false
	}
	if err := refuseMany(key[:len(key)-1], len(list)); err != nil {
		t.note(at, err)
		return nil, false
	}
	var names []string
	fits := true
	for i, v := range list {
		name, isText := v.(string)
		switch err := checkKey(name, t.printable); {
		case !isText:
			t.report(at, fmt.Sprintf("name %d must be text in quotes, but is %s", i+1, asGiven(v)), hint)
		case err != nil:
			t.note(at, err)
		case slices.Contains(names, name):
			t.report(at, wording.Quoted(name)+" is named twice", "give each a name of its own")
		default:
			names = append(names, name)
			continue
		}
		fits = false
	}
	return names, fits
}

// lines reads the lines of a piece, those of its drawing first.
func (t *fileTable) lines(drawn *drawnPiece) []LineSpec {
	var all []LineSpec
	if drawn != nil {
		all = drawn.lines
	}
	for _, one := range t.named("line") {
		i := slices.IndexFunc(all, func(l LineSpec) bool { return l.Key == one.name })
		if i < 0 {
			all = append(all, one.line())
			continue
		}
		one.know("from", "to", "kind")
		points := all[i].Points
		all[i] = LineSpec{Key: one.name, Place: one.place, Points: points, From: one.reference("from"), To: one.reference("to"), Kind: choice[LineKind](one, "kind", lineWords[:])}
	}
	return all
}
