package seen

import (
	"maps"
	"math"
	"regexp"
	"slices"
	"strconv"

	"github.com/stretchr/testify/require"

	"tuckmark/marking/plane"
)

// Rules of this file: the pages are put together as a maker does it, by nothing but
// what is printed on them: join marks with the same number are laid on each other, and
// each page counts only within its joins.

// markRadius is that of a join mark's circle; its numbers stand besideJoin from the line,
// and end no further than besideMark from the circle, in mm.
const (
	markRadius = 2.2
	besideJoin = 2.5
	besideMark = 1.0
)

// JoinMark is a join mark as found on a page.
type JoinMark struct {
	Number  int
	At      plane.Point
	Upright bool // its join runs up
}

// joinsHere is what a page says of one that is joined to it.
var joinsHere = regexp.MustCompile(`^page (\d+) joins here$`)

// OfJoin reports whether a text belongs to a join: its number, or which page is joined.
func OfJoin(r Text) bool {
	_, err := strconv.Atoi(r.Text)
	return err == nil || joinsHere.MatchString(r.Text)
}

// JoinNames are the pages that a page names beside its joins, each with the place where
// it does.
func (p Page) JoinNames() map[int]plane.Point {
	all := map[int]plane.Point{}
	for _, r := range p.Texts {
		if found := joinsHere.FindStringSubmatch(r.Text); found != nil {
			n, _ := strconv.Atoi(found[1])
			all[n] = r.Box().Centre()
		}
	}
	return all
}

// JoinMarks finds the join marks of a page: circles of four curves with a number beside
// them on either side of the join, both the same.
func (p Page) JoinMarks(t require.TestingT) []JoinMark {
	var all []JoinMark
	for _, q := range p.Paths {
		if q.Curves != 4 || q.Layer != "" {
			continue
		}
		ring := q.Parts[0]
		at := ring[0].Toward(ring[2], 0.5)
		require.InDelta(t, markRadius, ring[0].Distance(at), 3*Written)
		j := JoinMark{At: at}
		var numbers []string
		for _, r := range p.Texts {
			away := r.Box().Centre().Sub(at)
			beside, along := math.Abs(away.Dot(r.U.Left())), math.Abs(away.Dot(r.U))
			if math.Abs(beside-besideJoin) < 3*Written && along < markRadius+besideMark+r.Style().Width(r.Text)/2 {
				numbers = append(numbers, r.Text)
				j.Upright = r.U.Y > r.U.X
			}
		}
		require.Len(t, numbers, 2, "numbers of a join mark")
		require.Equal(t, numbers[0], numbers[1])
		n, err := strconv.Atoi(numbers[0])
		require.NoError(t, err)
		j.Number = n
		all = append(all, j)
	}
	return all
}

// UnderBlock is kept free under the title block of a page, in mm.
const UnderBlock = 1.0

// Window is what the page shows of the sheet: the clip of its lines, and what is kept free
// over it.
func (p Page) Window() plane.Box {
	for _, q := range p.Paths {
		if q.Clip != p.Whole() {
			return plane.Box{Min: q.Clip.Min, Max: q.Clip.Max.Add(plane.Point{Y: UnderBlock})}
		}
	}
	return p.Whole()
}

// Core is what of a page's window lies within its joins.
func (p Page) Core(marks []JoinMark) plane.Box {
	b := p.Window()
	middle := b.Centre()
	for _, m := range marks {
		switch {
		case m.Upright && m.At.X < middle.X:
			b.Min.X = max(b.Min.X, m.At.X)
		case m.Upright:
			b.Max.X = min(b.Max.X, m.At.X)
		case m.At.Y < middle.Y:
			b.Min.Y = max(b.Min.Y, m.At.Y)
		default:
			b.Max.Y = min(b.Max.Y, m.At.Y)
		}
	}
	return b
}

// LaidPage is a page with the step that brings it to its place on the sheet.
type LaidPage struct {
	Page
	Number int
	Step   plane.Point
	Core   plane.Box // on the sheet
	Window plane.Box // on the sheet
}

// joined is a sheet put together.
type joined struct{ laid, apart []LaidPage }

// JoinUp lays the pages of a sheet, from first to last, together by their join marks.
// The first page stays where it is. Pages that no join leads to are returned apart.
func (d Document) JoinUp(t require.TestingT, first, last int) (laid, apart []LaidPage) {
	if known, done := d.joined[first]; done {
		return known.laid, known.apart
	}
	marks := map[int][]JoinMark{}
	for n := first; n <= last; n++ {
		marks[n] = d.Pages[n-1].JoinMarks(t)
	}
	steps := stepsFrom(t, first, linksOf(t, marks))
	for n := first; n <= last; n++ {
		p := d.Pages[n-1]
		step, joined := steps[n]
		if !joined {
			require.Empty(t, marks[n], "the joins do not reach page %d", n)
			apart = append(apart, LaidPage{Page: p, Number: n})
			continue
		}
		core, window := p.Core(marks[n]), p.Window()
		laid = append(laid, LaidPage{
			p, n, step,
			plane.Box{Min: core.Min.Add(step), Max: core.Max.Add(step)},
			plane.Box{Min: window.Min.Add(step), Max: window.Max.Add(step)},
		})
	}
	d.joined[first] = joined{laid, apart}
	return laid, apart
}

// link leads from a page to one it is joined to, by a step.
type link struct {
	page int
	step plane.Point
}

// linksOf finds what pages are joined to. Every join is on two pages, twice on each, in
// the same order. Links are in the order of their joins, so that a sheet is put together
// in the same way every time: what its pages are off adds up along it.
func linksOf(t require.TestingT, marks map[int][]JoinMark) map[int][]link {
	byNumber := map[int][]link{} // where each mark lies on its page
	for _, page := range slices.Sorted(maps.Keys(marks)) {
		for _, m := range marks[page] {
			byNumber[m.Number] = append(byNumber[m.Number], link{page, m.At})
		}
	}
	links := map[int][]link{}
	for _, number := range slices.Sorted(maps.Keys(byNumber)) {
		on := byNumber[number]
		require.Len(t, on, 4, "join %d", number)
		a, b := on[:2], on[2:]
		require.Equal(t, a[0].page, a[1].page, "join %d", number)
		require.Equal(t, b[0].page, b[1].page, "join %d", number)
		require.NotEqual(t, a[0].page, b[0].page, "join %d", number)
		one, two := a[0].step.Sub(b[0].step), a[1].step.Sub(b[1].step)
		require.InDelta(t, 0, one.Distance(two), 4*Written, "the marks of join %d disagree", number)
		links[a[0].page] = append(links[a[0].page], link{b[0].page, one})
		links[b[0].page] = append(links[b[0].page], link{a[0].page, one.Mul(-1)})
	}
	return links
}

// stepsFrom follows links from a page on, and returns the step to every page they reach.
func stepsFrom(t require.TestingT, first int, links map[int][]link) map[int]plane.Point {
	steps := map[int]plane.Point{first: {}}
	for queue := []int{first}; len(queue) > 0; queue = queue[1:] {
		for _, l := range links[queue[0]] {
			step := steps[queue[0]].Add(l.step)
			if old, done := steps[l.page]; done {
				require.InDelta(t, 0, old.Distance(step), 100*Written, "page %d fits in two ways", l.page)
				continue
			}
			steps[l.page] = step
			queue = append(queue, l.page)
		}
	}
	return steps
}
