package marking

import (
	"fmt"
	"math"

	"tuckmark/marking/plane"
)

// Rules of this file (w is the width of a tuck, fold to stitching; g the cloth
// that shows between one tuck's fold and the next tuck's stitching):
//
//   - A tuck takes up 2w of the cloth: w on either side of its fold line. The
//     spaces between tucks take up nothing (Baldt, Clothing for Women, 1916;
//     Kinne and Cooley, Clothing and Health, 1916).
//   - Flat, fold lines lie 3w + g apart: from one stitching to the next fold
//     line it is 2w + g (McGlauflin, Handicraft for Girls, 1910).
//   - Take-ups may touch; they never overlap, for cloth folds only once.
//   - The fold lines are drawn where they lie on the flat cloth.

// Tuck is a set of tucks.
type Tuck struct {
	Key   string
	Width float64 // of one tuck, fold to stitching
	Count int
	First float64 // from the base to the first fold line, flat
	Space float64 // from fold line to fold line, flat
	Press string  // "away" from the base or "toward" it; "" where the file does not say
	Twin  bool    // sewn with a twin needle along the fold line
	Each  []TuckLines
	End   plane.Path // where the stitching ends; nil for tucks from edge to edge

	base  base
	place Place
}

// TuckLines are the lines of one tuck on the flat cloth. Each is in one part,
// or in several where the edge of the piece comes in between.
type TuckLines struct {
	Fold []plane.Path
	Sewn []plane.Path // none where a twin needle follows the fold line
}

// TakeUp returns how much cloth the whole set takes, in mm: twice the width
// for each tuck.
func (t Tuck) TakeUp() float64 { return 2 * t.Width * float64(t.Count) }

// Flat returns how far from the base the fold line of tuck k lies on the flat
// cloth, in mm, counted from 0.
func (t Tuck) Flat(k int) float64 { return t.First + float64(k)*t.Space }

// takesUp returns the cloth that tuck k takes up, as distances from the base.
func (t Tuck) takesUp(k int) stretch { return stretch{t.Flat(k) - t.Width, t.Flat(k) + t.Width} }

// checkTucks works out the tucks of a piece.
func checkTucks(piece *Piece, ps PieceSpec, found *findings) {
	for _, ts := range ps.Tucks {
		t := Tuck{
			Key: ts.Key, Width: ts.Width.MM, Count: ts.Count.N, First: ts.First.MM,
			Press: ts.Press.Value, Twin: ts.Sewn.Value == "twin needle", place: ts.Place,
		}
		t.Space = 3*t.Width + ts.Gap.MM
		if ts.Spacing.Given() {
			t.Space = ts.Spacing.MM
		}
		var ok bool
		if t.base, ok = findBase(piece, ts.Beside, ts.Side, found); !ok {
			continue
		}
		if checkSpaces(t, found) && layTucks(piece, &t, ts, found) {
			piece.Tucks = append(piece.Tucks, t)
		}
	}
}

// checkSpaces looks whether the cloth can be folded as the set asks for: within
// the set, and against the base.
func checkSpaces(t Tuck, found *findings) bool {
	if t.Count > 1 && t.Space < 2*t.Width-samePoint {
		found.add(t.place, fmt.Sprintf("fold lines of tucks that just touch lie %s apart", found.given(3*t.Width)),
			"the tucks overlap: their fold lines lie %s apart, and each takes up %s", found.given(t.Space), found.given(2*t.Width))
		return false
	}
	if t.base.edge >= 0 && t.First < t.Width-samePoint {
		found.add(t.place, fmt.Sprintf("give first at least %s", found.given(t.Width)),
			"the first tuck crosses %q: its fold line lies %s from it and its stitching %s nearer",
			t.base.name, found.given(t.First), found.given(t.Width))
		return false
	}
	return true
}

// layTucks draws the lines of a set.
func layTucks(piece *Piece, t *Tuck, ts TuckSpec, found *findings) bool {
	end, ok := findEnd(piece, t, ts, found)
	if !ok {
		return false
	}
	us, _ := t.base.extent(piece.Outline)
	for k := range t.Count {
		took := t.takesUp(k)
		var one TuckLines
		for _, u := range []float64{t.Flat(k), took.from, took.to} {
			chords := t.base.chords(piece, u)
			if len(chords) == 0 {
				if onRim(u, us) {
					continue // this stitching lies on the edge of the piece itself
				}
				reportOutside(t, k, us, found)
				return false
			}
			stretches := chords
			if end.given {
				if stretches, ok = end.upTo(chords); !ok {
					reportEndOutside(t, k, u, end, chords, ts, found)
					return false
				}
			}
			for _, s := range stretches {
				line := plane.Path{t.base.at(u, s.from), t.base.at(u, s.to)}
				if u == t.Flat(k) {
					one.Fold = append(one.Fold, line)
				} else if !t.Twin {
					one.Sewn = append(one.Sewn, line)
				}
			}
		}
		t.Each = append(t.Each, one)
	}
	if end.given {
		t.End = plane.Path{t.base.at(t.takesUp(0).from, end.v), t.base.at(t.takesUp(t.Count-1).to, end.v)}
	}
	return true
}

