package start_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking"
	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/piece"
	"tuckmark/marking/source"
	"tuckmark/marking/start"
)

var (
	units = []length.Unit{length.Inch, length.Centimetre, length.Millimetre}
	// known are the words by which a piece is known, and two that say nothing.
	known = []string{"front", "back", "sleeve", "collar", "skirt", "pocket", "cap", "yoke", "band", "Vorderteil", "7"}
	// narrower are words that stand before them.
	narrower = []string{"", "left ", "right ", "back ", "front ", "lining ", "under_", "neck-", "LEFT "}
	sizes    = []string{"3 months", "6 months", "9 months", "18 months", "1", "2 years", "30 months", "3T", "size 4", "5", "6 years", "12", "92 cm", "110", "Anna"}
)

func always(rune) bool { return true }

// made is the pattern of a file to begin with, and what it says.
func made(t require.TestingT, a start.Answers) (*garment.Pattern, *source.Spec, string) {
	text := start.File(a)
	spec, err := source.Read("f.toml", []byte(text), always)
	require.NoError(t, err, text)
	p, err := marking.Check(spec)
	require.NoError(t, err, text)
	return p, spec, text
}

// withoutRemark looks that a file works at once, and says nothing that it need not say.
func withoutRemark(t require.TestingT, a start.Answers) {
	p, spec, text := made(t, a)
	for _, r := range p.Remarks {
		assert.Fail(t, "a file to begin with has a remark", "%v\n%v", r, a)
	}
	require.Len(t, p.Pieces, len(a.Pieces))
	step := 25.4 / 8
	if a.Unit != length.Inch {
		step = 5
	}
	for i, one := range spec.Pieces {
		assert.Equal(t, a.Pieces[i], one.Key, "the pieces come in the order in which they were named")
		for _, e := range one.Edges {
			for _, q := range e.Points.V {
				for _, mm := range []float64{q.X, q.Y} {
					assert.InDelta(t, 0, math.Remainder(mm, step), 1e-9, "%s.%s: %v is no round number", one.Key, e.Key, q)
				}
			}
		}
	}
	for line := range strings.Lines(text) {
		if !strings.HasPrefix(line, "points") && !strings.HasPrefix(line, "join") && !strings.HasPrefix(line, "[") {
			assert.LessOrEqual(t, len([]rune(line)), 120, "a line no screen is too narrow for: %s", line)
		}
	}
}

func TestEveryPieceByItselfMakesItsPages(t *testing.T) {
	for _, unit := range units {
		for _, word := range known {
			for _, before := range narrower {
				withoutRemark(t, start.Answers{Title: "Dress", Size: "2 years", Unit: unit, Pieces: []string{before + word}})
			}
			for _, size := range sizes {
				withoutRemark(t, start.Answers{Title: "Dress", Size: size, Unit: unit, Pieces: []string{word}})
			}
		}
	}
}

func TestEveryPairOfPiecesMakesItsPages(t *testing.T) {
	for _, unit := range units {
		for i, one := range known {
			for _, other := range known[i+1:] {
				withoutRemark(t, start.Answers{Title: "Dress", Size: "2 years", Unit: unit, Pieces: []string{one, other}})
				withoutRemark(t, start.Answers{Title: "Dress", Size: "6 months", Unit: unit, Pieces: []string{other, one}})
			}
			for _, before := range narrower[1:] {
				withoutRemark(t, start.Answers{Title: "Dress", Size: "4 years", Unit: unit, Pieces: []string{one, before + one}})
			}
		}
	}
}

func TestAnyPiecesMakeTheirPages(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		name := rapid.Custom(func(t *rapid.T) string {
			return rapid.SampledFrom(narrower).Draw(t, "before") + rapid.SampledFrom(known).Draw(t, "word")
		})
		withoutRemark(t, start.Answers{
			Title:  "Dress",
			Size:   rapid.SampledFrom(sizes).Draw(t, "size"),
			Unit:   rapid.SampledFrom(units).Draw(t, "unit"),
			Pieces: rapid.SliceOfNDistinct(name, 1, 12, rapid.ID).Draw(t, "pieces"),
		})
	})
}

