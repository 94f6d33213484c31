package screen

import (
	"html/template"
	"sync"

	"tuckmark/marking/mark"
	"tuckmark/pdfout/board"
)

// Rules of this file: a picture is drawn when somebody looks at it, and once, however many
// look. A Scene is small when nobody does.

// boards are the pictures of a Scene that were asked for, each as what makes it once.
type boards struct {
	mutex sync.Mutex
	asked map[Choice]func() (*picture, error)
}

// board is the picture that is looked at, with all its parts.
func (s *Scene) board(c Choice, view *View) (*picture, error) {
	c.Part = 0
	s.boards.mutex.Lock()
	draw, known := s.boards.asked[c]
	if !known {
		draw = sync.OnceValues(func() (*picture, error) { return s.draw(c, view) })
		if s.boards.asked == nil {
			s.boards.asked = map[Choice]func() (*picture, error){}
		}
		s.boards.asked[c] = draw
	}
	s.boards.mutex.Unlock()
	return draw()
}

// picture is a board as it stands on the page.
type picture struct {
	board.Board
	Elements template.HTML
	Layers   []layer
}

// newPicture writes a board.
func newPicture(drawn board.Board) *picture {
	elements := drawn.Elements()
	return &picture{drawn, elements, layers(elements)}
}

// draw draws a picture of a view, or of all.
func (s *Scene) draw(c Choice, view *View) (*picture, error) {
	switch c.Show {
	case Folded:
		halves := mark.BothHalves
		if c.Lay == Half {
			halves = mark.OneHalf
		}
		return newPicture(board.Folded(view.Pressed(halves))), nil
	case Views:
		return newPicture(s.allViews(c.Lay)), nil
	}
	book, err := view.Book()
	if err != nil {
		return nil, err
	}
	if c.Show == Pages {
		return newPicture(board.Pages(book)), nil
	}
	return newPicture(board.Sheets(book)), nil
}

// allViews is the board of all views.
func (s *Scene) allViews(lay Lay) board.Board {
	var all []board.View
	for _, v := range s.Views {
		all = append(all, board.View{Name: v.Title, Pieces: v.Pressed(mark.BothHalves)})
	}
	if lay == Overlay {
		return board.LaidOver(all)
	}
	return board.SideBySide(all)
}
