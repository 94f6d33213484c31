package screen

import (
	"strings"

	"tuckmark/marking/length"
	"tuckmark/pdfout/board"
)

// Rules of this file: every choice that can be made is a link to it, in a row with those that
// can be made in its place. A row of one is no choice, and is not there.

// choices are links of which one is chosen.
type choices struct {
	ID    string // of the row in the page
	Title string // what they choose
	Links []link
}

// link is a choice that can be made.
type link struct {
	Text   string
	To     string // the address
	Chosen bool
}

// add adds a link to a choice.
func (c *choices) add(text string, to Choice, chosen bool) {
	c.Links = append(c.Links, link{text, to.Address(), chosen})
}

// showTitles are what is on the page for what can be looked at.
var showTitles = [showCount]string{"Sheets", "Pages", "Folded", "Views", "Figures"}

// Title is what is on the page for it.
func (s Show) Title() string { return showTitles[s] }

// shows are the links to what can be looked at. The views are there where a file has some.
func shows(scene *Scene, c Choice) choices {
	all := choices{ID: "shows", Title: "What is shown"}
	for s := range showCount {
		if s != Views || len(scene.Views) > 1 {
			all.add(s.Title(), c.Showing(s), c.Show == s)
		}
	}
	return all
}

// views are the links to the views of the file; none where all are shown at once, but
// figures are there for each and for all.
func views(scene *Scene, c Choice) choices {
	all := choices{ID: "views", Title: "View of the file"}
	if c.Show == Views {
		return all
	}
	for _, v := range scene.Views {
		to := c.Of(v.Name)
		if c.compares() {
			to = to.Laid(Whole)
		}
		all.add(v.Title, to, c.View == v.Name && !c.compares())
	}
	if c.Show == Figures && len(scene.Views) > 1 {
		all.add("Side by side", c.Laid(Beside), c.compares())
	}
	return all
}

// ways are the links to the ways in which what is shown can be laid.
func ways(c Choice) choices {
	all := choices{ID: "ways", Title: "How it is laid"}
	switch c.Show {
	case Folded:
		all.add("Whole", c.Laid(Whole), c.Lay == Whole)
		all.add("Half on the fold", c.Laid(Half), c.Lay == Half)
	case Views:
		all.add("Side by side", c.Laid(Whole), c.Lay == Whole)
		all.add("Laid over each other", c.Laid(Overlay), c.Lay == Overlay)
	}
	return all
}

// compares reports whether what is shown is the figures of all views.
func (c Choice) compares() bool { return c.Show == Figures && c.Lay == Beside }

// unitTitles are what is on the page for the units of a file: alone, and with the other system.
var unitTitles = map[length.Unit][2]string{
	length.Inch:       {"Inches", "Inches and millimetres"},
	length.Centimetre: {"Centimetres", "Centimetres and inches"},
	length.Millimetre: {"Millimetres", "Millimetres and inches"},
}

// units are the links to the units of figures, of a file that has one of its own.
func units(own length.Unit, c Choice) choices {
	all := choices{ID: "units", Title: "Units"}
	for i, title := range unitTitles[own] {
		all.add(title, c.In(Units(i)), c.Units == Units(i))
	}
	return all
}

// lots are the links to the lots of what is too much for one picture.
func lots(of *picture, c Choice) choices {
	all := choices{ID: "lots", Title: "Which of the " + strings.ToLower(c.Show.Title())}
	for i, span := range of.Lots {
		all.add(span, c.FromLot(i), of.Lot == i)
	}
	return all
}

// parts are the links to the parts of a picture by themselves: to all that have a name.
func parts(of []board.Part, c Choice) choices {
	all := choices{ID: "parts", Title: "Part of the picture"}
	all.add("All", c.Only(0), c.Part == 0)
	for i, p := range of {
		if p.Name != "" {
			all.add(p.Name, c.Only(i+1), c.Part == i+1)
		}
	}
	return all
}

// chosen are the rows of links of which each has two at least. The rows have their links in
// the order of the keys that reach them.
func chosen(rows ...choices) []choices {
	var all []choices
	for _, row := range rows {
		if len(row.Links) > 1 {
			all = append(all, row)
		}
	}
	return all
}
