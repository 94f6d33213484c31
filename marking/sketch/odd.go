package sketch

import "strings"

// Rules of this file: values that a maker hardly means, each written as in a file. Those that
// name something do so for the pieces front and back, which files for tests mostly have.

// Odd are odd values: of every kind that a file may have, beyond every bound, and of letters
// that nobody types. A few are no value at all.
func Odd() []string { return append(oddNumbers(), oddTexts()...) }

func oddNumbers() []string {
	return []string{
		`0`, `-0.0`, `-1`, `1`, `2`, `3.5`, `0.001`, `1e-300`, `1e300`, `1e400`, `99999`, `100000.1`, `501`,
		`9223372036854775807`, `-9223372036854775808`, `99999999999999999999`, `0x1F`, `1_000`, `nan`, `inf`, `-inf`,
		`true`, `false`, `1979-05-27`, `07:32:00`, `1979-05-27T07:32:00Z`,
		`[]`, `[[]]`, `[{}]`, `{}`, `[1]`, `[1, 2]`, `[0, 0, 0]`, `[[1], [2]]`, `[[0, 0, 0], [1, 1, 1]]`, `[true, "a"]`,
		`[[0, 0], [1, 1]]`, `[[0, 0], [0, 0]]`, `[[0, 0], [1e300, nan]]`, `[[0, 0], "up 3", "sideways"]`, `["up 1"]`, `[[0, 0], ["1/0", "0/0"]]`,
		`{a = 1}`, `{points = [[0, 0], [0, 1]]}`, `{tucks = 0, flat = 0, sewn = 0}`, `{tucks = 3, flat = "1", sewn = "9"}`, `{x = {width = "1/8"}}`,
		``, `1 2`, `[[0, 0]`, `"not closed`, `front`,
	}
}

func oddTexts() []string {
	quoted := []string{
		"", " ", "x", "1", "-1", "0", "1/0", "0/0", "-1/2", "1/1000000", "3/8 in", "1 1/2 cm", "2⅛", "99 9/16 mm", "37/8", "1,5", "1.5.2", "12 furlongs", "1e9", "nan",
		"in", "left", "top", "front", "back", "front.top", "front.left", "no such thing", ".", "..", "front.", ".front", "a.b.c.d", "tuck.yoke", "../elsewhere.toml", "file.toml", "front.svg",
		"away", "half", "trace,prick", "%d%s%n", `\\`, `\"`, `\t`, `a\nb`, `\u0000`, `\u001B[31m`, `\u200B`, `\u00A0`, `\u202Eabc`, `e\u0301`, "１２", "漢字", "🧵", "✂", "⅓",
		strings.Repeat("x", 201), strings.Repeat("9", 400), strings.Repeat("é ", 5000),
	}
	var all []string
	for _, text := range quoted {
		all = append(all, `"`+text+`"`)
	}
	return append(all,
		`["front.top", "front.top"]`, `["front.top", "back.left"]`, `["front", "no such thing"]`, `["front.top", ["front.left", "front.right"]]`,
		`[["front.top"], []]`, `["tuck.yoke", "edge.top", "name"]`, `["", ""]`, `"""`+"\n"+`two lines"""`, `'left'`)
}
