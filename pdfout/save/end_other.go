//go:build !unix

package save

import "os"

// endedByCtrlC is the status of a program that Windows itself has ended for Ctrl-C: its
// STATUS_CONTROL_C_EXIT, 0xC000013A.
const endedByCtrlC = -0x3FFFFEC6

// end ends the program as the system does it.
func end(os.Signal) { os.Exit(endedByCtrlC) }
