package source

import (
	"fmt"
	"strings"
	"testing"

	"github.com/BurntSushi/toml"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/fault"
)

// allSpots lists every spot under n as "path:line", in the order of the file.
func allSpots(n *spot, path string) []string {
	var list []string
	for i, c := range n.within {
		p := fmt.Sprintf("%s.%d", path, i)
		if c.own || c.name != "" {
			p = fault.Place{Key: path}.Under(c.name).Key
		}
		list = append(list, fmt.Sprintf("%s:%d", p, c.line))
		list = append(list, allSpots(c, p)...)
	}
	return list
}

func TestFindSpots(t *testing.T) {
	tests := []struct {
		name string
		text string
		want []string
	}{
		{"nothing", "\n# only a remark\n", nil},
		{"keys", "a = 1\n\n  b = \"x\" # c = 2\nd=true", []string{"a:1", "b:3", "d:4"}},
		{"windows line ends", "a = 1\r\nb = 2\r\n", []string{"a:1", "b:2"}},
		{"quoted keys", "\"a b\" = 1\n'c.d' = 2\n\"\\u00e9\\\"\" = 3\n\"\" = 4",
			[]string{`"a b":1`, `"c.d":2`, `"é\"":3`, `"":4`}},
		{"every escape in a key", "\n" + `"a\b\t\n\f\r\e\"\\\x41\u0042\U00000043b" = 1`, []string{`"a\b\t\n\f\r\x1b\"\\ABCb":2`}},
		{"dotted keys", "a.b = 1\na . \"c d\" = 2", []string{"a:1", "a.b:1", `a."c d":2`}},
		{"tables", "[a.b]\nc = 1\n[ d . 'e f' ] # x\ng = 2",
			[]string{"a:1", "a.b:1", "a.b.c:2", "d:3", `d."e f":3`, `d."e f".g:4`}},
		{"a table stands at its own header", "[a.b]\nc = 1\n\n[a]\nd = 2",
			[]string{"a:4", "a.b:1", "a.b.c:2", "a.d:5"}},
		{"tables in two pairs of brackets are laid over one another", "[[a]]\nb = 1\n[[a]]\nc = 2",
			[]string{"a:1", "a.b:2", "a.c:4"}},
		{"arrays", "a = [1,\n  [2, 3],\n  # a remark ]\n  \"]\", ]\nb = 4",
			[]string{"a:1", "a.0:1", "a.1:2", "a.1.0:2", "a.1.1:2", "a.2:4", "b:5"}},
		{"inline tables", "a = {b = 1, c.d = [2], \"e f\" = {}}\ng = 2",
			[]string{"a:1", "a.b:1", "a.c:1", "a.c.d:1", "a.c.d.0:1", `a."e f":1`, "g:2"}},
		{"brackets on lines of their own", "a = [ # [\n[\n1], [], # ]\n[],\n\n{\nb = 1}]",
			[]string{"a:1", "a.0:2", "a.0.0:3", "a.1:3", "a.2:4", "a.3:6", "a.3.b:7"}},
		{"tables in an array", "a = [{b = 1},\n{b = 2}]",
			[]string{"a:1", "a.0:1", "a.0.b:1", "a.1:2", "a.1.b:2"}},
		{"long texts", "a = \"\"\"\nb = 1 \\\"\"\" [\n\"\"\"\"\nc = '''\n\\'''''\nd = 1",
			[]string{"a:1", "c:4", "d:6"}},
		{"brackets and quotes in texts", "a = \"[{'\\\"=\"\nb = '[{\"'\nc = 1", []string{"a:1", "b:2", "c:3"}},
		{"dates", "a = 1979-05-27 07:32:00 # b\nc = [07:32:00,\n1]", []string{"a:1", "c:2", "c.0:2", "c.1:3"}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			var values map[string]any
			_, err := toml.Decode(tt.text, &values)
			require.NoError(t, err, "the text of the test is TOML")
			root, p := findSpots(tt.text)
			require.Nil(t, p)
			assert.Equal(t, tt.want, allSpots(root, ""))
		})
	}
}

