// Rules of this file: where the lines are is read off the picture, once for each and when it is
// first asked for. A line may be drawn in several places. Lines that are hidden, and what lies
// outside the page they are drawn on, are not there.

import { board } from "/picture.js"

const sharp = Math.cos(12 * Math.PI / 180) // a line that turns less has no corner there

let all = null // of the picture; null before it is read

// forget is called when the picture is another.
export function forget() { all = null }

// The roles of the lines that bound a piece.
const bounding = ["cutting line", "place on the fold", "edge of the block"]

// linesOf returns the lines with a name that are drawn, all or those at a piece and a name. A
// piece as a whole is the lines that bound it, or all where none does.
export function linesOf(piece, line) {
  all ??= read()
  if (piece === undefined) return all
  const found = all.filter(l => l.piece === piece && (l.line === line || line === ""))
  const bounds = line === "" ? found.filter(l => bounding.includes(l.role?.dataset.role)) : []
  return bounds.length > 0 ? bounds : found
}

// read reads all lines of the picture.
function read() {
  const found = []
  const toBoard = board.getScreenCTM()?.inverse()
  let group = null, matrix, role
  for (const path of document.querySelectorAll("#drawing path[data-piece]")) {
    if (!path.dataset.line || !toBoard) continue
    if (path.parentNode !== group) { // lines in a group lie as it does
      group = path.parentNode
      matrix = toBoard.multiply(group.getScreenCTM())
      role = path.closest("[data-role]")
    }
    const clip = clipOf(path, matrix)
    for (const run of runs(path.getAttribute("d"))) {
      const points = run.map(([x, y]) => ({ x: matrix.a * x + matrix.c * y + matrix.e, y: matrix.b * x + matrix.d * y + matrix.f }))
      found.push({ piece: path.dataset.piece, line: path.dataset.line, path, matrix, role, points, clip, box: boxOf(points) })
    }
  }
  return found
}

// runs are the points of each part of a path, in the words of SVG's path data: places and steps,
// straight lines and circles. A circle is its middle.
function runs(d) {
  const words = d.match(/[a-zA-Z]|-?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?/g) ?? []
  const parts = []
  let command = "", x = 0, y = 0, i = 0
  const number = () => Number(words[i++])
  while (i < words.length) {
    if (/[a-zA-Z]/.test(words[i])) command = words[i++]
    const part = parts.at(-1)
    const step = command === command.toLowerCase()
    switch (command.toUpperCase()) {
    case "M":
      x = number() + (step ? x : 0)
      y = number() + (step ? y : 0)
      parts.push([[x, y]])
      command = step ? "l" : "L"
      break
    case "Z":
      ;[x, y] = part[0]
      part.push([x, y])
      break
    case "H":
      x = number() + (step ? x : 0)
      part.push([x, y])
      break
    case "V":
      y = number() + (step ? y : 0)
      part.push([x, y])
      break
    case "A": {
      i += 5
      const to = [number() + (step ? x : 0), number() + (step ? y : 0)]
      part.ring ??= [(x + to[0]) / 2, (y + to[1]) / 2]
      ;[x, y] = to
      break
    }
    case "L":
      x = number() + (step ? x : 0)
      y = number() + (step ? y : 0)
      part.push([x, y])
      break
    default: // nothing that is drawn here: what is read so far is there
      return parts
    }
  }
  return parts.map(part => part.ring ? [part.ring] : part)
}

// clipOf is the box that a path shows in, in mm; null where all of it does.
function clipOf(path, matrix) {
  const name = path.closest("[clip-path]")?.getAttribute("clip-path").match(/#([^)"]+)/)?.[1]
  const clip = name && document.getElementById(name)?.querySelector("path")
  if (!clip) return null
  return boxOf(runs(clip.getAttribute("d")).flat().map(([x, y]) => ({ x: matrix.a * x + matrix.e, y: matrix.d * y + matrix.f })))
}

// boxOf is the smallest box around points.
function boxOf(points) {
  const box = { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity }
  for (const p of points) {
    box.left = Math.min(box.left, p.x)
    box.right = Math.max(box.right, p.x)
    box.top = Math.min(box.top, p.y)
    box.bottom = Math.max(box.bottom, p.y)
  }
  return box
}

// boxOfFirst is the box of those of some lines that lie in one part with the first, as far as
// they show.
export function boxOfFirst(lines) {
  const part = line => line.path.closest(".part")
  const together = lines.filter(l => part(l) === part(lines[0]))
  const box = boxOf(together.flatMap(l => l.points))
  const clip = lines[0].clip ?? box
  return {
    left: Math.max(box.left, clip.left), right: Math.min(box.right, clip.right),
    top: Math.max(box.top, clip.top), bottom: Math.min(box.bottom, clip.bottom),
  }
}

// paperAt is the paper that a place lies on; none between them.
export function paperAt(at) {
  const toBoard = board.getScreenCTM().inverse()
  return [...document.querySelectorAll("#drawing .part .paper")].find(paper => {
    const m = toBoard.multiply(paper.getScreenCTM()), { x, y, width, height } = paper.getBBox()
    return near({ left: m.e + x, right: m.e + x + width, top: m.f + y, bottom: m.f + y + height }, at, 0)
  })
}

const near = (box, at, reach) => at.x > box.left - reach && at.x < box.right + reach && at.y > box.top - reach && at.y < box.bottom + reach

// nearest is the line nearest to a place, the place on it and how far that is, in mm; null
// where none is within reach.
export function nearest(at, reach) {
  let best = null
  for (const line of reachable(at, reach)) {
    for (let i = 0; i < line.points.length; i++) {
      const on = onStretch(at, line.points[Math.max(0, i - 1)], line.points[i])
      best = nearer(best, line, on, at, reach)
    }
  }
  return best
}

// nearestCorner is the same for the ends and corners of lines.
export function nearestCorner(at, reach) {
  let best = null
  for (const line of reachable(at, reach)) {
    for (const corner of line.corners ??= corners(line.points)) best = nearer(best, line, corner, at, reach)
  }
  return best
}

function* reachable(at, reach) {
  for (const line of linesOf()) {
    if (near(line.box, at, reach) && !line.path.closest("[display=none]")) yield line
  }
}

function nearer(best, line, on, at, reach) {
  const far = Math.hypot(on.x - at.x, on.y - at.y)
  if (far > (best?.far ?? reach) || line.clip && !near(line.clip, on, 0.01)) return best
  return { line, at: on, far }
}

// onStretch is the place between two points that is nearest to a place.
function onStretch(at, a, b) {
  const x = b.x - a.x, y = b.y - a.y
  const long = x * x + y * y
  const t = long ? Math.min(1, Math.max(0, ((at.x - a.x) * x + (at.y - a.y) * y) / long)) : 0
  return { x: a.x + t * x, y: a.y + t * y }
}

// corners are the ends of a line, and where it turns.
function corners(points) {
  const n = points.length
  const closed = n > 2 && Math.hypot(points[0].x - points[n - 1].x, points[0].y - points[n - 1].y) < 1e-6
  const found = []
  for (let i = closed ? 1 : 0; i < n; i++) {
    const before = points[i - 1], after = points[i + 1] ?? (closed ? points[1] : undefined)
    if (!before || !after || turns(before, points[i], after)) found.push(points[i])
  }
  return found
}

function turns(a, b, c) {
  const ux = b.x - a.x, uy = b.y - a.y, vx = c.x - b.x, vy = c.y - b.y
  return ux * vx + uy * vy < sharp * Math.hypot(ux, uy) * Math.hypot(vx, vy)
}
