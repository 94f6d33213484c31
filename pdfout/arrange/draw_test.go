package arrange

import (
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/pdfout/paper"
)

// found is the paper of a name.
func found(t require.TestingT, name string) paper.Paper {
	p, err := paper.Find(name)
	require.NoError(t, err)
	return p
}

// sail is a square piece of nothing but its outline.
func sail(side float64) mark.Marking {
	m := rectangle("sail", "Sail", side, side)
	m.Marks = m.Marks[:4]
	return m
}
