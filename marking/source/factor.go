package source

import (
	"fmt"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/wording"
)

// Rules of this file: a number that is no length is written as one is, without a unit.

// factors is what numbers of one kind may be.
type factors struct {
	least, most float64
	hint        string
}

var (
	// fullnesses bound what is called fullness: below the least nothing is gathered, beyond
	// the most nobody could draw it up.
	fullnesses = factors{1, 20, `it is a number such as 2 or "1 1/2": how many times as long as the edge`}
	// enlargements bound how much larger or smaller than its draft a piece is: drafts are
	// printed at a quarter or an eighth, or ten times too large by a slip of the unit.
	enlargements = factors{0.01, 100, `it is a number such as 4 or "1 1/2": how many times as large as its points the piece is`}
)

// factor reads a number without a unit.
func (t *fileTable) factor(key string, allowed factors) Factor {
	return value(t, key, func(v any) (float64, error) {
		var n float64
		switch v := v.(type) {
		case int64:
			n = float64(v)
		case float64:
			n = v
		case string:
			var err error
			if n, err = length.ParseNumber(v); err != nil {
				return 1, &fault.Fault{Cause: wording.Quoted(v) + " is not a number", Hint: allowed.hint}
			}
			t.noteUnspaced(t.at(key), v, nil)
		default:
			return 1, &fault.Fault{Cause: "must be a number, but is " + asGiven(v), Hint: allowed.hint}
		}
		if err := allowed.refuse(n, v); err != nil {
			return 1, err
		}
		return n, nil
	})
}

// refuse refuses a number that is out of its bounds, or none; it was written as given.
func (allowed factors) refuse(n float64, given any) error {
	if !(n >= allowed.least && n <= allowed.most) {
		return &fault.Fault{Cause: fmt.Sprintf("must be from %g to %g, but is %s", allowed.least, allowed.most, asGiven(given)), Hint: allowed.hint}
	}
	return nil
}
