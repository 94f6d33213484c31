package pdfout

import "sync"

// atOnce does something with each of some things at the same time, and returns when all is
// done. Where that panics, so does atOnce: whoever asked for it may have others to serve, and
// catches that.
func atOnce[T any](all []T, do func(T)) {
	var done sync.WaitGroup
	mishaps := make([]any, len(all))
	for i, one := range all {
		done.Go(func() {
			defer func() { mishaps[i] = recover() }()
			do(one)
		})
	}
	done.Wait()
	for _, mishap := range mishaps {
		if mishap != nil {
			panic(mishap)
		}
	}
}
