package main

import (
	"bytes"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking"
	"tuckmark/pdfout"
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

func load(t testing.TB, file string) (*marking.Pattern, pdfout.Set) {
	t.Helper()
	data, err := readFile(file)
	require.NoError(t, err)
	spec, err := marking.Read(file, data, pdfout.CanPrint)
	require.NoError(t, err)
	pattern, err := marking.Check(spec)
	require.NoError(t, err)
	return pattern, newSet(pattern)
}

// What every example gives, line by line: its marks in the unit of the file,
// and the pages they fall on.
func TestGolden(t *testing.T) {
	for _, file := range examples(t) {
		name := strings.TrimSuffix(filepath.Base(file), ".toml")
		t.Run(name, func(t *testing.T) {
			pattern, set := load(t, file)
			var b strings.Builder
			for i, m := range set.Pieces {
				describe(&b, pattern.Unit, pattern.Pieces[i], m)
			}
			for _, paper := range []string{"letter", "a4"} {
				p, err := pdfout.FindPaper(paper)
				require.NoError(t, err)
				var pdf bytes.Buffer
				summary, err := pdfout.Draw(&pdf, set, p)
				require.NoError(t, err)
				describePages(&b, paper, summary)
			}
			golden := filepath.Join("golden", name+".txt")
			if *update {
				require.NoError(t, os.WriteFile(golden, []byte(b.String()), 0o644))
			}
			want, err := os.ReadFile(golden)
			require.NoError(t, err)
			assert.Equal(t, string(want), b.String(), "%s has changed; if that is meant, run `go test . -update` and read the diff", golden)
		})
	}
}

// describe writes the marks of a piece: role, name, how long, and the path by
// its points, or, for a curve, by five places spread along it.
func describe(b *strings.Builder, unit marking.Unit, piece marking.Piece, m marking.Marking) {
	fmt.Fprintf(b, "%s: %s\n", m.Key, strings.Join(append([]string{m.Name}, m.Notes...), " / "))
	place := func(v float64) string {
		s := fmt.Sprintf("%.3f", v/unit.MM())
		if s == "-0.000" {
			s = "0.000"
		}
		return s
	}
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
	for _, e := range piece.Edges {
		fmt.Fprintf(b, "  sewn             %-28s %8s\n", e.Key, place(e.Sewn.Length()))
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
