package likeness

import (
	"cmp"
	"image"
	"image/color"
	"image/draw"
	"maps"
	"slices"
)

// fewColours is a picture with the 256 colours that it has most of; the others are drawn as the
// nearest of these.
func fewColours(picture image.Image) image.Image {
	count := map[color.RGBA]int{}
	box := picture.Bounds()
	for y := box.Min.Y; y < box.Max.Y; y++ {
		for x := box.Min.X; x < box.Max.X; x++ {
			count[color.RGBAModel.Convert(picture.At(x, y)).(color.RGBA)]++
		}
	}
	most := slices.SortedFunc(maps.Keys(count), func(a, b color.RGBA) int {
		return cmp.Or(cmp.Compare(count[b], count[a]), cmp.Compare(a.R, b.R), cmp.Compare(a.G, b.G), cmp.Compare(a.B, b.B))
	})
	palette := color.Palette{}
	for _, c := range most[:min(len(most), 256)] {
		palette = append(palette, c)
	}
	few := image.NewPaletted(box, palette)
	draw.Draw(few, box, picture, box.Min, draw.Src)
	return few
}
