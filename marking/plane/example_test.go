package plane_test

import (
	"fmt"
	"math"
	"strings"

	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
)

// upright returns the line straight up at x, from one y to another.
func upright(x, from, to float64) plane.Path { return plane.Path{{X: x, Y: from}, {X: x, Y: to}} }

// rounded returns a path to the whole millimetre, to be printed.
func rounded(p plane.Path) string {
	var words []string
	for _, q := range p {
		words = append(words, fmt.Sprintf("%.0f,%.0f", q.X, q.Y))
	}
	return strings.Join(words, " ")
}

// A line 4 mm inside an edge, to its left as one walks along it. It is cut short in the
// hollow corner, and stays sharp where the edge turns away from it.
func ExampleOffset() {
	edge := plane.Path{{X: 0, Y: 20}, {X: 0, Y: 0}, {X: 24, Y: 0}, {X: 24, Y: 8}, {X: 44, Y: 8}}
	line, ok := plane.Offset(edge, 4, 0)
	fmt.Println(ok, rounded(line.Path))
	fmt.Println(sketch.Picture("#.", edge, line.Path))
	// Output:
	// true 4,20 4,4 20,4 20,12 44,12
	// #   .
	// #   .
	// #   .
	// #   .
	// #   .               .........................
	// #   .               .
	// #   .               .   #####################
	// #   .               .   #
	// #   .................   #
	// #                       #
	// #########################
}

// A belly behind a neck that is too narrow for the line is passed by, and that is told.
func ExampleOffset_pinched() {
	edge := plane.Path{{X: 0, Y: 24}, {X: 20, Y: 24}, {X: 20, Y: 18}, {X: 10, Y: 18}, {X: 10, Y: 0}, {X: 36, Y: 0}, {X: 36, Y: 18}, {X: 25, Y: 18}, {X: 25, Y: 24}, {X: 46, Y: 24}}
	line, _ := plane.Offset(edge, 4, 0)
	fmt.Println("pinched:", line.Pinched, "at", rounded(plane.Path{line.At}))
	fmt.Println(sketch.Picture("#.", edge, line.Path))
	// Output:
	// pinched: true at 24,28
	// ...............................................
	//
	// #####################    ######################
	//                     #    #
	//                     #    #
	//           ###########    ############
	//           #                         #
	//           #                         #
	//           #                         #
	//           #                         #
	//           #                         #
	//           #                         #
	//           #                         #
	//           #                         #
	//           ###########################
}

// A smooth curve through four points.
func ExampleCurve() {
	points := plane.Path{{X: 0, Y: 20}, {X: 8, Y: 4}, {X: 24, Y: 0}, {X: 40, Y: 12}}
	curve := plane.Curve(points, plane.Point{Y: -1}, plane.Point{})
	fmt.Println(sketch.Picture("*", curve))
	fmt.Printf("%.1f mm long\n", curve.Length())
	// Output:
	// *
	// *
	// **
	//  *
	//  **                                    **
	//   ***                                 **
	//     **                              ***
	//      ***                          ***
	//        ****                     ***
	//           *****            ******
	//               **************
	// 56.1 mm long
}

// Where two paths cross, and how far along each of them that is.
func ExampleCrossings() {
	a := plane.Path{{X: 0, Y: 4}, {X: 40, Y: 4}}
	b := plane.Path{{X: 4, Y: 0}, {X: 20, Y: 16}, {X: 36, Y: 0}}
	for _, c := range plane.Crossings(plane.NewTree(a), plane.NewTree(b)) {
		fmt.Printf("at %s: %.1f mm along the first, %.1f mm along the second\n", rounded(plane.Path{c.At}), c.A, c.B)
	}
	fmt.Println(sketch.Picture("-*", a, b))
	// Output:
	// at 8,4: 8.0 mm along the first, 5.7 mm along the second
	// at 32,4: 32.0 mm along the first, 39.6 mm along the second
	//                    ***
	//                  *** ***
	//                ***     ***
	//              ***         ***
	//            ***             ***
	//          ***                 ***
	// -------***---------------------***-------
	//      ***                         ***
	//     **                             **
}

