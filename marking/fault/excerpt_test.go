package fault

import (
	"fmt"
	"strings"
	"testing"
	"unicode"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"
)

// shown writes an excerpt as it may look: the number, the text, and signs under what the caret
// stands at.
func shown(lines []ExcerptLine) string {
	var b strings.Builder
	for _, l := range lines {
		before, at, behind := l.Parts()
		fmt.Fprintf(&b, "%2d|%s%s%s|\n", l.Number, before, at, behind)
		if at != "" {
			b.WriteString("  |" + strings.Repeat(" ", utf8.RuneCountInString(before)) + strings.Repeat("^", utf8.RuneCountInString(at)) + "\n")
		}
	}
	return b.String()
}

const front = `# a front
[piece.front]
cut = 1

[piece.front.edge."centre front"]
points = [[0, 0], [0, 12]]
	allowance = "3/8"  # cut = 4
sample = {tucks = 10, flat = "10", sewn = "7 9/16"}
join = ["front.side", "back.side"]
`

func TestExcerpt(t *testing.T) {
	for _, c := range []struct {
		name, text string
		at         Place
		want       string
	}{
		{"a number", front, Place{Key: "piece.front.cut", Line: 3}, `
 1|# a front|
 2|[piece.front]|
 3|cut = 1|
  |^^^^^^^
 4||
 5|[piece.front.edge."centre front"]|
`},
		{"the first line, by its first word", front, Place{Line: 1}, `
 1|# a front|
  |^
 2|[piece.front]|
 3|cut = 1|
`},
		{"a header", front, Place{Key: "piece.front", Line: 2}, `
 1|# a front|
 2|[piece.front]|
  |       ^^^^^
 3|cut = 1|
 4||
`},
		{"the last of a header that is in quotes, of a longer key", front, Place{Key: `piece.front.edge."centre front"`, Line: 5}, `
 3|cut = 1|
 4||
 5|[piece.front.edge."centre front"]|
  |                  ^^^^^^^^^^^^^^
 6|points = [[0, 0], [0, 12]]|
 7|    allowance = "3/8"  # cut = 4|
`},
		{"a list by its key", front, Place{Key: `piece.front.edge."centre front".points`, Line: 6}, `
 4||
 5|[piece.front.edge."centre front"]|
 6|points = [[0, 0], [0, 12]]|
  |^^^^^^
 7|    allowance = "3/8"  # cut = 4|
 8|sample = {tucks = 10, flat = "10", sewn = "7 9/16"}|
`},
		{"a text behind a tab", front, Place{Key: `piece.front.edge."centre front".allowance`, Line: 7}, `
 5|[piece.front.edge."centre front"]|
 6|points = [[0, 0], [0, 12]]|
 7|    allowance = "3/8"  # cut = 4|
  |    ^^^^^^^^^^^^^^^^^
 8|sample = {tucks = 10, flat = "10", sewn = "7 9/16"}|
 9|join = ["front.side", "back.side"]|
`},
		{"what stands in a remark only is not the key", front, Place{Key: "piece.front.cut", Line: 7}, `
 5|[piece.front.edge."centre front"]|
 6|points = [[0, 0], [0, 12]]|
 7|    allowance = "3/8"  # cut = 4|
  |    ^^^^^^^^^
 8|sample = {tucks = 10, flat = "10", sewn = "7 9/16"}|
 9|join = ["front.side", "back.side"]|
`},
		{"one of a table on a line", front, Place{Key: "piece.front.tuck.yoke.sample.flat", Line: 8}, `
 6|points = [[0, 0], [0, 12]]|
 7|    allowance = "3/8"  # cut = 4|
 8|sample = {tucks = 10, flat = "10", sewn = "7 9/16"}|
  |                      ^^^^^^^^^^^
 9|join = ["front.side", "back.side"]|
`},
		{"a key among others of a header", "[piece.front.edge.neck]", Place{Key: "piece.front", Line: 1}, `
 1|[piece.front.edge.neck]|
  |       ^^^^^
`},
		{"of one name twice the last", "[piece.neck.edge.neck]", Place{Key: "piece.neck.edge.neck", Line: 1}, `
 1|[piece.neck.edge.neck]|
  |                 ^^^^
`},
		{"quotes of the other kind, and spaces", "['centre front' ]\n 'a b'  =  'c'", Place{Key: `"a b"`, Line: 2}, `
 1|['centre front' ]|
 2| 'a b'  =  'c'|
  | ^^^^^^^^^^^^^
`},
		{"a value that looks like the key", `cut = "cut"`, Place{Key: "piece.front.cut", Line: 1}, `
 1|cut = "cut"|
  |^^^^^^^^^^^
`},
		{"the last line, without an end", "title = \"Bib\"\nsize = 4", Place{Key: "size", Line: 2}, `
 1|title = "Bib"|
 2|size = 4|
  |^^^^^^^^
`},
		{"behind the last line end", "points = [\n", Place{Line: 2}, `
 1|points = [|
 2| |
  |^
`},
		{"a column", "a = [1 1/2]\n", Place{Line: 1, Column: 8}, `
 1|a = [1 1/2]|
  |       ^^^
`},
		{"a column in a long word", strings.Repeat("é", 30) + " = 1", Place{Line: 1, Column: 3}, `
 1|éééééééééééééééééééééééééééééé = 1|
  |  ^
`},
		{"a column at a sign", "a = [1, 2}", Place{Line: 1, Column: 10}, `
 1|a = [1, 2}|
  |         ^
`},
		{"a column in an accented word", "größe = 3", Place{Line: 1, Column: 3}, `
 1|größe = 3|
  |^^^^^
`},
		{"a column behind the end of a line", "a = \"x\nb = 2\n", Place{Line: 1, Column: 70}, `
 1|a = "x |
  |      ^
 2|b = 2|
`},
		{"an empty line", "a = 1\n\nb = 2\n", Place{Line: 2}, `
 1|a = 1|
 2| |
  |^
 3|b = 2|
`},
		{"a mark before the text, and line ends of two letters", "\ufeffa = 1\r\nb = 2\r\n", Place{Key: "b", Line: 2}, `
 1|a = 1|
 2|b = 2|
  |^^^^^
`},
		{"wide and joined letters", "title = \"子供服 e\u0301\"\n", Place{Key: "title", Line: 1}, "\n 1|title = \"子供服 e\u0301\"|\n  |^^^^^^^^^^^^^^^^\n"},
		{"letters that would do something to a screen", "a\x1b[31m\u202eb\x00\u2028\ufeff\x9b\xff = 1\n", Place{Line: 1, Column: 8}, `
 1|a�[31m�b����� = 1|
  |   ^^^^^^^^^^
`},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, strings.TrimPrefix(c.want, "\n"), shown(Excerpt([]byte(c.text), c.at)))
		})
	}
}

