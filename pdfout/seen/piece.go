package seen

import (
	"fmt"
	"math"
	"slices"

	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
)

// Rules of this file: the lines on joined pages must be those of the pieces, unbroken,
// and there must be no others.

const (
	// sampleStep is from one place that is looked at along a line to the next, in mm.
	sampleStep = 0.5
	// OffLine bounds how far a printed line may be off, in mm: half of what the eye can
	// tell, and more than what the pages of a sheet are off together.
	OffLine = 0.02
)

// Line is one stroke of a layer on the sheet.
type Line struct {
	Page   *LaidPage
	Tree   *plane.Tree
	Bounds plane.Box
	Path   Path
}

// Lines gathers the strokes of a layer.
func Lines(laid []LaidPage, layer string) []*Line {
	var all []*Line
	for i := range laid {
		p := &laid[i]
		for _, q := range p.Drawn(layer) {
			for _, part := range q.Parts {
				moved := make(plane.Path, len(part))
				for i, at := range part {
					moved[i] = at.Add(p.Step)
				}
				all = append(all, &Line{p, plane.NewTree(moved), moved.Bounds(), q})
			}
		}
	}
	return all
}

// samples calls look for places along a path, its points included.
func samples(p plane.Path, look func(at plane.Point, along float64) bool) {
	walked := 0.0
	for i := 1; i < len(p); i++ {
		l := p[i].Distance(p[i-1])
		n := max(1, math.Ceil(l/sampleStep))
		for k := 0.0; k < n; k++ {
			if !look(p[i-1].Toward(p[i], k/n), walked+l*k/n) {
				return
			}
		}
		walked += l
	}
	look(p[len(p)-1], walked)
}

// Turn is how a piece lies on its sheet.
type Turn int

const (
	// AsGiven is the way in which the piece was given.
	AsGiven Turn = iota
	// Quarter is turned by a quarter turn, counter-clockwise.
	Quarter
)

// TurnOf is how the piece of a name lies, given the names of those that are turned.
func TurnOf(name string, turned []string) Turn {
	if slices.Contains(turned, name) {
		return Quarter
	}
	return AsGiven
}

// Moved returns a mark's path turned as the sheet is and moved.
func Moved(p plane.Path, turn Turn, step plane.Point) plane.Path {
	q := make(plane.Path, len(p))
	for i, at := range p {
		if turn == Quarter {
			at = at.Left()
		}
		q[i] = at.Add(step)
	}
	return q
}

// Placed is a piece as it lies on a sheet: turned or not, and moved.
type Placed struct {
	Number int // from 1, in its set
	Piece  mark.Marking
	Turn   Turn
	Step   plane.Point
}

// On brings a path of the piece to the sheet.
func (p Placed) On(path plane.Path) plane.Path { return Moved(path, p.Turn, p.Step) }

// From brings a place of the sheet back to the piece.
func (p Placed) From(at plane.Point) plane.Point {
	at = at.Sub(p.Step)
	if p.Turn == Quarter {
		return plane.Point{X: at.Y, Y: -at.X}
	}
	return at
}

// drawnAs are the lines, on the sheet, that a mark of the piece is drawn as.
func (p Placed) drawnAs(one mark.Mark) []plane.Path {
	lines := ink.LinesOf(one)
	for i, path := range lines {
		lines[i] = p.On(path)
	}
	return lines
}

// addTo adds the lines of the piece to those of others, by their roles.
func (p Placed) addTo(lines map[mark.Role][]*plane.Tree) {
	for _, one := range p.Piece.Marks {
		for _, path := range p.drawnAs(one) {
			lines[one.Role] = append(lines[one.Role], plane.NewTree(path))
		}
	}
}

// PiecesOn finds where the pieces that are named on a sheet lie, those that are turned
// named once more.
func PiecesOn(t require.TestingT, laid []LaidPage, set []mark.Marking, names, turned []string) []Placed {
	var all []Placed
	for _, name := range names {
		i := slices.IndexFunc(set, func(m mark.Marking) bool { return m.Name == name || m.Name == "" && m.Key == name })
		require.GreaterOrEqual(t, i, 0, "no piece is called %s", name)
		p := Placed{Number: i + 1, Piece: set[i], Turn: TurnOf(name, turned)}
		var found bool
		p.Step, found = find(laid, p)
		require.True(t, found, "%s is not on its sheet", name)
		all = append(all, p)
	}
	return all
}

