package screen

import (
	"fmt"
	"html/template"
	"strconv"
	"sync"

	"tuckmark/marking/mark"
	"tuckmark/pdfout/board"
)

// Rules of this file: a picture is drawn when somebody looks at it, or is about to, and once,
// however many look. A Scene is small when nobody does.

// boards are the pictures of a Scene that were asked for: of each choice but for its lot, what
// makes its lots once, and of each lot what draws it once.
type boards struct {
	mutex sync.Mutex
	asked map[Choice]func() ([]func() *picture, error)
}

// board is the picture that is looked at, with all its parts: of a lot that is not there, the first.
func (s *Scene) board(c Choice, view *View) (*picture, error) {
	lot := c.Lot
	c.Lot, c.Part = 0, 0
	if c.Show == Views {
		c.View = "" // all are in it
	}
	s.boards.mutex.Lock()
	lots, known := s.boards.asked[c]
	if !known {
		lots = sync.OnceValues(func() ([]func() *picture, error) { return s.pictures(c, view) })
		if s.boards.asked == nil {
			s.boards.asked = map[Choice]func() ([]func() *picture, error){}
		}
		s.boards.asked[c] = lots
	}
	s.boards.mutex.Unlock()
	draw, err := lots()
	if err != nil {
		return nil, err
	}
	if lot >= len(draw) {
		lot = 0
	}
	return draw[lot](), nil
}

// pictures returns what draws each lot of a view, or of all, once.
func (s *Scene) pictures(c Choice, view *View) ([]func() *picture, error) {
	lots, err := s.lots(c, view)
	var all []func() *picture
	for lot := range lots {
		all = append(all, sync.OnceValue(func() *picture { return s.draw(c, lots, lot) }))
	}
	return all, err
}

// begin makes what takes time of a page, each thing at the same time as the others, before it is
// asked for. A mishap is that of whoever asks for it.
func (s *Scene) begin(c Choice) {
	view := s.view(c)
	if view == nil {
		return
	}
	if c = settled(c, view, len(s.Views)); c.Show == Figures {
		return // they are soon told
	}
	var all sync.WaitGroup
	for _, thing := range []func(){
		func() { view.Remarks() },
		func() { view.Told() },
		func() { s.board(c, view) },
	} {
		all.Go(func() {
			defer func() { _ = recover() }()
			thing()
		})
	}
	all.Wait()
}

// picture is a board as it stands on the page.
type picture struct {
	board.Board
	Lot      int      // which of the lots it is, from 0
	Lots     []string // the numbers in each: "1 to 100"
	Elements template.HTML
	Layers   []layer
}

// draw draws one of the lots of a choice.
func (s *Scene) draw(c Choice, lots []board.Board, lot int) *picture {
	p := &picture{Board: lots[lot], Lot: lot}
	for _, one := range lots {
		p.Lots = append(p.Lots, spanOf(one))
	}
	p.Elements = p.Board.Elements()
	if c.Show == Views && c.Lay == Overlay {
		p.Layers = append(viewLayers(p.Elements, s.Views), layers(p.Elements, sharedSample)...)
	} else {
		p.Layers = layers(p.Elements, sample)
	}
	return p
}

// spanOf is the numbers of the parts of a board: "1 to 100", or "101" of one.
func spanOf(b board.Board) string {
	first, last := b.Span()
	if first == last {
		return strconv.Itoa(first)
	}
	return fmt.Sprintf("%d to %d", first, last)
}

// lots are the boards of a view, or of all views, on which what is shown lies: one at least.
func (s *Scene) lots(c Choice, view *View) ([]board.Board, error) {
	switch c.Show {
	case Folded:
		halves := mark.BothHalves
		if c.Lay == Half {
			halves = mark.OneHalf
		}
		return board.Folded(view.Pressed(halves)).Lots(), nil
	case Views:
		return []board.Board{s.allViews(c.Lay)}, nil
	}
	book, err := view.Book()
	if err != nil {
		return nil, err
	}
	if c.Show == Pages {
		return board.Pages(book).Lots(), nil
	}
	return board.Sheets(book).Lots(), nil
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
