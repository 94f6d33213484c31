package figures

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/sketch"
)

// A true bias runs at 45 degrees to the threads. A join along a thread takes
// 2 x 1/4 x sqrt 2 = 0.707 in of the strip, which is read as 3/4 in.
func TestBindingsInPrint(t *testing.T) {
	for _, c := range []struct{ name, beside, want string }{
		// 20 in of hem and a join: 20 3/4 in, 4 x 1/4 = 1 in wide. One strip beside the
		// diagonal d of a square of s is d - 2 in long: d >= 22.75, s >= 16.087: 16 1/2.
		{"single, from the least square", "[cloth]\nwidth = 44\n[binding.hem]\nalong = \"front.hem\"\nwidth = \"1/4\"\n", `
  hem, single bias binding, 1/4 in wide
                         each  times  together
  Front, hem               10      2        20
                                      --------
  the line                                  20
  joining or turning in   3/4      1       3/4
                                      --------
  bias strip                            20 3/4
  cut it 1 in wide, 4 times the finished width
  1 strip from a square of 16 1/2 in, the first cut from corner to corner
`},
		// 6 x 1/4 = 1 1/2 in wide, two ends: 21 1/2. d = 12 x 1.414 = 16.97; one strip is
		// d - 3 = 13.97; the second adds 13.97 - 0.707.
		{"double, from a square that is given", "[binding.hem]\nalong = \"front.hem\"\nwidth = \"1/4\"\nfold = \"double\"\njoins = 2\nsquare = 12\n", `
  hem, double bias binding, 1/4 in wide
                         each  times  together
  Front, hem               10      2        20
                                      --------
  the line                                  20
  joining or turning in   3/4      2     1 1/2
                                      --------
  bias strip                            21 1/2
  cut it 1 1/2 in wide, 6 times the finished width
  2 strips from a square of 12 in, the first cut from corner to corner
`},
		// d - 2 = 40 x 1.414 - 2 = 54.6 in is more than 20 3/4
		{"one strip", "[binding.hem]\nalong = \"front.hem\"\nwidth = \"1/4\"\nsquare = 40\n", `
  hem, single bias binding, 1/4 in wide
                         each  times  together
  Front, hem               10      2        20
                                      --------
  the line                                  20
  joining or turning in   3/4      1       3/4
                                      --------
  bias strip                            20 3/4
  cut it 1 in wide, 4 times the finished width
  1 strip from a square of 40 in, the first cut from corner to corner
`},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, strings.TrimPrefix(c.want, "\n"), printedSection(garmentOf(t, sketch.Skirt(10), c.beside), trimmings))
		})
	}
}

// 400 3/4 in of strip, 6 in wide, from cloth of 18 in: no square gives it. Each strip is
// 18 x 1.41421 = 25.456 in long; joined along a thread, n of them give n x 25.456 less
// n - 1 joins of 0.707, and lose their width of 6 in once, to the slant:
// n >= (400.75 + 6 - 0.707) / 24.749 = 16.4, which makes 17. Along the cloth each takes
// 6 x 1.41421 = 8.485 in, and the slant 18 in: 162.25 in.
func TestBindingFromSelvageToSelvage(t *testing.T) {
	p := garmentOf(t, sketch.Skirt(200), "[cloth]\nwidth = 18\n[binding.hem]\nalong = \"front.hem\"\nwidth = 1\nfold = \"double\"\n")
	b := p.Bindings[0]
	assert.Equal(t, "400 3/4 in", b.Length.String())
	assert.Equal(t, 17, b.Strips)
	assert.Zero(t, b.Square.MM)
	assert.Equal(t, "162 1/4 in", b.Cloth.String())
	text := printedSection(p, trimmings)
	assert.Contains(t, text, "\n  17 strips from selvage to selvage, out of 162 1/4 in of cloth; join them along\n  a thread, with seams of 1/4 in\n")
}
