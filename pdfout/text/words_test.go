package text

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestPageCount(t *testing.T) {
	for n, want := range map[int]string{0: "0 pages", 1: "1 page", 999: "999 pages", 1000: "1,000 pages", 18432: "18,432 pages", 1234567: "1,234,567 pages"} {
		assert.Equal(t, want, PageCount(n))
	}
}

func TestSomeNames(t *testing.T) {
	names := []string{"Front", "Back", "Collar", "Cuff"}
	assert.Equal(t, "Front, Back, Collar, Cuff", someNames(names, 4))
	assert.Equal(t, "Front, Back, Collar and 1 more", someNames(names, 3))
	assert.Equal(t, "Front and 3 more", someNames(names, 1))
}

func TestJoinedNotes(t *testing.T) {
	for _, c := range []struct {
		notes []string
		want  string
	}{
		{nil, ""},
		{[]string{"cut 2"}, "cut 2"},
		{[]string{"cut 2", "18 months"}, "cut 2, 18 months"},
		{[]string{"cut 2 of cloth, 1 of lining", "18 months"}, "cut 2 of cloth, 1 of lining; 18 months"},
		{[]string{"Cut 2.", "Take care:", "it frays"}, "Cut 2. Take care: it frays"},
		{[]string{"", "cut 2"}, ", cut 2"},
	} {
		assert.Equal(t, c.want, JoinedNotes(c.notes))
	}
}

func TestNumbers(t *testing.T) {
	for _, c := range []struct {
		numbers []int
		want    string
	}{
		{[]int{7}, "page 7"},
		{[]int{2, 3, 4}, "pages 2 to 4"},
		{[]int{2, 5}, "pages 2 and 5"},
		{[]int{2, 3, 5, 8, 9}, "pages 2 to 3, 5 and 8 to 9"},
	} {
		assert.Equal(t, c.want, Numbers("page", c.numbers))
	}
}
