package arrange

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/mark"
)

// What is used in one stage shares pages with its like; several stages share one only where
// that saves it, the nearest first.
func TestStagesSharePages(t *testing.T) {
	for _, c := range []struct {
		name   string
		pieces []mark.Marking
		want   [][]string
		pages  int
	}{
		{"a ruler beside its own tuck sheet", []mark.Marking{
			ofKind(mark.TuckSheet, "Back", "back tucks", 100, 200), ofKind(mark.TuckSheet, "Front", "front tucks", 130, 210),
			ofKind(mark.TuckRuler, "Back", "back ruler", 32, 100), ofKind(mark.TuckRuler, "Front", "front ruler", 32, 100),
		}, [][]string{{"back tucks", "back ruler"}, {"front tucks", "front ruler"}}, 2},
		{"no page saved, nothing mixed", []mark.Marking{
			ofKind(mark.CuttingSheet, "Front", "front", 150, 150), ofKind(mark.CuttingSheet, "Back", "back", 150, 150), ofKind(mark.Piece, "Pocket", "pocket", 180, 220),
		}, [][]string{{"front"}, {"back"}, {"pocket"}}, 3},
		{"a page saved", []mark.Marking{
			ofKind(mark.CuttingSheet, "Front", "front", 150, 150), ofKind(mark.Piece, "Pocket", "pocket", 60, 60),
		}, [][]string{{"front", "pocket"}}, 1},
		{"with its like rather than with others", []mark.Marking{
			ofKind(mark.CuttingSheet, "Front", "front", 150, 120), ofKind(mark.Piece, "Cuff", "cuff", 150, 110), ofKind(mark.Piece, "Pocket", "pocket", 60, 60),
			ofKind(mark.Piece, "Yoke", "yoke", 180, 200),
		}, [][]string{{"front"}, {"cuff", "pocket"}, {"yoke"}}, 3},
		{"a pocket beside the large piece next to it in the order of use", []mark.Marking{
			ofKind(mark.TuckSheet, "Front", "tucks", 150, 400), ofKind(mark.Piece, "Skirt", "skirt", 250, 400), ofKind(mark.Piece, "Pocket", "pocket", 60, 70),
		}, [][]string{{"tucks"}, {"skirt", "pocket"}}, 6},
		{"of the large pieces the nearest", []mark.Marking{
			ofKind(mark.Piece, "A", "a", 300, 400), ofKind(mark.Piece, "B", "b", 300, 400), ofKind(mark.Piece, "C", "c", 300, 400), ofKind(mark.Piece, "Pocket", "pocket", 50, 60),
		}, [][]string{{"a"}, {"b"}, {"c", "pocket"}}, 12},
	} {
		names, pages := namesOn(c.pieces...)
		assert.Equal(t, c.want, names, c.name)
		assert.Equal(t, c.pages, pages, c.name)
	}
}
