package proof

import (
	"fmt"
	"image"
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/seen"
	"tuckmark/pdfout/sets"
)

// Rules of this file: the pages as they come out of a renderer are laid together by
// their join marks, and every dot of every line is looked for on the single page,
// where each piece is whole, and the other way round. Where each piece lies is read
// from the PDF; what is dark is seen in the pictures alone. A dot is found where a
// dark dot lies within one dot of its place: two pages cut a line into dots at
// different places. Where text, join lines and the like may lie, on one page or the
// other, nothing is looked for; how much that leaves out is counted and bounded.

const (
	// leastCompared is the least share of all dots of lines that must really have
	// been looked for, so that the test cannot come to look at nothing.
	leastCompared = 0.95
	// leastShared is that share for the strips that two pages share, where the join
	// lines, their marks and numbers lie.
	leastShared = 0.8
	// windowSide is how far inside the side of a page's window a dot must lie to
	// be looked for there, in mm: the side cuts through dots.
	windowSide = dot
	// coreSide is how far beyond a join line a dot still is within it, in mm: the
	// join line runs through dots as well.
	coreSide = dot / 2
	// farLook is how far around a dot that is not found a dark one is looked for
	// to say how far off the line is, in dots.
	farLook = 12
)

// comparison is what became of the dots of lines that were looked for.
type comparison struct {
	lines    int // dots of lines
	looked   int // of these, those that were looked for
	same     int // of these, those found at the very dot on every page
	lacking  int // those not found
	first    string
	farthest float64 // how far off the nearest dark dot was at most, in dots
}

// share is how many of the dots were looked for.
func (c comparison) share() float64 { return float64(c.looked) / float64(max(1, c.lines)) }

func (c comparison) String() string {
	return fmt.Sprintf("%d of %d dots looked for (%.2f %%), %.2f %% found at the very dot, %d not found (%.1f dots off at most)",
		c.looked, c.lines, 100*c.share(), 100*float64(c.same)/float64(max(1, c.looked)), c.lacking, c.farthest)
}

// lack notes a dot that is not found.
func (c *comparison) lack(from *tile, x, y int, what string, args ...any) {
	if c.lacking++; c.first == "" {
		c.first = fmt.Sprintf("page %d, %.1f mm from the left and %.1f mm from the top: ", from.Number, float64(x)*dot, float64(y)*dot) +
			fmt.Sprintf(what, args...)
	}
}

// target is a page on which dots are looked for.
type target struct {
	*tile
	inside plane.Box // where on its sheet it shows dots whole
	core   plane.Box
	missed []plane.Box // arrow heads that it does not show, where they are looked for
	// A dot's place is the first of these and so many times the others.
	x, y [3]float64
}

// onto prepares to look for a piece of one page on another.
func onto(from *tile, p seen.Placed, to *tile, q seen.Placed) target {
	goal := target{tile: to, inside: to.Window.Grown(-windowSide), core: to.Core.Grown(coreSide)}
	goal.inside.Max.Y -= seen.UnderBlock
	carry := func(at plane.Point) plane.Point { return q.On(plane.Path{p.From(at)})[0] }
	for i, of := range [3][2]float64{{0, 0}, {1, 0}, {0, 1}} {
		goal.x[i], goal.y[i] = to.dotsOf(carry(from.at(of[0], of[1])))
		if i > 0 {
			goal.x[i] -= goal.x[0]
			goal.y[i] -= goal.y[0]
		}
	}
	// A head is drawn on the pages that show its tip.
	for _, h := range from.heads {
		if !to.Window.Holds(carry(h.Parts[0][0].Add(from.Step))) {
			around := h.Parts[0].Bounds().Grown(dot)
			goal.missed = append(goal.missed, plane.Box{Min: around.Min.Add(from.Step), Max: around.Max.Add(from.Step)})
		}
	}
	return goal
}

// dotOf is where the middle of a dot of the first page lies on this one, in dots.
func (to *target) dotOf(x, y int) (atX, atY float64) {
	right, down := float64(x)+0.5, float64(y)+0.5
	return to.x[0] + right*to.x[1] + down*to.x[2], to.y[0] + right*to.y[1] + down*to.y[2]
}

// seek looks for all surely dark dots of a piece that one page shows on others: on
// each whose window holds them. Where every dot must lie within the joins of one of
// the others, that is looked at as well.
func (c *comparison) seek(from *tile, p seen.Placed, others []*tile, everyDot bool) {
	reach := p.Piece.Outline.Bounds()
	for _, mark := range p.Piece.Marks {
		reach = reach.Union(mark.Path.Bounds())
	}
	area := p.On(plane.Path{reach.Min, reach.Max}).Bounds().Grown(pieceReach)
	rect := from.rows(area).Intersect(from.rows(from.Window))
	var goals []target
	for _, to := range others {
		if q, there := to.find(p.Number); there {
			goals = append(goals, onto(from, p, to, q))
		}
	}
	for y := rect.Min.Y; y < rect.Max.Y; y++ {
		greys := from.image.Pix[y*from.image.Stride:]
		of := from.ground.of[y*from.ground.width:]
		for x := rect.Min.X; x < rect.Max.X; x++ {
			if greys[x] >= surelyDark || int(of[x]&pieceBits) != p.Number {
				continue
			}
			if of[x]&underFurniture != 0 {
				shows := func(to target) bool { return to.inside.Holds(to.at(to.dotOf(x, y))) }
				if of[x]&onLine != 0 && (everyDot || slices.ContainsFunc(goals, shows)) {
					c.lines++
				}
				continue
			}
			c.seekDot(from, x, y, goals, everyDot)
		}
	}
}

