package arrange

import (
	"slices"

	"tuckmark/marking/mark"
)

// Rules of this file: the work has stages, and what is used in one of them shares pages
// with its like. Parts of several stages share pages only where that saves one, and then
// of as few stages as can be that follow each other. What is cut from card shares them
// only with its kind, and never with what is larger than a page.

// stage is what is used in one stage of the work.
type stage struct {
	kind  mark.Kind
	large []Sheet // each with one piece
	small []Piece // each fits on a page
	// parcels are those of the small pieces, the tallest first.
	parcels []Parcel
}

// stageOf is the kind that the stage is named after in which a kind is used: a ruler lies
// with the sheet whose tucks it has.
func stageOf(k mark.Kind) mark.Kind {
	if k == mark.TuckRuler {
		return mark.TuckSheet
	}
	return k
}

// stageFor returns the stage of a kind out of some, which has a place among them.
func stageFor(stages *[]stage, k mark.Kind) *stage {
	i := slices.IndexFunc(*stages, func(s stage) bool { return s.kind == stageOf(k) })
	if i < 0 {
		i = len(*stages)
		for i > 0 && (*stages)[i-1].kind > stageOf(k) {
			i--
		}
		*stages = slices.Insert(*stages, i, stage{kind: stageOf(k)})
	}
	return &(*stages)[i]
}

// laid is some stages laid on sheets.
type laid struct {
	sheets []Sheet
	pages  int
	apart  int // how many groups of stages share no page with others
}

// layStages lays stages on as few pages as it finds, and of the ways that take no more
// mixes the fewest stages. More than MaxPages are not all laid.
func layStages(stages []stage, page Grid) []Sheet {
	for i := range stages { // once, though a stage is tried with many others
		stages[i].parcels = parcelsOf(stages[i].small, page.Window)
	}
	best := make([]laid, len(stages)+1) // from the stage of a number on
	for i := len(stages) - 1; i >= 0; i-- {
		for j := i + 1; j <= len(stages); j++ {
			if j > i+1 && stages[j-1].kind.OfCard() {
				break
			}
			one := together(stages[i:j], page)
			one.sheets = append(one.sheets, best[j].sheets...)
			one.pages, one.apart = one.pages+best[j].pages, 1+best[j].apart
			if j == i+1 || one.pages < best[i].pages || one.pages == best[i].pages && one.apart > best[i].apart {
				best[i] = one
			}
		}
	}
	return best[0].sheets
}

// together lays stages, whose parts may share pages.
func together(stages []stage, page Grid) laid {
	var large []Sheet
	var parcels []Parcel
	for _, s := range stages {
		large, parcels = append(large, s.large...), append(parcels, s.parcels...)
	}
	tallestFirst(parcels)
	shelves, all := fill(parcels, page.Window)
	if all && !stages[0].kind.OfCard() {
		large = besideEachOther(large)
		large, shelves = shareLarge(large, parcels, shelves, page.Window)
	}
	return onSheets(large, evened(shelves), page)
}

// onSheets are large pieces' sheets and those of pages that small ones share.
func onSheets(large []Sheet, shelves []Packing, page Grid) laid {
	l := laid{sheets: slices.Clip(large), pages: len(shelves)}
	for _, s := range large {
		l.pages += len(s.Cells)
	}
	for _, s := range shelves {
		l.sheets = append(l.sheets, s.sheet(page))
	}
	return l
}
