package garment

import (
	"fmt"
	"math"
	"slices"

	"tuckmark/marking/length"
	"tuckmark/marking/source"
	"tuckmark/marking/wording"
)

// Rules of this file. A ruffle is as long as its edge times its fullness: a petticoat's
// one and a half times (Kinne and Cooley, Clothing and Health, 1916). It is torn in
// strips across the cloth, whole ones, joined end to end; each loses the allowance of a
// joining seam at either end (Baldt, Clothing for Women, 1916, divides by the width of
// the cloth). A strip is as deep as the finished ruffle with its hem, what is turned in,
// and the seam it is sewn on by.
//
// Round what turns outward its outer edge has to reach as that of lace does, which is as
// wide as the ruffle is deep (reach.go).
//
// Joins lie as far from the centre front as they can: there the middle of a strip
// comes, and the others follow on either side. An open ruffle of an even number of strips
// has one of them cut in two for its ends, which takes one joining seam more. Ruffle and
// edge are quartered, and the marks matched before it is drawn up (Kinne and Cooley).
//
// Each strand has a ruffle of its own, with its own joins and marks. Of short ones several
// are cut from one strip.

// Ruffle is a gathered strip along edges.
type Ruffle struct {
	SewnOn
	Reach
	Fullness float64        // how many times as long as its line
	Lengths  []RuffleLength // that it is made in
	Gathered length.Amount  // the line times the fullness, of all lengths together
	Length   length.Amount  // of all before they are gathered, with what corners and curves take
	Depth    length.Amount  // finished
	Hem      length.Amount  // at its lower edge
	Turn     length.Amount  // what is turned in there
	Seam     length.Amount  // the allowance by which it is sewn on
	CutDepth length.Amount  // all four together, which is what is torn
	Joining  length.Amount  // the allowance of each joining seam
	Strips   int            // across the cloth, for all; 0 where its width is not known
	Round    bool           // it goes all round, without ends
}

// RuffleLength is a ruffle on one strand.
type RuffleLength struct {
	Strand
	Gathered length.Amount // the line times the fullness
	Length   length.Amount // before it is gathered, with what corners and curves take
	Joining  length.Amount // the allowance of each joining seam
	Strips   int           // that one is joined of; 0 where the width of the cloth is not known
	Round    bool          // it goes all round, without ends
	// Centre names the piece on whose fold the middle of a strip comes; "" where no
	// edge of the ruffle begins at a fold. Then Joins are measured from the
	// beginning of the first edge, else from that centre, to either side. Where corners
	// or curves take a length of their own, joins fall nearer together there, and only
	// one where the ruffle closes is known.
	Centre     string
	Uneven     bool // corners or curves take a length of their own: it is fuller there than elsewhere
	JoinPlaces []length.Amount
}

// mostStrips is the most strips that one ruffle is torn in.
const mostStrips = 500

// mostCut bounds how many strips are cut of those, for ruffles that are alike.
const mostCut = 10_000

// Fullness outside these bounds is told: a dust ruffle has 1 1/4 (Baldt), and
// more than three times the edge hangs in folds too deep for a child's dress
// (common practice).
const (
	leastFull = 1.25
	mostFull  = 3.0
)

// The allowance of the seams that join strips, in mm, where the file does not say
// (common practice).
const (
	inchJoining   = 25.4 / 4
	metricJoining = 6
)

// usualJoining is the allowance of joining seams in mm where the file does not say.
func usualJoining(u length.Unit) float64 { return u.Either(inchJoining, metricJoining) }

// Count is how many ruffles it is, one for each strand.
func (r Ruffle) Count() int { return timesOf(r.Lengths) }

