package pdfout

import (
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/plane"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/seen"
	"tuckmark/pdfout/sets"
	"tuckmark/pdfout/text"
)

// slabOf is the room a text on a page takes, reckoned from the page alone.
func slabOf(r seen.Text) text.Slab {
	s := r.Style()
	w, h := s.Width(r.Text), s.Up()+s.Down()
	middle := r.At.Add(r.U.Mul(w / 2)).Add(r.U.Left().Mul((s.Up() - s.Down()) / 2))
	return text.Slab{Centre: middle, Half: plane.Point{X: w / 2, Y: h / 2}, U: r.U}
}

// No text in a window lies on a line of a piece or on another text, nor does
// a check square where a page has room for one; every text can be read from
// below or from the right, and is large enough.
func checkLabels(t require.TestingT, set arrange.Set, d seen.Document, s Summary) {
	for i, p := range d.Pages[inFront(s):] {
		number := inFront(s) + i + 1
		var inWindow []seen.Text
		window := p.On(s.Paper).Window()
		for _, r := range p.Texts {
			if window.Meets(r.Box()) && !r.Faint() {
				inWindow = append(inWindow, r)
			}
		}
		for _, sheet := range s.Sheets {
			if len(sheet.Pieces) > 1 && sheet.First == number {
				checkFrameIsFree(t, p, number)
			}
		}
		core := p.Core(p.JoinMarks(t))
		for k, r := range inWindow {
			room := slabOf(r)
			if seen.OfJoin(r) {
				assert.True(t, window.Holds(room.Bounds().Min) && window.Holds(room.Bounds().Max), "page %d: %q is cut off", number, r.Text)
			} else {
				assert.True(t, core.Meets(room.Bounds()), "page %d: %q belongs to another page", number, r.Text)
			}
			for _, o := range inWindow[k+1:] {
				assert.False(t, room.Meets(slabOf(o)), "page %d: %q and %q", number, r.Text, o.Text)
			}
			angle := math.Atan2(r.U.Y, r.U.X)
			assert.True(t, angle > -math.Pi/2+0.34 && angle < math.Pi/2+0.36, "page %d: %q reads at %.2f", number, r.Text, angle)
			if _, err := parseNumber(r.Text); err != nil { // of a join
				least := 9.0
				if slices.ContainsFunc(s.Forms, func(f FormSummary) bool { return f.Page == number }) {
					least = 8 // of a form whose page is low
				}
				assert.GreaterOrEqual(t, r.Size, least, "page %d: %q", number, r.Text)
			}
			onSquare := false // of the texts in a check square, which may have had no free place
			for _, f := range p.Frames() {
				onSquare = onSquare || f.Holds(room.Centre)
			}
			if seen.OfJoin(r) || onSquare {
				continue
			}
			for _, q := range p.Paths {
				if q.Layer == "" || q.Painted != seen.Stroked || q.Layer == r.Layer && len(r.Text) == 1 {
					continue // a letter stands in a line of its layer
				}
				for _, part := range q.Parts {
					for n := 1; n < len(part); n++ {
						if room.MeetsSegment(part[n-1], part[n]) {
							assert.Fail(t, "a text on a line", "page %d: %q on a %s", number, r.Text, q.Layer)
							n = len(part)
						}
					}
				}
			}
		}
	}
}

// On a page that pieces share the check square's frame lies free of all lines.
func checkFrameIsFree(t require.TestingT, p seen.Page, number int) {
	for _, f := range p.Frames() {
		room := text.Upright(f)
		for _, q := range p.Paths {
			for _, part := range q.Parts {
				for n := 1; n < len(part) && q.Layer != "" && q.Clip.Meets(f); n++ {
					if room.MeetsSegment(part[n-1], part[n]) {
						assert.Fail(t, "a check square on a line", "page %d: on a %s", number, q.Layer)
						return
					}
				}
			}
		}
	}
}

// The sheets of a set look at no more places together than a single one may.
func TestSheetsShareTheirLooks(t *testing.T) {
	t.Parallel()
	for name, set := range sets.Examples(t, "../examples") {
		book, err := Plan(set, seen.Paper(t, "letter"))
		require.NoError(t, err)
		most := arrange.MostLooks
		for _, s := range book.sheets {
			most -= s.Looks
		}
		assert.GreaterOrEqual(t, most, 0, name)
	}
}

// parseNumber reads the number of a join.
func parseNumber(text string) (int, error) {
	n := 0
	for _, r := range text {
		if r < '0' || r > '9' {
			return 0, assert.AnError
		}
		n = n*10 + int(r-'0')
	}
	return n, nil
}

// On the sheets of the examples no text is cut where two pages meet, and each piece
// is called by its name on the paper itself.
func TestNoLabelOfAnExampleIsCut(t *testing.T) {
	t.Parallel()
	for name, set := range sets.Examples(t, "../examples") {
		for _, paper := range []string{"letter", "a4", "either", "legal", "tabloid", "a3"} {
			book, err := plan(set, seen.Paper(t, paper))
			require.NoError(t, err)
			for _, s := range book.sheets {
				s.FindJoins(1)
				s.Letter()
				for _, l := range s.Labels {
					assert.True(t, s.Whole(l.Room.Bounds()), "%s on %s: %q lies over a join", name, paper, l.Text)
				}
			}
		}
	}
}
