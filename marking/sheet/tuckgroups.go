package sheet

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"tuckmark/marking/length"
	"tuckmark/marking/piece"
	"tuckmark/marking/wording"
)

// Rules of this file: what is said of tucks in groups. Their numbers run through all groups,
// as do the lines that a maker ticks off a ruler.

// countedTucks says how many tucks a set has, in how many groups, and of which size.
func countedTucks(t piece.TuckRow, size string) string {
	n, each, groups := t.InAll(), t.PerGroup, t.Groups()
	switch {
	case each < 2:
		return counted(t.FoldRow, "tuck", size)
	case t.Mirrored && n%2 == 1:
		return fmt.Sprintf("%d tucks, %d about the centre and %d in each of %s on each side, each %s",
			n, 2*each-1, each, wording.Counted(groups-1, "group"), size)
	case t.Mirrored:
		return fmt.Sprintf("%d tucks, %d in each of %d groups on each side, each %s", n, each, groups, size)
	}
	return fmt.Sprintf("%d tucks, %d in each of %d groups, each %s", n, each, groups, size)
}

// describeGap says what shows between two tucks that lie a Space apart; nothing where one covers
// the next, or there are no two.
func describeGap(t piece.TuckRow, written func(float64) string) []string {
	switch shows, ok := t.Shows(); {
	case !ok:
		return nil
	case shows == 0:
		return []string{"no cloth shows between tucks when sewn: they touch"}
	case length.IsPlain(shows):
		return []string{"cloth that shows between tucks when sewn: " + written(shows)}
	default: // what a sample took is no number that somebody chose
		return []string{"cloth that shows between tucks when sewn: about " + written(math.Round(shows/sampledStep)*sampledStep)}
	}
}

// describeGroups says how far apart the groups of a set of tucks lie; nothing of one without
// groups. What a sample took moves their fold lines off the ruler: then only what shows is
// said.
func describeGroups(t piece.TuckRow, written func(float64) string) []string {
	if len(t.Betweens) == 0 {
		return nil
	}
	var apart, shows []string
	plain := true
	for i, between := range t.Betweens {
		shows = append(shows, written(between))
		apart = append(apart, written(t.Apart(i)))
		plain = plain && length.IsPlain(t.Apart(i))
	}
	flat, sewn := "from the last fold line of a group to the first of the next", "cloth that shows between groups when sewn"
	if t.PerGroup == 1 {
		flat, sewn = "from fold line to fold line", "cloth that shows between tucks when sewn"
	}
	parts := []string{eachOf(sewn, shows)}
	if plain {
		parts = append([]string{eachOf(flat, apart)}, parts...)
	}
	return parts
}

// eachOf lists lengths from the base outward; once where all are one.
func eachOf(what string, lengths []string) string {
	if len(slices.Compact(slices.Clone(lengths))) == 1 {
		return what + ": " + lengths[0]
	}
	return what + ", in their order: " + strings.Join(lengths, ", ")
}
