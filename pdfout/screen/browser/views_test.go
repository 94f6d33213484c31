package browser

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Each of the views that are laid over each other is hidden and shown by itself.
func TestViewsAreLayers(t *testing.T) {
	b := openTab(t, desk, look(t, copied(t, frock)).address+"?show=views&lay=over")
	b.loaded()
	seen := func() []string {
		b.settled()
		return value[[]string](b, `[...new Set([...document.querySelectorAll("#drawing [data-view] path")].filter(e => e.getBoundingClientRect().width + e.getBoundingClientRect().height > 0).map(e => e.closest("[data-view]").dataset.view))].sort()`)
	}
	require.Equal(t, []string{"as it stands", "square"}, seen())
	b.click(`[data-layer="view as it stands"]`)
	assert.Equal(t, []string{"square"}, seen())
	b.click(`[data-layer="cutting line"]`)
	b.click(`[data-layer="view as it stands"]`)
	assert.Equal(t, []string{"as it stands", "square"}, seen())
}

// The names over the parts are letters of one size on the screen, whatever is looked at and however
// large, and that of a part which is chosen is in sight.
func TestCaptionsKeepTheirSize(t *testing.T) {
	b := openTab(t, desk, look(t, copied(t, frock)).address+"?show=folded")
	b.loaded()
	const size = `(c => Number(c.getAttribute("font-size")) * c.getScreenCTM().a)(document.querySelector("#drawing .caption"))`
	b.settled()
	assert.InDelta(t, 15, value[float64](b, size), 4, "all")
	for _, address := range []string{"?show=folded&part=1", "?show=views&part=2", "?part=1"} {
		b.open("/" + address)
		b.loaded()
		b.settled()
		assert.InDelta(t, 15, value[float64](b, size), 4, address)
		assert.True(t, value[bool](b, `(part => document.querySelector('#drawing .part[data-part="' + part + '"] .caption').getBoundingClientRect().top >= document.getElementById("stage").getBoundingClientRect().top)(new URLSearchParams(location.search).get("part"))`), "%s: the caption is in sight", address)
	}
	b.click("#zoom-in")
	b.click("#zoom-in")
	b.settled()
	assert.InDelta(t, 15, value[float64](b, size), 0.1, "larger")
}
