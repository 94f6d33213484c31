package marking

import (
	"slices"
	"strings"

	"tuckmark/marking/fault"
	"tuckmark/marking/garment"
	"tuckmark/marking/piece"
	"tuckmark/marking/wording"
)

// Rules of this file: of a pattern, some pieces may be had by themselves, by the
// names they have in the file or on the sheets. What is not a piece of a kind, such
// as a tuck sheet, comes with its piece; what is remarked of others, or of what joins only
// others, does not come.

// Choose returns the pattern with only the pieces of these names, in the order of
// the file; capitals and spaces around a name do not matter. What joins pieces is
// kept as it is. The error is a *fault.Fault without a place, which names every name that no
// piece has.
func Choose(p *garment.Pattern, names []string) (*garment.Pattern, error) {
	chosen := map[string]bool{} // by key
	var unknown []string
	for _, name := range names {
		name = strings.TrimSpace(name)
		if i := called(p.Pieces, name); i >= 0 {
			chosen[p.Pieces[i].Key] = true
		} else {
			unknown = append(unknown, name)
		}
	}
	if len(unknown) > 0 {
		return nil, notThere(p.Pieces, unknown)
	}
	only := *p
	only.Pieces = slices.DeleteFunc(slices.Clone(p.Pieces), func(one piece.Piece) bool { return !chosen[one.Key] })
	only.Remarks = slices.DeleteFunc(slices.Clone(p.Remarks), leftOut(p, chosen))
	return &only, nil
}

// leftOut reports whether a remark is about nothing that is chosen: a piece that is not, or
// what is sewn to none that is.
func leftOut(p *garment.Pattern, chosen map[string]bool) func(piece.Remark) bool {
	var left []string // as they begin a place
	leave := func(kind, key string, courses []garment.Course) {
		if !slices.ContainsFunc(courses, func(c garment.Course) bool { return chosen[c.Piece.Key] }) {
			left = append(left, fault.Place{Key: kind}.Under(key).Key)
		}
	}
	for _, one := range p.Pieces {
		if !chosen[one.Key] {
			leave("piece", one.Key, nil)
		}
	}
	for _, s := range p.Seams {
		leave("seam", s.Key, s.Courses())
	}
	for _, t := range p.Trims {
		leave("trim", t.Key, t.Courses)
	}
	for _, r := range p.Ruffles {
		leave("ruffle", r.Key, r.Courses)
	}
	for _, b := range p.Bindings {
		leave("binding", b.Key, b.Courses)
	}
	return func(r piece.Remark) bool {
		return slices.ContainsFunc(left, func(key string) bool { return r.Key == key || strings.HasPrefix(r.Key, key+".") })
	}
}

// called returns the number of the piece that is called so: by its key, or else by that
// or its name in any letters; -1 where there is none.
func called(pieces []piece.Piece, name string) int {
	if i := slices.IndexFunc(pieces, func(p piece.Piece) bool { return p.Key == name }); i >= 0 {
		return i
	}
	return slices.IndexFunc(pieces, func(p piece.Piece) bool {
		return strings.EqualFold(p.Key, name) || strings.EqualFold(p.Name, name)
	})
}

// notThere says that no piece has these names, at least one, and which one was meant.
func notThere(pieces []piece.Piece, names []string) error {
	var keys, quoted []string
	for _, p := range pieces {
		keys = append(keys, p.Key)
	}
	for _, name := range names {
		quoted = append(quoted, wording.Quoted(name))
	}
	hint := "the pieces are " + strings.Join(keys, ", ")
	if near := wording.Nearest(names[0], keys); near != "" {
		hint = wording.DidYouMean(near)
	}
	return &fault.Fault{Cause: "no piece is called " + strings.Join(quoted, ", or "), Hint: hint}
}
