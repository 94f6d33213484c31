package screen

import (
	"errors"
	"io"
	"sync"
	"sync/atomic"
	"testing"
	"time"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/sets"
)

// nasty is a name as nobody should give it, which must come out as it is.
const nasty = `<b>"it's" & {{.}} </script>`

// fewBook is the book of a few pieces on letter paper.
var fewBook = sync.OnceValues(func() (*pdfout.Book, error) {
	on, err := paper.Find("letter")
	if err != nil {
		return nil, err
	}
	return pdfout.Plan(sets.Few(), on)
})

// viewOf is a view of a few pieces, and counts how often its book is asked for.
func viewOf(t *testing.T, name string, books *atomic.Int64) View {
	t.Helper()
	set := sets.Few()
	line := mark.At{Piece: set.Pieces[0].Key, Line: set.Pieces[0].Marks[0].Called()}
	place := fault.Place{File: "plum.toml", Line: 12, Key: "piece.front.edge.neck"}
	return View{
		Name: name, Title: "view " + name,
		Pressed: func(halves mark.Halves) []mark.Pressed { return pressed(halves, len(name)) },
		Book: func() (*pdfout.Book, error) {
			if books != nil {
				books.Add(1)
			}
			return fewBook()
		},
		Report: func(u Units) mark.Report {
			return mark.Report{Title: "Figures of " + name, Notes: [][]string{{"in inches"}, {"in inches and millimetres"}}[u], Sections: []mark.Section{{Title: "Lace", Tables: []mark.Table{{
				Heads: []string{"edge", "length"}, Rows: []mark.Row{{Cells: []string{"neck", "6 15/16 in"}}},
			}}}}}
		},
		Told: func() []mark.Told {
			return []mark.Told{
				{At: mark.At{Piece: line.Piece}, Title: "Front " + nasty},
				{At: line, Title: "neck, cutting line", Facts: []mark.Fact{{What: "sewn", Value: "6 15/16 in"}, {What: "gap", Value: "0 in", Warning: true}}, Places: []fault.Place{place, place.On(31)}},
			}
		},
		Remarks: func() []mark.Notice {
			return []mark.Notice{{Text: "the neck is tight", Hint: "make it wider", Place: place, At: []mark.At{line}}}
		},
		PDF: func(w io.Writer) error {
			if name == "broken" {
				return errors.New("the letters cannot be printed")
			}
			_, err := io.WriteString(w, "%PDF of "+name)
			return err
		},
	}
}

// pressed is a piece without folds: half of it is as wide as it is high, and it grows with a
// view, so that views differ.
func pressed(halves mark.Halves, more int) []mark.Pressed {
	high := float64(100 + more)
	wide := high * float64(1+halves)
	outline := plane.Box{Max: plane.Point{X: wide, Y: high}}.Outline()
	return []mark.Pressed{{
		Key: "front", Name: "Front " + nasty, Halves: halves, Outline: outline, Sewn: outline,
		Layers: []mark.Layer{{Path: outline, Side: mark.RightSideUp, Count: 1}}, Counts: []int{1},
		Marks: []mark.Mark{{Role: mark.Cut, Name: "hem", Key: "hem", Path: outline}},
	}}
}

// sceneOf is a scene with the views of these names; the first is "".
func sceneOf(t *testing.T, names ...string) *Scene {
	t.Helper()
	s := &Scene{
		File: "plum.toml", Title: "Plum smock, size 2", Unit: length.Inch, Version: 7,
		Saved: time.Date(2026, 5, 4, 11, 42, 7, 0, time.Local),
	}
	s.Compared = func(u Units) mark.Report {
		return mark.Report{Title: "Figures of all", Notes: [][]string{{"in inches"}, {"in inches and millimetres"}}[u]}
	}
	for _, name := range names {
		s.Views = append(s.Views, viewOf(t, name, nil))
	}
	return s
}

// mistaken is a mistake on line 3 of a file.
func mistaken() Mistake {
	place := fault.Place{File: "plum.toml", Line: 3, Key: "unit"}
	return Mistake{
		Notice: mark.Notice{Text: "there is no unit " + nasty, Hint: "in, cm or mm", Place: place},
		Lines:  fault.Excerpt([]byte("title = \"Plum\"\n\nunit = \"<b>ell\"\nsize = 2\n"), place),
	}
}
