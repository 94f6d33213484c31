package proof

import (
	"bytes"
	"fmt"
	"image"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/seen"
)

// Rules of this file: pages as dots. Two programs that know nothing of each other
// draw them; both put the upper edge of the page on the upper side of the first row
// of dots, and a dot counts for its middle. What a dot may be part of, a line of a
// piece or something printed around it, is told from the PDF as it is read back.

// dots is the resolution of all pictures here, to the inch; dot is the side of one,
// in mm.
const (
	dots = 300
	dot  = 25.4 / dots
)

// Two thresholds tell a line from the paper, of 255 for white. A line 0.18 mm wide,
// the finest that is drawn on cloth, is 2.1 dots wide, so that it covers at least
// one dot whole wherever it lies; but what the dots beside that one look like hangs
// on where it lies between them.
const (
	// surelyDark bounds a dot that a line covers nearly whole: the palest pen,
	// brown, prints 66.
	surelyDark = 100
	// somewhatDark bounds a dot that a line covers in part.
	somewhatDark = 190
	// nearlyWhite bounds a dot on which anything is printed at all.
	nearlyWhite = 250
)

// renderer is a program that draws the pages of a PDF in shades of grey, into files
// whose names begin with base and end with the number of the page.
type renderer struct {
	name string
	args func(file, base string, first, last int) []string
}

// renderers returns the two that are looked at: of poppler and of mupdf.
func renderers() []renderer {
	resolution := strconv.Itoa(dots)
	return []renderer{
		{"pdftoppm", func(file, base string, first, last int) []string {
			return []string{"-r", resolution, "-gray", "-f", strconv.Itoa(first), "-l", strconv.Itoa(last), file, base}
		}},
		// -N: without colour profiles, which some builds complain to lack.
		{"mutool", func(file, base string, first, last int) []string {
			return []string{"draw", "-q", "-N", "-r", resolution, "-c", "gray", "-o", base + "-%d.pgm", file, fmt.Sprintf("%d-%d", first, last)}
		}},
	}
}

// draw returns the pages of a PDF from the first to the last given.
func (r renderer) draw(t *testing.T, file string, first, last int) []*image.Gray {
	t.Helper()
	dir := t.TempDir()
	run(t, r.name, r.args(file, filepath.Join(dir, "page"), first, last)...)
	// pdftoppm writes as many digits as the last page of the PDF has.
	files, err := filepath.Glob(filepath.Join(dir, "page-*.pgm"))
	require.NoError(t, err)
	require.Len(t, files, last-first+1, "pages drawn by %s", r.name)
	number := func(file string) int {
		var n int
		_, err := fmt.Sscanf(filepath.Base(file), "page-%d.pgm", &n)
		require.NoError(t, err)
		return n
	}
	slices.SortFunc(files, func(a, b string) int { return number(a) - number(b) })
	var all []*image.Gray
	for i, file := range files {
		require.Equal(t, first+i, number(file))
		data, err := os.ReadFile(file)
		require.NoError(t, err)
		require.NoError(t, os.Remove(file)) // eight megabytes a page
		all = append(all, readPGM(t, data))
	}
	return all
}

// readPGM takes a raw picture in shades of grey apart: P5, width, height, the value
// of white, one white space, and a byte for each dot from the upper left (the format
// of netpbm, pgm(5)).
func readPGM(t *testing.T, data []byte) *image.Gray {
	t.Helper()
	rest := data
	word := func() string {
		for {
			rest = bytes.TrimLeft(rest, " \t\r\n")
			if !bytes.HasPrefix(rest, []byte("#")) {
				break
			}
			_, rest, _ = bytes.Cut(rest, []byte("\n"))
		}
		end := max(0, bytes.IndexAny(rest, " \t\r\n"))
		text := string(rest[:end])
		rest = rest[end:]
		return text
	}
	require.Equal(t, "P5", word())
	w, err := strconv.Atoi(word())
	require.NoError(t, err)
	h, err := strconv.Atoi(word())
	require.NoError(t, err)
	require.Equal(t, "255", word())
	require.Equal(t, 1+w*h, len(rest), "bytes of %d x %d dots", w, h) // Len would print them
	return &image.Gray{Pix: rest[1:], Stride: w, Rect: image.Rect(0, 0, w, h)}
}

// What a dot may belong to.
const (
	pieceBits      = 0x3f // the number of a piece in its set, from 1; 0 for none
	onLine         = 0x40 // it lies on a line of a piece
	underFurniture = 0x80 // text, join lines and so on may lie on it
)

// How far what a dot belongs to is taken to reach, in mm.
const (
	// pieceReach is how far around its outline and its lines a dot is the
	// piece's: more than half a head is wide and a flag is away, and less than half of
	// what lies between two pieces.
	pieceReach = 1.9
	// lineReach is how far beyond the sides of a line a dot still is the line's.
	lineReach = dot
	// furnitureReach is how far beyond what is printed around the lines a dot may
	// still be darkened by it: letters reach a little out of their box.
	furnitureReach = 0.25
	// letterReach is how far letters may reach out of their box besides, of their
	// size: an f stands higher than an H.
	letterReach = 0.08
	// pageRounding bounds how much of a dot a page may be larger than so many
	// dots without having one more: half of what its size is rounded to.
	pageRounding = 0.02
)

// ground tells of every dot of a page what it may belong to.
type ground struct {
	width, height int     // in dots
	top           float64 // height of the page, in mm
	of            []uint8 // row by row, from the top
}

