package save

import (
	"errors"
	"os"
	"syscall"
)

// What Windows says, by the names of its own list of system error codes.
const (
	errorWriteProtect     = syscall.Errno(19)
	errorSharingViolation = syscall.Errno(32)
	errorHandleDiskFull   = syscall.Errno(39)
	errorDiskFull         = syscall.Errno(112)
	errorUserMappedFile   = syscall.Errno(1224)
)

// keep does nothing: a new file belongs to whom the files of its folder belong to.
func keep(*os.File, os.FileInfo) error { return nil }

// endedByCtrlC is the status of a program that Windows itself has ended for Ctrl-C: its
// STATUS_CONTROL_C_EXIT, 0xC000013A.
const endedByCtrlC = -0x3FFFFEC6

// end ends the program as the system does it.
func end(os.Signal) { os.Exit(endedByCtrlC) }

// isFull reports whether there is no room on the disk.
func isFull(err error) bool {
	return errors.Is(err, errorDiskFull) || errors.Is(err, errorHandleDiskFull)
}

// isProtected reports whether a disk may only be read.
func isProtected(err error) bool { return errors.Is(err, errorWriteProtect) }

// isInUse reports whether another program keeps a file from being written, as one does that shows
// it.
func isInUse(err error) bool {
	return errors.Is(err, errorSharingViolation) || errors.Is(err, errorUserMappedFile)
}
