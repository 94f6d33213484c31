package source

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"time"
	"unicode"
	"unicode/utf8"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/wording"
)

// Rules of this file: each value is checked by itself, and a faulty one is
// reported once and counts as given, so that no second message says that it is
// missing. What two values have to do with each other is said where their table is read.

// value reads what a key is given. read returns what counts where it also returns an error.
func value[T any](t *fileTable, key string, read func(v any) (T, error)) Value[T] {
	v, ok := t.values[key]
	if !ok {
		return Value[T]{}
	}
	given, err := read(v)
	t.note(t.at(key), err)
	return GivenAt(given, t.at(key))
}

// printed reads text that comes onto the sheets, letter by letter.
func (t *fileTable) printed(key string) Text { return t.text(key, t.checkPrinted) }

// reference reads text that names something else in the file.
func (t *fileTable) reference(key string) Text { return t.text(key, checkName) }

// checkName refuses text that cannot be a name.
func checkName(s string) error {
	if err := checkText(s); err != nil {
		return err
	}
	return checkSpaces(s)
}

func (t *fileTable) text(key string, check func(string) error) Text {
	return value(t, key, func(v any) (string, error) {
		s, isText := v.(string)
		if !isText {
			return "", &fault.Fault{Cause: "must be text in quotes, but is " + asGiven(v), Hint: fmt.Sprintf(`write %s = "..."`, key)}
		}
		return s, check(s)
	})
}

// checkText refuses text that is empty or too long.
func checkText(s string) error {
	if strings.TrimSpace(s) == "" {
		return &fault.Fault{Cause: "the name or text is empty", Hint: "write at least one letter, or leave the line out"}
	}
	if n := utf8.RuneCountInString(s); n > maxText {
		return &fault.Fault{Cause: fmt.Sprintf("the text has %d letters", n), Hint: fmt.Sprintf("a text has at most %d letters", maxText)}
	}
	return nil
}

// checkPrinted refuses text that cannot be printed.
func (r *fileReader) checkPrinted(s string) error { return checkLetters(s, r.printable) }

// checkKey refuses what cannot be printed, or cannot be a name.
func checkKey(name string, printable func(rune) bool) error {
	if err := checkSpaces(name); err != nil {
		return err
	}
	return checkLetters(name, printable)
}

// checkLetters refuses text that is no text, or that stands on no one line, or has a
// letter that is not printable.
func checkLetters(s string, printable func(rune) bool) error {
	if err := checkText(s); err != nil {
		return err
	}
	for i, c := range s {
		if wording.IsStrange(c) && !printable(c) {
			return strangeIn("text", s, i)
		}
		if unicode.IsControl(c) {
			return &fault.Fault{Cause: fmt.Sprintf("has a character that cannot be printed (U+%04X)", c), Hint: "write the text on one line, without tabs"}
		}
		if !printable(c) {
			return &fault.Fault{Cause: fmt.Sprintf("the sheets' font has no %q (U+%04X)", string(c), c), Hint: "write it with other letters"}
		}
	}
	return nil
}

// choice reads one of a few words, each of which stands at its constant. A constant
// without a word cannot be written.
func choice[E ~int](t *fileTable, key string, words []string) Value[E] {
	return value(t, key, func(v any) (E, error) {
		s, isText := v.(string)
		if !isText {
			return 0, &fault.Fault{Cause: "must be text in quotes, but is " + asGiven(v), Hint: "write " + choices(words)}
		}
		return chosen[E](s, words)
	})
}

// chosen returns what a word stands for that is one of a choice.
func chosen[E ~int](word string, words []string) (E, error) {
	i := slices.Index(words, word)
	if word == "" || i < 0 {
		return 0, &fault.Fault{Cause: wording.Quoted(word) + " is not known here", Hint: "write " + choices(words)}
	}
	return E(i), nil
}

