package figures

import (
	"fmt"

	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/wording"
)

// bindingTable is the table of a bias binding, for so many garments: each has cloth of its
// own.
func bindingTable(b garment.Binding, garments int, w writer) mark.Table {
	table := courseTable(fmt.Sprintf("%s, %s bias binding, %s wide", b.Key, b.Fold, w.length(b.Width)), b.SewnOn, w)
	addTimes(&table, "joining or turning in", b.JoinTakes, b.Joins, w)
	var strands []garment.Strand
	var lengths []length.Amount
	for _, l := range b.Lengths {
		strands, lengths = append(strands, l.Strand), append(lengths, l.Length)
	}
	table.AddTotal(inAll("bias strip", strands, lengths[0], b.Length, w)...)
	sayUnprinted(&table.Lines, b.SewnOn, cutLonger, w)
	if e, wide := b.WidestAllowance(); wide {
		table.Lines.Say("trim the allowance of %s to the %s of the binding, or it does not go round it", w.length(e), w.length(b.Width))
	}
	table.Lines.Say("cut it %s wide, %d times the finished width", w.length(b.CutWidth), b.Folds())
	strips, joined := wording.Counted(b.Strips, "strip"), ""
	if b.Strips > b.Joins && b.Joining.MM > 0 {
		joined = fmt.Sprintf("; join them along a thread, with seams of %s", w.length(b.Joining))
	}
	cloth := "pieces of cloth"
	if b.Square.MM > 0 {
		cloth = "squares"
		table.Lines.Say("%s from a square of %s, the first cut from corner to corner%s", strips, w.length(b.Square), joined)
	} else {
		table.Lines.Say("%s from selvage to selvage, out of %s of cloth%s", strips, w.length(b.Cloth), joined)
	}
	sayLengths(&table.Lines, b.Count(), strands, lengths, w)
	if garments > 1 {
		table.Lines.Say("for %d garments, %d such %s", garments, garments, cloth)
	}
	return table
}
