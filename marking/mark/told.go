package mark

import "tuckmark/marking/fault"

// Rules of this file: what is said beside a picture, of a line of it that is pointed at and of
// what somebody wrote. It is found by what the line is known by there, and all its lengths are
// printed already.

// At is what a line is known by among all that is drawn. The zero At is nowhere.
type At struct {
	Piece string // the key of the marking it lies in, or of the piece where that is drawn as sewn
	Line  string // what it is called there (Mark.Called); "" for the piece as a whole
}

// Told is what is said of a line that is pointed at, or of a piece as a whole.
type Told struct {
	At
	Title string // "neck, cutting line", "tuck 3 of yoke, fold line"
	Facts []Fact // in the order in which they are read
	// Places are where in the file it stands: of pieces that are alike the place of each, of
	// others one.
	Places []fault.Place
}

// Fact is one thing that is said of a line: a word, and what it comes to.
type Fact struct {
	What    string // "sewn"
	Value   string // "6 15/16 in"
	Warning bool   // it has to be looked at before cloth is cut
}

// Notice is what is said of a place of the file, a remark or a mistake, with the lines it is
// about.
type Notice struct {
	Text  string
	Hint  string      // what to do about it; "" for none
	Of    string      // what it is said of, in words: "Front, edge neck"; "" for the file as a whole
	Place fault.Place // where it stands; it may be nowhere
	// At are the lines that it is about, wherever each of them is drawn; none where the place
	// names none.
	At []At
}
