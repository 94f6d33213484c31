package text

import (
	"slices"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
)

// Rules of this file: whatever is set in lines is set here, one line under the other,
// each in a step of its own size. Whoever sets text breaks it first (wrap.go), adds
// its lines, and puts the whole where it belongs.

// Lines is text set in lines, and the lines to write on among it, as it lies with its
// upper left corner at (0, 0).
type Lines struct {
	Labels []Label      // not measured
	Rules  []plane.Path // lines to write on
	Height float64      // in mm
}

// LinesOf sets lines of a style.
func LinesOf(lines []string, s ink.Style) Lines {
	var t Lines
	t.Add(lines, s)
	return t
}

// Add sets lines under what there is.
func (t *Lines) Add(lines []string, s ink.Style) { t.AddAt(lines, s, 0, s.Foot()) }

// AddAt is Add with the lines beginning some mm to the right, and with their base
// lines some mm over their feet.
func (t *Lines) AddAt(lines []string, s ink.Style, left, foot float64) {
	t.Labels = slices.Grow(t.Labels, len(lines))
	for _, line := range lines {
		t.Height += s.Step()
		t.Say(line, s, plane.Point{X: left, Y: -t.Height + foot})
	}
}

// Space leaves some mm free under what there is.
func (t *Lines) Space(mm float64) { t.Height += mm }

// Say sets one line of text with its base line at a place; the height stays as it is.
func (t *Lines) Say(text string, s ink.Style, at plane.Point) {
	t.Labels = append(t.Labels, Label{Text: text, Style: s, At: at, U: Across()})
}

// RuleOff adds a line to write on, from a place to the right.
func (t *Lines) RuleOff(from plane.Point, length float64) {
	t.Rules = append(t.Rules, plane.Path{from, from.Add(plane.Point{X: length})})
}

// With adds other text, moved by a step; the height stays as it is.
func (t *Lines) With(other Lines, step plane.Point) {
	t.Labels = slices.Grow(t.Labels, len(other.Labels))
	for _, l := range other.Labels {
		l.At = l.At.Add(step)
		t.Labels = append(t.Labels, l)
	}
	for _, r := range other.Rules {
		t.Rules = append(t.Rules, plane.Path{r[0].Add(step), r[1].Add(step)})
	}
}

// Under adds other text under what there is.
func (t *Lines) Under(other Lines) {
	t.With(other, plane.Point{Y: -t.Height})
	t.Height += other.Height
}

// What lines to write on need, in mm.
const (
	// WriteStep is from one line to write on to the next: a comfortable height for
	// handwriting.
	WriteStep = 9.0
	// LeastToWrite is the least such a line is long.
	LeastToWrite = 45.0
	// RuleUnder is how far it lies under the base line of its words.
	RuleUnder = 0.6
	// RuleAway is what is kept free between words and a line to write on.
	RuleAway = 1.5
)

// ItemGap is kept free under each step, in sizes of its text.
const ItemGap = 0.4

// Gutter is kept free between two columns of text, in mm.
const Gutter = 8.0
