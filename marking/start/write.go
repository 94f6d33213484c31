package start

import (
	"embed"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"sync"
	"text/template"
	"unicode/utf8"

	"tuckmark/marking/fault"
	"tuckmark/marking/length"
	"tuckmark/marking/source"
)

// Rules of this file: a draft reads like the file that is made of it. A note at the end of a
// line stands behind a tab in the draft, and in the file where the notes of all lines stand.

//go:embed drafts
var folder embed.FS

// drafts are read when a file is first made, so that no other command waits for them.
var drafts = sync.OnceValue(func() *template.Template {
	return template.Must(template.New("").Funcs(template.FuncMap{"keyed": keyed}).ParseFS(folder, "drafts/*.toml"))
})

// notesAt is how far from the left the notes of lines stand.
const notesAt = 32

// File is the text of a file to begin with. The answers are such as the file can have.
func File(a Answers) string {
	c, how := childOf(a.Size)
	b := newBlock(a.Unit, c)
	var names []named
	for _, name := range a.Pieces {
		names = append(names, readName(name))
	}
	all := sets(names)
	var text strings.Builder
	write := func(draft string, with any) { text.WriteString(filledIn(draft, with)) }
	write("head", b.head(a, how))
	first := map[string]string{} // the name of the first piece that is drafted so
	for _, n := range names {
		text.WriteByte('\n')
		p := b.piece(n, all[n.set])
		if like, again := first[p.alone()]; again {
			p.draft, p.Like, p.LikeText = "like", like, strconv.Quote(like)
		} else {
			first[p.alone()] = n.name
		}
		write(p.draft, p)
	}
	var seams []seam
	for _, key := range inOrder(names) {
		seams = append(seams, all[key].seams(b, key)...)
	}
	seams = seams[:min(len(seams), source.MostOf("seam"))]
	if len(seams) > 0 {
		text.WriteByte('\n')
		write("seams", struct {
			Rule, Chest string
			Seams       []seam
		}{rule("seams"), b.chest(all), seams})
	}
	return aligned(text.String())
}

// filledIn is the text of a draft.
func filledIn(draft string, with any) string {
	var text strings.Builder
	if err := drafts().ExecuteTemplate(&text, draft+".toml", with); err != nil {
		panic(err) // a draft that asks for what it is not given; tests fill in each
	}
	return text.String()
}

// alone is the text of a piece without what it is called: two with the same are alike.
func (p filling) alone() string {
	p.Rule, p.Key, p.Name = "", "", ""
	return filledIn(p.draft, p)
}

// inOrder are the words that tell sets apart, in the order of the pieces.
func inOrder(names []named) []string {
	var keys []string
	for _, n := range names {
		if !slices.Contains(keys, n.set) {
			keys = append(keys, n.set)
		}
	}
	return keys
}

// chest is what the child measures, where a garment goes round it whose every piece goes on in
// the next, so that its ease can be told; else "".
func (b block) chest(all map[string]set) string {
	for _, s := range all {
		if len(s.front) == 1 && len(s.back) == 1 && s.yoke == nil && s.backYoke == nil {
			return written(b.unit, steps(b.unit, b.child.chest))
		}
	}
	return ""
}

// head is what the top of a file is filled in with.
type head struct {
	Title, TitleText, SizeText, Unit, Child, Steps, Allowance, ClothWidth string
}

func (b block) head(a Answers, how known) head {
	measures := b.measures()
	about := map[known]string{
		ofSize:      "# Drafted for " + measures + ".\n# Children differ: measure yours.",
		nearestSize: "# This size lies beyond the measures that are known here. The pieces are drafted for the nearest:\n# " + measures + ". Measure your child.",
		middleSize:  "# The size tells no age, so the pieces are drafted for 2 years:\n# " + measures + ". Measure your child.",
	}
	h := head{
		Title: a.Title, TitleText: strconv.Quote(a.Title), SizeText: strconv.Quote(a.Size), Unit: b.unit.String(),
		Child: about[how], Allowance: written(b.unit, b.allowance), ClothWidth: strconv.Itoa(either(b.unit, 44, 110)),
		Steps: `centimetres: 3, 2.5.`,
	}
	switch b.unit {
	case length.Inch:
		h.Steps = `inches: 3, "3/8", "2 1/8".`
	case length.Millimetre:
		h.Steps, h.ClothWidth = `millimetres: 30, 25.`, "1100"
	}
	return h
}

// measures tells how large the child is.
func (b block) measures() string {
	return fmt.Sprintf("a chest of %s and a height of %s", b.unit.OnRuler(b.child.chest), b.unit.OnRuler(b.child.height))
}

// DraftedFor says for which child the pieces are drafted, and whether it is the one of the size.
func DraftedFor(a Answers) string {
	c, how := childOf(a.Size)
	measures := newBlock(a.Unit, c).measures()
	switch how {
	case nearestSize:
		return "this size lies beyond the measures that are known here; drafted for the nearest: " + measures
	case middleSize:
		return "this size has no age in figures, as 2 years or 18 months; drafted for 2 years: " + measures
	}
	return "drafted for " + measures
}

// TellsChild reports whether a size tells an age or a height, be it one for which no draft is known.
func TellsChild(size string) bool {
	_, _, ok := told(size)
	return ok
}

// keyed is a name as it stands in the header of a table.
func keyed(name string) string { return fault.Place{}.Under(name).Key }

// rule is the line that parts a file.
func rule(name string) string {
	const wide = 79
	return "# " + strings.Repeat("-", max(3, wide-3-utf8.RuneCountInString(name))) + " " + name
}

// aligned sets the notes of lines below each other.
func aligned(text string) string {
	var b strings.Builder
	for line := range strings.Lines(text) {
		code, note, ok := strings.Cut(line, "\t")
		if ok {
			code += strings.Repeat(" ", max(1, notesAt-utf8.RuneCountInString(code))) + note
		}
		b.WriteString(code)
	}
	return b.String()
}
