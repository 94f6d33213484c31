package screen

import (
	"io"
	"time"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/pdfout"
)

// Scene is all that is shown of a file as it was read last. What of it takes time is a
// function, which is asked when somebody looks, and may be asked by several at once.
type Scene struct {
	File  string // as it was named
	Title string // of the garment, with its size; "" where the file gives none
	Unit  length.Unit
	// Version is the number that is told to every tab when the scene is shown, so that none
	// asks for what it has.
	Version int64
	Saved   time.Time // when the file was, or one that it takes in; the zero time where that is not known
	// Views are the file as it stands, and then each of its views; none before the file could
	// be read for the first time.
	Views []View
	// Compared tells the figures of all views beside one another. It is asked where there are two
	// views at least.
	Compared func(Units) mark.Report
	// Mistakes are why the views are those of before; none where they are those of the file.
	Mistakes []Mistake
	boards   boards
}

// View is a file in one of its views.
type View struct {
	Name    string // that it is chosen by; "" of the file as it stands
	Title   string // that it is called by beside others
	Book    func() (*pdfout.Book, error)
	Pressed func(mark.Halves) []mark.Pressed
	Report  func(Units) mark.Report
	Told    func() []mark.Told
	Remarks func() []mark.Notice
	// PDF writes what is printed of the view.
	PDF func(io.Writer) error
}

// Mistake is one that keeps a file from being read.
type Mistake struct {
	mark.Notice
	Lines []fault.ExcerptLine // of the file, about its place; none where there is no line
}

// view is the view that is looked at; the file as it stands where that is not there any more,
// and nil where there is none at all.
func (s *Scene) view(c Choice) *View {
	for i := range s.Views {
		if s.Views[i].Name == c.View {
			return &s.Views[i]
		}
	}
	if len(s.Views) == 0 {
		return nil
	}
	return &s.Views[0]
}
