package pdfout

import (
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
)

// All are begun before any has ended, and all have ended when atOnce returns.
func TestAtOnce(t *testing.T) {
	var begun sync.WaitGroup
	all := []int{3, 1, 2}
	begun.Add(len(all))
	done := make([]bool, 4)
	atOnce(all, func(n int) {
		begun.Done()
		begun.Wait()
		done[n] = true
	})
	assert.Equal(t, []bool{false, true, true, true}, done)
}

// What panics by the side of others does so where it can be caught, after all have ended.
func TestAtOnceHandsOnAPanic(t *testing.T) {
	var done [3]bool
	assert.PanicsWithValue(t, "torn", func() {
		atOnce([]int{0, 1, 2}, func(n int) {
			if n == 1 {
				panic("torn")
			}
			done[n] = true
		})
	})
	assert.Equal(t, [3]bool{true, false, true}, done)
}
