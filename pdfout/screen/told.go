package screen

import (
	"cmp"
	"net/url"
	"strings"

	"tuckmark/marking/fault"
	"tuckmark/marking/mark"
)

// Rules of this file: what is told of lines stands on the page as a list, which can be read
// without pointing at anything. The script finds there what it says of a line.

// toldPiece is what is told of a piece and its lines.
type toldPiece struct {
	Key, Title string
	About      []mark.Told // of the piece as a whole; one or none
	Lines      []mark.Told
}

// toldByPiece puts together what is told of each piece, in the order in which it is told.
func toldByPiece(all []mark.Told) []toldPiece {
	var pieces []toldPiece
	place := map[string]int{}
	for _, told := range all {
		i, known := place[told.Piece]
		if !known {
			i = len(pieces)
			place[told.Piece] = i
			pieces = append(pieces, toldPiece{Key: told.Piece, Title: told.Piece})
		}
		p := &pieces[i]
		if told.Line == "" {
			p.Title = cmp.Or(told.Title, p.Title)
			p.About = append(p.About, told)
		} else {
			p.Lines = append(p.Lines, told)
		}
	}
	return pieces
}

// lineID is the id on the page of what is told of a line.
func lineID(at mark.At) string {
	return "line-" + url.QueryEscape(at.Piece) + "/" + url.QueryEscape(at.Line)
}

// places is where something stands: "pinafore.toml:31, pinafore.toml:40".
func places(at []fault.Place) string {
	var all []string
	for _, p := range at {
		if told := p.InFile(); told != "" {
			all = append(all, told)
		}
	}
	return strings.Join(all, ", ")
}

// excerptLine is a line of an excerpt as it stands on the page.
type excerptLine struct {
	Number             int
	Before, At, Behind string // At is where to look; "" on the neighbours
}

// excerpt is the lines of an excerpt.
func excerpt(lines []fault.ExcerptLine) []excerptLine {
	var all []excerptLine
	for _, l := range lines {
		before, at, behind := l.Parts()
		all = append(all, excerptLine{l.Number, before, at, behind})
	}
	return all
}

// numbered is what is said of a place, with its number on the page and in the picture.
type numbered struct {
	Number int
	mark.Notice
	Excerpt []excerptLine // of a mistake
}

// numberedMistakes numbers mistakes from 1.
func numberedMistakes(all []Mistake) []numbered {
	var out []numbered
	for i, m := range all {
		out = append(out, numbered{i + 1, m.Notice, excerpt(m.Lines)})
	}
	return out
}

// numberedRemarks numbers remarks behind so many mistakes.
func numberedRemarks(all []mark.Notice, mistakes int) []numbered {
	var out []numbered
	for i, notice := range all {
		out = append(out, numbered{Number: mistakes + i + 1, Notice: notice})
	}
	return out
}
