package garment

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/sketch"
	"tuckmark/marking/source"
)

// However many names stand for nothing, and however many there are, no more mistakes are worded
// than are looked for, and none lists more than a dozen names.
func TestManyNamesThatStandForNothing(t *testing.T) {
	var text strings.Builder
	text.WriteString("unit = \"mm\"\n")
	for i := range 300 {
		fmt.Fprintf(&text, "[piece.p%d%s]\nrectangle = [100, 100]\n", i, strings.Repeat("x", 100))
	}
	for i := range 15 {
		fmt.Fprintf(&text, "[trim.t%d]\nalong = [", i)
		for k := range 99 {
			fmt.Fprintf(&text, "\"q%d-%d.top\", ", i, k)
		}
		text.WriteString("]\n")
	}
	spec, err := source.Read("f.toml", []byte(text.String()), sketch.HasLetter)
	require.NoError(t, err)
	_, err = Check(spec)
	require.Error(t, err)
	told := strings.Split(err.Error(), "\n")
	require.Len(t, told, 2*101, "a hundred mistakes, each with a hint, and that there are more")
	assert.Equal(t, "f.toml: there are more mistakes: 1000 were found, and then no more were looked for", told[200])
	for _, line := range told {
		assert.Less(t, len(line), 800, line)
	}
	assert.Contains(t, told[1], ", 288 more", "the names that are not listed are counted")
}
