package marking_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking"
	"tuckmark/marking/figures"
	"tuckmark/marking/length"
	"tuckmark/marking/sheet"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
	"tuckmark/marking/source"
)

// A pattern that is made without a file is the one that a file describes, and is drawn as
// that is.
func TestSpecWithoutAFile(t *testing.T) {
	built, err := marking.Check(made.BibSpec())
	require.NoError(t, err)
	spec, err := source.Read("bib.toml", []byte(made.BibFile), sketch.HasLetter)
	require.NoError(t, err)
	read, err := marking.Check(spec)
	require.NoError(t, err)

	require.Len(t, sheet.Of(built), 2)
	assert.Equal(t, sheet.Of(read), sheet.Of(built))
	require.Len(t, built.Remarks, len(read.Remarks))
	for i, r := range read.Remarks {
		r.File, r.Line = "", 0
		assert.Equal(t, r, built.Remarks[i])
		read.Remarks[i] = r
	}
	assert.Equal(t, figures.Report(read, figures.OwnUnit), figures.Report(built, figures.OwnUnit))
	assert.Equal(t, string(figures.JSON(read)), string(figures.JSON(built)))
}

// A line that such a Spec asks to run to edges does.
func TestLineOfASpecWithoutAFile(t *testing.T) {
	spec := made.BibSpec()
	spec.Pieces[0].Lines[0].From, spec.Pieces[0].Lines[0].To = source.Given("centre"), source.Given("side")
	pattern, err := marking.Check(spec)
	require.NoError(t, err)
	line := pattern.Pieces[0].Line("band").Path
	require.Len(t, line.WithoutStraightPoints(), 2)
	assert.InDelta(t, 0, line[0].X, 1e-9)
	assert.InDelta(t, 100, line[len(line)-1].X, 1e-9)
}

// What is said of a pattern without a file has the dotted place, and no line.
func TestSpecWithoutAFileIsSpokenOf(t *testing.T) {
	spec := made.BibSpec()
	spec.Unit, spec.Pieces[0].Tucks[0].Width = source.Value[length.Unit]{}, source.Given(1.0)
	pattern, err := marking.Check(spec)
	require.NoError(t, err)
	var remarks []string
	for _, r := range pattern.Remarks {
		remarks = append(remarks, r.String())
	}
	assert.Equal(t, []string{
		`no unit is given, so bare numbers were taken for inches; unit = "in", "cm" or "mm" says it`,
		"piece.bib.tuck.yoke: tucks of 1 mm are narrower than 1/16 in, and hard to keep even; a twin needle or a corded foot makes them easier",
		"piece.bib.tuck.yoke: fold line and stitching lie 1 mm apart, finer than a marking pen draws; mark the fold lines only",
	}, remarks)

	for _, c := range []struct {
		name   string
		change func(*source.PieceSpec)
		want   string
	}{
		{"an edge that is not there", func(p *source.PieceSpec) { p.Fold.V = "center" },
			"piece.bib.fold: there is no edge \"center\" in this piece\nhint: did you mean \"centre\"?"},
		{"two points that are one", func(p *source.PieceSpec) { p.Edges[2].Points.V[1] = p.Edges[2].Points.V[0] },
			"piece.bib.edge.side: points 1 and 2 are the same\nhint: take one of them out"},
		{"an open corner", func(p *source.PieceSpec) { p.Edges[3].Points.V[0].X += 5 },
			`piece.bib.edge.side: the outline is open between "side" and "hem": their ends at (100 mm, 0 mm) and (105 mm, 0 mm) are 5 mm apart
hint: give both edges the same point for their corner, or add the edge that is missing between them`},
		{"tucks beside nothing", func(p *source.PieceSpec) { p.Tucks[0].Beside.V = "middle" },
			"piece.bib.tuck.yoke.beside: there is no edge or line \"middle\" in this piece\nhint: there is \"hem\", \"side\", \"neck\", \"centre\", \"band\""},
		{"a line off the piece", func(p *source.PieceSpec) { p.Lines[0].Points.V[1].X = 500 },
			"piece.bib.line.band.points: point 2, (500 mm, 25 mm), lies outside the piece by 400 mm\nhint: is a number wrong? x comes first, then y; a line that is to end at that edge has to = \"side\""},
	} {
		t.Run(c.name, func(t *testing.T) {
			spec := made.BibSpec()
			c.change(&spec.Pieces[0])
			_, err := marking.Check(spec)
			assert.EqualError(t, err, c.want)
		})
	}
}
