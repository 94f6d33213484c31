package gauge

import (
	"slices"

	"tuckmark/marking/mark"
)

// Rules of this file: what is done with every gauge, or with every one along an edge, is told
// once, in the order of work, and not by each card.

// stitchSide is the name of the side of an edge gauge that is drawn along.
const stitchSide = "stitch line"

// Work is what is done with the gauges among some markings, in order; nothing without any.
func Work(markings []mark.Marking) []mark.Task {
	var all, edges, ticked []string // their keys
	draw := "Draw the stitch line"
	for _, m := range markings {
		if m.Kind != mark.Gauge {
			draw = "Where no stitch line is drawn yet, draw it"
			continue
		}
		has := func(is func(one mark.Mark) bool) bool { return slices.ContainsFunc(m.Marks, is) }
		all = append(all, m.Key)
		if has(func(one mark.Mark) bool { return one.Name == stitchSide }) {
			edges = append(edges, m.Key)
		}
		if has(func(one mark.Mark) bool { return one.Role == mark.Match }) {
			ticked = append(ticked, m.Key)
		}
	}
	var tasks []mark.Task
	for _, task := range []mark.Task{
		{Do: "Cut the gauges out in card", Keys: all},
		{Do: draw + " along an edge gauge, its hatched side on the cut edge, its handle off the cloth", Keys: edges},
		{Do: "Where another gauge follows, draw the tick too, and lay its tick on that", Keys: ticked},
	} {
		if len(task.Keys) > 0 {
			tasks = append(tasks, task)
		}
	}
	return tasks
}
