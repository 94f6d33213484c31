package drawing

import (
	"bytes"
	"encoding/xml"
	"errors"
	"fmt"
	"io"
	"strings"

	"tuckmark/marking/fault"
	"tuckmark/marking/wording"
)

// Rules of this file: XML is read strictly. Nothing is declared in it, so that nothing can be
// made to grow, and nothing is fetched. Elements of other kinds than SVG, with all in them,
// are passed over.

const (
	// mostElements bounds the memory of reading a drawing; a garment needs a hundred.
	mostElements = 100_000
	// mostNesting bounds how deep elements stand in each other.
	mostNesting = 200

	svgSpace   = "http://www.w3.org/2000/svg"
	xlinkSpace = "http://www.w3.org/1999/xlink"
	saveHint   = "open it in the drawing program and save it once more as plain SVG"
)

// element is one element of SVG.
type element struct {
	name   string
	line   int
	attrs  map[string]string
	style  map[string]string // what its style attribute declares
	within []*element
	text   []byte // of a style sheet only
	bytes  int    // how long its attributes are together
}

// property returns what is said of an element in its style, or else in an attribute.
func (e *element) property(name string) string {
	if v, ok := e.style[name]; ok {
		return v
	}
	return strings.TrimSpace(e.attrs[name])
}

// id returns the id of an element, "" where it has none.
func (e *element) id() string { return e.attrs["id"] }

// called is what a message calls an element.
func (e *element) called() string {
	if e.id() == "" {
		return e.name
	}
	return e.name + " " + wording.Quoted(e.id())
}

// readTree reads the elements of a drawing. The fault has its line, and no file.
func readTree(data []byte) (*element, *fault.Fault) {
	if f := noText(data); f != nil {
		return nil, f
	}
	decoder := xml.NewDecoder(bytes.NewReader(data))
	decoder.CharsetReader = func(charset string, _ io.Reader) (io.Reader, error) {
		return nil, &fault.Fault{Cause: "is written in " + wording.Quoted(charset), Hint: "save it as UTF-8"}
	}
	b := &treeBuilder{}
	for {
		line, _ := decoder.InputPos()
		token, err := decoder.Token()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			return nil, brokenXML(err, line)
		}
		if f := b.add(token, line); f != nil {
			f.Place.Line = line
			return nil, f
		}
	}
	if b.root == nil {
		return nil, &fault.Fault{Cause: "is no drawing: it has no svg element", Hint: svgHint}
	}
	return b.root, nil
}

const svgHint = "save the drawing as plain SVG"

// noText tells files that are no XML at all.
func noText(data []byte) *fault.Fault {
	start := data[:min(len(data), 4)]
	switch {
	case len(bytes.TrimSpace(data)) == 0:
		return &fault.Fault{Cause: "the drawing is empty", Hint: svgHint}
	case bytes.HasPrefix(start, []byte{0x1f, 0x8b}):
		return &fault.Fault{Cause: "the drawing is compressed", Hint: "save it as plain SVG, not compressed"}
	case bytes.HasPrefix(start, []byte{0xff, 0xfe}), bytes.HasPrefix(start, []byte{0xfe, 0xff}):
		return &fault.Fault{Cause: "is written in UTF-16", Hint: "save it as UTF-8"}
	case bytes.IndexByte(data[:min(len(data), 1000)], '<') < 0, bytes.HasPrefix(start, []byte("%PDF")), bytes.HasPrefix(start, []byte{0x89, 'P', 'N', 'G'}):
		return &fault.Fault{Cause: "is no SVG", Hint: svgHint}
	}
	return nil
}

// treeBuilder puts elements into each other.
type treeBuilder struct {
	root  *element
	open  []*element // nil for one that is passed over, or stands in such a one
	count int
}

