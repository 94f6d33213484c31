package browser

import (
	"encoding/json"
	"fmt"
	"math"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/require"
)

// Rules of this file: a page is used as by hand: a mouse, fingers, keys, at places of the
// window. Nothing here calls what the page's script has.

// point is a place in the window, in points of the screen from its upper left corner, or one in
// the picture, in mm.
type point struct{ X, Y float64 }

// box is where an element lies in the window.
type box struct{ X, Y, Width, Height float64 }

func (b box) middle() point {
	return point{math.Round(b.X + b.Width/2), math.Round(b.Y + b.Height/2)}
}

// quoted is a text as an expression has it.
func quoted(text string) string {
	data, err := json.Marshal(text)
	if err != nil {
		panic(err) // every text can be quoted
	}
	return string(data)
}

// boxOf is where the first element that a selector finds lies; it is brought into the window.
func (b *tab) boxOf(selector string) box {
	b.t.Helper()
	e := "document.querySelector(" + quoted(selector) + ")"
	b.until(e+"?.checkVisibility()", "there is ", selector)
	return value[box](b, `(e => {
		const r = e.getBoundingClientRect()
		if (r.top < 0 || r.bottom > innerHeight || r.left < 0 || r.right > innerWidth) e.scrollIntoView({block: "center", inline: "nearest", behavior: "instant"})
		const { x, y, width, height } = e.getBoundingClientRect()
		return { X: x, Y: y, Width: width, Height: height }
	})(`+e+`)`)
}

// mouse does one thing with the mouse at a place.
func (b *tab) mouse(what input.DispatchMouseEventType, at point, more ...chromedp.MouseOption) {
	b.t.Helper()
	run(b, string(what), chromedp.MouseEvent(what, at.X, at.Y, more...))
}

// clickAt clicks at a place.
func (b *tab) clickAt(at point) {
	b.t.Helper()
	b.mouse(chromedp.MouseMoved, at)
	run(b, "click", chromedp.MouseClickXY(at.X, at.Y))
}

// click clicks at the middle of an element, which nothing may lie over.
func (b *tab) click(selector string) {
	b.t.Helper()
	at := b.boxOf(selector).middle()
	hit := value[bool](b, fmt.Sprintf(`(e => e !== null && (e.closest(%[1]s) !== null || e.querySelector(%[1]s) !== null || e.closest("label")?.querySelector(%[1]s) !== undefined))(document.elementFromPoint(%[2]f, %[3]f))`, quoted(selector), at.X, at.Y))
	require.True(b.t, hit, "%s can be clicked at", selector)
	b.clickAt(at)
}

// wheel turns the wheel at a place: so many points down.
func (b *tab) wheel(at point, down float64) {
	b.t.Helper()
	call(b, turnWheel, turned{Type: chromedp.MouseWheel, X: at.X, Y: at.Y, DeltaY: down})
}

// turned is how the wheel is turned: Input.dispatchMouseEvent wants both ways, also where one
// of them is 0, which the library leaves out.
type turned struct {
	Type   input.DispatchMouseEventType `json:"type"`
	X      float64                      `json:"x"`
	Y      float64                      `json:"y"`
	DeltaX float64                      `json:"deltaX"`
	DeltaY float64                      `json:"deltaY"`
}

var turnWheel = cdp.Command[turned, cdp.Empty]{Method: input.CommandDispatchMouseEvent}

// drag presses the mouse at one place and lets it go at another.
func (b *tab) drag(from, to point) {
	b.t.Helper()
	b.mouse(chromedp.MouseMoved, from)
	b.mouse(chromedp.MousePressed, from, chromedp.ButtonLeft, chromedp.ClickCount(1))
	const steps = 4
	for i := 1; i <= steps; i++ {
		part := float64(i) / steps
		b.mouse(chromedp.MouseMoved, point{from.X + part*(to.X-from.X), from.Y + part*(to.Y-from.Y)}, chromedp.ButtonLeft)
	}
	b.mouse(chromedp.MouseReleased, to, chromedp.ButtonLeft, chromedp.ClickCount(1))
}

// fingers puts fingers on the screen, moves them, or with none takes them off.
func (b *tab) fingers(what input.DispatchTouchEventType, at ...point) {
	b.t.Helper()
	touches := []*input.TouchPoint{}
	for i, p := range at {
		finger := float64(i)
		touches = append(touches, &input.TouchPoint{X: p.X, Y: p.Y, ID: &finger})
	}
	call(b, input.DispatchTouchEvent, input.DispatchTouchEventParams{Type: what, TouchPoints: touches})
}

// keys presses keys one after another.
func (b *tab) keys(keys ...string) {
	b.t.Helper()
	for _, key := range keys {
		run(b, "press "+key, chromedp.KeyEvent(key))
	}
}

// The keys that have no letter.
const (
	tabKey, enter, escape, space = kb.Tab, kb.Enter, kb.Escape, " "
	arrowRight, arrowLeft        = kb.ArrowRight, kb.ArrowLeft
	arrowDown, arrowUp           = kb.ArrowDown, kb.ArrowUp
)

// settled waits until what was done is drawn: two images of the screen later nothing that was
// put off to the next one is still to come.
func (b *tab) settled() {
	b.t.Helper()
	value[bool](b, `new Promise(done => requestAnimationFrame(() => requestAnimationFrame(() => done(true))))`)
}

// mmAt is the place in the picture that lies at one in the window, as the browser has it.
func (b *tab) mmAt(at point) point {
	b.t.Helper()
	b.settled()
	return value[point](b, fmt.Sprintf(`(() => {
		const p = new DOMPoint(%f, %f).matrixTransform(document.getElementById("board").getScreenCTM().inverse())
		return { X: p.x, Y: p.y }
	})()`, at.X, at.Y))
}

// pathOf is an expression for the first path that a line is drawn with.
func pathOf(piece, line string) string {
	return fmt.Sprintf(`document.querySelector("#drawing path[data-piece=%s][data-line=%s]")`, "'"+piece+"'", "'"+line+"'")
}

// onLine is where in the window a line is, a part of its length from its beginning; a mouse
// points at whole points of the screen.
func (b *tab) onLine(piece, line string, part float64) point {
	b.t.Helper()
	b.settled()
	return value[point](b, fmt.Sprintf(`(path => {
		const p = path.getPointAtLength(path.getTotalLength() * %f).matrixTransform(path.getScreenCTM())
		return { X: Math.round(p.x), Y: Math.round(p.y) }
	})(%s)`, part, pathOf(piece, line)))
}
