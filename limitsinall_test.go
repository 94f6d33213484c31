package main

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// Rules of this file: of each limit on what all pieces have together, a file that comes to it, and
// one that goes a step beyond.

// limitsInAll are those limits; each counts from a round number on.
var limitsInAll = []limit{
	{"tucks and pleats of one piece", stepping(func(n, more int) string { return rectangle("a", "", tuckSets("left", n+more)) }), "more than %s tucks and pleats"},
	{"tucks and pleats of all pieces", stepping(func(n, more int) string {
		return rectangle("a", "", tuckSets("left", 2000)) + rectangle("b", "", tuckSets("left", 2000)) + rectangle("c", "", tuckSets("left", n-4000+more))
	}), "at most %s are worked out"},
	{"crossings of tucks and pleats of all pieces, in each those that run one way times those that run another", stepping(func(n, more int) string {
		return rectangle("a", "", tuckSets("left", n/200)+tuckSets("bottom", 100)) + rectangle("b", "", tuckSets("left", n/200)+tuckSets("bottom", 100)) +
			rectangle("c", "", tuckSets("left", more)+tuckSets("bottom", more))
	}), "at most %s are worked out"},
	{"all drawings of a file together", drawings(10, func(n int) string {
		return strings.Repeat("\n", n<<20-len(drawn("")))
	}), "have more than %s MB"},
	{"elements of all drawings of a file", drawings(100_000, func(n int) string { return strings.Repeat("<g/>", n-2) }), "have more than %s elements"},
	{"lines and curves of all drawings of a file", drawings(200_000, func(n int) string {
		return "<path d=\"M0 0" + strings.Repeat("h1v1h-1v-1", (n-3)/4) + strings.Repeat("h1", (n-3)%4) + "\"/>"
	}), "have more than %s lines and curves"},
	{"edges of all pieces", stepping(func(n, more int) string {
		return several(n/250, func(k int) string { return edged(fmt.Sprint("p", k), 250) }) + several(more, func(k int) string { return rectangle("more", "", "") })
	}), "at most %s are worked out"},
	{"lines and notches of all pieces", stepping(func(n, more int) string {
		return rectangle("a", "", lineSets(1000)) + rectangle("b", "", lineSets(n-1000)) + rectangle("c", "", lineSets(more))
	}), "at most %s are worked out"},
	{"points of edges and lines that other lines, tucks or pleats follow or run to, counted for each line and set", stepping(func(n, more int) string {
		along := several(10+more, func(k int) string {
			return fmt.Sprintf("[piece.KEY.line.l%d]\nalong = \"traced\"\ndistance = %d\n", k, 10+k)
		})
		return traced("a", n/10, along)
	}), "at most %s are worked out"},
	{"points of edges and lines that seams, trims, ruffles and bindings name, counted as often as they are named", stepping(func(n, more int) string {
		// A seam, and 23 times two: 470,004 with the four points of the edge "base"; three more are too many.
		sewn := "[seam.s]\njoin = [\"a.traced\", \"a.base\"]\ngathered = true\n" + several(n/20_000-2, func(k int) string {
			return fmt.Sprintf("[trim.t%d]\nalong = [\"a.traced\"]\nwidth = 10\n[binding.b%d]\nalong = [\"a.traced\"]\nwidth = 10\n", k, k)
		})
		return traced("a", 10_000, "") + sewn + several(3*more, func(k int) string {
			return fmt.Sprintf("[ruffle.r%d]\nalong = [\"a.traced\"]\nfullness = 2\ndepth = 50\n", k)
		})
	}), "at most %s are worked out"},
	{"points of the outline of a piece times its lines, notches, tucks and pleats, of all pieces together", stepping(func(n, more int) string {
		return traced("a", 20_000-4+1, several(n/20_000+more, func(k int) string {
			return fmt.Sprintf("[piece.KEY.notch.n%d]\nedge = \"base\"\nfrom = \"traced\"\nat = %d\n", k, 210+9*k)
		}))
	}), "at most %s are looked at"},
	{"edges that trims, ruffles and bindings name together", stepping(func(n, more int) string { return edged("a", 101) + trims(n+more) }), "at most %s are worked out"},
	{"edges that seams name together", stepping(func(n, more int) string {
		text := edged("a", 101) + edged("b", 101)
		return text + several(n/100, func(k int) string {
			return fmt.Sprintf("[seam.s%d]\njoin = [[%s], [%s]]\nwithin = 90000\n", k, named("a", 50), named("b", 50))
		}) + several(more, func(k int) string { return "[seam.more]\njoin = [\"a.last\", \"b.last\"]\n" })
	}), "at most %s are worked out"},
	{"pieces cut for one garment", stepping(func(n, more int) string {
		return several(n/50, func(k int) string { return rectangle(fmt.Sprint("p", k), "cut = 50", "") }) + several(more, func(k int) string { return rectangle("more", "", "") })
	}), "at most %s are worked out"},
}

