package paper

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/fault"
)

func TestFindPaper(t *testing.T) {
	// ISO 216, ANSI/ASME Y14.1 (from memory); inch = 25.4 mm exactly (international inch, 1959).
	for _, c := range []struct {
		text, name, title string
		width, height     float64
	}{
		{"letter", "letter", "letter paper, 8 1/2 x 11 in", 215.9, 279.4},
		{"  A4 ", "a4", "A4 paper, 210 x 297 mm", 210, 297},
		{"tabloid", "tabloid", "tabloid paper, 11 x 17 in", 279.4, 431.8},
		{"a3", "a3", "A3 paper, 297 x 420 mm", 297, 420},
		{"legal", "legal", "legal paper, 8 1/2 x 14 in", 215.9, 355.6},
		// As wide as the narrower and as high as the lower of letter and A4.
		{"either", "either", "letter or A4 paper, whichever there is", 210, 279.4},
		{"210x297mm", "210x297mm", "paper of 210 mm x 297 mm", 210, 297},
		{"13 x 19 in", "13 x 19 in", "paper of 13 in x 19 in", 330.2, 482.6},
		{"12 1/2x17in", "12 1/2x17in", "paper of 12 1/2 in x 17 in", 317.5, 431.8},
		{"30cm×42cm", "30cm×42cm", "paper of 30 cm x 42 cm", 300, 420},
		{"297x210mm", "297x210mm", "paper of 297 mm x 210 mm", 297, 210},
		{"roll:36in", "roll", "a roll of paper 36 in wide", 914.4, LongestSide},
		{"Roll: 91 cm", "roll", "a roll of paper 91 cm wide", 910, LongestSide},
		{"single", "single", "one single page", LongestSide, LongestSide},
	} {
		t.Run(c.text, func(t *testing.T) {
			p, err := Find(c.text)
			require.NoError(t, err)
			assert.Equal(t, c.name, p.Name)
			assert.Equal(t, c.title, p.Title)
			assert.InDelta(t, c.width, p.Width, 1e-9)
			assert.InDelta(t, c.height, p.Height, 1e-9)
		})
	}
	assert.Equal(t, "A4 paper", found(t, "a4").ShortTitle())
	assert.InDelta(t, 5080, LongestSide, 1e-9, "14,400 units are 200 in")
}

func TestPaperThatIsNone(t *testing.T) {
	const (
		papers = "the papers are letter, a4, legal, tabloid, a3 and either; or write roll:36in, single, or a size such as 210x297mm"
		reason = "that is 14,400 units of 1/72 in, and no reader of a PDF has to show a page with a longer side; print on pages that are joined, such as --paper letter"
		room   = "inside its margins it must have at least 170 x 240 mm upright, or 245 x 180 mm lying"
	)
	for _, c := range []struct{ text, cause, hint string }{
		{"", `no paper is called ""`, papers},
		{"a5", `no paper is called "a5"`, papers},
		{"Letter paper", `no paper is called "Letter paper"`, papers},
		{"box", `no paper is called "box"`, papers},
		{"210x297", `"210x297" has no unit`, "write in, cm or mm behind it, such as 210x297mm"},
		{"210x", "the length is empty", `a length is a whole number, a fraction or a decimal, such as "2", "3/8", "2 1/8" or "2.125"`},
		{"210x29,7cm", `"29,7cm" is written with a comma`, `write a decimal with a point: "29.7cm"`},
		{"148x210mm", "paper of 148 mm x 210 mm has no room for the first page", room},
		{"0x0mm", "paper of 0 mm x 0 mm has no room for the first page", room},
		{"36x201in", "paper of 36 in x 201 in has a side of more than 200 in", reason},
		{"201inx36in", "paper of 201 in x 36 in has a side of more than 200 in", reason},
		{"roll", `"roll" does not say how wide the roll is`, "write roll:36in or roll:91cm"},
		{"roll:", `"roll:" does not say how wide the roll is`, "write roll:36in or roll:91cm"},
		{"roll:36", `"roll:36" has no unit`, "write roll:36in or roll:91cm"},
		{"roll:5in", "a roll of paper 5 in wide has no room for the first page", room},
		{"roll:-5in", "a roll of paper -5 in wide has no room for the first page", room},
		{"roll:201in", "a roll of paper 201 in wide has a side of more than 200 in", reason},
	} {
		t.Run(c.text, func(t *testing.T) {
			_, err := Find(c.text)
			var refusal *fault.Fault
			require.ErrorAs(t, err, &refusal)
			assert.Equal(t, c.cause, refusal.Cause)
			assert.Equal(t, c.hint, refusal.Hint)
		})
	}
	assert.EqualError(t, &fault.Fault{Cause: "a cause"}, "a cause")
}
