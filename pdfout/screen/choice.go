package screen

import (
	"net/url"
	"strconv"
	"strings"
)

// Rules of this file: an address and the choice it stands for are read and written here
// alone. What is usual is not said in it.

// Show is what somebody looks at.
type Show int

// What can be looked at.
const (
	Sheets  Show = iota // every sheet whole, with the pages it is cut into over it
	Pages               // every page as it is printed
	Folded              // the pieces as they are sewn and pressed, beside them flat
	Views               // the views of the file, beside one another or laid over each other
	Figures             // the numbers for the cutting table
	showCount
)

var showWords = [showCount]string{"sheets", "pages", "folded", "views", "figures"}

// String is the word for it in the address.
func (s Show) String() string { return showWords[s] }

// Lay is how things are laid that can be looked at in two ways.
type Lay int

// The ways.
const (
	Whole   Lay = iota // whole pieces; views beside one another, but figures of one
	Half               // half of what is cut on the fold
	Overlay            // views laid over each other
	Beside             // figures of all views, beside one another
	layCount
)

var layWords = [layCount]string{"", "half", "over", "beside"}

// String is the word for it in the address; "" for the usual way.
func (l Lay) String() string { return layWords[l] }

// Units are those that figures are in.
type Units int

// The units.
const (
	OwnUnit  Units = iota // that of the file
	AllUnits              // inches and millimetres both
)

// allUnitsWord is the word for both in the address.
const allUnitsWord = "all"

// Choice is what of a Scene is looked at. The zero Choice is what a new page shows.
type Choice struct {
	Show  Show
	View  string // of the file; "" is the file as it stands
	Lot   int    // of the parts, where they are too many for one picture; 0 is the first
	Part  int    // of the picture, that is looked at alone, from 1; 0 is all of it
	Lay   Lay
	Units Units
}

// The names of values in the address.
const (
	showName  = "show"
	viewName  = "view"
	lotName   = "lot"
	partName  = "part"
	layName   = "lay"
	unitsName = "units"
)

// ChoiceOf reads an address. What it does not know is the usual.
func ChoiceOf(address url.Values) Choice {
	c := Choice{View: address.Get(viewName)}
	for s := range showCount {
		if address.Get(showName) == s.String() {
			c.Show = s
		}
	}
	for l := range layCount {
		if address.Get(layName) == l.String() {
			c.Lay = l
		}
	}
	c.Lot, c.Part = max(0, numberIn(address, lotName)-1), numberIn(address, partName)
	if address.Get(unitsName) == allUnitsWord {
		c.Units = AllUnits
	}
	return c
}

// numberIn is a number of an address that counts from 1; 0 where there is none.
func numberIn(address url.Values, name string) int {
	if n, err := strconv.Atoi(address.Get(name)); err == nil && n > 0 {
		return n
	}
	return 0
}

// Address is the address of the page that shows the choice: "./?show=folded".
func (c Choice) Address() string { return "./" + c.query() }

// query is the choice behind a path: "?show=folded"; "" for what is usual.
func (c Choice) query() string {
	var said []string
	say := func(name, value string) { said = append(said, name+"="+url.QueryEscape(value)) }
	if c.Show != Sheets {
		say(showName, c.Show.String())
	}
	if c.View != "" {
		say(viewName, c.View)
	}
	if c.Lot > 0 {
		say(lotName, strconv.Itoa(c.Lot+1))
	}
	if c.Part > 0 {
		say(partName, strconv.Itoa(c.Part))
	}
	if c.Lay != Whole {
		say(layName, c.Lay.String())
	}
	if c.Units == AllUnits {
		say(unitsName, allUnitsWord)
	}
	if len(said) == 0 {
		return ""
	}
	return "?" + strings.Join(said, "&")
}

// Showing is the choice with something else shown: all parts of that, laid in the usual way.
func (c Choice) Showing(s Show) Choice { return Choice{Show: s, View: c.View} }

// Of is the choice with another view.
func (c Choice) Of(view string) Choice { c.View = view; return c }

// Only is the choice with a part alone; 0 is all of it.
func (c Choice) Only(part int) Choice { c.Part = part; return c }

// FromLot is the choice with another lot of parts, all of it.
func (c Choice) FromLot(lot int) Choice { c.Lot, c.Part = lot, 0; return c }

// Laid is the choice with another way to lay things.
func (c Choice) Laid(l Lay) Choice { c.Lay = l; return c }

// In is the choice with figures in other units.
func (c Choice) In(u Units) Choice { c.Units = u; return c }
