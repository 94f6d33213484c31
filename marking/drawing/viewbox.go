package drawing

import (
	"fmt"
	"slices"
	"strings"

	"tuckmark/marking/fault"
	"tuckmark/marking/wording"
)

// Rules of this file: what a viewBox says is fitted into its view by preserveAspectRatio, as
// SVG 2 has it in sections 8.6 to 8.8; what hangs over is not cut off. The
// size of the whole drawing is the first of these views.

// view is what shares of 100 are taken of, in the units that hold inside it.
type view struct{ width, height float64 }

// viewBox is the part of a drawing that its view shows.
type viewBox struct{ x, y, width, height float64 }

// readViewBox reads the part that is shown; nil where it is not said.
func readViewBox(text string) (*viewBox, error) {
	if strings.TrimSpace(text) == "" {
		return nil, nil
	}
	n, err := numbers(text)
	switch {
	case err != nil:
		return nil, &fault.Fault{Cause: "viewBox: " + fault.At(fault.Place{}, err).Cause, Hint: viewBoxHint}
	case len(n) != 4:
		return nil, &fault.Fault{Cause: "viewBox: has " + wording.Counted(len(n), "number"), Hint: viewBoxHint}
	case !(n[2] > 0) || !(n[3] > 0):
		return nil, &fault.Fault{Cause: fmt.Sprintf("viewBox: shows nothing, being %g wide and %g high", n[2], n[3]), Hint: viewBoxHint}
	}
	return &viewBox{n[0], n[1], n[2], n[3]}, nil
}

const viewBoxHint = "it is four numbers, left, top, width and height: 0 0 210 297"

// alignments are where what is shown lies in a view that has another shape, as shares of
// what is left over.
var alignments = []string{"xMin", "xMid", "xMax", "YMin", "YMid", "YMax"}

// into returns how the part that is shown comes to fill its view.
func (b viewBox) into(width, height float64, ratio string) (matrix, error) {
	sx, sy := width/b.width, height/b.height
	words := strings.Fields(ratio)
	if len(words) == 0 {
		words = []string{"xMidYMid"}
	}
	dx, dy := 0.0, 0.0
	if words[0] != "none" {
		if len(words[0]) != 8 {
			return unmoved, ratioFault(ratio)
		}
		across, up := slices.Index(alignments[:3], words[0][:4]), slices.Index(alignments[3:], words[0][4:])
		if across < 0 || up < 0 {
			return unmoved, ratioFault(ratio)
		}
		fit := min(sx, sy)
		if len(words) > 1 && words[1] == "slice" {
			fit = max(sx, sy)
		}
		sx, sy = fit, fit
		dx, dy = (width-b.width*fit)*float64(across)/2, (height-b.height*fit)*float64(up)/2
	}
	if len(words) > 2 || len(words) == 2 && words[1] != "meet" && words[1] != "slice" {
		return unmoved, ratioFault(ratio)
	}
	return moved(dx, dy).of(scaled(sx, sy)).of(moved(-b.x, -b.y)), nil
}

func ratioFault(ratio string) error {
	return &fault.Fault{Cause: "preserveAspectRatio: " + wording.Quoted(ratio) + " is not known", Hint: "leave it out, or write none, or xMidYMid"}
}

// pageSize returns how large a drawing is, in units of 96 to the inch, and which part it shows.
// Without a size it is as large as the part it shows; without that, it is nowhere.
func pageSize(root *element) (view, *viewBox, error) {
	box, err := readViewBox(root.attrs["viewBox"])
	if err != nil {
		return view{}, nil, err
	}
	r := &reader{e: root, in: view{-1, -1}}
	width, height := r.size("width", -1), r.size("height", -1)
	if r.err != nil {
		return view{}, nil, r.err
	}
	given := func(name string) bool { v := root.property(name); return v != "" && v != "auto" }
	for _, side := range []string{"width", "height"} {
		if r.length(side, -1) == 0 && given(side) {
			return view{}, nil, &fault.Fault{Cause: side + ": the drawing has no size, being 0", Hint: "give the drawing its real size in mm or in"}
		}
	}
	if box != nil {
		switch {
		case !given("width") && !given("height"):
			width, height = box.width, box.height
		case !given("width"):
			width = height * box.width / box.height
		case !given("height"):
			height = width * box.height / box.width
		}
	} else {
		if !given("width") {
			width = -1
		}
		if !given("height") {
			height = -1
		}
	}
	return view{width, height}, box, nil
}
