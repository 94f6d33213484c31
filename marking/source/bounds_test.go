package source

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/plane"
)

// The numbers are those of the guide to the file, under "Limits".
func TestWhatThereMayBeInAll(t *testing.T) {
	points := func(n int) Points {
		line := make([]plane.Point, n)
		for i := range line {
			line[i].X = float64(i % 100)
		}
		return Points{Value: Given(line)}
	}
	repeated := func(n int) (names []Text) {
		for range n {
			names = append(names, Given("bib.hem"))
		}
		return names
	}
	for _, c := range []struct {
		what string
		most int
		fill func(s *Spec, p *PieceSpec, n int) // to n of it
	}{
		{"tucks and pleats", 5000, func(s *Spec, p *PieceSpec, n int) { // 2 tucks, a pleat, and one in an edge
			p.Tucks[0].Groups, p.Tucks[0].Between = Given(10), Given(1.0) // 20 tucks
			n -= 22
			for k := 0; n > 0; k, n = k+1, n-500 {
				p.EdgePleats = append(p.EdgePleats, p.EdgePleats[0])
				one := &p.EdgePleats[len(p.EdgePleats)-1]
				one.Key, one.Count, one.Spacing = fmt.Sprint("ease ", k), Given(min(500, n)), Given(1.0)
			}
		}},
		{"lines and notches", 2000, func(s *Spec, p *PieceSpec, n int) {
			for k := range 999 {
				p.Lines = append(p.Lines, LineSpec{Key: fmt.Sprint(k), Along: Given("hem"), Distance: Given(20.0)})
			}
			for k := range 999 {
				p.Notches = append(p.Notches, NotchSpec{Key: fmt.Sprint(k), Edge: Given("hem"), From: Given("centre"), At: Given(0.0)})
			}
			other := *p
			other.Key, other.Lines, other.Notches = "other", p.Lines[:n-2000], nil
			s.Pieces = append(s.Pieces, other)
		}},
		{"edges", 8000, func(s *Spec, p *PieceSpec, n int) {
			one := PieceSpec{Key: "0"}
			for k := range 250 {
				one.Edges = append(one.Edges, EdgeSpec{Key: fmt.Sprint(k), Points: points(2)})
			}
			for k := range 31 {
				one.Key = fmt.Sprint(k)
				s.Pieces = append(s.Pieces, one)
			}
			one.Key, one.Edges = "last", one.Edges[:n-7752]
			s.Pieces = append(s.Pieces, one)
		}},
		{"points", 60_000, func(s *Spec, p *PieceSpec, n int) {
			p.Edges[1].Points = points(n - 2 - 20)
			p.Lines = append(p.Lines, LineSpec{Key: "through", Points: points(20)})
		}},
		{"edges named by seams", 5000, func(s *Spec, p *PieceSpec, n int) {
			for n -= 2; n > 0; n -= 100 {
				one := s.Seams[0]
				one.Key, one.Sides = fmt.Sprint(n), [2][]Text{repeated(1), repeated(min(99, n-1))}
				s.Seams = append(s.Seams, one)
			}
		}},
		{"edges named by trims, ruffles and bindings", 2000, func(s *Spec, p *PieceSpec, n int) {
			for n -= 3; n > 0; n -= 100 {
				one := s.Trims[0]
				one.Key, one.Along = fmt.Sprint(n), repeated(min(100, n))
				s.Trims = append(s.Trims, one)
			}
		}},
		{"pieces to be cut for one garment", 2000, func(s *Spec, p *PieceSpec, n int) {
			for n -= 2; n > 0; n -= 99 {
				one := *p
				one.Key, one.Cut, one.Layers = fmt.Sprint(n), Given(min(99, n)), Given(1)
				s.Pieces = append(s.Pieces, one)
			}
		}},
	} {
		t.Run(c.what, func(t *testing.T) {
			full, over := madeSpec(), madeSpec()
			c.fill(full, &full.Pieces[0], c.most)
			assert.Empty(t, full.Faults(), "%d %s", c.most, c.what)
			c.fill(over, &over.Pieces[0], c.most+1)
			assert.ErrorContains(t, over.Faults(), fmt.Sprintf("the file has %s %s in all; at most %s are worked out", thousands(c.most+1), c.what, thousands(c.most)))
		})
	}
}

// thousands writes a number of more than three digits with its comma.
func thousands(n int) string { return fmt.Sprintf("%d,%03d", n/1000, n%1000) }

// Each of the views has what the file has: with one of them it has twice as much, with three four
// times.
func TestWhatViewsMayHaveInAll(t *testing.T) {
	file := func(views int) []byte {
		text := "[piece.a]\nrectangle = [60, 60]\n"
		for k := range 10 {
			text += fmt.Sprintf("[piece.a.tuck.t%d]\nbeside = \"left\"\nwidth = 0.001\nfirst = %d\ncount = 500\n", k, k)
		}
		for k := range views {
			text += fmt.Sprintf("[view.v%d]\ntitle = \"%d\"\n", k, k)
		}
		return []byte(text)
	}
	all, err := Reader{Printable: anyLetter}.ReadAll("f.toml", file(2))
	assert.NoError(t, err, "5,000 tucks in each of three")
	assert.Len(t, all, 3)
	_, err = Reader{Printable: anyLetter}.ReadAll("f.toml", file(3))
	assert.ErrorContains(t, err, "the file and its views have 20,000 tucks and pleats in all; at most 15,000 are worked out")
}