// What of a path lies in a box comes in runs that know where on the path they begin.
func ExampleTree_Clip() {
	path := plane.Path{{X: 0, Y: 0}, {X: 20, Y: 20}, {X: 40, Y: 0}}
	box := plane.Box{Min: plane.Point{X: 6, Y: 2}, Max: plane.Point{X: 34, Y: 12}}
	for _, run := range plane.NewTree(path).Clip(box) {
		fmt.Printf("from %.1f mm on: %s\n", run.Start, rounded(run.Path))
	}
	sides := plane.Path{box.Min, {X: box.Max.X, Y: box.Min.Y}, box.Max, {X: box.Min.X, Y: box.Max.Y}, box.Min}
	fmt.Println(sketch.Picture(".*", sides, path))
	// Output:
	// from 8.5 mm on: 6,6 12,12
	// from 39.6 mm on: 28,12 34,6
	//                    ***
	//                  *** ***
	//                ***     ***
	//              ***         ***
	//       .....***.............***.....
	//       .  ***                 ***  .
	//       .***                     ***.
	//      ***                         ***
	//    ***.                           .***
	//  ***  .............................  ***
	// **                                     **
}

// The plane is folded at u = 12: a strip 8 mm wide goes under a flap of 4. What is to
// be a triangle once it is folded is unfolded: it has 8 mm more, and its sloping side
// turns back twice, so that all layers of the fold end on it. Between the two | lies the
// strip, its crease at the colons.
func ExampleFolding_Unfolded() {
	fold := plane.Fold{At: 12, Width: 4, From: math.Inf(-1), To: math.Inf(1)}
	folding := plane.NewFolding(plane.Point{}, plane.Point{X: 1}, []plane.Fold{fold})
	shape := plane.Path{{X: 0, Y: 0}, {X: 32, Y: 0}, {X: 32, Y: 16}, {X: 0, Y: 0}}
	fmt.Println("folded:")
	fmt.Println(sketch.Picture("#|", shape, upright(12, 0, 6)))
	fmt.Println("flat:")
	for _, flat := range folding.Unfolded(shape) {
		fmt.Println(sketch.Picture("#|:|", flat.Path, upright(12, 0, 6), upright(16, 0, 8), upright(20, 0, 6)))
	}
	// Output:
	// folded:
	//                               ###
	//                           ##### #
	//                       #####     #
	//                   #####         #
	//               #####             #
	//           ##|##                 #
	//       ##### |                   #
	//   #####     |                   #
	// ############|####################
	// flat:
	//                                       ###
	//                                   ##### #
	//                               #####     #
	//                           #####         #
	//               ##:##   #####             #
	//           ##|## : ##|##                 #
	//       ##### |   :   |                   #
	//   #####     |   :   |                   #
	// ############|###:###|####################
}

// The same strip, folded only above v = 8: below that it is open, and the bottom of a
// rectangle is spread straight by as much as the fold takes.
func ExampleFold() {
	fold := plane.Fold{At: 12, Width: 4, From: 8, To: math.Inf(1)}
	folding := plane.NewFolding(plane.Point{}, plane.Point{X: 1}, []plane.Fold{fold})
	flat := folding.Unfolded(plane.Path{{X: 0, Y: 0}, {X: 30, Y: 0}, {X: 30, Y: 16}, {X: 0, Y: 16}, {X: 0, Y: 0}})[0].Path
	fmt.Println(sketch.Picture("#|:|", flat, upright(12, 8, 16), upright(16, 8, 16), upright(20, 8, 16)))
	fmt.Println("bottom of the flat shape:", rounded(flat[:2]))
	fmt.Println("its strip drawn in:", rounded(folding.DrawnInPath(flat[:2])))
	// Output:
	// ############|###:###|##################
	// #           |   :   |                 #
	// #           |   :   |                 #
	// #           |   :   |                 #
	// #           |   :   |                 #
	// #                                     #
	// #                                     #
	// #                                     #
	// #######################################
	// bottom of the flat shape: 0,0 38,0
	// its strip drawn in: 0,0 12,0 30,0
}
