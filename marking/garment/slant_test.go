package garment_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"tuckmark/marking/sketch"
	"tuckmark/marking/sketch/made"
)

// A line that runs up from a level edge to one that rises 1 on 1: of lace 1 in wide a border is 1/2
// in longer than its middle there, and nothing at the level end (derived).
func TestSlantingEnds(t *testing.T) {
	for _, c := range []struct{ name, right, left, width, want string }{
		{"level at both ends", "10,9", "0,9", "1", "0 in"},
		{"rising 1 on 1", "10,14", "0,4", "1", "1/2 in"},
		{"falling, narrower", "10,4", "0,14", "1/2", "1/4 in"},
	} {
		p := made.Of(t, "unit = \"in\"\nallowance = \"1/4\"\n"+sketch.Piece("front", "bottom: 0,0 10,0\nright: 10,0 "+c.right+"\ntop: "+c.right+" "+c.left+"\nleft: "+c.left+" 0,0\n---\n\n[line.insertion]\nbeside = \"left\"\nat = 5\n")+
			"[trim.lace]\nalong = [\"front.insertion\"]\nwidth = \""+c.width+"\"\nlies = \"on\"\n")
		trim := p.Trims[0]
		assert.Equal(t, c.want, trim.Lengths[0].Slant(trim.Width).String(), c.name)
	}
}