// Tables with many keys are looked up in another way than small ones.
func TestFindSpotsInLargeTables(t *testing.T) {
	const keys = 60 // small ones have fewer than 12
	var b strings.Builder
	for i := 1; i <= keys; i++ {
		fmt.Fprintf(&b, "key%d = %d\n", i, i)
	}
	root, p := findSpots(b.String())
	require.Nil(t, p)
	require.Len(t, root.within, keys)
	for i := 1; i <= keys; i++ {
		assert.Equal(t, i, root.child(fmt.Sprintf("key%d", i)).lineOf())
	}
	assert.Nil(t, root.child("key0"))
}

func TestSpotThatIsNowhere(t *testing.T) {
	var n *spot
	assert.Nil(t, n.child("a"))
	assert.Nil(t, n.element(0))
	assert.Equal(t, 0, n.lineOf())
	assert.Nil(t, (&spot{}).element(-1))
}

func TestFindSpotsRefusesWhatWouldExhaustTheLibrary(t *testing.T) {
	deep := func(n int) string { return "a = " + strings.Repeat("[", n) + strings.Repeat("]", n) }
	names := func(n int) string {
		var b strings.Builder
		for i := range n {
			fmt.Fprintf(&b, "n%d = 0\n", i)
		}
		return b.String()
	}
	tests := []struct {
		name, text string
		line       int
		want       string // the cause; "" when the text is let pass
	}{
		{"64 brackets", deep(64), 0, ""},
		{"65 brackets", "\n" + deep(65), 2, "more than 64 brackets stand inside each other"},
		{"a million brackets", "a = " + strings.Repeat("[", 1_000_000), 1, "more than 64 brackets stand inside each other"},
		{"a million brackets of both kinds", "a = " + strings.Repeat("[{a=", 500_000), 1, "more than 64 brackets stand inside each other"},
		{"brackets side by side", "a = [" + strings.Repeat("[],", 100) + "]", 0, ""},
		{"brackets in a text", `a = "` + strings.Repeat("[", 200) + `"`, 0, ""},
		{"brackets in a long text", `a = '''` + strings.Repeat("\n[", 200) + `'''`, 0, ""},
		{"brackets in a remark", "# " + strings.Repeat("[", 200) + "\na = 1", 0, ""},
		{"brackets behind a long text", `a = ["""""", ` + strings.Repeat("[", 200), 1, "more than 64 brackets stand inside each other"},
		{"64 parts of a key", strings.Repeat("a.", 63) + "a = 1", 0, ""},
		{"65 parts of a key", strings.Repeat("a.", 64) + "a = 1", 1, "a key here has more than 64 parts"},
		{"65 parts of a header", "[" + strings.Repeat("a.", 64) + "a]", 1, "a key here has more than 64 parts"},
		{"200 letters", strings.Repeat("a", 200) + " = 1", 0, ""},
		{"201 letters", "\n\n\"" + strings.Repeat("é", 201) + "\" = 1", 3, "a name here has 201 letters"},
		{"keys too long taken together", "[" + strings.Repeat(strings.Repeat("a", 200)+".", 63) + "a]\n" + strings.Repeat("b=1\n", 10_000), 5266, "there are too many keys in this file"},
		{"2000 names side by side", names(2000), 0, ""},
		{"2001 names side by side", names(2001), 2001, "more than 2,000 names stand here beside each other"},
		{"2001 names side by side in braces", "a = {" + strings.ReplaceAll(strings.TrimSpace(names(2001)), "\n", ", ") + "}", 1, "more than 2,000 names stand here beside each other"},
		// Each has a "=", a "[" and a comma behind each value.
		{"400000 values in lists", "a = [\n" + strings.Repeat("0,", 199_998) + "]\nb = [" + strings.Repeat("0,", 199_998) + "]", 0, ""},
		{"400001 values in lists", "a = [\n" + strings.Repeat("0,", 199_998) + "]\nb = [" + strings.Repeat("0,", 199_999) + "]", 3, "here the file has more than 400,000 values"},
		{"as many in lists of their own", "a = [" + strings.Repeat("[],", 200_000) + "]", 1, "here the file has more than 400,000 values"},
		{"as many parts of keys", strings.Repeat("a.b.c.d.e = 0\n", 80_001), 80_001, "here the file has more than 400,000 values"},
		{"as many parts of keys in braces", "a = [" + strings.Repeat("{b.c=0},", 100_000) + "]", 1, "here the file has more than 400,000 values"},
		{"as many headers", strings.Repeat("[[a]]\n", 200_001), 200_001, "here the file has more than 400,000 values"},
		{"as many signs in texts and remarks", "a = \"" + strings.Repeat("[,", 200_001) + "\" # " + strings.Repeat("[,", 200_001), 0, ""},
		{"as many numbers with points", "a = [" + strings.Repeat("0.5,", 200_001) + "]", 0, ""},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			_, p := findSpots(tt.text)
			if tt.want == "" {
				assert.Nil(t, p)
				return
			}
			require.NotNil(t, p)
			assert.Equal(t, tt.want, p.Cause)
			assert.Equal(t, tt.line, p.Place.Line)
			assert.NotEmpty(t, p.Hint)
		})
	}
}

