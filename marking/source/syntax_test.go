package source

import (
	"fmt"
	"strconv"
	"strings"
	"testing"
	"unicode/utf16"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/fault"
	"tuckmark/marking/sketch"
)

// asUTF16 returns a text as a word processor saves "Unicode".
func asUTF16(text, mark string) string {
	var b strings.Builder
	b.WriteString(mark)
	for _, c := range utf16.Encode([]rune(text)) {
		b.WriteByte(byte(c))
		b.WriteByte(byte(c >> 8))
	}
	return b.String()
}

func TestReadExplainsWhatIsNoTOML(t *testing.T) {
	const (
		noTOML        = "\nhint: save the file again as plain text in UTF-8 (in most editors: \"Save as\", encoding UTF-8)"
		curly         = "\nhint: type straight ones, in an editor for plain text: \""
		oneQuote      = "a quotation mark is opened on this line and not closed\nhint: put \" at both ends of a text"
		square        = "\nhint: put \"]\" where it ends: every opening bracket needs its own"
		nameNotQuoted = "a name here is not in quotes\nhint: write a name with a space or an accent in quotes: "
		name          = nameNotQuoted + "[piece.front.edge.\"centre front\"]"
		remark        = "a remark begins with another sign than #\nhint: write # before a remark"
		points        = "\nhint: a point is [x, y], and points are listed as [[0, 0], [3, \"4 1/2\"]]"
		space         = "\nhint: take it out, and type what is meant with the space bar"
		key           = "the name before \"=\" is not in quotes\nhint: write a name with a space or an accent in quotes: \"centre front\" = ..."
		boolean       = "\nhint: write true or false, in small letters and without quotes"
		noNumber      = "\nhint: write 2 or 2.5, without zeros in front, or a fraction in quotes"
		noEquals      = "there is no \"=\" on this line\nhint: write name = value, or put # before a remark"
		noText        = "a text here has a \\ that means nothing\nhint: write \\\\ for a single \\"
		noName        = "a name is missing here\nhint: write name = value, or [piece.front]"
		behind        = "there is something behind the end of the value\nhint: put text in quotes, and # before a remark"
		twice         = "\nhint: give each a name of its own, or put both together"
	)
	tests := []struct{ name, in, want string }{
		{"a PDF", "%PDF-1.6\n%\xe2", "f.toml: this is a PDF, not the description of a pattern\nhint: name the file that ends in .toml"},
		{"a picture", "\x89PNG\r\n\x1a\n", "f.toml: this is a picture, not the description of a pattern\nhint: name the file that ends in .toml"},
		{"a word processor's file", "PK\x03\x04\x14", "f.toml: this is a document of a word processor or a packed folder, not the description of a pattern\nhint: write the description in an editor for plain text, and save it under a name that ends in .toml"},
		{"UTF-32", "\xff\xfe\x00\x00t\x00\x00\x00", "f.toml: the file is saved as UTF-32" + noTOML},
		{"UTF-32, the other way round", "\x00\x00\xfe\xff\x00\x00\x00t", "f.toml: the file is saved as UTF-32" + noTOML},
		{"UTF-32 without a mark", "t\x00\x00\x00i\x00\x00\x00", "f.toml: the file is saved as UTF-32" + noTOML},
		{"UTF-32 without a mark, the other way round", "\x00\x00\x00t\x00\x00\x00i", "f.toml: the file is saved as UTF-32" + noTOML},
		{"a wide sign in place of =, and a slip behind it", "title ＝ \"a\"\nsize = 1 2", "f.toml:1: there is a wide = (U+FF1D) behind \"title\"\nhint: type it again, with the keyboard set to narrow letters\nf.toml:2: there is something behind the end of the value\nhint: put text in quotes, and # before a remark"},
		{"a wide bracket", "［piece.a］", "f.toml:1: there is a wide [ (U+FF3B) at the beginning of this line\nhint: type it again, with the keyboard set to narrow letters"},
		{"a line end of another kind", "title = \"a\"\u0085size = 1", "f.toml:1: there is a line end of another kind (U+0085) behind \"\\\"a\\\"\"\nhint: take it out, and type what is meant with the space bar"},
		{"a letter of which nothing is seen", "title\u3164= 1", "f.toml:1: there is a sign that cannot be seen (U+3164) behind \"title\"\nhint: take it out, and type what is meant with the space bar"},
		{"UTF-16", asUTF16("title = 1", "\xff\xfe"), "f.toml: the file is saved as UTF-16" + noTOML},
		{"UTF-16 without a mark", asUTF16("title = 1", ""), "f.toml: the file is saved as UTF-16" + noTOML},
		{"Latin-1", "title = \"x\"\n# R\xfccken\n", "f.toml:2: there is a letter that is not UTF-8" + noTOML},
		{"cut-off letter at the end", "title = \"x\"\n\xc3", "f.toml:2: there is a letter that is not UTF-8" + noTOML},
		{"control character", "\n\na = \"\x00\"", "f.toml:3: there is a character that cannot be seen (U+0000)\nhint: type the line again; is this a plain text file?"},
		{"delete character", "# \x7f", "f.toml:1: there is a character that cannot be seen (U+007F)\nhint: type the line again; is this a plain text file?"},
		{"line ends of long ago", "a = 1\rb = 2\r", "f.toml:1: a line ends in a way that is not known here\nhint: save the file again with \"Unix\" or \"Windows\" line ends"},

		{"fraction", "\nw = 3/8", "f.toml:2: 3/8 is not in quotes\nhint: write lengths with a fraction in quotes: \"3/8\""},
		{"fraction and remark", "w = 3/8 # deep\n", "f.toml:1: 3/8 is not in quotes\nhint: write lengths with a fraction in quotes: \"3/8\""},
		{"mixed number", "w = 1 1/2", "f.toml:1: 1 1/2 is not in quotes\nhint: write lengths with a fraction in quotes: \"1 1/2\""},
		{"mixed number with a hyphen", "w = 1-1/2", "f.toml:1: 1-1/2 is not in quotes\nhint: write lengths with a fraction in quotes: \"1 1/2\""},
		{"fraction below zero", "w = -1/2", "f.toml:1: -1/2 is not in quotes\nhint: write lengths with a fraction in quotes: \"-1/2\""},
		{"fraction of one letter", "w = ½", "f.toml:1: ½ is not in quotes\nhint: write lengths with a fraction in quotes: \"½\""},
		{"mixed number of one letter", "w = 2⅛", "f.toml:1: 2⅛ is not in quotes\nhint: write lengths with a fraction in quotes: \"2⅛\""},
		{"fraction in a point", "p = [[0, 0],\n[1 1/2, 3]]", "f.toml:2: 1 1/2 is not in quotes\nhint: write lengths with a fraction in quotes: \"1 1/2\""},
		{"the second fraction in a point", "p = [[\"1/8\", 3/8]]", "f.toml:1: 3/8 is not in quotes\nhint: write lengths with a fraction in quotes: \"3/8\""},
		{"fraction in an inline table", "p = {w = 3/8}", "f.toml:1: 3/8 is not in quotes\nhint: write lengths with a fraction in quotes: \"3/8\""},
		{"fraction with a unit written out", "w = 3/8 inches", "f.toml:1: 3/8 inches is not in quotes\nhint: write lengths with a fraction in quotes: \"3/8 in\""},
		{"unit", "w = 2 cm", "f.toml:1: 2 cm is not in quotes\nhint: write lengths with a unit in quotes: \"2 cm\""},
		{"inch mark", "w = 2\"", "f.toml:1: 2\" is not in quotes\nhint: write lengths with a unit in quotes: \"2 in\", or \"2\" where the mark was only to close the quotes"},
		{"inch mark of a word processor", "w = 2.5”", "f.toml:1: 2.5” is not in quotes\nhint: write lengths with a unit in quotes: \"2.5 in\""},
		{"fraction with a unit", "w = 2 1/8 in", "f.toml:1: 2 1/8 in is not in quotes\nhint: write lengths with a fraction in quotes: \"2 1/8 in\""},
		{"minus sign", "w = −3", "f.toml:1: −3 has a minus sign that is not on the keyboard\nhint: write -3, or put it in quotes"},
		{"a dash for a minus sign", "p = [—3, 2]", "f.toml:1: —3 has a minus sign that is not on the keyboard\nhint: write -3, or put it in quotes"},

		{"a letter for a figure", "w = O", "f.toml:1: O is the letter O, not the figure 0\nhint: write 0, or \"O\" where text is meant"},
		{"a letter for a figure in a point", "p = [[O, 6], [lO, 2]]", "f.toml:1: O is the letter O, not the figure 0\nhint: write 0\nf.toml:1: lO has the letter O for the figure 0 and the letter l for the figure 1\nhint: write 10"},
		{"a letter behind a figure", "w = 1O # deep", "f.toml:1: 1O has the letter O for the figure 0\nhint: write 10"},
		{"a letter behind a figure in a point", "p = [[1, 2O]]", "f.toml:1: 2O has the letter O for the figure 0\nhint: write 20"},
		{"a letter in a fraction", "w = l/2", "f.toml:1: l/2 has the letter l for the figure 1\nhint: write \"1/2\""},
		{"a letter before a fraction", "w = l 1/2", "f.toml:1: l 1/2 has the letter l for the figure 1\nhint: write \"1 1/2\""},
		{"a letter behind a whole number", "w = 1 l/2", "f.toml:1: 1 l/2 has the letter l for the figure 1\nhint: write \"1 1/2\""},
		{"a letter before a unit", "w = l in", "f.toml:1: l in has the letter l for the figure 1\nhint: write \"1 in\""},
		{"a word of such letters", "title = lol", "f.toml:1: lol is not in quotes\nhint: write text in quotes, such as title = \"Sunday\""},
		{"a word before a fraction", "w = 1 and 1/2", "f.toml:1: 1 and 1/2 has \"and\" between its whole number and its fraction\nhint: write \"1 1/2\""},
		{"backslash for a stroke", `w = "1 1\2"`, "f.toml:1: \"1 1\\2\" has a \\ for the stroke /\nhint: write \"1 1/2\""},
		{"backslash for a stroke in a step", `p = [[0, 0], "up 1\8"]`, "f.toml:1: \"up 1\\8\" has a \\ for the stroke /\nhint: write \"up 1/8\""},
		{"backslash for a stroke without quotes", `w = 1\2`, "f.toml:1: 1\\2 has a \\ for the stroke /\nhint: write \"1/2\""},
		{"no-break space before a value", "w =\u00a044", "f.toml:1: there is a no-break space (U+00A0) behind \"=\"" + space},
		{"no-break space in a header", "[piece.\u00a0front]", "f.toml:1: there is a no-break space (U+00A0) behind \"[piece.\"" + space},
		{"no-break space in a point", "p = [[0,\u00a00]]", "f.toml:1: there is a no-break space (U+00A0) behind \"[[0,\"" + space},
		{"no-break space behind a value", "w = 44\u00a0\n", "f.toml:1: there is a no-break space (U+00A0) behind \"44\"" + space},
		{"no-break spaces for an indent", "a = 1\n\u00a0\u00a0b = 2\n\u00a0c = 3\n\u00a0d = 4", "f.toml:2: there is a no-break space (U+00A0) at the beginning of this line, and the like in 2 other lines" + space},
		{"no-break space in a text and in a remark", "# \u00a0\ntitle = \"a\u00a0b\"\nw = 1\u2003# \u00a0", "f.toml:3: there is a space of another kind (U+2003) behind \"1\"" + space},
		{"space without width", "w = \u200b44", "f.toml:1: there is a sign that cannot be seen (U+200B) behind \"=\"" + space},
		{"no-break space in a fraction", "w = 1\u00a01/2", "f.toml:1: there is a no-break space (U+00A0) behind \"1\"" + space +
			"\nf.toml:1: 1 1/2 is not in quotes\nhint: write lengths with a fraction in quotes: \"1 1/2\""},

		{"decimal comma", "w = 1,5", "f.toml:1: 1,5 is written with a comma\nhint: write a decimal with a point: 1.5"},
		{"comma at the end", "w = 1,", "f.toml:1: " + behind},

		{"no closing quote", "a = 1\ntitle = \"Sunday\nb = 2", "f.toml:2: " + oneQuote},
		{"no closing quote at the end of the file", "title = \"Sunday", "f.toml:1: " + oneQuote},
		{"no closing quote, windows line ends", "title = \"Sunday\r\nb = 2\r\n", "f.toml:1: " + oneQuote},
		{"no closing quote after an apostrophe", "title = \"Anna’s\n", "f.toml:1: " + oneQuote},
		{"no closing single quote", "title = 'Sunday\n", "f.toml:1: " + oneQuote},
		{"no closing quote in a point", "p = [[0, 0],\n[\"1 1/2, 3]]\n", "f.toml:2: a quotation mark is missing behind 1 1/2\nhint: put \" at both ends: \"1 1/2\""},
		{"no closing quote at a bracket", "p = [[0, 0], [1, \"1 1/2]]\n", "f.toml:1: a quotation mark is missing behind 1 1/2\nhint: put \" at both ends: \"1 1/2\""},
		{"two without a closing quote", "p = [[\"1 1/2, 3], [\"2 1/2, 3]]\n", "f.toml:1: a quotation mark is missing behind 1 1/2\nhint: put \" at both ends: \"1 1/2\"\n" +
			"f.toml:1: a quotation mark is missing behind 2 1/2\nhint: put \" at both ends: \"2 1/2\""},
		{"no closing quote between two that have theirs", "p = [[\"1\", \"1 1/2], [\"2 1/2\", 3]]\n", "f.toml:1: a quotation mark is missing behind 1 1/2\nhint: put \" at both ends: \"1 1/2\""},
		{"no opening quote", "p = [[0, 0], [4 1/8\", 3]]", "f.toml:1: 4 1/8\" is not in quotes\nhint: write lengths with a fraction in quotes: \"4 1/8 in\", or \"4 1/8\" where the mark was only to close the quotes"},
		{"no closing quote in a list of names", "join = [\"a.b, \"c.d\"]\n", "f.toml:1: a quotation mark is missing on this line\nhint: put \" at both ends of each text"},
		{"long text not closed", "\ntitle = \"\"\"Sunday\nb = 1\n", "f.toml:3: the text that begins in line 2 is not closed\nhint: put its three quotation marks at its end too"},
		{"curly quotes", "title = “Sunday”", "f.toml:1: the quotation mark “ is a curly one" + curly},
		{"curly closing quote", "title = \"Sunday”\n", "f.toml:1: the quotation mark ” is a curly one" + curly},
		{"curly single quotes", "title = ‘Sunday’", "f.toml:1: the quotation mark ‘ is a curly one" + curly},
		{"curly quotes in a name", "[piece.“a b”]", "f.toml:1: the quotation mark “ is a curly one" + curly},
		{"inch mark in quotes", "w = \"2 1/8\"\"", "f.toml:1: there is a quotation mark too many\nhint: inside quotes write in instead of the inch mark: \"2 1/8 in\""},
		{"inch mark in quotes in a point", "p = [\"2 1/8\"\", 3]", "f.toml:1: there is a quotation mark too many\nhint: inside quotes write in instead of the inch mark: \"2 1/8 in\""},
		{"backslash", `title = "a\d"`, "f.toml:1: " + noText},
		{"half an escape", `title = "\u12"`, "f.toml:1: " + noText},
		{"half an escape in a name", `"a\u00" = 1`, "f.toml:1: " + noText},
		{"backslash in a name", `"a\qb" = 1`, "f.toml:1: " + noText},
		{"escape of no letter", `title = "\ud800"`, "f.toml:1: " + noText},

		{"list not closed before a key", "p = [[0, 0], [1, 1]\nsmooth = true", "f.toml:2: the \"[\" that is opened in line 1 is not closed" + square},
		{"list not closed before a key, after a comma", "p = [\n[0, 0],\n[1, 1],\nsmooth = true", "f.toml:4: the \"[\" that is opened in line 1 is not closed" + square},
		{"list not closed before a table", "p = [[0, 0], [1, 1]\n\n[piece.front]\n", "f.toml:3: the \"[\" that is opened in line 1 is not closed" + square},
		{"list not closed before a table, after a comma", "p = [[0, 0], [1, 1],\n\n[piece.front]\n", "f.toml:3: the \"[\" that is opened in line 1 is not closed" + square},
		{"list not closed at the end of the file", "p = [[0, 0], [1, 1]", "f.toml:1: the \"[\" that is opened on this line is not closed" + square},
		{"list not closed at the end of the last line", "a = \"[\"\n# [\np = [[0, 0],\n", "f.toml:3: the \"[\" that is opened on this line is not closed" + square},
		{"inline table not closed", "p = {a = 1\n", "f.toml:1: the \"{\" that is opened on this line is not closed\nhint: put \"}\" where it ends: every opening bracket needs its own"},
		{"no comma between points", "p = [[0, 0]\n[1, 1]]", "f.toml:2: a comma is missing before [1, 1]" + points},
		{"no comma between points on a line", "p = [[0, 0] [\"1 1/2\", 1]]", "f.toml:1: a comma is missing between [0, 0] and [\"1 1/2\", 1]" + points},
		{"no comma in a point", "p = [[0, 0], [1 2.5]]", "f.toml:1: a comma is missing between 1 and 2.5" + points},
		{"no comma between quotes", "p = [[\"1 1/2\" \"2\"]]", "f.toml:1: a comma is missing between \"1 1/2\" and \"2\"" + points},
		{"no comma before quotes", "p = [[0 \"5 1/2\"], [1, 2]]", "f.toml:1: a comma is missing between 0 and \"5 1/2\"" + points},
		{"no comma before quotes at the end of a line", "p = [\n1.5 \"3/4 in\"\n]", "f.toml:2: a comma is missing between 1.5 and \"3/4 in\"" + points},
		{"inch marks behind spaces", "p = [[5 \", 3 \"]]", "f.toml:1: 5 \" is not in quotes\nhint: write lengths with a unit in quotes: \"5 in\", or \"5\" where the mark was only to close the quotes" +
			"\nf.toml:1: 3 \" is not in quotes\nhint: write lengths with a unit in quotes: \"3 in\", or \"3\" where the mark was only to close the quotes"},
		{"no comma between names", "join = [\"a\" \"b\"]", "f.toml:1: a comma is missing between \"a\" and \"b\"\nhint: put one comma between two values"},
		{"no comma between names on two lines", "join = ['a.side'\n'b.side']", "f.toml:2: a comma is missing before 'b.side'\nhint: put one comma between two values"},
		{"semicolon between points", "p = [[0, 0]; [1, 1]]", "f.toml:1: there is a \";\" where a comma belongs" + points},
		{"no comma in a table", "p = {a = 1 b = 2}", "f.toml:1: a comma is missing between 1 and b" + points},
		{"two commas", "p = [1,,2]", "f.toml:1: there is a comma too many\nhint: put one comma between two values"},
		{"wrong bracket", "p = [[0, 0}]", "f.toml:1: there is a \"}\" where a \"]\" belongs\nhint: close brackets in the order in which they are nested"},
		{"bracket too many", "p = [[0, 0]]]", "f.toml:1: there is a \"]\" too many\nhint: every closing bracket needs an opening one"},
		{"brackets too deep", "p = " + strings.Repeat("[", 5_000_000), "f.toml:1: more than 64 brackets stand inside each other\nhint: a list of points has two: [[0, 0], [3, \"4 1/2\"]]"},

		{"no closing quote before a comma", "p = [[\"2 3/4, 12], [5, \"11 3/8\"]]", "f.toml:1: a quotation mark is missing behind 2 3/4\nhint: put \" at both ends: \"2 3/4\""},
		{"a unit without quotes", "unit = in", "f.toml:1: in is not in quotes\nhint: write text in quotes, such as title = \"Sunday\""},
		{"a list with one bracket too few", "p = [\"2 3/4\", 12], [5, 6]]", "f.toml:1: there is a comma behind the end of the value\nhint: a list of points begins with two brackets: [[0, 0], [3, \"4 1/2\"]]"},
		{"round brackets", "p = [(1, 2), (3, 4)]", "f.toml:1: there is a \"(\" where a \"[\" belongs\nhint: a point is [x, y], and points are listed as [[0, 0], [3, \"4 1/2\"]]"},
		{"text without quotes", "title = Sunday pinafore", "f.toml:1: Sunday is not in quotes\nhint: write text in quotes, such as title = \"Sunday\""},
		{"a sign without quotes", "title = @", "f.toml:1: @ is not in quotes\nhint: write text in quotes, such as title = \"Sunday\""},
		{"True", "smooth = True", "f.toml:1: True is not known here" + boolean},
		{"yes", "smooth = yes", "f.toml:1: yes is not known here" + boolean},
		{"no value", "w = \nb = 1", "f.toml:1: there is no value after \"=\"\nhint: write a number, or text in quotes"},
		{"no value at the end of the file", "w =", "f.toml:1: there is no value after \"=\"\nhint: write a number, or text in quotes"},
		{"something behind a text", "title = \"Sunday\" pinafore", "f.toml:1: " + behind},
		{"decimal without a zero", "w = .5", "f.toml:1: a number begins with its decimal point\nhint: write a 0 before it, as in 0.375"},
		{"decimal without digits", "w = 5.", "f.toml:1: 5. is not a number" + noNumber},
		{"zero in front", "w = 05", "f.toml:1: 05 is not a number" + noNumber},
		{"no date", "w = 2020-99-99", "f.toml:1: 2020-99-99 is not a number" + noNumber},
		{"sign before a letter", "w = -x", "f.toml:1: -x is not a number" + noNumber},
		{"hexadecimal without digits", "w = 0x", "f.toml:1: 0x is not a number" + noNumber},
		{"number out of range", "w = 1e999", "f.toml:1: 1e999 is too large\nhint: check the number"},
		{"long number out of range", "w = " + strings.Repeat("9", 100), "f.toml:1: " + strings.Repeat("9", 40) + "... is too large\nhint: check the number"},

		{"no equals sign", "a = 1\nwidth 3\n", "f.toml:2: " + noEquals},
		{"no equals sign at the end of the line", "width\nb = 1", "f.toml:1: " + noEquals},
		{"no equals sign at the end of the file", "width", "f.toml:1: " + noEquals},
		{"colon", "width: 3", "f.toml:1: there is a \":\" where \"=\" belongs\nhint: write name = value"},
		{"name with a space", "centre front = 3", "f.toml:1: " + key},
		{"a word of the trade with a space", "seam allowance = 3/8", "f.toml:1: there is a space in the name before \"=\"\nhint: it is called allowance here: allowance = \"3/8\""},
		{"a key with a space", "drawn  to = \"stitching\" # the neck", "f.toml:1: there is a space in the name before \"=\"\nhint: it is written with a hyphen: drawn-to = \"stitching\""},
		{"a key with a space, and its value too", "join takes = 1 1/2", "f.toml:1: there is a space in the name before \"=\"\nhint: it is written with a hyphen: join-takes = \"1 1/2\""},
		{"a key with a space and no value", "see through =", "f.toml:1: there is a space in the name before \"=\"\nhint: it is written with a hyphen: see-through ="},
		{"name with an accent", "länge = 3", "f.toml:1: " + key},
		{"no name", "= 3", "f.toml:1: " + noName},
		{"no name in a header", "a = 1\n[]\n", "f.toml:2: " + noName},
		{"half a name in a header", "[piece.]\n", "f.toml:1: " + noName},
		{"header with a space", "[piece.front.edge.centre front]\n", "f.toml:1: " + name},
		{"header with an accent", "[piece.rücken]", "f.toml:1: " + nameNotQuoted + "[piece.\"rücken\"]"},
		{"header with a space in its middle", "[piece.my front.edge.neck] # x", "f.toml:1: " + nameNotQuoted + "[piece.\"my front\".edge.neck]"},
		{"header with a quoted name as well", "[piece.my front.edge.\"centre front\"]", "f.toml:1: " + name},
		{"remark of another kind", "// a dress\n-- of lawn\n", "f.toml:1: " + remark + "\nf.toml:2: " + remark},
		{"header not closed", "a = 1\n[piece.front\nb = 1", "f.toml:2: a \"]\" is missing\nhint: write [piece.front]"},
		{"header of an edge not closed, and a slip behind it", "[piece.front.edge.\"centre front\" # the fold\nb = 1 2", "f.toml:1: a \"]\" is missing\nhint: write [piece.front.edge.\"centre front\"]\nf.toml:2: " + behind},
		{"a number with a letter in it", "count = 3x", "f.toml:1: 3x is not a number\nhint: write it with digits alone, such as 2 or 2.5, or put text in quotes"},
		{"a whole text without quotes", "size = 18 months", "f.toml:1: " + behind},
		{"header not closed at the end of the file", "[piece.front", "f.toml:1: a \"]\" is missing\nhint: write [piece.front]"},
		{"header of a list closed once", "[[piece.front]\n", "f.toml:1: a \"]\" is missing\nhint: write [piece.front], with one pair of brackets"},
		{"six quotes", "a = '''b''''''", "f.toml:1: this is not TOML: unexpected \"''''''\""},
		{"header closed twice", "[piece.front]]\n", "f.toml:1: there is a \"]\" too many\nhint: every closing bracket needs an opening one"},

		{"key twice", "[piece.front]\ncut = 1\n\ncut = 2", "f.toml:4: piece.front.cut: is given twice, the first time in line 2" + twice},
		{"table twice", "[piece.\"a b\"]\n[piece.c]\n[piece.\"a b\"]", "f.toml:3: piece.\"a b\": is given twice, the first time in line 1" + twice},
		{"key twice on a line", "a = {b = 1, b = 2}", "f.toml:1: a.b: is given twice" + twice},
		{"key and table", "piece = 1\n\n[piece]\n", "f.toml:3: piece: is given twice, the first time in line 1" + twice},
		{"key and table within", "piece = 1\n[piece.front]\n", "f.toml:2: piece: is given twice, the first time in line 1" + twice},
		{"table and list", "[piece.front]\n[[piece.front]]\n", "f.toml:2: piece.front: is given twice, the first time in line 1" + twice},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			spec, err := Read("f.toml", []byte(tt.in), sketch.HasLetter)
			require.Error(t, err)
			assert.Nil(t, spec)
			assert.Equal(t, tt.want, err.Error())
		})
	}
}

