package piece

import (
	"tuckmark/marking/source"
	"tuckmark/marking/wording"
)

// CheckNames looks for two pieces that would be called the same on the sheets.
func CheckNames(spec *source.Spec, found *Findings) {
	owner := map[string]string{}
	for _, ps := range spec.Pieces {
		name, at := ps.ShownName(), ps.Name.Place
		if !ps.Name.Given() {
			at = ps.Place
		}
		if other, taken := owner[name]; taken {
			found.Add(at, "give each piece a name of its own, so that they can be told apart on the sheets",
				"the piece %q is called %q as well", other, name)
			continue
		}
		owner[name] = ps.Key
	}
}

// likePiece returns the key of an earlier piece that a key may be a slip for.
func likePiece(spec *source.Spec, key string) string {
	var earlier []string
	for _, ps := range spec.Pieces {
		if ps.Key == key {
			break
		}
		earlier = append(earlier, ps.Key)
	}
	return wording.Nearest(key, earlier)
}
