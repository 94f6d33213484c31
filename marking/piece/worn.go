package piece

import (
	"tuckmark/marking/wording"
)

// Rules of this file. A piece is drawn right side up, so it is known which side of the body
// it is worn on where it is known which of its edges is a centre, whether that is of the
// front or the back, and which end of it is up: the one at the neck. A file says that in
// names. Where they do not, as for a sleeve or a pocket, it is not known.

// Worn is the side of the body on which a piece, as it is drawn, is worn.
type Worn int

// The sides of the body.
const (
	WornUnknown Worn = iota
	WornLeft
	WornRight
)

// Other is the side of the mirror image.
func (w Worn) Other() Worn {
	switch w {
	case WornLeft:
		return WornRight
	case WornRight:
		return WornLeft
	}
	return WornUnknown
}

var (
	neckForm  = wording.FormOf(`neck`)
	frontForm = wording.FormOf(`front|^c\.? ?f\.?$`)
	backForm  = wording.FormOf(`back|^c\.? ?b\.?$`)
)

// Worn tells where the piece is worn. Seen from in front, what lies to the left of the centre
// is worn on the right; seen from behind it is worn on the left.
func (p *Piece) Worn() Worn {
	for i, e := range p.Edges {
		key := wording.InWords(e.Key)
		front, back := frontForm.MatchString(key), backForm.MatchString(key)
		if !isCentre(e.Key) || front == back {
			continue
		}
		before, after := p.Neighbours(i)
		atNeck := func(i int) bool { return neckForm.MatchString(wording.InWords(p.Edges[i].Key)) }
		if atNeck(before) == atNeck(after) {
			continue
		}
		// Edges have the piece to their left: up along one it lies at the left of the centre.
		if atNeck(after) == front {
			return WornRight
		}
		return WornLeft
	}
	return WornUnknown
}
