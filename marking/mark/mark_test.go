package mark_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
)

func TestALineInParts(t *testing.T) {
	short := plane.Path{{}, {X: 10}}
	long := plane.Path{{X: 20}, {X: 50}}
	asLong := plane.Path{{X: 60}, {X: 90}}
	line := mark.Mark{Role: mark.TuckFold, Name: "yoke", Path: plane.Path{{}, {X: 90}}}
	for _, c := range []struct {
		name  string
		parts []plane.Path
		want  []string // the names
	}{
		{"none", nil, nil},
		{"one", []plane.Path{short}, []string{"yoke"}},
		{"the longest has the name", []plane.Path{short, long}, []string{"", "yoke"}},
		{"of two as long the first", []plane.Path{short, long, asLong}, []string{"", "yoke", ""}},
	} {
		t.Run(c.name, func(t *testing.T) {
			var names []string
			for i, part := range line.InParts(c.parts) {
				assert.Equal(t, mark.TuckFold, part.Role)
				assert.Equal(t, c.parts[i], part.Path)
				names = append(names, part.Name)
			}
			assert.Equal(t, c.want, names)
		})
	}
}

// A marking with more steps is another one: the first keeps its own.
func TestWithLeavesTheOtherAsItIs(t *testing.T) {
	notes := append(make([]string, 0, 8), "cut 1")
	one := mark.Marking{Steps: notes}
	first, second := one.With("turn it over"), one.With("lay it down", "pin it")
	assert.Equal(t, []string{"cut 1"}, one.Steps)
	assert.Equal(t, []string{"cut 1", "turn it over"}, first.Steps)
	assert.Equal(t, []string{"cut 1", "lay it down", "pin it"}, second.Steps)
}

// The line key names every role, each in its own words.
func TestEveryRoleHasAName(t *testing.T) {
	seen := map[string]bool{}
	for i, role := range mark.Roles() {
		assert.Equal(t, mark.Role(i), role)
		assert.NotEmpty(t, role.String())
		assert.False(t, seen[role.String()], "two roles are called %q", role)
		seen[role.String()] = true
	}
	assert.Contains(t, seen, "whole ruled line", "the last one")
}
