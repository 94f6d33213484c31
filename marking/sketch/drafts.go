package sketch

import (
	"fmt"
	"math"
	"strings"

	"pgregory.net/rapid"
)

// Outlines as they are drafted for children, of any sensible measures: none of
// them may be refused. The measures are common practice.

// draft draws the measures of a garment, to an eighth of an inch.
type draft struct{ *rapid.T }

func (d draft) inches(name string, least, most float64) float64 {
	return float64(rapid.IntRange(int(least*8), int(most*8)).Draw(d.T, name)) / 8
}

// seam draws the allowance of an edge.
func (d draft) seam(edge string) string {
	return "allowance = " + rapid.SampledFrom([]string{"0", "0.25", "0.375", "0.5", "0.625"}).Draw(d.T, "allowance of the "+edge)
}

// hem draws the hem of an edge.
func (d draft) hem(most float64) string {
	return fmt.Sprintf("hem = %g; turn = 0.25", d.inches("hem", 0.5, most))
}

// Bodice drafts half a front: its neck round, pointed or square, its side
// straight, its hem level or slanted.
func Bodice(t *rapid.T) string {
	d := draft{t}
	length, chest := d.inches("length", 8, 14), d.inches("chest", 6, 8)
	wide, deep := d.inches("width of the neck", 2, 2.75), d.inches("depth of the neck", 1.5, 3.5)
	slope, shoulder := d.inches("slope of the shoulder", 0.5, 1), d.inches("shoulder", 1.75, 2.5)
	drop := d.inches("depth of the armhole", 3.5, 4.5)
	flare, dip := d.inches("flare", -0.5, 2), d.inches("dip of the hem", 0, 0.5)
	tip := wide + shoulder
	neck := map[string]string{
		"round":  fmt.Sprintf("0,%g %g,%g %g,%g %g,%g | smooth = true; ", length-deep, wide/2, length-deep*0.87, wide*0.87, length-deep/2, wide, length),
		"V":      fmt.Sprintf("0,%g %g,%g | ", length-deep, wide, length),
		"square": fmt.Sprintf("0,%g %g,%g %g,%g | ", length-deep, wide, length-deep, wide, length),
	}[rapid.SampledFrom([]string{"round", "V", "square"}).Draw(d.T, "neck")]
	under := length - drop
	return fmt.Sprintf("fold = \"centre\"\ncentre: 0,0 0,%g\nneck: %s%s\nshoulder: %g,%g %g,%g | %s\n"+
		"armhole: %g,%g %g,%g %g,%g %g,%g | smooth = true; %s\nside: %g,%g %g,%g | %s\nhem: %g,%g 0,0 | %s",
		length-deep, neck, d.seam("neck"), wide, length, tip, length-slope, d.seam("shoulder"),
		tip, length-slope, tip-0.25, under+drop/2.5, tip+(chest-tip)/3, under+0.375, chest, under, d.seam("armhole"),
		chest, under, chest+flare, dip, d.seam("side"), chest+flare, dip, d.hem(2))
}

// Sleeve drafts a sleeve with a flat or a high cap.
func Sleeve(t *rapid.T) string {
	d := draft{t}
	width, long := d.inches("width", 7, 11), d.inches("underarm", 4, 8)
	cap, taper := d.inches("height of the cap", 0.75, 4), d.inches("taper", -1, 1.5)
	var points []string
	for k := range 9 { // from the right underarm over the cap
		share := float64(k) / 8
		points = append(points, fmt.Sprintf("%.4f,%.4f", width*(1-share), long+cap*(1-math.Cos(2*math.Pi*share))/2))
	}
	return fmt.Sprintf("hem: %g,0 %g,0 | %s\nfront: %g,0 %s | %s\ncap: %s | smooth = true; %s\nback: %s %g,0 | %s",
		taper, width-taper, d.hem(1.5), width-taper, points[0], d.seam("underarm"),
		strings.Join(points, " "), d.seam("cap"), points[8], taper, d.seam("underarm"))
}

// Gore drafts a gore of a skirt with a hollow waist and a round hem.
func Gore(t *rapid.T) string {
	d := draft{t}
	waist, long, flare := d.inches("waist", 2.5, 6), d.inches("length", 10, 20), d.inches("flare", 0, 4)
	rise := flare * (waist/2 + flare) / long / 2 // so that the hem meets the sides about square
	half := waist / 2
	return fmt.Sprintf("waist: %g,%g 0,%g %g,%g | smooth = true; %s\nleft: %g,%g %g,%.4f | %s\n"+
		"hem: %g,%.4f 0,0 %g,%.4f | smooth = true; %s\nright: %g,%.4f %g,%g | %s",
		half, long, long-0.125, -half, long, d.seam("waist"), -half, long, -half-flare, rise, d.seam("side"),
		-half-flare, rise, half+flare, rise, d.hem(2.5), half+flare, rise, half, long, d.seam("side"))
}

