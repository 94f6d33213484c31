package start

import (
	"strconv"
)

// Rules of this file: fronts, backs and yokes have one outline, as long as what hangs below lets them
// be: to the hem, to a waist where there is a skirt, or, of a yoke, to a little below the arms.

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
	middle := 0 // how far from the left edge of the piece
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
	p.CentrePoints = b.straightUp(n.facing([]point{{0, 0}}, wide+flare)[0], top-deep)
	p.Neck = put(b.neckLine(middle, top, deep)...)
	p.Shoulder = put(b.shoulderLine(middle, top)...)
	p.Armhole = put(b.armLine(middle, top)...)
	corner := point{wide + flare, rise}
	p.Side = put(point{wide, below}, corner)
	p.FootPoints = put(corner, point{0, 0})
	if p.Curved = rise > 0; p.Curved {
		p.FootPoints = put(hemLine(corner)...)
	}
	if !s.sleeves {
		p.Notch = ""
	}
	if n.kind == yoke {
		p.Tucks, p.Block = b.tucks(p), written(b.unit, either(b.unit, 4, 2))
	}
	return p
}

// tucks are as many as lie between the centre and the end of the neck. Beside an opening they
// begin where its hem is passed, folded back.
func (b block) tucks(p filling) *tuckFilling {
	width, gap, first, beside := 1, 1, either(b.unit, 2, 1), p.Centre
	if !p.OnFold {
		first, beside = 4, p.Centre+" line"
	}
	room := b.neck - b.allowance - (first - width)
	return &tuckFilling{Beside: strconv.Quote(beside), Width: written(b.unit, width), Gap: written(b.unit, gap),
		First: written(b.unit, first), Count: strconv.Itoa(room / (width + gap))}
}
