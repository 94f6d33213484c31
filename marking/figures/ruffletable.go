package figures

import (
	"fmt"
	"strings"

	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/wording"
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
	first := r.Lengths[0]
	var strands []garment.Strand
	for _, l := range r.Lengths {
		strands = append(strands, l.Strand)
	}
	table.Add(inAll(full, strands, first.Gathered, r.Gathered, w)...)
	if r.Takes().Steps > 0 {
		addBends(&table, r.Reach, w)
		table.AddTotal(inAll("in all, ungathered", strands, first.Length, r.Length, w)...)
	}
	lines := &table.Lines
	if text := r.FullnessWarning(); text != "" {
		lines.Warn("%s", text)
	}
	sayUnprinted(lines, r.SewnOn, "the strips are long enough for that", w)
	lines.Say("tear strips %s", ruffleDepths(r, w))
	n := r.Count()
	switch {
	case r.Strips == 0:
		lines.Warn("the width of the cloth is not given, so its strips cannot be counted")
	case n > 1:
		lines.Say("%s across the cloth for all", wording.Counted(r.Strips, "strip"))
	}
	if n > 1 {
		lines.Say("it is %d ruffles, for %s; what follows is of each", n, unjoined)
	}
	sayEach := func(text func(garment.RuffleLength, writer) string) {
		for _, l := range r.Lengths {
			switch said := text(l, w); {
			case said == "":
			case len(r.Lengths) > 1:
				lines.Say("for %s: %s", l.Title(), said)
			default:
				lines.Say("%s", said)
			}
		}
	}
	if n == 1 {
		sayEach(onlyStrips)
	} else {
		sayEach(stripsOfEach)
	}
	if garments > 1 && r.Strips > 0 {
		lines.Say("for %d garments, tear %d strips", garments, garments*r.Strips)
	}
	sayEach(joinsOf)
	sayEach(cutInTwo)
	sayReach(lines, r.Reach, "gathered close there, within the depth of the ruffle on either side", "gathered in along it", w)
	sayEach(quarters)
	return table
}

// onlyStrips says how long the strips of the only ruffle are cut; "" where they cannot be counted.
func onlyStrips(r garment.RuffleLength, w writer) string {
	switch {
	case r.Strips == 0:
		return ""
	case r.Strips == 1:
		return fmt.Sprintf("1 strip across the cloth is enough; cut it %s", stripLong(r, w))
	}
	return fmt.Sprintf("%d strips across the cloth; cut each %s, and join them", r.Strips, stripLong(r, w))
}

// stripsOfEach says the same of each of several ruffles.
func stripsOfEach(r garment.RuffleLength, w writer) string {
	each := ""
	if r.Times > 1 {
		each = "each "
	}
	switch {
	case r.Strips == 0:
		return ""
	case r.Strips == 1:
		return fmt.Sprintf("cut %s, %s%s", wording.Counted(r.Times, "strip"), each, stripLong(r, w))
	case r.Times == 1:
		return fmt.Sprintf("cut %d strips, each %s, and join them", r.Strips, stripLong(r, w))
	}
	return fmt.Sprintf("cut %d strips, each %s, and join %d to each ruffle", r.Times*r.Strips, stripLong(r, w), r.Strips)
}

// stripLong says how long a strip is cut, with what is for its ends.
func stripLong(r garment.RuffleLength, w writer) string {
	long := w.length(r.Strip()) + " long"
	if r.Joining.MM > 0 {
		long += fmt.Sprintf(", %s for a seam or a hem at each end included", w.length(r.Joining))
	}
	return long
}

// joinsOf says where the joins of a ruffle come; "" where it has none.
func joinsOf(r garment.RuffleLength, w writer) string {
	switch {
	case r.Uneven && r.Strips > 1:
		return unevenJoins(r)
	case len(r.JoinPlaces) > 0:
		return joinsFall(r, w)
	}
	return ""
}

// cutInTwo says that one strip is cut in two; "" where none is.
func cutInTwo(r garment.RuffleLength, w writer) string {
	if !r.CutsOneInTwo() {
		return ""
	}
	return fmt.Sprintf("cut one strip %s longer, and in two, for the two ends", w.length(r.ForTwoEnds()))
}

// quarters says how far apart the marks are by which a ruffle is drawn up.
func quarters(r garment.RuffleLength, w writer) string {
	more := ""
	if r.Uneven {
		more = ", and as much more as is added between two marks"
	}
	return fmt.Sprintf("quarter both and match the marks: the edge every %s, the ruffle every %s%s", w.length(r.Line.Quarter()), w.length(r.Gathered.Quarter()), more)
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
func joinsFall(r garment.RuffleLength, w writer) string {
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
func unevenJoins(r garment.RuffleLength) string {
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
func ruffleFrom(r garment.RuffleLength) string {
	if r.Centre == "" {
		return "along the edge from where it begins"
	}
	return fmt.Sprintf("along the edge, to either side of the fold of %s; pin the middle of a strip there", r.Centre)
}
