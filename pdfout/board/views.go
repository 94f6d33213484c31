package board

import (
	"slices"
	"strconv"
	"strings"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
)

// Rules of this file: the pieces of several views of a file, with their folds in, are looked at side
// by side, each view in a column of its own, or laid over each other. Pieces that are alike in all
// views are left out, and named; where all are, all are shown.

// View is the pieces of a view.
type View struct {
	Name   string
	Pieces []mark.Pressed
}

// viewed is a piece in several views: nil in those that do not have it.
type viewed struct {
	key, name string
	in        []*mark.Pressed
	lines     []map[lineName][]plane.Path // of each view, those of one role and name
}

// lineName is what a line is found by.
type lineName struct {
	role mark.Role
	name string
}

// SideBySide lays every piece in a row, with a column for each view.
func SideBySide(views []View) Board {
	pieces, alike := differing(views)
	var pairs []pair
	var shown []mark.Pressed
	for n, piece := range pieces {
		for i, p := range piece.in {
			if p == nil {
				pairs = append(pairs, pair{})
				continue
			}
			shown = append(shown, *p)
			pressed := pressedSide(*p)
			pressed.lines[0].view = views[i].Name
			pairs = append(pairs, pair{
				prefix: "view-" + strconv.Itoa(n+1) + "-" + strconv.Itoa(i+1), name: p.Name + ", " + views[i].Name,
				key: p.Key, sides: []side{pressed}, shades: shadesOf(*p), notes: p.Notes,
			})
		}
	}
	letters := lettersOn(pairs)
	var rows [][]Part
	for i, p := range pairs {
		if i%len(views) == 0 {
			rows = append(rows, nil)
		}
		one := Part{}
		if len(p.sides) > 0 {
			one = p.part(letters)
		}
		rows[len(rows)-1] = append(rows[len(rows)-1], one)
	}
	return inColumns(rows, append(shadeKey(shown, letters), alikeNote(alike, letters)...), letters)
}

// LaidOver lays the views of every piece over each other.
func LaidOver(views []View) Board {
	pieces, alike := differing(views)
	var pairs []pair
	for n, piece := range pieces {
		pairs = append(pairs, pair{prefix: "over-" + strconv.Itoa(n+1), name: piece.name, key: piece.key, sides: []side{overSide(piece, views)}})
	}
	letters := lettersOn(pairs)
	var parts []Part
	for _, p := range pairs {
		parts = append(parts, p.part(letters))
	}
	if len(parts) > 0 {
		parts = append(parts, viewKey(views, letters))
	}
	return flow(append(parts, alikeNote(alike, letters)...))
}

// differing returns the pieces of views, in the order in which they come first, that are not alike
// in all of them, and the names of those that are. Where all are alike, it returns all.
func differing(views []View) (pieces []viewed, alike []string) {
	var all []viewed
	for i, v := range views {
		for k := range v.Pieces {
			p := &v.Pieces[k]
			at := slices.IndexFunc(all, func(one viewed) bool { return one.key == p.Key })
			if at < 0 {
				at = len(all)
				all = append(all, viewed{p.Key, p.Name, make([]*mark.Pressed, len(views)), make([]map[lineName][]plane.Path, len(views))})
			}
			all[at].add(i, p)
		}
	}
	for _, one := range all {
		if one.alike() {
			alike = append(alike, one.name)
		} else {
			pieces = append(pieces, one)
		}
	}
	if len(pieces) == 0 {
		return all, nil
	}
	return pieces, alike
}

// alike reports whether a piece has the same lines in all views.
func (v viewed) alike() bool {
	for _, p := range v.in {
		if p == nil || len(p.Marks) != len(v.in[0].Marks) {
			return false
		}
		for _, m := range p.Marks {
			if !v.inAll(m) {
				return false
			}
		}
	}
	return true
}

// add takes the piece as view i has it.
func (v viewed) add(i int, p *mark.Pressed) {
	v.in[i], v.lines[i] = p, map[lineName][]plane.Path{}
	for _, m := range p.Marks {
		name := lineName{m.Role, m.Called()}
		v.lines[i][name] = append(v.lines[i][name], m.Path)
	}
}

// inAll reports whether every view has a line.
func (v viewed) inAll(m mark.Mark) bool {
	return !slices.ContainsFunc(v.lines, func(lines map[lineName][]plane.Path) bool {
		return !slices.ContainsFunc(lines[lineName{m.Role, m.Called()}], func(other plane.Path) bool { return sameLine(m.Path, other) })
	})
}

// apartAtMost bounds how far apart the points of two lines may lie, in mm, that are one: less than a
// line is wide.
const apartAtMost = 0.05

// sameLine reports whether two lines lie in one place.
func sameLine(a, b plane.Path) bool {
	return slices.EqualFunc(a, b, func(p, q plane.Point) bool { return p.Distance(q) <= apartAtMost })
}

// overSide draws a piece in all views: what all have in grey, and what is not so in the pen of its
// view.
func overSide(v viewed, views []View) side {
	s := side{bounds: plane.EmptyBox()}
	first := true
	for i, p := range v.in {
		if p == nil {
			continue
		}
		s.bounds = s.bounds.Union(p.Outline.Bounds())
		var shared, own []mark.Mark
		for _, m := range p.Marks {
			if v.inAll(m) {
				shared = append(shared, m)
			} else {
				own = append(own, m)
			}
		}
		if first {
			s.lines = append(s.lines, lineSet{draw: func(d *ink.Picture) { drawRoles(d, p.Key, shared, SharedPen) }})
			first = false
		}
		s.lines = append(s.lines, lineSet{views[i].Name, func(d *ink.Picture) {
			drawRoles(d, p.Key, own, func(role mark.Role) ink.Pen { return ViewPen(i, role) })
		}})
	}
	return s
}

// viewSample is how long a line is in the key of views, in sizes of its letters: as long as lets all
// rhythms be seen.
const viewSample = 6.0

// viewKey shows the pens of views.
func viewKey(views []View, letters float64) Part {
	wide := 0.0
	names := []string{"alike in all"}
	for _, v := range views {
		names = append(names, v.Name)
	}
	style := captionStyle(letters)
	for _, name := range names {
		wide = max(wide, style.Width(name))
	}
	long := viewSample * letters
	size := plane.Point{X: 2*margin + long + letters + wide, Y: 2*margin + keyStep*letters*float64(len(names))}
	return Part{Box: plane.Box{Max: size}, Elements: func() string {
		var out strings.Builder
		out.WriteString(paperBox(size))
		picture := ink.NewPicture("views-key", size)
		for i, name := range names {
			y := margin + keyStep*letters*(float64(i)+0.5)
			pen := SharedPen(mark.Cut)
			if i > 0 {
				pen = ViewPen(i-1, mark.Cut)
			}
			ink.DrawLines(picture, pen, plane.Path{{X: margin, Y: size.Y - y}, {X: margin + long, Y: size.Y - y}})
			ink.Write(picture, plane.Point{X: margin + long + letters, Y: size.Y - y - style.Middle()}, style, name)
		}
		out.WriteString(picture.Elements())
		return out.String()
	}}
}
