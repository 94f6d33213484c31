package marking_test

import (
	"math"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking"
	"tuckmark/marking/figures"
	"tuckmark/marking/folded"
	"tuckmark/marking/mark"
	"tuckmark/marking/sheet"
	"tuckmark/marking/sketch"
	"tuckmark/marking/source"
	"tuckmark/marking/terminal"
)

// A piece that does not lie on the cloth is remarked on, opened out where it lies on the
// fold.
func TestRemarkOfAPieceWiderThanTheCloth(t *testing.T) {
	const wider = "the piece is wider than the cloth, which is 36 in between the selvages: it would have to be joined; it is not reckoned in"
	for _, c := range []struct {
		name, head, width string
		want              []string
	}{
		{"as wide as the cloth", "grain = \"left\"\n", "36", nil},
		{"wider", "grain = \"left\"\n", "36.5", []string{"pinafore.toml:5: piece.front: " + wider}},
		{"half as wide, on the fold", "grain = \"left\"\nfold = \"left\"\n", "18", nil},
		{"more than half as wide, on the fold", "grain = \"left\"\nfold = \"left\"\n", "18.25", []string{"pinafore.toml:5: piece.front: " + wider}},
		{"wider, but its grain runs across", "grain = \"bottom\"\n", "36.5", nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			text := "unit = \"in\"\nallowance = 0.5\n[cloth]\nwidth = 36\n" + sketch.Front(c.head+sketch.Rect(c.width))
			spec, err := source.Read("pinafore.toml", []byte(text), sketch.HasLetter)
			require.NoError(t, err)
			pattern, err := marking.Check(spec)
			require.NoError(t, err)
			var got []string
			for _, r := range pattern.Remarks {
				got = append(got, r.String())
			}
			assert.Equal(t, c.want, got)
		})
	}
}

// Whatever is read, checking it neither panics nor leaves a line that is no line. A text is
// edited before it is read.
func FuzzCheck(f *testing.F) {
	for _, name := range []string{"pinafore.toml", "underwaist.toml", "nightgown.toml", "shirt.toml"} {
		data, err := os.ReadFile(filepath.Join("..", "examples", name))
		require.NoError(f, err)
		f.Add(data, []byte(nil))
	}
	f.Add([]byte("allowance = 0.5\n"+sketch.Front(sketch.Box)), []byte(nil))
	f.Add([]byte("allowance = 0.375\n"+sketch.Front(sketch.Yoke())), []byte(nil))
	f.Add([]byte(sketch.Front(sketch.Pleated())), []byte(nil))
	f.Add([]byte("allowance = 0.375\n"+sketch.Front(sketch.Slope+sketch.Rows(`tuck yoke centre 1/8 6 3/8 | below = "neck"; length = 2; end = "stepped"; step = 0.25`,
		`pleat fan centre 1/2 2 4 | kind = "box"`, `tuck grow hem 1/2 1 3`))), []byte(nil))
	for _, seam := range []string{
		sketch.Tops, sketch.Tops + "\nease = \"1/2\"\nwithin = 0", sketch.Tops + "\ngathered = true", `join = ["front.left", "front.left"]`,
		`join = [["front.top", "front.left"], ["back.top", "back.right"]]`, `join = ["front.top", "back.b.c"]`,
	} {
		folds := sketch.Rows(`tuck a left 1/4 2 6 | below = "top"; length = 2`, `tuck b left 1/4 1 6 | below = "bottom"; length = 2`) +
			"\n[pleat.p]\nedge = \"top\"\nfrom = \"left\"\nat = 1\ndepth = 0.5\ntoward = \"left\"\nlength = 2\n"
		f.Add([]byte(sketch.Joined("0.5", "cut = 2\n"+sketch.Rect("10")+"\n---\n"+folds, "fold = \"bottom\"\n"+sketch.Inward45, seam)), []byte(nil))
	}
	f.Fuzz(func(t *testing.T, data, edits []byte) {
		spec, err := source.Read("pinafore.toml", []byte(sketch.Edited(string(data), edits)), sketch.HasLetter)
		if err != nil {
			return
		}
		pattern, err := marking.Check(spec)
		if err != nil {
			return
		}
		for _, s := range pattern.Seams {
			require.False(t, math.IsNaN(s.Difference.MM) || math.IsInf(s.Fullness(), 0) || math.IsNaN(s.Fullness()), "seam %q", s.Key)
			for _, end := range s.Ends {
				require.False(t, math.IsNaN(end.Bend+end.Jog.MM+end.CutJog.MM), "seam %q at %v", s.Key, end.Neighbours)
			}
		}
		for _, m := range sheet.Of(pattern) {
			for _, one := range m.Marks {
				require.GreaterOrEqual(t, len(one.Path), 2, "%s %q of %s", one.Role, one.Name, m.Key)
				for _, q := range one.Path {
					require.False(t, math.IsNaN(q.X+q.Y) || math.IsInf(q.X+q.Y, 0), "%s %q of %s", one.Role, one.Name, m.Key)
				}
			}
		}
		for _, halves := range []mark.Halves{mark.OneHalf, mark.BothHalves} {
			for _, m := range folded.All(pattern, halves) {
				for _, l := range m.Layers {
					box := l.Path.Bounds()
					require.False(t, math.IsNaN(box.Width()+box.Height()) || math.IsInf(box.Width()+box.Height(), 0), "a layer of %s", m.Key)
				}
			}
		}
		terminal.Text(figures.Report(pattern, figures.AllUnits), 80)
		figures.JSON(pattern) // which cannot hold what is no number
	})
}
