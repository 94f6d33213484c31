package mark

// Task is one step of the work from the first page to the finished garment.
type Task struct {
	Do     string   // what is done, in few words: "Tear the block for Front, and press it"
	Number string   // the one number it is done to: "17 3/4 in by 15 in"; "" where it has none
	Keys   []string // of the markings it is done with, whose pages are told beside it
	// Roles are those of the lines it is done along, and Lines what these are called: only
	// pages with such a line are told; nil for any.
	Roles []Role
	Lines []string
	// Section heads the figures it is done by, whose pages are told as well; "" for none.
	Section string
}
