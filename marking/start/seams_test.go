package start

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// A yoke is drafted down to the chest: where nothing hangs from it the garment ends there.
func TestLone(t *testing.T) {
	for pieces, want := range map[string]string{
		"yoke,back,sleeve":              "yoke: it is the top of a front alone",
		"yoke":                          "yoke: it is the top of a front alone",
		"yoke,skirt,back":               "yoke: it is the top of a front alone", // the skirt is sewn to none of both
		"yoke,front,back":               "",
		"yoke,left front":               "",                                                                               // it hangs from it, and is no whole front yet
		"yoke,back yoke,front skirt":    "yoke: it is the top of a front alone\nback yoke: it is the top of a back alone", // half a skirt is sewn to nothing
		"left front,right front,yoke":   "",
		"back yoke,front,sleeve":        "back yoke: it is the top of a back alone",
		"back yoke,back,front":          "",
		"yoke,back yoke,skirt":          "",
		"yoke,back yoke,front,skirt":    "back yoke: it is the top of a back alone",
		"left yoke,right yoke,back":     "left yoke: it is the top of a front alone",
		"lining yoke,front,lining back": "lining yoke: it is the top of a front alone",
		"front,back":                    "",
	} {
		var said []string
		for _, line := range Lone(strings.Split(pieces, ",")) {
			line, _, _ = strings.Cut(line, ";")
			said = append(said, line)
		}
		assert.Equal(t, want, strings.Join(said, "\n"), pieces)
	}
}
