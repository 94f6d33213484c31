package source

import (
	"fmt"
	"strings"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/plane"
)

// Rules of this file: a fraction in which a space may be missing counts as it is written,
// and is remembered, so that it can be asked about.

// noteUnspaced remembers such a fraction at a place, unless something is wrong with it
// anyhow.
func (r *fileReader) noteUnspaced(at fault.Place, v any, wrong error) {
	if s, isText := v.(string); isText && wrong == nil {
		if u, ok := length.FindUnspaced(s); ok {
			r.unspaced = append(r.unspaced, GivenAt(u, at))
		}
	}
}

// number is a length, and how it is to be written where it is not as the file has it.
type number struct {
	mm float64
	by string
}

// others returns what a point may be meant as that was read from a pair of numbers; nil
// where no space can be missing.
func (r *fileReader) others(read plane.Point, pair []any) []Other {
	if len(pair) != 2 {
		return nil
	}
	return combined(r.spaced(read.X, pair[0]), r.spaced(read.Y, pair[1]))
}

// combined returns the points that numbers across and up give, but for the one that is as
// the file has both.
func combined(xs, ys []number) []Other {
	var all []Other
	for _, x := range xs {
		for _, y := range ys {
			by := x.by + y.by
			if x.by != "" && y.by != "" && x.by != y.by {
				by = x.by + " and " + y.by
			}
			if by != "" {
				all = append(all, Other{plane.Point{X: x.mm, Y: y.mm}, by})
			}
		}
	}
	return all
}

// spaced returns a length as it was read, and as it may be meant.
func (r *fileReader) spaced(mm float64, v any) []number {
	all := []number{{mm: mm}}
	s, _ := v.(string)
	if u, ok := length.FindUnspaced(s); ok {
		for _, meant := range u.Meant {
			if mm, err := r.measure(strings.Replace(s, u.Written, meant, 1), anywhere); err == nil {
				all = append(all, number{mm, fmt.Sprintf("%q for %s", meant, u.Written)})
			}
		}
	}
	return all
}
