package ink

import (
	"bytes"
	"encoding/xml"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/pdfout/paper"
)

// smallPDF is a PDF of two pages that differ in size, each with a text.
func smallPDF(t *testing.T, roles ...mark.Role) []byte {
	pdf := NewPDF(paper.All()[0], "A (small) file & its title", roles, []Chapter{{"One", 1}, {"Two", 2}, {"Never drawn", 3}})
	for i, size := range []plane.Point{{X: 215.9, Y: 279.4}, {X: 279.4, Y: 215.9}} {
		on := paper.All()[0]
		on.Width, on.Height = size.X, size.Y
		pdf.NewPage(on)
		Write(pdf, plane.Point{X: 20, Y: 20}, Text(), "page "+strconv.Itoa(i+1)+" → 3/8 in")
	}
	var out bytes.Buffer
	require.NoError(t, pdf.Finish(&out))
	return out.Bytes()
}

// foundIn finds something once in each object of a PDF that begins in a way.
func foundIn(t *testing.T, all pdfObjects, begins, what string) []string {
	var found []string
	for _, o := range all {
		if bytes.HasPrefix(o, []byte(begins)) {
			all := regexp.MustCompile(what).FindAllString(string(o), -1)
			require.Len(t, all, 1, "%s in %s", what, o)
			found = append(found, all[0])
		}
	}
	return found
}

func TestPDFIsPutTogetherAsItWas(t *testing.T) {
	data := smallPDF(t, mark.Cut)
	all, err := takeApart(data)
	require.NoError(t, err)
	assert.Equal(t, string(data), string(all.whole("1.7")))
	for number, o := range all[1:] {
		assert.NotContains(t, string(o), "endobj", "object %d", number+1)
	}
}

// A file that the library would lay out otherwise is no PDF.
func TestPDFThatIsDamaged(t *testing.T) {
	data := string(smallPDF(t, mark.Cut))
	table := strings.LastIndex(data, "\nxref\n") + 1
	for name, damaged := range map[string]string{
		"nothing":                    "",
		"no place of the table":      strings.Replace(data, "startxref\n", "startxref\nx", 1),
		"the table is elsewhere":     regexp.MustCompile(`startxref\n\d+`).ReplaceAllString(data, "startxref\n7"),
		"the table is behind":        regexp.MustCompile(`startxref\n\d+`).ReplaceAllString(data, "startxref\n99999999"),
		"more objects than entries":  strings.Replace(data, "xref\n0 ", "xref\n0 9", 1),
		"no number of objects":       strings.Replace(data, "xref\n0 ", "xref\n0 x", 1),
		"no object":                  strings.Replace(data, "xref\n0 ", "xref\n0 -", 1),
		"an object that begins late": data[:table+27] + "0000000001" + data[table+37:],
		"an object before the file":  data[:table+27] + "-000000001" + data[table+37:],
		"an object behind it":        data[:table+27] + "9999999999" + data[table+37:],
		"an object without an end":   strings.Replace(data, "endobj", "endabj", 1),
	} {
		_, err := takeApart([]byte(damaged))
		assert.ErrorIs(t, err, errLaidOut, name)
	}
}

func TestChangesThatFindNothing(t *testing.T) {
	all := pdfObjects{nil, []byte("<<\n/Kind /One\n/Next 2 0 R>>\n"), []byte("<<\n/Kind /Two\n>>\n")}
	require.NoError(t, all.change("<<\n/Kind /One", "/Next", "/Last"))
	assert.Equal(t, "<<\n/Kind /One\n/Last 2 0 R>>\n", string(all[1]))
	assert.ErrorIs(t, all.change("<<\n/Kind /One", "/Next", "/Last"), errLaidOut, "it has been changed")
	assert.ErrorIs(t, all.change("<<\n/Kind /Three", "/Next", "/Last"), errLaidOut, "there is none of the kind")
	next, err := all.reference(1, "/Last")
	require.NoError(t, err)
	assert.Equal(t, 2, next)
	_, err = all.reference(2, "/Last")
	assert.ErrorIs(t, err, errLaidOut)
	all[2] = []byte("/Last 3 0 R")
	_, err = all.reference(2, "/Last")
	assert.ErrorIs(t, err, errLaidOut, "there is no third object")
}

// What is asked of a PDF is from ISO 32000-1 (from memory): 7.7.2 and 12.2 of its catalogue,
// 14.11.2 of its pages, 9.6.4 and 9.10.3 of its fonts, 12.3.3 of what it holds.
func TestWhatAPDFSays(t *testing.T) {
	all, err := takeApart(smallPDF(t, mark.Cut))
	require.NoError(t, err)
	for _, want := range []string{
		`/ViewerPreferences <</PrintScaling /None /Duplex /Simplex /DisplayDocTitle true>>`,
		`/Lang \(en-GB\)`, `/D <</Name \(all lines\) /Order \[`, `/Outlines \d+ 0 R`, `/Metadata \d+ 0 R`,
	} {
		assert.Len(t, foundIn(t, all, "<<\n/Type /Catalog", want), 1, want)
	}
	assert.Equal(t, []string{"/TrimBox [0.00 0.00 612.00 792.00]", "/TrimBox [0.00 0.00 792.00 612.00]"}, foundIn(t, all, "<</Type /Page\n", `/TrimBox .*`))
	assert.Equal(t, []string{"/Dest [3 0 R /Fit]", "/Dest [5 0 R /Fit]"}, foundIn(t, all, "<</Title ", `/Dest .*]`), "a chapter whose page is not drawn is left out")
	for _, o := range all {
		for _, none := range []string{"EmbeddedFiles", "Transparency", "1970", "utf8go"} {
			assert.NotContains(t, string(o), none)
		}
	}
	names := foundIn(t, all, "<</Type /FontDescriptor", `/FontName /[A-Z]{6}\+(GoRegular|Go-Bold)\n`)
	require.Len(t, names, 2)
	for i, name := range foundIn(t, all, "<</Type /Font\n/Subtype /Type0", `/BaseFont /.*\n`) {
		assert.Equal(t, strings.TrimPrefix(names[i], "/FontName "), strings.TrimPrefix(name, "/BaseFont "), "a font has one name")
	}
}

// What is said of it in XML is XML, whatever the title is.
func TestMetadata(t *testing.T) {
	for _, title := range []string{"A (small) file & its <title>", "½ ]]> \"quoted\"", ""} {
		var read struct {
			Title    string `xml:"RDF>Description>title>Alt>li"`
			Producer string `xml:"RDF>Description>Producer"`
			Language string `xml:"RDF>Description>language>Bag>li"`
		}
		require.NoError(t, xml.Unmarshal(metadata(title), &read), title)
		assert.Equal(t, title, read.Title)
		assert.Equal(t, "tuckmark", read.Producer)
		assert.Equal(t, "en-GB", read.Language)
	}
}

// A range of letters keeps to one row, and a block of ranges has 100 at most (Adobe's technical
// note 5014, from memory).
func TestToUnicode(t *testing.T) {
	var rows [256]bool
	rows[0x00], rows[0x21] = true, true
	assert.Contains(t, string(toUnicode(rows)), "2 beginbfrange\n<0000> <00FF> <0000>\n<2100> <21FF> <2100>\nendbfrange\n")
	for i := range rows {
		rows[i] = true
	}
	var blocks []string
	for _, block := range regexp.MustCompile(`(\d+) beginbfrange`).FindAllStringSubmatch(string(toUnicode(rows)), -1) {
		blocks = append(blocks, block[1])
	}
	assert.Equal(t, []string{"100", "100", "56"}, blocks)
}
