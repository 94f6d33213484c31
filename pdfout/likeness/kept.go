package likeness

import (
	"bytes"
	"image"
	"image/png"
	"os"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Keep writes a picture into its file, as a PNG of at most 256 colours.
func Keep(t require.TestingT, file string, drawn image.Image) {
	var b bytes.Buffer
	require.NoError(t, (&png.Encoder{CompressionLevel: png.BestCompression}).Encode(&b, fewColours(drawn)))
	require.NoError(t, os.WriteFile(file, b.Bytes(), 0o644))
}

// Hold fails a test where what is drawn looks otherwise than the picture in a file, and says
// where it does most, and that again, a command, would keep it as it is drawn now.
func Hold(t require.TestingT, file string, drawn image.Image, again string) {
	data, err := os.ReadFile(file)
	require.NoError(t, err)
	kept := Decoded(t, data)
	require.Equal(t, kept.Bounds().Size(), drawn.Bounds().Size(), "the size of %s in dots", file)
	unlike, at := mostApart(kept, drawn)
	assert.LessOrEqual(t, unlike, mostUnlike, "what is drawn looks otherwise than %s, most of all %d dots from the left and %d from the top: see whether it is meant, then %s",
		file, at.X, at.Y, again)
}

// Decoded is the picture of a PNG.
func Decoded(t require.TestingT, data []byte) image.Image {
	picture, err := png.Decode(bytes.NewReader(data))
	require.NoError(t, err)
	return picture
}
