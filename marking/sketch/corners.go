package sketch

// PlacketAboveSeam is the centre back of a dress in two edges: a placket, hemmed wide,
// above a seam. An X stands for how far across the seam ends.
const PlacketAboveSeam = "placket: 0,15 0,9 | hem = 1; turn = 0.25\nseam: 0,9 X,0\nhem: X,0 9,0\nside: 9,0 8,15\ntop: 8,15 0,15"

// Six corners as they are sewn on children's clothes, straight, so that each length
// follows by hand.
const (
	RaglanSleeve = "wrist: 0,0 8,0 | hem = 1; turn = 0.25\nunder 1: 8,0 9,5\nraglan 1: 9,5 5.5,11.5\n" +
		"neck: 5.5,11.5 2.5,11.5 | allowance = 0.25\nraglan 2: 2.5,11.5 -1,5\nunder 2: -1,5 0,0"
	KimonoBack = "fold = \"centre\"\ncentre: 0,13 0,0\nhem: 0,0 7,0 | hem = 1; turn = 0.25\nside: 7,0 6,8\nunderarm: 6,8 11,9 | allowance = 0.375\n" +
		"wrist: 11,9 10.5,12.5 | hem = 0.75\noverarm: 10.5,12.5 2.5,14\nneck: 2.5,14 1.2,13.1 0,13 | smooth = true; allowance = 0.25"
	Slashed = "top: 9,10 0,10\nleft: 0,10 0,0\nhem: 0,0 8,0\nside: 8,0 8,5\nbelow: 8,5 5,6 | allowance = 0.25\n" +
		"above: 5,6 8.2,5.9 | allowance = 0.25\nsleeve: 8.2,5.9 9,10"
	GussetDiamond = "a: 0,-3 1.5,0\nb: 1.5,0 0,3\nc: 0,3 -1.5,0\nd: -1.5,0 0,-3"
	BareBib       = "fold = \"centre\"\ncentre: 0,0 0,6\nneck: 0,6 2,7.6 2.2,9 | allowance = 0\nstrap: 2.2,9 3.4,9 | allowance = 0.375\n" +
		"outer: 3.4,9 3.6,6 4.5,0 | allowance = 0\nwaist: 4.5,0 0,0"
	FlatSetCollar = "fold = \"back\"\nback: 0,3 0,0\nneck: 0,0 5.5,1.3 | allowance = 0.375\nfront: 5.5,1.3 6.8,4.4 | allowance = 0.25\nouter: 6.8,4.4 0,3 | allowance = 0.25"
)
