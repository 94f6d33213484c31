package mark

// Kind says what a marking is for: in this order they are used, printed and numbered.
type Kind int

// The kinds of markings, in the order of their use.
const (
	Sample       Kind = iota // tucks to be sewn on a scrap first
	TuckSheet                // the block, as it is torn and tucked
	TuckRuler                // ticks for the lines of that block
	CuttingSheet             // the finished piece, to be cut from its block
	Piece                    // a piece, to be cut from flat cloth
	Template                 // paper to draw along and through
	Gauge                    // card to draw along
	Grid                     // ruled paper, to read places from
)

// OfCard reports whether what is drawn is cut out of card: it shares a page with nothing
// but others of that kind.
func (k Kind) OfCard() bool { return k == Gauge }

// CutOut reports whether what is drawn is cut out along its lines, so that nothing may
// be told outside of them.
func (k Kind) CutOut() bool { return k == Template || k == Gauge }

// Ruled reports whether what is drawn is ruled paper: it lies as it is read, and its lines have
// their numbers in them.
func (k Kind) Ruled() bool { return k == Grid }

// Side is the side of a marking, or of the cloth under it, that lies up.
type Side int

// The sides.
const (
	EitherSide  Side = iota // it does not matter, or is not known
	RightSideUp             // the right side of the cloth is marked
	WrongSideUp             // the wrong side of the cloth is marked
)

var sideNames = [...]string{"", "right side up", "wrong side up"}

// String names the side as it is printed; "" where it does not matter.
func (s Side) String() string { return sideNames[s] }
