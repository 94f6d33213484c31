package pdfout

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
)

// Rules of this file: the pages are put together again as a maker does it, by
// nothing but what is printed on them: join marks with the same number are
// laid on each other, and each page counts only within its joins. The
// lines must then be those of the piece, unbroken, and there must be no others.

const (
	sampleStep = 0.5  // between the places looked at along a line, in mm
	offLine    = 0.02 // how far a printed line may be off, in mm
)

// foundJoin is a join mark as found on a page.
type foundJoin struct {
	number  int
	at      plane.Point
	upright bool // its join runs up
}

// joinMarks finds the join marks of a page: circles of four curves with a
// number on either side, both the same, as far from the middle.
func (p readPage) joinMarks(t require.TestingT) []foundJoin {
	var all []foundJoin
	for _, q := range p.paths {
		if q.curves != 4 || q.layer != "" {
			continue
		}
		ring := q.parts[0]
		at := ring[0].Toward(ring[2], 0.5)
		require.InDelta(t, 2.2, ring[0].Distance(at), 3*written)
		j := foundJoin{at: at}
		var numbers []string
		for _, r := range p.texts {
			b := r.box()
			if d := b.Centre().Distance(at); d < 5 && d > 2.2 {
				numbers = append(numbers, r.text)
				aside := b.Centre().Sub(at)
				j.upright = math.Abs(aside.X) > math.Abs(aside.Y)
			}
		}
		require.Len(t, numbers, 2, "numbers of a join mark")
		require.Equal(t, numbers[0], numbers[1])
		n, err := strconv.Atoi(numbers[0])
		require.NoError(t, err)
		j.number = n
		all = append(all, j)
	}
	return all
}

// window is what the page shows of the sheet: the clip of its lines.
func (p readPage) window() plane.Box {
	whole := plane.Box{Max: plane.Point{X: p.width, Y: p.height}.Mul(paper.Pt)}
	for _, q := range p.paths {
		if q.clip != whole {
			return q.clip
		}
	}
	return whole
}

// core is what of a page's window lies within its joins.
func (p readPage) core(marks []foundJoin) plane.Box {
	b := p.window()
	middle := b.Centre()
	for _, m := range marks {
		switch {
		case m.upright && m.at.X < middle.X:
			b.Min.X = math.Max(b.Min.X, m.at.X)
		case m.upright:
			b.Max.X = math.Min(b.Max.X, m.at.X)
		case m.at.Y < middle.Y:
			b.Min.Y = math.Max(b.Min.Y, m.at.Y)
		default:
			b.Max.Y = math.Min(b.Max.Y, m.at.Y)
		}
	}
	return b
}

// laidPage is a page with the step that brings it to its place on the sheet.
type laidPage struct {
	readPage
	number int
	step   plane.Point
	core   plane.Box // on the sheet
	window plane.Box // on the sheet
}

// joinUp lays the pages of a sheet together by their join marks. The first
// page stays where it is. Pages that no join leads to are returned apart.
func joinUp(t require.TestingT, d readDocument, s SheetSummary) (laid []laidPage, apart []laidPage) {
	if known, done := d.laid[s.First]; done {
		return known.laid, known.apart
	}
	defer func() { d.laid[s.First] = joined{laid, apart} }()
	type onPage struct {
		page int
		at   plane.Point
	}
	marks := map[int][]foundJoin{}
	byNumber := map[int][]onPage{}
	for n := s.First; n <= s.Last; n++ {
		marks[n] = d.pages[n-1].joinMarks(t)
		for _, m := range marks[n] {
			byNumber[m.number] = append(byNumber[m.number], onPage{n, m.at})
		}
	}
	// Every join is on two pages, twice on each, in the same order.
	type link struct {
		page int
		step plane.Point
	}
	links := map[int][]link{}
	for number, on := range byNumber {
		require.Len(t, on, 4, "join %d", number)
		a, b := on[:2], on[2:]
		require.Equal(t, a[0].page, a[1].page, "join %d", number)
		require.Equal(t, b[0].page, b[1].page, "join %d", number)
		require.NotEqual(t, a[0].page, b[0].page, "join %d", number)
		one, two := a[0].at.Sub(b[0].at), a[1].at.Sub(b[1].at)
		require.InDelta(t, 0, one.Distance(two), 4*written, "the marks of join %d disagree", number)
		links[a[0].page] = append(links[a[0].page], link{b[0].page, one})
		links[b[0].page] = append(links[b[0].page], link{a[0].page, one.Mul(-1)})
	}
	steps := map[int]plane.Point{}
	for first := s.First; first <= s.Last; first++ {
		if _, done := steps[first]; done {
			continue
		}
		if first > s.First && len(links[first]) == 0 {
			apart = append(apart, laidPage{readPage: d.pages[first-1], number: first})
			continue
		}
		require.Equal(t, s.First, first, "the joins do not reach page %d", first)
		steps[first] = plane.Point{}
		for queue := []int{first}; len(queue) > 0; queue = queue[1:] {
			for _, l := range links[queue[0]] {
				step := steps[queue[0]].Add(l.step)
				if old, done := steps[l.page]; done {
					require.InDelta(t, 0, old.Distance(step), 100*written, "page %d fits in two ways", l.page)
					continue
				}
				steps[l.page] = step
				queue = append(queue, l.page)
			}
		}
	}
	for n := s.First; n <= s.Last; n++ {
		if step, done := steps[n]; done {
			p := d.pages[n-1]
			core, window := p.core(marks[n]), p.window()
			laid = append(laid, laidPage{
				p, n, step,
				plane.Box{Min: core.Min.Add(step), Max: core.Max.Add(step)},
				plane.Box{Min: window.Min.Add(step), Max: window.Max.Add(step)},
			})
		}
	}
	return laid, apart
}

