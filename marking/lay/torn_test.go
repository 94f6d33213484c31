package lay

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// On cloth 36 in wide. Beside a block 18 in wide and 15 in long there are 18 in by 15
// in left.
func TestLayBesideTorn(t *testing.T) {
	const block = "block: 0,0 18,0 18,15 0,15 | torn\n"
	for _, c := range []struct{ name, items, want string }{
		{"both backs: 8 + 1/8 + 8", block + "back: 0,0 8,0 8,14 0,14 | cut 2",
			`single, 0 to 15
			block: 0,0 18,15
			back: 18,0 26,14
			back: 26.125,0 34.125,14`},
		{"a torn edge and a selvage need no room", block + "panel: 0,0 18,0 18,15 0,15",
			`single, 0 to 15
			block: 0,0 18,15
			panel: 18,0 36,15`},
		{"too wide by 1/10 in", block + "panel: 0,0 18.1,0 18.1,15 0,15",
			`single, 0 to 30
			block: 0,0 18,15
			panel: 0,15 18.1,30`},
		{"it would cross the torn edge by 1/10 in", block + "panel: 0,0 8,0 8,15.1 0,15.1",
			`single, 0 to 30.1
			block: 0,0 18,15
			panel: 0,15 8,30.1`},
		{"one after the other within the strip: 7 3/8 + 1/8 + 7 1/2", block + "yoke: 0,0 10,0 10,7.5 0,7.5\ncollar: 0,0 10,0 10,7.375 0,7.375",
			`single, 0 to 15
			block: 0,0 18,15
			yoke: 18,0 28,7.5
			collar: 18,7.625 28,15`},
		{"1/16 in more, and the second would cross the torn edge", block + "yoke: 0,0 10,0 10,7.5 0,7.5\ncollar: 0,0 10,0 10,7.4375 0,7.4375",
			`single, 0 to 22.438
			block: 0,0 18,15
			yoke: 18,0 28,7.5
			collar: 0,15 10,22.438`},
		{"two of three find room: none is cut there", block + "back: 0,0 8,0 8,14 0,14 | cut 3",
			`single, 0 to 15
			block: 0,0 18,15
			folded, 15 to 29
			back: 0,15 8,29
			back: 8.125,15 16.125,29 out of the upper layer`},
		{"and the room is left to a shorter one", block + "back: 0,0 8,0 8,14 0,14 | cut 3\nfront: 0,0 18,0 18,13 0,13",
			`single, 0 to 15
			block: 0,0 18,15
			front: 18,0 36,13
			folded, 15 to 29
			back: 0,15 8,29
			back: 8.125,15 16.125,29 out of the upper layer`},
		{"the longest has the first choice", block + "a: 0,0 10,0 10,9 0,9\nb: 0,0 10,0 10,10 0,10",
			`single, 0 to 24
			block: 0,0 18,15
			b: 18,0 28,10
			a: 0,15 10,24`},
		{"a piece on the fold is opened out", block + "front: 0,0 8,0 8,14 0,14 | fold 0,0 0,14",
			`single, 0 to 15
			block: 0,0 18,15
			front: 18,0 34,14`},
		{"opened out, it is too wide by 1/10 in", block + "front: 0,0 9.05,0 9.05,14 0,14 | fold 0,0 0,14",
			`single, 0 to 15
			block: 0,0 18,15
			folded, 15 to 29
			front: 0,15 9.05,29 on the fold`},
		{"one beside each of two strips", "block: 0,0 20,0 20,9 0,9 | torn; cut 2\nsleeve: 0,0 9,0 9,9 0,9 | cut 2",
			`single, 0 to 18
			block: 0,0 20,9
			block: 0,9 20,18
			sleeve: 20,0 29,9
			sleeve: 20,9 29,18`},
		{"beside both strips there is room for two of three", "block: 0,0 20,0 20,9 0,9 | torn; cut 2\nsleeve: 0,0 10,0 10,9 0,9 | cut 3\ncuff: 0,0 16,0 16,5 0,5",
			`single, 0 to 27
			block: 0,0 20,9
			block: 0,9 20,18
			cuff: 20,0 36,5
			sleeve: 0,18 10,27
			sleeve: 10.125,18 20.125,27
			sleeve: 20.25,18 30.25,27`},
		{"beside the shorter of two torn things, not over it", "a: 0,0 12,0 12,10 0,10 | torn\nb: 0,0 12,0 12,4 0,4 | torn\ncuff: 0,0 12,0 12,10 0,10\ncollar: 0,0 12,0 12,5 0,5",
			`single, 0 to 15
			a: 0,0 12,10
			b: 12,0 24,4
			cuff: 24,0 36,10
			collar: 0,10 12,15`},
		{"as long as the longest thing torn from the strip", "b: 0,0 12,0 12,4 0,4 | torn\na: 0,0 12,0 12,10 0,10 | torn\ncuff: 0,0 12,0 12,10 0,10",
			`single, 0 to 10
			a: 0,0 12,10
			b: 12,0 24,4
			cuff: 24,0 36,10`},
		{"beside the second strip, where nothing is left of the first", "ruffle: 0,0 36,0 36,6 0,6 | torn\nbinding: 0,0 30,0 30,5 0,5 | torn\ntab: 0,0 2,0 2,5 0,5",
			`single, 0 to 11
			ruffle: 0,0 36,6
			binding: 0,6 30,11
			tab: 30,6 32,11`},
		{"what is folded lies after the strip", block + "back: 0,0 8,0 8,14 0,14 | cut 2\nskirt: 0,0 16,0 16,20 0,20 | fold 0,0 0,20",
			`single, 0 to 15
			block: 0,0 18,15
			back: 18,0 26,14
			back: 26.125,0 34.125,14
			folded, 15 to 35
			skirt: 0,15 16,35 on the fold`},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, unindented(c.want), told(layOut(toCut(t, c.items), 36*25.4)))
		})
	}
}