// Lacks compares a piece, brought to its place, with what is printed:
// every place of every line is on some page within its joins, and on
// every page in whose window it lies. It returns what is wrong first, "" if
// nothing is.
func Lacks(laid []LaidPage, p Placed) string {
	byPage := make([]map[mark.Role][]*Line, len(laid))
	for i := range laid {
		byPage[i] = map[mark.Role][]*Line{}
		for _, role := range mark.Roles() {
			byPage[i][role] = Lines(laid[i:i+1], role.String())
		}
	}
	for k, one := range p.Piece.Marks {
		if ink.PenOf(one.Role).Ring() > 0 {
			continue // drawn at its points alone
		}
		lines := make([][]*Line, len(laid)) // of the mark's role, by page
		for i := range laid {
			lines[i] = byPage[i][one.Role]
		}
		for _, path := range p.drawnAs(one) {
			if wrong := lackOf(laid, lines, path, one.Role); wrong != "" {
				return fmt.Sprintf("mark %d (%v %q): %s", k, one.Role, one.Name, wrong)
			}
		}
	}
	return ""
}

// lackOf is Lacks for one line, with those of its role that are printed, by page.
func lackOf(laid []LaidPage, lines [][]*Line, path plane.Path, role mark.Role) string {
	wrong := ""
	samples(path, func(at plane.Point, along float64) bool {
		within := false
		for i := range laid {
			page := &laid[i]
			if !page.Window.Grown(-OffLine).Holds(at) {
				continue
			}
			found := false
			for _, l := range lines[i] {
				found = found || l.Bounds.Grown(OffLine).Holds(at) && l.Tree.Distance(at, 1) <= OffLine
			}
			if !found && !mayLack(laid, role, at) {
				wrong = fmt.Sprintf("page %d lacks it %.1f mm along, at %v", page.Number, along, at)
				return false
			}
			within = within || page.Core.Grown(OffLine).Holds(at)
		}
		if !within {
			wrong = fmt.Sprintf("it is within the joins of no page %.1f mm along, at %v", along, at)
		}
		return within
	})
	return wrong
}

// Strays returns the first printed place of a sheet that is on no line of its
// pieces, "" if there is none.
func Strays(laid []LaidPage, pieces []Placed) string {
	lines := map[mark.Role][]*plane.Tree{}
	for _, p := range pieces {
		p.addTo(lines)
	}
	wrong := ""
	for _, role := range mark.Roles() {
		if ink.PenOf(role).Ring() > 0 {
			continue
		}
		for _, l := range Lines(laid, role.String()) {
			samples(l.Tree.Path(), func(at plane.Point, _ float64) bool {
				for _, tree := range lines[role] {
					if tree.Distance(at, 1) <= OffLine {
						return true
					}
				}
				if mayStray(laid, role, at, lines[mark.Window]) {
					return true
				}
				wrong = fmt.Sprintf("page %d has a %v at %v that is no line of its piece", l.Page.Number, role, at)
				return false
			})
		}
	}
	return wrong
}

// find finds where on the sheet a piece lies: where a printed line begins or ends as one of
// its lines begins, and all its lines are there as well. A line begins on some page.
func find(laid []LaidPage, p Placed) (plane.Point, bool) {
	n := slices.IndexFunc(p.Piece.Marks, func(m mark.Mark) bool { return m.Path.Length() > 0 })
	if n < 0 { // a form that is only written on
		return plane.Point{}, true
	}
	first := p.Piece.Marks[n]
	begin := p.drawnAs(first)[0][0]
	lines := make([][]*Line, len(laid)) // of the line's role, by page
	for i := range laid {
		lines[i] = Lines(laid[i:i+1], first.Role.String())
	}
	for _, l := range slices.Concat(lines...) {
		path := l.Tree.Path()
		for _, end := range []plane.Point{path[0], path[len(path)-1]} {
			there := p
			there.Step = end.Sub(begin)
			if lackOf(laid, lines, there.drawnAs(first)[0], first.Role) == "" && Lacks(laid, there) == "" {
				return there.Step, true
			}
		}
	}
	return plane.Point{}, false
}
