package arrange

import (
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: a small drawing stands among the notes of a panel, as thin as the rule
// over them, so that it is not taken for lines of the piece.

// sketched returns a small drawing as an inscription.
func sketched(k mark.Sketch) Inscription {
	t := Inscription{Lines: text.Lines{Height: k.Height}, Width: k.Width}
	down := plane.Point{Y: -k.Height}
	for _, line := range k.Lines {
		for i := 1; i < len(line); i++ {
			t.Rules = append(t.Rules, plane.Path{line[i-1].Add(down), line[i].Add(down)})
		}
	}
	s := ink.Text()
	for _, l := range k.Labels {
		t.Say(l.Text, s, l.At.Add(down).Sub(plane.Point{X: s.Width(l.Text) / 2, Y: s.Middle()}))
	}
	return t
}
