package ink

import (
	"bytes"
	"cmp"
	"crypto/sha256"
	"errors"
	"fmt"
	"slices"
	"strconv"
)

// Rules of this file: a PDF that the library has written is taken apart into its objects, some
// of these are changed, and the file is put together anew (ISO 32000-1, 7.5). What a change
// looks for must be there: the library writes the same things in the same order for every set,
// so a file that is laid out otherwise is an error, and no PDF.

// pdfObjects are the objects of a PDF, by their numbers: the first, number 0, is empty. Each is
// what stands between "1 0 obj" and "endobj".
type pdfObjects [][]byte

var errLaidOut = errors.New("the pdf is not laid out as expected")

const (
	tableMark  = "xref\n"
	startMark  = "startxref\n"
	entryBytes = 20 // of the table of objects, for each of them
	objectEnd  = "endobj\n"
	// mostAround is more than an object has around it, its entry among it, in bytes; it bounds
	// nothing.
	mostAround = 64
)

// takeApart finds the objects of a PDF, by its table of them.
func takeApart(data []byte) (pdfObjects, error) {
	start := bytes.LastIndex(data, []byte(startMark))
	if start < 0 {
		return nil, errLaidOut
	}
	line, _, _ := bytes.Cut(data[start+len(startMark):], []byte("\n"))
	table, err := strconv.Atoi(string(line))
	if err != nil || table < 0 || table > start || !bytes.HasPrefix(data[table:], []byte(tableMark+"0 ")) {
		return nil, errLaidOut
	}
	size, entries, _ := bytes.Cut(data[table+len(tableMark+"0 "):start], []byte("\n"))
	count, err := strconv.Atoi(string(size))
	if err != nil || count < 1 || len(entries) < count*entryBytes {
		return nil, errLaidOut
	}
	type place struct{ number, at int }
	places := make([]place, 0, count)
	for number := 1; number < count; number++ {
		at, err := strconv.Atoi(string(entries[number*entryBytes:][:10]))
		if err != nil || at < 0 || at > table {
			return nil, errLaidOut
		}
		places = append(places, place{number, at})
	}
	slices.SortFunc(places, func(a, b place) int { return cmp.Compare(a.at, b.at) })
	all := make(pdfObjects, count)
	for i, p := range places {
		end := table
		if i+1 < len(places) {
			end = places[i+1].at
		}
		inside, opens := bytes.CutPrefix(data[p.at:end], fmt.Appendf(nil, "%d 0 obj\n", p.number))
		inside, closes := bytes.CutSuffix(inside, []byte(objectEnd))
		if !opens || !closes {
			return nil, errLaidOut
		}
		all[p.number] = inside
	}
	return all, nil
}

// change puts one thing in the place of another, once in each object that begins with some
// bytes; an object of that kind which has it not is an error, and so is none of the kind.
func (all pdfObjects) change(kind, old, new string) error {
	found := false
	for number, object := range all {
		if !bytes.HasPrefix(object, []byte(kind)) {
			continue
		}
		before, after, has := bytes.Cut(object, []byte(old))
		if !has {
			return errLaidOut
		}
		all[number] = slices.Concat(before, []byte(new), after)
		found = true
	}
	if !found {
		return errLaidOut
	}
	return nil
}

// reference is the number of the object that one refers to under a key, as in "/Pages 1 0 R".
func (all pdfObjects) reference(object int, key string) (int, error) {
	_, after, _ := bytes.Cut(all[object], []byte(key+" "))
	digits, _, has := bytes.Cut(bytes.TrimPrefix(after, []byte("[")), []byte(" 0 R"))
	number, err := strconv.Atoi(string(digits))
	if !has || err != nil || number < 1 || number >= len(all) {
		return 0, errLaidOut
	}
	return number, nil
}

// whole is the PDF of the objects, of a version; the last is its catalogue, and the last but one
// tells what it is. Its two names (ISO 32000-1, 14.4) are the sum of its bytes.
func (all pdfObjects) whole(version string) []byte {
	var out bytes.Buffer
	size := 0
	for _, object := range all {
		size += len(object) + mostAround
	}
	out.Grow(size)
	// The second line has letters above 127, so that nobody takes the file for text.
	fmt.Fprintf(&out, "%%PDF-%s\n%%\xc2\xb5\xc2\xb6\n", version)
	places := make([]int, len(all))
	for number, object := range all[1:] {
		places[number+1] = out.Len()
		fmt.Fprintf(&out, "%d 0 obj\n%s%s", number+1, object, objectEnd)
	}
	sum := sha256.Sum256(out.Bytes())
	table := out.Len()
	fmt.Fprintf(&out, "%s0 %d\n0000000000 65535 f \n", tableMark, len(all))
	for _, at := range places[1:] {
		fmt.Fprintf(&out, "%010d 00000 n \n", at)
	}
	fmt.Fprintf(&out, "trailer\n<</Size %d /Root %d 0 R /Info %d 0 R /ID [<%x> <%[4]x>]>>\n", len(all), len(all)-1, len(all)-2, sum[:16])
	fmt.Fprintf(&out, "%s%d\n%%%%EOF\n", startMark, table)
	return out.Bytes()
}
