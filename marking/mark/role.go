package mark

// Role says what a line is for, and with that how it is drawn. Drawing knows nothing else
// of it.
type Role int

// The roles, in the order in which the line key lists them.
const (
	Cut        Role = iota // the cut outline, edge by edge
	FoldEdge               // an edge of the outline that lies on the fold of the cloth
	Stitch                 // where a seam is sewn or lace is laid
	Fold                   // a hem or placket is folded here
	Centre                 // a centre line inside the piece
	TuckFold               // the crease of a tuck
	TuckStitch             // the stitching of a tuck
	TuckEnd                // tucks are stitched as far as this
	PleatFold              // the crease of a pleat
	Placement              // something is laid to this: the crease of a pleat
	Arrow                  // which way a pleat is folded, from crease to placement, or tucks are pressed
	Notch                  // a short mark across an edge, matched with another
	Grain                  // the direction of the cloth's threads
	BlockEdge              // an edge of the cloth as it is torn, before anything is cut
	Cross                  // a cross on the centre line, to be laid on one on the cloth
	Match                  // a short mark at an edge, laid on the same one of another sheet
	Window                 // an opening that is cut in a template
	Waste                  // what is cut away: its path is closed, and what it holds is hatched
	DrawHere               // an arrow to the side of a window along which the line is drawn
	Laid                   // a side of a card that lies on the cut edge: one stroke of its hatching
	Prick                  // where a line is pricked through: the points of its path, two or more, are the places
	RuledFine              // the finest lines of ruled paper, under all others
	RuledHalf              // those half way between its whole ones
	RuledWhole             // whole ones, whose names are their numbers
	roleCount
)

var roleNames = [roleCount]string{
	"cutting line", "place on the fold", "stitch line", "fold line", "centre line",
	"tuck fold", "tuck stitching", "end of tucks", "pleat fold", "placement line",
	"fold or press this way", "notch", "grain line", "edge of the block", "cross mark",
	"match mark", "window to be cut", "cut away", "draw on this side",
	"lay on the cut edge", "prick here",
	"finest ruled line", "half-way ruled line", "whole ruled line",
}

// String gives the name of the role as the line key prints it.
func (r Role) String() string { return roleNames[r] }

// OnRuledPaper reports whether a line is one of ruled paper: it lies under all others, and what
// is written there stands on it.
func (r Role) OnRuledPaper() bool { return r >= RuledFine && r <= RuledWhole }

// Roles returns every role, in the order of the line key.
func Roles() []Role {
	all := make([]Role, roleCount)
	for i := range all {
		all[i] = Role(i)
	}
	return all
}
