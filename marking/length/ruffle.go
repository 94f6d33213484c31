package length

// defaultJoining is the allowance of the seams that join strips, in mm, where
// the file does not say: 1/4 in (common practice), or 6 mm.
const defaultJoining = 25.4 / 4

const metricJoining = 6.0

// Joining is the allowance of joining seams where the file does not say.
func (u Unit) Joining() float64 { return u.Either(defaultJoining, metricJoining) }
