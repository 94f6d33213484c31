package fault

import (
	"errors"
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestPlaceUnder(t *testing.T) {
	assert.Equal(t, Place{File: "pinafore.toml", Key: "neck", Line: 3}, Place{File: "pinafore.toml", Line: 3}.Under("neck"))
	for _, c := range []struct{ path, key, want string }{
		{"piece.front.edge", "neck-2_b", "piece.front.edge.neck-2_b"},
		{"piece.front.edge", "centre front", `piece.front.edge."centre front"`},
		{"piece.front.edge", "größe", `piece.front.edge."größe"`},
		{"piece", "", `piece.""`},
		{"piece", "a\nb", `piece."a\nb"`},
		{"piece", "a\n", `piece."a\n"`},
	} {
		assert.Equal(t, c.want, Place{Key: c.path}.Under(c.key).Key)
	}
}

func TestPlaceInFile(t *testing.T) {
	for want, place := range map[string]Place{
		"pinafore.toml:31": {File: "pinafore.toml", Key: "piece.front.edge.neck", Line: 31},
		"pinafore.toml":    {File: "pinafore.toml", Key: "title"},
		"":                 {Key: "piece.front", Line: 4},
	} {
		assert.Equal(t, want, place.InFile())
	}
}

func TestPartsOfAKey(t *testing.T) {
	for key, want := range map[string][]string{
		"":                                    nil,
		"title":                               {"title"},
		"piece.front.edge.neck":               {"piece", "front", "edge", "neck"},
		`piece."yoke front".tuck."a.b".width`: {"piece", "yoke front", "tuck", "a.b", "width"},
		`piece."a \"b\"".cut`:                 {"piece", `a "b"`, "cut"},
	} {
		assert.Equal(t, want, Place{Key: key}.Parts(), key)
	}
}

func TestInnermostWords(t *testing.T) {
	system := errors.New("no space left on device")
	assert.Equal(t, "no space left on device", Innermost(system))
	assert.Equal(t, "no space left on device", Innermost(fmt.Errorf("write x.pdf: %w", fmt.Errorf("write: %w", system))))
}

// A name of a file is said so that all of it is seen.
func TestPlaceInAFileOfAnOddName(t *testing.T) {
	assert.Equal(t, `"red\x1b[31m.toml"`, Place{File: "red\x1b[31m.toml"}.InFile())
	assert.Equal(t, `"a\nb.toml":3: piece.bib: wrong`, Place{File: "a\nb.toml", Line: 3, Key: "piece.bib"}.Before("wrong"))
}

// A key of 500 letters is shown as it is; of a longer one dots stand for the rest, however long it is.
func TestPlaceBeforeWithALongKey(t *testing.T) {
	long := strings.Repeat("é", 500)
	assert.Equal(t, long+": is missing", Place{Key: long}.Before("is missing"))
	assert.Equal(t, long+"...: is missing", Place{Key: long + "é"}.Before("is missing"))
	assert.Equal(t, long+"...: is missing", Place{Key: strings.Repeat(long, 50)}.Before("is missing"))
}
