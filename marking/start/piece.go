package start

import (
	"fmt"
	"strconv"
	"strings"

	"tuckmark/marking/wording"
)

// Rules of this file: every kind of piece has a draft in drafts/, and here what that is filled
// in with: names and lengths as the file has them.

// filling is what a draft is filled in with, as text of the file. Each draft has its own edges.
type filling struct {
	draft string

	Rule, Note, Key, Name, Cut string
	Like, LikeText             string // the piece that it is the same as

	OnFold, Curved                      bool
	Centre, Foot, Top, Middle           string // keys of edges
	FootName                            string // the foot in a sentence
	CentrePoints, FootPoints, TopPoints string

	Neck, Shoulder, Armhole, Side, Cap, Underarm, Outer, Mouth, Rim string
	Crown, Face, Back, Rectangle                                    string

	Hem, Turn, PlacketHem, Lap, Notch, Block string

	Tucks *tuckFilling
}

type tuckFilling struct{ Beside, Width, Count, First, Gap string }

// piece fills in the draft of a piece that belongs to a set.
func (b block) piece(n named, s set) filling {
	p := filling{Rule: rule(n.name), Key: keyed(n.name), Name: strconv.Quote(wording.Capital(n.name)), Cut: "1",
		Turn: written(b.unit, b.turn), Notch: written(b.unit, b.notch)}
	switch n.kind {
	case front, back, yoke:
		if n.kind == front && s.yoke != nil || n.kind == back && s.backYoke != nil {
			return b.panel(p, n, s)
		}
		return b.bodice(p, n, s)
	case sleeve:
		return b.sleeve(p, n)
	case skirt:
		return b.skirt(p, n, s)
	case collar:
		return b.collar(p, s)
	case pocket:
		return b.pocket(p)
	case bonnet:
		return b.bonnet(p)
	case band:
		return b.rectangle(p, steps(b.unit, 305), steps(b.unit, 57), "A band. Give it the length of what it is sewn to.")
	}
	return b.rectangle(p, steps(b.unit, 203), steps(b.unit, 254), "A rectangle to begin with. For another outline take the line rectangle out, and write edges\n# with points, as other pieces have them.")
}

// points writes points of an outline.
func (b block) points(points ...point) string { return writtenPoints(b.unit, points) }

// box are the corners of a rectangle, from the lower left one up and round.
func box(wide, high int) [4]point {
	return [4]point{{0, 0}, {0, high}, {wide, high}, {wide, 0}}
}

func (b block) rectangle(p filling, wide, high int, note string) filling {
	p.draft, p.Note = "rectangle", "# "+note
	p.Rectangle = "[" + written(b.unit, wide) + ", " + written(b.unit, high) + "]"
	return p
}

// straightUp is a straight edge from its lower end up: one point, and the step to the other.
func (b block) straightUp(from point, high int) string {
	step := "up " + strings.Trim(written(b.unit, high), `"`)
	return fmt.Sprintf("[[%s, %s], %q]", written(b.unit, from.across), written(b.unit, from.up), step)
}
