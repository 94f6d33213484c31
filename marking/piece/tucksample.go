package piece

import (
	"tuckmark/marking/source"
	"tuckmark/marking/wording"
)

// Rules of this file. A tuck takes more cloth, or less, than twice its width: the
// turn of the cloth, the thickness of the thread and the machine all have their
// share. A strip tucked as a trial says how much: what lay between two marks
// before, less what lies there after, over the number of tucks.

// What one tuck of a sample takes is at least its own width, and at most twice what
// it should, which is twice its width: beyond that, something was counted or
// measured wrong.
const (
	leastTaken = 1.0 // of the width
	mostTaken  = 4.0 // of the width
)

// takeSample makes the tucks take what those of a sample took.
func (t *TuckRow) takeSample(s source.SampleSpec, found *Findings) bool {
	t.Takes = (s.Flat.V - s.Sewn.V) / float64(s.Tucks.V)
	t.Sampled, t.Sample = true, s
	const betweenMarks = "flat is measured before the tucks are sewn, sewn after, between the same two marks"
	if s.Sewn.V > s.Flat.V-SamePoint {
		found.Add(s.Place, betweenMarks, "the sample measures %s flat and %s sewn, so its tucks took nothing",
			found.Written(s.Flat.V), found.Written(s.Sewn.V))
		return false
	}
	if t.Takes >= leastTaken*t.Width-SamePoint && t.Takes <= mostTaken*t.Width+SamePoint {
		return true
	}
	// Told for all of them: what a single one took is less than a ruler shows.
	found.Add(s.Place, "count the tucks of the sample again, and measure it once more; "+betweenMarks,
		"the sample took up %s, and its %s, %s wide, should take about %s", found.Written(s.Flat.V-s.Sewn.V),
		wording.Counted(s.Tucks.V, "tuck"), found.Written(t.Width), found.Written(2*t.Width*float64(s.Tucks.V)))
	return false
}
