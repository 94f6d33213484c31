package start

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
)

// Rules of this file: pieces that belong together are sewn together where edges of theirs are
// drafted to match. A second piece that is the same as another has no seam, for it would be
// sewn to what is sewn already.

// set are the pieces that belong together, as far as they are sewn; one half alone counts as
// nothing.
type set struct {
	front, back, yoke, backYoke []named // one, or the left and the right half
	skirt, backSkirt            []named
	sleeve, collar, bonnet      []named
	opensInFront                bool
	skirts, sleeves             bool // it has some, sewn on or not
}

// sets are those of all names, by the words that tell them apart.
func sets(names []named) map[string]set {
	all := map[string]set{}
	for _, n := range names {
		all[n.set] = set{}
	}
	for key := range all {
		own := slices.DeleteFunc(slices.Clone(names), func(n named) bool { return n.set != key })
		inFront := slices.DeleteFunc(slices.Clone(own), named.behind)
		behind := slices.DeleteFunc(slices.Clone(own), func(n named) bool { return !n.behind() })
		s := set{
			front: whole(inFront, front), back: whole(behind, back),
			yoke: whole(inFront, yoke), backYoke: whole(behind, yoke),
			skirt: whole(inFront, skirt), backSkirt: whole(behind, skirt),
			sleeve: whole(inFront, sleeve), collar: whole(inFront, collar), bonnet: whole(inFront, bonnet),
			skirts:  slices.ContainsFunc(own, func(n named) bool { return n.kind == skirt }),
			sleeves: slices.ContainsFunc(own, func(n named) bool { return n.kind == sleeve }),
			opensInFront: slices.ContainsFunc(own, func(n named) bool {
				return n.isHalf() && !n.behind() && (n.kind == front || n.kind == yoke)
			}),
		}
		all[key] = s
	}
	return all
}

// whole are the pieces of a kind that make one whole: the first that is no half, or both halves.
func whole(names []named, of kind) []named {
	var left, right []named
	for _, n := range names {
		switch {
		case n.kind != of:
		case !n.isHalf():
			return []named{n}
		case n.left && left == nil:
			left = []named{n}
		case n.right && right == nil:
			right = []named{n}
		}
	}
	if left == nil || right == nil {
		return nil
	}
	return append(left, right...)
}

// onFold reports whether a piece of the set that covers front or back is drawn by half of it,
// on the fold. The garment opens behind, unless its front comes in two halves.
func (s set) onFold(n named) bool { return !n.isHalf() && (!n.behind() || s.opensInFront) }

// seam is what stands under [seam.KEY].
type seam struct {
	Key, Join string
	Note      []string
	Ease      string
	Gathered  bool
}