func (b *treeBuilder) add(token xml.Token, line int) *fault.Fault {
	switch token := token.(type) {
	case xml.Directive:
		if bytes.ContainsAny(token, "[") || bytes.Contains(token, []byte("ENTITY")) {
			return &fault.Fault{Cause: "declares names of its own in its DOCTYPE, which are not read", Hint: saveHint}
		}
	case xml.StartElement:
		return b.begin(token, line)
	case xml.EndElement:
		b.open = b.open[:len(b.open)-1]
	case xml.CharData:
		if n := len(b.open); n > 0 && b.open[n-1] != nil && b.open[n-1].name == "style" {
			b.open[n-1].text = append(b.open[n-1].text, token...)
		}
	}
	return nil
}

func (b *treeBuilder) begin(token xml.StartElement, line int) *fault.Fault {
	svg := token.Name.Space == svgSpace || token.Name.Space == ""
	if b.count++; b.count > mostElements {
		return &fault.Fault{Cause: fmt.Sprintf("has more than %d elements", mostElements), Hint: "take out what belongs to no piece"}
	}
	if len(b.open) == mostNesting {
		return &fault.Fault{Cause: fmt.Sprintf("more than %d elements stand in each other", mostNesting), Hint: "take groups apart"}
	}
	if len(b.open) == 0 && (b.root != nil || !svg || token.Name.Local != "svg") {
		return &fault.Fault{Cause: fmt.Sprintf("is no SVG: %s stands where svg should", wording.Quoted(token.Name.Local)), Hint: svgHint}
	}
	if !svg || len(b.open) > 0 && b.open[len(b.open)-1] == nil {
		b.open = append(b.open, nil)
		return nil
	}
	e := &element{name: token.Name.Local, line: line, attrs: make(map[string]string, len(token.Attr))}
	for _, a := range token.Attr {
		e.bytes += len(a.Value)
		switch {
		case a.Name.Space == "":
			e.attrs[a.Name.Local] = a.Value
		case a.Name.Space == xlinkSpace && a.Name.Local == "href":
			e.attrs["xlink:href"] = a.Value
		}
	}
	e.style = declarations(e.attrs["style"])
	if len(b.open) == 0 {
		b.root = e
	} else {
		around := b.open[len(b.open)-1]
		around.within = append(around.within, e)
	}
	b.open = append(b.open, e)
	return nil
}

// remark is a remark of a style.
var remark = wording.FormOf(`(?s)/\*.*?\*/`)

// declarations takes a style apart; of what is declared twice the last counts.
func declarations(style string) map[string]string {
	if style == "" {
		return nil
	}
	all := map[string]string{}
	for part := range strings.SplitSeq(remark().ReplaceAllString(style, " "), ";") {
		if name, value, ok := strings.Cut(part, ":"); ok {
			value, _, _ = strings.Cut(value, "!")
			all[strings.ToLower(strings.TrimSpace(name))] = strings.TrimSpace(value)
		}
	}
	return all
}

// brokenXML says in a maker's words what is wrong with XML.
func brokenXML(err error, line int) *fault.Fault {
	var own *fault.Fault
	if errors.As(err, &own) {
		return own
	}
	f := &fault.Fault{Place: fault.Place{Line: line}, Cause: "the drawing is broken here", Hint: saveHint}
	var syntax *xml.SyntaxError
	if !errors.As(err, &syntax) {
		if _, charset, ok := strings.Cut(err.Error(), "encoding "); ok {
			f.Cause = "is written in " + wording.Brief(charset)
		}
		return f
	}
	f.Place.Line = syntax.Line
	switch {
	case strings.HasPrefix(syntax.Msg, "unexpected EOF"):
		f.Cause = "the drawing breaks off here"
	case strings.HasPrefix(syntax.Msg, "invalid character entity"):
		_, name, _ := strings.Cut(syntax.Msg, "entity ")
		f.Cause = "the name " + wording.Quoted(strings.TrimSuffix(name, " (no semicolon)")) + " stands for nothing"
	case strings.HasPrefix(syntax.Msg, "invalid UTF-8"):
		f.Cause, f.Hint = "has letters that are no UTF-8", "save it as UTF-8"
	default:
		f.Cause += ": " + wording.Brief(strings.Map(printable, syntax.Msg))
	}
	return f
}

// printable leaves out what would break a line.
func printable(c rune) rune {
	if c < ' ' || c == 0x7f {
		return -1
	}
	return c
}
