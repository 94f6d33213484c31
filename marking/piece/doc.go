// Package piece works out one piece of a garment: every line on it, as the file has it, as
// it lies flat, and as it is when it is finished.
//
// In comes a source.PieceSpec, as written, with the Spec it stands in: its unit, the
// allowance that counts where an edge gives none, the width of the cloth, beyond which no
// block goes, and the keys of the other pieces, since an open outline may come from a slip
// in one. Out comes a Piece, or mistakes with their places, in Findings. What other pieces
// look like, sheets and paper are never known here. Only CheckNames looks at all pieces: no
// two may be called alike.
//
// [Check] leads the way, from top to bottom, and each stage is a value that the next one
// takes as it is; only the ends of stitch lines are ruled on (corner.go) when the ring of
// all that is sewn is known:
//
//	Edges, Lines, EdgePleats  read off the file, with their stitch lines
//	AsDrawn                   a Shape: all of that as marks
//	TuckRows, PleatRows       rows of folds, beside the lines they are measured from
//	FoldGroup, FlatGroup      rows that run one way, and where they lie on the flat cloth
//	Flat                      a Shape: what is cut, and all its lines but those of folds
//	FinishedOutline, lengths  what is left when the folds are in
//
// In reading order:
//
//	check.go, piece.go            the stages; what a piece is
//	bounds.go                     how much is worked out at most
//	findings.go, names.go         mistakes; what things are called, and likely meant to be
//	follow.go                     edges that follow one beside them that is drawn anew
//	outline.go, walk.go           edges chained to one outline; along one from a corner
//	missingspace.go               outlines that close with a space more in a fraction
//	smoothcurve.go                a smooth edge, as it was drawn
//	usualallowance.go             that of edges which give none: where it stands, and that it is too wide
//	allowance.go, cutoutline.go   allowances; what is cut where stitch lines are drawn
//	keepstofold.go                what lies on the fold lies on one side of it
//	pen.go                        a straight line that was traced
//	arc.go                        an edge or a line about a centre
//	stitch.go, corner.go          the stitch line of an armhole, as of any edge; where it ends
//	sewn.go, inside.go            all that is sewn, as one ring; what of a line lies inside
//	line.go, notch.go, grain.go   what a maker asked for
//	besideline.go                 a line at a distance from a straight edge, or another line
//	grainguess.go                 the grain of a piece whose file does not say it
//	lineends.go, nearedge.go      lines that run to an edge, or end a little beyond one
//	edgepleat.go, pleatarrow.go   pleats in an edge; the arrow of every pleat
//	marks.go, measures.go         which lines are marks, in what role; what is measured to them
//	frame.go, baseline.go         u and v; the line that folds are measured from
//	foldrow.go, foldend.go        folds made alike; where they end
//	rowname.go                    what a row of them is called
//	hung.go                       the edges that folds hang from
//	foldbetween.go                folds from line to line, or from an edge to a line
//	folddepth.go                  how deep that is, from what a ruler is laid to
//	tuckrow.go, tucksample.go     what a file says of tucks; what a sample says they take
//	tuckgroups.go                 tucks in groups
//	tuckfield.go                  how far tucks reach along the neck, and how many fill it
//	letdown.go                    tucks that are let down when the child has grown
//	pleatrow.go                   what a file says of pleats across a piece
//	folds.go                      from rows to flat and finished, by one of two ways:
//	drawnflat.go                  by folding
//	drawnfinished.go, shape.go    by unfolding every line through every layer
//	foldgroup.go, foldorder.go    where folds lie
//	ring.go, finished.go          an outline that knows its edges; lengths with folds in
//	foldedsize.go                 what a piece measures with folds in, and at what level
//	across.go                     how wide the finished piece is at a level
//	takeup.go                     cloth taken twice
//	remark.go                     what a teacher would point at
//	foldremark.go                 of tucks and pleats
//	laidover.go                   tucks that lie under what is sewn along a line
//	inallowance.go, pleatinallowance.go
//	                              tucks, and pleats in an edge, that a seam takes in
//	stepremark.go                 of steps that folds leave in a slanting edge
//	hemremark.go, hemfoldremark.go, placketremark.go
//	                              of what a hem folds back, and of where a placket ends
//	curveremark.go                of points of a curve that may be misread
//	sizeremark.go                 of what is too large for the piece
//	block.go, blockplaces.go      the rectangle that is tucked before the piece is cut
//	blockmeasured.go              what it measures when it is
//	halves.go, rectangle.go       a piece on the fold; one that is torn
//	hang.go                       which way a row of folds runs to its ends
//	worn.go                       on which side of the body a piece is worn
//	farthest.go                   how long a finished piece is from an edge
//
// A mark that is new gets a file that fills a field of Piece, a line in Check, and one in
// marks.go; then every sheet has it.
//
// Decided:
//
//   - The two lines of a pleat are parallel, also in a curved edge: equally deep all the way.
//   - Short pleats in an edge are part of an outline drawn finished: room for one would have
//     to be made across the whole piece.
//   - Below the line at which a fold ends it is open, as cloth lies that is let out of a tuck.
//   - A row beside the fold of the cloth is unfolded together with its image on the other
//     half, so that a tuck may lie on the centre itself.
//   - A piece with a block is drawn finished and its folds run one way: it is cut after it
//     is tucked, so nothing else could be cut from it.
//   - Take-ups may touch; those that overlap are refused, for cloth folds only once.
package piece
