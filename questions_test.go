package main

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/length"
	"tuckmark/marking/start"
)

func TestAskAnswers(t *testing.T) {
	usual := start.Answers{Title: "Dress", Size: "2 years", Unit: length.Inch, Pieces: []string{"front", "back", "sleeve"}}
	for _, c := range []struct {
		name, typed string
		want        start.Answers
	}{
		{"enter alone", "\n\n\n\n", usual},
		{"all answered", "front, neck band\r\ncm\r\n 18 months \r\nPlum dress\r\n", start.Answers{Title: "Plum dress", Size: "18 months", Unit: length.Centimetre, Pieces: []string{"front", "neck band"}}},
		{"the last without enter", "\n\n\nSmock", start.Answers{Title: "Smock", Size: "2 years", Unit: length.Inch, Pieces: usual.Pieces}},
		{"a unit spelled out", "front\ninches\n\n\n", start.Answers{Title: "Dress", Size: "2 years", Unit: length.Inch, Pieces: []string{"front"}}},
		{"a slip is written anew", "front,sleev\nsleeve\nmm\n\n\n", start.Answers{Title: "Dress", Size: "2 years", Unit: length.Millimetre, Pieces: []string{"front", "sleeve"}}},
		{"enter keeps what is no slip", "front,sleev\n\nmm\n\n\n", start.Answers{Title: "Dress", Size: "2 years", Unit: length.Millimetre, Pieces: []string{"front", "sleev"}}},
		{"what cannot be is asked again", "front,sleev\nfront\nsleeve\nmm\n\n\n", start.Answers{Title: "Dress", Size: "2 years", Unit: length.Millimetre, Pieces: []string{"front", "sleeve"}}},
		{"all are written anew", "front,sleev\nfront, back, sleve\nsleeve\nmm\n\n\n", start.Answers{Title: "Dress", Size: "2 years", Unit: length.Millimetre, Pieces: []string{"front", "back", "sleeve"}}},
		{"a size without an age is written anew", "\n\nbaby\n❄\n6 months\n\n", start.Answers{Title: "Dress", Size: "6 months", Unit: length.Inch, Pieces: usual.Pieces}},
		{"enter keeps a size without an age", "\n\nAnna\n\n\n", start.Answers{Title: "Dress", Size: "Anna", Unit: length.Inch, Pieces: usual.Pieces}},
		{"asked again", "front,front\n\nfoot\nmm\n❄\n4\n\n", start.Answers{Title: "Dress", Size: "4", Unit: length.Millimetre, Pieces: usual.Pieces}},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := usual
			var said strings.Builder
			require.NoError(t, askAnswers(strings.NewReader(c.typed), &said, "dress.toml", &got))
			assert.Equal(t, c.want, got, said.String())
		})
	}
}

func TestAskAnswersThatEnd(t *testing.T) {
	for _, typed := range []string{"", "front", "front\n", "front,front", "\n\n\n", "\n\n\n  "} {
		a := start.Usual()
		err := askAnswers(strings.NewReader(typed), &strings.Builder{}, "dress.toml", &a)
		assert.EqualError(t, err, "dress.toml: the questions were not all answered, and no file was written\n"+
			"hint: answer on the command line: `tuckmark start --pieces front,back dress.toml`", "%q", typed)
	}
}