// seams are those of a set.
func (s set) seams(b block, of string) []seam {
	var all []seam
	add := func(key string, one seam, first, second []string) {
		if len(first) > 0 && len(second) > 0 {
			one.Key, one.Join = keyed(strings.TrimSpace(of+" "+key)), join(first, second)
			all = append(all, one)
		}
	}
	upperFront, upperBack := upper(s.yoke, s.front), upper(s.backYoke, s.back)
	if upperFront != nil && upperBack != nil {
		add("shoulder", seam{}, edges(upperFront, "shoulder"), edges(upperBack, "shoulder"))
	}
	if (s.front == nil) == (s.back == nil) {
		add("side", seam{}, edges(slices.Concat(s.yoke, s.front), "side"), edges(slices.Concat(s.backYoke, s.back), "side"))
	}
	for _, halves := range [][]named{s.panel(s.front, s.yoke), s.panel(s.back, s.backYoke)} {
		if len(halves) > 1 {
			add(halves[0].centre(), seam{}, edges(halves[:1], halves[0].centre()), edges(halves[1:], halves[0].centre()))
		}
	}
	gathered := seam{Gathered: true}
	add("yoke", gathered, edges(s.panel(s.front, s.yoke), "top"), edges(s.yoke, "lower"))
	add("back yoke", gathered, edges(s.panel(s.back, s.backYoke), "top"), edges(s.backYoke, "lower"))
	if upperFront != nil && upperBack != nil {
		times := 1
		if len(upperFront) > 1 || len(upperBack) > 1 {
			times = 2 // the seam is that of both sides together
		}
		add("armhole", seam{Ease: written(b.unit, times*b.capEase())}, edges(s.sleeve, "cap"), edges(slices.Concat(upperFront, upperBack), "armhole"))
		add("neck", seam{Ease: written(b.unit, times)}, edges(slices.Concat(upperFront, upperBack), "neck"), edges(s.collar, "neck"))
	}
	add("underarm", seam{Note: []string{"Each sleeve is sewn to its own other half."}}, edges(s.sleeve, "underarm"), edges(s.sleeve, "underarm"))
	add("back of the cap", seam{}, edges(s.bonnet, "back"), edges(s.bonnet, "back"))
	if s.skirtIsWhole() {
		waist := gathered
		waist.Note = []string{
			"The waist opens, and the skirt does not: first lay its two ends one over the other, centre",
			fmt.Sprintf("line on centre line. That makes it %s shorter at each end than the figures of this seam say.", b.unit.AsWritten(float64(b.pastMiddle())*stepMM(b.unit))),
		}
		add("waist", waist, edges(slices.Concat(s.skirt, s.backSkirt), "waist"), slices.Concat(s.foot(s.front, s.yoke), s.foot(s.back, s.backYoke)))
		other := s.backSkirt
		if other == nil {
			other = s.skirt
		}
		add("skirt side", seam{}, edges(s.skirt, "side"), edges(other, "side"))
	}
	return all
}

// upper are the pieces that reach the shoulder: the yoke where there is one.
func upper(yoke, whole []named) []named {
	if yoke != nil {
		return yoke
	}
	return whole
}

// panel are the pieces below a yoke; none where there is none.
func (s set) panel(below, yoke []named) []named {
	if yoke == nil {
		return nil
	}
	return below
}

// Lone says of each of some pieces that is a yoke with nothing below it, in a line, what would
// hang from it; of one in two halves once. It says nothing of a yoke that a skirt is sewn to.
func Lone(pieces []string) []string {
	var names []named
	for _, name := range pieces {
		names = append(names, readName(name))
	}
	all := sets(names)
	var lines []string
	for _, n := range names {
		s := all[n.set]
		yokes, of := s.yoke, front
		if n.behind() {
			yokes, of = s.backYoke, back
		}
		hangs := slices.ContainsFunc(names, func(o named) bool { return o.set == n.set && o.kind == of && o.behind() == n.behind() })
		skirted := s.skirtIsWhole() && s.foot(nil, yokes) != nil
		otherHalf := len(yokes) > 1 && n != yokes[0]
		if n.kind == yoke && !hangs && !skirted && !otherHalf {
			lines = append(lines, fmt.Sprintf("%s: it is the top of a %[2]s alone; name a %[2]s beside it, which then hangs from it, or draw what is sewn to it below", n.name, kindWords[of]))
		}
	}
	return lines
}

// foot are the lower edges that a skirt is sewn to; none unless front and back both end there.
func (s set) foot(lower, yoke []named) []string {
	switch {
	case (s.front == nil) != (s.back == nil) || upper(s.yoke, s.front) == nil || upper(s.backYoke, s.back) == nil:
		return nil
	case lower != nil:
		return edges(lower, "waist")
	}
	return edges(yoke, "lower")
}

// skirtIsWhole reports whether the skirt goes all round.
func (s set) skirtIsWhole() bool {
	return s.skirt != nil && (s.backSkirt != nil || !s.skirt[0].ofFront)
}

// edges are the names of one edge of several pieces.
func edges(of []named, edge string) []string {
	var all []string
	for _, n := range of {
		all = append(all, n.name+"."+edge)
	}
	return all
}

// join writes the two sides of a seam.
func join(first, second []string) string {
	return "[" + side(first) + ", " + side(second) + "]"
}

func side(names []string) string {
	var quoted []string
	for _, name := range names {
		quoted = append(quoted, strconv.Quote(name))
	}
	if len(quoted) == 1 {
		return quoted[0]
	}
	return "[" + strings.Join(quoted, ", ") + "]"
}
