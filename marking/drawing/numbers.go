package drawing

import (
	"strconv"
	"unicode/utf8"

	"tuckmark/marking/fault"
	"tuckmark/marking/wording"
)

// Rules of this file: numbers stand as SVG has them, with spaces or a comma between them or
// run together, wherever one can end and the next begin: 1.5.5-3e2 is 1.5, 0.5 and -300. There
// is no number for what is none or without end.

// written is a text of numbers and letters that is read from the left.
type written struct {
	text string
	at   int
}

// space passes over white space.
func (w *written) space() {
	for w.at < len(w.text) {
		switch w.text[w.at] {
		case ' ', '\t', '\n', '\r', '\f':
			w.at++
		default:
			return
		}
	}
}

// comma passes over white space with at most one comma in it, and reports whether one stood
// there.
func (w *written) comma() bool {
	w.space()
	if w.at < len(w.text) && w.text[w.at] == ',' {
		w.at++
		w.space()
		return true
	}
	return false
}

// done reports whether nothing is left.
func (w *written) done() bool { return w.at >= len(w.text) }

// number reads the number that comes next; false where none does.
func (w *written) number() (float64, bool) {
	end := w.at
	if end < len(w.text) && (w.text[end] == '-' || w.text[end] == '+') {
		end++
	}
	digits := func() bool {
		from := end
		for end < len(w.text) && w.text[end] >= '0' && w.text[end] <= '9' {
			end++
		}
		return end > from
	}
	some := digits()
	if end < len(w.text) && w.text[end] == '.' {
		end++
		some = digits() || some
	}
	if !some {
		return 0, false
	}
	if mark := end; end < len(w.text) && (w.text[end] == 'e' || w.text[end] == 'E') {
		end++
		if end < len(w.text) && (w.text[end] == '-' || w.text[end] == '+') {
			end++
		}
		if !digits() {
			end = mark // the e of a unit, such as em
		}
	}
	n, err := strconv.ParseFloat(w.text[w.at:end], 64)
	if err != nil {
		return 0, false
	}
	w.at = end
	return n, true
}

// flag reads a single 0 or 1, behind which the next may follow at once.
func (w *written) flag() (bool, bool) {
	if w.done() || w.text[w.at] != '0' && w.text[w.at] != '1' {
		return false, false
	}
	w.at++
	return w.text[w.at-1] == '1', true
}

// next is what comes next, as a message repeats it.
func (w *written) next() string {
	if w.done() {
		return "the end"
	}
	_, size := utf8.DecodeRuneInString(w.text[w.at:])
	end := w.at + size
	for end < len(w.text) && end < w.at+12 && w.text[end] > ' ' && w.text[end] != ',' && w.text[end] < utf8.RuneSelf {
		end++
	}
	return wording.Quoted(w.text[w.at:end])
}

// numbers reads a list of numbers to its end.
func numbers(text string) ([]float64, error) {
	w := &written{text: text}
	var all []float64
	w.space()
	for comma := false; !w.done() || comma; comma = w.comma() {
		n, ok := w.number()
		if !ok {
			return nil, &fault.Fault{Cause: "a number is wanted, but there is " + w.next()}
		}
		all = append(all, n)
	}
	return all, nil
}
