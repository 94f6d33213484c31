package browser

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Rules of this file: how long something is, in the picture and on the screen.

// What is measured is read as off a ruler, and catches corners that are near.
func TestMeasuring(t *testing.T) {
	b := openTab(t, desk, look(t, copied(t, frock)).address)
	b.shows("band", "top", 8)
	off := func(p point) point { return point{p.X + 3, p.Y - 2} }
	for _, c := range []struct{ piece, line, long string }{
		{"front", "neck", "3 in"},
		{"front", "centre front", "11 in"},
		{"front", "shoulder", "2 1/16 in: 2 in across, 1/2 in up"},
		{"band", "right", "2 in"},
	} {
		b.click("#measure")
		b.clickAt(off(b.onLine(c.piece, c.line, 0)))
		b.clickAt(off(b.onLine(c.piece, c.line, 1)))
		b.until(fmt.Sprintf(`document.getElementById("measured").textContent.startsWith(%s)`, quoted(c.long)), c.piece, " ", c.line)
		b.keys(escape)
		assert.False(t, value[bool](b, `document.getElementById("measured").checkVisibility()`), "Escape ends measuring")
	}
}

// Measuring by keys alone gives the same.
func TestMeasuringByKeys(t *testing.T) {
	b := openTab(t, desk, look(t, copied(t, frock)).address)
	b.shows("band", "top", 8)
	value[any](b, `document.getElementById("stage").focus()`)
	b.keys("m")
	b.until(`document.querySelector("#over .cross") !== null`, "there is a cross")
	cross := `(r => ({ X: r.x + r.width / 2, Y: r.y + r.height / 2 }))(document.querySelector("#over .cross").getBoundingClientRect())`
	goTo := func(to point) {
		for range 200 {
			b.settled()
			at := value[point](b, cross)
			dx, dy := to.X-at.X, to.Y-at.Y
			switch {
			case math.Hypot(dx, dy) < 1:
				return
			case math.Abs(dx) > math.Abs(dy) && dx > 0:
				b.keys(arrowRight)
			case math.Abs(dx) > math.Abs(dy):
				b.keys(arrowLeft)
			case dy > 0:
				b.keys(arrowDown)
			default:
				b.keys(arrowUp)
			}
		}
		require.Fail(t, "the cross does not come to the corner")
	}
	goTo(b.onLine("front", "neck", 0))
	b.keys(enter)
	goTo(b.onLine("front", "neck", 1))
	b.keys(enter)
	b.until(`document.getElementById("measured").textContent.startsWith("3 in")`, "the neck is 3 in wide")
	b.keys(escape)
	assert.False(t, value[bool](b, `document.getElementById("measured").checkVisibility()`))
}

// The check square of a page is as long as it says.
func TestTheCheckSquareMeasuresWhatItSays(t *testing.T) {
	b := openTab(t, desk, look(t, copied(t, frock)).address+"?show=pages")
	b.until(`document.querySelector("#drawing path[data-piece]")`)
	// A square of 4 in, as it lies in the window.
	square := fmt.Sprintf(`[...document.querySelectorAll("#drawing *")].filter(e => e instanceof SVGGeometryElement).map(e => { const r = e.getBoundingClientRect(), s = document.getElementById("board").getScreenCTM().a; return { X: r.x, Y: r.y, Width: r.width, Height: r.height, fits: Math.abs(r.width / s - %[1]f) < 1 && Math.abs(r.height / s - %[1]f) < 1 } }).find(b => b.fits)`, 4*inch)
	require.True(t, value[bool](b, square+" !== undefined"), "there is a check square")
	for b.scale() < 1.5 {
		b.wheel(value[box](b, square).middle(), -200)
	}
	b.settled()
	b.drag(value[box](b, square).middle(), b.boxOf("#board").middle())
	b.settled()
	at := value[box](b, square)
	b.click("#measure")
	b.clickAt(point{at.X, at.Y + at.Height/2})
	b.clickAt(point{at.X + at.Width, at.Y + at.Height/2})
	b.until(`/^4 in(:|$)/.test(document.getElementById("measured").textContent)`, "the square is 4 in wide")
}

// Real size is what a ruler says that was held to the screen, also when the page is loaded again.
func TestRealSize(t *testing.T) {
	b := openTab(t, desk, look(t, copied(t, frock)).address)
	b.shows("band", "top", 8)
	b.click("#zoom-real")
	b.until(`document.getElementById("ruler").open`, "the ruler is asked for first")
	b.sound("with the ruler")
	long := value[string](b, `document.getElementById("ruler-length").textContent`)
	assert.Equal(t, "4 in", long)
	// This screen has 110 points to the inch: the bar is made as long as the ruler's 4 in.
	const points = 440.0
	value[any](b, fmt.Sprintf(`(s => { s.value = %f; s.dispatchEvent(new Event("input", { bubbles: true })) })(document.getElementById("ruler-slide"))`, points))
	assert.InDelta(t, points, b.boxOf("#ruler-bar").Width, 1)
	b.click(`#ruler button[value="set"]`)
	b.until(`!document.getElementById("ruler").open`)
	hundred := 100 * points / (4 * inch) // points for 100 mm
	assert.InDelta(t, hundred, 100*b.scale(), 0.5)
	b.open("/")
	b.shows("band", "top", 8)
	value[any](b, `document.getElementById("stage").focus()`)
	b.keys("1")
	b.settled()
	assert.False(t, value[bool](b, `document.getElementById("ruler").open`), "the ruler is asked for once")
	assert.InDelta(t, hundred, 100*b.scale(), 0.5)
}
