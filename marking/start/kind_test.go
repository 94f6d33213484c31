package start

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestReadName(t *testing.T) {
	for _, c := range []struct {
		name   string
		kind   kind
		behind bool
		half   bool
		set    string
	}{
		{"front", front, false, false, ""},
		{"Left front", front, false, true, ""},
		{"lining_front", front, false, false, "lining"},
		{"back", back, true, false, ""},
		{"back yoke", yoke, true, false, ""},
		{"yoke front", yoke, false, false, ""},
		{"neck band", band, false, false, "neck"},
		{"skirt-back", skirt, true, false, ""},
		{"left skirt", skirt, false, false, ""},
		{"sleeves", sleeve, false, false, ""},
		{"right sleeve", sleeve, false, true, ""},
		{"sleeve band", band, false, false, ""},
		{"cap sleeve", sleeve, false, false, ""},
		{"cap", bonnet, false, false, ""},
		{"back pocket", pocket, false, false, ""},
		{"Frontier", plain, false, false, "frontier"},
		{"Vorderteil", plain, false, false, "vorderteil"},
		{"left", plain, false, false, ""},
	} {
		n := readName(c.name)
		assert.Equal(t, c.kind, n.kind, c.name)
		assert.Equal(t, c.behind, n.behind(), c.name)
		assert.Equal(t, c.half, n.isHalf(), c.name)
		assert.Equal(t, c.set, n.set, c.name)
	}
}

// A word that nobody meant is not offered: it would be asked of each tie and cuff.
func TestMeant(t *testing.T) {
	for name, want := range map[string]string{
		"sleev": "sleeve", "frnt": "front", "left sleve": "left sleeve", "Pokcet": "pocket", "neck_bnad": "neck_band",
		"sleeve": "", "front": "", "left": "", "cuff": "", "tie": "", "bib": "", "belt": "", "lace": "", "strap": "", "ruffle": "", "Vorderteil": "", "": "",
	} {
		assert.Equal(t, want, Meant(name), name)
	}
}
