package main

import (
	"bytes"
	"runtime"
	"runtime/debug"
	"slices"
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

// workFor is how long the processors work for something, with what others threw away gathered up
// before, and not counted with it.
func workFor(b *testing.B, something func()) time.Duration {
	runtime.GC()
	before := worked(b)
	something()
	return worked(b) - before
}

// BenchmarkBesideBarePages makes the sheets of the pinafore, with its figures, and then again by
// a program that is told every line and letter of them, and only writes the PDF: of all the work
// the part that no garment can be spared. How many times as much the whole takes is "×bare", the
// middle one of all pairs. The start of a program is in neither, and the time of an operation, which
// would be that of both, is not told.
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
	defer debug.SetGCPercent(debug.SetGCPercent(gcPercent)) // as in a run
	var wholes, bares, ratios []float64                     // in ms
	for b.Loop() {
		var one, other []byte
		whole := workFor(b, func() { one = written(func(d ink.Canvas) { drawAll(plan(), d) }) })
		bare := workFor(b, func() { other = written(told.Tell) })
		require.True(b, bytes.Equal(one, other), "both are the same file")
		wholes, bares = append(wholes, 1e3*whole.Seconds()), append(bares, 1e3*bare.Seconds())
		ratios = append(ratios, float64(whole)/float64(bare))
	}
	middle := func(of []float64) float64 { slices.Sort(of); return of[len(of)/2] }
	b.ReportMetric(0, "ns/op")
	b.ReportMetric(middle(wholes), "ms-whole")
	b.ReportMetric(middle(bares), "ms-bare")
	b.ReportMetric(middle(ratios), "×bare")
}
