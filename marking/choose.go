package marking

import (
	"fmt"
	"slices"
	"strings"

	"tuckmark/marking/fault"
	"tuckmark/marking/garment"
	"tuckmark/marking/piece"
	"tuckmark/marking/wording"
)

// Rules of this file: of a pattern, some pieces may be had by themselves, by the
// names they have in the file or on the sheets. What is not a piece of a kind, such
// as a tuck sheet, comes with its piece.

// Choose returns the pattern with only the pieces of these names, in the order of
// the file; capitals and spaces around a name do not matter. What joins pieces is
// kept as it is. The error is a *Fault without a place, which names every name that no
// piece has.
func Choose(p *garment.Pattern, names []string) (*garment.Pattern, error) {
	chosen := make([]bool, len(p.Pieces))
	var keys, unknown []string
	for _, piece := range p.Pieces {
		keys = append(keys, piece.Key)
	}
	hint := "the pieces are " + strings.Join(keys, ", ")
	for _, name := range names {
		name = strings.TrimSpace(name)
		i := slices.IndexFunc(p.Pieces, func(pc piece.Piece) bool { return pc.Key == name })
		if i < 0 {
			i = slices.IndexFunc(p.Pieces, func(pc piece.Piece) bool {
				return strings.EqualFold(pc.Key, name) || strings.EqualFold(pc.Name, name)
			})
		}
		if i >= 0 {
			chosen[i] = true
			continue
		}
		unknown = append(unknown, wording.Quoted(name))
		if near := wording.Nearest(name, keys); near != "" && len(unknown) == 1 {
			hint = fmt.Sprintf("did you mean %q?", near)
		}
	}
	if len(unknown) > 0 {
		return nil, &fault.Fault{Cause: "no piece is called " + strings.Join(unknown, ", or "), Hint: hint}
	}
	only := *p
	only.Pieces = nil
	for i, piece := range p.Pieces {
		if chosen[i] {
			only.Pieces = append(only.Pieces, piece)
		}
	}
	return &only, nil
}