// Collar drafts a flat collar between two round lines, its ends square to them.
func Collar(t *rapid.T) string {
	d := draft{t}
	inner, wide := d.inches("radius", 2, 3), d.inches("width", 1.75, 3)
	sweep := float64(rapid.IntRange(60, 170).Draw(d.T, "sweep"))
	arc := func(radius, from, to float64) string {
		var points []string
		for k := range 7 {
			sin, cos := math.Sincos((from + (to-from)*float64(k)/6) * math.Pi / 180)
			points = append(points, fmt.Sprintf("%.4f,%.4f", radius*cos, radius*sin))
		}
		return strings.Join(points, " ")
	}
	in, out := arc(inner, sweep, 0), arc(inner+wide, 0, sweep)
	ends := func(path string) (first, last string) {
		points := strings.Fields(path)
		return points[0], points[len(points)-1]
	}
	innerLast, innerFirst := ends(in)
	outerFirst, outerLast := ends(out)
	return fmt.Sprintf("neck: %s | smooth = true; %s\nfront: %s %s | %s\nouter: %s | smooth = true; %s\nback: %s %s | %s",
		in, d.seam("neck"), innerFirst, outerFirst, d.seam("front"), out, d.seam("outer"), outerLast, innerLast, d.seam("back"))
}

// Raglan drafts a raglan sleeve: two long hollow edges that come up to a short
// neck.
func Raglan(t *rapid.T) string {
	d := draft{t}
	width, long, out := d.inches("width", 8, 10), d.inches("underarm", 4, 8), d.inches("spread", 0, 1)
	high, neck, dip := d.inches("height of the raglan", 5, 8), d.inches("neck", 2.25, 3.5), d.inches("dip of the neck", 0.125, 0.5)
	middle, top := width/2, long+high
	// A third and two thirds of the way up, hollowed by a quarter inch.
	up := func(side, share float64) string {
		x := middle + side*(middle+out+(neck/2-middle-out)*share-0.25)
		return fmt.Sprintf("%.4f,%.4f", x, long+high*share)
	}
	return fmt.Sprintf("hem: 0,0 %g,0 | %s\nunder 1: %g,0 %g,%g | %s\nraglan 1: %g,%g %s %s %g,%g | smooth = true; %s\n"+
		"neck: %g,%g %g,%g %g,%g | smooth = true; %s\nraglan 2: %g,%g %s %s %g,%g | smooth = true; %s\nunder 2: %g,%g 0,0 | %s",
		width, d.hem(1.5), width, width+out, long, d.seam("underarm"),
		width+out, long, up(1, 1.0/3), up(1, 2.0/3), middle+neck/2, top, d.seam("front raglan"),
		middle+neck/2, top, middle, top-dip, middle-neck/2, top, d.seam("neck"),
		middle-neck/2, top, up(-1, 2.0/3), up(-1, 1.0/3), -out, long, d.seam("back raglan"), -out, long, d.seam("underarm"))
}

// Gusset drafts a diamond to be set under an arm.
func Gusset(t *rapid.T) string {
	d := draft{t}
	wide, high := d.inches("half the width", 1.25, 2), d.inches("half the height", 1.25, 3.5)
	return fmt.Sprintf("a: 0,%g %g,0 | %s\nb: %g,0 0,%g | %s\nc: 0,%g %g,0 | %s\nd: %g,0 0,%g | %s",
		-high, wide, d.seam("a"), wide, high, d.seam("b"), high, -wide, d.seam("c"), -wide, -high, d.seam("d"))
}

// Pocket drafts a pocket with round or clipped lower corners, in one edge or
// in five.
func Pocket(t *rapid.T) string {
	d := draft{t}
	wide, high, corner := d.inches("width", 3.5, 6), d.inches("height", 4, 7), d.inches("corner", 1, 1.25)
	seam := d.seam("pocket") // one allowance all round
	top := fmt.Sprintf("top: %g,%g 0,%g | %s\n", wide, high, high, d.hem(1))
	if rapid.Bool().Draw(d.T, "clipped") {
		return top + fmt.Sprintf("left: 0,%g 0,%g | %s\nclip: 0,%g %g,0 | %s\nbottom: %g,0 %g,0 | %s\nclip 2: %g,0 %g,%g | %s\nright: %g,%g %g,%g | %s",
			high, corner, seam, corner, corner, seam, corner, wide-corner, seam, wide-corner, wide, corner, seam, wide, corner, wide, high, seam)
	}
	var left, right []string
	for k := range 31 {
		sin, cos := math.Sincos(float64(k) * 3 * math.Pi / 180)
		left = append(left, fmt.Sprintf("%.5f,%.5f", corner*(1-cos), corner*(1-sin)))
		right = append(right, fmt.Sprintf("%.5f,%.5f", wide-corner*(1-sin), corner*(1-cos)))
	}
	if rapid.Bool().Draw(d.T, "in one edge") {
		return top + fmt.Sprintf("round: 0,%g %s %s %g,%g | %s", high, strings.Join(left, " "), strings.Join(right, " "), wide, high, seam)
	}
	return top + fmt.Sprintf("left: 0,%g %s | %s\nturn: %s | %s\nbottom: %s %s | %s\nturn 2: %s | %s\nright: %s %g,%g | %s",
		high, left[0], seam, strings.Join(left, " "), seam, left[30], right[0], seam, strings.Join(right, " "), seam, right[30], wide, high, seam)
}
