package plane

import (
	"fmt"
	"math"
	"math/rand"
	"testing"
)

// noisy is an edge of 400 mm, straight but for a noise far below what is seen.
func noisy(points int) Path {
	r := rand.New(rand.NewSource(7))
	var p Path
	for i := range points {
		p = append(p, Point{400 * float64(i) / float64(points-1), 0.006 * (r.Float64() - 0.5)})
	}
	return p
}

// zigzag is an edge of a metre whose teeth are 1 mm deep.
func zigzag(points int) Path {
	var p Path
	for i := range points {
		p = append(p, Point{1000 * float64(i) / float64(points-1), float64(i % 2)})
	}
	return p
}

// bent is half a circle of 120 mm, noisy as that edge is.
func bent(points int) Path {
	r := rand.New(rand.NewSource(7))
	var p Path
	for i := range points {
		sin, cos := math.Sincos(math.Pi * float64(i) / float64(points-1))
		radius := 120 + 0.006*(r.Float64()-0.5)
		p = append(p, Point{radius * cos, radius * sin})
	}
	return p
}

func BenchmarkOffset(b *testing.B) {
	for _, of := range []struct {
		name string
		edge func(points int) Path
	}{{"wavy", wavy}, {"noisy", noisy}, {"zigzag", zigzag}, {"bent", bent}} {
		for _, points := range []int{1_000, 10_000, 100_000} {
			p := of.edge(points)
			b.Run(fmt.Sprint(of.name, "/", points), func(b *testing.B) {
				b.ReportAllocs()
				for b.Loop() {
					if _, ok := Offset(p, 9.5, 76); !ok {
						b.Fatal("nothing left")
					}
				}
			})
		}
	}
}
