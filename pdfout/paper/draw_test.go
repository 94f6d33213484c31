package paper

import (
	"github.com/stretchr/testify/require"
)

// found is the paper of a name.
func found(t require.TestingT, name string) Paper {
	p, err := Find(name)
	require.NoError(t, err)
	return p
}
