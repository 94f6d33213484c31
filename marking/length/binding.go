package length

// SquareStep is in what steps a square of cloth is given, in mm: halves of an inch or
// of a centimetre, for a square that is torn.
func (u Unit) SquareStep() float64 { return u.Either(Inch.MM(), Centimetre.MM()) / 2 }