// Slips whose meaning is certain are told together, in the order of the lines, and nothing
// is said of the values before the text is whole.
func TestReadTellsSlipsTogether(t *testing.T) {
	const (
		fraction = " is not in quotes\nhint: write lengths with a fraction in quotes: "
		points   = "\nhint: a point is [x, y], and points are listed as [[0, 0], [3, \"4 1/2\"]]"
		header   = "a name here is not in quotes\nhint: write a name with a space or an accent in quotes: "
		boolean  = " is not known here\nhint: write true or false, in small letters and without quotes"
	)
	tests := []struct{ name, in, want string }{
		{"fractions", "unknown = 1\nallowance = 3/8\n[piece.a]\n[piece.a.edge.b]\npoints = [\n[0, 0],\n[1 1/2, 3],\n[2, 2⅛]]\nhem = 1 in",
			"f.toml:2: 3/8" + fraction + "\"3/8\"" +
				"\nf.toml:7: 1 1/2" + fraction + "\"1 1/2\"" +
				"\nf.toml:8: 2⅛" + fraction + "\"2⅛\"" +
				"\nf.toml:9: 1 in is not in quotes\nhint: write lengths with a unit in quotes: \"1 in\""},
		{"the same twice on a line", "p = [[1/2, 1/2], [1/2, 3/4]]",
			"f.toml:1: 1/2" + fraction + "\"1/2\"\nf.toml:1: 3/4" + fraction + "\"3/4\""},
		{"of many kinds", "title = “A \u201cbib”\nunit = in\n[piece.my bib]\nw = 1,5\nsmooth = Yes\nmarked = OFF\np = [[0 0] [1/2, −3]]",
			"f.toml:1: the quotation mark “ is a curly one\nhint: type straight ones, in an editor for plain text: \""},
		{"up to one that may mean anything", "unit = in\n[piece.my bib]\nw = 1,5\nsmooth = Yes\nmarked = OFF\np = [[0 0] [1/2, −3]]\nq = 1 2 3\nr = 1/2",
			"f.toml:1: in is not in quotes\nhint: write text in quotes, such as title = \"Sunday\"" +
				"\nf.toml:2: " + header + "[piece.\"my bib\"]" +
				"\nf.toml:3: 1,5 is written with a comma\nhint: write a decimal with a point: 1.5" +
				"\nf.toml:4: Yes" + boolean + "\nf.toml:5: OFF" + boolean +
				"\nf.toml:6: a comma is missing between 0 and 0" + points +
				"\nf.toml:6: a comma is missing between [0, 0] and [1/2, −3]" + points +
				"\nf.toml:6: 1/2" + fraction + "\"1/2\"" +
				"\nf.toml:6: −3 has a minus sign that is not on the keyboard\nhint: write -3, or put it in quotes" +
				"\nf.toml:7: there is something behind the end of the value\nhint: put text in quotes, and # before a remark"},
		{"curly quotes", "title = “Bib”\nsize = ‘2 years’\nname = „x“",
			"f.toml:1: the quotation mark “ is a curly one\nhint: type straight ones, in an editor for plain text: \"" +
				"\nf.toml:2: the quotation mark ‘ is a curly one\nhint: type straight ones, in an editor for plain text: \"" +
				"\nf.toml:3: the quotation mark „ is a curly one\nhint: type straight ones, in an editor for plain text: \""},
		{"a fraction where it is not certain how far it goes", "a = 1/2 x\nb = 1/2", "f.toml:1: 1/2" + fraction + "\"1/2\""},
		{"a slip, and a key twice", "a = 1/2\na = 2\nb = 3/4", "f.toml:1: 1/2" + fraction + "\"1/2\"" +
			"\nf.toml:2: a: is given twice, the first time in line 1\nhint: give each a name of its own, or put both together"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			spec, err := Read("f.toml", []byte(tt.in), sketch.HasLetter)
			require.Error(t, err)
			assert.Nil(t, spec)
			assert.Equal(t, tt.want, err.Error())
		})
	}
}

