package pdfout

import "tuckmark/marking/plane"

// Rules of this file: whatever is set in lines is set here, one line under the other,
// each in a step of its own size. Whoever sets text breaks it first (wrap.go), adds
// its lines, and puts the whole where it belongs.

// Lines is text set in lines, and the lines to write on among it, as it lies with its
// upper left corner at (0, 0).
type Lines struct {
	labels []label
	rules  []plane.Path // lines to write on
	height float64      // in mm
}

// linesFrom is text that is set from some height of a page downward: its upper edge lies
// there, and y is that of the page.
func linesFrom(y float64) Lines { return Lines{height: -y} }

// y is how high the foot of the text lies.
func (t *Lines) y() float64 { return -t.height }

// linesOf sets lines of a style.
func linesOf(lines []string, s Style) Lines {
	var t Lines
	t.add(lines, s)
	return t
}

// add sets lines under what there is.
func (t *Lines) add(lines []string, s Style) { t.addAt(lines, s, 0, s.foot()) }

// addAt is add with the lines beginning some mm to the right, and with their base
// lines some mm over their feet.
func (t *Lines) addAt(lines []string, s Style, left, foot float64) {
	for _, line := range lines {
		t.height += s.step()
		t.say(line, s, plane.Point{X: left, Y: -t.height + foot})
	}
}

// space leaves some mm free under what there is.
func (t *Lines) space(mm float64) { t.height += mm }

// say sets one line of text with its base line at a place; the height stays as it is.
func (t *Lines) say(text string, s Style, at plane.Point) {
	t.labels = append(t.labels, label{text: text, style: s, at: at, u: across()})
}

// ruleOff adds a line to write on, from a place to the right.
func (t *Lines) ruleOff(from plane.Point, length float64) {
	t.rules = append(t.rules, plane.Path{from, from.Add(plane.Point{X: length})})
}

// with adds other text, moved by a step; the height stays as it is.
func (t *Lines) with(other Lines, step plane.Point) {
	for _, l := range other.labels {
		l.at = l.at.Add(step)
		t.labels = append(t.labels, l)
	}
	for _, r := range other.rules {
		t.rules = append(t.rules, plane.Path{r[0].Add(step), r[1].Add(step)})
	}
}

// under adds other text under what there is.
func (t *Lines) under(other Lines) {
	t.with(other, plane.Point{Y: -t.height})
	t.height += other.height
}

// What lines to write on need, in mm.
const (
	// writeStep is from one line to write on to the next: a comfortable height for
	// handwriting.
	writeStep = 9.0
	// leastToWrite is the least such a line is long.
	leastToWrite = 45.0
	// ruleUnder is how far it lies under the base line of its words.
	ruleUnder = 0.6
	// ruleAway is what is kept free between words and a line to write on.
	ruleAway = 1.5
)

// gutter is kept free between two columns of text, in mm.
const gutter = 8.0
