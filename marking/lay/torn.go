package lay

import (
	"slices"

	"tuckmark/marking/plane"
)

// Rules of this file: what is torn, and what is cut beside it.
//
//   - A torn strip runs from selvage to selvage and is as long, along the cloth, as the
//     longest thing that comes out of it. The longest are torn first; what is as long
//     or less, and still fits beside them, comes out of the same strip.
//   - Beside the last thing torn from a strip the rest of it, up to the selvage, is
//     single cloth. A piece is cut there only if all that are cut of it find room beside
//     torn things, so that none has to be looked for in two places.
//   - Nothing crosses a torn edge. None needs room for scissors.

// strip is a strip torn across the cloth.
type strip struct{ at, length, taken float64 }

// rest is what is left of a strip beside the things torn from it.
type rest struct {
	corner plane.Point // where it begins on the cloth
	cloth  *band
}

// tear lays what is torn, in strips across the whole cloth, and returns what is left
// beside it.
func tear(torn []poses, cloth *band) (laid []place, rests []rest) {
	var strips []strip
	end := 0.0
	for _, p := range torn {
		for range p.total() {
			k := slices.IndexFunc(strips, func(s strip) bool { return cloth.fits(s.taken + p.whole.width) })
			if k < 0 {
				k = len(strips)
				strips = append(strips, strip{at: end, length: p.whole.length})
				end += p.whole.length
			}
			laid = append(laid, place{pose: p.whole, at: plane.Point{X: strips[k].taken, Y: strips[k].at}})
			strips[k].taken += p.whole.width
		}
	}
	for _, s := range strips {
		if left := cloth.width - s.taken; left > 0 {
			rest := rest{plane.Point{X: s.taken, Y: s.at}, cloth.like(left)}
			rest.cloth.closeAt(s.length)
			rests = append(rests, rest)
		}
	}
	return laid, rests
}

// layBeside lays in the rests each piece of which all find room there, and returns
// the others.
func layBeside(pieces []poses, rests []rest) (laid []place, others []poses) {
	for _, p := range pieces {
		if all, ok := p.beside(rests); ok {
			laid = append(laid, all...)
		} else {
			others = append(others, p)
		}
	}
	return laid, others
}

// beside lays all of a piece in the rests, each in the first in which it finds room.
// Where one finds none it lays none.
func (p poses) beside(rests []rest) (laid []place, ok bool) {
	before := map[int]*band{} // of the rests in which some are laid
	for n := range p.total() {
		found := false
		for k, rest := range rests {
			one, fits := p.whole.lowest(rest.cloth, n%p.count)
			if !fits {
				continue
			}
			if before[k] == nil {
				before[k] = rest.cloth.clone()
			}
			rest.cloth.put(one.profile(), one.at)
			one.at = one.at.Add(rest.corner)
			laid, found = append(laid, one), true
			break
		}
		if !found {
			for k, cloth := range before {
				rests[k].cloth = cloth
			}
			return nil, false
		}
	}
	return laid, true
}