// printedLine is one stroke of a layer on the sheet.
type printedLine struct {
	page   *laidPage
	tree   *plane.Tree
	bounds plane.Box
	path   readPath
}

// printedLines gathers the strokes of a layer.
func printedLines(laid []laidPage, layer string) []*printedLine {
	var all []*printedLine
	for i := range laid {
		p := &laid[i]
		for _, q := range p.drawn(layer) {
			for _, part := range q.parts {
				moved := make(plane.Path, len(part))
				for i, at := range part {
					moved[i] = at.Add(p.step)
				}
				all = append(all, &printedLine{p, plane.NewTree(moved), moved.Bounds(), q})
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

// onPaper returns a mark's path turned as the sheet is and moved.
func onPaper(p plane.Path, turned bool, step plane.Point) plane.Path {
	q := make(plane.Path, len(p))
	for i, at := range p {
		if turned {
			at = plane.Point{X: -at.Y, Y: at.X}
		}
		q[i] = at.Add(step)
	}
	return q
}

// checkPiece compares a piece, brought to its place, with what is printed:
// every place of every line is on some page within its joins, and on
// every page in whose window it lies. It returns what is wrong first, "" if
// nothing is.
func checkPiece(laid []laidPage, m mark.Marking, turned bool, step plane.Point) string {
	byPage := make([]map[mark.Role][]*printedLine, len(laid))
	for i := range laid {
		byPage[i] = map[mark.Role][]*printedLine{}
		for _, role := range mark.Roles() {
			byPage[i][role] = printedLines(laid[i:i+1], role.String())
		}
	}
	wrong := ""
	for k, mark := range m.Marks {
		lines := make([][]*printedLine, len(laid)) // of the mark's role, by page
		for i := range laid {
			lines[i] = byPage[i][mark.Role]
		}
		samples(onPaper(mark.Path, turned, step), func(at plane.Point, along float64) bool {
			within := false
			for i := range laid {
				page := &laid[i]
				if !page.window.Grown(-offLine).Holds(at) {
					continue
				}
				found := false
				for _, l := range lines[i] {
					found = found || l.bounds.Grown(offLine).Holds(at) && l.tree.Distance(at, 1) <= offLine
				}
				if !found {
					wrong = fmt.Sprintf("page %d lacks mark %d (%v %q) %.1f mm along, at %v", page.number, k, mark.Role, mark.Name, along, at)
					return false
				}
				within = within || page.core.Grown(offLine).Holds(at)
			}
			if !within {
				wrong = fmt.Sprintf("mark %d (%v %q) is within the joins of no page %.1f mm along, at %v", k, mark.Role, mark.Name, along, at)
			}
			return within
		})
		if wrong != "" {
			return wrong
		}
	}
	return ""
}

// strays returns the first printed place of a sheet that is on no line of its
// pieces, "" if there is none.
func strays(laid []laidPage, lines map[mark.Role][]*plane.Tree) string {
	wrong := ""
	for _, role := range mark.Roles() {
		for _, l := range printedLines(laid, role.String()) {
			samples(l.tree.Path(), func(at plane.Point, _ float64) bool {
				for _, tree := range lines[role] {
					if tree.Distance(at, 1) <= offLine {
						return true
					}
				}
				wrong = fmt.Sprintf("page %d has a %v at %v that is no line of its piece", l.page.number, role, at)
				return false
			})
		}
	}
	return wrong
}

func checkJoined(t require.TestingT, set arrange.Set, d readDocument, s Summary) {
	byName := map[string]mark.Marking{}
	for _, m := range set.Pieces {
		name := m.Name
		if name == "" {
			name = m.Key
		}
		byName[name] = m
	}
	seen := 0
	for _, sheet := range append(formsAsSheets(s), s.Sheets...) {
		laid, apart := joinUp(t, d, sheet)
		require.Empty(t, apart, "pages without a join")
		lines := map[mark.Role][]*plane.Tree{}
		// The first may be a large piece: it is found by what the others leave.
		for k, name := range slices.Backward(sheet.Pieces) {
			m, known := byName[name]
			require.True(t, known, name)
			turned := slices.Contains(sheet.Turned, name)
			step, ok := findPiece(laid, m, turned, k == 0, lines)
			require.True(t, ok, "%s is not on its sheet", name)
			assert.Empty(t, checkPiece(laid, m, turned, step), name)
			for _, mark := range m.Marks {
				lines[mark.Role] = append(lines[mark.Role], plane.NewTree(onPaper(mark.Path, turned, step)))
			}
			seen++
		}
		assert.Empty(t, strays(laid, lines))
	}
	assert.Equal(t, len(set.Pieces), seen, "pieces on sheets")
}

// findPiece finds where on the sheet the piece lies. The last of a sheet of
// several pages lies where its bounds are those of what is printed and is no line
// of the pieces found before. Any other, which is whole on one page, lies where a
// printed line is its first line moved, and all its other lines are there as well.
func findPiece(laid []laidPage, m mark.Marking, turned, last bool, found map[mark.Role][]*plane.Tree) (plane.Point, bool) {
	first := onPaper(m.Marks[0].Path, turned, plane.Point{})
	if len(laid) > 1 && last {
		printed, meant := plane.EmptyBox(), plane.EmptyBox()
		for _, role := range mark.Roles() {
			for _, l := range printedLines(laid, role.String()) {
				if !isOneOf(l.tree.Path(), found[role]) {
					printed = printed.Union(l.bounds)
				}
			}
		}
		for _, mark := range m.Marks {
			meant = meant.Union(onPaper(mark.Path, turned, plane.Point{}).Bounds())
		}
		return printed.Min.Sub(meant.Min), true
	}
	for _, l := range printedLines(laid, m.Marks[0].Role.String()) {
		step := l.bounds.Min.Sub(first.Bounds().Min)
		if l.bounds.Max.Distance(first.Bounds().Max.Add(step)) < offLine && checkPiece(laid, m, turned, step) == "" {
			return step, true
		}
	}
	return plane.Point{}, false
}

// isOneOf reports whether a printed path lies along one of some lines.
func isOneOf(path plane.Path, lines []*plane.Tree) bool {
	for _, tree := range lines {
		along := true
		samples(path, func(at plane.Point, _ float64) bool {
			along = tree.Distance(at, 1) <= offLine
			return along
		})
		if along {
			return true
		}
	}
	return false
}

// Dashes go on from page to page: the phase of each run is how far along its
// line it starts.
func TestDashesGoOn(t *testing.T) {
	m := sample.Skirt()
	d, s := drawn(t, arrange.Set{Title: "Skirt", Pieces: []mark.Marking{m}}, "letter")
	sheet := s.Sheets[0]
	laid, _ := joinUp(t, d, sheet)
	turned := len(sheet.Turned) > 0
	step, ok := findPiece(laid, m, turned, true, nil)
	require.True(t, ok)
	looked := 0
	for _, mark := range m.Marks {
		path := onPaper(mark.Path, turned, step)
		for _, l := range printedLines(laid, mark.Role.String()) {
			if len(l.path.dashes) == 0 {
				continue
			}
			start, along, away := path.Nearest(l.tree.Path()[0])
			end, _, awayToo := path.Nearest(l.tree.Path()[len(l.tree.Path())-1])
			if away > offLine || awayToo > offLine || start == end {
				continue // a run of another mark
			}
			period := 0.0
			for _, length := range l.path.dashes {
				period += length
			}
			off := math.Mod(along-l.path.phase, period)
			off = math.Min(math.Abs(off), period-math.Abs(off))
			assert.Less(t, off, offLine, "%v %q on page %d: dashes are %.3f mm off", mark.Role, mark.Name, l.page.number, off)
			looked++
		}
	}
	assert.Greater(t, looked, 20)
}

// Arrow heads have their tips at the ends of their lines.
func TestArrowHeads(t *testing.T) {
	d, s := drawn(t, few(), "letter")
	sheet := s.Sheets[0]
	laid, _ := joinUp(t, d, sheet)
	m := sample.Bodice()
	step, ok := findPiece(laid, m, len(sheet.Turned) > 0, true, nil)
	require.True(t, ok)
	tips := func(role mark.Role) []plane.Point {
		var all []plane.Point
		for _, p := range laid {
			for _, q := range p.paths {
				if q.layer == role.String() && q.painted == "f" && len(q.parts) == 1 && p.core.Holds(q.parts[0][0].Add(p.step)) {
					require.Len(t, q.parts[0], 3)
					all = append(all, q.parts[0][0].Add(p.step))
				}
			}
		}
		return all
	}
	for _, theMark := range m.Marks {
		path := onPaper(theMark.Path, len(sheet.Turned) > 0, step)
		var want []plane.Point
		switch theMark.Role {
		case mark.Grain:
			want = []plane.Point{path[0], path[len(path)-1]}
		case mark.Arrow:
			want = []plane.Point{path[len(path)-1]}
		default:
			continue
		}
		got := tips(theMark.Role)
		require.Len(t, got, len(want), theMark.Role)
		for _, w := range want {
			nearest := math.Inf(1)
			for _, g := range got {
				nearest = math.Min(nearest, g.Distance(w))
			}
			assert.Less(t, nearest, offLine, "%v", theMark.Role)
		}
	}
}
