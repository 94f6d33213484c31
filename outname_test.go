package main

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// A part is named as a part, with letters that any disk takes.
func TestNamesOfParts(t *testing.T) {
	many := []string{"front", "back", "left sleeve", "right sleeve", "collar", "cuff", "pocket", "yoke facing", "belt"}
	for _, c := range []struct {
		name      string
		all, part []string
		behind    string
		want      string
	}{
		{"all", []string{"front", "back"}, nil, "", "orchard.pdf"},
		{"their gauges", []string{"front", "back"}, nil, "-gauges", "orchard-gauges.pdf"},
		{"one", []string{"front", "back"}, []string{"back"}, "", "orchard-back.pdf"},
		{"its first page", []string{"front", "back"}, []string{"back"}, "-first-page", "orchard-back-first-page.pdf"},
		{"two", []string{"front", "back", "sleeve"}, []string{"front", "sleeve"}, "", "orchard-front+sleeve.pdf"},
		{"each that there is", []string{"front", "back"}, []string{"front", "back"}, "", "orchard-front+back.pdf"},
		{"letters that no disk takes", []string{"front", `a/b: "c" *?`}, []string{`a/b: "c" *?`}, "", "orchard-a-b-c.pdf"},
		{"letters of other tongues", []string{"Ärmel", "воротник", "袖"}, []string{"Ärmel", "воротник", "袖"}, "", "orchard-Ärmel+воротник+袖.pdf"},
		{"nothing that is a letter", []string{"front", "***", "+"}, []string{"***", "+"}, "", "orchard-piece+piece-2.pdf"},
		{"two that differ in what is left out", []string{"a b", "a-b", "A.B"}, []string{"a-b", "A.B"}, "", "orchard-a-b-2+A-B-3.pdf"},
		{"a piece that is called as the gauges are", []string{"gauges", "front"}, []string{"gauges"}, "", "orchard-gauges-piece.pdf"},
		{"or as those of another piece", []string{"front", "front gauges"}, []string{"front gauges"}, "", "orchard-front-gauges-piece.pdf"},
		{"or as a first page", []string{"First Page"}, []string{"First Page"}, "", "orchard-First-Page-piece.pdf"},
		{"more than a name can hold", many, many[1:], "-gauges", "orchard-back+left-sleeve+right-sleeve+collar+cuff+pocket+yoke-facing-d78593f7-gauges.pdf"},
		{"a name that is too long by itself", []string{strings.Repeat("ä", 90)}, []string{strings.Repeat("ä", 90)}, "", "orchard-" + strings.Repeat("ä", 30) + "-1fb5bdbf.pdf"},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, c.want, outName("orchard.toml", c.all, c.part, nil, "", c.behind))
		})
	}
}

// No two parts of one file have one name, whatever is made of them, also where a disk does
// not tell capitals from small letters.
func TestNoTwoPartsHaveOneName(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		key := rapid.SampledFrom([]string{"front", "Front", "front-2", "front 2", "a b", "a-b", "gauges", "front gauges", "first-page", "+", "front+back", "back", "piece", "-"})
		all := rapid.SliceOfNDistinct(key, 1, 8, rapid.ID[string]).Draw(t, "keys")
		views := rapid.SliceOfNDistinct(key, 0, 3, rapid.ID[string]).Draw(t, "views")
		made := map[string]string{}
		for subset := range 1 << len(all) {
			var part []string // none of them stands for all
			for i, k := range all {
				if subset>>i&1 == 1 {
					part = append(part, k)
				}
			}
			for i, behind := range slices.Repeat([]string{"", "-gauges", "-first-page"}, 1+len(views)) {
				view := append([]string{""}, views...)[i/3]
				name := strings.ToLower(outName("orchard.toml", all, part, views, view, behind))
				what := strings.Join(slices.Concat(part, []string{view, behind}), "|")
				require.Empty(t, made[name], "%q is the name of %q as well", name, what)
				made[name] = what
				require.LessOrEqual(t, len(name), 120)
			}
		}
	})
}
