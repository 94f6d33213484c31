package save

import (
	"errors"
	"io/fs"
	"os"
)

// New puts a file of these bytes where nothing is, neither a file nor a folder nor a link: where
// there is something the error is fs.ErrExist. Elsewhere is what a hint says where it cannot be
// written.
func New(name, elsewhere string, data []byte) error {
	p := Place{given: name, elsewhere: elsewhere, file: name}
	return held(func(ending func() bool) error {
		f, err := os.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o666)
		if errors.Is(err, fs.ErrExist) {
			return err
		}
		if err != nil {
			return p.unwritable(err)
		}
		if err := fill(f, data, ending); err != nil || ending() {
			os.Remove(name)
			return p.unwritable(err)
		}
		return nil
	})
}