func TestExcerptOfBoth(t *testing.T) {
	edges := "[shoulder]\npoints = [[2, 8], [4, 9]]\n\n[side]\npoints = [[4, 8], [4, 0]]\n\n[foot]\n"
	one, far := Place{File: "f.toml", Key: "side", Line: 5}, strings.Repeat("#\n", mostApart)
	both := `
 1|[shoulder]|
 2|points = [[2, 8], [4, 9]]|
  |^^^^^^
 3||
 4|[side]|
 5|points = [[4, 8], [4, 0]]|
  |^^^^^^
 6||
 7|[foot]|
`
	alone := `
 3||
 4|[side]|
 5|points = [[4, 8], [4, 0]]|
  |^^^^^^
 6||
 7|[foot]|
`
	for _, c := range []struct {
		name, text string
		at, other  Place
		want       string
	}{
		{"one before the other", edges, one.On(2), one, both},
		{"one behind the other", edges, one, one.On(2), both},
		{"on one line", edges, one, one, alone},
		{"of nothing else", edges, one, Place{}, alone},
		{"in another file", edges, one, Place{File: "g.toml", Line: 2}, alone},
		{"too far away", edges + far, one, one.On(5 + mostApart + 1), alone},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, strings.TrimPrefix(c.want, "\n"), shown(ExcerptOfBoth([]byte(c.text), c.at, c.other)))
		})
	}
}

