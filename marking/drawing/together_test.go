package drawing

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The drawings of one file may have twice as much as one of them: the one that goes beyond it says
// so, and no more are read.
func TestDrawingsAreBoundedTogether(t *testing.T) {
	// Here are three lines and what closes them, of five points, and two elements.
	data := []byte(svg(`<path d="M0 0h60v60h-60z"/>`))
	one := &Reader{}
	_, err := one.Read("a.svg", data)
	require.NoError(t, err)
	assert.Equal(t, Reader{bytes: len(data), elements: 2, visits: one.visits, legs: 3, points: 5}, *one)
	assert.Positive(t, one.visits)
	for _, c := range []struct {
		name   string
		before Reader // of which there is room for one drawing more
		more   Reader // with which there is not
		says   string
	}{
		{"bytes", Reader{bytes: 20<<20 - len(data)}, Reader{bytes: 20<<20 - len(data) + 1}, "20 MB"},
		{"elements", Reader{elements: 199_998}, Reader{elements: 199_999}, "200,000 elements"},
		{"drawn again", Reader{visits: 800_000 - one.visits}, Reader{visits: 800_001 - one.visits}, "800,000 elements to draw, with those that are used again"},
		{"lines", Reader{legs: 399_997}, Reader{legs: 399_998}, "400,000 lines and curves"},
		{"points", Reader{points: 3_999_995}, Reader{points: 3_999_996}, "4,000,000 points once their curves are drawn"},
	} {
		t.Run(c.name, func(t *testing.T) {
			d, err := c.before.Read("a.svg", data)
			require.NoError(t, err)
			assert.NotNil(t, d)
			assert.False(t, c.before.Full())
			d, err = c.more.Read("a.svg", data)
			assert.Nil(t, d)
			assert.EqualError(t, err, "a.svg: the drawings of all pieces, as far as this one, have more than "+c.says+"\nhint: take out of them what belongs to no piece, or divide the file")
			assert.True(t, c.more.Full())
		})
	}
}
