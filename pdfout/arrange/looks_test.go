package arrange

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// However few places a sheet may look at, whatever is told at a place is on it, or in the key,
// and it looks at no more.
func TestNothingIsLostWhereNoMoreIsLooked(t *testing.T) {
	for _, looks := range []int{0, 1, 10, 40, 200, 3000} {
		t.Run(fmt.Sprint(looks), func(t *testing.T) {
			m, told := crowded(150, 200, 30)
			s := sheetOf(m)
			s.Looks = looks
			s.Letter()
			said := saidOn(s)
			for _, words := range told {
				assert.Contains(t, said, words)
			}
			assert.GreaterOrEqual(t, s.Looks, 0)
			if looks <= 200 {
				require.Zero(t, s.Looks, "it would look at more")
			}
		})
	}
}

// A sheet that may look at none has no letters in its lines, and its distances lie where they are
// measured.
func TestSheetThatLooksNowhere(t *testing.T) {
	m, _ := crowded(150, 200, 30)
	s := sheetOf(m)
	s.Looks = 0
	s.Letter()
	assert.Empty(t, s.Letters)
	assert.Empty(t, s.Captions)
	require.Len(t, s.Thin, len(m.Dimensions)*3, "a line and two heads of each, and nothing that leads there")
	for i, d := range m.Dimensions {
		assert.ElementsMatch(t, []any{d.From, d.To}, []any{s.Thin[3*i][0], s.Thin[3*i][1]})
	}
}
