package start_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/length"
	"tuckmark/marking/start"
)

func TestReadPieces(t *testing.T) {
	names, err := start.ReadPieces(" front,neck band , Ärmel", always)
	require.NoError(t, err)
	assert.Equal(t, []string{"front", "neck band", "Ärmel"}, names)

	noSnow := func(c rune) bool { return c != '❄' }
	for _, c := range []struct{ name, said, want string }{
		{"none", "", "piece.\"\": the name or text is empty\nhint: write at least one letter, or leave the line out"},
		{"one missing", "front,,back", "piece.\"\": the name or text is empty\nhint: write at least one letter, or leave the line out"},
		{"twice the same", "front, front", "piece.front: is given twice\nhint: give each a name of its own"},
		{"three times the same", "front,front,front", "piece.front: is given twice\nhint: give each a name of its own"},
		{"a letter that no font has", "front ❄", "piece.\"front ❄\": the sheets' font has no \"❄\" (U+2744)\nhint: write it with other letters"},
		{"a tab inside", "left\tfront", "piece.\"left\\tfront\": has a character that cannot be printed (U+0009)\nhint: write the text on one line, without tabs"},
		{"several", "front,front,❄", "piece.front: is given twice\nhint: give each a name of its own\n" +
			"piece.\"❄\": the sheets' font has no \"❄\" (U+2744)\nhint: write it with other letters"},
		{"1001", strings.Repeat("a,", 1000) + "a", "there are 1001 here; at most 1000 are drawn\nhint: divide the file"},
		{"too long", strings.Repeat("a", 201), "piece." + strings.Repeat("a", 201) + ": the text has 201 letters\nhint: a text has at most 200 letters"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := start.ReadPieces(c.said, noSnow)
			assert.EqualError(t, err, c.want)
		})
	}
}

// Any name that is taken makes a file that is read again, whatever stands in it.
func TestNamesOfAnySign(t *testing.T) {
	for _, name := range []string{`a "front"`, `back\slash`, "front.side", "a # b", "{{.Key}}", "[x]", "'", "front=", "\u00a7 front", "ſleeve"} {
		names, err := start.ReadPieces(name, always)
		require.NoError(t, err, name)
		withoutRemark(t, start.Answers{Title: name, Size: name, Unit: length.Inch, Pieces: append(names, "front", "back")})
	}
}
