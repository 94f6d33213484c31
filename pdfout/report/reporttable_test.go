package report

import (
	"slices"

	"tuckmark/marking/mark"
)

// wideTable is a table too wide for a column of any paper.
func wideTable() mark.Table {
	return mark.Table{Rows: cells(slices.Concat([]string{"Skirt"}, slices.Repeat([]string{"17 11/16 in"}, 8)))}
}
