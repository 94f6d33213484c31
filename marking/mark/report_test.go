package mark

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestTablesAndLines(t *testing.T) {
	var table Table
	assert.Zero(t, table.Columns())
	table.Heads = []string{"", "cut"}
	table.Add("top")
	table.AddTotal("together", "1", "2")
	assert.Equal(t, []Row{{Cells: []string{"top"}}, {Cells: []string{"together", "1", "2"}, Total: true}}, table.Rows)
	assert.Equal(t, 3, table.Columns(), "of the widest row")

	table.Lines.Say("cut %d of %s", 2, "it")
	table.Lines.Warn("%s is short", "it")
	table.Lines.Ask("needle:")
	assert.Equal(t, Lines{{Text: "cut 2 of it"}, {Text: "it is short", Warning: true}, {Text: "needle:", Blank: true}}, table.Lines)
}

func TestEmptySections(t *testing.T) {
	for name, c := range map[string]struct {
		section Section
		empty   bool
	}{
		"a title alone": {Section{Title: "Edges"}, true},
		"a table":       {Section{Tables: []Table{{}}}, false},
		"a sentence":    {Section{Lines: Lines{{Text: "buy cloth"}}}, false},
		"a picture":     {Section{Picture: &Picture{}}, false},
	} {
		assert.Equal(t, c.empty, c.section.Empty(), name)
	}
}
