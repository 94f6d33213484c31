package sketch_test

import (
	"fmt"

	"tuckmark/marking/sketch"
)

func ExampleFront() {
	fmt.Print(sketch.Front(`fold = "centre"
centre: 0,0 0,10
rest: 0,10 6,0 0,0 | allowance = 0.25; marked = true
---

[notch.one]
edge = "rest"
`))
	// Output:
	// [piece.front]
	// fold = "centre"
	// [piece.front.edge."centre"]
	// points = [[0,0], [0,10]]
	//
	// [piece.front.edge."rest"]
	// points = [[0,10], [6,0], [0,0]]
	// allowance = 0.25
	// marked = true
	//
	// [piece.front.notch.one]
	// edge = "rest"
}
