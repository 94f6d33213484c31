package sketch

import (
	"fmt"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

const written = `unit = "in" # a remark with = and [
[piece.front.edge."a = [b]"]
points = [[0, 0], # the corner
          [1, "2 1/2"]] # the other

smooth = true
[piece.back]
sample = {tucks = 3, flat = '1 in'}
`

func ExampleValues() {
	for _, v := range Values(written) {
		fmt.Printf("%s | %s | %q\n", v.Table, v.Key, v.Value.In(written))
	}
	// Output:
	//  | unit | "\"in\""
	// piece.front.edge."a = [b]" | points | "[[0, 0], # the corner\n          [1, \"2 1/2\"]]"
	// piece.front.edge."a = [b]" | smooth | "true"
	// piece.back | sample | "{tucks = 3, flat = '1 in'}"
}

func ExampleAtoms() {
	for _, v := range Values(written) {
		for _, a := range Atoms(written, v.Value) {
			fmt.Print(a.In(written), " ")
		}
	}
	// Output: "in" 0 0 1 "2 1/2" true tucks 3 flat '1 in'
}

func TestSaying(t *testing.T) {
	for _, c := range []struct{ name, text, table, key, want string }{
		{"a value that is there", "[a]\nx = [1,\n2] # b\ny = 3\n", "a", "x", "[a]\nx = 9 # b\ny = 3\n"},
		{"one more", "[a]\ny = 3\n", "a", "x", "[a]\nx = 9\ny = 3\n"},
		{"one more at the top", "[a]\ny = 3\n", "", "x", "x = 9\n[a]\ny = 3\n"},
		{"in place of tables", "[a]\ny = 3\n[a.x]\nz = 1\n[b]\n[a.x.w]\n[a.xy]\n", "a", "x", "[a]\nx = 9\ny = 3\n[b]\n[a.xy]\n"},
		{"in a table that is not there", "y = 3", "a", "x", "y = 3\n[a]\nx = 9\n"},
	} {
		assert.Equal(t, c.want, Saying(c.text, c.table, c.key, "9"), c.name)
	}
}

// Whatever a text is, what is found in it lies in it, in its order, and may be put otherwise.
func TestValuesOfAnyText(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringOf(rapid.SampledFrom([]rune("a=.[]{}\"'\\#, \n1é"))).Draw(t, "text")
		at := 0
		for _, v := range Values(text) {
			assert.LessOrEqual(t, at, v.Line.From)
			assert.LessOrEqual(t, v.Line.From, v.Value.From)
			assert.LessOrEqual(t, v.Value.From, v.Value.To)
			at = v.Value.From
			for _, a := range Atoms(text, v.Value) {
				assert.LessOrEqual(t, at, a.From)
				assert.Less(t, a.From, a.To)
				at = a.To
			}
			assert.LessOrEqual(t, at, v.Value.To)
			at = v.Value.To
			assert.Equal(t, v.Value.To, v.Line.To)
			assert.True(t, utf8.ValidString(v.Value.Put(text, "x")))
		}
		at = 0
		for _, one := range Tables(text) {
			assert.Equal(t, one.Whole.From, one.Header.From)
			assert.LessOrEqual(t, one.Header.To, one.Whole.To)
			assert.LessOrEqual(t, at, one.Whole.From)
			at = one.Whole.To
		}
		assert.LessOrEqual(t, at, len(text))
	})
}
