package screen

import (
	"net/url"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// choiceAt reads the choice off an address.
func choiceAt(t require.TestingT, address string) Choice {
	at, err := url.Parse(address)
	require.NoError(t, err, "an address can be read: %s", address)
	return ChoiceOf(at.Query())
}

func TestAddressesOfChoices(t *testing.T) {
	for _, c := range []struct {
		choice  Choice
		address string
	}{
		{Choice{}, "./"},
		{Choice{Show: Folded}, "./?show=folded"},
		{Choice{View: "round neck"}, "./?view=round+neck"},
		{Choice{View: "0"}, "./?view=0"},
		{Choice{Show: Pages, View: "a&b=c", Part: 12}, "./?show=pages&view=a%26b%3Dc&part=12"},
		{Choice{Show: Views, Lay: Overlay}, "./?show=views&lay=over"},
		{Choice{Show: Pages, Lot: 1, Part: 3}, "./?show=pages&lot=2&part=3"},
		{Choice{Show: Folded, Lay: Half}, "./?show=folded&lay=half"},
		{Choice{Show: Figures, Lay: Beside, Units: AllUnits}, "./?show=figures&lay=beside&units=all"},
	} {
		assert.Equal(t, c.address, c.choice.Address())
		assert.Equal(t, c.choice, choiceAt(t, c.address))
	}
}

// What an address does not say in a way that is known is the usual.
func TestUnknownAddressesAreTheUsual(t *testing.T) {
	for _, address := range []string{"./", "./?", "./?show=", "./?show=cloth", "./?part=-1", "./?part=two", "./?part=99999999999999999999", "./?lot=0", "./?lot=1", "./?lot=-3", "./?lay=upside+down", "./?colour=red"} {
		assert.Equal(t, Choice{}, choiceAt(t, address), address)
	}
}

func TestAnAddressGivesItsChoiceBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := Choice{
			Show:  Show(rapid.IntRange(0, int(showCount)-1).Draw(t, "show")),
			View:  rapid.String().Draw(t, "view"),
			Lot:   rapid.IntRange(0, 20).Draw(t, "lot"),
			Part:  rapid.IntRange(0, 1000).Draw(t, "part"),
			Lay:   Lay(rapid.IntRange(0, int(layCount)-1).Draw(t, "lay")),
			Units: rapid.SampledFrom([]Units{OwnUnit, AllUnits}).Draw(t, "units"),
		}
		assert.Equal(t, c, choiceAt(t, c.Address()))
	})
}

func FuzzChoiceOf(f *testing.F) {
	for _, seed := range []string{"show=folded&lay=half", "part=2&view=%00%ff", "view=a;b&show=views", "part=-0", "show=sheets&show=pages"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, query string) {
		values, err := url.ParseQuery(query)
		if err != nil {
			t.Skip()
		}
		c := ChoiceOf(values)
		assert.Equal(t, c, choiceAt(t, c.Address()), "what was read is said again")
		assert.True(t, strings.HasPrefix(c.Address(), "./"), "an address stays on this page: %s", c.Address())
	})
}

func TestAnotherThingIsShownWholly(t *testing.T) {
	c := Choice{Show: Folded, View: "round", Lot: 1, Part: 2, Lay: Half}
	assert.Equal(t, Choice{Show: Pages, View: "round"}, c.Showing(Pages))
}
