package pdfout

import (
	"math"
	"strconv"

	"tuckmark/marking/length"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
)

// Rules of this file: a rule has thin ticks, and what is measured is from the middle of one
// to the middle of another. The longer a tick, the rounder its number; only the roundest
// have it written beside them.

const (
	tickWidth   = 0.18 // of a tick, in mm
	longestTick = 4.6  // in mm
	tickAway    = 0.8  // between a tick and its number, in mm
)

// tickLengths are how long the ticks of a rule are, in mm, by how many of its smallest
// steps they come at: the first that a step is a multiple of counts.
type tickLengths []struct {
	steps int
	long  float64
}

// ticksOf are the ticks of a unit: inches in sixteenths, others in millimetres.
func ticksOf(unit length.Unit) tickLengths {
	if unit == length.Inch {
		return tickLengths{{16, longestTick}, {8, 3.5}, {4, 2.7}, {2, 2.0}, {1, 1.3}}
	}
	return tickLengths{{10, longestTick}, {5, 3.2}, {1, 1.9}}
}

// rule is a graduated rule, drawn from its zero.
type rule struct {
	unit  length.Unit // inches, or centimetres for all others
	steps int         // how many of the smallest steps it has
	along plane.Point // the direction it runs in, of length 1
	out   plane.Point // the side on which its ticks stand, of length 1
	// bare is how far from its first tick it has no other, in mm: where two rules begin in
	// one place.
	bare float64
}

// ruleWithin is the longest rule of whole inches, or centimetres, that is no longer than
// most mm.
func ruleWithin(most float64, unit length.Unit, along, out plane.Point) rule {
	r := rule{unit: unit, along: along, out: out}
	whole := ticksOf(unit)[0].steps
	r.steps = whole * int(most/(float64(whole)*unit.Ruler()))
	return r
}

// long is how long the rule is, in mm.
func (r rule) long() float64 { return float64(r.steps) * r.unit.Ruler() }

// draw draws the rule from its zero.
func (r rule) draw(d ink.Canvas, zero plane.Point) {
	ticks := ticksOf(r.unit)
	var lines []plane.Path
	for k := range r.steps + 1 {
		away := float64(k) * r.unit.Ruler()
		if k > 0 && away < r.bare {
			continue
		}
		at := zero.Add(r.along.Mul(away))
		for _, t := range ticks {
			if k%t.steps == 0 {
				lines = append(lines, plane.Path{at, at.Add(r.out.Mul(t.long))})
				break
			}
		}
		if whole := ticks[0].steps; k > 0 && k%whole == 0 {
			r.number(d, at, k/whole)
		}
	}
	ink.DrawLines(d, ink.LinePen(tickWidth, ink.Black()), lines...)
}

// number writes a number at its tick.
func (r rule) number(d ink.Canvas, tick plane.Point, n int) {
	words, style := strconv.Itoa(n), ink.Tick()
	half := style.Half(words)
	off := longestTick + tickAway + half.Dot(plane.Point{X: math.Abs(r.out.X), Y: math.Abs(r.out.Y)})
	ink.WriteMiddle(d, tick.Add(r.out.Mul(off)), style, words)
}
