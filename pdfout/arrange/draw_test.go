package arrange

import (
	"github.com/stretchr/testify/require"

	"tuckmark/pdfout/paper"
)

// found is the paper of a name.
func found(t require.TestingT, name string) paper.Paper {
	p, err := paper.Find(name)
	require.NoError(t, err)
	return p
}
