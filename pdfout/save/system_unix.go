//go:build unix

package save

import (
	"errors"
	"io/fs"
	"os"
	"syscall"
)

// rights are what may be done with a file, and as whom.
const rights = fs.ModePerm | fs.ModeSetuid | fs.ModeSetgid | fs.ModeSticky

// keep gives a new file the owner, the group and the rights of an old one. A file of another
// owner that new ones get too, as on a disk that knows no owners, is left as it is.
func keep(f *os.File, old os.FileInfo) error {
	info, err := f.Stat()
	if err != nil {
		return err
	}
	is, was := info.Sys().(*syscall.Stat_t), old.Sys().(*syscall.Stat_t)
	if is.Uid != was.Uid || is.Gid != was.Gid {
		if err := f.Chown(int(was.Uid), int(was.Gid)); err != nil {
			return err
		}
	}
	if info.Mode()&rights == old.Mode()&rights {
		return nil
	}
	return f.Chmod(old.Mode() & rights) // last, for another owner takes some away
}

// end ends the program by the signal itself, so that a shell knows that it was ended, and ends
// its own loop over many files too.
func end(by os.Signal) {
	_ = syscall.Kill(os.Getpid(), by.(syscall.Signal))
	select {}
}

// isFull reports whether there is no room: on the disk, or for whoever writes.
func isFull(err error) bool { return errors.Is(err, syscall.ENOSPC) || errors.Is(err, syscall.EDQUOT) }

// isProtected reports whether a disk may only be read.
func isProtected(err error) bool { return errors.Is(err, syscall.EROFS) }

// isInUse reports whether another program keeps a file from being written; none can here.
func isInUse(error) bool { return false }
