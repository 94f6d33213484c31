package wording

import (
	"strconv"
	"strings"
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

// Up to a dozen names are listed, whatever there is; none is repeated at more than 40 letters.
func TestQuotedFew(t *testing.T) {
	names := func(n int) []string {
		var all []string
		for i := range n {
			all = append(all, strconv.Itoa(i))
		}
		return all
	}
	assert.Empty(t, QuotedFew(nil))
	assert.Equal(t, []string{`"a"`, `"b"`}, QuotedFew([]string{"a", "b"}))
	assert.Equal(t, `"11"`, QuotedFew(names(12))[11], "the twelfth of twelve")
	few := QuotedFew(names(1000))
	assert.Len(t, few, 13)
	assert.Equal(t, []string{`"11"`, "988 more"}, few[11:])
	assert.Equal(t, []string{`"` + strings.Repeat("x", 40) + `..."`}, QuotedFew([]string{strings.Repeat("x", 200)}))
}
