// Package figures tells a pattern in numbers, for the cutting table: what is torn and cut
// first, where tucks and pleats lie, how long edges and seams are, how large the garment
// comes out, what trims, ruffles and bindings take, how much cloth to buy, how it was sewn
// and what to heed.
//
// In comes a checked pattern (garment.Pattern); out goes a report (mark.Report), which is
// set for a screen by marking/terminal and on paper by pdfout/report, or the same numbers
// as data ([JSON]). Nothing is checked or worked out here that a piece, a garment or a lay
// has worked out: lengths come as length.Amount, rounded as they are read, and are put
// into rows and sentences. How wide a column or a page is, is never known here.
//
//	figures.go       the report: its head, what to look at first, its sections in order
//	views.go         the figures of several views of a file, side by side
//	writer.go        how a length is written: in the unit of the file, or in all
//	cutlist.go       what is torn and cut
//	foldtable.go     tucks and pleats, on the flat cloth
//	depthtable.go    how deep they end
//	edgetable.go     edges, cut and sewn
//	seamtable.go     the two sides of a seam, whether they match, and how its ends go over it
//	measuretable.go  how large the finished garment is, and the child beside it
//	trimtable.go     trims, and what their tables have in common with the next two
//	reachtable.go    what trims and ruffles take round corners and curves
//	ruffletable.go   ruffles: their strips and joins
//	bindingtable.go  bias bindings
//	laypicture.go    cloth to buy, and the lay it was reckoned by
//	included.go      whether allowances are in the pieces
//	work.go          the order of work, from the sample to the last hem
//	ruled.go         how far apart fold lines are ruled, in a line of it
//	workseams.go     seams, and when a side is gathered
//	workhems.go      when hems are folded in
//	worksewn.go      what is sewn in its place or along edges, and how it is closed
//	workraw.go       which edges are raw when all of it is done
//	settings.go      how it was sewn, with lines to write on
//	caution.go       what is to be heeded, for a garment and for any sheets
//	cord.go          where a cord, a ribbon, a tie or a casing lies
//	nightwear.go     what counts as sleepwear, and which exemptions it may fall under
//	told.go          what is told of a line that is pointed at, wherever it is drawn
//	toldpiece.go     of a piece, its edges and what stands in them, its own lines
//	toldfold.go      of tucks and pleats, and of the block they are sewn in
//	notice.go        remarks and mistakes, with the lines that they are about
//	data.go          all of it as data
//	folddata.go      tucks and pleats as data
//	object.go        objects of JSON with their keys in order
//
// A figure is added where it is told: a row or a line in its table, and a key in data.go.
//
// Decided here:
//
//   - The keys of the data are a promise to scripts. So each stands in one place, data.go or
//     folddata.go, beside what it says, in the order in which it comes out, and not as a tag on a type of
//     garment or lay: there a change of name would be a change of the promise, and one list
//     would lie in six rooms. Only how a length itself looks, in mm and as it
//     is printed, is said in marking/length.
//   - Totals are sums of rounded parts: a maker adds up what she reads. What stands in
//     brackets, in the other system, is the nearest to the exact length, so those do not
//     add up: two sums of rounded parts would drift apart by millimetres over a row of tucks.
//   - A difference of the two sides of a seam is that of the exact lengths, for it is acted
//     upon; where that of the printed ones is another, the table says so.
//   - Whether a seam matches is said of its stitch lines. Cut edges of equal stitch lines
//     differ where their corners, or the allowances beside them, do; that is no fault.
//   - What each of many folds takes is told only where a ruler shows it and it adds up to
//     what all take; else the sum alone is told.
//   - Cautions follow from the words that the file uses. A garment whose size is not given
//     may be a child's.
package figures
