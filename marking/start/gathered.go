package start

// Rules of this file: skirts, and what hangs from a yoke, are straight pieces half as wide again as what
// they are gathered to.

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
