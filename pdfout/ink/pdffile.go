package ink

import (
	"bytes"
	"compress/zlib"
	"crypto/sha256"
	"encoding/xml"
	"fmt"
	"io"
	"slices"
	"strings"
)

// Rules of this file: what a print shop, a reader aloud and a viewer ask of the file round the
// pages, as far as the library has no call for it. No page is touched. Numbers of sections are
// those of ISO 32000-1.

// version is that of the PDF: what is asked of who prints it is known since then (12.2, table
// 150).
const version = "1.7"

// producer is what makes the file.
const producer = "tuckmark"

// howToPrint is the subject of the file: a print shop reads it before it opens a page.
const howToPrint = "full size: print at 100 %, on one side of the paper"

// How objects of the library begin.
const (
	aPage      = "<</Type /Page\n"
	aFont      = "<</Type /Font\n/Subtype /Type0\n/BaseFont /"
	aChapter   = "<</Title "
	aStream    = "<</Length "
	theInfo    = "<<\n/Producer "
	catalogued = "<<\n/Type /Catalog\n"
)

// preferences ask whoever prints to leave the size alone, and the back of the paper, and whoever
// shows the file to call it by its title.
const preferences = "/ViewerPreferences <</PrintScaling /None /Duplex /Simplex /DisplayDocTitle true>>\n"

// completed makes of a PDF as the library has written it one that is complete; layered says that
// it has layers, and rows of Unicode, of 256 letters each, are those that its texts are of.
func completed(data []byte, layered bool, rows [256]bool) ([]byte, error) {
	all, err := takeApart(data)
	if err != nil {
		return nil, err
	}
	changes := []struct{ kind, old, new string }{
		// It attaches nothing.
		{catalogued, "/Names <<\n/EmbeddedFiles << /Names [\n  \n] >>\n>>\n", preferences},
		// A file without a date is the same whenever it is made.
		{theInfo, "/CreationDate (D:19700101000000)\n/ModDate (D:19700101000000)\n", ""},
		// Nothing lets what lies under it show: a page need not be blended.
		{aPage, "/Group <</Type /Group /S /Transparency /CS /DeviceRGB>>\n", ""},
	}
	if layered {
		changes = append(changes, struct{ kind, old, new string }{catalogued, "/D <</OFF []", "/D <</Name (all lines)"})
	}
	for _, c := range changes {
		if err := all.change(c.kind, c.old, c.new); err != nil {
			return nil, err
		}
	}
	for _, f := range faces() {
		if err := all.nameFont(f, toUnicode(rows)); err != nil {
			return nil, err
		}
	}
	all.turnToPages()
	if err := all.pack(); err != nil {
		return nil, err
	}
	return all.whole(version), nil
}

// nameFont names a font, of which only the letters are there that are used, as such a one is
// named (9.6.4), and says which letters these are (9.10.3).
func (all pdfObjects) nameFont(f *face, toUnicode []byte) error {
	old := "utf8" + family + f.name + "\n" // as the library calls it
	font := slices.IndexFunc(all, func(object []byte) bool { return bytes.HasPrefix(object, []byte(aFont+old)) })
	if font < 0 {
		return errLaidOut
	}
	named := []int{font}
	for _, key := range []string{"/DescendantFonts", "/FontDescriptor", "/FontFile2"} {
		next, err := all.reference(named[len(named)-1], key)
		if err != nil {
			return err
		}
		named = append(named, next)
	}
	letters, err := all.reference(font, "/ToUnicode")
	if err != nil {
		return err
	}
	all[letters] = toUnicode
	// Another choice of letters has another name, which its first six say.
	sum := sha256.Sum256(all[named[3]])
	for i, b := range sum[:6] {
		sum[i] = 'A' + b%26
	}
	for _, number := range named[:3] {
		before, after, has := bytes.Cut(all[number], []byte("/"+old))
		if !has {
			return errLaidOut
		}
		all[number] = fmt.Appendf(nil, "%s/%s+%s\n%s", before, sum[:6], f.full, after)
	}
	return nil
}