// What is drafted to be sewn together is, in every size: shoulder, side and underarm match;
// a cap is eased in, and a collar is no longer than its neck.
func TestSeamsMatch(t *testing.T) {
	for _, c := range []struct {
		pieces string
		seams  string
	}{
		{"front,back", "shoulder side"},
		{"back,front", "shoulder side"},
		{"front,sleeve", "underarm"},
		{"front,back,sleeve", "shoulder side armhole underarm"},
		{"front,back,collar", "shoulder side neck"},
		{"left front,right front,back,sleeve,collar", "shoulder side armhole neck underarm"},
		{"front,left back,right back,left sleeve,right sleeve", "shoulder side armhole underarm"},
		{"left front,back", ""},
		{"front,back,skirt", "shoulder side waist skirt side"},
		{"front,back,skirt front,skirt back", "shoulder side waist skirt side"},
		{"yoke,back,sleeve", "shoulder armhole underarm"},
		{"yoke,front,back", "shoulder side yoke"},
		{"yoke,back yoke,skirt,sleeve", "shoulder side armhole underarm waist skirt side"},
		{"yoke,back yoke,front,back", "shoulder side yoke back yoke"},
		{"front,back,lining front,lining back", "shoulder side lining shoulder lining side"},
		{"pocket,band,cap,Vorderteil", "back of the cap"},
	} {
		for _, unit := range units {
			for _, size := range []string{"6 months", "18 months", "2 years", "size 4", "6 years"} {
				p, _, text := made(t, start.Answers{Title: "Dress", Size: size, Unit: unit, Pieces: strings.Split(c.pieces, ",")})
				var keys []string
				for _, s := range p.Seams {
					keys = append(keys, s.Key)
					what := fmt.Sprintf("%s of %s, size %s in %s", s.Key, c.pieces, size, unit)
					assert.True(t, s.Matches(), what)
					off := s.Difference.MM
					switch {
					case s.Gathered:
						assert.Greater(t, s.Fullness(), 1.3, what)
					case s.Key == "armhole":
						times := 1.0
						if slices.ContainsFunc(p.Pieces, func(p piece.Piece) bool { return p.Key == "left front" || p.Key == "left back" }) {
							times = 2 // both armholes together
						}
						assert.Greater(t, off/times, 3.0, what)
						assert.Less(t, off/times, 20.0, what)
					case s.Key == "neck":
						assert.GreaterOrEqual(t, off, 0.0, what)
					default:
						assert.Less(t, math.Abs(off), 1.6, what)
					}
				}
				assert.Equal(t, c.seams, strings.Join(keys, " "), text)
			}
		}
	}
}

func TestAYokeHasTucks(t *testing.T) {
	for _, name := range []string{"yoke", "back yoke", "left yoke"} {
		for _, unit := range units {
			p, _, _ := made(t, start.Answers{Title: "Dress", Size: "2 years", Unit: unit, Pieces: []string{name}})
			require.NotNil(t, p.Pieces[0].Block, name)
			require.Len(t, p.Pieces[0].TuckRows, 1, name)
		}
	}
}

// A thousand pieces are the most that a file may have; of their seams it has as many.
func TestAThousandPieces(t *testing.T) {
	var names []string
	for i := range 201 { // of five seams each
		for _, word := range []string{"front", "back", "sleeve", "collar"} {
			names = append(names, fmt.Sprintf("set %d %s", i, word))
		}
	}
	withoutRemark(t, start.Answers{Title: "Dresses", Size: "2 years", Unit: length.Inch, Pieces: names})
}

// What is the same as another piece is not written twice.
func TestPiecesThatAreLike(t *testing.T) {
	p, _, text := made(t, start.Answers{Title: "Dress", Size: "2 years", Unit: length.Inch, Pieces: strings.Split("front,back,lining front,pocket,left pocket,right front", ",")})
	assert.Equal(t, 2, strings.Count(text, "\nlike = "), text)
	assert.Contains(t, text, "[piece.\"lining front\"]\nlike = \"front\"")
	assert.Contains(t, text, "[piece.\"left pocket\"]\nlike = \"pocket\"")
	assert.Equal(t, "Lining front", p.Pieces[2].Name)
}

// What a file says of the child it is drafted for.
func TestHeadOfFile(t *testing.T) {
	for _, c := range []struct {
		size string
		unit length.Unit
		want string
	}{
		{"2 years", length.Inch, "# Drafted for a chest of 19 in and a height of 32 1/2 in.\n# Children differ: measure yours.\n"},
		{"3 years", length.Centimetre, "# Drafted for a chest of 50.8 cm and a height of 88.9 cm.\n"},
		{"12 years", length.Inch, "# This size lies beyond the measures that are known here. The pieces are drafted for the nearest:\n# a chest of 23 in and a height of 44 in. Measure your child.\n"},
		{"Anna", length.Inch, "# The size tells no age, so the pieces are drafted for 2 years:\n# a chest of 19 in and a height of 32 1/2 in. Measure your child.\n"},
	} {
		text := start.File(start.Answers{Title: "Dress", Size: c.size, Unit: c.unit, Pieces: []string{"front"}})
		assert.Contains(t, text, c.want)
	}
}
