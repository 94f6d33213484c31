package main

import (
	"bytes"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tuckmark/marking"
	"tuckmark/marking/source"
	"tuckmark/pdfout"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
)

// The pinafore whole: from the bytes of its file to the bytes of its PDF.
func BenchmarkPinafore(b *testing.B) {
	const file = "examples/pinafore.toml"
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

// BenchmarkPlan takes every example from the bytes of its file to lettered sheets, figures
// among them: all but the drawing.
func BenchmarkPlan(b *testing.B) {
	letter, err := paper.Find("letter")
	require.NoError(b, err)
	for _, file := range examples(b) {
		data, err := readFile(file)
		require.NoError(b, err)
		b.Run(strings.TrimSuffix(filepath.Base(file), ".toml"), func(b *testing.B) {
			for b.Loop() {
				spec, err := source.Read(file, data, ink.CanPrint)
				require.NoError(b, err)
				pattern, err := marking.Check(spec)
				require.NoError(b, err)
				_, err = pdfout.Plan(withFigures(newSet(pattern), pattern), letter)
				require.NoError(b, err)
			}
		})
	}
}
