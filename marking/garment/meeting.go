package garment

import (
	"math"
	"strings"
	"unicode"

	"tuckmark/marking/piece"
	"tuckmark/marking/source"
)

// Rules of this file: which ends of two edges come together when they are sewn. Laid as
// they are drawn, the first end of the one lies on the first of the other, else on the last.
// What tells the two apart is asked in the order below, and the first that does decides:
//
//	the file      meet = "hem": these two edges beside the seam come together
//	itself        an edge joined with itself lies on its own mirror image
//	the centre    an edge on the fold, or one that is joined with itself, meets another such
//	seams         edges that another seam joins meet; so do those that are one side of another
//	              seam, or have one trim, ruffle or binding along both
//	names         edges of one name meet, and then those that share a word that tells something
//	notches       notches fall on each other
//	sewing        an edge that is sewn to something meets one that is, a free edge a free one
//	hems          a hem meets a hem
//	lengths       edges of equal length meet
//	angles        the piece lies flat: the lines beside the seam go straight on over it
//	cut edges     the cut edges miss each other least
//
// The last three are hardly more than a guess. Where nothing tells, the two are taken as
// drawn side by side: then a common edge runs opposite ways.

// Telling is what tells which ends of a seam come together.
type Telling int

// What may tell it, the weightiest first.
const (
	TellsNothing Telling = iota
	TellsFile
	TellsItself
	TellsCentre
	TellsSeams
	TellsNames
	TellsNotches
	TellsSewing
	TellsHems
	TellsLengths
	TellsAngles
	TellsCutEdges
	tellings
)

var tellingWords = [tellings]string{"nothing", "the file", "itself", "the centre", "seams", "names", "notches", "sewing", "hems", "lengths", "angles", "cut edges"}

// String names what tells it: "names".
func (t Telling) String() string { return tellingWords[t] }

// Guess reports whether it tells hardly more than a guess does.
func (t Telling) Guess() bool { return t >= TellsLengths }

const (
	// leastTelling is by how much one way must be better than the other to tell, in
	// whatever it is measured in: one edge, a degree, or a mm, all of which can be seen.
	leastTelling = 1
	// notchTelling is the same of notches, in mm on the average: a quarter inch, by which
	// an edge is eased or a notch slips (common practice).
	notchTelling = 25.4 / 4
	// meantCorner is from which angle on, in degrees, a line turns that is meant to turn,
	// however much it does.
	meantCorner = 45
	// equalNeighbours is by how much edges that are to be sewn together may differ in
	// length, in mm.
	equalNeighbours = inchTolerance
)

// tells tells which of two layings is the likelier one, and what tells it.
func (j joiner) tells(s source.SeamSpec, as, turned laying) (best laying, by Telling) {
	speaks, than := j.against(s, as), j.against(s, turned)
	for t := TellsFile; t < tellings; t++ {
		least := float64(leastTelling)
		if t == TellsNotches {
			least = notchTelling
		}
		switch off := speaks[t] - than[t]; {
		case off <= -least:
			return as, t
		case off >= least:
			return turned, t
		}
	}
	return turned, TellsNothing
}

// against returns what speaks against laying two edges so.
func (j joiner) against(s source.SeamSpec, l laying) (sum [tellings]float64) {
	count := func(t Telling, against bool) {
		if against {
			sum[t]++
		}
	}
	said := false
	for i, m := range l.ends {
		a, b := m[0], m[1]
		end := l.end(i, j.ties)
		said = said || a.name() == s.Meet[0].V && b.name() == s.Meet[1].V
		count(TellsCentre, j.ties.atCentre(a.neighbour) != j.ties.atCentre(b.neighbour))
		count(TellsSeams, !j.ties.joined(a.neighbour, b.neighbour) && !j.ties.together(a.neighbour, b.neighbour))
		sum[TellsNames] -= likeness(a.name(), b.name())
		count(TellsSewing, j.ties.sewn(a.neighbour) != j.ties.sewn(b.neighbour))
		count(TellsHems, (a.neighbour.drawn().Hem > 0) != (b.neighbour.drawn().Hem > 0))
		count(TellsLengths, math.Abs(a.neighbour.drawn().FinishedLength-b.neighbour.drawn().FinishedLength) > equalNeighbours)
		sum[TellsAngles] += min(math.Abs(end.Bend), meantCorner)
		sum[TellsCutEdges] += end.CutJog.MM
	}
	count(TellsFile, s.Meet[0].Given() && !said)
	count(TellsItself, l.sides[0].outlineEdge() == l.sides[1].outlineEdge() && l.turned)
	sum[TellsNotches] = l.notchesApart()
	return sum
}

