// Package gauge makes the cards of a pattern: what is cut out of card once and laid on
// the cloth again and again, where a ruler is no help or is slow.
//
// In comes a checked pattern (garment.Pattern); out go markings (mark.Marking) whose
// outline is what is cut, side by side. Nothing here knows paper, and nothing is checked
// again. A card lies level, and is no larger than what is held with one hand.
//
//	gauge.go      which gauges there are; what a card is
//	edgegauge.go  a gauge for a marked edge, and those it does for as well
//	strip.go      the strip along an edge, divided into parts that overlap
//	handle.go     a strip as it is cut out: its handle, its hatching, its ends
//	edgeshape.go  whether one gauge does for two edges
//	stepgauge.go  one step for every distance from a straight edge
//	tuckgauge.go  where a tuck is stitched and where the next one is folded
//	work.go       what is done with all of them
//
// A new gauge gives its sides to card, so that its outline is what is cut, and has its
// place in Of.
//
// Decided here:
//
//   - An edge gauge is of the edge as it is drawn. Edges share one that are the same
//     within 0.1 mm, by turning and not by mirroring, since a card has a face.
//   - Twin-needle tucks have no gauge: their stitching lies on the fold line.
//   - The second step of a tuck gauge is w + g from the end (w the width of a tuck, g the
//     gap between them): with the sewn tuck laid over toward the next, the next stitching
//     lies g beyond its fold, and the next fold w beyond that.
package gauge
