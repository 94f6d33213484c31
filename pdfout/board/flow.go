package board

import (
	"math"

	"tuckmark/marking/plane"
)

// Rules of this file: parts stand in rows, in their order, each under its caption, with their
// upper edges level. The rows are as long as lets the board be largest on a screen.

const (
	// screen is how wide a screen is for its height.
	screen = 1.3
	// captionShare is the size of captions, as a share of the side of a square with the area of
	// all parts; leastCaption and mostCaption bound it, in mm.
	captionShare = 0.018
	leastCaption = 4.0
	mostCaption  = 30.0
	// captionRoom is kept free over a part for its caption, and captionUnder is between the two,
	// in sizes of its letters.
	captionRoom  = 1.6
	captionUnder = 0.5
	// captionGrows is how many times as large a caption may be written.
	captionGrows = 1.6
	// apart is kept free between parts, and around the board, in sizes of the captions.
	apart = 2.0
	// rowLengths is how many lengths of rows are tried.
	rowLengths = 60
)

// flow lays parts, of which only the sizes of their boxes are known, on a board, and numbers
// those that have no number. No parts make an empty board.
func flow(parts []Part) Board {
	if len(parts) == 0 {
		return Board{}
	}
	area, widest, all := 0.0, 0.0, 0.0
	for i, p := range parts {
		if parts[i].Number == 0 {
			parts[i].Number = i + 1
		}
		area += p.Box.Width() * p.Box.Height()
		widest = max(widest, p.Box.Width())
		all += p.Box.Width()
	}
	b := Board{Caption: captionSize(area), Parts: parts}
	all += apart * b.Caption * float64(len(parts))
	best := math.Inf(1)
	for i := range rowLengths {
		length := widest * math.Pow(all/widest, float64(i)/(rowLengths-1))
		tried := Board{Caption: b.Caption, Parts: parts}
		tried.Size, _ = tried.rows(length)
		if need := tried.need(); need < best {
			best = need
			b.Size = tried.Size
		}
	}
	var places []plane.Point
	b.Size, places = b.rows(b.Size.X - 2*apart*b.Caption)
	for i := range parts {
		size := parts[i].Box.Max.Sub(parts[i].Box.Min)
		parts[i].Box = plane.Box{Min: places[i], Max: places[i].Add(size)}
	}
	return b
}

// need is how high a screen must be, in mm, that shows all of the board.
func (b Board) need() float64 { return max(b.Size.X/screen, b.Size.Y) }

// captionSize is the size of the captions of parts which have an area together.
func captionSize(area float64) float64 {
	return min(max(captionShare*math.Sqrt(area), leastCaption), mostCaption)
}

// rows lays the parts in rows no longer than a length, and returns how large the board then is
// and where the upper left corner of each part comes to lie.
func (b Board) rows(length float64) (size plane.Point, places []plane.Point) {
	gap := apart * b.Caption
	at, lowest := plane.Point{X: gap, Y: gap + captionRoom*b.Caption}, 0.0
	for _, p := range b.Parts {
		if at.X > gap && at.X+p.Box.Width() > gap+length+tiny {
			at = plane.Point{X: gap, Y: lowest + gap + captionRoom*b.Caption}
		}
		places = append(places, at)
		lowest = max(lowest, at.Y+p.Box.Height())
		at.X += p.Box.Width() + gap
		size.X = max(size.X, at.X)
	}
	size.Y = lowest + gap
	return size, places
}

// tiny bounds what rounding may add to the length of a row, in mm.
const tiny = 1e-6
