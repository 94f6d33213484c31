package marking

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/fault"
	"tuckmark/marking/garment"
	"tuckmark/marking/piece"
)

func TestChoose(t *testing.T) {
	p := &garment.Pattern{Title: "T", Pieces: []piece.Piece{{Key: "front", Name: "Front"}, {Key: "back", Name: "Lower back"}, {Key: "left sleeve", Name: "Left sleeve"}}}
	for _, c := range []struct {
		name  string
		names []string
		want  []string
	}{
		{"one", []string{"back"}, []string{"back"}},
		{"in the order of the file", []string{"left sleeve", "front"}, []string{"front", "left sleeve"}},
		{"spaces and capitals", []string{" Front ", "LEFT SLEEVE"}, []string{"front", "left sleeve"}},
		{"by the name on the sheet", []string{"lower back"}, []string{"back"}},
		{"twice", []string{"back", "back"}, []string{"back"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			only, err := Choose(p, c.names)
			require.NoError(t, err)
			var got []string
			for _, piece := range only.Pieces {
				got = append(got, piece.Key)
			}
			assert.Equal(t, c.want, got)
			assert.Equal(t, "T", only.Title)
			assert.Len(t, p.Pieces, 3, "the pattern itself keeps all")
		})
	}
	for _, c := range []struct {
		name  string
		names []string
		want  string
	}{
		{"misspelt", []string{"frnt"}, "no piece is called \"frnt\"\nhint: did you mean \"front\"?"},
		{"none", []string{""}, "no piece is called \"\"\nhint: the pieces are front, back, left sleeve"},
		{"several", []string{"collar", "front", "cuff"}, "no piece is called \"collar\", or \"cuff\"\nhint: the pieces are front, back, left sleeve"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := Choose(p, c.names)
			assert.EqualError(t, err, c.want)
		})
	}
}

// Of what is remarked, only that comes which is about a piece that is chosen, or about what
// is sewn to one.
func TestChosenRemarks(t *testing.T) {
	front, back, sleeve := piece.Piece{Key: "front"}, piece.Piece{Key: "front lining"}, piece.Piece{Key: "sleeve"}
	on := func(pieces ...*piece.Piece) (all []garment.Course) {
		for _, p := range pieces {
			all = append(all, garment.Course{Piece: p})
		}
		return all
	}
	remark := func(key string) piece.Remark { return piece.Remark{Place: fault.Place{Key: key}, Text: "look"} }
	p := &garment.Pattern{
		Pieces: []piece.Piece{front, back, sleeve},
		Seams: []garment.Seam{
			{Key: "side", Sides: [2]garment.SeamSide{{Courses: on(&front)}, {Courses: on(&back)}}},
			{Key: "cap", Sides: [2]garment.SeamSide{{Courses: on(&back)}, {Courses: on(&sleeve)}}},
		},
		Trims:    []garment.Trim{{SewnOn: garment.SewnOn{Key: "lace", Courses: on(&sleeve, &front)}}, {SewnOn: garment.SewnOn{Key: "cuff", Courses: on(&sleeve)}}},
		Ruffles:  []garment.Ruffle{{SewnOn: garment.SewnOn{Key: "hem", Courses: on(&back)}}},
		Bindings: []garment.Binding{{SewnOn: garment.SewnOn{Key: "neck", Courses: on(&front)}}},
	}
	for _, key := range []string{"", "piece.front", "piece.front.tuck.yoke", `piece."front lining"`, `piece."front lining".edge.hem`, "piece.sleeve.edge.cap",
		"seam.side", "seam.cap", "trim.lace.width", "trim.cuff", "ruffle.hem", "binding.neck"} {
		p.Remarks = append(p.Remarks, remark(key))
	}
	for _, c := range []struct {
		chosen string
		want   []string
	}{
		{"front", []string{"", "piece.front", "piece.front.tuck.yoke", "seam.side", "trim.lace.width", "binding.neck"}},
		{"front lining", []string{"", `piece."front lining"`, `piece."front lining".edge.hem`, "seam.side", "seam.cap", "ruffle.hem"}},
		{"sleeve", []string{"", "piece.sleeve.edge.cap", "seam.cap", "trim.lace.width", "trim.cuff"}},
	} {
		only, err := Choose(p, []string{c.chosen})
		require.NoError(t, err)
		var got []string
		for _, r := range only.Remarks {
			got = append(got, r.Key)
		}
		assert.Equal(t, c.want, got, c.chosen)
		assert.Len(t, p.Remarks, 12, "the pattern itself keeps all")
	}
}
