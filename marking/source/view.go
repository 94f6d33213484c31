package source

import (
	"fmt"
	"slices"
	"strings"

	"tuckmark/marking/fault"
	"tuckmark/marking/wording"
)

// Rules of this file: a view is what a maker chooses between, such as a round and a square
// neck. It holds only what differs, and lies over the file as a layer. Views that are not
// chosen are read too, so that their mistakes are told.

// mostViews is how many views a file may have. It bounds the time, for each is read.
const mostViews = 20

// view is a view of a file: its layers over the layers of that.
type view struct {
	name   string
	layers []written
}

// views reads which views layers have.
func (r *fileReader) views(layers []written) []view {
	var all []view
	for _, l := range layers {
		t := &fileTable{fileReader: r, written: l}
		for _, one := range t.named("view") {
			one.know(viewKeys...)
			i := slices.IndexFunc(all, func(v view) bool { return v.name == one.name })
			if i < 0 {
				i = len(all)
				all = append(all, view{name: one.name})
			}
			all[i].layers = append(all[i].layers, one.written)
		}
	}
	if len(all) > mostViews {
		r.report(fault.Place{File: r.file, Key: "view"}, fmt.Sprintf("there are %d views; at most %d are made", len(all), mostViews), "divide the file")
		return all[:mostViews]
	}
	each := 0
	for _, l := range layers {
		each += weight(l.values)
	}
	if f := tooMuchInViews(each, len(all)); f != nil {
		r.note(fault.Place{File: r.file, Key: "view"}, f)
		return nil
	}
	return all
}

// chosen is a Spec as this view of it. Its title has the name of the view behind it, where
// the view gives none of its own.
func (v view) chosen(spec *Spec) *Spec {
	spec.View = v.name
	own := slices.ContainsFunc(v.layers, func(l written) bool { return l.has("title") })
	switch {
	case v.name == "" || own:
	case spec.Title.Given():
		spec.Title.V += ", " + v.name
	default:
		spec.Title = GivenAt(v.name, v.layers[0].place)
	}
	return spec
}

// NoView is the mistake of asking for a view that a file does not have.
func NoView(file, name string, known []string) *fault.Fault {
	f := &fault.Fault{Place: fault.Place{File: file}, Cause: "there is no view " + wording.Quoted(name), Hint: "it has none; one is made by a line such as [view.round] and what differs below it"}
	if near := wording.Nearest(name, known); near != "" {
		f.Hint = wording.DidYouMean(near)
	} else if len(known) > 0 {
		f.Hint = "the views are " + strings.Join(known, ", ")
	}
	return f
}
