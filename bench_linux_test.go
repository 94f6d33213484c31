package main

import (
	"bytes"
	"syscall"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"tuckmark/marking"
	"tuckmark/marking/source"
	"tuckmark/pdfout"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/seen"
)

// worked is how long the processors have worked for this process so far, whatever else they did.
func worked(b *testing.B) time.Duration {
	var use syscall.Rusage
	require.NoError(b, syscall.Getrusage(syscall.RUSAGE_SELF, &use))
	return time.Duration(use.Utime.Nano() + use.Stime.Nano())
}

// BenchmarkBesideBarePages makes the sheets of the pinafore, with its figures, and then again by
// a program that is told every line and letter of them, and only writes the PDF: of all the work
// the part that no garment can be spared. How many times as much the whole takes is "×bare".
func BenchmarkBesideBarePages(b *testing.B) {
	const file = "examples/pinafore.toml"
	data, err := readFile(file)
	require.NoError(b, err)
	letter, err := paper.Find("letter")
	require.NoError(b, err)
	plan := func() *pdfout.Book {
		spec, err := source.Read(file, data, ink.CanPrint)
		require.NoError(b, err)
		pattern, err := marking.Check(spec)
		require.NoError(b, err)
		book, err := pdfout.Plan(withFigures(newSet(pattern), pattern), letter)
		require.NoError(b, err)
		return book
	}
	told := &seen.Record{}
	book := plan()
	drawAll := func(book *pdfout.Book, d ink.Canvas) {
		for _, p := range book.Pages() {
			book.DrawPage(d, p.Number)
		}
	}
	drawAll(book, told)
	written := func(draw func(ink.Canvas)) []byte {
		d := ink.NewPDF(letter, "Sunday pinafore, size 18 months", told.Roles(), nil)
		draw(d)
		var pdf bytes.Buffer
		require.NoError(b, d.Finish(&pdf))
		return pdf.Bytes()
	}
	var whole, bare time.Duration
	for b.Loop() {
		before := worked(b)
		one := written(func(d ink.Canvas) { drawAll(plan(), d) })
		between := worked(b)
		other := written(told.Tell)
		whole += between - before
		bare += worked(b) - between
		require.True(b, bytes.Equal(one, other), "both are the same file")
	}
	b.ReportMetric(float64(whole)/float64(bare), "×bare")
	b.ReportMetric(float64(bare.Milliseconds())/float64(b.N), "ms-bare/op")
}
