package folded_test

import (
	"testing"

	"tuckmark/marking/folded"
	"tuckmark/marking/mark"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

func BenchmarkExamples(b *testing.B) {
	for _, name := range []string{"pinafore", "shirt", "nightgown", "smock", "underwaist"} {
		pattern := made.Example(b, name+".toml")
		b.Run(name, func(b *testing.B) {
			for b.Loop() {
				folded.All(pattern, mark.BothHalves)
			}
		})
	}
}

// Many tucks both ways: as many layers as a piece has at most.
func BenchmarkManyTucks(b *testing.B) {
	p, pattern := made.Front(b, "0", "fold = \"centre\"\n"+square+
		sketch.Rows(`tuck a centre 1/8 20 1/2`, `tuck b hem 1/8 10 1`))
	for b.Loop() {
		folded.Of(p, pattern.Unit, mark.BothHalves)
	}
}
