// Rules of this file: the wheel makes the picture larger or smaller where the pointer is, with
// Shift or sideways it moves it; one pointer drags it, two fingers do both. What has not moved
// is a click, and that is the affair of whoever listens for one. A double click goes there, for
// whoever cannot drag (WCAG 2.5.7). Every gesture has a key or a button that does the same.

import * as picture from "/picture.js"

const still = 5 // points that a pointer may move and not drag
const step = 60 // points that an arrow key moves the picture
const wheelStep = 0.0016 // how much larger for a point of the wheel
const down = new Map() // the pointers that are down, and where

let dragged = false
let watchers = [] // of clicks that drag nothing

// onTap has somebody told of clicks and taps that drag nothing.
export const onTap = watcher => watchers.push(watcher)

// isDragging reports whether the picture is being moved by a pointer.
export const isDragging = () => down.size > 0 && dragged

function wheel(event) {
  if (!picture.pictured() || event.target.closest(".card")) return
  event.preventDefault()
  const unit = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 33 : event.deltaMode === WheelEvent.DOM_DELTA_PAGE ? 400 : 1
  const right = event.deltaX * unit, far = event.deltaY * unit
  // Two fingers on a pad that come together are told as a wheel with Ctrl, in small steps.
  if (event.ctrlKey) picture.zoom(Math.exp(-far * 6 * wheelStep), event)
  else if (event.shiftKey) picture.moveBy(-(right || far), 0)
  else if (Math.abs(right) > Math.abs(far)) picture.moveBy(-right, 0)
  else picture.zoom(Math.exp(-far * wheelStep), event)
}

function press(event) {
  if (event.button !== 0 || event.target.closest(".card")) return
  if (down.size === 0) dragged = false
  down.set(event.pointerId, { clientX: event.clientX, clientY: event.clientY, from: event })
  if (down.size > 1) dragged = true
}

// between is the middle of the pointers that are down, and how far they lie apart.
function between() {
  const [a, b = a] = [...down.values()]
  return {
    clientX: (a.clientX + b.clientX) / 2,
    clientY: (a.clientY + b.clientY) / 2,
    apart: Math.hypot(a.clientX - b.clientX, a.clientY - b.clientY),
  }
}

function drag(event) {
  const pointer = down.get(event.pointerId)
  if (!pointer) return
  if (!event.buttons) { // it was let go where nobody heard of it, outside the picture
    release(event)
    return
  }
  const far = Math.hypot(event.clientX - pointer.from.clientX, event.clientY - pointer.from.clientY)
  if (!dragged && far < still) return
  if (!dragged || !picture.stage.hasPointerCapture(event.pointerId)) picture.stage.setPointerCapture(event.pointerId)
  dragged = true
  picture.stage.classList.add("dragged")
  const before = between()
  pointer.clientX = event.clientX
  pointer.clientY = event.clientY
  const now = between()
  picture.moveBy(now.clientX - before.clientX, now.clientY - before.clientY)
  if (before.apart > 0 && now.apart > 0) picture.zoom(now.apart / before.apart, now)
}

function release(event) {
  if (!down.delete(event.pointerId)) return
  picture.stage.classList.remove("dragged")
  if (event.type === "pointerup" && !dragged) watchers.forEach(watch => watch(event))
}

const stage = picture.stage
stage.addEventListener("wheel", wheel, { passive: false })
stage.addEventListener("dblclick", event => {
  if (!event.target.closest(".card") && !stage.classList.contains("measuring")) picture.goTo(event)
})
stage.addEventListener("pointerdown", press)
stage.addEventListener("pointermove", drag)
stage.addEventListener("pointerup", release)
stage.addEventListener("pointercancel", release)

// Which way the arrow keys go, to the right and down.
export const arrows = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }

// moveByKey moves the picture by an arrow key, the other way than the eye goes, and reports
// whether it was one.
export function moveByKey(event) {
  const way = arrows[event.key]
  if (!way) return false
  const far = event.shiftKey ? 5 * step : step
  picture.moveBy(-way[0] * far, -way[1] * far)
  return true
}
