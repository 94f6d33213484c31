package ink

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/mark"
)

// The sizes of the table by their uses. That 9 pt is the smallest that is read with ease at
// arm's length: common practice.
func TestSizesOfType(t *testing.T) {
	for name, c := range map[string]struct {
		style Style
		want  Style
	}{
		"title":       {Title(), Style{Bold, 22, Black()}},
		"part":        {Part(), Style{Bold, 14, Black()}},
		"heading":     {Heading(), Style{Bold, 11, Black()}},
		"lead":        {Lead(), Style{Regular, 11, Black()}},
		"text":        {Text(), Style{Regular, 9, Black()}},
		"strong text": {StrongText(), Style{Bold, 9, Black()}},
		"caption":     {Caption(), Style{Regular, 9, Grey()}},
		"tick":        {Tick(), Style{Regular, 6.5, Black()}},
	} {
		assert.Equal(t, c.want, c.style, name)
	}
	for _, role := range mark.Roles() {
		assert.Equal(t, Style{Regular, 9, PenOf(role).Colour}, LineName(role), role)
	}
	for name, all := range map[string][]Style{"names": Names(), "pale words": PaleWords()} {
		for i, s := range all {
			assert.GreaterOrEqual(t, s.Size, 9.0, name)
			if i > 0 {
				assert.GreaterOrEqual(t, all[i-1].Size/s.Size, 1.2, "%s: %v and %v pt look alike", name, all[i-1].Size, s.Size)
			}
		}
	}
}
