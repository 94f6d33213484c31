package figures

import "tuckmark/marking/length"

// Units are those that lengths are given in.
type Units int

// The units: that of the file alone, or in brackets behind it the other system as well.
const (
	OwnUnit Units = iota
	AllUnits
)

// depths are how it is told how deep folds end.
type depths int

const (
	depthsOnce depths = iota // what is the same for all of a row is said once
	depthsEach               // each by itself, to be held against those of another view
)

// cellLengths are how lengths stand in tables.
type cellLengths int

const (
	lengthsBare  cellLengths = iota // without their unit, which the head of the figures says
	lengthsAlone                    // with it, each to be read by itself
)

// writer puts lengths into words.
type writer struct {
	unit   length.Unit // of the file
	units  Units
	depths depths
	cells  cellLengths
}

// length gives a length with its unit.
func (w writer) length(a length.Amount) string {
	if w.units == AllUnits {
		return a.Both()
	}
	return a.String()
}

// chosen gives a length that stands in the file, in mm, with its unit.
func (w writer) chosen(mm float64) string { return w.length(w.unit.Chosen(mm)) }

// named gives a length that is worked out from such: as it may have been chosen where it
// is plain on some ruler, else as the file's ruler shows it.
func (w writer) named(mm float64) string {
	if !length.IsPlain(mm) {
		return w.length(w.unit.Amount(mm))
	}
	return w.chosen(mm)
}

// cell gives a length as it stands in a table.
func (w writer) cell(a length.Amount) string {
	if w.cells == lengthsAlone {
		return w.length(a)
	}
	return w.paired(a, a.Bare())
}

// reading gives a place on a ruler as it stands in a table.
func (w writer) reading(a length.Amount) string {
	if w.cells == lengthsAlone {
		return w.length(a.AsRead())
	}
	return w.paired(a, a.Reading())
}

// paired gives a length without its unit: in the file's unit alone, or with the other
// system in brackets.
func (w writer) paired(a length.Amount, own string) string {
	switch {
	case w.units == OwnUnit:
		return own
	case a.Foreign():
		own = length.Bare(a.InUnit())
	}
	return own + " (" + length.Bare(a.Other()) + ")"
}

// buy gives what is bought.
func (w writer) buy(p length.Purchase) string {
	if w.units == AllUnits {
		return p.Both()
	}
	return p.String()
}