// stepping makes of a file for a round number and a step beyond it one for their sum.
func stepping(file func(n, more int) string) func(int) string {
	return func(n int) string { return "unit = \"mm\"\n" + file(n-n%10, n%10) }
}

// limitsHeldElsewhere are those that a test of the room that has them holds on either side.
var limitsHeldElsewhere = map[string]string{
	"names beside each other in one table":             "source: spots_test.go",
	"values that pieces take from those they are like": "source: layers_test.go",
	"what `grid` reaches":                              "grid: grid_test.go",
	"values of a file, of which a point has three":     "source: spots_test.go",
	"points of all pieces, as they are given":          "source: TestWhatThereMayBeInAll",
	"points of all pieces, once curves are drawn":      "plane: TestCurveComesToAnEnd",
	"times the values of a file, and times what is counted of all its pieces, in it and all its views together": "source: TestWhatViewsMayHaveInAll, TestViewsHaveSoMuch",
	"elements of all drawings of a file, with those that are used again":                                        "drawing: TestDrawingsAreBoundedTogether",
	"points of all drawings of a file, once their curves are drawn":                                             "drawing: TestDrawingsAreBoundedTogether",
	"pieces cut for all garments that `--times` makes":                                                          "TestGarmentsAtOnceComeToAnEnd",
	"sheets that are made at once, one for each way of each piece":                                              "sheet: TestSheetsAreBounded",
	"lines on all sheets that are made at once":                                                                 "sheet: TestSheetsAreBounded",
	"gauges that are made at once, of a long edge one for each part":                                            "gauge: TestGaugesAreBounded",
	"dots to be pricked on them":                                                                                "sheet: TestSheetsAreBounded",
	"lines of templates that may have windows, together":                                                        "sheet: TestSheetsAreBounded",
}

// rectangle is a piece without allowances, 1 m by 1 m, with more lines in its own table, and
// tables below it.
func rectangle(key, own, below string) string {
	return fmt.Sprintf("[piece.%s]\nname = \"Piece %s\"\nrectangle = [1000, 1000]\n%s\n%s\n", key, key, own, strings.ReplaceAll(below, "KEY", key))
}

// What drawings have too much together is told once, of the first that goes beyond it.
func TestLimitOfDrawingsIsToldOnce(t *testing.T) {
	t.Chdir(t.TempDir())
	file := drawings(100_000, func(n int) string { return strings.Repeat("<g/>", n-2) })
	said := readAs(t, file(500_000))
	assert.Contains(t, said, "full2.svg: the drawings of all pieces, as far as this one, have more than 200000 elements")
	assert.Equal(t, 1, strings.Count(said, "have more than"), said)
	assert.NotContains(t, said, "full3.svg")
}

// That tucks cross each other too many times is told of the first piece that goes beyond it, though
// others do as well.
func TestLimitOfCrossingsIsToldOnce(t *testing.T) {
	t.Chdir(t.TempDir())
	crossed := func(key string) string { return rectangle(key, "", tuckSets("left", 80)+tuckSets("bottom", 80)) }
	said := readAs(t, "unit = \"mm\"\n"+crossed("a")+crossed("b")+crossed("c")+crossed("d"))
	assert.Equal(t, 1, strings.Count(said, "at most 10000 are worked out"), said)
	assert.Contains(t, said, "piece.b.tuck")
}

// drawn is a drawing of a square, of three lines and what closes them, with more in it.
func drawn(more string) string {
	return `<svg xmlns="http://www.w3.org/2000/svg" width="2in" height="2in" viewBox="0 0 2 2"><path id="p" d="M 0 0 H 2 V 2 H 0 Z"/>` + more + "</svg>"
}

