package screen

import (
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"slices"
	"strings"

	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
)

// Rules of this file: figures are read back off the page as a report, by what the elements say
// and not by how they were made. XML is read, which is stricter than what a browser takes: an
// element that is not ended, or a sign that is not escaped, fails.

// node is an element of the page, or a text.
type node struct {
	name     string
	attrs    map[string]string
	children []*node // texts among them, without a name
	text     string
}

// nodesOf reads a part of the page.
func nodesOf(t require.TestingT, page string) *node {
	root := &node{name: "root"}
	open := []*node{root}
	d := xml.NewDecoder(strings.NewReader(page))
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			break
		}
		require.NoError(t, err, "the page is not well formed:\n%s", page)
		top := open[len(open)-1]
		switch token := token.(type) {
		case xml.StartElement:
			e := &node{name: token.Name.Local, attrs: map[string]string{}}
			for _, a := range token.Attr {
				require.NotContains(t, e.attrs, a.Name.Local, "an attribute stands twice in %s", e.name)
				e.attrs[a.Name.Local] = a.Value
			}
			top.children, open = append(top.children, e), append(open, e)
		case xml.EndElement:
			open = open[:len(open)-1]
		case xml.CharData:
			top.children = append(top.children, &node{text: string(token)})
		}
	}
	require.Len(t, open, 1)
	return root
}

// has reports whether an element is of a class.
func (e *node) has(class string) bool {
	return slices.Contains(strings.Fields(e.attrs["class"]), class)
}

// all are the elements of a name in it, at any depth, in their order.
func (e *node) all(name string) []*node {
	var found []*node
	for _, c := range e.children {
		if c.name == name {
			found = append(found, c)
		}
		found = append(found, c.all(name)...)
	}
	return found
}

// said is the text of an element that can be read, in one line, but for parts of some classes.
func (e *node) said(without ...string) string {
	var all strings.Builder
	e.write(&all, without)
	return strings.Join(strings.FieldsFunc(all.String(), func(r rune) bool { return r == ' ' || r == '\n' || r == '\u00a0' }), " ")
}

func (e *node) write(to *strings.Builder, without []string) {
	to.WriteString(e.text)
	for _, c := range e.children {
		if !slices.ContainsFunc(without, c.has) {
			c.write(to, without)
		}
	}
}

// htmlOf is a report on the page.
func htmlOf(t require.TestingT, r mark.Report) string {
	var page bytes.Buffer
	require.NoError(t, templates().ExecuteTemplate(&page, "figures", newFigures(r)))
	return page.String()
}

// reportOf reads a report off the page, all but its pictures.
func reportOf(t require.TestingT, page string) mark.Report {
	var r mark.Report
	root := nodesOf(t, page)
	for _, e := range root.children {
		switch {
		case e.has("title"):
			r.Title = e.said()
		case e.has("note"):
			r.Notes = append(r.Notes, e.said())
		case e.name == "section":
			r.Sections = append(r.Sections, sectionOf(t, e))
		default:
			require.Empty(t, e.said(), "something else stands on the page")
		}
	}
	return r
}

func sectionOf(t require.TestingT, e *node) mark.Section {
	var s mark.Section
	for _, c := range e.children {
		switch {
		case c.name == "h2":
			s.Title = c.said()
		case c.has("figures-table"):
			s.Tables = append(s.Tables, tableOf(t, c))
		case c.name == "p":
			s.Lines = append(s.Lines, sentenceOf(t, c))
		case c.name == "figure":
			s.Picture = &mark.Picture{}
		default:
			require.Empty(t, c.said(), "something else stands in a section")
		}
	}
	return s
}

func tableOf(t require.TestingT, e *node) mark.Table {
	var read mark.Table
	for _, c := range e.children {
		switch {
		case c.has("caption"):
			read.Title = c.said()
		case c.name == "p":
			read.Lines = append(read.Lines, sentenceOf(t, c))
		}
	}
	for _, caption := range e.all("caption") {
		if !caption.has("unseen") {
			read.Title = caption.said()
		}
	}
	for _, head := range e.all("thead") {
		read.Heads = []string{}
		for _, cell := range head.all("tr")[0].children {
			require.True(t, cell.name == "td" && cell.said() == "" || cell.name == "th" && cell.attrs["scope"] == "col" && cell.said() != "", "a head is none")
			read.Heads = append(read.Heads, cell.said())
		}
	}
	for _, body := range e.all("tbody") {
		for _, row := range body.all("tr") {
			one := mark.Row{Total: row.has("total")}
			for i, cell := range row.children {
				if i == 0 {
					require.Equal(t, "th", cell.name)
					require.Equal(t, "row", cell.attrs["scope"])
				} else {
					require.Equal(t, "td", cell.name)
				}
				one.Cells = append(one.Cells, cell.said())
			}
			read.Rows = append(read.Rows, one)
		}
	}
	return read
}

func sentenceOf(t require.TestingT, e *node) mark.Sentence {
	said := mark.Sentence{Warning: e.has("warning"), Text: e.said("unseen", "sign", "place")}
	if e.has("entry") {
		require.Len(t, e.all("code"), 1)
		return mark.Sentence{Entry: e.said()}
	}
	for _, part := range e.all("span") {
		said.Blank = said.Blank || part.has("blank")
		if part.has("place") {
			said.Place = strings.TrimSuffix(part.said(), ":")
		}
	}
	return said
}
