package lay

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
)

// clothItem is a random thing to cut, with what is known of it from how it was made.
type clothItem struct {
	item
	whole  plane.Path // both halves, where there is a fold
	across float64    // how wide the whole lies across the cloth
	along  bool       // there is a fold, and it runs along the grain
}

// randomItem makes a thing from a half to the right of a fold on the y axis, a blob
// or a rectangle, and turns it by some angle.
func randomItem(t *rapid.T, name string) clothItem {
	var i clothItem
	i.name, i.count, i.garments = name, rapid.IntRange(1, 5).Draw(t, "count"), rapid.IntRange(1, 3).Draw(t, "garments")
	n := rapid.IntRange(3, 9).Draw(t, "points")
	angle := rapid.SampledFrom([]float64{0, math.Pi / 2, 0.3, 2.5, -1}).Draw(t, "turned by")
	place := func(x, y float64) plane.Point { return sketch.Turned(plane.Point{X: x, Y: y}, angle) }
	grain := math.Pi / 2 * float64(rapid.IntRange(0, 3).Draw(t, "quarter turns of the grain"))
	radius := func() float64 { return float64(rapid.IntRange(8, 160).Draw(t, "radius")) }

	var half, image plane.Path
	switch kind := rapid.SampledFrom([]string{"half", "half", "whole", "whole", "torn"}).Draw(t, "kind"); kind {
	case "half":
		if rapid.IntRange(0, 4).Draw(t, "bias") == 0 {
			grain += 0.7
		}
		for k := range n {
			sin, cos := math.Sincos(math.Pi * (float64(k)/float64(n-1) - 0.5))
			if k == 0 || k == n-1 {
				cos = 0
			}
			r := radius()
			half = append(half, place(r*cos, r*sin))
			image = append(image, place(-r*cos, r*sin))
		}
		i.fold = plane.Path{half[0], half[n-1]}
		if rapid.Bool().Draw(t, "fold downward") {
			i.fold = i.fold.Reversed()
		}
		i.along = math.Abs(math.Cos(grain)) < 1e-9
	case "whole":
		for k := range n {
			sin, cos := math.Sincos(2 * math.Pi * float64(k) / float64(n))
			r := radius()
			half = append(half, place(r*cos, r*sin))
		}
	case "torn":
		w, l := radius(), radius()
		half = plane.Path{place(0, 0), place(w, 0), place(w, l), place(0, l)}
		i.torn = true
	}
	slices.Reverse(image)
	i.whole = slices.Concat(half, image)
	i.whole = append(i.whole, i.whole[0])
	i.outline = append(slices.Clone(half), half[0])
	i.grain = sketch.Turned(plane.Point{X: math.Cos(grain), Y: math.Sin(grain)}, angle)
	i.across = lieAcross(i.whole, i.grain).Bounds().Width()
	return i
}

// lieAcross returns an outline in the measures of the cloth: how far across it and
// how far along it.
func lieAcross(outline plane.Path, grain plane.Point) plane.Path {
	var p plane.Path
	for _, q := range outline {
		p = append(p, plane.Point{X: q.X*grain.Y - q.Y*grain.X, Y: q.X*grain.X + q.Y*grain.Y})
	}
	return p
}

// liesAs reports whether an outline has the same corners as another whose x and y are
// taken so many times, but for where it lies.
func liesAs(laid, of plane.Path, x, y float64) bool {
	var image plane.Path
	for _, q := range of {
		image = append(image, plane.Point{X: q.X * x, Y: q.Y * y})
	}
	step := laid.Bounds().Min.Sub(image.Bounds().Min)
	for k, q := range image {
		image[k] = q.Add(step)
	}
	for _, q := range laid {
		if sketch.Away(q, image) > 1e-6 {
			return false
		}
	}
	for _, q := range image {
		if sketch.Away(q, laid) > 1e-6 {
			return false
		}
	}
	return true
}

// Random things are laid by the shortest way, and by each way alone.
func TestLayOfAnything(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		width := float64(rapid.IntRange(100, 1500).Draw(t, "width"))
		var made []clothItem
		var items []item
		for k := range rapid.IntRange(1, 8).Draw(t, "things") {
			made = append(made, randomItem(t, fmt.Sprintf("thing %d", k+1)))
			items = append(items, made[k].item)
		}
		before := fmt.Sprint(items)
		lay := layOut(items, width)
		require.Equal(t, before, fmt.Sprint(items), "the things themselves are changed")
		require.Equal(t, lay, layOut(items, width), "the same things lie otherwise the second time")
		checkLay(t, lay, made, width)
		shortest := math.Inf(1)
		for _, way := range []way{foldedThenSingle, foldedThroughout, singleThroughout} {
			one := layShortest(items, width, way)
			checkLay(t, one, made, width)
			require.Equal(t, lay.TooWide, one.TooWide, "what is too wide one way and not the other")
			shortest = min(shortest, one.Length)
		}
		require.InDelta(t, shortest, lay.Length, piece.SamePoint, "the shortest of the ways by themselves")
	})
}