// ruffle works out a ruffle; where its strips cannot be, that is noted.
func (j joiner) ruffle(s source.RuffleSpec) Ruffle {
	r := Ruffle{
		SewnOn: j.sewnOn(s.Key, s.Place, s.Along), Fullness: s.Fullness.V, Round: s.Round,
		Depth: j.Unit.Chosen(s.Depth.V), Hem: j.Unit.Chosen(s.Hem.V), Turn: j.Unit.Chosen(s.Turn.V),
		Seam: j.Unit.Chosen(s.Seam.Or(j.spec.Allowance.V)), Joining: j.Unit.Chosen(s.Joining.Or(usualJoining(j.Unit))),
		Gathered: length.Amount{Unit: j.Unit}, Length: length.Amount{Unit: j.Unit},
	}
	r.Reach = j.reach(r.Courses, s.Depth.V, r.Fullness, 1)
	r.CutDepth = j.Unit.AtLeast(r.Depth.MM + r.Hem.MM + r.Turn.MM + r.Seam.MM)
	strands := j.strandsOf(r.Courses)
	if r.Round {
		strands.allRound()
	}
	for _, one := range strands.list() {
		l := RuffleLength{Strand: one, Gathered: one.Line.By(r.Fullness), Joining: r.Joining, Round: r.Round, Centre: centreFront(one.Courses)}
		takes := j.reach(one.Courses, s.Depth.V, r.Fullness, 1).Takes()
		l.Length, l.Uneven = l.Gathered.Plus(takes), takes.Steps > 0
		r.Lengths = append(r.Lengths, l)
		r.Gathered = r.Gathered.Plus(l.Gathered.Times(one.Times))
		r.Length = r.Length.Plus(l.Length.Times(one.Times))
	}
	if j.ClothWidth > 0 {
		j.stripped(&r, s)
	}
	return r
}

// stripped counts the strips of a ruffle across the cloth, and says where their joins come; where
// they cannot be, that is noted.
func (j joiner) stripped(r *Ruffle, s source.RuffleSpec) {
	usable := j.ClothWidth - 2*r.Joining.MM
	if usable <= 0 {
		at := s.Joining.Place
		if !s.Joining.Given() {
			at = s.Place
		}
		j.found.Add(at, "give a narrower joining, or see whether the width of the cloth is in the unit that is meant", "joining seams of %s leave nothing of cloth that is %s wide",
			j.found.Written(r.Joining.MM), j.found.Written(j.ClothWidth))
		return
	}
	most := 0
	for i := range r.Lengths {
		l := &r.Lengths[i]
		l.Strips = l.stripsOf(usable)
		most = max(most, l.Strips)
	}
	if most <= mostStrips {
		r.Strips = acrossCloth(r.Lengths, j.ClothWidth)
	}
	if max(most, r.Strips) > mostStrips {
		j.found.Add(s.Place, "see whether depth, fullness and the width of the cloth are in the units meant",
			"the ruffle needs more than %d strips of cloth", mostStrips)
		return
	}
	for i := range r.Lengths {
		r.Lengths[i].JoinPlaces = r.Lengths[i].joinPlaces()
	}
}

// acrossCloth returns how many strips across the cloth give all strips of some ruffles, the
// longest first and each where it has room; or any number above mostStrips where that is more.
func acrossCloth(all []RuffleLength, width float64) int {
	if len(all) == 1 && all[0].Times == 1 {
		return all[0].Strips
	}
	var long []float64
	for _, l := range all {
		if l.Times*l.Strips > mostCut {
			return mostStrips + 1
		}
		for range l.Times {
			for range l.Strips {
				long = append(long, l.Strip().Enough())
			}
			if l.CutsOneInTwo() {
				long[len(long)-1] += l.ForTwoEnds().Enough()
			}
		}
	}
	slices.Sort(long)
	slices.Reverse(long)
	var left []float64 // of each strip across the cloth
	for _, l := range long {
		at := slices.IndexFunc(left, func(room float64) bool { return room >= l-length.Rounding })
		if at < 0 {
			if len(left) > mostStrips {
				break
			}
			at, left = len(left), append(left, width)
		}
		left[at] -= l
	}
	return len(left)
}

// Strip is how long each strip is cut, so that the joins fall where they are told: all of
// them alike, with a joining seam at either end. The width of the cloth must be known.
func (r RuffleLength) Strip() length.Amount {
	return r.Length.Unit.AtLeast(r.Length.Enough()/float64(r.Strips) + 2*r.Joining.MM)
}

