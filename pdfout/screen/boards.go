package screen

import (
	"html/template"
	"sync"

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

// draw draws a picture of a view.
func (s *Scene) draw(c Choice, view *View) (*picture, error) {
	book, err := view.Book()
	if err != nil {
		return nil, err
	}
	drawn := board.Sheets(book)
	if c.Show == Pages {
		drawn = board.Pages(book)
	}
	return newPicture(drawn), nil
}
