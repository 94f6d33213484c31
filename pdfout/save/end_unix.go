//go:build unix

package save

import (
	"os"
	"syscall"
)

// end ends the program by the signal itself, so that a shell knows that it was ended, and ends
// its own loop over many files too.
func end(by os.Signal) {
	_ = syscall.Kill(os.Getpid(), by.(syscall.Signal))
	select {}
}
