package sketch

// Frock is a file with all that figures can tell.
const Frock = `title = "Everything frock"
size = "3 years"
unit = "in"
allowance = "3/8"
[cloth]
width = 45
[sewing]
needle = "70"
stitch = "2 mm"
[piece.front]
name = "Front"
fold = "centre"
drawn = "finished"
[piece.front.edge.centre]
points = [[0, 0], [0, 9]]
[piece.front.edge.neck]
points = [[0, 9], [2, 9], [2, 11]]
[piece.front.edge.shoulder]
points = [[2, 11], [4, "10 1/2"]]
[piece.front.edge.side]
points = [[4, "10 1/2"], ["6 1/2", 0]]
[piece.front.edge.hem]
points = [["6 1/2", 0], [0, 0]]
hem = 2
turn = "1/4"
[piece.front.tuck.bosom]
beside = "centre"
width = "1/8"
count = 5
first = "1/2"
gap = "1/16"
press = "away"
below = "neck"
length = 3
sample = {tucks = 10, flat = "10", sewn = "7 3/8"}
[piece.front.block]
ends = "1/2"
sides = "1/2"
[piece.back]
name = "Back"
cut = 2
[piece.back.edge.centre]
points = [[0, 0], [0, 10]]
[piece.back.edge.neck]
points = [[0, 10], [2, 11]]
[piece.back.edge.shoulder]
points = [[2, 11], ["4 1/4", "10 1/2"]]
[piece.back.edge.side]
points = [["4 1/4", "10 1/2"], [7, 0]]
[piece.back.edge.hem]
points = [[7, 0], [0, 0]]
[piece.back.pleat.dart]
edge = "side"
from = "hem"
at = 5
depth = "1/4"
toward = "hem"
length = "1/2"
[piece.skirt]
name = "Skirt"
fold = "middle"
[piece.skirt.edge.middle]
points = [[0, 0], [0, 12]]
[piece.skirt.edge.waist]
points = [[0, 12], [20, 12]]
[piece.skirt.edge.side]
points = [[20, 12], [20, 0]]
[piece.skirt.edge.hem]
points = [[20, 0], [0, 0]]
allowance = "3/4"
[piece.skirt.pleat.fine]
beside = "middle"
depth = "1/2"
count = 2
first = 2
[piece.collar]
name = "Collar"
cut = 2
[piece.collar.edge.neck]
points = [[0, 3], [9, 3]]
[piece.collar.edge.outer]
points = [[9, 3], [9, 0], [0, 0], [0, 3]]
[seam.shoulder]
join = ["front.shoulder", "back.shoulder"]
ease = "1/8"
[seam.side]
join = ["front.side", "back.side"]
[seam.waist]
join = ["skirt.waist", ["front.hem", "back.hem"]]
gathered = true
[trim.lace]
along = "collar.outer"
width = "1/2"
fullness = "1 1/2"
[trim."neck ribbon"]
along = ["front.neck", "back.neck"]
kind = "ribbon"
[ruffle.hem]
along = ["skirt.hem"]
fullness = 2
depth = 4
hem = "1/2"
turn = "1/4"
[binding.armhole]
along = ["back.side"]
width = "1/4"
[binding."round everything"]
along = ["skirt.hem", "skirt.side", "front.hem", "front.side", "back.hem", "back.side", "collar.outer", "collar.neck", "back.neck", "front.neck", "skirt.waist", "back.shoulder", "front.shoulder"]
width = "1 1/4"
fold = "double"
joins = 13
`
