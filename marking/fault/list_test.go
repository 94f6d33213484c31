package fault

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestListError(t *testing.T) {
	file, key := Place{File: "pinafore.toml"}, Place{File: "pinafore.toml", Key: "piece.front.edge.neck", Line: 31}
	tests := []struct {
		name string
		all  List
		want string
	}{
		{"the file as a whole", List{{Place: file, Cause: "the file is empty"}}, "pinafore.toml: the file is empty"},
		{"only a line", List{{Place: file.On(3), Cause: `a "]" is missing`}}, `pinafore.toml:3: a "]" is missing`},
		{"a place and a hint", List{{Place: key, Cause: "points 2 and 3 are the same", Hint: "leave one out"}},
			"pinafore.toml:31: piece.front.edge.neck: points 2 and 3 are the same\nhint: leave one out"},
		{"a place without a line", List{{Place: file.Under("title"), Cause: "is missing"}}, "pinafore.toml: title: is missing"},
		{"a key of no file", List{{Place: Place{Key: "piece.front"}, Cause: "has no edge", Hint: "give it one"}},
			"piece.front: has no edge\nhint: give it one"},
		{"nowhere", List{{Cause: "the length is empty"}}, "the length is empty"},
		{"several", List{{Place: file.Under("title").On(1), Cause: "is empty", Hint: "write it"}, {Place: file.Under("size").On(2), Cause: "is empty"}},
			"pinafore.toml:1: title: is empty\nhint: write it\npinafore.toml:2: size: is empty"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			assert.Equal(t, tt.want, tt.all.Error())
		})
	}
}

func TestListSorted(t *testing.T) {
	at := func(line int, cause string) *Fault {
		return &Fault{Place: Place{File: "pinafore.toml", Line: line}, Cause: cause}
	}
	found := List{at(7, "c"), at(3, "a"), at(7, "d"), at(3, "b")}
	assert.Equal(t, List{at(3, "a"), at(3, "b"), at(7, "c"), at(7, "d")}, found.Sorted())
	assert.Equal(t, at(7, "c"), found[0], "the list that was found is changed")

	var many List
	for line := 100; line > 0; line-- {
		many = append(many, at(line, "x"))
	}
	assert.Len(t, many.Sorted().Told(), 100, "a hundred are told")
	told := append(many, at(101, "y"), at(102, "y")).Sorted().Told()
	assert.Len(t, told, 101)
	assert.Equal(t, at(100, "x"), told[99])
	assert.Equal(t, "pinafore.toml: there are more mistakes: 2\nhint: put the first ones right and try again", told[100].Error())
}

// Lists that are put together are counted as one: what each has more than is told is counted
// once, also where they say the same.
func TestTogether(t *testing.T) {
	many := func(file string, n int) (all List) {
		for line := range n {
			all = append(all, &Fault{Place: Place{File: file, Line: line + 1}, Cause: "x"})
		}
		return all.Sorted()
	}
	for name, c := range map[string]struct {
		lists []List
		more  string
	}{
		"of two files":    {[]List{many("a.toml", 130), many("b.toml", 150)}, "180"},
		"the same thrice": {[]List{many("a.toml", 150), many("a.toml", 150), many("a.toml", 150)}, "50"},
		"that are many":   {[]List{many("a.toml", 900), many("b.toml", 900)}, "1700"},
		"one of them ended": {[]List{many("a.toml", 20), many("a.toml", 1000)},
			"1000 were found, and then no more were looked for"},
	} {
		told := Together(c.lists...).Told()
		assert.Len(t, told, 101, name)
		assert.Equal(t, "a.toml: there are more mistakes: "+c.more+"\nhint: put the first ones right and try again", told[100].Error(), name)
	}
	assert.Len(t, Together(many("a.toml", 60), many("a.toml", 60)).Told(), 60, "few are told as they are")
	assert.Empty(t, Together())
}

// Looking ends at a thousand faults, which is said.
func TestListFull(t *testing.T) {
	var all List
	for line := range 999 {
		all = all.With(&Fault{Place: Place{Line: line + 1}, Cause: "x"})
	}
	assert.False(t, all.Full())
	assert.Equal(t, "there are more mistakes: 899\nhint: put the first ones right and try again", all.Sorted().Told()[100].Error())
	for range 2 {
		all = all.With(&Fault{Place: Place{Line: 1000}, Cause: "x"})
		assert.True(t, all.Full())
		assert.Len(t, all, 1000)
	}
	for name, told := range map[string]List{"found": all.Sorted().Told(), "put together": Together(all.Sorted()).Told()} {
		assert.Len(t, told, 101, name)
		assert.Equal(t, "there are more mistakes: 1000 were found, and then no more were looked for\nhint: put the first ones right and try again",
			told[100].Error(), name)
	}
	assert.Len(t, List{all[0], all[1], all[2]}.Sorted(), 3)
}
