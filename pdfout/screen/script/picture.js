// Rules of this file: the picture is in mm; it is looked at from a place, in mm, with so many
// points of the screen to a mm. That is kept for each thing that can be shown, while the file
// changes and while something else is shown. Who has not moved it sees all of what they chose.

import { facts } from "/regions.js"

export const stage = document.getElementById("stage")
export const board = document.getElementById("board")
export const over = document.getElementById("over") // drawn over the picture by the script

const largest = 80 // points of the screen to a mm
const letters = 15 // of captions, in points of the screen
const smallest = 0.3 // of the size at which all is seen

// Where each thing that can be shown is looked at: x and y are the upper left corner.
const kept = new Map()
let look = null // of these, that of what is shown; null where there is no picture
let drawing = false
let aim = null // a place; null for the middle
let known = 0 // points to a mm at real size; 0 before a ruler was held to the screen

// arrive looks at a picture that has come. Another part of it, or another way to lay it, is
// looked at anew.
export function arrive() {
  const f = facts()
  const address = new URLSearchParams(location.search)
  const chosen = [address.get("lot"), address.get("part"), address.get("lay")].join()
  look = null
  if (!f.home) {
    board.removeAttribute("viewBox")
    return
  }
  look = kept.get(f.show) ?? { x: 0, y: 0, scale: 1, fitted: true }
  kept.set(f.show, look)
  if (look.chosen !== chosen) look.fitted = true
  look.chosen = chosen
  settle()
}

// settle fits the picture again if nobody has moved it, and draws it.
function settle() {
  if (look?.fitted) fit()
  else draw()
}

const size = () => ({ wide: Math.max(1, board.clientWidth), high: Math.max(1, board.clientHeight) })

// fitting is from where, and how large, all is seen of what is looked at.
function fitting() {
  const [x, y, wide, high] = facts().home.split(" ").map(Number)
  const room = size()
  const scale = Math.min(room.wide / wide, room.high / high)
  return { x: x - (room.wide / scale - wide) / 2, y: y - (room.high / scale - high) / 2, scale }
}

// fit shows all of what is looked at.
export function fit() {
  if (!look) return
  Object.assign(look, fitting(), { fitted: true })
  draw()
}

// moveBy moves the picture by so many points of the screen.
export function moveBy(right, down) {
  if (!look) return
  look.x -= right / look.scale
  look.y -= down / look.scale
  byHand()
}

// zoom makes the picture so many times as large, about a place on the screen; without one,
// about that which is aimed at.
export function zoom(times, place) {
  if (!look) return
  const at = place ? spot(place) : aimed()
  const least = Math.min(fitting().scale, 1) * smallest
  const scale = Math.min(Math.max(look.scale * times, least), largest)
  look.x = at.x - (at.x - look.x) * look.scale / scale
  look.y = at.y - (at.y - look.y) * look.scale / scale
  look.scale = scale
  byHand()
}

// goTo has a place on the screen in the middle, larger.
export function goTo(place) {
  if (!look) return
  const at = spot(place), room = size()
  zoom(1.6, place)
  moveBy(room.wide / 2 - look.scale * (at.x - look.x), room.high / 2 - look.scale * (at.y - look.y))
}

// zoomTo shows a box, in mm, with a good deal around it; no larger than it is of use, and over
// what is covered below, in points of the screen.
export function zoomTo(box, covered) {
  if (!look) return
  const room = size()
  room.high -= covered
  const wide = Math.max(box.right - box.left, 20) * 1.6
  const high = Math.max(box.bottom - box.top, 20) * 1.6
  look.scale = Math.min(room.wide / wide, room.high / high, largest)
  look.x = (box.left + box.right) / 2 - room.wide / look.scale / 2
  look.y = (box.top + box.bottom) / 2 - room.high / look.scale / 2
  byHand()
}

// realSize shows the picture as large as the cloth is.
export function realSize() {
  if (look && known) zoom(known / look.scale)
}

// aimAt takes a place to be aimed at when the picture is made larger; null for the middle.
export function aimAt(place) { aim = place }

// aimed is the place that is aimed at, if it is in sight, or else the middle.
function aimed() {
  const room = size()
  const seen = aim && aim.x > look.x && aim.x < look.x + room.wide / look.scale && aim.y > look.y && aim.y < look.y + room.high / look.scale
  return seen ? aim : middle()
}

// setReal takes how many points of the screen are a mm.
export function setReal(points) {
  known = points
  draw()
}

// byHand is where somebody has moved the picture to; some of it stays in sight.
function byHand() {
  const room = size()
  const within = (v, seen, whole) => Math.min(Math.max(v, -seen / 2), whole - seen / 2)
  look.x = within(look.x, room.wide / look.scale, Number(facts().wide))
  look.y = within(look.y, room.high / look.scale, Number(facts().high))
  look.fitted = false
  draw()
}

// draw shows the picture from where it is looked at, with the next image of the screen.
function draw() {
  if (!look || drawing) return
  drawing = true
  requestAnimationFrame(() => {
    drawing = false
    if (!look) return
    const room = size()
    const view = `${look.x} ${look.y} ${room.wide / look.scale} ${room.high / look.scale}`
    // To set what is set already has a browser lay out all letters again.
    if (board.getAttribute("viewBox") !== view) {
      board.setAttribute("viewBox", view)
      board.style.setProperty("--point", 1 / look.scale) // of the screen, in mm
    }
    board.classList.toggle("far", look.scale < 1)
    sizeCaptions()
    document.getElementById("size").textContent = known ? `${Math.round(look.scale / known * 100)} % of real size` : ""
  })
}

// sizeCaptions writes the names of parts in letters of one size on the screen, however large the
// picture is, as far as they have room.
function sizeCaptions() {
  for (const caption of document.querySelectorAll("#drawing .caption[data-most]")) {
    const size = Math.min(letters / look.scale, caption.dataset.most)
    if (Number(caption.getAttribute("font-size")) === size) continue
    caption.setAttribute("font-size", size)
    caption.setAttribute("y", -size / 2)
  }
}

// points is how many mm some points of the screen are.
export const points = n => n / (look?.scale ?? 1)

// spot is the place in the picture, in mm, that a place on the screen shows; also before it is
// drawn as it is looked at now.
export function spot(place) {
  const corner = board.getBoundingClientRect()
  return { x: look.x + (place.clientX - corner.left) / look.scale, y: look.y + (place.clientY - corner.top) / look.scale }
}

// middle is the middle of what is seen.
export function middle() {
  const room = size()
  return { x: look.x + room.wide / look.scale / 2, y: look.y + room.high / look.scale / 2 }
}

// keepInSight moves the picture as far as a place needs to be seen.
export function keepInSight(at) {
  const room = size()
  const edge = points(24)
  const short = (v, from, long) => Math.min(0, v - from - edge) + Math.max(0, v - from - long + edge)
  const right = short(at.x, look.x, room.wide / look.scale)
  const down = short(at.y, look.y, room.high / look.scale)
  if (right || down) moveBy(-right * look.scale, -down * look.scale)
}

// make makes an element that is drawn over the picture.
export function make(name, attributes) {
  const element = document.createElementNS(board.namespaceURI, name)
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value)
  return element
}

// pictured reports whether there is a picture.
export const pictured = () => look !== null

new ResizeObserver(settle).observe(board)
document.getElementById("zoom-in").onclick = () => zoom(1.4)
document.getElementById("zoom-out").onclick = () => zoom(1 / 1.4)
document.getElementById("zoom-fit").onclick = fit
