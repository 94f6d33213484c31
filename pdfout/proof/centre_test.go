package proof

import (
	"image"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/sets"
)

// Rules of this file: marks that are measured to, as they come out at 600 dots to the inch. What
// the eye takes for the middle of a mark is where the ink across it balances; flags and other
// lines beside it must not pull that aside.

const (
	fineDots = 600
	fineDot  = 25.4 / fineDots
	// lookAcross is how far to each side of a mark ink is weighed, in mm: three times as far
	// as the mark is wide, and less than what is kept free beside it.
	lookAcross = 0.3
	// offCentre bounds how far the middle of a mark may be off, in mm: a third of 1/64 in,
	// which is half of the finest that is read there.
	offCentre = 0.1
)

// drawFinely returns a page at 600 dots to the inch.
func drawFinely(t *testing.T, file string, page int) *image.Gray {
	t.Helper()
	base := filepath.Join(t.TempDir(), "page")
	run(t, "pdftoppm", "-r", strconv.Itoa(fineDots), "-gray", "-f", strconv.Itoa(page), "-l", strconv.Itoa(page), "-singlefile", file, base)
	data, err := os.ReadFile(base + ".pgm")
	require.NoError(t, err)
	return readPGM(t, data)
}

// balance is how far beside a place of a line the ink across it balances, in mm; not a number
// where there is none. The place is on the page, which is so high.
func balance(g *image.Gray, at, u plane.Point, high float64) float64 {
	sum, weight := 0.0, 0.0
	for off := -lookAcross; off <= lookAcross; off += fineDot / 4 {
		q := at.Add(u.Left().Mul(off))
		x, y := int(math.Floor(q.X/fineDot)), int(math.Floor((high-q.Y)/fineDot))
		dark := float64(255 - g.GrayAt(x, y).Y)
		sum += off * dark
		weight += dark
	}
	return sum / weight
}

// Every cross, match mark and notch of an example has its middle where it belongs.
func TestMiddlesOfMarks(t *testing.T) {
	for _, c := range []struct {
		file  string
		roles []mark.Role // that must be found there
	}{
		{"shirt.toml", []mark.Role{mark.Cross}},
		{"pinafore.toml", []mark.Role{mark.Notch}},
		{"underwaist.toml", []mark.Role{mark.Match}},
	} {
		t.Run(c.file, func(t *testing.T) {
			out := printedOn(t, sets.Examples(t, "../../examples")[c.file], "letter")
			found := map[mark.Role]int{}
			worst := 0.0
			for _, sheet := range out.sheets {
				for _, p := range sheet {
					worst = max(worst, p.lookAtMarks(t, out.file, found))
				}
			}
			t.Logf("%v, off by %.4f mm at most", found, worst)
			for _, role := range c.roles {
				assert.Positive(t, found[role], "no %v was looked at", role)
			}
		})
	}
}

// lookAtMarks measures the marks of a page, counts them by their roles, and returns how far the
// worst is off, in mm.
func (p *tile) lookAtMarks(t *testing.T, file string, found map[mark.Role]int) (worst float64) {
	var g *image.Gray
	for _, placed := range p.pieces {
		for _, one := range placed.Piece.Marks {
			line := placed.On(one.Path)
			if !slices.Contains([]mark.Role{mark.Cross, mark.Match, mark.Notch}, one.Role) || !p.Window.Holds(line[0]) || !p.Window.Holds(line[1]) {
				continue
			}
			if g == nil {
				g = drawFinely(t, file, p.Number)
			}
			line = line.Moved(p.Step.Mul(-1))
			var offs []float64
			for share := 0.25; share <= 0.75; share += 0.025 {
				offs = append(offs, balance(g, line[0].Toward(line[1], share), line.StartDirection(), p.Height))
			}
			slices.Sort(offs) // where another line crosses it is off: half of the places must not be
			off := math.Abs(offs[len(offs)/2])
			assert.Less(t, off, offCentre, "page %d: a %v at %v", p.Number, one.Role, line[0])
			worst = max(worst, off)
			found[one.Role]++
		}
	}
	return worst
}
