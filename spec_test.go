package main

import (
	"bytes"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking"
	"tuckmark/marking/figures"
	"tuckmark/marking/garment"
	"tuckmark/marking/sheet"
	sketched "tuckmark/marking/sketch/made"
	"tuckmark/marking/source"
	"tuckmark/pdfout"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
)

// printedWithFigures is the PDF of a pattern with its figures.
func printedWithFigures(t *testing.T, p *garment.Pattern) []byte {
	t.Helper()
	a4, err := paper.Find("a4")
	require.NoError(t, err)
	told := figures.Report(p, figures.OwnUnit)
	var pdf bytes.Buffer
	summary, err := pdfout.Draw(&pdf, arrange.Set{Title: p.Title, Unit: p.Unit, Pieces: sheet.Of(p), Report: &told}, a4)
	require.NoError(t, err)
	assert.NotEmpty(t, summary.Sheets)
	assert.Positive(t, summary.Figures, "pages of figures")
	assert.Empty(t, summary.Left)
	return pdf.Bytes()
}

// A pattern that is made without a file is printed as the one that a file describes, to the
// byte, but for the lines of the file that remarks name.
func TestSpecWithoutAFileIsPrinted(t *testing.T) {
	built, err := marking.Check(sketched.BibSpec())
	require.NoError(t, err)
	spec, err := source.Read("bib.toml", []byte(sketched.BibFile), ink.CanPrint)
	require.NoError(t, err)
	read, err := marking.Check(spec)
	require.NoError(t, err)
	for i := range read.Remarks {
		read.Remarks[i].File, read.Remarks[i].Line = "", 0
	}
	assert.True(t, bytes.Equal(printedWithFigures(t, read), printedWithFigures(t, built)), "the PDFs differ")
}