// mostRanges is how many lines a block of a table of letters may have (Adobe's technical note
// 5014).
const mostRanges = 100

// toUnicode is the table of letters of rows of Unicode, by which text is searched, copied and
// read aloud: the number of each is its own.
func toUnicode(rows [256]bool) []byte {
	var ranges []string
	for row, used := range rows {
		if used {
			ranges = append(ranges, fmt.Sprintf("<%02[1]X00> <%02[1]XFF> <%02[1]X00>\n", row))
		}
	}
	var table strings.Builder
	table.WriteString("/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n" +
		"/CIDSystemInfo <</Registry (Adobe) /Ordering (UCS) /Supplement 0>> def\n" +
		"/CMapName /Adobe-Identity-UCS def\n/CMapType 2 def\n" +
		"1 begincodespacerange\n<0000> <FFFF>\nendcodespacerange\n")
	for block := range slices.Chunk(ranges, mostRanges) {
		fmt.Fprintf(&table, "%d beginbfrange\n%sendbfrange\n", len(block), strings.Join(block, ""))
	}
	table.WriteString("endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend")
	return fmt.Appendf(nil, "%s%d>>\nstream\n%s\nendstream\n", aStream, table.Len(), table.String())
}

// turnToPages lets chapters lead to whole pages: the library leads to a place, which it reckons
// by the size of the last page.
func (all pdfObjects) turnToPages() {
	for number, object := range all {
		if !bytes.HasPrefix(object, []byte(aChapter)) {
			continue
		}
		if before, after, has := bytes.Cut(object, []byte("/XYZ 0 ")); has {
			_, after, _ = bytes.Cut(after, []byte("null]\n/Count 0"))
			all[number] = slices.Concat(before, []byte("/Fit]"), after)
		}
	}
}

// pack makes what is on the pages smaller. One packer does it for all: making a packer takes
// longer than packing a page.
func (all pdfObjects) pack() error {
	var packed bytes.Buffer
	packer, err := zlib.NewWriterLevel(&packed, zlib.BestSpeed)
	if err != nil {
		return err
	}
	for number, object := range all {
		header, data, has := bytes.Cut(object, []byte(">>\nstream\n"))
		if !has || !bytes.HasPrefix(header, []byte(aStream)) || bytes.Contains(header, []byte("/Filter")) {
			continue
		}
		packed.Reset()
		packer.Reset(&packed)
		if _, err := packer.Write(bytes.TrimSuffix(data, []byte("\nendstream\n"))); err != nil {
			return err
		}
		if err := packer.Close(); err != nil {
			return err
		}
		all[number] = fmt.Appendf(nil, "<</Filter /FlateDecode /Length %d>>\nstream\n%s\nendstream\n", packed.Len(), packed.Bytes())
	}
	return nil
}

// metadata is what the file says of itself in XML (14.3.2): the same as elsewhere in it.
func metadata(title string) []byte {
	var out bytes.Buffer
	text := func(text string) string {
		var plain strings.Builder
		_ = xml.EscapeText(&plain, []byte(text)) // a Builder takes everything
		return plain.String()
	}
	io.WriteString(&out, "<?xpacket begin=\"\ufeff\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n")
	fmt.Fprintf(&out, `<x:xmpmeta xmlns:x="adobe:ns:meta/">
<rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/" xmlns:xmp="http://ns.adobe.com/xap/1.0/">
<dc:format>application/pdf</dc:format>
<dc:title><rdf:Alt><rdf:li xml:lang="x-default">%s</rdf:li></rdf:Alt></dc:title>
<dc:description><rdf:Alt><rdf:li xml:lang="x-default">%s</rdf:li></rdf:Alt></dc:description>
<dc:language><rdf:Bag><rdf:li>%s</rdf:li></rdf:Bag></dc:language>
<xmp:CreatorTool>%s</xmp:CreatorTool>
<pdf:Producer>%[4]s</pdf:Producer>
</rdf:Description>
</rdf:RDF>
</x:xmpmeta>
<?xpacket end="r"?>`, text(title), text(howToPrint), language, producer)
	return out.Bytes()
}