// tellingNothing are words in the names of edges that do not tell one from another.
var tellingNothing = map[string]bool{
	"front": true, "back": true, "left": true, "right": true, "upper": true, "lower": true, "inner": true, "outer": true,
	"edge": true, "seam": true, "line": true, "curve": true, "end": true, "half": true, "first": true, "second": true, "the": true, "and": true,
}

// leastWord is how many letters a word has at least that tells something.
const leastWord = 3

// likeness returns how much two names are alike: 2 where they are the same, 1 where they
// share a word that tells something, as "neck" and "back neckline" do, else 0.
func likeness(a, b string) float64 {
	if a == b {
		return 2
	}
	for _, x := range telling(a) {
		for _, y := range telling(b) {
			if strings.HasPrefix(x, y) || strings.HasPrefix(y, x) {
				return 1
			}
		}
	}
	return 0
}

// telling returns the words of a name that tell something.
func telling(name string) (words []string) {
	for _, word := range strings.FieldsFunc(strings.ToLower(name), func(r rune) bool { return !unicode.IsLetter(r) }) {
		if len(word) >= leastWord && !tellingNothing[word] {
			words = append(words, word)
		}
	}
	return words
}

// notchesApart returns how far the notches of two edges miss each other on the average,
// the second being drawn out to the length of the first; 0 where either has none.
func (l laying) notchesApart() float64 {
	a, b := l.sides[0].notches(), l.sides[1].notches()
	if len(a) == 0 || len(b) == 0 {
		return 0
	}
	whole := l.sides[0].drawn().FinishedLength
	for i := range b {
		if b[i] *= whole / l.sides[1].drawn().FinishedLength; l.turned {
			b[i] = whole - b[i]
		}
	}
	return (nearestSum(a, b) + nearestSum(b, a)) / float64(len(a)+len(b))
}

// nearestSum returns how far each of some places is from the nearest of others, together.
func nearestSum(of, to []float64) (sum float64) {
	for _, x := range of {
		nearest := math.Inf(1)
		for _, y := range to {
			nearest = min(nearest, math.Abs(x-y))
		}
		sum += nearest
	}
	return sum
}

// checkMeet looks whether what the file says of the ends of a seam can be.
func (j joiner) checkMeet(s source.SeamSpec, sides [2][]Course) {
	if !s.Meet[0].Given() {
		return
	}
	const leave = "leave meet out"
	a, b := sides[0], sides[1]
	switch {
	case len(a) > 1 || len(b) > 1:
		j.found.Add(s.Meet[0].Place, leave, "a side of this seam has several edges, and their ends are not put together")
		return
	case a[0].Times != b[0].Times:
		j.found.Add(s.Meet[0].Place, leave, "the two edges do not come equally often, and their ends are not put together")
		return
	}
	for i, c := range []Course{a[0], b[0]} {
		ends, name := sewnEnds(c), c.Piece.Key+"."+c.Key
		known := []string{ends[0].name(), ends[1].name()}
		switch meet := s.Meet[i]; {
		case meet.V != known[0] && meet.V != known[1]:
			j.found.Add(meet.Place, piece.HintFor(meet.V, known), "%q ends at %q and %q, not at %q", name, known[0], known[1], meet.V)
		case known[0] == known[1]:
			j.found.Add(meet.Place, leave, "both ends of %q are at %q, so that tells nothing", name, known[0])
		}
	}
}
