package screen

import "strconv"

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

// views are the links to the views of the file; none where all are shown at once.
func views(scene *Scene, c Choice) choices {
	all := choices{ID: "views", Title: "View of the file"}
	if c.Show == Views {
		return all
	}
	for _, v := range scene.Views {
		all.add(v.Title, c.Of(v.Name), c.View == v.Name)
	}
	return all
}

// ways are the links to the ways in which what is shown can be laid.
func ways(c Choice) choices {
	all := choices{ID: "ways", Title: "How it is laid"}
	switch c.Show {
	case Folded:
		all.add("Whole", c.Laid(Whole), c.Lay != Half)
		all.add("Half of what is on the fold", c.Laid(Half), c.Lay == Half)
	case Views:
		all.add("Side by side", c.Laid(Whole), c.Lay != Overlay)
		all.add("Laid over each other", c.Laid(Overlay), c.Lay == Overlay)
	}
	return all
}

// parts are the links to the parts of a picture by themselves.
func parts(names []string, c Choice) choices {
	all := choices{ID: "parts", Title: "Part of the picture"}
	all.add("All", c.Only(0), c.Part == 0)
	for i, name := range names {
		if name == "" {
			name = strconv.Itoa(i + 1)
		}
		all.add(name, c.Only(i+1), c.Part == i+1)
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
