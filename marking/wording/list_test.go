package wording

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestListed(t *testing.T) {
	assert.Equal(t, "", Listed(nil, "or"))
	assert.Equal(t, "a", Listed([]string{"a"}, "or"))
	assert.Equal(t, "a or b", Listed([]string{"a", "b"}, "or"))
	assert.Equal(t, "a, b and c", Listed([]string{"a", "b", "c"}, "and"))
}

func TestCounted(t *testing.T) {
	assert.Equal(t, []string{"no point", "1 point", "2 points"}, []string{Counted(0, "point"), Counted(1, "point"), Counted(2, "point")})
}