// seekDot looks for one dot.
func (c *comparison) seekDot(from *tile, x, y int, goals []target, everyDot bool) {
	shown, within, looked, same := false, false, false, true
	for i := range goals {
		to := &goals[i]
		atX, atY := to.dotOf(x, y)
		place := to.at(atX, atY)
		if !to.inside.Holds(place) {
			continue
		}
		shown = true
		inCore := to.core.Holds(place)
		within = within || inCore
		there := image.Pt(int(math.Floor(atX)), int(math.Floor(atY)))
		if !there.In(to.image.Rect) || to.ground.of[there.Y*to.ground.width+there.X]&underFurniture != 0 || to.lacksHead(from.at(float64(x)+0.5, float64(y)+0.5)) {
			continue
		}
		looked = looked || inCore || !everyDot
		off := darkNear(to.image, there)
		same = same && off == 0
		if off > math.Sqrt2 {
			c.farthest = max(c.farthest, off)
			c.lack(from, x, y, "page %d of the other has no line there, %s", to.Number, nearest(off))
		}
	}
	if everyDot && !within {
		c.lack(from, x, y, "it is within the joins of no page")
	}
	if everyDot || shown {
		c.lines++
	}
	if looked {
		c.looked++
		if same {
			c.same++
		}
	}
}

// lacksHead reports whether a place is one of an arrow head that the page lacks.
func (to *target) lacksHead(at plane.Point) bool {
	for _, b := range to.missed {
		if b.Holds(at) {
			return true
		}
	}
	return false
}

// darkNear returns how far from a dot the nearest somewhat dark one lies, in dots;
// infinite where there is none within farLook.
func darkNear(g *image.Gray, at image.Point) float64 {
	look := func(reach int) float64 {
		nearest := math.Inf(1)
		r := image.Rect(at.X-reach, at.Y-reach, at.X+reach+1, at.Y+reach+1).Intersect(g.Rect)
		for y := r.Min.Y; y < r.Max.Y; y++ {
			for x := r.Min.X; x < r.Max.X; x++ {
				if g.Pix[y*g.Stride+x] < somewhatDark {
					nearest = min(nearest, math.Hypot(float64(x-at.X), float64(y-at.Y)))
				}
			}
		}
		return nearest
	}
	if g.Pix[at.Y*g.Stride+at.X] < somewhatDark {
		return 0
	}
	if near := look(1); !math.IsInf(near, 1) {
		return near
	}
	return look(farLook)
}

func nearest(off float64) string {
	if math.IsInf(off, 1) {
		return "nor near it"
	}
	return fmt.Sprintf("the nearest is %.1f dots off", off)
}

// strays counts what is surely dark in a page's window and belongs to no piece and
// nothing else that is known to be printed there.
func (c *comparison) strays(p *tile) {
	rect := p.rows(p.Window)
	for y := rect.Min.Y; y < rect.Max.Y; y++ {
		for x := rect.Min.X; x < rect.Max.X; x++ {
			if p.image.Pix[y*p.image.Stride+x] < surelyDark && p.ground.of[y*p.ground.width+x] == 0 {
				c.lack(p, x, y, "it belongs to nothing")
			}
		}
	}
}

// stitch compares the pages with the single page, and with each other.
func stitch(whole, cut *printout) (lost, added, shared comparison) {
	single := whole.sheets[0][0]
	for _, sheet := range cut.sheets {
		for _, p := range sheet[0].pieces {
			q, _ := single.find(p.Number)
			lost.seek(single, q, sheet, true)
			for i, page := range sheet {
				added.seek(page, p, whole.sheets[0], false)
				for k, other := range sheet {
					if k != i {
						shared.seek(page, p, []*tile{other}, false)
					}
				}
			}
		}
		for _, page := range sheet {
			added.strays(page)
		}
	}
	return lost, added, shared
}

// finding is a comparison and the least share of dots it must really have looked for.
type finding struct {
	what  string
	found comparison
	least float64
}

// judged returns the three comparisons of a set, printed both ways.
func judged(whole, cut *printout) []finding {
	lost, added, shared := stitch(whole, cut)
	leastShared := leastShared
	if !slices.ContainsFunc(cut.sheets, func(sheet []*tile) bool { return len(sheet) > 1 }) {
		leastShared = 0 // nothing is joined
	}
	return []finding{
		{"lines of the single page, on the others", lost, leastCompared},
		{"lines of the others, on the single page", added, leastCompared},
		{"lines in the overlap, on the page beside", shared, leastShared},
	}
}

