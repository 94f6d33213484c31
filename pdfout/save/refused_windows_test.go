package save

import (
	"io/fs"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
)

// What Windows says when a file cannot be written: the numbers are those of Microsoft's list of
// system error codes (from memory).
func TestUnwritableOnWindows(t *testing.T) {
	for code, want := range map[syscall.Errno]string{
		2:    "the folder you are in takes no files",
		5:    "nothing may be written in the folder you are in",
		19:   "nothing may be written in the folder you are in",
		32:   "another program has the file open\nhint: close the program that shows it, or " + elsewhere,
		1224: "another program has the file open",
		39:   "the disk is full; nothing was written",
		112:  "the disk is full; nothing was written\nhint: make room, or " + elsewhere,
	} {
		p := Place{given: "out.pdf", elsewhere: elsewhere, file: "out.pdf"}
		assert.ErrorContains(t, p.unwritable(&fs.PathError{Op: "write", Path: "out.pdf", Err: code}), "out.pdf: "+want, "%d", code)
	}
}

// A file that another program has open so that nobody else may write it is found before the work.
func TestOpenElsewhere(t *testing.T) {
	t.Chdir(t.TempDir())
	name, err := syscall.UTF16PtrFromString("out.pdf")
	assert.NoError(t, err)
	handle, err := syscall.CreateFile(name, syscall.GENERIC_WRITE, syscall.FILE_SHARE_READ, nil, syscall.CREATE_NEW, 0, 0)
	assert.NoError(t, err)
	defer syscall.CloseHandle(handle)
	_, err = At("out.pdf", elsewhere)
	assert.ErrorContains(t, err, "out.pdf: another program has the file open")
}