// choices lists the words of a choice in a sentence.
func choices(words []string) string {
	var quoted []string
	for _, w := range words {
		if w != "" {
			quoted = append(quoted, wording.Quoted(w))
		}
	}
	return wording.Listed(quoted, "or")
}

// yes reads true or false; what is not given is false.
func (t *fileTable) yes(key string) bool { return t.flag(key).V }

// flag reads true or false where it matters whether the file says it at all.
func (t *fileTable) flag(key string) Flag {
	return value(t, key, func(v any) (bool, error) {
		b, isBool := v.(bool)
		if !isBool {
			return false, &fault.Fault{Cause: "must be true or false, but is " + asGiven(v), Hint: fmt.Sprintf("write %s = true without quotes", key)}
		}
		return b, nil
	})
}

// count reads a whole number from 1 to most.
func (t *fileTable) count(key string, most int) Count {
	return value(t, key, func(v any) (int, error) {
		n, isWhole := v.(int64)
		if !isWhole {
			example := "2"
			if s, isText := v.(string); isText && s != "" && strings.Trim(s, "0123456789") == "" {
				example = s
			}
			return 1, &fault.Fault{
				Cause: "must be a whole number, but is " + asGiven(v),
				Hint:  fmt.Sprintf("write a number such as %s = %s, without quotes and without a point", key, example),
			}
		}
		if err := refuseCount(n, most); err != nil {
			return 1, err
		}
		return int(n), nil
	})
}

// refuseCount refuses a number that is not from 1 to most.
func refuseCount(n int64, most int) error {
	if n < 1 || n > int64(most) {
		return &fault.Fault{Cause: fmt.Sprintf("must be from 1 to %d, but is %d", most, n)}
	}
	return nil
}

// span is which lengths make sense for a key.
type span int

const (
	anywhere  span = iota // a coordinate: below 0, 0, above
	fromZero              // 0 and above
	aboveZero             // above 0
)

// refuse refuses a length in mm that makes no sense for the key; it was written as given.
func (allowed span) refuse(mm float64, given string) error {
	switch {
	case mm < 0 && allowed != anywhere:
		return &fault.Fault{Cause: "must not be negative, but is " + given, Hint: "take the minus sign away"}
	case mm == 0 && allowed == aboveZero:
		return &fault.Fault{Cause: "must be more than 0, but is " + given}
	}
	return nil
}

// length reads a length in the unit of the file.
func (t *fileTable) length(key string, allowed span) Length {
	return value(t, key, func(v any) (float64, error) {
		mm, err := t.measure(v, allowed)
		t.noteUnspaced(t.at(key), v, err)
		return mm, err
	})
}

// measure returns the length of a value of the file in mm.
func (r *fileReader) measure(v any, allowed span) (float64, error) {
	var mm float64
	var err error
	switch v := v.(type) {
	case int64:
		mm, err = length.Bounded(asGiven(v), float64(v)*r.unit.MM())
	case float64:
		mm, err = length.Bounded(asGiven(v), v*r.unit.MM())
	case string:
		mm, err = length.Parse(v, r.unit)
	default:
		err = &fault.Fault{Cause: "must be a length, but is " + asGiven(v), Hint: length.Hint}
	}
	if err == nil {
		err = allowed.refuse(mm, asGiven(v))
	}
	if err != nil {
		return 0, err
	}
	return mm, nil
}

// asGiven gives a value as a message repeats it: what it is, where it is too long
// to be repeated.
func asGiven(v any) string {
	switch v := v.(type) {
	case string:
		return wording.Quoted(v)
	case []any:
		return "a list"
	case []map[string]any:
		return "a list of tables"
	case map[string]any:
		return "a table"
	case time.Time:
		return "a date or a time"
	case float64:
		if math.IsInf(v, 0) || math.IsNaN(v) {
			return strings.ToLower(strings.TrimPrefix(fmt.Sprint(v), "+"))
		}
	}
	return fmt.Sprint(v)
}
