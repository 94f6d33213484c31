package board

import (
	"slices"
	"strconv"
	"strings"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
)

// Rules of this file: the key of folded pieces has a shade for every number of layers that lies
// anywhere on them, made of as many layers, and what of their lines is drawn otherwise than on
// sheets. Keys have no name: nobody looks at one alone.

// The key, in sizes of its letters: a sample of a shade, and how far under it its number stands, a
// sample of a line, the width of a flap beside it, and of the shadow on its other side, how far
// apart soft lines end, and from one line of text to the next. Soft lines begin three times as near.
const (
	swatchSide   = 3.0
	swatchNumber = 1.2
	sampleLong   = 4.0
	sampleFlap   = 0.6
	sampleShadow = 0.2
	sampleSoft   = 0.25
	softNarrower = 3.0
	keyStep      = 1.6
)

// shadeKey shows how dark how many layers of cloth are, and the lines of folds; none where pieces have
// no folds.
func shadeKey(pieces []mark.Pressed, letters float64) []Part {
	var counts []int
	for _, p := range pieces {
		counts = append(counts, p.Counts...)
	}
	slices.Sort(counts)
	if counts = slices.Compact(counts); len(counts) < 2 {
		return nil
	}
	k := shades{letters, counts, samplesOf(pieces)}
	size := k.size()
	return []Part{{Box: plane.Box{Max: size}, Elements: func() string { return k.draw(size) }}}
}

// shades is such a key.
type shades struct {
	letters float64
	counts  []int
	samples []sample
}

// keyTitle stands over the shades, and turnedName beside that of what lies outside of the seams.
const (
	keyTitle   = "layers of cloth"
	turnedName = "allowance or hem"
)

// size is how large it is.
func (k shades) size() plane.Point {
	style := captionStyle(k.letters)
	wide := max(swatchSide*k.letters*float64(len(k.counts)), style.Width(keyTitle))
	for _, s := range k.samples {
		wide = max(wide, (sampleLong+1)*k.letters+style.Width(s.name))
	}
	high := (2*keyStep + swatchSide + keyStep*float64(len(k.samples))) * k.letters
	return plane.Point{X: wide + 2*margin, Y: high + 2*margin}
}

// draw draws it on paper of a size.
func (k shades) draw(size plane.Point) string {
	style, step := captionStyle(k.letters), keyStep*k.letters
	picture := ink.NewPicture("shades", size)
	top := size.Y - margin
	ink.Write(picture, plane.Point{X: margin, Y: top - k.letters}, style, keyTitle)
	top -= step
	side := swatchSide * k.letters
	var layers []plane.Path
	for i, n := range k.counts {
		left := margin + side*float64(i)
		box := plane.Box{Min: plane.Point{X: left, Y: top - side}, Max: plane.Point{X: left + side, Y: top}}
		for range n {
			layers = append(layers, box.Outline())
		}
		words := strconv.Itoa(n)
		ink.Write(picture, plane.Point{X: left + (side-style.Width(words))/2, Y: top - side - swatchNumber*k.letters}, style, words)
	}
	top -= side + step
	var washes strings.Builder
	on := surface{0, size.Y}
	for _, s := range k.samples {
		y := top - step/2
		washes.WriteString(s.draw(picture, on, plane.Point{X: margin, Y: y}, k.letters))
		ink.Write(picture, plane.Point{X: margin + (sampleLong+1)*k.letters, Y: y - style.Middle()}, style, s.name)
		top -= step
	}
	return paperBox(size) + on.cloth(layers) + washes.String() + picture.Elements()
}

// sample is a line of the key.
type sample struct {
	name string
	draw func(d *ink.Picture, on surface, at plane.Point, letters float64) (washes string)
}

// samplesOf are those of the lines that pieces have.
func samplesOf(pieces []mark.Pressed) []sample {
	has := func(role mark.Role) bool {
		return slices.ContainsFunc(pieces, func(p mark.Pressed) bool {
			return slices.ContainsFunc(p.Marks, func(m mark.Mark) bool { return m.Role == role })
		})
	}
	var all []sample
	if slices.ContainsFunc(pieces, func(p mark.Pressed) bool { return len(p.Sewn) > 0 }) {
		all = append(all, sample{turnedName, func(_ *ink.Picture, on surface, at plane.Point, letters float64) string {
			half := plane.Point{X: sampleLong / 2 * letters, Y: sampleFlap * letters}
			sewn := plane.Box{Min: at.Sub(plane.Point{Y: half.Y}), Max: at.Add(half)}
			whole := plane.Box{Min: sewn.Min, Max: sewn.Max.Add(plane.Point{X: half.X})}.Outline()
			return on.cloth([]plane.Path{whole}) + on.turned(whole, sewn.Outline())
		}})
	}
	for _, edge := range []struct {
		role mark.Role
		name string
	}{{mark.TuckFold, "edge of a tuck"}, {mark.PleatFold, "edge of a pleat"}} {
		if has(edge.role) {
			all = append(all, sample{edge.name, func(d *ink.Picture, on surface, at plane.Point, letters float64) string {
				line := sampleLine(at, letters)
				ink.DrawLines(d, pressedPen(edge.role), line)
				flap := plane.Box{Min: at, Max: line[1].Add(plane.Point{Y: sampleFlap * letters})}.Outline()
				shadow := plane.Box{Min: at.Sub(plane.Point{Y: sampleShadow * letters}), Max: line[1]}.Outline()
				return on.cloth([]plane.Path{flap, flap, flap}) + on.shadows([]plane.Path{shadow, shadow})
			}})
		}
	}
	if has(mark.TuckStitch) {
		all = append(all, sample{"stitching", func(d *ink.Picture, _ surface, at plane.Point, letters float64) string {
			ink.DrawLines(d, pressedPen(mark.TuckStitch), sampleLine(at, letters))
			return ""
		}})
	}
	if slices.ContainsFunc(pieces, func(p mark.Pressed) bool { return len(p.Fullness) > 0 }) {
		all = append(all, sample{"cloth that is let go", func(_ *ink.Picture, on surface, at plane.Point, letters float64) string {
			var lines []plane.Path
			for _, up := range []float64{-sampleSoft, 0, sampleSoft} {
				line := sampleLine(at, letters)
				line[0].Y, line[1].Y = line[0].Y+up*letters/softNarrower, line[1].Y+up*letters
				lines = append(lines, line)
			}
			return on.fullness(lines)
		}})
	}
	return all
}

// sampleLine is a line from a place to the right.
func sampleLine(at plane.Point, letters float64) plane.Path {
	return plane.Path{at, at.Add(plane.Point{X: sampleLong * letters})}
}

// alikeNote names pieces that are alike in all views, in a line of its own; none for none.
func alikeNote(names []string, letters float64) []Part {
	if len(names) == 0 {
		return nil
	}
	note := "alike in all views: " + strings.Join(names, ", ")
	size := plane.Point{X: captionStyle(letters).Width(note) + letters, Y: keyStep * letters}
	return []Part{{Box: plane.Box{Max: size}, Elements: func() string {
		return captionText(note, letters, letters)
	}}}
}