func TestNoExcerpt(t *testing.T) {
	for name, at := range map[string]Place{
		"no line is known": {Key: "title"}, "behind the end": {Line: 4}, "far behind it": {Line: 1 << 62}, "before the beginning": {Line: -1},
	} {
		assert.Nil(t, Excerpt([]byte("a = 1\nb = 2\n"), at), name)
	}
	assert.Equal(t, []ExcerptLine{{1, " ", Caret{0, 1}}}, Excerpt(nil, Place{Line: 1}), "of an empty file")
}

// Of a long line are shown a hundred letters, with the caret among them.
func TestExcerptOfALongLine(t *testing.T) {
	row := strings.Repeat("é", 500)
	in := func(line string, at Place) ExcerptLine { return Excerpt([]byte(line), at.On(1))[0] }
	assert.Equal(t, ExcerptLine{1, "x=[" + row[:97*2] + "…", Caret{0, 1}}, in("x=["+row, Place{Key: "x"}), "at its beginning")
	assert.Equal(t, ExcerptLine{1, "…" + row[:29*2] + " x=1 " + row[:66*2] + "…", Caret{31, 34}}, in(row+row+" x=1 "+row, Place{Key: "x"}), "in the middle")
	assert.Equal(t, ExcerptLine{1, "…" + row[:96*2] + " x=1", Caret{98, 101}}, in(row+" x=1", Place{Key: "x"}), "at its end")
	assert.Equal(t, ExcerptLine{1, "…" + row[:29*2] + " x=" + row[:68*2] + "…", Caret{31, 101}}, in(row+" x="+row, Place{Key: "x"}), "long itself")
	assert.Equal(t, ExcerptLine{1, row[:100*2] + "…", Caret{0, 100}}, in(row, Place{}), "nothing else")
	assert.Equal(t, ExcerptLine{1, row[:100*2], Caret{0, 100}}, in(row[:100*2], Place{}), "as long as is shown")
	assert.Equal(t, ExcerptLine{2, row[:100*2] + "…", Caret{}}, Excerpt([]byte("a\n"+row), Place{Line: 1})[1], "beside another")
}

func FuzzExcerpt(f *testing.F) {
	f.Add([]byte(front), 3, 0, "piece.front.cut")
	f.Add([]byte("\ufeffa = \"\xff\x1b\n\r\n\t['x'.\"y\"]"), 1, 5, `"y"`)
	f.Add([]byte(strings.Repeat("\té子", 300)), 1, 400, "")
	f.Fuzz(func(t *testing.T, text []byte, line, column int, key string) {
		lines := Excerpt(text, Place{Line: line, Column: column, Key: key})
		if lines == nil {
			return
		}
		assert.LessOrEqual(t, len(lines), 5)
		itself := false
		for i, l := range lines {
			letters := []rune(l.Text)
			assert.Equal(t, lines[0].Number+i, l.Number)
			assert.LessOrEqual(t, len(letters), 103)
			for _, c := range letters {
				assert.True(t, unicode.IsGraphic(c) || c == '\ufffd', "%U is shown", c)
			}
			if l.Number != line {
				assert.Equal(t, Caret{}, l.Caret)
				continue
			}
			itself = true
			assert.True(t, 0 <= l.Caret.From && l.Caret.From < l.Caret.To && l.Caret.To <= len(letters), "the caret %v of %q", l.Caret, l.Text)
		}
		assert.True(t, itself, "line %d is not among its neighbours", line)
	})
}
