package marking_test

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"reflect"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tuckmark/marking"
	"tuckmark/marking/fault"
	"tuckmark/marking/figures"
	"tuckmark/marking/folded"
	"tuckmark/marking/gauge"
	"tuckmark/marking/mark"
	"tuckmark/marking/sheet"
	"tuckmark/marking/source"
)

// Whoever makes a Spec may get any one value of it wrong: Check refuses it, or all that is
// made of the pattern is made. Each field is altered once, in the first example that has it.
func TestNoValueOfASpecStopsTheProgram(t *testing.T) {
	files, err := filepath.Glob("../examples/*.toml")
	require.NoError(t, err)
	altered, refused := map[string]bool{}, 0
	for _, file := range files {
		data, err := os.ReadFile(file)
		require.NoError(t, err)
		spec, err := source.Read(file, data, func(rune) bool { return true })
		require.NoError(t, err)
		alter(reflect.ValueOf(spec).Elem(), "Spec", func(how string) {
			if altered[how] {
				return
			}
			altered[how] = true
			assert.NotPanics(t, func() {
				p, err := marking.Check(spec)
				if err != nil {
					refused++
					return
				}
				sheet.Of(p)
				gauge.Of(p)
				folded.All(p, mark.BothHalves)
				figures.JSON(p)
			}, "%s with %s", filepath.Base(file), how)
		})
	}
	assert.Greater(t, len(altered), 800, "values that were tried")
	assert.Greater(t, refused, 250, "values that were refused")
}

// So it is where several are wrong at once.
func TestNoTwoValuesOfASpecStopTheProgram(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		name := rapid.SampledFrom([]string{"nightgown.toml", "pinafore.toml", "shirt.toml", "underwaist.toml"}).Draw(t, "example")
		data, err := os.ReadFile(filepath.Join("..", "examples", name))
		require.NoError(t, err)
		spec, err := source.Read(name, data, func(rune) bool { return true })
		require.NoError(t, err)
		alterOne(t, spec, func() {
			alterOne(t, spec, func() {
				p, err := marking.Check(spec)
				if err != nil {
					require.NotEmpty(t, err.(fault.List), "an error that says nothing")
					return
				}
				sheet.Of(p)
				gauge.Of(p)
				folded.All(p, mark.BothHalves)
				figures.Report(p, figures.OwnUnit)
				figures.JSON(p)
			})
		})
	})
}

// alterOne alters one value of a Spec while something is tried.
func alterOne(t *rapid.T, spec *source.Spec, try func()) {
	v, ways := reflect.ValueOf(spec).Elem(), 0
	alter(v, "Spec", func(string) { ways++ })
	chosen, way := rapid.IntRange(1, ways).Draw(t, "way"), 0
	alter(v, "Spec", func(how string) {
		if way++; way == chosen {
			t.Log(how)
			try()
		}
	})
}

// alter sets every value within v to others of its type, one at a time, tries each and sets
// it back. path is what the value is called. Of a place in the file the key alone is altered:
// file and line only tell and sort what is wrong.
func alter(v reflect.Value, path string, try func(how string)) {
	was := reflect.New(v.Type()).Elem()
	was.Set(v)
	set := func(to reflect.Value, how string) {
		v.Set(to)
		try(path + " " + how)
		v.Set(was)
	}
	zero := reflect.Zero(v.Type())
	switch v.Kind() {
	case reflect.Float64:
		for _, x := range []float64{0, -1, math.NaN(), math.Inf(1), 1e300} {
			set(reflect.ValueOf(x), fmt.Sprint(x))
		}
	case reflect.Int:
		for _, n := range []int{0, -1, 3, 1e6} {
			set(reflect.ValueOf(n).Convert(v.Type()), fmt.Sprint(n))
		}
	case reflect.String:
		set(zero, "empty")
		set(reflect.ValueOf("x"), "x")
	case reflect.Bool:
		set(reflect.ValueOf(!v.Bool()), "turned")
	case reflect.Pointer:
		set(zero, "nil")
		set(reflect.New(v.Type().Elem()), "with nothing in it")
		if !v.IsNil() {
			alter(v.Elem(), path, try)
		}
	case reflect.Slice:
		for n := range min(v.Len(), 3) {
			set(was.Slice(0, n), fmt.Sprintf("cut off behind %d", n))
		}
		set(reflect.Append(was.Slice3(0, was.Len(), was.Len()), reflect.Zero(v.Type().Elem())), "with an empty one more")
		for i := range v.Len() {
			alter(v.Index(i), path+"[]", try)
		}
	case reflect.Array:
		for i := range v.Len() {
			alter(v.Index(i), fmt.Sprintf("%s[%d]", path, i), try)
		}
	case reflect.Struct:
		set(zero, "left out")
		for i := range v.NumField() {
			name := v.Type().Field(i).Name
			if f := v.Field(i); f.CanSet() && (v.Type() != reflect.TypeFor[fault.Place]() || name == "Key") {
				alter(f, path+"."+name, try)
			}
		}
	}
}
