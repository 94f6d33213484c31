package garment

import (
	"fmt"

	"tuckmark/marking/fault"
	"tuckmark/marking/wording"
)

// Rules of this file: for a class several garments are made at once, all alike.

// MostGarments is how many garments of one pattern are reckoned at once: more than a class
// sews.
const MostGarments = 200

// mostLaid is the most pieces that are laid on the cloth for all garments together. It bounds the
// time: a class of 200 may make garments of 50 pieces each.
const mostLaid = 10_000

// ForGarments returns the pattern for so many garments that are made at once, from 1 to
// MostGarments. Its pieces, and what is told of each, stay those of one.
func (p *Pattern) ForGarments(n int) *Pattern {
	whole := *p
	whole.garments = n
	return &whole
}

// CheckGarments refuses to reckon n garments at once that have too many pieces together; one is
// reckoned whatever it has. The error is a *fault.Fault without a place.
func (p *Pattern) CheckGarments(n int) error {
	cut := 0
	for i := range p.Pieces {
		cut += p.Pieces[i].Cut
	}
	if n > 1 && cut*n > mostLaid {
		return &fault.Fault{
			Cause: fmt.Sprintf("%d garments have %s pieces to be cut; at most %s are laid on the cloth", n, wording.Thousands(cut*n), wording.Thousands(mostLaid)),
			Hint:  "reckon fewer garments at once",
		}
	}
	return nil
}

// Garments is how many garments are made at once, at least 1.
func (p *Pattern) Garments() int { return max(1, p.garments) }
