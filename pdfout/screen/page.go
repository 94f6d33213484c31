package screen

import (
	"embed"
	"fmt"
	"html/template"
	"sync"

	"tuckmark/marking/plane"
	"tuckmark/marking/wording"
)

// Rules of this file: the page is filled in here, from a Scene and a Choice; how it is laid
// out is in page.html, and how it looks in look.css. What of it changes with the file or the
// choice stands in regions, elements of the class "live" with an id each, which are all in
// regions.html: the script puts them in place one by one. All else is as it was loaded.

//go:embed *.html
var layouts embed.FS

// templates are that of the page, "page", and of all its regions, "now". They are read when
// a page is first asked for, so that no other command waits for them.
var templates = sync.OnceValue(func() *template.Template {
	return template.Must(template.New("").Funcs(words).ParseFS(layouts, "*.html"))
})

// words are what the templates call to write something.
var words = template.FuncMap{"places": places, "unbroken": unbroken, "lineID": lineID}

// page is all that stands on the page.
type page struct {
	*Scene
	Choice            // as far as the scene has what was chosen
	Head    []choices // what is shown, and of which view
	Parts   []choices // how it is laid, and what part of it is looked at
	Picture *picture
	Home    string // what of the board is looked at, as a viewBox
	Told    []toldPiece
	Telling string     // the view that it is told of, where there are several in the picture
	Wrong   []numbered // the mistakes
	Remarks []numbered
	Figures *figureReport
	Refused string // why there is no picture, or no figures; "" where there are
}

// newPage fills in a page. What was chosen and is not there any more is the usual.
func newPage(scene *Scene, c Choice) page {
	view := scene.view(c)
	if view == nil {
		return page{Scene: scene, Choice: c, Wrong: numberedMistakes(scene.Mistakes)}
	}
	c = settled(c, view, len(scene.Views))
	p := page{Scene: scene, Choice: c, Wrong: numberedMistakes(scene.Mistakes), Remarks: numberedRemarks(view.Remarks(), len(scene.Mistakes))}
	if c.Show == Figures {
		p.fillFigures(view)
	} else if drawn, err := scene.board(c, view); err != nil {
		p.Refused = err.Error()
	} else {
		p.fill(drawn, view)
	}
	p.Head = chosen(shows(scene, p.Choice), views(scene, p.Choice))
	return p
}

// settled is what of a choice there is, where there are so many views and one is looked at: of
// what cannot be, the usual.
func settled(c Choice, view *View, views int) Choice {
	c.View = view.Name
	if c.Show == Views && views < 2 {
		c = c.Showing(Sheets)
	}
	if c.Show != Figures {
		c.Units = OwnUnit
	}
	switch {
	case c.Show == Folded && c.Lay == Half, c.Show == Views && c.Lay == Overlay:
	case c.Show == Figures && c.Lay == Beside && views > 1:
	default:
		c.Lay = Whole
	}
	return c
}

// fillFigures fills in the figures, of a view or of all beside one another.
func (p *page) fillFigures(view *View) {
	if p.compares() {
		p.Figures = newFigures(p.Compared(p.Units))
	} else {
		p.Figures = newFigures(view.Report(p.Units))
	}
	p.Figures.Units = chosen(units(p.Unit, p.Choice))
}

// fill fills in what belongs to a picture.
func (p *page) fill(drawn *picture, view *View) {
	p.Lot = drawn.Lot
	if p.Part > len(drawn.Parts) {
		p.Part = 0
	}
	p.Picture, p.Told = drawn, toldByPiece(view.Told())
	if p.Show == Views {
		p.Telling = view.Title
	}
	p.Parts = chosen(ways(p.Choice), lots(drawn, p.Choice), parts(drawn.Parts, p.Choice))
	looked := plane.Box{Max: drawn.Size}
	if p.Part > 0 {
		looked = drawn.Looked(p.Part - 1)
	}
	looked = looked.Grown(max(looked.Width(), looked.Height()) * besideLooked)
	p.Home = fmt.Sprintf("%.2f %.2f %.2f %.2f", looked.Min.X, looked.Min.Y, looked.Width(), looked.Height())
}

// besideLooked is how much is shown on every side of what is looked at, in parts of its
// longer side.
const besideLooked = 0.02

// Pictured reports whether the page has a picture, or will have one when there is one.
func (p page) Pictured() bool { return p.Show != Figures }

// Called is what the garment is called, or else the file.
func (p page) Called() string {
	if p.Title != "" {
		return p.Title
	}
	return p.File
}

// Headed is the title of the window: among many tabs a mistake is to be seen.
func (p page) Headed() string {
	title := p.Called() + ": " + p.Show.Title()
	if n := len(p.Mistakes); n > 0 {
		title = wording.Counted(n, "mistake") + " in " + title
	}
	return title
}

// Said is what is said aloud when the file has been saved.
func (p page) Said() string {
	switch {
	case len(p.Mistakes) > 0 && len(p.Views) == 0:
		return wording.Counted(len(p.Mistakes), "mistake") + ". There is no picture yet."
	case len(p.Mistakes) > 0 && p.Pictured():
		return wording.Counted(len(p.Mistakes), "mistake") + ". The last good picture stays."
	case len(p.Mistakes) > 0:
		return wording.Counted(len(p.Mistakes), "mistake") + ". The last good figures stay."
	case p.Refused != "":
		return "There is no picture."
	case !p.Pictured():
		return "The figures are as saved at " + p.SavedAt() + "."
	}
	return "The picture is as saved at " + p.SavedAt() + "."
}

// MistakesCounted is how many mistakes there are: "2 mistakes".
func (p page) MistakesCounted() string { return wording.Counted(len(p.Mistakes), "mistake") }

// RemarksCounted is how many remarks there are: "1 remark".
func (p page) RemarksCounted() string { return wording.Counted(len(p.Remarks), "remark") }

// SavedAt is when the file was saved: "11:42:07"; "" where that is not known.
func (p page) SavedAt() string {
	if p.Saved.IsZero() {
		return ""
	}
	return p.Saved.Format("15:04:05")
}

// PictureName says what the picture is.
func (p page) PictureName() string { return p.Show.Title() + " of " + p.Called() }

// Print is the address of what is printed of the view.
func (p page) Print() string { return printPath + Choice{View: p.View}.query() }

// UnitName is the unit of the file: "in", "cm" or "mm".
func (p page) UnitName() string { return p.Unit.String() }
