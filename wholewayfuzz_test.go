package main

import (
	"bytes"
	"encoding/json"
	"encoding/xml"
	"errors"
	"io"
	"maps"
	"reflect"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking"
	"tuckmark/marking/fault"
	"tuckmark/marking/figures"
	"tuckmark/marking/folded"
	"tuckmark/marking/garment"
	"tuckmark/marking/gauge"
	"tuckmark/marking/length"
	"tuckmark/marking/mark"
	"tuckmark/marking/plane"
	"tuckmark/marking/sketch"
	"tuckmark/marking/source"
	"tuckmark/pdfout"
	"tuckmark/pdfout/arrange"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/paper"
	"tuckmark/pdfout/seen"
)

// Rules of this file: files are made at random, out of others by edits, and printed in ways that
// are drawn at random too. What holds of every file is in wholeway_test.go; here stands what
// takes longer: that a PDF can be read back, that the same file gives the same bytes, that a
// program may make what a file says.

// FuzzWholeWay takes a file, edited in some ways, to all that is made of it. What is asked of
// the printer is told by bytes, each of which chooses one thing.
func FuzzWholeWay(f *testing.F) {
	inAnotherStep(f)
	for i, text := range filesToEdit(f) {
		n := byte(i)
		f.Add([]byte(text), []byte{n, 0, n, n}, []byte{n, n, n, n, n})
	}
	f.Fuzz(func(t *testing.T, data, edits, asked []byte) {
		goTheWholeWay(t, sketch.Edited(string(data), edits), asked)
	})
}

// The same with other edits each time.
func TestEditedFilesGoTheWholeWay(t *testing.T) {
	inAnotherStep(t)
	files := filesToEdit(t)
	some := func(t *rapid.T, least, most int, what string) []byte {
		return rapid.SliceOfN(rapid.Byte(), least, most).Draw(t, what)
	}
	rapid.Check(t, func(t *rapid.T) {
		text := sketch.Edited(rapid.SampledFrom(files).Draw(t, "file"), some(t, 4, 12, "edits"))
		goTheWholeWay(t, text, some(t, 0, 11, "asked"))
	})
}

// filesToEdit are the examples and the small files with every key.
func filesToEdit(t testing.TB) []string {
	files := []string{sketch.Frock}
	for _, file := range examples(t) {
		data, err := readFile(file)
		require.NoError(t, err)
		files = append(files, string(data))
	}
	small := sketch.EveryKey()
	for _, name := range slices.Sorted(maps.Keys(small)) {
		files = append(files, small[name])
	}
	return files
}

// goTheWholeWay takes a text to all that is made of it.
func goTheWholeWay(t require.TestingT, text string, asked []byte) {
	views := patternsOf(t, text)
	if len(views) == 0 {
		return
	}
	a := &asking{asked}
	p, made := a.printing(t), a.choose(4)
	whole := views[a.choose(len(views))]
	o, err := p.take(whole, views)
	if err != nil {
		var f *fault.Fault
		require.ErrorAs(t, err, &f)
		holdWords(t, text, f)
		return
	}
	holdSums(t, holdFigures(t, o.pattern), o.pattern.Unit)
	holdFolded(t, o.pattern)
	holdAsMade(t, text, whole.View)
	if !isSmall(p.set(o)) {
		return
	}
	switch made {
	case 0:
		holdPages(t, text, p, o)
	case 1:
		holdPDF(t, text, p.set(o), o.paper, asOften(t, text, whole.View, p))
	case 2:
		holdSVG(t, text, p.set(o))
	case 3:
		if cards := gauge.Of(o.pattern); len(cards) > 0 {
			holdPDF(t, text, gaugeSet(o.pattern, cards), o.paper, nil)
		}
	}
}

// asking chooses by bytes; when there are none left it chooses the first of everything.
type asking struct{ bytes []byte }

func (a *asking) choose(n int) int {
	if len(a.bytes) == 0 {
		return 0
	}
	chosen := int(a.bytes[0]) % n
	a.bytes = a.bytes[1:]
	return chosen
}

// one chooses one of some options, or none.
func (a *asking) one(all ...string) *string {
	if i := a.choose(len(all) + 1); i > 0 {
		return &all[i-1]
	}
	return nil
}

// printing chooses how the sheets are printed.
func (a *asking) printing(t require.TestingT) printing {
	papers := append(paper.Names(), "roll:36in", "single")
	p := printing{paper: seen.Paper(t, papers[a.choose(len(papers))]), times: 1 + a.choose(3)}
	if lying, err := p.paper.Lying(); err == nil && a.choose(2) == 1 {
		p.paper = lying
	}
	if way := a.one("trace", "template", "mirror", "prick", "template,mirror"); way != nil {
		ways, err := source.ParseTransfers(*way)
		require.NoError(t, err)
		p.transfers = ways
	}
	p.figures, p.gauges, p.allViews = a.choose(2) == 0, a.choose(2) == 1, a.choose(2) == 1
	p.dots, p.margin, p.overlap = a.one("2 mm", "5", "1/8 in"), a.one("0", "5 mm", "1 in"), a.one("0", "20 mm")
	return p
}

const (
	// mostPoints and mostArea bound what is drawn, in points of lines and in mm² of pieces:
	// more takes too long for many tries.
	mostPoints = 20_000
	mostArea   = 1.5e6
)

func isSmall(set arrange.Set) bool {
	points, area := 0, 0.0
	for _, m := range set.Pieces {
		box := plane.EmptyBox()
		for _, one := range m.Marks {
			points += len(one.Path)
			box = box.Union(one.Path.Bounds())
		}
		if !box.Empty() {
			area += box.Width() * box.Height()
		}
	}
	return points <= mostPoints && area <= mostArea
}

