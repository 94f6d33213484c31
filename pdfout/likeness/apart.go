package likeness

import (
	"image"
	"math"
)

const (
	// blurReach is how far each dot of a picture is spread before two are compared, in dots:
	// 2.5 mm at 60 dots to the inch. So a line that one renderer draws half a dot aside is
	// the same line.
	blurReach = 6
	// mostUnlike is how much two blurred dots may differ, of 255: less than what a line of
	// 0.4 mm makes that lies 2 mm aside, or a short word that is missing (TestMostApart).
	mostUnlike = 6.0
)

// mostApart is how much two pictures of one size differ where they do most, of 255, each
// blurred, and where that is, from their upper left corners.
func mostApart(a, b image.Image) (float64, image.Point) {
	size := a.Bounds().Size()
	apart := make([]float64, size.X*size.Y)
	for i := range apart {
		at := image.Pt(i%size.X, i/size.X)
		apart[i] = level(a, at.Add(a.Bounds().Min)) - level(b, at.Add(b.Bounds().Min))
	}
	// Blurring is a sum, so the difference may be blurred in place of the two.
	for range 2 {
		apart = spread(apart, size.X, 1)
		apart = spread(apart, size.X, size.X)
	}
	most, at := 0.0, 0
	for i, d := range apart {
		if math.Abs(d) > most {
			most, at = math.Abs(d), i
		}
	}
	return most, image.Pt(at%size.X, at/size.X)
}

// level is how light a dot is, of 255.
func level(p image.Image, at image.Point) float64 {
	r, g, b, _ := p.At(at.X, at.Y).RGBA()
	return float64(r+g+b) / 3 / 257
}

// spread is the mean of each dot and its neighbours in a row of dots that are a step apart; a
// row is never longer than the picture is wide or high.
func spread(dots []float64, wide, step int) []float64 {
	all := make([]float64, len(dots))
	for i := range dots {
		sum, n := 0.0, 0
		for k := -blurReach; k <= blurReach; k++ {
			j := i + k*step
			if j >= 0 && j < len(dots) && (step == wide || j/wide == i/wide) {
				sum, n = sum+dots[j], n+1
			}
		}
		all[i] = sum / float64(n)
	}
	return all
}
