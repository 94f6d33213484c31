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
