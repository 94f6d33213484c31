package ink

import (
	"bytes"
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"tuckmark/marking/mark"
)

// Rules of this file: in an SVG every line of a piece is there once, whole, in one path: its
// dashes are an attribute, and no letter parts it. A group for each piece holds one for each
// role, which has the pen.
//
// Ids are made of names, with - for a space and for what an id cannot have, and dots between:
// "front", "front.neck", "front.neck-stitch-line". A line without a name has that of its role
// and a number: "front.grain-line.1". Where an id is taken already, -2 is behind it, or -3.
// Lines have theirs before the group of a role has its own, "front.stitch-line": one that the
// file calls so can be found by that.

// svgMarks are the lines of all pieces.
type svgMarks struct {
	pieces []*svgPiece
	taken  map[string]bool // ids
	now    *svgRole        // of the line that has begun; nil for none
	line   string          // what that is called
	fresh  bool            // nothing of it is drawn yet
}

// svgPiece is the lines of a piece, role by role.
type svgPiece struct {
	key   string
	roles []*svgRole
}

// svgRole is the lines of a role of a piece.
type svgRole struct {
	role  mark.Role
	pen   Pen
	lines []svgLine
}

// svgLine is one line.
type svgLine struct {
	id    string
	name  string // "" for none
	shape svgShape
	rest  string // more attributes, with a space before each
}

// newSVGMarks is no lines, for an SVG that has some ids already.
func newSVGMarks(taken ...string) svgMarks {
	m := svgMarks{taken: map[string]bool{}}
	for _, id := range taken {
		m.taken[id] = true
	}
	return m
}

// begin begins a line.
func (m *svgMarks) begin(piece string, role mark.Role, line string) {
	k := slices.IndexFunc(m.pieces, func(p *svgPiece) bool { return p.key == piece })
	if k < 0 {
		k = len(m.pieces)
		m.pieces = append(m.pieces, &svgPiece{key: piece})
	}
	p := m.pieces[k]
	k = slices.IndexFunc(p.roles, func(r *svgRole) bool { return r.role == role })
	if k < 0 {
		k = len(p.roles)
		p.roles = append(p.roles, &svgRole{role: role})
	}
	m.now, m.line, m.fresh = p.roles[k], line, true
}

// begun reports whether a line has begun and not ended.
func (m *svgMarks) begun() bool { return m.now != nil }

// end ends the line.
func (m *svgMarks) end() { m.now = nil }

// stroke draws the line that has begun, or some of it. Rings of one line are one path. So are
// unbroken lines without a name that go on where the one before ends: a cutter lifts its blade
// between paths.
func (m *svgMarks) stroke(shape svgShape, pen Pen, phase float64, clip string) {
	r, more := m.now, svgLine{"", m.line, shape, svgPhase(phase) + clip}
	r.pen = pen
	if n := len(r.lines); n > 0 {
		last := &r.lines[n-1]
		if pen.Ring() > 0 && !m.fresh && last.rest == more.rest {
			last.shape.rings = append(last.shape.rings, shape.rings...)
			return
		}
		if pen.period() == 0 && last.goesOn(more) {
			last.shape.paths[0] = append(last.shape.paths[0], shape.paths[0][1:]...)
			return
		}
	}
	r.lines, m.fresh = append(r.lines, more), false
}

// goesOn reports whether both lines are one path, without a name, of which the second begins
// where the first ends.
func (l *svgLine) goesOn(more svgLine) bool {
	if l.name+more.name+l.rest+more.rest != "" || len(l.shape.paths) != 1 || len(more.shape.paths) != 1 {
		return false
	}
	before, behind := l.shape.paths[0], more.shape.paths[0]
	return len(before) > 0 && len(behind) > 0 && before[len(before)-1] == behind[0] && before[0] != behind[0]
}

// write writes all lines, for a page of a height.
func (m *svgMarks) write(out *bytes.Buffer, height float64) {
	for _, p := range m.pieces {
		id := m.own(svgFirst(svgWord(p.key)))
		p.nameLines(func(name string) string { return m.own(id + "." + svgWord(name)) })
		fmt.Fprintln(out, svgElement("g", "id", id)+">")
		for _, r := range p.roles {
			word := id + "." + svgWord(r.role.String())
			fmt.Fprintln(out, svgElement("g", "id", m.own(word), "fill", "none")+svgStroke(r.pen)+">")
			for n, l := range r.lines {
				if l.name == "" {
					l.id = m.own(word + "." + strconv.Itoa(n+1))
				}
				fmt.Fprintln(out, svgElement("path", "id", l.id, "d", l.shape.d(height))+l.rest+"/>")
			}
			fmt.Fprintln(out, "</g>")
		}
		fmt.Fprintln(out, "</g>")
	}
}

// nameLines gives ids to the lines of a piece that have names.
func (p *svgPiece) nameLines(id func(name string) string) {
	for _, r := range p.roles {
		for n := range r.lines {
			if l := &r.lines[n]; l.name != "" {
				l.id = id(l.name)
			}
		}
	}
}

// own is an id as it is wanted, or with the first number behind it that makes it one of its
// own.
func (m *svgMarks) own(id string) string {
	free := id
	for n := 2; m.taken[free]; n++ {
		free = id + "-" + strconv.Itoa(n)
	}
	m.taken[free] = true
	return free
}

// svgWord writes a name with what may stand in an id: letters, figures and _, with one -
// between.
func svgWord(name string) string {
	word := strings.Join(strings.FieldsFunc(name, func(r rune) bool {
		// Below 0xC0 there are letters that no id may have (XML 1.0, 2.3, from memory).
		known := r <= unicode.MaxASCII || r >= 0xC0
		return r != '_' && !(known && (unicode.IsLetter(r) || unicode.IsDigit(r)))
	}), "-")
	return cmp.Or(word, "_")
}

// svgFirst makes a word one that an id may begin with.
func svgFirst(word string) string {
	if r, _ := utf8.DecodeRuneInString(word); unicode.IsLetter(r) || r == '_' {
		return word
	}
	return "_" + word
}