// groundOf looks at a page whose lower left corner lies at a place of its sheet.
func groundOf(page seen.Page, corner plane.Point, pieces []seen.Placed) *ground {
	size := plane.Point{X: page.Width, Y: page.Height}
	count := func(mm float64) int { return int(math.Ceil(mm/dot - pageRounding)) }
	g := &ground{width: count(size.X), height: count(size.Y), top: size.Y}
	g.of = make([]uint8, g.width*g.height)
	for _, p := range pieces {
		onPage := func(path plane.Path) plane.Path { return seen.Moved(path, p.Turn, p.Step.Sub(corner)) }
		outline := onPage(p.Piece.Outline)
		g.fill(outline, pieceBits, uint8(p.Number))
		g.stroke(outline, pieceReach, pieceBits, uint8(p.Number))
		for _, mark := range p.Piece.Marks {
			for _, line := range ink.LinesOf(mark) {
				path := onPage(line)
				g.stroke(path, pieceReach, pieceBits, uint8(p.Number))
				g.stroke(path, ink.PenOf(mark.Role).Width/2+lineReach, onLine, onLine)
			}
		}
	}
	g.furnish(page)
	return g
}

// furnish marks all that is printed on the page and is not a line of a piece.
func (g *ground) furnish(page seen.Page) {
	cover := func(p plane.Path, reach float64) { g.stroke(p, reach+furnitureReach, underFurniture, underFurniture) }
	for _, r := range page.Texts {
		s := r.Style()
		// A bar along the middle of the letters, as wide as they are high.
		half := (s.Up() + s.Down()) / 2
		from := r.At.Add(r.U.Left().Mul(s.Up() - half))
		cover(plane.Path{from, from.Add(r.U.Mul(s.Width(r.Text)))}, half+s.Ems(letterReach))
	}
	for _, q := range page.Paths {
		if q.Painted == seen.Filled && q.Fill == ink.White() { // the gap of a letter in a line
			for _, part := range q.Parts {
				g.fill(part, underFurniture, underFurniture)
				cover(part, 0)
			}
		}
		if q.Layer != "" {
			continue
		}
		for _, part := range q.Parts {
			if q.Painted != seen.Stroked {
				g.fill(part, underFurniture, underFurniture)
			}
			if q.Curves == 4 && len(part) == 5 {
				part = circleAround(part) // with the cross of the mark as parts beside it
			}
			cover(part, q.Width/2)
		}
		for i, b := range q.Boxes {
			reach := q.Width / 2
			if q.Painted == seen.Framed && i == 0 && len(q.Boxes) == 2 {
				reach = q.Boxes[1].Min.X - b.Min.X // the frame between the two
			}
			cover(plane.Path{b.Min, {X: b.Max.X, Y: b.Min.Y}, b.Max, {X: b.Min.X, Y: b.Max.Y}, b.Min}, reach)
		}
	}
}

// circleAround is the circle through four places a quarter apart, in short sides.
func circleAround(four plane.Path) plane.Path {
	middle := four[0].Toward(four[2], 0.5)
	u := four[0].Sub(middle)
	var round plane.Path
	for i := range 33 {
		a := 2 * math.Pi * float64(i) / 32
		round = append(round, middle.Add(u.Mul(math.Cos(a))).Add(u.Left().Mul(math.Sin(a))))
	}
	return round
}

// stroke marks what lies within a reach of a path, with square ends and corners.
func (g *ground) stroke(p plane.Path, reach float64, clear, set uint8) {
	for i := 1; i < len(p); i++ {
		along := p[i].Sub(p[i-1])
		if along.Length() == 0 {
			continue
		}
		u := along.Unit().Mul(reach)
		a, b, side := p[i-1].Sub(u), p[i].Add(u), u.Left()
		g.fill(plane.Path{a.Add(side), a.Sub(side), b.Sub(side), b.Add(side)}, clear, set)
	}
}

// fill marks the dots whose middles lie in a closed path (even-odd): it clears some
// bits and sets others.
func (g *ground) fill(p plane.Path, clear, set uint8) {
	low, high := math.Inf(1), math.Inf(-1)
	for _, q := range p {
		low, high = min(low, q.Y), max(high, q.Y)
	}
	if len(p) < 3 || !(low < high) {
		return
	}
	first := max(0, int(math.Floor((g.top-high)/dot)))
	last := min(g.height-1, int(math.Ceil((g.top-low)/dot)))
	// The sides that cross the middle of each row; each side is looked at once.
	crossed := make([][]float64, max(0, last-first+1))
	for i, b := range p {
		a := p[(i+len(p)-1)%len(p)]
		if a.Y == b.Y {
			continue
		}
		from, to := max(a.Y, b.Y), min(a.Y, b.Y)
		row := max(first, int(math.Floor((g.top-from)/dot-0.5)))
		for ; row <= last; row++ {
			y := g.top - (float64(row)+0.5)*dot
			if y < to {
				break
			}
			if y < from {
				crossed[row-first] = append(crossed[row-first], a.X+(b.X-a.X)*(y-a.Y)/(b.Y-a.Y))
			}
		}
	}
	for i, at := range crossed {
		slices.Sort(at)
		line := g.of[(first+i)*g.width : (first+i+1)*g.width]
		for k := 0; k+1 < len(at); k += 2 {
			left := max(0, int(math.Ceil(at[k]/dot-0.5)))
			right := min(g.width, int(math.Ceil(at[k+1]/dot-0.5)))
			for x := left; x < right; x++ {
				line[x] = line[x]&^clear | set
			}
		}
	}
}
