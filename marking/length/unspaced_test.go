package length

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// A ruler is divided into halves, quarters and so on to sixty-fourths (common practice).
func TestFindUnspaced(t *testing.T) {
	for _, c := range []struct{ written, told string }{
		{"37/8", `37/8 counts as 4 5/8; if a space is missing in it, write "3 7/8"`},
		{"13/8", `13/8 counts as 1 5/8; if a space is missing in it, write "1 3/8"`},
		{"-37/8 in", `37/8 counts as 4 5/8; if a space is missing in it, write "3 7/8"`},
		{`33/4"`, `33/4 counts as 8 1/4; if a space is missing in it, write "3 3/4"`},
		{" 37⁄8 ", `37/8 counts as 4 5/8; if a space is missing in it, write "3 7/8"`},
		{"123/4", `123/4 counts as 30 3/4; if a space is missing in it, write "12 3/4"`},
		{"115/16", `115/16 counts as 7 3/16; if a space is missing in it, write "1 15/16" or "11 5/16"`},
		{"51/2", `51/2 counts as 25 1/2; if a space is missing in it, write "5 1/2"`},
		{"34/8", `34/8 counts as 4 1/4; if a space is missing in it, write "3 4/8"`},
		{"163/64", `163/64 counts as 2 35/64; if a space is missing in it, write "1 63/64" or "16 3/64"`},

		{"3 7/8", ""},  // as it should be
		{"3 17/8", ""}, // refused anyhow
		{"15/16", ""},  // less than one
		{"9/8", ""},    // no digit to part
		{"19/8", ""},   // nor where what is left is no fraction
		{"10/8", ""},   // or nothing
		{"103/8", `103/8 counts as 12 7/8; if a space is missing in it, write "10 3/8"`},
		{"037/8", ""},   // no number that anybody writes
		{"22/7", ""},    // on no ruler
		{"137/128", ""}, // on none either
		{"31/1", ""},
		{"37/0", ""},
		{"2⅛", ""},
		{"3.7/8", ""},
		{"37", ""},
		{"", ""},
		{"wide", ""},
		{"99999999999999999999/8", ""},
	} {
		t.Run(c.written, func(t *testing.T) {
			u, ok := FindUnspaced(c.written)
			assert.Equal(t, c.told != "", ok)
			if ok {
				assert.Equal(t, c.told, u.String())
			}
		})
	}
}
