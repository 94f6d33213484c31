package mark

// MostDots is the most dots to be pricked that are drawn at once. It bounds the time, the
// memory and the size of what is drawn.
const MostDots = 100_000

// Dots counts the dots of markings, as far as one more than MostDots.
func Dots(markings []Marking) int {
	dots := 0
	for _, m := range markings {
		for _, one := range m.Marks {
			if one.Role == Prick && dots <= MostDots {
				dots += len(one.Path)
			}
		}
	}
	return min(dots, MostDots+1)
}
