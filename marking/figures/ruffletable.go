package figures

import (
	"fmt"
	"strings"

	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
)

// Rules of this file: strips are told as they are torn and cut, with all seams in; joins by
// where they fall along the edge, which is what is pinned.

// ruffleTable is the table of a ruffle, for so many garments: none shares a strip with
// another.
func ruffleTable(r garment.Ruffle, garments int, w writer) mark.Table {
	table := courseTable(r.Key+", ruffle "+w.length(r.Depth)+" deep", r.SewnOn, w)
	full := length.Factor(r.Fullness) + " times that, ungathered"
	if r.Fullness == 1 {
		full = "as long as that, ungathered"
	}
	table.Add(full, "", "", w.cell(r.Gathered))
	if r.Uneven() {
		addBends(&table, r.Reach, w)
		table.AddTotal("in all, ungathered", "", "", w.cell(r.Length))
	}
	lines := &table.Lines
	if text := r.FullnessWarning(); text != "" {
		lines.Warn("%s", text)
	}
	lines.Say("tear strips %s", ruffleDepths(r, w))
	ends := ""
	if r.Joining.MM > 0 {
		ends = fmt.Sprintf(", %s for a seam or a hem at each end included", w.length(r.Joining))
	}
	switch {
	case r.Strips == 1:
		lines.Say("1 strip across the cloth is enough; cut it %s long%s", w.length(ruffleStrip(r)), ends)
	case r.Strips > 1:
		lines.Say("%d strips across the cloth; cut each %s long%s, and join them", r.Strips, w.length(ruffleStrip(r)), ends)
	default:
		lines.Warn("the width of the cloth is not given, so its strips cannot be counted")
	}
	if garments > 1 && r.Strips > 0 {
		lines.Say("for %d garments, tear %d strips", garments, garments*r.Strips)
	}
	switch {
	case r.Uneven() && r.Strips > 1:
		lines.Say("%s", unevenJoins(r))
	case len(r.JoinPlaces) > 0:
		lines.Say("%s", joinsFall(r, w))
	}
	if r.Apart > 0 {
		lines.Say("it is reckoned as one length; on %d edges that lie apart it is %d ruffles, each %s long ungathered, with %s more at each end for a hem",
			r.Apart, r.Apart, w.length(r.EachApart()), w.length(r.Joining))
	}
	if r.CutsOneInTwo() {
		lines.Say("cut one strip %s longer, and in two, for the two ends", w.length(r.Joining.Times(2)))
	}
	sayReach(lines, r.Reach, "gathered close there, within the depth of the ruffle on either side", "gathered in along it", w)
	more := ""
	if r.Uneven() {
		more = ", and as much more as is added between two marks"
	}
	lines.Say("quarter both and match the marks: the edge every %s, the ruffle every %s%s", w.length(r.LineLength.Quarter()), w.length(r.Gathered.Quarter()), more)
	return table
}

// ruffleStrip is how long each strip is cut, so that the joins fall where they are told: all of
// them alike, with a joining seam at either end.
func ruffleStrip(r garment.Ruffle) length.Amount {
	return r.Length.Unit.AtLeast(r.Length.Enough() / float64(r.Strips)).Plus(r.Joining.Times(2))
}

// mostJoins is how many joins are listed one by one.
const mostJoins = 8

// ruffleDepths says how deep the strips are torn, and what that is made of.
func ruffleDepths(r garment.Ruffle, w writer) string {
	parts := w.length(r.Depth) + " finished"
	for _, part := range []struct {
		length.Amount
		name string
	}{{r.Hem, "hem"}, {r.Turn, "turned in"}, {r.Seam, "seam"}} {
		if part.MM > 0 {
			parts += ", " + w.length(part.Amount) + " " + part.name
		}
	}
	text := w.length(r.CutDepth) + " deep: " + parts
	if r.CutDepth.MM == r.Depth.MM {
		text += ", nothing for a hem or a seam"
	}
	return text
}

// joinsFall says where the joins of a ruffle, of which there are some, come to lie.
func joinsFall(r garment.Ruffle, w writer) string {
	inner, last := r.JoinPlaces, ""
	if r.Closes() {
		inner, last = r.JoinPlaces[:len(r.JoinPlaces)-1], "where it begins"
		if r.Centre != "" {
			last = "halfway round"
		}
	}
	if len(inner) == 0 {
		if r.Centre == "" {
			return "the join falls where the edge begins"
		}
		return fmt.Sprintf("the join falls halfway round from the fold of %s, where the middle of the strip comes", r.Centre)
	}
	var places []string
	for _, at := range inner[:min(len(inner), mostJoins)] {
		places = append(places, w.length(at))
	}
	list := "joins fall " + strings.Join(places, ", ")
	switch {
	case len(inner) > mostJoins:
		list += " and so on"
	case len(inner) == 1 && r.Centre == "" && last == "":
		list = "a join falls " + places[0]
	}
	text := list + " " + ruffleFrom(r)
	if last != "" {
		text += "; the last falls " + last
	}
	return text
}

// unevenJoins says of the joins of an uneven ruffle what is known of them.
func unevenJoins(r garment.Ruffle) string {
	text := "begin where the edge does"
	if r.Centre != "" {
		text = fmt.Sprintf("begin with the middle of a strip at the fold of %s", r.Centre)
	}
	text += "; where joins fall shows when it is pinned, for strips go less far where something is added"
	switch {
	case !r.Closes():
		return text
	case r.Centre == "":
		return text + "; the last falls where it begins"
	}
	return text + "; the last falls halfway round"
}

// ruffleFrom says where the places of joins are measured from.
func ruffleFrom(r garment.Ruffle) string {
	if r.Centre == "" {
		return "along the edge from where it begins"
	}
	return fmt.Sprintf("along the edge, to either side of the fold of %s; pin the middle of a strip there", r.Centre)
}
