package source

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestTableNamed(t *testing.T) {
	for key, want := range map[string]string{
		"":                                    "",
		"cloth":                               "cloth",
		"piece.front":                         "piece.NAME",
		`piece."back yoke"`:                   "piece.NAME",
		"piece.front.tuck.yoke":               "piece.NAME.tuck.NAME",
		`piece.front.edge."centre front"`:     "piece.NAME.edge.NAME",
		"piece.front.block":                   "piece.NAME.block",
		`trim."neck lace"`:                    "trim.NAME",
		"view.square":                         "view.NAME",
		"view.square.piece.front.edge.neck":   "piece.NAME.edge.NAME",
		"view.square.cloth":                   "cloth",
		`piece.front.edge."1.5 in from fold"`: "piece.NAME.edge.NAME",
	} {
		name, known := TableNamed(key)
		assert.True(t, known, key)
		assert.Equal(t, want, name, key)
	}
	for _, key := range []string{"piece", "front", "piece.front.tuck", "piece.front.pocket.left", "piece.a.b.c.d", "seam", "..", `"`} {
		_, known := TableNamed(key)
		assert.False(t, known, key)
	}
}

// A key that a table may have is never told to be unknown there, and one that it may not have
// always is.
func TestKeysOfTables(t *testing.T) {
	for _, table := range Tables() {
		if table.Name == "piece.NAME.tuck.NAME.sample" { // which stands on one line, below
			continue
		}
		for _, key := range append(table.Keys, "nosuchkeyanywhere") {
			told := unknownIn(table, fmt.Sprintf("%s = 1", key))
			if key == "nosuchkeyanywhere" {
				assert.True(t, told, "[%s] takes %s", table.Name, key)
			} else {
				assert.False(t, told, "[%s] does not know %s", table.Name, key)
			}
		}
	}
}

// unknownIn reports whether a line in a table of a file is told to have a key that is not known.
func unknownIn(table Table, line string) bool {
	heading := ""
	if table.Name != "" {
		heading = "[" + strings.ReplaceAll(table.Name, anyName, "x") + "]\n"
	}
	if strings.HasPrefix(table.Name, "piece.NAME.pleat") && table.Keys[0] == "beside" && !strings.HasPrefix(line, "beside") {
		line = "beside = \"x\"\n" + line
	}
	_, err := Read("x.toml", []byte(heading+line), func(rune) bool { return true })
	return strings.Contains(err.Error(), "this key is not known")
}