// Every example, on the paper that most homes have, as two programs draw it: the
// pages joined are the single page, the check squares measure true, and what a
// printer cannot print is white.
func TestExamplesAsPrinted(t *testing.T) {
	for name, set := range sets.Examples(t, "../../examples") {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			whole := printedOn(t, set, "single")
			require.Len(t, whole.sheets[0][0].pieces, len(set.Pieces), "pieces on the single page")
			cuts := map[string]*printout{}
			for _, p := range []string{"letter", "a4", "either"} {
				cuts[p] = printedOn(t, set, p)
			}
			for _, r := range renderers() {
				single := r.draw(t, whole.file, 1, whole.summary.Pages)
				whole.seenBy(t, single)
				for paper, cut := range cuts {
					t.Run(paper+", "+r.name, func(t *testing.T) {
						pictures := r.draw(t, cut.file, 1, cut.summary.Pages)
						cut.seenBy(t, pictures)
						for i, g := range pictures {
							assert.Empty(t, inMargin(g, cut.summary, i), "page %d", i+1)
							if hasSquare(cut.summary, i) {
								assertSquares(t, g, cut.doc.Pages[i])
							}
						}
						for _, f := range judged(whole, cut) {
							t.Logf("%s: %v", f.what, f.found)
							assert.Zero(t, f.found.lacking, "%s: %s", f.what, f.found.first)
							assert.GreaterOrEqual(t, f.found.share(), f.least, f.what)
						}
					})
				}
				assertSquares(t, single[0], whole.doc.Pages[0])
			}
		})
	}
}

// The comparison finds what it is there to find.
func TestStitchedFindsFaults(t *testing.T) {
	t.Parallel()
	set := sets.Examples(t, "../../examples")["pinafore.toml"]
	whole, cut := printedOn(t, set, "single"), printedOn(t, set, "letter")
	r := renderers()[0]
	whole.seenBy(t, r.draw(t, whole.file, 1, 1))
	pictures := r.draw(t, cut.file, 1, cut.summary.Pages)
	var sheet []*tile
	for _, s := range cut.sheets {
		if len(s) > len(sheet) {
			sheet = s
		}
	}
	require.Greater(t, len(sheet), 1, "pages that are joined")
	cut.seenBy(t, pictures)
	page := sheet[0]
	middle := page.rows(page.Core)
	middle = middle.Inset(min(middle.Dx(), middle.Dy())/2 - 20)
	const lost, added, shared = 0, 1, 2
	for _, c := range []struct {
		what  string
		spoil func(x, y int, was *image.Gray) uint8 // the dot there
		by    []int                                 // the comparisons that must find it
	}{
		{"moved to the right by 2 dots", func(x, y int, was *image.Gray) uint8 { return was.GrayAt(x-2, y).Y }, []int{lost, added, shared}},
		{"moved down by 2 dots", func(x, y int, was *image.Gray) uint8 { return was.GrayAt(x, y-2).Y }, []int{lost, added, shared}},
		{"a stripe 4 dots high is white", func(x, y int, was *image.Gray) uint8 {
			if y >= middle.Min.Y && y < middle.Min.Y+4 {
				return 255
			}
			return was.GrayAt(x, y).Y
		}, []int{lost}},
		{"a blot where no line is", func(x, y int, was *image.Gray) uint8 {
			if image.Pt(x, y).In(middle) {
				return 0
			}
			return was.GrayAt(x, y).Y
		}, []int{added}},
		{"not printed at all", func(x, y int, was *image.Gray) uint8 { return 255 }, []int{lost, shared}},
		{"made larger by a hundredth", func(x, y int, was *image.Gray) uint8 { return was.GrayAt(x*100/101, y*100/101).Y }, []int{lost, added, shared}},
	} {
		t.Run(c.what, func(t *testing.T) {
			cut.seenBy(t, pictures)
			was := page.image
			page.image = image.NewGray(was.Rect)
			for y := range was.Rect.Dy() {
				for x := range was.Rect.Dx() {
					v := c.spoil(x, y, was)
					if !image.Pt(x, y).In(was.Rect) {
						v = 255
					}
					page.image.Pix[y*page.image.Stride+x] = v
				}
			}
			all := judged(whole, cut)
			for _, k := range c.by {
				assert.Positive(t, all[k].found.lacking, all[k].what)
			}
		})
	}
	t.Run("a page left out", func(t *testing.T) {
		cut.seenBy(t, pictures)
		var lost comparison
		single := whole.sheets[0][0]
		for _, p := range page.pieces {
			q, there := single.find(p.Number)
			require.True(t, there)
			lost.seek(single, q, sheet[1:], true)
		}
		assert.Contains(t, lost.first, "within the joins of no page")
	})
}
