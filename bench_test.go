package main

import (
	"bytes"
	"testing"

	"tuckmark/marking"
	"tuckmark/pdfout"
)

// The pinafore whole: from the bytes of its file to the bytes of its PDF.
func BenchmarkPinafore(b *testing.B) {
	const file = "examples/linden.toml"
	data, err := readFile(file)
	if err != nil {
		b.Fatal(err)
	}
	paper, err := pdfout.FindPaper("letter")
	if err != nil {
		b.Fatal(err)
	}
	size := 0
	for b.Loop() {
		spec, err := marking.Read(file, data, pdfout.CanPrint)
		if err != nil {
			b.Fatal(err)
		}
		pattern, err := marking.Check(spec)
		if err != nil {
			b.Fatal(err)
		}
		var pdf bytes.Buffer
		if _, err := pdfout.Draw(&pdf, withFigures(newSet(pattern), pattern), paper); err != nil {
			b.Fatal(err)
		}
		size = pdf.Len()
	}
	b.ReportMetric(float64(size), "bytes/pdf")
}
