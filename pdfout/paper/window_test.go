package paper

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// Printers cannot print the outer 1/4 in (common practice); 10 mm are more.
func TestWindowsKeepTheMargin(t *testing.T) {
	for _, p := range All() {
		w := p.Window()
		assert.GreaterOrEqual(t, w.Min.X, 10.0)
		assert.GreaterOrEqual(t, w.Min.Y, 10.0)
		assert.LessOrEqual(t, w.Max.X, p.Width-10)
		assert.LessOrEqual(t, w.Max.Y, p.Height-10)
	}
}

// Whatever corner a printer begins in when it makes a page smaller or larger,
// what is printed stays on the sheet and the margin free: a place of the page is
// printed at its distance from that corner, times the scale.
func TestMarginsAsPrinted(t *testing.T) {
	for _, scale := range []Scale{{0.94, 0.94}, {0.97, 1}, {1.03, 0.99}, {1.05, 1.05}} {
		for _, p := range All() {
			p.Printed = scale
			box := p.Printable() // in mm of the printed sheet, from where it begins
			for _, c := range []struct {
				what                 string
				scale, low, high, on float64
			}{
				{"across", scale.Across, box.Min.X, box.Max.X, p.Width},
				{"down", scale.Down, box.Min.Y, box.Max.Y, p.Height},
			} {
				for corner, moved := range map[string]float64{"low": 0, "middle": c.on * (1 - c.scale) / 2, "high": c.on * (1 - c.scale)} {
					assert.GreaterOrEqual(t, c.low+moved, p.Margin-1e-9, "%s, %v, from the %s corner", c.what, scale, corner)
					assert.LessOrEqual(t, c.high+moved, c.on-p.Margin+1e-9, "%s, %v, from the %s corner", c.what, scale, corner)
				}
			}
		}
	}
}
