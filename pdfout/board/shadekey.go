package board

import (
	"slices"
	"strconv"
	"strings"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
)

// swatchSide is the side of a sample of a shade, in sizes of its letters.
const swatchSide = 3.0

// captionStyle is the style of letters of a size in mm.
func captionStyle(letters float64) ink.Style { return ink.Plain(letters / paper.Pt) }

// alikeNote names pieces that are alike in all views, in a line of its own; none for none.
func alikeNote(names []string, letters float64) []Part {
	if len(names) == 0 {
		return nil
	}
	note := "alike in all views: " + strings.Join(names, ", ")
	width := captionStyle(letters).Width(note) + letters
	return []Part{{Name: note, Box: plane.Box{Max: plane.Point{X: width}}, Elements: func() string { return "" }}}
}

// shadeKey shows how dark how many layers of cloth are, of all numbers of them that pieces have; none
// where there are no two.
func shadeKey(pieces []mark.Pressed, letters float64) []Part {
	var counts []int
	for _, p := range pieces {
		counts = append(counts, p.Counts...)
	}
	slices.Sort(counts)
	if counts = slices.Compact(counts); len(counts) < 2 {
		return nil
	}
	side := swatchSide * letters
	size := plane.Point{X: side*float64(len(counts)) + 2*margin, Y: side + 1.6*letters + 2*margin}
	return []Part{{Name: "layers of cloth", Box: plane.Box{Max: size}, Elements: func() string {
		var out strings.Builder
		out.WriteString(paperBox(size))
		texts := ink.NewPicture("layers-key", size)
		var swatches []plane.Path
		for i, n := range counts {
			left := margin + side*float64(i)
			box := plane.Box{Min: plane.Point{X: left, Y: -margin - side}, Max: plane.Point{X: left + side, Y: -margin}}
			for range n {
				swatches = append(swatches, box.Outline())
			}
			style, words := captionStyle(letters), strconv.Itoa(n)
			ink.Write(texts, plane.Point{X: left + (side-style.Width(words))/2, Y: margin + 0.3*letters}, style, words)
		}
		out.WriteString(surface{}.cloth(swatches) + texts.Elements())
		return out.String()
	}}}
}