// holdSums holds the data of what runs along edges against a pencil: so many times one length is
// what they are together, and all of these are the line.
func holdSums(t require.TestingT, data []byte, unit length.Unit) {
	type amount struct{ Printed string }
	type along struct {
		Key   string
		Along []struct {
			Times          float64
			Each, Together amount
		}
		Line, Edge *amount
	}
	var read struct{ Trims, Ruffles, Bindings []along }
	require.NoError(t, json.Unmarshal(data, &read))
	mm := func(a amount) float64 {
		mm, err := length.Parse(a.Printed, unit)
		require.NoError(t, err)
		return mm
	}
	for _, one := range append(append(read.Trims, read.Ruffles...), read.Bindings...) {
		sum := 0.0
		for _, c := range one.Along {
			sum += mm(c.Together)
			require.InDelta(t, c.Times*mm(c.Each), mm(c.Together), onPaper, "%q", one.Key)
		}
		line := one.Line
		if line == nil {
			line = one.Edge
		}
		require.InDelta(t, sum, mm(*line), onPaper, "%q: its lines together", one.Key)
	}
}

// holdFolded holds the pieces as they are sewn against what can be drawn.
func holdFolded(t require.TestingT, p *garment.Pattern) {
	for _, m := range folded.All(p, mark.BothHalves) {
		for _, l := range m.Layers {
			box := l.Path.Bounds()
			require.True(t, isNumber(box.Width(), box.Height()), "a layer of %s", m.Key)
		}
	}
}

// holdAsMade holds what a program says against the file that says the same: it is held to the
// same bounds, and gives the same figures.
func holdAsMade(t require.TestingT, text, view string) {
	spec, err := source.Reader{Printable: ink.CanPrint, Folder: beside(), View: view}.Read(testFile, []byte(text))
	require.NoError(t, err)
	require.Empty(t, spec.Faults(), "mistakes of a Spec that was read")
	written, err := marking.Check(spec)
	require.NoError(t, err)
	forgetLines(reflect.ValueOf(spec).Elem())
	made, err := marking.Check(spec)
	require.NoError(t, err)
	require.Equal(t, figuresAlone(t, written), figuresAlone(t, made))
}

// figuresAlone are the figures without what goes by the lines of the file: what is said of
// them, and which end of a seam is told first.
func figuresAlone(t require.TestingT, p *garment.Pattern) map[string]any {
	var all map[string]any
	require.NoError(t, json.Unmarshal(figures.JSON(p), &all))
	delete(all, "remarks")
	for _, seam := range all["seams"].([]any) {
		delete(seam.(map[string]any), "ends")
		delete(seam.(map[string]any), "advice")
	}
	return all
}

// forgetLines takes the lines from all places within a value.
func forgetLines(v reflect.Value) {
	switch v.Kind() {
	case reflect.Pointer:
		if !v.IsNil() {
			forgetLines(v.Elem())
		}
	case reflect.Slice, reflect.Array:
		for i := range v.Len() {
			forgetLines(v.Index(i))
		}
	case reflect.Struct:
		if at, ok := v.Addr().Interface().(*fault.Place); ok {
			at.Line = 0
			return
		}
		for i := range v.NumField() {
			if v.Type().Field(i).IsExported() {
				forgetLines(v.Field(i))
			}
		}
	}
}

// asOften draws the same file once more, from its text on.
func asOften(t require.TestingT, text, view string, p printing) func(io.Writer) error {
	return func(w io.Writer) error {
		views := patternsOf(t, text)
		for _, one := range views {
			if one.View == view {
				o, err := p.take(one, views)
				require.NoError(t, err)
				_, err = pdfout.Draw(w, p.set(o), o.paper)
				return err
			}
		}
		return errors.New("the view is gone")
	}
}

// holdPDF draws a set, and reads the PDF back. Where it is drawn again it has the same bytes.
func holdPDF(t require.TestingT, text string, set arrange.Set, on paper.Paper, again func(io.Writer) error) {
	var pdf bytes.Buffer
	summary, err := pdfout.Draw(&pdf, set, on)
	if err != nil {
		var f *fault.Fault
		require.ErrorAs(t, err, &f)
		holdWords(t, text, f)
		return
	}
	require.Len(t, seen.Read(t, pdf.Bytes(), on.Printed).Pages, summary.Pages)
	if again != nil {
		var second bytes.Buffer
		require.NoError(t, again(&second))
		require.True(t, bytes.Equal(pdf.Bytes(), second.Bytes()), "the same file gives other bytes")
	}
}

// holdSVG draws a set as an SVG, and reads that.
func holdSVG(t require.TestingT, text string, set arrange.Set) {
	var svg bytes.Buffer
	if _, err := pdfout.DrawSVG(&svg, set, seen.Paper(t, "single")); err != nil {
		var f *fault.Fault
		require.ErrorAs(t, err, &f)
		holdWords(t, text, f)
		return
	}
	require.NotRegexp(t, `[ ,"](NaN|[+-]?Inf)`, svg.String())
	for d := xml.NewDecoder(&svg); ; {
		_, err := d.Token()
		if err == io.EOF {
			return
		}
		require.NoError(t, err)
	}
}

// Each kind of edit is made, and leaves some files without a mistake.
func TestEditedFilesAreMostlyFiles(t *testing.T) {
	good := map[byte]int{}
	for how := range byte(sketch.Edits()) {
		for at := range byte(10) {
			for _, text := range sketch.EveryKey() {
				if edited := sketch.Edited(text, []byte{how, 0, at, at * 7}); edited != text && len(patternsOf(t, edited)) > 0 {
					good[how]++
				}
			}
		}
		assert.Greater(t, good[how], 3, "edits of kind %d", how)
	}
	t.Log(good)
}