// However many slips a text has, they are counted up to a hundred, and a long text is not
// read again for each.
func TestReadOnIsBounded(t *testing.T) {
	var many strings.Builder
	for i := range 300 {
		fmt.Fprintf(&many, "a%d = %d/8\n", i, i)
	}
	var slips fault.List
	_, err := Read("f.toml", []byte(many.String()), sketch.HasLetter)
	require.ErrorAs(t, err, &slips)
	assert.Len(t, slips, 100)

	padded := many.String() + "# " + strings.Repeat("x", 4<<20)
	_, err = Read("f.toml", []byte(padded), sketch.HasLetter)
	require.ErrorAs(t, err, &slips)
	assert.Len(t, slips, 3, "4 MB are read two times more, of 10 MB in all")
}

func TestOpenedBefore(t *testing.T) {
	tests := []struct {
		name, text string
		want       opening
	}{
		{"nothing", "a = [1]\n", opening{}},
		{"a list", "\na = [1, [2], ", opening{'[', 2}},
		{"the inner of two", "a = [1,\n{b = ", opening{'{', 2}},
		{"a header is no list", "[a.b", opening{}},
		{"a header in a list is one", "a = [\n[b", opening{'[', 2}},
		{"brackets in a text", "a = \"[\"\nb = '{' # [", opening{}},
		{"a remark that goes on", "# [\na = [ # ]", opening{'[', 2}},
		{"a long text", "\n\na = '''\n[", opening{0, 3}},
		{"too many closing ones", "a = ]]\nb = [", opening{'[', 2}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			assert.Equal(t, tt.want, openedBefore(tt.text))
		})
	}
}

