package main

import (
	"bytes"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking"
	"tuckmark/marking/garment"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/piece"
	"tuckmark/marking/source"
	"tuckmark/pdfout"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
)

// `go test . -update` writes the files in golden/ anew. Read the diff: every
// changed line is a line that moved on somebody's cloth.
var update = flag.Bool("update", false, "write the files in golden/ anew")

// examples lists the files in examples/.
func examples(t testing.TB) []string {
	t.Helper()
	files, err := filepath.Glob(filepath.Join("examples", "*.toml"))
	require.NoError(t, err)
	require.NotEmpty(t, files)
	return files
}

func load(t testing.TB, file string) (*garment.Pattern, arrange.Set) {
	t.Helper()
	data, err := readFile(file)
	require.NoError(t, err)
	spec, err := source.Read(file, data, ink.CanPrint)
	require.NoError(t, err)
	pattern, err := marking.Check(spec)
	require.NoError(t, err)
	return pattern, withFigures(newSet(pattern), pattern)
}

// What every example gives, line by line: its marks in the unit of the file,
// and the pages they fall on.
func TestGolden(t *testing.T) {
	for _, file := range examples(t) {
		name := strings.TrimSuffix(filepath.Base(file), ".toml")
		t.Run(name, func(t *testing.T) {
			pattern, set := load(t, file)
			var b strings.Builder
			for _, m := range set.Pieces {
				describe(&b, pattern.Unit, m)
			}
			for _, piece := range pattern.Pieces {
				describeSewn(&b, pattern.Unit, piece)
			}
			for _, remark := range pattern.Remarks {
				remark.File = filepath.Base(file)
				fmt.Fprintln(&b, remark)
			}
			for _, on := range []string{"letter", "a4"} {
				p, err := paper.Find(on)
				require.NoError(t, err)
				var pdf bytes.Buffer
				summary, err := pdfout.Draw(&pdf, set, p)
				require.NoError(t, err)
				describePages(&b, on, summary)
			}
			matchGolden(t, name+".txt", b.String())
		})
	}
}

// matchGolden holds a text against a file in golden/.
func matchGolden(t *testing.T, name, got string) {
	t.Helper()
	golden := filepath.Join("golden", name)
	if *update {
		require.NoError(t, os.WriteFile(golden, []byte(got), 0o644))
	}
	want, err := os.ReadFile(golden)
	require.NoError(t, err)
	assert.Equal(t, string(want), got, "%s has changed; if that is meant, run `go test . -update` and read the diff", golden)
}

// What `tuckmark figures` prints of every example, and gives as data.
func TestFiguresGolden(t *testing.T) {
	for _, file := range examples(t) {
		name := strings.TrimSuffix(filepath.Base(file), ".toml")
		t.Run(name, func(t *testing.T) {
			for _, c := range []struct {
				golden string
				args   []string
			}{
				{name + "-figures.txt", []string{"figures", file}},
				{name + "-figures.json", []string{"figures", "--json", file}},
			} {
				var out, errs bytes.Buffer
				require.Equal(t, 0, run(append([]string{"tuckmark"}, c.args...), &out, &errs), errs.String())
				assert.Empty(t, errs.String())
				matchGolden(t, c.golden, filepath.ToSlash(out.String()))
			}
		})
	}
}

// What the views of an example differ in, side by side; and each makes its sheets.
func TestViewsGolden(t *testing.T) {
	viewed := 0
	for _, file := range examples(t) {
		name := strings.TrimSuffix(filepath.Base(file), ".toml")
		pattern, err := readPattern(file, "")
		require.NoError(t, err)
		if len(pattern.Views) == 0 {
			continue
		}
		viewed++
		var out, errs bytes.Buffer
		require.Equal(t, 0, run([]string{"tuckmark", "figures", "--views", file}, &out, &errs), errs.String())
		matchGolden(t, name+"-views.txt", filepath.ToSlash(out.String()))
		for _, view := range pattern.Views {
			one, err := readPattern(file, view)
			require.NoError(t, err)
			assert.Empty(t, one.Remarks, "the view %s of %s", view, name)
			letter, err := paper.Find("letter")
			require.NoError(t, err)
			_, err = pdfout.Draw(&bytes.Buffer{}, withFigures(newSet(one), one), letter)
			assert.NoError(t, err, "the view %s of %s", view, name)
		}
	}
	assert.NotZero(t, viewed, "examples with views")
}