// laySlack bounds how much nearer than the room for scissors two pieces may come, and
// how far a piece may reach over a selvage or a torn edge, in mm: what a column lets
// pass.
const laySlack = 1e-5

// scissorsApart is how far apart the pieces lie at least, in mm: 1/8 in.
const scissorsApart = 25.4 / 8

// tally is what is counted of a lay, by the names of the things.
type tally struct {
	laid               map[string][]Placed
	layers, pairs, odd map[string]int // layers of cloth; two cut at once; out of the upper layer
	area               float64        // of cloth under all that is laid, in mm²
}

// add counts what is laid in a part.
func (c *tally) add(t *rapid.T, p Placed, part Part) {
	c.laid[p.Name] = append(c.laid[p.Name], p)
	c.layers[p.Name]++
	c.area += p.Outline.Area()
	switch {
	case p.Upper:
		require.True(t, part.Folded && !p.OnFold, "%s out of the upper layer of single cloth, or on the fold", p.Name)
		c.odd[p.Name]++
	case p.OnFold:
		require.True(t, part.Folded, "%s lies on the fold of single cloth", p.Name)
		c.area += p.Outline.Area()
	case part.Folded:
		c.area += p.Outline.Area()
		c.layers[p.Name]++
		c.pairs[p.Name]++
	}
}

// checkLay looks at a lay of things as the polygons they are.
func checkLay(t *rapid.T, lay Lay, made []clothItem, width float64) {
	torn := map[string]bool{}
	for _, i := range made {
		torn[i.name] = i.torn
	}
	edges := tornEdges(lay, torn)
	end := 0.0
	count := tally{laid: map[string][]Placed{}, layers: map[string]int{}, pairs: map[string]int{}, odd: map[string]int{}}
	for k, part := range lay.Parts {
		require.NotEmpty(t, part.Placed, "part %d", k+1)
		require.Equal(t, end, part.From, "part %d does not begin where the one before it ends", k+1)
		if k > 0 {
			require.NotEqual(t, lay.Parts[k-1].Folded, part.Folded, "parts %d and %d lie one way", k, k+1)
		}
		wide, room := width, 0.0
		if part.Folded {
			wide = width / 2
		} else if k > 0 {
			room = scissorsApart
		}
		end = part.To
		reach := plane.EmptyBox()
		require.False(t, part.Folded && !slices.ContainsFunc(part.Placed, func(p Placed) bool { return !p.Upper }), "part %d is folded, and nothing is cut out of both layers", k+1)
		for _, p := range part.Placed {
			box := p.Outline.Bounds()
			reach = reach.Union(box)
			require.True(t, p.Outline.Closed(), "%s is open", p.Name)
			require.True(t, box.Min.X >= -laySlack && box.Max.X <= wide+laySlack && box.Min.Y >= part.From+room-laySlack && box.Max.Y <= part.To,
				"%s at %v is not on cloth %g wide from %g to %g", p.Name, box, wide, part.From, part.To)
			count.add(t, p, part)
		}
		require.InDelta(t, part.To, reach.Max.Y, 1e-9, "cloth is left over at the end of part %d", k+1)
		checkApart(t, part, torn, edges)
	}
	require.Equal(t, end, lay.Length, "the length of the lay")
	require.LessOrEqual(t, count.area, (lay.Length+1e-6)*(width+laySlack), "more cloth is laid than there is")
	require.InDelta(t, count.area, lay.ShareUsed()*lay.Length*width, 1e-6*(1+count.area), "the share of the cloth that is used")
	checkTornEdges(t, lay, edges)
	for _, i := range made {
		checkThing(t, lay, i, &count, width)
	}
	require.GreaterOrEqual(t, lay.Length, leastLength(fitting(made, width), width)-1e-3, "the lay is shorter than any can be")
}

// fitting returns the things that are no wider than the cloth.
func fitting(made []clothItem, width float64) []item {
	var items []item
	for _, i := range made {
		if i.across <= width {
			items = append(items, i.item)
		}
	}
	return items
}

// checkApart looks for what comes too near to another thing of a part.
func checkApart(t *rapid.T, part Part, torn map[string]bool, edges []float64) {
	var trees []*plane.Tree
	for _, p := range part.Placed {
		a, one := plane.NewTree(p.Outline), p.Name
		for j, b := range trees {
			other := part.Placed[j].Name
			switch {
			case torn[one] || torn[other]: // a rectangle, and nothing reaches round it
				require.False(t, share(a.Bounds(), b.Bounds()), "%s and %s, of which one is torn", one, other)
			case !tornApart(a.Bounds(), b.Bounds(), edges):
				require.Empty(t, tooClose(a, b, scissorsApart-laySlack), "%s and %s", one, other)
			}
		}
		trees = append(trees, a)
	}
}

