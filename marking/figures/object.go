package figures

import (
	"bytes"
	"encoding/json"
)

// object is an object of JSON whose keys keep their order; nil is null.
type object []field

// field is one key of an object and what stands for it: an object, a list, a length or
// a plain value; nil is null.
type field struct {
	key   string
	value any
}

// MarshalJSON gives the keys in their order.
func (o object) MarshalJSON() ([]byte, error) {
	if o == nil {
		return []byte("null"), nil
	}
	var b bytes.Buffer
	e := newEncoder(&b)
	before := "{"
	for _, f := range o {
		b.WriteString(before)
		if err := e.Encode(f.key); err != nil {
			return nil, err
		}
		b.WriteString(":")
		if err := e.Encode(f.value); err != nil {
			return nil, err
		}
		before = ","
	}
	b.WriteString("}")
	return b.Bytes(), nil
}

// newEncoder returns an encoder that leaves "&" and "<" as they are: no browser reads this.
func newEncoder(b *bytes.Buffer) *json.Encoder {
	e := json.NewEncoder(b)
	e.SetEscapeHTML(false)
	return e
}

// each makes an object of every value of a list. It is never nil.
func each[T any](all []T, as func(T) object) []object {
	objects := []object{}
	for _, one := range all {
		objects = append(objects, as(one))
	}
	return objects
}