// spotsOf returns all spots that a key of the library can mean: it does not
// count the elements of arrays.
func spotsOf(from []*spot, key string) []*spot {
	var found []*spot
	for _, n := range from {
		if c := n.child(key); c != nil {
			found = append(found, c)
			continue
		}
		for _, e := range n.within {
			if e.name == "" && !e.own {
				found = append(found, spotsOf([]*spot{e}, key)...)
			}
		}
	}
	return found
}

func FuzzFindSpots(f *testing.F) {
	for _, s := range []string{
		whole, "a = [[1, 2],\n[3]]", "[a.\"b c\"]\nd = {e = 1}", "a = '''\n'''\nb = \"\"\"\\\"\"\"\"", "[[a]]\nb=1\n[[a.c]]\nd=2",
		"\"\\u00e9\" = 1", "a = [{b = 1}, {b = [2]}]", "a = {\n b = 1, # c\n}", "''=1", "a=[[[[[]]]]]", "\"\".x = 1\na.\"\".\"\" = 2", "\r\n", "a.b.c=1\n[a.d]",
	} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		root, p := findSpots(text)
		lines := strings.Split(text, "\n")
		for _, s := range allSpots(root, "") {
			var line int
			_, err := fmt.Sscanf(s[strings.LastIndexByte(s, ':')+1:], "%d", &line)
			require.NoError(t, err)
			require.GreaterOrEqual(t, line, 1, s)
			require.LessOrEqual(t, line, len(lines), s)
		}
		if p != nil {
			return
		}
		text, p = plainText([]byte(text))
		if p != nil {
			return
		}
		var values map[string]any
		meta, err := toml.Decode(text, &values)
		if err != nil {
			return
		}
		// The text is TOML: the library and the scan have met the same keys.
		root, _ = findSpots(text)
		lines = strings.Split(text, "\n")
		for _, key := range meta.Keys() {
			at := []*spot{root}
			for _, part := range key {
				at = spotsOf(at, part)
				require.NotEmpty(t, at, "%s has no line", key)
			}
			for _, n := range at {
				if n.name != "" && !strings.ContainsAny(text, `\`) {
					require.Contains(t, lines[n.line-1], n.name, "%s is said to be in line %d", key, n.line)
				}
			}
		}
		sameKeys(t, values, root, "")
	})
}

// sameKeys checks that a table has the same keys, and an array as many
// elements, as the scan found. Tables in [[ ]] are laid over one another.
func sameKeys(t *testing.T, value any, n *spot, path string) {
	t.Helper()
	require.NotNil(t, n, "%s has no line", path)
	switch v := value.(type) {
	case map[string]any:
		for name, inner := range v {
			sameKeys(t, inner, n.child(name), fault.Place{Key: path}.Under(name).Key)
		}
	case []map[string]any:
		for _, inner := range v {
			sameKeys(t, inner, n, path)
		}
	case []any:
		for i, inner := range v {
			sameKeys(t, inner, n.element(i), fmt.Sprintf("%s.%d", path, i))
		}
	}
}
