// Package plane is the plane geometry that marking stands on: points, paths, curves
// through points, offsets, crossings, clipping and folding.
//
// What comes in are points and paths, lengths in millimetres, and folds as strips of the
// plane. What comes out are points and paths again, with where on a path they lie. What
// is never known here: cloth, sewing, paper, units, names and messages. Where something
// cannot be had it says so by a value, and the caller, who knows what the path stands for,
// finds the words.
//
// Lengths are in mm, x runs to the right, y runs up, angles are in radians and turn
// counter-clockwise; left and right are as one walks along a path.
//
// In general:
//
//   - Every function takes finite coordinates; whoever reads numbers from outside refuses
//     NaN and infinity before they come here. Then none panics, whatever the path.
//   - A path without points, or without length, gives what is said there: mostly nothing.
//     Points that repeat their predecessor are allowed everywhere.
//   - A place on a boundary belongs to it: sides of a box count as inside, and paths that
//     touch cross. Only whether a closed path holds a place on itself is not said.
//   - A place d along a path is brought into it: before the start lies the start, and
//     beyond the end the end.
//   - No path that was given is changed, and one that comes out may be one that came in:
//     neither is changed afterwards by anybody. A Skyline is filled, and a Folding is told
//     over which shape it lies; every other value stays as it was made.
//   - What is worked out in two ways may differ by rounding. Places nearer than touch
//     (1e-9 mm) are one; what an offset promises, it keeps to a millionth of a millimetre.
//
// Where an idea lives:
//
//	point.go      a place, and a step
//	path.go       a line from point to point: length, area, places along it, parts of it
//	box.go        an upright rectangle
//	curve.go      the smooth curve through points
//	tree.go       the segments of a path near a place, without looking at all of them
//	clip.go       what of a path lies in a box
//	crossing.go   where two paths, or one with itself, cross
//	offset.go     the line at a distance beside a path
//	hollow.go     1st, hollows crowded with points are bridged
//	raw.go        2nd, the line is drawn beside every segment and corner
//	parts.go      3rd, it is cut, and joined from what keeps the distance
//	fold.go       parallel folds: where the flat plane comes to lie
//	unfold.go     and back: what comes to lie on a path
//	halfplane.go  what of a path lies on one side of a line, and its mirror image
//	skyline.go    shapes laid on one another in a band
package plane
