package source

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/fault"
	"tuckmark/marking/sketch"
)

func TestReadRefusesLargeFiles(t *testing.T) {
	tests := []struct {
		name string
		size int
		want string
	}{
		{"fifty megabytes", 50 << 20, "f.toml: the file is 50 MB; a pattern is at most 10 MB\nhint: is this the file you meant?"},
		{"a byte too large", 10<<20 + 1, "f.toml: the file is 10.1 MB; a pattern is at most 10 MB\nhint: is this the file you meant?"},
		{"as large as allowed", 10 << 20, "f.toml: the file is empty\nhint: describe each piece under a line such as [piece.front], and each of its edges under [piece.front.edge.neck]"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			_, err := Read("f.toml", []byte(strings.Repeat("\n", tt.size)), sketch.HasLetter)
			require.Error(t, err)
			assert.Equal(t, tt.want, err.Error())
		})
	}
}

// edgeOf writes a piece with one edge of n points, each on a line of its own.
func edgeOf(n int) []byte {
	var b strings.Builder
	b.WriteString("[piece.front.edge.all]\npoints = [\n")
	for i := range n {
		fmt.Fprintf(&b, "  [%d.%d, \"%d 1/8\"],\n", i%200, i%10, i%300)
	}
	b.WriteString("]\n")
	return []byte(b.String())
}

// Memory is counted in place of time, which depends on what else the machine does.
func TestTheCostOfReadingGrowsWithThePoints(t *testing.T) {
	spec, err := Read("f.toml", edgeOf(1000), sketch.HasLetter)
	require.NoError(t, err)
	all := spec.Pieces[0].Edges[0].Points
	require.Len(t, all.V, 1000)
	assert.Equal(t, 3, all.lines[0])
	assert.Equal(t, 1002, all.lines[999])

	cost := func(points int) float64 {
		data := edgeOf(points)
		return testing.AllocsPerRun(1, func() {
			_, err := Read("f.toml", data, sketch.HasLetter)
			require.NoError(t, err)
		})
	}
	assert.InEpsilon(t, 8*cost(2000), cost(16_000), 0.1, "eight times the points take eight times the memory")
}

func BenchmarkRead(b *testing.B) {
	data := edgeOf(100_000)
	b.SetBytes(int64(len(data)))
	for b.Loop() {
		if _, err := Read("f.toml", data, sketch.HasLetter); err != nil {
			b.Fatal(err)
		}
	}
}

func FuzzRead(f *testing.F) {
	for _, s := range []string{
		whole, small, "", "\ufeff", "a = 3/8", "a = [1,5", "title = “x”", "a = \"\"\"", "[[piece]]\n[piece.front]", "[piece.front]\n[piece.front]",
		"a = {b = {c = [1, {d = 2}]}}", "\xff\xfet\x00", "a = 1_000.5e3", "[piece]\nfront = {edge = {all = {points = [[0,0],[1,1]]}}}",
		"piece.front.edge.all.points = [[0, 0], [1, 1]]", "a = 0x", "a = \"\\", "x = 1979-05-27T07:32:00Z", "a = '''\\'''", "= 1", "[", "[]", "a.b",
		"[piece.a.edge.b]\npoints = [[0, 0], \"up 37/8, left 2\", \"right 1,5\", \"down\"]", "[seam.s]\njoin = [\"a.b\", [\"c.d\", 3]]\nease = -1\ngathered = true\n" + small, small + "[seam]\njoin = []\n[seam.t]\njoin = [[], {a = 1}]\nwithin = \"1/16\"",
	} {
		f.Add([]byte(s))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		spec, err := Read("f.toml", data, sketch.HasLetter)
		if err == nil {
			checkSpec(t, spec)
			return
		}
		require.Nil(t, spec)
		require.IsType(t, fault.List{}, err)
		var all fault.List
		require.ErrorAs(t, err, &all)
		lines := 1 + strings.Count(string(data), "\n")
		last := 0
		for i, p := range all {
			require.NotEmpty(t, p.Cause)
			require.LessOrEqual(t, p.Place.Line, lines)
			require.NotContains(t, p.Cause, "\n")
			require.NotContains(t, p.Hint, "\n")
			require.NotContains(t, p.Place.Key, "\n")
			require.NotContains(t, p.Cause, "cannot be understood", "the library has panicked")
			if i < 100 {
				require.GreaterOrEqual(t, p.Place.Line, last, "faults stand in the order of their lines")
			}
			last = p.Place.Line
		}
	})
}

// checkSpec checks what every Spec keeps to.
func checkSpec(t *testing.T, spec *Spec) {
	require.NotEmpty(t, spec.Pieces)
	for _, p := range spec.Pieces {
		require.NotEmpty(t, p.Key)
		require.NotEmpty(t, p.Edges)
		require.Positive(t, p.Place.Line)
		for _, e := range p.Edges {
			require.True(t, e.Points.Given())
			require.GreaterOrEqual(t, len(e.Points.V), 2)
			require.Len(t, e.Points.lines, len(e.Points.V))
			for i, q := range e.Points.V {
				require.LessOrEqual(t, q.X*q.X+q.Y*q.Y, 2*100_000.0*100_000.0)
				require.Positive(t, e.Points.lines[i])
			}
			require.False(t, e.Hem.Given() && (e.Allowance.Given() || e.Hem.V <= 0))
		}
		for _, k := range p.Tucks {
			require.True(t, k.Beside.Given() && k.Width.V > 0 && k.Count.V > 0 && k.First.V >= 0)
			require.False(t, k.Spacing.Given() && k.Gap.Given())
			require.Equal(t, k.End.Below.Given(), k.End.Length.Given())
		}
		for _, l := range p.Lines {
			require.NotEqual(t, l.Points.Given(), l.Along.Given() && l.Distance.V > 0)
		}
	}
	for _, s := range spec.Seams {
		require.NotEmpty(t, s.Key)
		for _, side := range s.Sides {
			require.NotEmpty(t, side)
			require.LessOrEqual(t, len(side), 100)
		}
		require.True(t, s.Ease.V >= 0 && s.Within.V >= 0)
		require.False(t, s.Gathered && (s.Ease.Given() || s.Within.Given()))
	}
}