// checkThing looks at all that is laid of one thing: as many as are to be cut, each with
// its outline, on its grain, and as many turned over as there have to be.
func checkThing(t *rapid.T, lay Lay, i clothItem, count *tally, width float64) {
	if i.across > width+laySlack {
		require.Contains(t, lay.TooWide, i.name, "%g wide on %g", i.across, width)
		require.Empty(t, count.laid[i.name], "%s, too wide", i.name)
		return
	}
	if i.across < width {
		require.NotContains(t, lay.TooWide, i.name, "%g wide on %g", i.across, width)
	}
	pairs, odd := count.pairs[i.name], count.odd[i.name]
	require.Equal(t, i.count*i.garments, count.layers[i.name], "how many are cut of %s", i.name)
	require.LessOrEqual(t, odd, i.count%2*i.garments, "%s out of the upper layer", i.name)
	left, right := 0, 0 // as it is drawn, and turned over
	for _, p := range count.laid[i.name] {
		drawn := lieAcross(i.whole, i.grain)
		if p.OnFold {
			require.True(t, i.along && !i.torn, "%s on the fold", i.name)
			drawn = lieAcross(i.outline, i.grain)
			require.InDelta(t, i.fold.Length(), onFoldOf(p.Outline), 1e-6, "what lies on the fold of %s", i.name)
		}
		require.InDelta(t, drawn.Area(), p.Outline.Area(), 1e-6*drawn.Area(), "the area of %s", i.name)
		same := liesAs(p.Outline, drawn, 1, 1) || liesAs(p.Outline, drawn, -1, -1)
		over := liesAs(p.Outline, drawn, -1, 1) || liesAs(p.Outline, drawn, 1, -1)
		require.True(t, same || over, "%s is laid with another outline, or off the grain", i.name)
		switch {
		case !over:
			left++
		case !same:
			right++
		}
	}
	if i.fold == nil {
		require.LessOrEqual(t, left, i.garments*((i.count+1)/2), "%s, as it is drawn", i.name)
		require.LessOrEqual(t, right, i.garments*(i.count/2)-pairs, "%s, turned over", i.name)
	} else if i.along {
		require.Zero(t, pairs+odd, "%s, off the fold of folded cloth", i.name)
	}
}

// tornEdges returns how far along the cloth the torn edges lie: where each strip
// begins, and where the last ends; the end of the cloth alone where nothing is torn.
func tornEdges(lay Lay, torn map[string]bool) []float64 {
	var edges []float64
	last := 0.0
	for _, part := range lay.Parts {
		for _, p := range part.Placed {
			if box := p.Outline.Bounds(); torn[p.Name] {
				edges = append(edges, box.Min.Y)
				last = max(last, box.Max.Y)
			}
		}
	}
	return append(edges, last)
}

// checkTornEdges looks for what crosses a torn edge, and for a piece of which not all
// lie beside what is torn.
func checkTornEdges(t *rapid.T, lay Lay, edges []float64) {
	beside, after := map[string]bool{}, map[string]bool{}
	for _, part := range lay.Parts {
		for _, p := range part.Placed {
			box := p.Outline.Bounds()
			for _, y := range edges {
				require.False(t, box.Min.Y < y-laySlack && box.Max.Y > y+laySlack, "%s from %g to %g crosses the torn edge at %g", p.Name, box.Min.Y, box.Max.Y, y)
			}
			if box.Min.Y < slices.Max(edges)-laySlack {
				require.False(t, part.Folded, "%s lies on folded cloth before the last torn edge", p.Name)
				beside[p.Name] = true
			} else {
				after[p.Name] = true
			}
		}
	}
	for name := range beside {
		require.False(t, after[name], "%s is cut partly beside what is torn, and partly after it", name)
	}
}

// tornApart reports whether a torn edge runs between two boxes.
func tornApart(a, b plane.Box, edges []float64) bool {
	return slices.ContainsFunc(edges, func(y float64) bool {
		return min(a.Max.Y, b.Max.Y) <= y+laySlack && max(a.Min.Y, b.Min.Y) >= y-laySlack
	})
}

// onFoldOf returns how much of an outline lies on x = 0.
func onFoldOf(outline plane.Path) float64 {
	sum := 0.0
	for k := 1; k < len(outline); k++ {
		if a, b := outline[k-1], outline[k]; math.Abs(a.X) < 1e-6 && math.Abs(b.X) < 1e-6 {
			sum += a.Distance(b)
		}
	}
	return sum
}

// share reports whether two boxes share more than a side.
func share(a, b plane.Box) bool {
	return min(a.Max.X, b.Max.X)-max(a.Min.X, b.Min.X) > 1e-6 && min(a.Max.Y, b.Max.Y)-max(a.Min.Y, b.Min.Y) > 1e-6
}

// tooClose says where two outlines cross, hold each other or come nearer than a
// distance; "" where they do not. Two that do not cross are nearest at a point of one.
func tooClose(a, b *plane.Tree, distance float64) string {
	if c := plane.Crossings(a, b); len(c) > 0 {
		return fmt.Sprintf("they cross at %v", c[0].At)
	}
	for _, pair := range [][2]*plane.Tree{{a, b}, {b, a}} {
		for _, q := range pair[0].Path() {
			if sketch.Within(q, pair[1].Path()) {
				return fmt.Sprintf("%v lies within the other", q)
			}
			if d := sketch.Away(q, pair[1].Path()); d < distance {
				return fmt.Sprintf("%v lies %g from the other", q, d)
			}
		}
	}
	return ""
}
