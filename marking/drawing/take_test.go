package drawing

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/plane"
)

// ends gives where paths begin and end, in whole mm.
func ends(paths []plane.Path) string {
	var all []string
	for _, p := range paths {
		a, b := p[0], p[len(p)-1]
		all = append(all, fmt.Sprintf("%.0f,%.0f-%.0f,%.0f", a.X+0, a.Y+0, b.X+0, b.Y+0))
	}
	return strings.Join(all, " ")
}

func TestTake(t *testing.T) {
	const square = "0,0-0,80 0,80-50,80 50,80-50,0 50,0-0,0"
	for _, c := range []struct {
		name, text string
		ask        func(*Ask)
		want       string
	}{
		{"a path by its id", `<path id="front" d="M10 10h50v80h-50z"/>`, nil, square},
		{"the only outline of a drawing", `<path d="M10 10h50v80h-50z"/><path id="dart" d="M20 20h5"/>`, func(a *Ask) { a.Part = "" }, square},
		{"the only outline of a group", `<g id="front"><rect x="10" y="10" width="50" height="80"/><path d="M20 20h5"/></g><circle r="5"/>`, nil, square},
		{"of several, the one whose own id it is", `<g id="front"><rect id="front" x="10" y="10" width="50" height="80"/><circle r="5"/></g>`, nil, square},
		{"a line for each edge", `<g id="front"><path id="front.left" d="M10 90v-80"/><path id="Top" d="M10 10h50"/><path id="front.right" d="M60 10v80"/><path id="bottom" d="M60 90h-50"/></g>`, nil, square},
		{"a line for each edge, by the piece", `<path id="front.left" d="M10 90v-80"/><path id="front.top" d="M10 10h50"/><path id="front.right" d="M60 10v80"/><path id="front.bottom" d="M60 90h-50"/><path id="back.left" d="M0 0v9"/>`, func(a *Ask) { a.Part = "" }, square},
		{"names with spaces", `<g id="front"><path id="centre-front" d="M10 90v-80"/><path id="Top_of_all" d="M10 10h50"/></g>`, func(a *Ask) { a.Edges = []string{"centre front", "top of all"} }, "0,0-0,80 0,80-50,80"},
		{"a part that is used", `<defs><rect id="r" width="50" height="80"/></defs><use id="front" href="#r" x="7"/><use href="#r"/>`, nil, square},
	} {
		t.Run(c.name, func(t *testing.T) {
			a := ask
			if c.ask != nil {
				c.ask(&a)
			}
			taken, f := drawnIn(t, svg(c.text)).Take(a)
			require.Nil(t, f)
			assert.Equal(t, c.want, ends(taken.Edges))
		})
	}
}

// Other lines come along, measured from the same corner, and are no outlines.
func TestTakeLines(t *testing.T) {
	d := drawnIn(t, svg(`<g id="front"><path d="M10 10h50v80h-50z"/><path id="placket-fold" d="M20 10v80"/><circle id="pocket" cx="40" cy="50" r="5"/></g>`))
	a := ask
	a.Lines = []string{"placket fold", "pocket"}
	taken, f := d.Take(a)
	require.Nil(t, f)
	assert.Equal(t, "10,80-10,0 35,40-35,40", ends(taken.Lines))
	again, f := d.Take(a)
	require.Nil(t, f)
	assert.Equal(t, taken, again, "a drawing is not changed by what is taken of it")
}

// A straight edge that was traced is straight, so that cloth can be folded along it; a curve,
// and a zigzag in longer steps, are as they were drawn.
func TestTakeTracedEdges(t *testing.T) {
	front := drawnIn(t, svg(`<path d="M20 250V90A25 25 0 0 0 45 65L95 75A40 40 0 0 0 125 115V250z"/>`)).Shapes[0]
	a := ask
	a.Part, a.Edges = "", []string{"centre front", "neck", "shoulder", "armhole", "side", "hem"}
	for seed := range int64(20) {
		taken, f := drawnIn(t, svg(`<path d="`+traced(front.Path, seed)+`"/>`)).Take(a)
		require.Nil(t, f)
		for i, name := range a.Edges {
			if p := taken.Edges[i]; name == "neck" || name == "armhole" {
				assert.Greater(t, len(p), 30, "%s of tracing %d", name, seed)
			} else {
				assert.Len(t, p, 2, "%s of tracing %d", name, seed)
			}
		}
	}
	a = ask
	a.Lines = []string{"zigzag", "slight"}
	taken, f := drawnIn(t, svg(`<g id="front"><rect width="90" height="90"/><path id="zigzag" d="M0 0l5 .1 5-.1 5 .1 5-.1"/><path id="slight" d="M0 50q20 .2 40 0"/></g>`)).Take(a)
	require.Nil(t, f)
	assert.Len(t, taken.Lines[0], 5)
	assert.Greater(t, len(taken.Lines[1]), 2)
}

func FuzzRead(f *testing.F) {
	for _, c := range badDrawings {
		if len(c.text) < 5000 {
			f.Add([]byte(strings.ReplaceAll(c.text, "SQUARE", `<path id="front" d="M10 10h100v100h-100z"/>`)))
		}
	}
	f.Add([]byte(svg(`<g id="front" transform="rotate(30)"><path d="M10 10c1 2 3 4 5 6s1 1 2 2q1 1 2 2t3 3a4 5 30 015 6zh-1"/><rect width="10%" height="1in" rx="3"/><use href="#front"/></g>`)))
	f.Fuzz(func(t *testing.T, data []byte) {
		d, err := Read("f.svg", data)
		if err != nil {
			require.Nil(t, d)
			for line := range strings.Lines(err.Error()) {
				require.True(t, strings.HasPrefix(line, "f.svg:") || strings.HasPrefix(line, "hint: "), line)
			}
			return
		}
		points := 0
		for _, s := range d.Shapes {
			points += len(s.Path)
			require.GreaterOrEqual(t, len(s.Path), 2)
			for _, q := range s.Path {
				require.True(t, near(straight(q, q)), "%v", q)
			}
			last := -1
			for _, c := range s.Corners(20) {
				require.Greater(t, c.At, last)
				require.Equal(t, s.Path[c.At], c.Place)
				last = c.At
			}
		}
		require.LessOrEqual(t, points, mostPoints+1<<mostHalvings)
		for _, part := range []string{"", "front"} {
			a := ask
			a.Part = part
			taken, fault := d.Take(a)
			require.Equal(t, fault == nil, len(taken.Edges) == len(a.Edges))
		}
	})
}