// drawings makes of what fills a drawing with n of something, and may hold so many of it, a file
// whose drawings have n together, and one piece from each.
func drawings(each int, filled func(n int) string) func(int) string {
	return func(n int) string {
		var file strings.Builder
		for k := 0; n > 0; k++ {
			// Where one drawing is left with few, it takes some from that before it.
			here := min(n, each)
			if n > each && n-each < 8 && each > 10 {
				here -= 8
			}
			if err := os.WriteFile(fmt.Sprintf("full%d.svg", k), []byte(drawn(filled(here))), 0o644); err != nil {
				panic(err)
			}
			fmt.Fprintf(&file, "[piece.a%d]\n[piece.a%d.outline]\nfrom = \"full%d.svg\"\npart = \"p\"\nedges = [\"left\", \"top\", \"right\", \"bottom\"]\n", k, k, k)
			n -= here
		}
		return file.String()
	}
}

// several puts one text together for each number below n.
func several(n int, one func(k int) string) string {
	var all strings.Builder
	for k := range n {
		all.WriteString(one(k))
	}
	return all.String()
}

// tuckRow is a set of tucks, or so many of them, as large as they may be, each 1 mm wide.
func tuckSets(beside string, n int) string {
	return several((n+499)/500, func(k int) string {
		return fmt.Sprintf("[piece.KEY.tuck.%s%d]\nbeside = \"%s\"\nwidth = 0.1\ncount = %d\nfirst = %d\n", beside, k, beside, min(500, n-500*k), 10+200*k)
	})
}

// lineSets are so many lines across a piece.
func lineSets(n int) string {
	return several(n, func(k int) string {
		return fmt.Sprintf("[piece.KEY.line.l%d]\nbeside = \"left\"\nat = %.2f\n", k, 1+0.9*float64(k))
	})
}

// edged is a piece of so many edges.
func edged(key string, n int) string {
	return fmt.Sprintf("[piece.%s]\nname = \"Piece %s\"\ngrain = [[3, -1], [3, -2]]\n", key, key) + several(n-1, func(k int) string {
		return fmt.Sprintf("[piece.%s.edge.e%d]\npoints = [[%d, %.4f], [%d, %.4f]]\n", key, k, k, waveOf(k), k+1, waveOf(k+1))
	}) + fmt.Sprintf("[piece.%s.edge.last]\npoints = [[%d, %.4f], [%d, -200], [0, -200], [0, %.4f]]\n", key, n-1, waveOf(n-1), n-1, waveOf(0))
}

// waveOf is a height that is another at each place and its neighbours.
func waveOf(k int) float64 { return float64(k*k%7) / 4 }

// traced is a piece with an edge "traced" of so many points, and tables below it.
func traced(key string, points int, below string) string {
	return fmt.Sprintf("[piece.%s]\nname = \"Piece %s\"\ngrain = [[3, -1], [3, -2]]\n[piece.%s.edge.traced]\npoints = [", key, key, key) +
		several(points, func(k int) string {
			return fmt.Sprintf("[%.3f, %.3f], ", float64(k)/4, float64(k)*float64(points-1-k)/float64(points)/4)
		}) +
		fmt.Sprintf("]\n[piece.%s.edge.base]\npoints = [[0, 0], [0, -200], [%.3f, -200], [%.3f, 0]]\n", key, float64(points-1)/4, float64(points-1)/4) +
		strings.ReplaceAll(below, "KEY", key)
}

// trims are trims along edges of a piece "a" of 101, which name so many edges together.
func trims(n int) string {
	edges := `"a.last", ` + several(100, func(k int) string { return fmt.Sprintf(`"a.e%d", `, k) })
	const each = 100
	return several((n+each-1)/each, func(k int) string {
		named := strings.SplitAfterN(edges, ", ", min(each, n-each*k)+1)
		return fmt.Sprintf("[trim.t%d]\nkind = \"lace\"\nalong = [%s]\n", k, strings.Join(named[:len(named)-1], ""))
	})
}

// named are the first edges of a piece that edged makes.
func named(piece string, n int) string {
	return strings.TrimSuffix(several(n, func(k int) string { return fmt.Sprintf(`"%s.e%d", `, piece, k) }), ", ")
}
