package main

import (
	"bytes"
	"testing"

	"tuckmark/marking"
	"tuckmark/marking/source"
	"tuckmark/pdfout"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
)

// The pinafore whole: from the bytes of its file to the bytes of its PDF.
func BenchmarkPinafore(b *testing.B) {
	const file = "examples/linden.toml"
	data, err := readFile(file)
	if err != nil {
		b.Fatal(err)
	}
	p, err := paper.Find("letter")
	if err != nil {
		b.Fatal(err)
	}
	size := 0
	for b.Loop() {
		spec, err := source.Read(file, data, ink.CanPrint)
		if err != nil {
			b.Fatal(err)
		}
		pattern, err := marking.Check(spec)
		if err != nil {
			b.Fatal(err)
		}
		var pdf bytes.Buffer
		if _, err := pdfout.Draw(&pdf, withFigures(newSet(pattern), pattern), p); err != nil {
			b.Fatal(err)
		}
		size = pdf.Len()
	}
	b.ReportMetric(float64(size), "bytes/pdf")
}
