package sheet

import (
	"slices"
	"strings"

	"tuckmark/marking/garment"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/wording"
)

// Rules of this file: a sheet may have the lines that go round a piece in other views of its
// file too, where they lie elsewhere, so that it can be chosen between them with the sheet
// on the cloth. Each such line has the name of its view behind its own.

const (
	// sameLine bounds, in mm, how far from a line another may lie and be the same: less
	// than the width of the thinnest that is drawn.
	sameLine = 0.1
	// viewStep is at what distances, in mm, along a line it is looked whether it is
	// another. A line of a view is drawn longer than it must be by no more than that.
	viewStep = 1
	// leastApart bounds, in mm, what of a line of a view is drawn, or half of a line that is
	// shorter than twice that: less of one beyond its like is where that runs on to a line
	// that lies elsewhere, and is drawn itself.
	leastApart = 5
)

// WithViews returns the sheets of a pattern with the lines of other views of its file on
// those that the piece itself lies on. A line that lies elsewhere in all views, and is one in
// several, is drawn once with the names of all of them.
func WithViews(sheets []mark.Marking, of *garment.Pattern, views []*garment.Pattern) []mark.Marking {
	sheets = slices.Clone(sheets)
	others := make([][]mark.Marking, len(views))
	for i, v := range views {
		others[i] = Of(v)
	}
	for i := range sheets {
		m := &sheets[i]
		if m.Kind != mark.CuttingSheet && m.Kind != mark.Piece {
			continue
		}
		own, ownRounds := slices.Clone(m.Marks), roundsOf(m.Marks)
		var more []mark.Mark
		var told []string
		for k, v := range views {
			same := slices.IndexFunc(others[k], func(other mark.Marking) bool { return other.Key == m.Key })
			if same < 0 {
				continue
			}
			theirs := others[k][same].Marks
			apart, around := ownRounds.apart(theirs), roundsOf(theirs)
			for _, one := range apart {
				more = withLine(more, one, v.ViewName())
			}
			if len(apart) > 0 {
				told = append(told, v.ViewName())
			}
			for n, one := range m.Marks {
				if one.Name != "" && inAll(around.apart([]mark.Mark{one})) > one.Path.Length()/2 {
					own[n].Name = one.Name + ", " + of.ViewName()
				}
			}
		}
		if m.Marks = append(own, more...); len(told) > 0 {
			m.Notes = append(slices.Clone(m.Notes), "It has lines of other views too, named "+wording.Listed(told, "and")+". Choose one view, and mark and cut by its lines alone.")
		}
	}
	return sheets
}

// withLine returns the lines of other views with one more, which has the name of its view
// behind its own, and behind its key; where it is there of another view already, that gets the name
// too.
func withLine(lines []mark.Mark, more mark.Mark, view string) []mark.Mark {
	own := more.Name
	for i, one := range lines {
		if strings.HasPrefix(one.Key, more.Called()+", ") && len(roundsOf([]mark.Mark{one}).apart([]mark.Mark{more})) == 0 && len(roundsOf([]mark.Mark{more}).apart([]mark.Mark{one})) == 0 {
			if own != "" {
				lines[i].Name += " and " + view
			}
			lines[i].Key += " and " + view
			return lines
		}
	}
	if own != "" {
		more.Name += ", " + view
	}
	more.Key = more.Called() + ", " + view
	return append(lines, more)
}

// OfView reports whether a line of a sheet, by its key, is one of another view of the file: what it
// is called there.
func OfView(key, called, view string) bool {
	behind, is := strings.CutPrefix(key, called+", ")
	return is && strings.Contains(" and "+behind+" and ", " and "+view+" and ")
}

// inAll is how long some lines are together, in mm.
func inAll(lines []mark.Mark) float64 {
	all := 0.0
	for _, one := range lines {
		all += one.Path.Length()
	}
	return all
}

// rounds are the lines that go round a piece, by their roles: cutting and stitch lines, its fold
// and its centre.
type rounds map[mark.Role][]*plane.Tree

// roundsOf finds those lines among others.
func roundsOf(lines []mark.Mark) rounds {
	r := rounds{mark.Cut: nil, mark.Stitch: nil, mark.FoldEdge: nil, mark.Centre: nil}
	for _, one := range lines {
		if _, round := r[one.Role]; round {
			r[one.Role] = append(r[one.Role], plane.NewTree(one.Path))
		}
	}
	return r
}

// apart returns such lines among others, so far as they do not lie on those of the same role.
func (r rounds) apart(others []mark.Mark) []mark.Mark {
	var apart []mark.Mark
	for _, one := range others {
		if own, round := r[one.Role]; round {
			apart = append(apart, one.InParts(elsewhere(one.Path, own))...)
		}
	}
	return apart
}

// elsewhere returns the parts of a path that lie on none of some lines.
func elsewhere(path plane.Path, lines []*plane.Tree) []plane.Path {
	on := func(q plane.Point) bool {
		return slices.ContainsFunc(lines, func(t *plane.Tree) bool { return t.Nearer(q, sameLine) })
	}
	line := plane.NewTree(path)
	length := line.Length()
	var parts []plane.Path
	begin, off := 0.0, false
	for along := 0.0; ; along = min(along+viewStep, length) {
		away := along < length && !on(line.At(along))
		switch {
		case away && !off:
			begin = max(0, along-viewStep)
		case !away && off && along-begin > min(leastApart, length/2):
			parts = append(parts, path.Between(begin, along))
		}
		off = away
		if along == length {
			return parts
		}
	}
}
