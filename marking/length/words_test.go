package length

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestWords(t *testing.T) {
	for _, c := range []struct {
		text string
		want []string
	}{
		{"", []string{}},
		{"cut  two ", []string{"cut", "two"}},
		{"17 11/16 in of cloth", []string{"17 11/16 in", "of", "cloth"}},
		{"(17 11/16 in), 3 cm.", []string{"(17 11/16 in),", "3 cm."}},
		{"2 ½ in, ½ in", []string{"2 ½ in,", "½ in"}},
		{"5 mm for each 100 mm", []string{"5 mm", "for", "each", "100 mm"}},
		{"add 3 % of it", []string{"add", "3 %", "of", "it"}},
		{"pin it in 4 tucks", []string{"pin", "it", "in", "4", "tucks"}},
		{"tuck 3 and/or 4", []string{"tuck", "3", "and/or", "4"}},
		{"part 3, page 12 and pages 14 to 15", []string{"part", "3,", "page 12", "and", "pages 14", "to", "15"}},
		{"the page holds", []string{"the", "page", "holds"}},
	} {
		assert.Equal(t, c.want, Words(c.text), c.text)
	}
}