// A slip has the letter at which it shows, in the line as it is in the file.
func TestWhereASlipShows(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{"a = 1\nwidth = 3/8", "2: width = 3^/8"},
		{"points = [[0, 12], [1 1/2, 4]]", "1: points = [[0, 12], [1 ^1/2, 4]]"},
		{"\ufeffsize = “18”", "1: size = ^“18”"},
		{"größe = 3", "1: gr^öße = 3"},
		{"[piece.front", "1: [piece.fron^t"},
		{"a = [1\n", "1: a = [1^"},
		{"a = [[1 2], [3/4, 5]]", "1: a = [[1 ^2], [3/4, 5]]; 1"},
		{"a = 3/8\r\nb = 5/8", "1: a = 3^/8; 2: b = 5^/8"},
		{"a = 1\na = 2", "2"},
	} {
		_, err := Read("f.toml", []byte(c.text), func(rune) bool { return true })
		all, isList := err.(fault.List)
		require.True(t, isList, "%q: %v", c.text, err)
		var shown []string
		for _, f := range all {
			told := strconv.Itoa(f.Place.Line)
			if at := f.Place.Column; at > 0 {
				line := []rune(strings.TrimPrefix(strings.Split(c.text, "\n")[f.Place.Line-1], "\ufeff"))
				told += ": " + strings.TrimSuffix(string(line[:at-1])+"^"+string(line[at-1:]), "\r")
			}
			shown = append(shown, told)
		}
		assert.Equal(t, c.want, strings.Join(shown, "; "), "%q", c.text)
	}
}
