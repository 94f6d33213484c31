package browser

import (
	"fmt"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Rules of this file: what happens on the page in an order that nobody plans.

// viewBox is from where the picture is looked at.
func (b *tab) viewBox() string {
	b.t.Helper()
	b.settled()
	return value[string](b, `document.getElementById("board").getAttribute("viewBox")`)
}

// A mouse that is let go where the page does not hear of it drags nothing when it comes back.
func TestAMouseThatIsLetGoElsewhere(t *testing.T) {
	b := openTab(t, desk, look(t, copied(t, frock)).address)
	b.shows("band", "top", 8)
	stage := b.boxOf("#stage")
	at := stage.middle()
	before := b.viewBox()
	b.mouse(chromedp.MouseMoved, at)
	b.mouse(chromedp.MousePressed, at, chromedp.ButtonLeft, chromedp.ClickCount(1))
	// The next that the page hears of it: it is over the picture, and not pressed.
	b.mouse(chromedp.MouseMoved, point{at.X + 50, at.Y + 40})
	b.mouse(chromedp.MouseMoved, point{at.X + 90, at.Y + 70})
	assert.Equal(t, before, b.viewBox(), "the picture stays where it is")
	assert.False(t, value[bool](b, `document.getElementById("stage").matches(".dragged")`))
}

// A save while the picture is dragged, or while something is measured in it, takes nothing away.
func TestASaveInBetween(t *testing.T) {
	l := look(t, copied(t, frock))
	b := openTab(t, desk, l.address)
	b.shows("band", "top", 8)
	at := b.boxOf("#stage").middle()
	under := b.mmAt(at)
	b.mouse(chromedp.MouseMoved, at)
	b.mouse(chromedp.MousePressed, at, chromedp.ButtonLeft, chromedp.ClickCount(1))
	b.mouse(chromedp.MouseMoved, point{at.X + 30, at.Y}, chromedp.ButtonLeft)
	require.NoError(t, saves[0].save(l.file, bandOf(t, 9)))
	b.shows("band", "top", 9)
	to := point{at.X + 60, at.Y + 20}
	b.mouse(chromedp.MouseMoved, to, chromedp.ButtonLeft)
	b.mouse(chromedp.MouseReleased, to, chromedp.ButtonLeft, chromedp.ClickCount(1))
	b.sameSpot(under, b.mmAt(to), "under the mouse that goes on dragging")

	b.click("#zoom-fit")
	b.click("#measure")
	b.clickAt(b.onLine("band", "right", 0))
	b.until(`document.querySelectorAll("#over .measure .end").length === 1`, "one end is set")
	require.NoError(t, saves[1].save(l.file, bandOf(t, 9.25)))
	b.shows("band", "top", 9.25)
	b.until(`document.querySelectorAll("#over .measure .end").length === 1`, "it stays set")
}

// In another picture another length is begun; in another part of the same one it goes on.
func TestMeasuringBeginsAnewInAnotherPicture(t *testing.T) {
	b := openTab(t, desk, look(t, copied(t, frock)).address)
	b.shows("band", "top", 8)
	ends := func(n int) string {
		return fmt.Sprintf(`document.querySelectorAll("#over .measure .end").length === %d`, n)
	}
	b.click("#measure")
	b.clickAt(b.onLine("front", "neck", 0))
	b.until(ends(1), "one end is set")
	b.click("#parts-1")
	b.until(`location.search.includes("part=1") && document.querySelector("#parts-1").matches("[aria-current]")`)
	assert.True(t, value[bool](b, ends(1)), "it is still set where a part is looked at")
	b.click(`a[href="./?show=folded"]`)
	b.until(`document.body.dataset.show === "folded"`)
	b.until(ends(0), "no end is set in another picture")
	assert.True(t, value[bool](b, `document.getElementById("measure").matches("[aria-pressed=true]")`), "somebody measures")
	assert.Equal(t, "folded", value[string](b, `new URL(document.activeElement.href).searchParams.get("show")`), "the focus is where it was")
	b.click(`a[href="./?show=figures"]`)
	b.until(`document.getElementById("measure").matches("[aria-pressed=false]")`, "figures have nothing to be measured")
}

// What is measured when the program has ended is told of only while somebody measures.
func TestNothingIsToldOfMeasuringThatIsOver(t *testing.T) {
	l := look(t, copied(t, frock))
	b := openTab(t, desk, l.address)
	b.shows("band", "top", 8)
	b.bear("ERR_CONNECTION_REFUSED", "ERR_INCOMPLETE_CHUNKED_ENCODING", "ERR_EMPTY_RESPONSE", "ERR_CONNECTION_RESET")
	// What is asked for is answered, with a failure, when the test says so.
	value[any](b, `void (window.fetch = () => new Promise((_, no) => window.failNow = () => no(new TypeError("gone"))))`)
	b.click("#measure")
	at := b.onLine("front", "neck", 0)
	b.clickAt(at)
	b.clickAt(b.onLine("front", "neck", 1))
	b.until(`window.failNow !== undefined`, "a length is asked for")
	b.keys(escape)
	value[any](b, `failNow()`)
	b.settled()
	assert.False(t, value[bool](b, `document.getElementById("measured").checkVisibility()`), "nothing is told")
}

// An answer that comes after a newer one was asked for is not put in place, and one that fails
// then says nothing of the program.
func TestAnAnswerThatIsOvertaken(t *testing.T) {
	b := openTab(t, desk, look(t, copied(t, frock)).address)
	b.shows("band", "top", 8)
	// The first question is held up until the test says so.
	value[any](b, `void ((ask, first) => window.fetch = (at, how) => {
		const answer = ask(at, how)
		if (!first) return answer
		first = false
		return answer.then(a => new Promise(done => window.goOn = () => done(a)), e => new Promise((_, no) => window.goOn = () => no(e)))
	})(window.fetch, true)`)
	b.click(`a[href="./?show=folded"]`)
	b.click(`a[href="./?show=figures"]`)
	b.until(`document.body.dataset.show === "figures"`)
	b.until(`window.goOn !== undefined`)
	value[any](b, `goOn()`)
	b.settled()
	b.settled()
	assert.Equal(t, "figures", value[string](b, `document.body.dataset.show`))
	assert.False(t, value[bool](b, `document.getElementById("gone").checkVisibility()`), "nobody says that the program has ended")
}
