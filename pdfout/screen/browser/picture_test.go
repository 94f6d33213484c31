package browser

import (
	"fmt"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Rules of this file: how a picture is moved, and what is read off it.

// sameSpot asserts that two places are the same but for half a point of the screen at this scale.
func (b *tab) sameSpot(want, got point, why string) {
	b.t.Helper()
	within := 0.5 / b.scale()
	assert.InDelta(b.t, want.X, got.X, within, "%s, across", why)
	assert.InDelta(b.t, want.Y, got.Y, within, "%s, up", why)
}

// scale is how many points of the screen a mm of the picture is.
func (b *tab) scale() float64 {
	b.t.Helper()
	b.settled()
	return value[float64](b, `document.getElementById("board").getScreenCTM().a`)
}

// However the picture is made larger or moved, what lies under the pointer stays there.
func TestThePictureStaysUnderThePointer(t *testing.T) {
	b := openTab(t, desk, look(t, copied(t, frock)).address)
	b.shows("band", "top", 8)
	at := b.onLine("front", "side", 0.5)
	under := b.mmAt(at)
	first := b.scale()

	b.wheel(at, -300)
	assert.Greater(t, b.scale(), first*1.2, "the wheel makes it larger")
	b.sameSpot(under, b.mmAt(at), "under the wheel")
	larger := b.scale()
	b.wheel(at, 150)
	assert.Less(t, b.scale(), larger, "the wheel makes it smaller")
	b.sameSpot(under, b.mmAt(at), "under the wheel")

	to := point{at.X - 90, at.Y + 40}
	b.drag(at, to)
	b.sameSpot(under, b.mmAt(to), "under the mouse that drags it")

	b.click("#zoom-in")
	assert.Greater(t, b.scale(), first)
	b.click("#zoom-fit")
	assert.InDelta(t, first, b.scale(), 1e-6, "as large as at first")
	b.sameSpot(under, b.mmAt(at), "as it was at first")

	value[any](b, `document.getElementById("stage").focus()`)
	b.keys(escape) // larger goes to what is pointed at; now nothing is
	middle := b.boxOf("#board").middle()
	inMiddle := b.mmAt(middle)
	b.keys("+", "+")
	assert.Greater(t, b.scale(), first*1.5, "the key makes it larger")
	b.sameSpot(inMiddle, b.mmAt(middle), "in the middle")
	b.keys(arrowRight, arrowDown)
	moved := b.mmAt(middle)
	assert.Greater(t, moved.X, inMiddle.X, "the eye goes to the right")
	assert.Greater(t, moved.Y, inMiddle.Y, "the eye goes down")
	b.keys("-", "0")
	assert.InDelta(t, first, b.scale(), 1e-6, "the key shows all of it again")
}

// Fingers move the picture: what lies under each stays under it.
func TestFingersMoveThePicture(t *testing.T) {
	b := openTab(t, screen{wide: 412, high: 800, finger: true}, look(t, copied(t, frock)).address)
	b.shows("band", "top", 8)
	stage := b.boxOf("#board")
	scrolled := value[float64](b, "scrollY")
	left, right := stage.middle(), stage.middle()
	left.X, right.X = left.X-40, right.X+40
	underLeft, underRight := b.mmAt(left), b.mmAt(right)
	first := b.scale()

	b.fingers(input.DispatchTouchEventTypeTouchStart, left, right)
	for range 6 {
		left, right = point{left.X - 10, left.Y - 4}, point{right.X + 8, right.Y - 4}
		b.fingers(input.DispatchTouchEventTypeTouchMove, left, right)
	}
	b.sameSpot(underLeft, b.mmAt(left), "under the left finger")
	b.sameSpot(underRight, b.mmAt(right), "under the right finger")
	assert.InDelta(t, first*188/80, b.scale(), first*0.1)
	b.fingers(input.DispatchTouchEventTypeTouchEnd)

	one := stage.middle()
	under := b.mmAt(one)
	b.fingers(input.DispatchTouchEventTypeTouchStart, one)
	for range 5 {
		one = point{one.X + 12, one.Y + 9}
		b.fingers(input.DispatchTouchEventTypeTouchMove, one)
	}
	b.sameSpot(under, b.mmAt(one), "under one finger")
	b.fingers(input.DispatchTouchEventTypeTouchEnd)
	assert.Equal(t, scrolled, value[float64](b, "scrollY"), "the page does not scroll below the fingers")
}

// Each layer is hidden and shown by itself, and all at once.
func TestLayers(t *testing.T) {
	b := openTab(t, desk, look(t, copied(t, frock)).address)
	b.shows("band", "top", 8)
	// The roles whose lines are seen; what a picture has of a role is not always a line.
	seen := func() []string {
		b.settled()
		return value[[]string](b, `[...new Set([...document.querySelectorAll("#drawing [data-role] *")].filter(e => e instanceof SVGGraphicsElement && e.checkVisibility({visibilityProperty: true, opacityProperty: true}) && e.getBoundingClientRect().width + e.getBoundingClientRect().height > 0).map(e => e.closest("[data-role]").dataset.role))].sort()`)
	}
	all := seen()
	layers := value[[]string](b, `[...document.querySelectorAll("#layers [data-layer]")].map(e => e.dataset.layer)`)
	require.Subset(t, layers, all, "every role has a layer")
	require.Contains(t, all, "stitch line")
	for _, role := range []string{"stitch line", "tuck fold", "cutting line"} {
		b.click(`[data-layer="` + role + `"]`)
		assert.ElementsMatch(t, without(all, role), seen(), "%s alone is hidden", role)
		b.click(`[data-layer="` + role + `"]`)
		assert.Equal(t, all, seen(), "%s is there again", role)
	}
	b.click("#layers-none")
	assert.Empty(t, seen())
	b.click("#layers-all")
	assert.Equal(t, all, seen())

	// What is hidden is not pointed at.
	at := b.onLine("front", "side stitch line", 0.5)
	b.mouse(chromedp.MouseMoved, at)
	b.until(`document.getElementById("card").checkVisibility()`, "the stitch line is pointed at")
	b.keys(escape)
	b.click(`[data-layer="stitch line"]`)
	b.mouse(chromedp.MouseMoved, point{at.X + 200, at.Y})
	b.mouse(chromedp.MouseMoved, at)
	b.settled()
	b.settled()
	assert.NotContains(t, value[string](b, `document.getElementById("card").checkVisibility() ? document.getElementById("card").innerText : ""`), "stitch line")
}

func without(all []string, one string) []string {
	var rest []string
	for _, s := range all {
		if s != one {
			rest = append(rest, s)
		}
	}
	return rest
}

// The edges of pages over a sheet are hidden as a layer is.
func TestThePageGrid(t *testing.T) {
	b := openTab(t, desk, look(t, copied(t, frock)).address)
	b.shows("band", "top", 8)
	const edges = `[...document.querySelectorAll("#drawing .grid *, #drawing .grid")].filter(e => e.checkVisibility() && e.getBoundingClientRect().width > 0).length`
	assert.Positive(t, value[int](b, edges))
	b.click(`[data-layer="grid"]`)
	b.settled()
	assert.Zero(t, value[int](b, edges))
	b.click(`[data-layer="grid"]`)
	b.settled()
	assert.Positive(t, value[int](b, edges))
}

// Pointing at a line names it, with the numbers of the figures and the line of the file.
func TestPointingNamesTheLine(t *testing.T) {
	file := copied(t, frock)
	b := openTab(t, desk, look(t, file).address)
	b.shows("band", "top", 8)
	lines := strings.Split(text(t, file), "\n")
	placeOf := func(table string) string {
		for i, line := range lines {
			if line == table {
				return fmt.Sprintf("frock.toml:%d", i+1)
			}
		}
		require.Fail(t, "no such line", table)
		return ""
	}
	for _, c := range []struct {
		piece, line string
		part        float64 // of the line, where it is pointed at
		says        []string
		place       string // the table that the line comes from
	}{
		// Lengths by the frock's own points, as `tuckmark figures` prints them.
		{"front", "side", 0.5, []string{"side", "6 1/16", "3 9/16", "1/2"}, "[piece.front.edge.side]"},
		{"front", "armhole stitch line", 0.3, []string{"armhole", "4 15/16", "4 1/4", "1/2"}, "[piece.front.edge.armhole]"},
		{"front", "hem fold", 0.5, []string{"hem", "2"}, "[piece.front.edge.hem]"},
		{"front", "yoke 2 tuck fold", 0.5, []string{"yoke", "1/8"}, "[piece.front.tuck.yoke]"},
		{"front", "yoke 3 tuck stitching", 0.2, []string{"yoke", "1/8"}, "[piece.front.tuck.yoke]"},
		{"front", "underarm pleat fold", 0.8, []string{"underarm", "1/4"}, "[piece.front.pleat.underarm]"},
		{"front", "sleeve notch", 0.9, []string{"sleeve", "2"}, "[piece.front.notch.sleeve]"},
		{"back", "centre back turn", 0.5, []string{"centre back", "1/4"}, `[piece.back.edge."centre back"]`},
		{"band", "top", 0.3, []string{"top", "8"}, "[piece.band]"},
	} {
		t.Run(c.piece+" "+c.line, func(t *testing.T) {
			b.keys(escape)
			b.click("#zoom-fit")
			for b.scale() < 6 {
				b.wheel(b.onLine(c.piece, c.line, c.part), -800)
			}
			b.mouse(chromedp.MouseMoved, b.onLine(c.piece, c.line, c.part))
			b.until(fmt.Sprintf(`document.querySelector("#lines [aria-selected=true]")?.dataset.line === %s`, quoted(c.line)), "the line is pointed at")
			told := strings.ReplaceAll(value[string](b, `document.getElementById("card").innerText`), "\u00a0", " ")
			for _, words := range c.says {
				assert.Contains(t, told, words)
			}
			at := placeOf(c.place)
			_, row, _ := strings.Cut(at, ":")
			assert.Regexp(t, `frock\.toml:`+near(row), told, "the line of the file is in the table at %s", at)
		})
	}
}

// near is an expression for a row of a file, or one of the eight after it: a table's keys.
func near(row string) string {
	var from int
	fmt.Sscan(row, &from)
	var rows []string
	for i := range 9 {
		rows = append(rows, fmt.Sprint(from+i))
	}
	return "(" + strings.Join(rows, "|") + `)\b`
}

// Among several views what is told says of which it is; of one that it is not told of, its name alone.
func TestWhatIsToldOfOneViewAmongSeveral(t *testing.T) {
	b := openTab(t, desk, look(t, copied(t, frock)).address+"?show=views")
	for _, c := range []struct {
		view  string
		facts bool
	}{{"as it stands", true}, {"square", false}} {
		path := fmt.Sprintf(`document.querySelector(".view[data-view='%s'] path[data-piece=front][data-line=side]")`, c.view)
		b.until(path)
		b.settled()
		b.clickAt(value[point](b, `(path => {
			const p = path.getPointAtLength(path.getTotalLength() / 2).matrixTransform(path.getScreenCTM())
			return { X: Math.round(p.x), Y: Math.round(p.y) }
		})(`+path+`)`))
		b.until(fmt.Sprintf(`document.getElementById("card").textContent.endsWith(%q)`, "view: "+c.view))
		assert.Equal(t, c.facts, value[bool](b, `document.querySelector("#card .fact") !== null`), c.view)
		own := value[int](b, fmt.Sprintf(`document.querySelectorAll(".view[data-view='%s'] path[data-piece=front][data-line=side]").length`, c.view))
		assert.Equal(t, own, value[int](b, `document.querySelectorAll("#over .pointed path").length`), "the other view is left alone")
	}
}

// On paper no tools are printed; what is wrong is, and that the page is no sheet.
func TestThePagePrinted(t *testing.T) {
	l := look(t, copied(t, frock))
	b := openTab(t, desk, l.address)
	b.shows("band", "top", 8)
	require.NoError(t, saves[0].save(l.file, changed(t, bandOf(t, 12), "allowance =", "alowance =")))
	b.until(`document.querySelector("#wrong .mistake")`)
	call(b, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Media: "print"})
	assert.Empty(t, value[[]string](b, `[...document.querySelectorAll("button, input, a, summary")].filter(e => e.checkVisibility() && e.id !== "to-wrong").map(e => e.outerHTML)`))
	assert.True(t, value[bool](b, `document.querySelector("#wrong .mistake").checkVisibility()`))
	assert.Contains(t, value[string](b, `getComputedStyle(document.querySelector(".top"), "::after").content`), "no sheet")
}

// What lies between two papers is no length of cloth, and back on the first it is one again.
func TestMeasuringFromOnePaperToAnother(t *testing.T) {
	b := openTab(t, desk, look(t, copied(t, frock)).address)
	b.shows("band", "top", 8)
	b.click("#measure")
	b.clickAt(b.onLine("front", "neck", 0))
	b.clickAt(b.onLine("band", "top", 0))
	b.until(`/different papers/.test(document.getElementById("measured").textContent)`, "no length is told")
	b.clickAt(b.onLine("front", "neck", 0))
	b.clickAt(b.onLine("front", "neck", 1))
	b.until(`document.getElementById("measured").textContent.startsWith("3 in")`, "the neck is 3 in wide")
}
