package start

import (
	"fmt"
	"math"
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
	return b.rectangle(p, steps(b.unit, 203), steps(b.unit, 254), "A rectangle to begin with. Give it edges with points, as your own piece has them.")
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

// bodice is what hangs from the shoulder: a front, a back, a yoke.
func (b block) bodice(p filling, n named, s set) filling {
	p.draft, p.Note = "bodice", "# Half of it, from the middle of the body to the side."
	p.Centre, p.Foot = n.centre(), "hem"
	deep, below, flare, rise := b.neckFront, b.toHem, b.flare, b.rise
	if n.behind() {
		deep = b.neckBack
	}
	if s.yoke != nil || s.backYoke != nil {
		flare, rise = 0, 0 // what hangs beside a gathered panel is straight, as that is
	}
	switch {
	case n.kind == yoke:
		p.Foot, below, flare, rise = "lower", b.toLower, 0, 0
	case s.skirts:
		p.Foot, below, flare, rise = "waist", b.toWaist, 0, 0
	default:
		p.Hem = written(b.unit, b.hem)
	}
	if p.FootName = p.Foot; n.kind == yoke {
		p.FootName = "lower edge"
	}
	middle, edge := 0, 0
	if p.OnFold = s.onFold(n); !p.OnFold {
		middle = b.lap
		p.PlacketHem, p.Lap = written(b.unit, b.placket), written(b.unit, b.lap)
		p.Note = "# One half, with an opening that is folded back at the centre."
		if !n.isHalf() {
			p.Cut = "2"
		}
	}
	top, wide := below+b.arm, middle+b.wide
	put := func(points ...point) string {
		return b.points(n.facing(points, wide+flare)...)
	}
	p.CentrePoints = b.straightUp(n.facing([]point{{edge, 0}}, wide+flare)[0], top-deep)
	p.Neck = put(b.neckLine(edge, middle, top, deep)...)
	p.Shoulder = put(b.shoulderLine(middle, top)...)
	p.Armhole = put(b.armLine(middle, top)...)
	corner := point{wide + flare, rise}
	p.Side = put(point{wide, below}, corner)
	p.FootPoints = put(corner, point{edge, 0})
	if p.Curved = rise > 0; p.Curved {
		p.FootPoints = put(b.hemLine(corner, edge)...)
	}
	if n.kind == yoke {
		p.Tucks, p.Block = b.tucks(p.Centre, p.OnFold), written(b.unit, either(b.unit, 4, 2))
	}
	return p
}

// tucks are as many as lie between the centre and the end of the neck. Beside an opening they
// begin where its hem is passed, folded back.
func (b block) tucks(centre string, onFold bool) *tuckFilling {
	width, gap, first := 1, 1, either(b.unit, 2, 1)
	if !onFold {
		centre, first = centre+" line", 4
	}
	room := b.neck - b.allowance - (first - width)
	return &tuckFilling{Beside: strconv.Quote(centre), Width: written(b.unit, width), Gap: written(b.unit, gap),
		First: written(b.unit, first), Count: strconv.Itoa(room / (width + gap))}
}

// panel is what hangs gathered from a yoke.
func (b block) panel(p filling, n named, s set) filling {
	p.Middle, p.Note = n.centre(), "# Half of it; its top is gathered to the yoke."
	below, foot := b.toHem, "hem"
	if s.skirts {
		below, foot = b.toWaist, "waist"
	}
	return b.gathered(p, n, full(b.wide-b.allowance), below-b.toLower+2*b.allowance, "top", foot)
}

func (b block) skirt(p filling, n named, s set) filling {
	p.Middle, p.Note = "middle", "# Half of it; its waist is gathered."
	if !n.ofFront && s.backSkirt == nil {
		p.Cut, p.Note = "2", "# Half of the front; the back is cut alike. Its waist is gathered."
	}
	wide := full(b.wide - b.allowance)
	if s.panel(s.front, s.yoke) != nil || s.panel(s.back, s.backYoke) != nil {
		wide = full(wide) // than what is gathered itself
	}
	return b.gathered(p, n, wide, steps(b.unit, 0.36*b.child.height)+b.allowance+b.hem+b.turn, "waist", "hem")
}

// full is half as wide again.
func full(wide int) int { return wide * 3 / 2 }

// gathered is a straight piece, half of it so wide when it is sewn. One that comes as a left
// and a right half has a seam between them.
func (b block) gathered(p filling, n named, wide, high int, top, foot string) filling {
	p.draft, p.Top, p.Foot, p.OnFold = "skirt", top, foot, !n.isHalf()
	if foot == "hem" {
		p.Hem = written(b.unit, b.hem)
	}
	wide += b.allowance
	if !p.OnFold {
		wide += b.allowance
	}
	c := box(wide, high)
	side := func(from, to point) string { return b.points(n.facing([]point{from, to}, wide)...) }
	p.CentrePoints = b.straightUp(n.facing(c[:1], wide)[0], high)
	p.TopPoints, p.Side, p.FootPoints = side(c[1], c[2]), side(c[2], c[3]), side(c[3], c[0])
	return p
}

// capEase is how much longer a cap may be than its armhole, in steps.
func (b block) capEase() int { return either(b.unit, 6, 4) }

func (b block) sleeve(p filling, n named) filling {
	p.draft, p.Note, p.Hem = "sleeve", "# Half of it, from the middle to the underarm.", written(b.unit, b.smallHem)
	if !n.isHalf() {
		p.Cut = "2"
	}
	long, high := steps(b.unit, 40)+b.smallHem+b.turn, steps(b.unit, 0.09*b.child.chest)
	wide := b.sleeveWidth(long, high)
	p.CentrePoints = b.straightUp(point{0, 0}, long+high)
	p.Cap = b.points(b.capLine(long, high, wide)...)
	p.Underarm = b.points(point{wide, long}, point{wide, 0})
	p.FootPoints = b.points(point{wide, 0}, point{0, 0})
	return p
}

// capLine goes from the middle of a sleeve to its underarm.
func (b block) capLine(long, high, wide int) []point {
	at := func(across, up float64) point {
		return point{int(across*float64(wide) + 0.5), long + int(up*float64(high)+0.5)}
	}
	return []point{at(0, 1), at(0.32, 0.92), at(0.65, 0.48), at(0.85, 0.14), at(1, 0)}
}

// sleeveWidth is how wide half a sleeve is for its cap to be longer than the armhole by about
// half of what may be eased in.
func (b block) sleeveWidth(long, high int) int {
	want := b.armSewn() + float64(b.capEase())*stepMM(b.unit)/4 // of half a cap
	best, off := 0, math.Inf(1)
	for wide := b.arm / 2; wide < 2*b.arm; wide++ {
		underarm := b.seamOf([]point{{wide, long}, {wide, 0}})
		if by := math.Abs(b.sewn(b.curve(b.capLine(long, high, wide), level), b.upright(0), underarm) - want); by < off {
			best, off = wide, by
		}
	}
	return best
}

func (b block) collar(p filling, s set) filling {
	p.draft, p.Note = "collar", "# Half of it, from the middle to its end."
	neck := 0.0
	for _, half := range []struct {
		deep  int
		upper []named
	}{{b.neckFront, upper(s.yoke, s.front)}, {b.neckBack, upper(s.backYoke, s.back)}} {
		middle := 0
		if half.upper != nil && !s.onFold(half.upper[0]) {
			middle = b.lap
		}
		neck += b.neckSewn(half.deep, middle)
	}
	long := int(math.Floor(neck/stepMM(b.unit))) + b.allowance
	deep := steps(b.unit, 51) + 2*b.allowance
	p.CentrePoints = b.straightUp(point{0, 0}, deep)
	p.Neck = b.points(point{0, 0}, point{long, 0})
	round := deep / 2
	p.Outer = b.points(point{0, deep}, point{(long - round) / 2, deep}, point{long - round, deep}, point{long - round/4, deep - round/4}, point{long, deep - round}, point{long, 0})
	return p
}

func (b block) pocket(p filling) filling {
	p.draft, p.Hem, p.Note = "pocket", written(b.unit, b.smallHem), "# A patch pocket, drawn whole."
	wide, high := 2*steps(b.unit, 54), steps(b.unit, 127)
	at := func(across, up float64) point {
		return point{int(across * float64(wide)), int(up * float64(high))}
	}
	p.Mouth = b.points(at(0, 1), at(1, 1))
	right := []point{at(1, 1), at(1, 0.75), at(1, 0.45), at(0.92, 0.16)}
	all := append(right, at(0.5, 0))
	for i := len(right) - 1; i >= 0; i-- {
		all = append(all, mirrored(right[i:i+1], wide)...)
	}
	p.Rim = b.points(all...)
	return p
}

// headRound is how far it is round a child's head, in mm: 12 1/2 in and a fifth of the height
// (from memory, and no more than a beginning).
func (c child) headRound() float64 { return 12.5*25.4 + c.height/5 }

func (b block) bonnet(p filling) filling {
	p.draft, p.Hem, p.Note = "cap", written(b.unit, b.smallHem), "# One side of a little cap; the fold runs over the head."
	deep := steps(b.unit, b.child.headRound()*0.36) + b.smallHem + b.turn
	high := steps(b.unit, b.child.headRound()*0.36)
	at := func(across, up float64) point {
		return point{int(across * float64(deep)), int(up * float64(high))}
	}
	p.Crown = b.points(point{0, high}, at(0.6, 1))
	p.Face = b.points(point{0, 0}, point{0, high})
	p.Neck = b.points(point{0, 0}, at(0.8, 0))
	p.Back = b.points(at(0.6, 1), at(0.85, 0.9), at(1, 0.62), at(0.97, 0.28), at(0.8, 0))
	return p
}
