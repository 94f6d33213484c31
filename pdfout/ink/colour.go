package ink

// Colour is red, green and blue, from 0 to 1.
type Colour [3]float64

// Black is what is read, and most of what is cut.
func Black() Colour { return Colour{0, 0, 0} }

// Grey is what is printed beside that, and still read.
func Grey() Colour { return Colour{0.35, 0.35, 0.35} }

// pale is what only parts other things.
func pale() Colour { return Colour{0.72, 0.72, 0.72} }

// White covers what lies under it.
func White() Colour { return Colour{1, 1, 1} }

// faint is what other things are drawn over: it is seen, and no line is lost in it.
func faint() Colour { return Colour{0.84, 0.84, 0.84} }
