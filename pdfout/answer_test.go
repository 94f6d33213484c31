package pdfout

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sample"
	"tuckmark/pdfout/seen"
)

// answerFor is what is known of a band of 12 1/2 in that lies across a page, when the check square,
// or what is to be as long as of, measures so much both ways.
func answerFor(t *testing.T, measured, of string) Answer {
	t.Helper()
	m, err := paper.Measure(measured, length.Inch)
	if of != "" {
		whole, bad := length.Parse(of, length.Inch)
		require.NoError(t, bad)
		m, err = paper.MeasureOf(measured, whole, length.Inch)
	}
	require.NoError(t, err)
	reading, on := paper.Reading{Across: m, Down: m}, seen.Paper(t, "tabloid")
	band := mark.Marking{Name: "Band", Marks: []mark.Mark{sample.Edge(mark.Cut, "edge", plane.Point{}, plane.Point{X: 317.5})}}
	band.Outline = sample.OutlineOf(band.Marks)
	v, err := Judge(arrange.Set{Pieces: []mark.Marking{band}}, on, reading.Scale(), reading.Doubt())
	require.NoError(t, err)
	return Answer{v, reading, on, length.Inch, 0.79375, CommandLines{
		FirstPage: "FIRST PAGE", Corrected: "CORRECTED", Square: "SQUARE",
		Longer: func(of, across, down string) string { return "LONGER " + of + ", " + across + ", " + down },
	}}
}

// Whoever measured is told to type what goes with what is known, and nothing else.
func TestAnswerSaysWhatToType(t *testing.T) {
	// On tabloid paper the rules of the first page are the longest lines that lie on one page.
	const longer = "LONGER 10 in x 16 in, ..., ..."
	for _, c := range []struct {
		name, measured, of string
		typed              []string
	}{
		{"true", "12 1/2", "12 1/2", nil},
		{"not known", "4", "", []string{longer}},
		{"off, and not known by how much", "3 15/16", "", []string{"FIRST PAGE", "CORRECTED", longer}},
		{"off, by what is known", "12 7/16", "12 1/2", []string{"FIRST PAGE", "CORRECTED"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			text := answerFor(t, c.measured, c.of).Text()
			var typed []string
			for line := range strings.Lines(text) {
				if line = strings.TrimSpace(line); strings.Trim(line[:1], "ABCDEFGHIJKLMNOPQRSTUVWXYZ") == "" {
					typed = append(typed, line)
				}
			}
			assert.Equal(t, c.typed, typed, "what is to be typed, of:\n%s", text)
		})
	}
}

// What is no line of the sheets is refused, with the lines that are; and what to do where it was the
// check square is said by whoever knows the commands.
func TestAnswerRefusesALineThatIsNotThere(t *testing.T) {
	// The band lies down the page, and so does its rule of 16 in; across it has one of 10 in.
	for _, c := range []struct{ of, cause string }{
		{"12 1/2", "no line of these sheets is 12 1/2 in across, as they are printed"},
		{"12 9/16", "no line of these sheets is 12 9/16 in across, as they are printed"}, // a step of the ruler too long
		{"12 5/8", "no line of these sheets is 12 5/8 in across, nor 12 5/8 in down, as they are printed"},
		{"10", "no line of these sheets is 10 in down, as they are printed"},
	} {
		err := answerFor(t, "10", c.of).CheckOf()
		var bad *fault.Fault
		require.ErrorAs(t, err, &bad, c.of)
		assert.Equal(t, c.cause, bad.Cause)
		assert.Regexp(t, `^the longest line across is .+, 10 in, .+; the longest line down is .+, 16 in, .+; SQUARE where the check square was measured$`, bad.Hint)
	}
	ten, err := paper.MeasureOf("10", 254, length.Inch)
	require.NoError(t, err)
	both := answerFor(t, "12 1/2", "12 1/2")
	both.Reading.Across = ten
	assert.NoError(t, both.CheckOf(), "a line that is there each way")
}
