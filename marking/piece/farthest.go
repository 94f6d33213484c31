package piece

import (
	"math"

	"tuckmark/marking/plane"
)

// FarthestFrom returns how far from the finished line of edge i the farthest point of the
// sewn piece lies, in mm. Where folds lie across the way from there it is not known, and ok
// is false.
func (p *Piece) FarthestFrom(i int) (mm float64, ok bool) {
	line := p.Edges[i].Line
	run := line[len(line)-1].Sub(line[0]).Unit()
	for _, r := range p.FoldRows() {
		if math.Abs(run.Dot(r.Base.Along)) > besideWithin {
			return 0, false
		}
	}
	from := plane.NewTree(line)
	for _, e := range p.Edges {
		for _, q := range e.Sewn {
			mm = max(mm, from.Distance(q, math.Inf(1)))
		}
	}
	return mm, true
}
