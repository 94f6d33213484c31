package garment

import (
	"fmt"
	"slices"

	"tuckmark/marking/length"
)

// Rules of this file. A side that is gathered is drawn up to the other. It may be eased
// in as well, as the cap of a puffed sleeve is below its gathers: then the ease is what of
// the longer side goes in without a fold, and the rest is drawn up. Gathers show from 1 1/4
// times the length on; less is ease, and as much as that is no ease any more.

// DrawnUp is by how much the longer side of a seam that is gathered is drawn up: all by
// which it is longer, less what is eased in.
func (s Seam) DrawnUp() length.Amount {
	if up := s.Difference.Magnitude().Beyond(s.Ease); up.MM > length.Rounding && up.Steps > 0 {
		return up
	}
	return length.Amount{Unit: s.Within.Unit}
}

// EaseAndGathers says how a seam that is both eased and gathered is divided; nothing of
// others.
func (s Seam) EaseAndGathers(say func(length.Amount) string) string {
	longer, shorter := s.Longer(s.Difference)
	off := s.Difference.Magnitude()
	switch up := s.DrawnUp(); {
	case !s.Gathered || s.Ease.MM == 0:
		return ""
	case up.Steps == 0:
		return fmt.Sprintf("ease and gathers in one seam: %s %s no more than %s longer than %s, which the ease takes; leave gathered out",
			longer.Title(), longer.is(), say(off), shorter.Title())
	default:
		return fmt.Sprintf("ease and gathers in one seam: of the %s by which %s %s longer, %s are eased in and %s drawn up; notches on both sides show where the gathers begin and end",
			say(off), longer.Title(), longer.is(), say(s.Ease), say(up))
	}
}

// OfHalves reports whether its sides are half of what is sewn: an edge of them begins at the
// fold of the cloth, and goes on beyond it. One that comes twice in each seam is there with
// both its halves.
func (s Seam) OfHalves() bool {
	return s.once > 1 && slices.ContainsFunc(s.Courses(), func(c Course) bool {
		before, after := c.Piece.Neighbours(c.edge)
		return c.Times == 1 && (c.Piece.Edges[before].OnFold || c.Piece.Edges[after].OnFold)
	})
}

// Scant reports whether a side is gathered that is hardly longer than the other.
func (s Seam) Scant() bool { return s.Gathered && s.Ease.MM == 0 && s.Fullness() < leastFull }

// FullnessWarning says that gathers are scant, or that an ease is as full as gathers.
func (s Seam) FullnessWarning() string {
	longer, shorter := s.Longer(s.Difference)
	full := length.Factor(s.Fullness())
	switch {
	case s.Scant():
		return fmt.Sprintf("%s %s only %s times as long as %s, scant for gathers", longer.Title(), longer.is(), full, shorter.Title())
	case !s.Gathered && s.Ease.MM > 0 && s.Matches() && s.Fullness() >= leastFull:
		return fmt.Sprintf("%s %s %s times as long as %s: as full as gathers, and too full to be eased in; gathered = true in place of ease draws it up", longer.Title(), longer.is(), full, shorter.Title())
	}
	return ""
}
