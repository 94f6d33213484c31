package piece_test

import (
	"fmt"

	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/source"
)

// pieceOf works out the piece of a sketch in mm, with an allowance of 3 mm.
func pieceOf(text string) *piece.Piece {
	spec, err := source.Read("doll.toml", []byte("unit = \"mm\"\nallowance = 3\n"+sketch.Front(text)), sketch.HasLetter)
	if err != nil {
		panic(err)
	}
	found := &piece.Findings{Unit: spec.Unit.V}
	front := piece.Check(spec.Pieces[0], spec, found)
	if len(found.List) > 0 {
		panic(found.List.Sorted())
	}
	return front
}

// The stitch line of an armhole lies 3 mm inside it, and ends where it meets those of the
// shoulder and of the side; what is sewn of it is shorter than what is cut.
func ExampleCheck() {
	front := pieceOf(`fold = "centre"
centre: 0,0 0,40
neck: 0,40 16,46
shoulder: 16,46 36,42
armhole: 36,42 32,36 32,28 40,20 | smooth = true
side: 40,20 40,0
hem: 40,0 0,0`)
	armhole := front.Edges[front.EdgeNumber("armhole")]
	fmt.Printf("cut %.1f, sewn %.1f\n", armhole.Path.Length(), armhole.Sewn.Length())
	fmt.Println(sketch.Picture("#.", front.Outline, armhole.Line))
	// Output:
	// cut 27.1, sewn 25.6
	//              #########
	//         ######       ###########
	//    ######                      ..####
	// ####                          .. ###
	// #                            .. ##
	// #                            .  #
	// #                           .. ##
	// #                           .  #
	// #                           .. ##
	// #                            .  #
	// #                            .. ##
	// #                             .. ###
	// #                              ... ####
	// #                                ...  ###
	// #                                  .....#
	// #                                      ..
	// #                                       #
	// #                                       #
	// #                                       #
	// #                                       #
	// #                                       #
	// #                                       #
	// #                                       #
	// #########################################
}

// A front with two tucks of 3 mm, drawn as it is when it is finished; and as it lies on
// the flat cloth, 12 mm wider, with the creases and the stitching of its tucks. Where they
// meet the slanted edge it is cut as though through the folded cloth.
func ExamplePiece_flat() {
	front := pieceOf(`drawn = "finished"
centre: 0,0 0,12
top: 0,12 40,22
side: 40,22 40,0
hem: 40,0 0,0
---

[tuck.t]
beside = "centre"
width = 3
count = 2
first = 11
gap = 5
`)
	inks, lines := "#", []plane.Path{front.Flat.Outline.Path}
	for _, m := range front.FoldMarks() {
		lines = append(lines, m.Path)
		if m.Role == mark.TuckFold {
			inks += ":"
		} else {
			inks += "."
		}
	}
	fmt.Println(sketch.Picture("#", front.FinishedOutline))
	fmt.Println(sketch.Picture(inks, lines...))
	// Output:
	// #####
	//                             #########   #
	//                     #########           #
	//             #########                   #
	//     #########                           #
	// #####                                   #
	// #                                       #
	// #                                       #
	// #                                       #
	// #                                       #
	// #                                       #
	// #########################################
	//                                                 #####
	//                                         #########   #
	//                                 #########           #
	//                   ####.##:##.####                   #
	//     ####.##:##.####   .  :  .                       #
	// #####   .  :  .       .  :  .                       #
	// #       .  :  .       .  :  .                       #
	// #       .  :  .       .  :  .                       #
	// #       .  :  .       .  :  .                       #
	// #       .  :  .       .  :  .                       #
	// #       .  :  .       .  :  .                       #
	// ########.##:##.#######.##:##.########################
}