// stripsOf returns how many strips give the whole length, at least 1, where so much of
// each counts, in mm; or any number above mostStrips where they are more than that.
func (r RuffleLength) stripsOf(usable float64) int {
	long := r.Length.Enough() - length.Rounding
	r.Strips = int(min(max(1, math.Ceil(long/usable)), mostStrips+1))
	if r.CutsOneInTwo() && float64(r.Strips)*usable-2*r.Joining.MM < long {
		r.Strips++
	}
	return r.Strips
}

// CutsOneInTwo reports whether one of its strips is cut in two, for the two ends, so
// that the middle of another comes at the centre.
func (r RuffleLength) CutsOneInTwo() bool {
	return r.Centre != "" && !r.Round && r.Strips > 0 && r.Strips%2 == 0
}

// ForTwoEnds is how much longer the strip is cut that is cut in two: what joins its halves to others.
func (r RuffleLength) ForTwoEnds() length.Amount {
	return r.Joining.Unit.AtLeast(2 * r.Joining.MM)
}

// Closes reports whether its two ends meet in a join of their own: round the garment,
// unless the middle of a strip lies there. That join is the last.
func (r RuffleLength) Closes() bool {
	return r.Round && r.Strips > 0 && (r.Centre == "" || r.Strips%2 == 1)
}

// centreFront returns the name of the piece whose fold is the centre front: of those on
// the fold whose edge begins or ends there, one that is called a front, or the first.
func centreFront(courses []Course) string {
	name := ""
	for _, c := range courses {
		if !c.isEdge() {
			continue
		}
		before, after := c.Piece.Neighbours(c.edge)
		if !c.Piece.Edges[before].OnFold && !c.Piece.Edges[after].OnFold {
			continue
		}
		if calls(c.Piece.Words(), "front") {
			return c.Piece.Name
		}
		if name == "" {
			name = c.Piece.Name
		}
	}
	return name
}

// joinPlaces returns where the joins of a ruffle come to lie along its edge: to either
// side of the centre, or, where that is not known, from the beginning on; of an uneven
// ruffle only where it closes.
func (r RuffleLength) joinPlaces() []length.Amount {
	strip := r.Line.MM / float64(r.Strips) // of the edge, to each strip
	first, last := strip, r.Line.MM
	if r.Centre != "" {
		first, last = strip/2, r.Line.MM/2
	}
	var places []length.Amount
	for at := first; at < last-length.Rounding && !r.Uneven; at += strip {
		places = append(places, r.Line.Unit.Amount(at))
	}
	if r.Closes() {
		places = append(places, r.Line.Unit.Amount(last))
	}
	return places
}

// carries matches pieces, and edges of them, that a skirt is hung from as well as a ruffle.
var carries = wording.FormOf(`\b(?:bodice|body|yoke|waist|waistline|underwaist|band|waistband|strap|bib|cuff)\b`)

// tooDeep says that it is deeper than the longest piece that it hangs from is long or wide;
// "" where it is not, or may be a skirt.
func (r Ruffle) tooDeep(say func(length.Amount) string) string {
	longestOf := r.Courses[0].Piece
	for _, c := range r.Courses {
		if carries.MatchString(c.Piece.Words() + " " + wording.InWords(c.Key)) {
			return ""
		}
		if longest(c.Piece) > longest(longestOf) {
			longestOf = c.Piece
		}
	}
	across, along := longestOf.Size()
	if r.Depth.MM <= max(across, along) {
		return ""
	}
	u := r.Depth.Unit
	return fmt.Sprintf("the ruffle is %s deep, and %q, the largest piece that it hangs from, is %s by %s: is the depth right?",
		say(r.Depth), longestOf.Key, say(u.Amount(across)), say(u.Amount(along)))
}

// FullnessWarning says what is wrong with a fullness that hangs badly; "" of one that
// hangs well.
func (r Ruffle) FullnessWarning() string {
	switch full := length.Factor(r.Fullness); {
	case r.Fullness == 1:
		return "a ruffle no longer than its edge hangs flat; " + length.Factor(leastFull) + " times its edge is the least that hangs in folds"
	case r.Fullness < leastFull:
		return full + " times its edge is scant for a ruffle; " + length.Factor(leastFull) + " is the least that hangs in folds"
	case r.Fullness > mostFull:
		return full + " times its edge is much for a ruffle; " + length.Factor(mostFull) + " is the most that draws up well"
	}
	return ""
}
