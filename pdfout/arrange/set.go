package arrange

import (
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/wording"
)

// Set is what is drawn at once.
type Set struct {
	Title  string      // "Sunday pinafore"; may be ""
	Size   string      // "18 months"; may be ""
	Unit   length.Unit // that lengths are printed in
	Pieces []mark.Marking
	// What the pieces are called together; "" for "the pieces".
	What string
	// FormsFor says what pages with forms are for; "" for "to be sewn and filled in".
	FormsFor string
	// Included says which allowances are in the pieces; "" where there is nothing to say.
	Included string
	// Work is the order of work, which stands on the first page.
	Work []mark.Task
	// Use says what all pieces are used for, where no page is joined to another; each is a
	// sentence.
	Use []string
	// Cautions stand on the first page.
	Cautions []string
	// Kind says under the title what they are; "" for full-size marking sheets.
	Kind string
	// Called is what the line key calls lines by other names than those of their roles.
	Called map[mark.Role]string
	// Scale is the command that is told what a page measures that came out too small or too
	// large, with the options that the pages are made with; "" where there is none.
	Scale string
	// Report is printed on pages of figures right behind those in front. Nil,
	// and a report that says nothing, have none.
	Report *mark.Report
}

// SizeLine is the set's size as its pages say it; "" when it has none.
func (s Set) SizeLine() string {
	if s.Size == "" {
		return ""
	}
	return wording.OfSize(s.Size)
}
