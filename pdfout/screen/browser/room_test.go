package browser

import (
	"fmt"
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
		{screen{wide: 1280, high: 720}, "200%", 0.55},
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
