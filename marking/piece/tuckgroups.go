package piece

import (
	"fmt"
	"slices"

	"tuckmark/marking/length"
	"tuckmark/marking/source"
)

// Rules of this file (w is the width of a tuck; g the cloth that shows between two tucks of a
// group, b between two groups):
//
//   - Tucks come in groups with plain cloth between them; each group is a row by itself. The
//     tucks are numbered through all groups, from the base outward.
//   - From the last fold line of a group to the first of the next it is 3w + b on the flat
//     cloth, as it is 3w + g within a group. What a sample took stands for 2w there too.
//   - Finished, m groups of n tucks reach from the first stitching to the last fold over
//     n m w, all gaps and all that shows between groups (Kinne and Cooley, Clothing and
//     Health, 1916, p. 99, has it for one group; derived).

// takeGroups makes a set of tucks one in groups, where the file asks for them.
func (t *TuckRow) takeGroups(ts source.TuckSpec) {
	switch {
	case ts.Betweens.Given():
		t.Betweens = ts.Betweens.V
	case ts.Between.Given():
		t.Betweens = slices.Repeat([]float64{ts.Between.V}, ts.Groups.V-1)
	default:
		return
	}
	t.PerGroup = t.Count
	t.Count *= t.Groups()
}

// Groups is how many groups the tucks are in; 1 where they are in none.
func (t TuckRow) Groups() int { return len(t.Betweens) + 1 }

// Together is how many tucks lie a Space apart: those of one group, or all.
func (t TuckRow) Together() int { return t.Count / t.Groups() }

// Apart is how far it is, flat, from the last fold line of a group, counted from 0, to the
// first of the next.
func (t TuckRow) Apart(group int) float64 { return t.Takes + t.Width + t.Betweens[group] }

// Even reports whether the same shows between all groups.
func (t TuckRow) Even() bool { return len(slices.Compact(slices.Clone(t.Betweens))) <= 1 }

// nearest is how far the two nearest of its fold lines lie apart, flat.
func (t TuckRow) nearest() float64 {
	if len(t.Betweens) == 0 {
		return t.Space
	}
	apart := t.Apart(slices.Index(t.Betweens, slices.Min(t.Betweens)))
	if t.Together() > 1 {
		apart = min(apart, t.Space)
	}
	return apart
}

// foldLine is where tuck k is folded, counted from 0: from the base, flat.
func (t TuckRow) foldLine(k int) float64 {
	group := k / t.Together()
	at := t.first + float64(k-group)*t.Space
	for g := range group {
		at += t.Apart(g)
	}
	return at
}

// inGroup says in which group a fold lies: " (tuck 2 of group 3)"; "" where there are none,
// or a group is one tuck.
func (r FoldRow) inGroup(f Fold) string {
	if r.PerGroup < 2 {
		return ""
	}
	return fmt.Sprintf(" (%s %d of group %d)", r.Makes, f.Number%r.PerGroup+1, f.Number/r.PerGroup+1)
}

// groups warns of groups that do not stand apart.
func (m *remarker) groups(t *TuckRow) {
	if t.PerGroup < 2 {
		return
	}
	if least := slices.Min(t.Betweens); least <= t.Gap+length.Rounding {
		m.say(t.Place, "the groups do not stand apart: between two of them %s shows, and %s between two tucks of one",
			m.unit.OnRuler(least), m.unit.OnRuler(max(0, t.Gap)))
	}
}
