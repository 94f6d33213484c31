package wording

import (
	"regexp"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestInWords(t *testing.T) {
	left := regexp.MustCompile(`\bleft\b`)
	for _, c := range []struct {
		name, want string
		found      bool
	}{
		{"left_front", "left front", true},
		{"Front_LEFT", "front left", true},
		{"left-front", "left-front", true},
		{"cleft_front", "cleft front", false},
		{"", "", false},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, c.want, InWords(c.name))
			assert.Equal(t, c.found, left.MatchString(InWords(c.name)))
		})
	}
}

func TestOfSize(t *testing.T) {
	for size, want := range map[string]string{"4": "size 4", "18 months": "size 18 months", "size 4": "size 4", "Size 4": "Size 4", "sizeable": "size sizeable"} {
		assert.Equal(t, want, OfSize(size))
	}
}
