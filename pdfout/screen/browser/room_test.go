package browser

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Rules of this file: the picture is what a window is there for; all else leaves room to it.

// What stands over the picture takes no more than a share of the window, also with large letters.
func TestThePictureHasRoom(t *testing.T) {
	l := look(t, copied(t, frock))
	for _, c := range []struct {
		screen  screen
		letters string
		most    float64 // of the window
	}{
		{screen{wide: 1280, high: 720}, "100%", 0.18},
		{screen{wide: 1280, high: 720}, "200%", 0.59},
		{screen{wide: 390, high: 844, finger: true}, "100%", 0.25},
		{screen{wide: 390, high: 844, finger: true}, "200%", 0.6},
		{screen{wide: 320, high: 640, finger: true}, "100%", 0.3},
	} {
		t.Run(fmt.Sprint(c.screen.wide, " ", c.letters), func(t *testing.T) {
			b := openTab(t, c.screen, l.address)
			b.shows("band", "top", 8)
			value[any](b, fmt.Sprintf(`void (document.documentElement.style.fontSize = %q)`, c.letters))
			b.settled()
			assert.Less(t, value[float64](b, `document.getElementById("stage").getBoundingClientRect().top / innerHeight`), c.most, "where the picture begins")
			assert.LessOrEqual(t, value[float64](b, `document.documentElement.scrollWidth - innerWidth`), 0.0, "the page itself is no wider than the window")
		})
	}
}

// Whatever the window is as wide as, all of the button that prints is in it, and of the row of
// choices all of the one that is chosen.
func TestPrintingIsInSight(t *testing.T) {
	l := look(t, copied(t, "../../../examples/smock.toml"))
	for _, wide := range []int64{320, 390, 700, 1024, 1279, 1600} {
		t.Run(fmt.Sprint(wide), func(t *testing.T) {
			b := openTab(t, screen{wide: wide, high: 800}, l.address+"?show=figures")
			b.until(`document.querySelector("#shows-4[aria-current]") !== null`)
			b.settled()
			inSight := func(selector, within string) bool {
				return value[bool](b, fmt.Sprintf(`((r, w) => r.width > 30 && r.left >= w.left - 1 && r.right <= w.right + 1 && r.left >= 0 && r.right <= innerWidth)(document.querySelector(%s).getBoundingClientRect(), document.querySelector(%s).getBoundingClientRect())`, quoted(selector), quoted(within)))
			}
			assert.True(t, inSight("#print", ".top"), "the button that prints")
			assert.True(t, inSight("#help-open", ".top"), "the button for help")
			assert.True(t, inSight("#shows-4", "#along"), "what is chosen")
		})
	}
}

// The picture can be alone; a mistake is told all the same.
func TestThePictureAlone(t *testing.T) {
	l := look(t, copied(t, frock))
	b := openTab(t, desk, l.address)
	b.shows("band", "top", 8)
	beside := `document.getElementById("beside").checkVisibility()`
	whole := `document.getElementById("stage").clientWidth === innerWidth`
	b.click("#alone")
	b.until(whole)
	assert.False(t, value[bool](b, beside))
	b.keys("h")
	b.until(beside)
	b.keys("h")
	b.until(whole)
	require.NoError(t, saves[0].save(l.file, changed(t, bandOf(t, 12), "allowance =", "alowance =")))
	b.until(beside, "a mistake is told")
}

// What is told of a line that was gone to does not lie over it, and shows no half lines.
func TestWhatIsToldLeavesItsLineInSight(t *testing.T) {
	b := openTab(t, screen{wide: 390, high: 844, finger: true}, look(t, copied(t, frock)).address)
	b.shows("band", "top", 8)
	value[any](b, `document.getElementById("lines-box").open = true`)
	for _, line := range []string{"side", "neck", "hem"} {
		value[any](b, fmt.Sprintf(`document.querySelector("#lines [data-piece=front][data-line=%s]").click()`, line))
		b.until(`document.querySelector("#over .pointed")`)
		b.settled()
		at := value[box](b, `(({ x, y, width, height }) => ({ X: x, Y: y, Width: width, Height: height }))(document.querySelector("#over .pointed path").getBoundingClientRect())`)
		card := b.boxOf("#card")
		stage := b.boxOf("#stage")
		assert.LessOrEqual(t, at.Y+at.Height, card.Y, "the end of %s is over what is told", line)
		assert.GreaterOrEqual(t, at.Y, stage.Y, "the beginning of %s is in sight", line)
		assert.Less(t, card.Height, 0.6*stage.Height)
	}
}

// The button makes the line larger that is pointed at, about its own middle.
func TestLargerGoesToWhatIsPointedAt(t *testing.T) {
	b := openTab(t, desk, look(t, copied(t, frock)).address)
	b.shows("band", "top", 8)
	b.clickAt(b.onLine("front", "neck", 0.4))
	b.until(`document.querySelector("#over .pointed")`)
	before, scale := b.onLine("front", "neck", 0.5), b.scale()
	b.click("#zoom-in")
	b.until(fmt.Sprintf(`document.getElementById("board").getScreenCTM().a > %f`, scale*1.1))
	after := b.onLine("front", "neck", 0.5)
	assert.InDelta(t, before.X, after.X, 2)
	assert.InDelta(t, before.Y, after.Y, 2)
}

// A long line of the file stands on the page whole.
func TestALongLineOfTheFileIsWhole(t *testing.T) {
	l := look(t, copied(t, frock))
	b := openTab(t, screen{wide: 390, high: 844, finger: true}, l.address)
	b.shows("band", "top", 8)
	long := strings.Repeat("# and so on ", 8)
	require.NoError(t, saves[0].save(l.file, changed(t, bandOf(t, 12), "allowance =", long+"\nalowance =")))
	b.until(`document.querySelector(".excerpt")`)
	assert.LessOrEqual(t, value[float64](b, `(e => e.scrollWidth - e.clientWidth)(document.querySelector(".excerpt"))`), 0.0)
}

// In rows that go along under the window what is chosen is in sight; where it is the usual, the
// row begins with its beginning.
func TestWhatIsChosenIsInSight(t *testing.T) {
	l := look(t, copied(t, frock))
	for _, c := range []struct {
		screen        screen
		address, link string // in sight
	}{
		{screen{wide: 390, high: 844, finger: true}, "?show=figures", "#shows-4"},
		{screen{wide: 1000, high: 700}, "?show=views", "#ways-0"},
		{screen{wide: 1000, high: 700}, "?show=pages&part=5", "#parts-5"},
	} {
		b := openTab(t, c.screen, l.address+c.address)
		b.loaded()
		b.until(fmt.Sprintf(`(e => {
			const at = e.getBoundingClientRect(), row = e.closest(".along").getBoundingClientRect()
			return e.matches("[aria-current]") && at.left >= row.left && at.right <= row.right
		})(document.querySelector(%q))`, c.link), c.address)
	}
}
