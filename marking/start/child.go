package start

import (
	"math"
	"strings"

	"tuckmark/marking/length"
	"tuckmark/marking/wording"
)

// Rules of this file: a size that tells an age, or a height in cm as sizes in Europe do, gives
// the chest and the height of such a child; between two rows of the table they lie between.
// What lies outside it takes the nearest row. A size that tells neither is that of 2 years.
// "3/4 years" is from the third to the fourth, as sizes are printed; "3/4 year" is nine months.

// child is how large a child is, in mm.
type child struct {
	months        float64
	height, chest float64
}

// children are the measures by age. Those from 1 to 4 years are the boys of Holt, The Care and
// Feeding of Children, 1907, in inches: height 29, 32 1/2, 35, 38, chest 18, 19, 20, 20 3/4.
// Those of 6 months, 5 and 6 years are from memory.
var children = []child{
	inInches(6, 25.5, 16.5),
	inInches(12, 29, 18), inInches(24, 32.5, 19), inInches(36, 35, 20), inInches(48, 38, 20.75),
	inInches(60, 41.5, 21.5), inInches(72, 44, 23),
}

func inInches(months, height, chest float64) child {
	return child{months, height * length.Inch.MM(), chest * length.Inch.MM()}
}

// known is how a size was understood.
type known int

const (
	ofSize      known = iota // it tells an age or a height that the table has
	nearestSize              // it tells one that lies outside the table
	middleSize               // it tells none
)

// middleMonths is the age of a size that tells none.
const middleMonths = 24

// shortest is the least number, in cm, that is a height and no age.
const shortest = 40

// sizeForm is a size that tells an age or a height: 18 months, 2 years, size 4, 3T, 92 cm, 86/92,
// 6 to 9 months, 1 1/2 years; partForm one that tells part of a year, and birthForm a newborn.
var (
	sizeForm  = wording.FormOf(`^(?:size )?(?:\d{1,3} ?(?:[-–/]|to) ?)?(\d{1,3}(?:\.\d{1,3}| \d/\d| ?[¼½¾])?|[¼½¾]) ?-?(months?|mths?|mos?|m|years?|yrs?|y|t|cm)?(?: old)?$`)
	partForm  = wording.FormOf(`^(\d/\d)(?: of)?(?: a)? ?-?(year|yr|y)(?: old)?$`)
	birthForm = wording.FormOf(`^new-?born$`)
)

// told takes a size apart: its number, and the unit that stands behind it or "". It reports
// whether the size has the form of one that tells an age or a height.
func told(size string) (n float64, unit string, ok bool) {
	size = strings.Join(strings.Fields(strings.ToLower(size)), " ")
	if birthForm.MatchString(size) {
		return 0, "months", true
	}
	found := partForm().FindStringSubmatch(size)
	if found == nil {
		found = sizeForm().FindStringSubmatch(size)
	}
	if found == nil {
		return 0, "", false
	}
	n, err := length.ParseNumber(found[1])
	return n, found[2], err == nil
}

// childOf is the child that a size is for. Of two, as in 18-24 months, it is the older.
func childOf(size string) (child, known) {
	n, unit, ok := told(size)
	if !ok {
		return by(age, middleMonths), middleSize
	}
	column := age
	switch {
	case unit == "cm", unit == "" && n >= shortest:
		column, n = tall, n*length.Centimetre.MM()
	case !strings.HasPrefix(unit, "m"):
		n *= 12
	}
	c := by(column, n)
	if math.Abs(column(c)-n) > length.Rounding {
		return c, nearestSize
	}
	return c, ofSize
}

func age(c child) float64  { return c.months }
func tall(c child) float64 { return c.height }

// by is the child of the table that has so much in a column, or the first or last.
func by(column func(child) float64, n float64) child {
	below := children[0]
	for _, above := range children {
		if column(above) >= n {
			between := 0.0
			if gap := column(above) - column(below); gap > 0 {
				between = max(0, n-column(below)) / gap
			}
			mix := func(a, b float64) float64 { return a + between*(b-a) }
			return child{mix(below.months, above.months), mix(below.height, above.height), mix(below.chest, above.chest)}
		}
		below = above
	}
	return below
}
