package drawing

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"tuckmark/marking/fault"
	"tuckmark/marking/wording"
)

// Rules of this file: where corners and names are not as many, every corner is told with its
// place, as a ruler reads it from the lower left, and by how much the outline turns there.

// misfit tells that corners and names are not as many: which corners there are, and which
// names or edges are left over.
func (a Ask) misfit(outline Shape, corners []Corner) *fault.Fault {
	home := outline.Path.Bounds().Min
	place := func(c Corner) string {
		p := c.Place.Sub(home)
		return fmt.Sprintf("(%s, %s)", a.ruled(p.X), a.ruled(p.Y))
	}
	var listed []string
	degrees := " degrees"
	for _, c := range corners {
		listed = append(listed, fmt.Sprintf("by %.0f%s at %s", c.Degrees, degrees, place(c)))
		degrees = ""
	}
	cause := fmt.Sprintf("the outline has %s, but edges has %s", wording.Counted(len(corners), "corner"), wording.Counted(len(a.Edges), "name"))
	if len(corners) > 0 {
		cause += ": clockwise from the lower left, it turns " + wording.Listed(wording.Few(listed), "and")
	}
	switch n := len(corners); {
	case n < 2:
		cause += "; an outline needs at least two"
	case len(a.Edges) > n:
		cause += "; no edge is left for " + wording.Listed(wording.QuotedFew(a.Edges[n:]), "and")
	default:
		var left []string
		for i := len(a.Edges); i < n; i++ {
			left = append(left, fmt.Sprintf("from %s to %s", place(corners[i]), place(corners[(i+1)%n])))
		}
		cause += "; no name is left for the edge " + wording.Listed(wording.Few(left), "and")
	}
	return &fault.Fault{Cause: cause, Hint: a.fitting(outline)}
}

// ruled gives a coordinate as a ruler reads it; what lies on the line lies at 0.
func (a Ask) ruled(mm float64) string {
	if math.Abs(mm) < a.Unit.Ruler()/2 {
		mm = 0
	}
	return a.Unit.OnRuler(mm)
}

// Bounds of the number of degrees that is advised as a corner: with fewer, a curve in short steps
// is taken for several; with more, corners that anyone sees are none.
const (
	leastAdvised = 5
	mostAdvised  = 60
)

// fitting advises which number of degrees makes corners and names as many, if one does.
func (a Ask) fitting(outline Shape) string {
	var turns []float64
	for _, c := range outline.Corners(leastAdvised) {
		turns = append(turns, c.Degrees)
	}
	slices.SortFunc(turns, func(a, b float64) int { return cmp.Compare(b, a) })
	if n := len(a.Edges); n > 1 && n <= len(turns) {
		sharp, blunt := turns[n-1], append(turns, leastAdvised)[n]
		degrees := math.Round((sharp + blunt) / 2)
		if degrees > sharp || degrees <= blunt {
			degrees = math.Floor(sharp)
		}
		if degrees > blunt && degrees >= leastAdvised && degrees <= mostAdvised {
			return fmt.Sprintf("with corner = %.0f there are as many corners as names; else name the edges in order, clockwise from the lower left", degrees)
		}
	}
	return fmt.Sprintf("what turns by %g degrees or more is a corner; name the edges in order, clockwise from the lower left, or give each edge a line of its own in the drawing, with its name as the id", a.Corner)
}
