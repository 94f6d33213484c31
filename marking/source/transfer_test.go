package source

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestParseTransfers(t *testing.T) {
	const hint = "\nhint: write trace, template, mirror or prick; more than one where more than one is wanted"
	tests := []struct {
		name, in string
		want     []Transfer
		fault    string
	}{
		{"one", "mirror", []Transfer{Mirror}, ""},
		{"in the order of their sheets", "prick, trace", []Transfer{Trace, Prick}, ""},
		{"each once", "template,trace,template", []Transfer{Trace, Template}, ""},
		{"one that is none", "trace,tarce", nil, `"tarce" is no way to bring lines onto cloth` + hint},
		{"all that are none", "tarce,x,mirror,y", nil, `"tarce", "x" or "y" is no way to bring lines onto cloth` + hint},
		{"nothing", "", nil, `"" is no way to bring lines onto cloth` + hint},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			ways, err := ParseTransfers(tt.in)
			assert.Equal(t, tt.want, ways)
			if tt.fault == "" {
				assert.NoError(t, err)
			} else {
				assert.EqualError(t, err, tt.fault)
			}
		})
	}
}

// Only cloth that is known to hide what lies under it has templates as well.
func TestUsualTransfers(t *testing.T) {
	for _, c := range []struct {
		name  string
		cloth Flag
		want  []Transfer
	}{
		{"not said", Flag{}, []Transfer{Trace}},
		{"it can be seen through", Given(true), []Transfer{Trace}},
		{"it cannot", Given(false), []Transfer{Trace, Template}},
	} {
		assert.Equal(t, c.want, (&Spec{SeeThrough: c.cloth}).UsualTransfers(), c.name)
	}
}
