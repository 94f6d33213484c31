package figures

import (
	"fmt"

	"tuckmark/marking/garment"
	"tuckmark/marking/wording"
)

// Rules of this file: whether seam allowances are in the pieces is said of all edges, and
// which of them have none.

// Included says whether seam allowances and hems are in the pieces as they are drawn.
func Included(p *garment.Pattern) string {
	var bare []string
	added := false
	for _, piece := range p.Pieces {
		for _, e := range piece.Edges {
			switch {
			case e.OnFold:
			case e.Allowance > 0 || e.Hem > 0:
				added = true
			default:
				bare = append(bare, "the "+e.Key+" of "+piece.Name)
			}
		}
	}
	switch {
	case !added:
		return "No seam allowances are included: every edge is cut where it is sewn."
	case len(bare) == 0:
		return "Seam allowances and hems are included."
	}
	verb := "have"
	if len(bare) == 1 {
		verb = "has"
	}
	return fmt.Sprintf("Seam allowances and hems are included; %s %s none.", wording.Listed(bare, "and"), verb)
}
