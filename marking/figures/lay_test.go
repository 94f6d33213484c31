package figures

import (
	"fmt"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tuckmark/marking/lay"
	"tuckmark/marking/plane"
)

// Things to lay are written in inches, one to a line, the points first, each as it
// is drawn, with the grain upward where nothing else is said:
//
//	front: 0,0 10,0 10,10 0,10 | fold 0,10 0,0
//	sleeve: 0,0 9,0 9,7 0,7 | cut 2
//	ruffle: 0,0 36,0 36,3 0,3 | torn; cut 3

func toCut(t *testing.T, text string) []lay.Item {
	t.Helper()
	var items []lay.Item
	for _, line := range strings.Split(text, "\n") {
		name, rest, found := strings.Cut(strings.TrimSpace(line), ":")
		require.True(t, found, "a line without a name: %q", line)
		points, extra, _ := strings.Cut(rest, "|")
		item := lay.Item{Name: name, Grain: plane.Point{Y: 1}, Count: 1, Outline: inchPoints(t, points)}
		item.Outline = append(item.Outline, item.Outline[0])
		for _, one := range strings.Split(extra, ";") {
			key, value, _ := strings.Cut(strings.TrimSpace(one), " ")
			switch key {
			case "cut":
				item.Count, _ = strconv.Atoi(value)
			case "fold":
				item.Fold = inchPoints(t, value)
			case "grain":
				item.Grain = inchPoints(t, value)[0].Unit()
			case "torn":
				item.Torn = true
			}
		}
		items = append(items, item)
	}
	return items
}

func inchPoints(t *testing.T, text string) plane.Path {
	t.Helper()
	var p plane.Path
	for _, word := range strings.Fields(text) {
		var q plane.Point
		_, err := fmt.Sscanf(word, "%g,%g", &q.X, &q.Y)
		require.NoError(t, err, "point %q", word)
		p = append(p, q.Mul(25.4))
	}
	return p
}
