package source

import (
	"tuckmark/marking/fault"
)

// Place is where the file says how the folds end.
func (e EndSpec) Place() fault.Place {
	if e.Step.Given() {
		return e.Step.Place
	}
	return e.Length.Place
}