// describe writes the marks of a piece: role, name, how long, and the path by
// its points, or, for a curve, by five places spread along it.
func describe(b *strings.Builder, unit length.Unit, m mark.Marking) {
	fmt.Fprintf(b, "%s: %s\n", m.Key, strings.Join(slices.DeleteFunc(slices.Concat([]string{m.Name, m.Cut, m.Side.String()}, m.Notes), func(s string) bool { return s == "" }), " / "))
	for i, step := range m.Steps {
		fmt.Fprintf(b, "  step %-11d %s\n", i+1, step)
	}
	place := func(v float64) string { return thousandths(unit, v) }
	for _, mark := range m.Marks {
		fmt.Fprintf(b, "  %-16s %-28s %8s ", mark.Role, mark.Name, place(mark.Path.Length()))
		points := mark.Path
		if len(points) > 5 {
			points = nil
			for k := range 5 {
				at, _ := mark.Path.At(mark.Path.Length() * float64(k) / 4)
				points = append(points, at)
			}
			b.WriteString(" ~")
		}
		for _, q := range points {
			fmt.Fprintf(b, " %s,%s", place(q.X), place(q.Y))
		}
		b.WriteByte('\n')
	}
	for _, w := range m.Words {
		fmt.Fprintf(b, "  word             %-37s  %s,%s\n", w.Text, place(w.At.X), place(w.At.Y))
	}
	for _, d := range m.Dimensions {
		fmt.Fprintf(b, "  dimension        %-28s %8s  %s,%s %s,%s\n", d.Text, place(d.From.Distance(d.To)), place(d.From.X), place(d.From.Y), place(d.To.X), place(d.To.Y))
	}
	if f := m.Form; f != nil {
		for _, line := range slices.Concat(f.Blanks, f.Sum) {
			fmt.Fprintf(b, "  to fill in       %s\n", line)
		}
	}
	b.WriteByte('\n')
}

// thousandths writes a length in a unit, to a thousandth of it.
func thousandths(unit length.Unit, v float64) string {
	s := fmt.Sprintf("%.3f", v/unit.MM())
	if s == "-0.000" {
		return "0.000"
	}
	return s
}

// describeSewn writes how long the edges of a piece are sewn: as the piece is
// drawn, and, where that is another length, with its folds in.
func describeSewn(b *strings.Builder, unit length.Unit, p piece.Piece) {
	fmt.Fprintf(b, "%s, sewn\n", p.Key)
	for _, e := range p.Edges {
		fmt.Fprintf(b, "  %-28s %8s", e.Key, thousandths(unit, e.Sewn.Length()))
		if folded := thousandths(unit, e.FinishedLength); folded != thousandths(unit, e.Sewn.Length()) {
			fmt.Fprintf(b, ", folded %s", folded)
		}
		b.WriteByte('\n')
	}
	b.WriteByte('\n')
}

// describePages writes what falls on which pages.
func describePages(b *strings.Builder, paper string, s pdfout.Summary) {
	fmt.Fprintf(b, "on %s: %s\n", paper, s)
	for _, sheet := range s.Sheets {
		fmt.Fprintf(b, "  %s: pages %d to %d, %d by %d", strings.Join(sheet.Pieces, ", "), sheet.First, sheet.Last, sheet.Rows, sheet.Columns)
		if len(sheet.Turned) > 0 {
			fmt.Fprintf(b, ", turned: %s", strings.Join(sheet.Turned, ", "))
		}
		if sheet.Blank > 0 {
			fmt.Fprintf(b, ", %d blank", sheet.Blank)
		}
		b.WriteByte('\n')
	}
}

// The pinafore is to be sent by mail: its sheets stay under 200 KB on any paper.
func TestPinaforeIsSmall(t *testing.T) {
	for _, name := range []string{"letter", "a4", "either", "single"} {
		p, err := paper.Find(name)
		require.NoError(t, err)
		pattern, err := readPattern("examples/pinafore.toml", "")
		require.NoError(t, err)
		var pdf bytes.Buffer
		_, err = pdfout.Draw(&pdf, withFigures(newSet(pattern), pattern), p)
		require.NoError(t, err)
		assert.Less(t, pdf.Len(), 200_000, name)
	}
}
