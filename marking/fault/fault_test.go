package fault

import (
	"errors"
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
)

// Whoever first knows the place says it.
func TestFaultAt(t *testing.T) {
	neck, hem := Place{File: "pinafore.toml", Key: "piece.front.edge.neck", Line: 31}, Place{File: "pinafore.toml", Key: "piece.front.edge.hem", Line: 40}
	bare := &Fault{Cause: "the length is empty", Hint: "write one"}
	placed := At(neck, bare)
	assert.Equal(t, &Fault{Place: neck, Cause: "the length is empty", Hint: "write one"}, placed)
	assert.Equal(t, Place{}, bare.Place, "the fault that was handed in is changed")
	assert.Equal(t, placed, At(hem, placed))
	assert.Equal(t, placed, At(neck, fmt.Errorf("reading: %w", bare)))
	assert.Equal(t, &Fault{Place: hem, Cause: "no more room"}, At(hem, errors.New("no more room")))
}
