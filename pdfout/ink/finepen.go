package ink

// Rules of this file: what is not on the cloth is drawn thin, and grey or pale, so that
// nobody rules it on.

// LinePen draws a continuous line of a width in mm.
func LinePen(width float64, c Colour) Pen { return Pen{Width: width, Colour: c} }

// DashedPen draws a line of marks and gaps in turn, in mm; a mark of 0 is a dot. None of them: a
// continuous line.
func DashedPen(width float64, c Colour, dashes ...float64) Pen {
	return Pen{rhythm: dashed(dashes...), Width: width, Colour: c}
}

// FinePen draws what divides a page or a picture.
func FinePen() Pen { return LinePen(FineLine, pale()) }

// JoinPen draws trim lines and join marks, which are on the paper, not on the
// cloth.
func JoinPen() Pen { return LinePen(FineLine, Grey()) }

// WritingPen draws the lines that are written on by hand.
func WritingPen() Pen { return LinePen(clothLine, pale()) }

// NotePen draws leaders and dimensions, which are read with the lines and are none.
func NotePen() Pen { return LinePen(FineLine, Black()) }

// OutlinePen draws what bounds a piece in a picture.
func OutlinePen() Pen { return LinePen(clothLine, Black()) }

// InnerPen draws what lies in a piece in a picture.
func InnerPen() Pen { return LinePen(FineLine, Grey()) }
