package figures

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/mark"
	"tuckmark/marking/sheet"
	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// seamsWork are the steps of the seams of some pieces, each a rectangle with the edges foot, right,
// top and left, so many inches wide.
func seamsWork(t *testing.T, wide map[string]int, order []string, seams string) []string {
	t.Helper()
	var text strings.Builder
	text.WriteString("allowance = \"1/4\"\n")
	for _, key := range order {
		w := wide[key]
		text.WriteString(sketch.Piece(key, fmt.Sprintf("foot: 0,0 %d,0\nright: %d,0 %d,9\ntop: %d,9 0,9\nleft: 0,9 0,0", w, w, w, w)))
	}
	pattern := made.Of(t, text.String()+seams)
	var steps []string
	for _, task := range Work(pattern, sheet.Of(pattern)) {
		if strings.HasPrefix(task.Do, "Gather") || strings.HasPrefix(task.Do, "Sew the seam") {
			steps = append(steps, task.Do)
			assert.Equal(t, mark.Task{Do: task.Do, Number: task.Number, Section: seamsTitle}, task)
		}
	}
	return steps
}

// Gathers are drawn up once the seams are sewn that they run over: common practice.
func TestWhenASideIsGathered(t *testing.T) {
	seam := func(key, one, other, more string) string {
		return fmt.Sprintf("[seam.%q]\njoin = [%s, %s]\n%s\n", key, one, other, more)
	}
	gathered := func(key, one, other string) string { return seam(key, one, other, "gathered = true") }
	plain := func(key, one, other string) string { return seam(key, one, other, "within = 99") }
	sizes := map[string]int{"front": 10, "back": 10, "skirt": 40, "panel": 20, "sleeve": 30, "band": 8}
	for _, c := range []struct {
		name   string
		pieces []string
		seams  string
		want   []string
	}{
		{"a ring, to two pieces", []string{"front", "back", "skirt"},
			gathered("waist", `"skirt.top"`, `["front.foot", "back.foot"]`) + plain("left", `"front.left"`, `"back.right"`) + plain("side", `"skirt.left"`, `"skirt.right"`),
			[]string{"Sew the seams: left and side", "Gather the top of skirt to the foot of front and the foot of back", "Sew the seam: waist"}},
		{"flat, piece by piece", []string{"front", "back", "skirt", "panel"},
			plain("left", `"front.left"`, `"back.right"`) + gathered("one", `"skirt.top"`, `"front.foot"`) + gathered("other", `"panel.top"`, `"back.foot"`),
			[]string{"Gather the top of skirt to the foot of front", "Gather the top of panel to the foot of back", "Sew the seams: left, one and other"}},
		{"before a side seam in one with that of the skirt", []string{"front", "back", "skirt", "panel"},
			plain("side", `["front.left", "skirt.left"]`, `["back.right", "panel.right"]`) + gathered("one", `"skirt.top"`, `"front.foot"`) + gathered("other", `"panel.top"`, `"back.foot"`),
			[]string{"Gather the top of skirt to the foot of front", "Gather the top of panel to the foot of back", "Sew the seams: one, other and side"}},
		{"a sleeve set in flat", []string{"front", "back", "sleeve"},
			plain("shoulder", `"front.top"`, `"back.top"`) + gathered("armhole", `"sleeve.top"`, `["front.right", "back.left"]`) + plain("side", `["front.foot", "sleeve.right"]`, `["back.foot", "sleeve.left"]`),
			[]string{"Sew the seam: shoulder", "Gather the top of sleeve to the right of front and the left of back", "Sew the seams: armhole and side"}},
		{"a wrist into its band", []string{"sleeve", "band"},
			gathered("wrist", `"sleeve.foot"`, `"band.top"`) + plain("underarm", `"sleeve.left"`, `"sleeve.right"`) + plain("ends", `"band.left"`, `"band.right"`),
			[]string{"Sew the seams: underarm and ends", "Gather the foot of sleeve to the top of band", "Sew the seam: wrist"}},
		{"gathers over gathers", []string{"front", "skirt", "sleeve"},
			gathered("cap", `"sleeve.top"`, `["front.left", "skirt.left"]`) + gathered("waist", `"skirt.top"`, `"front.foot"`),
			[]string{"Gather the top of skirt to the foot of front", "Sew the seam: waist", "Gather the top of sleeve to the left of front and the left of skirt", "Sew the seam: cap"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, c.want, seamsWork(t, sizes, c.pieces, c.seams))
		})
	}
}
