package sketch

// Rules of this file: together its files have every key that a file may have, each where it
// counts, and none of them has a mistake. They are small, for tests alter each in many ways.

// EveryKey are these files, by what they are about. Beside them stand file.toml, which is the
// one about the garment, and front.svg.
func EveryKey() map[string]string {
	return map[string]string{
		"garment": keysOfAGarment,
		"pieces":  keysOfPieces,
		"edges":   keysOfEdges,
		"seams":   keysOfSeams,
		"trims":   keysOfTrims,
		"like":    keysOfWhatIsLike,
		"views":   keysOfViews,
		"tucks":   keysOfTucks,
		"pleats":  keysOfPleats,
		"groups":  keysOfGroups,
		"lines":   keysOfLines,
		"drawing": keysOfADrawing,
	}
}

// EveryKeyDrawing is front.svg.
const EveryKeyDrawing = `<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="100mm" viewBox="0 0 100 100">
<g id="front"><path d="M10 10h60v60h-60z"/><path id="fold" d="M20 20h30"/></g></svg>`

const keysOfAGarment = `title = "Frock"
size = "2 years"
unit = "mm"
allowance = 5
sleepwear = true
[cloth]
width = 900
see-through = true
[piece.front]
rectangle = [40, 60]
[sewing]
needle = "70"
thread = "60"
stitch = "2 mm"
tension = "3"
position = "left"
[fit]
chest = 50
waist = 45
length = 60
`

const keysOfPieces = `unit = "mm"
[piece.front]
name = "Front"
cut = 2
layers = 1
fold = "left"
drawn = "flat"
print = "half"
transfer = ["mirror"]
grain = "left"
rectangle = [40, 60]
[piece.front.edge.bottom]
hem = 10
turn = 5
[piece.front.edge.right]
allowance = 6
marked = true
[piece.front.notch.n]
edge = "right"
from = "top"
at = 20
`

const keysOfEdges = `unit = "mm"
allowance = 3
[piece.front]
drawn-to = "stitching"
enlarge = 4
grain = [[2, 2], [2, 10]]
[piece.front.edge.left]
points = [[0, 0], [0, 15]]
[piece.front.edge.top]
points = [[0, 15], [5, 14], [10, 15]]
smooth = true
[piece.front.edge.right]
points = [[10, 15], [10, 5]]
[piece.front.edge.bottom]
points = [[10, 5], [10, 0], [5, 0]]
[piece.front.edge.corner]
points = [[5, 0], [0, 0]]
centre = [2.5, 5]
`

const keysOfSeams = `unit = "mm"
allowance = 5
[piece.front]
rectangle = [40, 40]
[piece.back]
rectangle = [42, 38]
[seam.side]
join = ["front.right", "back.left"]
meet = ["top", "top"]
ease = 3
within = 8
[seam.top]
join = ["front.top", ["back.top"]]
gathered = true
`

const keysOfTrims = `unit = "mm"
allowance = 5
[piece.front]
rectangle = [60, 60]
[trim.lace]
along = ["front.top", "front.right"]
kind = "lace"
width = 8
fullness = 1.5
lies = "on"
joins = 1
join-takes = 10
[ruffle.hem]
along = "front.bottom"
fullness = 2
depth = 30
hem = 5
turn = 3
seam = 5
joining = 5
round = true
[binding.top]
along = "front.left"
width = 6
fold = "double"
joins = 1
joining = 5
square = 300
`

const keysOfWhatIsLike = `like = "file.toml"
without = ["fit.waist"]
[piece.other]
like = "front"
without = ["rectangle"]
outline = {from = "front.svg", part = "front", edges = ["a", "b", "c", "d"]}
`

const keysOfViews = `unit = "mm"
allowance = 5
[piece.front]
rectangle = [40, 40]
[trim.lace]
along = "front.top"
[view.long]
title = "Long frock"
size = "3 years"
allowance = 6
sleepwear = false
without = ["trim.lace"]
[view.long.cloth]
width = 800
[view.long.piece.front]
rectangle = [40, 60]
[view.long.seam.side]
join = ["front.left", "front.right"]
[view.long.trim.ribbon]
along = "front.top"
[view.long.ruffle.hem]
along = "front.bottom"
fullness = 2
depth = 20
[view.long.binding.top]
along = "front.left"
width = 5
[view.long.sewing]
needle = "80"
[view.long.fit]
chest = 40
`

const keysOfTucks = `unit = "mm"
allowance = 5
[piece.front]
fold = "left"
drawn = "finished"
rectangle = [50, 60]
[piece.front.tuck.yoke]
beside = "left"
width = 2
count = 2
first = 6
spacing = 7
press = "away"
below = ["top"]
length = 30
end = "stepped"
step = 2
sewn = "edge"
[piece.front.tuck.yoke.sample]
tucks = 5
flat = 50
sewn = 30
[piece.front.block]
ends = 5
sides = 5
measured = 104
`

const keysOfPleats = `unit = "mm"
allowance = 5
[piece.front]
rectangle = [60, 50]
[piece.front.pleat.across]
beside = "left"
side = "right"
kind = "knife"
depth = 3
count = 2
first = 10
spacing = 9
press = "toward"
below = "top"
length = 20
end = "stepped"
step = 3
[piece.front.pleat.box]
beside = "right"
kind = "box"
depth = 2
first = 15
count = 1
gap = 2
[piece.front.pleat.dart]
edge = "right"
from = "bottom"
at = 15
depth = 2
toward = "bottom"
length = 8
count = 2
spacing = 8
run = "square"
`

const keysOfGroups = `unit = "mm"
allowance = 5
[piece.front]
fold = "left"
rectangle = [70, 30]
[piece.front.line.foot]
along = "bottom"
distance = 8
[piece.front.tuck.near]
beside = "left"
width = 1.5
count = 2
groups = 2
first = 5
gap = 1
between = 4
press = "away"
from = "top"
to = "foot"
sewn = "twin needle"
[piece.front.tuck.far]
beside = "right"
side = "left"
width = 1.5
count = 2
groups = 3
first = 10
gap = 0
betweens = [3, 4]
`

const keysOfLines = `unit = "mm"
allowance = 5
[piece.front]
[piece.front.edge.left]
points = [[0, 0], [0, 50]]
[piece.front.edge.top]
points = [[0, 50], [50, 50]]
[piece.front.edge.right]
points = [[50, 50], [50, 0]]
[piece.front.edge.bottom]
points = [[50, 0], [0, 0]]
[piece.front.line.facing]
along = "left"
distance = 12
kind = "fold"
[piece.front.line.beside]
beside = "facing"
at = 6
side = "right"
from = "bottom"
length = 30
[piece.front.line.curve]
points = [[0, 30], [20, 34], [50, 30]]
smooth = true
from = "left"
to = "right"
[piece.front.line.round]
points = [[10, 10], [20, 20]]
centre = [20, 10]
`

const keysOfADrawing = `unit = "mm"
allowance = 5
[piece.front]
[piece.front.outline]
from = "front.svg"
part = "front"
edges = ["left", "top", "right", "bottom"]
corner = 25
lines = ["fold"]
[piece.front.edge.bottom]
allowance = 4
[piece.front.line.fold]
kind = "placement"
from = "left"
to = "right"
`
