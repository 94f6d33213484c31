// Rules of this file: two places are set, by pointer or by key, and the server says in words
// what lies between them. A place catches a corner or an end of a line nearby, or else the line;
// with Alt it is free. The picture can be moved meanwhile by the pointer.

import { keepInSight, make, middle, over, pictured, points, spot, stage } from "/picture.js"
import { nearest, nearestCorner, paperAt } from "/lines.js"
import { arrows, onTap } from "/gestures.js"
import { sleep, wake } from "/pointing.js"

const button = document.getElementById("measure")
const answer = document.getElementById("measured")
const reachCorner = 14, reachLine = 8 // points of the screen
const ring = "M-7 0A7 7 0 1 1 7 0A7 7 0 1 1 -7 0Z", cross = "M-14 0H-4M4 0H14M0 -14V-4M0 4V14"
const step = 16, fineStep = 1 // that the arrow keys move the cross

let measuring = false
let measured = "" // the picture that is measured in, as an address
let from = null // the end that is set; null before
let to = null // the other, when it is set as well
let raw = null // where the cross is, before it catches anything
let at = null // where it is then
let free = false

// caught is the place that one in the picture catches.
function caught(place) {
  if (free) return place
  const found = nearestCorner(place, points(reachCorner)) ?? nearest(place, points(reachLine))
  return found ? found.at : place
}

// start begins to measure, and stop ends it.
function start() {
  if (!pictured()) return
  measuring = true
  sleep()
  button.setAttribute("aria-pressed", "true")
  stage.classList.add("measuring")
  stage.focus({ preventScroll: true })
  begin()
}

// begin asks for the first end.
function begin() {
  measured = shown()
  from = to = null
  say("Set one end: click, or move the cross with the arrow keys and press Enter.")
  moveTo(middle())
}

export function stop() {
  measuring = false
  wake()
  button.setAttribute("aria-pressed", "false")
  stage.classList.remove("measuring")
  answer.hidden = true
  over.querySelector(".measure")?.remove()
}

export const isMeasuring = () => measuring
export const toggle = () => measuring ? stop() : start()

// arrive goes on in a picture that has come, and begins anew where it is another one: what lies
// at a place of the one lies elsewhere in the other.
export function arrive() {
  if (!measuring) return
  if (!pictured()) stop()
  else if (measured !== shown()) begin()
  else draw()
}

// shown is the picture that is shown, as an address; which part of it is looked at is all one.
function shown() {
  const address = new URLSearchParams(location.search)
  address.delete("part")
  return address.toString()
}

function moveTo(place) {
  raw = place
  at = caught(place)
  draw()
  if (from && !to) ask(at, "off")
}

// set sets an end where the cross is. After two of them the next is the first of another.
function set() {
  if (!from || to) {
    from = at
    to = null
    say("Set the other end.")
  } else {
    to = at
    ask(to, "polite")
  }
  draw()
}

let asking = false, next = null // one question at a time; of those that wait, the last

// ask asks what lies between the first end and a place, and says it live: "polite", aloud, of a place
// that is set, and else "off". What lies between two papers is the picture's, and no length of cloth.
async function ask(place, live) {
  if (paperAt(from) !== paperAt(place)) {
    next = null
    say("These places are on different papers: what is between them is no length on the cloth.", live)
    return
  }
  if (asking) {
    next = { place, live }
    return
  }
  asking = true
  const first = from
  try {
    const found = await fetch(`/length?across=${place.x - first.x}&up=${first.y - place.y}`)
    const words = await found.text()
    if (found.ok && measuring && from === first && paperAt(first) === paperAt(to ?? at)) say(words, live)
  } catch {
    if (measuring) say("tuckmark has ended: nothing can be measured.")
  }
  asking = false
  const waiting = next
  next = null
  if (waiting && measuring && from) ask(waiting.place, waiting.live)
}

function say(words, live = "polite") {
  answer.setAttribute("aria-live", live)
  answer.textContent = words
  answer.hidden = false
}

// draw draws the ends, what lies between them, and the cross.
function draw() {
  over.querySelector(".measure")?.remove()
  const other = to ?? at
  const group = make("g", { class: "measure" })
  const path = (name, d, place) => {
    const p = make("path", { class: name, d })
    if (place) p.style.transform = `translate(${place.x}px, ${place.y}px) scale(var(--point))`
    group.append(p)
  }
  if (from) {
    path("between", `M${from.x} ${from.y}L${other.x} ${other.y}`)
    path("end", ring, from)
    if (to) path("end", ring, to)
  }
  if (at !== to) path(at === raw ? "cross" : "cross caught", at === raw ? cross : cross + ring, at)
  over.append(group)
}

// key takes a key while somebody measures, and reports whether it is one of these.
export function key(event) {
  const way = arrows[event.key]
  if (event.key === "Enter") {
    set()
    return true
  }
  if (!way) return false
  const far = points(event.shiftKey ? fineStep : step)
  // Small steps go on from what was caught, and catch nothing.
  free = event.altKey || event.shiftKey
  const begin = free ? at : raw
  moveTo({ x: begin.x + way[0] * far, y: begin.y + way[1] * far })
  keepInSight(at)
  return true
}

function point(event) {
  free = event.altKey
  moveTo(spot(event))
}

stage.addEventListener("pointermove", event => {
  if (measuring && !event.buttons && event.pointerType !== "touch") point(event)
})
onTap(event => {
  if (!measuring) return
  point(event)
  set()
})
button.onclick = toggle