// onRim reports whether a line at u runs along the nearest or the farthest
// edge of a piece that lies over us.
func onRim(u float64, us stretch) bool {
	return math.Abs(u-us.from) < samePoint || math.Abs(u-us.to) < samePoint
}

// tuckEnd is the level at which tucks that do not run from edge to edge end.
type tuckEnd struct {
	given bool
	v     float64 // along the base
	begin float64 // where the stitch line that it is measured from meets the base
	down  float64 // +1 where the cloth below lies at greater v, -1 where at less
}

// findEnd finds the end line: length below the place where the stitch line of
// the edge below meets the base, square to the base.
func findEnd(piece *Piece, t *Tuck, ts TuckSpec, found *findings) (tuckEnd, bool) {
	if !ts.Below.Given() {
		return tuckEnd{}, true
	}
	i := found.findEdge(piece, ts.Below)
	if i < 0 {
		return tuckEnd{}, false
	}
	e := piece.Edges[i]
	begin, along, meets := t.base.meets(piece, e.Line)
	if i == t.base.edge || !meets {
		found.add(ts.Below.Place, "name the edge at whose stitch line the tucks begin",
			"the stitch line of %q does not meet %q, so nothing can be measured from there", e.Key, t.base.name)
		return tuckEnd{}, false
	}
	// The cloth lies to the left of every edge's line.
	_, dir := e.Line.At(along)
	end := tuckEnd{given: true, down: 1, begin: begin}
	if dir.Left().Dot(t.base.along) < 0 {
		end.down = -1
	}
	end.v = end.begin + end.down*ts.Length.MM
	return end, true
}

// upTo returns the stretch of a line that holds the end, from its upper end
// down to there.
func (e tuckEnd) upTo(stretches []stretch) ([]stretch, bool) {
	for _, s := range stretches {
		if e.v < s.from+samePoint || e.v > s.to-samePoint {
			continue
		}
		if e.down > 0 {
			return []stretch{{s.from, e.v}}, true
		}
		return []stretch{{e.v, s.to}}, true
	}
	return nil, false
}

func reportOutside(t *Tuck, k int, us stretch, found *findings) {
	found.add(t.place, howManyFit(k),
		"tuck %d of %d leaves the piece: it takes up the cloth from %s to %s from %q, and the piece ends at %s",
		k+1, t.Count, found.mm(t.takesUp(k).from), found.mm(t.takesUp(k).to), t.base.name, found.mm(us.to))
}

// howManyFit is the hint for a set of which only the first k tucks can be.
func howManyFit(k int) string {
	switch k {
	case 0:
		return "not even the first fits"
	case 1:
		return "only the first fits"
	}
	return fmt.Sprintf("the first %d fit", k)
}

// reportEndOutside says why tuck k cannot end where the set ends: the cloth at
// u either ends before or begins after that.
func reportEndOutside(t *Tuck, k int, u float64, end tuckEnd, chords []stretch, ts TuckSpec, found *findings) {
	highest, lowest := math.Inf(1), math.Inf(-1) // how far below the begin there is cloth
	for _, c := range chords {
		highest = min(highest, end.down*(c.from-end.begin), end.down*(c.to-end.begin))
		lowest = max(lowest, end.down*(c.from-end.begin), end.down*(c.to-end.begin))
	}
	if highest > ts.Length.MM-samePoint {
		found.add(t.place, howManyFit(k),
			"tuck %d of %d has no cloth: %s from %q the piece begins %s below the stitch line of %q, and the tucks are to end %s below it",
			k+1, t.Count, found.mm(u), t.base.name, found.mm(highest), ts.Below.Value, found.given(ts.Length.MM))
		return
	}
	found.add(ts.Length.Place, "tucks end on the piece, below the edge they begin at",
		"the end line lies outside the piece: at tuck %d, %s from %q, the cloth ends %s below the stitch line of %q, and the tucks are to end %s below it",
		k+1, found.mm(u), t.base.name, found.mm(max(0, lowest)), ts.Below.Value, found.given(ts.Length.MM))
}
