package drawing

import (
	"fmt"

	"tuckmark/marking/fault"
	"tuckmark/marking/wording"
)

// Rules of this file: the drawings of one file are kept side by side, so what they have is
// bounded together as well: at twice what one of them may have. It is counted whether a drawing
// turns out well or not, as the work is the same. The one that goes beyond a bound is the last.

// together is how many times what one drawing may have all drawings of a file may have.
const together = 2

// Reader reads the drawings of one file. The zero Reader has read none.
type Reader struct {
	bytes, elements, visits, legs, points int
	full                                  bool
}

// Full reports whether the drawings so far have too much, which the last one told: no more are
// read.
func (r *Reader) Full() bool { return r.full }

// Read is the function Read for one drawing more. It is refused where all of them so far have too
// much.
func (r *Reader) Read(file string, data []byte) (*Drawing, error) {
	if len(data) > MaxSize {
		return nil, fault.List{TooLarge(file)}
	}
	if r.bytes += len(data); r.bytes > together*MaxSize {
		return nil, r.beyond(file, fmt.Sprintf("%d MB", together*MaxSize>>20))
	}
	root, f := readTree(data)
	if f != nil {
		f.Place.File = file
		return nil, fault.List{f}
	}
	w := walk(file, root)
	r.elements += w.elements
	r.visits += mostVisits - w.visits
	r.legs += mostLegs - w.legs
	r.points += mostPoints - w.points
	for _, one := range []struct {
		has, most int
		of        string
	}{
		{r.elements, together * mostElements, "elements"},
		{r.visits, together * mostVisits, "elements to draw, with those that are used again"},
		{r.legs, together * mostLegs, "lines and curves"},
		{r.points, together * mostPoints, "points once their curves are drawn"},
	} {
		if one.has > one.most {
			return nil, r.beyond(file, wording.Thousands(one.most)+" "+one.of)
		}
	}
	if len(w.faults) > 0 {
		return nil, w.faults.Sorted()
	}
	return w.drawing, nil
}

// beyond ends it with the mistake that the drawings, as far as one, have more than so much.
func (r *Reader) beyond(file, most string) error {
	r.full = true
	return fault.List{{Place: fault.Place{File: file}, Cause: "the drawings of all pieces, as far as this one, have more than " + most,
		Hint: "take out of them what belongs to no piece, or divide the file"}}
}
