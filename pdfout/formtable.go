package pdfout

import (
	"math"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/text"
)

// Rules of this file: a table to be filled in has as many rows as the page has room for, each
// as high as a line to write on, and stands as often side by side as the page is wide enough. Its
// first column, for words, is as wide as two others, which are for numbers.

const (
	// leastTable is the least width of a table, in mm, and leastRows the fewest rows that are of
	// any use.
	leastTable = 78.0
	leastRows  = 8
	headInset  = 1.5 // between the side of a column and its head, in mm
)

// tableOf sets a table of columns in a width, with the rows that a height has room for; fits is
// false where that is too low. Without columns there is nothing to set.
func tableOf(columns []string, width, height float64) (all text.Lines, fits bool) {
	if len(columns) == 0 {
		return all, true
	}
	head := ink.StrongText()
	rows := math.Floor((height - head.Step()) / text.WriteStep)
	if rows < leastRows {
		return all, false
	}
	count := math.Max(1, math.Floor((width+text.Gutter)/(leastTable+text.Gutter)))
	one := (width+text.Gutter)/count - text.Gutter
	foot := -head.Step() - rows*text.WriteStep
	for k := range int(count) {
		left := float64(k) * (one + text.Gutter)
		x := left
		for i, name := range columns {
			all.Say(name, head, plane.Point{X: x + headInset, Y: -head.Step() + head.Foot()})
			all.Rules = append(all.Rules, plane.Path{{X: x, Y: foot}, {X: x, Y: -head.Step()}})
			part := one / float64(len(columns)+1)
			if x += part; i == 0 {
				x += part
			}
		}
		all.Rules = append(all.Rules, plane.Path{{X: x, Y: foot}, {X: x, Y: -head.Step()}})
		for row := range int(rows) + 1 {
			all.RuleOff(plane.Point{X: left, Y: -head.Step() - float64(row)*text.WriteStep}, one)
		}
	}
	all.Height = -foot
	return all, true
}
