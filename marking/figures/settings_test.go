package figures

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// What the file leaves out has a line to write on; so has the sample of a set of tucks,
// until the file says what it took up: 10 - 7 3/8 in.
func TestSettingsToKeep(t *testing.T) {
	const line = " ______________________________\n"
	tucks := sketch.Rows(`tuck yoke left 1/8 4 1/2 | spacing = "3/8"`)
	for _, c := range []struct{ name, text, want string }{
		{"nothing is known", "", "  stitch length:" + line + "  needle:" + line + "  thread:" + line + "  tension:" + line + "  needle position:" + line +
			"  sample of the yoke tucks of front:" + line + "  once the sample is sewn, write under [piece.front.tuck.yoke]: sample = {tucks\n  = 10, flat = \"4 3/4 in\", sewn = \"____\"}\n"},
		{"a sample was sewn", "\nsample = {tucks = 10, flat = \"10\", sewn = \"7 3/8\"}\n[sewing]\nneedle = \"70\"\n", "  stitch length:" + line + "  needle: 70\n  thread:" + line + "  tension:" + line + "  needle position:" + line +
			"  sample of the yoke tucks of front: 10 tucks took up 2 5/8 in\n"},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := made.Of(t, "allowance = 0\n"+sketch.Front(sketch.Rect("10")+"\n---\n"+tucks)+c.text)
			assert.Equal(t, c.want, printedSection(p, "Settings to keep"))
		})
	}
}

// Of a block that is sewn and measured no sample is asked for: its tucks are sewn.
func TestNoSampleIsAskedForOfAMeasuredBlock(t *testing.T) {
	block := sketch.Bosom + sketch.Tucked("cf", "1/8", 6, "3/8", "") + "\n[block]\n"
	const title = "Settings to keep"
	assert.Contains(t, printedSection(made.Of(t, "allowance = 0\n"+sketch.Front(block)), title), "sample")
	assert.NotContains(t, printedSection(made.Of(t, "allowance = 0\n"+sketch.Front(block+"measured = 12\n")), title), "sample")
}
