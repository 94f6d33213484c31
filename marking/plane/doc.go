// Package plane is the geometry that everything else is drawn with: points and paths in
// mm, smooth curves, what crosses what, lines beside a path, and the plane folded and
// unfolded.
//
// Points, and directions of length 1, come in; paths go out. A curve is a path of short
// straight pieces from the first, so all that follows knows straight lines alone. What a
// path stands for is never known here: no edge, cloth, paper or file. A seam is in this
// room the line on which both sides of a folded strip come to lie (Folding.Seam), sewn or
// not.
//
//	point.go, box.go, path.go  what everything is made of
//	tree.go, ground.go         finding the segments near a place, of one long path
//	crossing.go, clip.go       where two paths meet, and what of one lies in a box
//	curve.go                   a smooth curve through points
//	arc.go                     a circle's arc
//	rough.go                   a line that was traced, without its roughness
//	offset.go                  the line beside a path, by the three that follow
//	hollow.go                  what is crowded with points is bridged
//	raw.go                     the line beside every part of the path
//	parts.go                   what of that counts, joined
//	fold.go, unfold.go         the plane folded along parallel lines; what comes to lie where
//	cell.go                    the parts that folding moves as they are, and lays on each other
//	longway.go                 where an area has its middle, and which way most of it lies
//	halfplane.go               what of a path lies to one side of a line, and mirrored
//
// Decisions that hold throughout:
//
//   - A curve is a cubic spline over the distance from point to point whose ends carry on
//     the bend of their neighbours. A natural end is flat, which takes 1.4 mm off a quarter
//     circle of 100 mm through four points; this one is within 0.2 mm. A parameter over the
//     square root of the distance swings less beside uneven points, but follows a circle
//     much worse.
//   - An offset keeps the corners of its path sharp, for a stitch line is ruled with
//     straight edges, and passes round what is only rough. What it would lose in silence
//     (a strap, a tab, a region behind a neck) it tells.
//   - An offset takes time and memory in proportion to n log n, also of a path that is rough
//     all over. Only a path that crosses itself thousands of times takes longer; look for
//     that first (SelfCrossing).
//   - A point exactly on a seam, a crease or an end of a fold counts as lying on the side of
//     greater u or v, for every fold alike. So what touches a fold never cuts it, and a
//     closed outline always gives closed outlines.
//   - Parts are joined by what they were cut at, never by looking for ends that lie close.
//   - A tolerance has a name, in mm, and stands in the file whose rule it belongs to.
package plane
