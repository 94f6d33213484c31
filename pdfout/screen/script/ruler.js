// Rules of this file: a browser does not know how large its screen is, so a ruler is held to a
// bar on it once. What is kept is how many dots of the screen are a mm: zoom of the browser
// changes how many of them are a point. It is kept in this browser, and holds for its screen.

import { keep, read } from "/kept.js"
import { facts } from "/regions.js"
import { pictured, realSize, setReal } from "/picture.js"

const name = "tuckmark dots to a mm"
const dialog = document.getElementById("ruler")
const bar = document.getElementById("ruler-bar")
const slide = document.getElementById("ruler-slide")
const inch = 25.4
// Points to a mm, as they are on most screens: those that are touched have finer ones.
const usual = (matchMedia("(pointer: coarse)").matches ? 160 : 96) / inch

// The bars, in mm, by the unit of the file: the longest that has room is taken.
const bars = {
  in: [[4 * inch, "4 in"], [2 * inch, "2 in"], [inch, "1 in"]],
  cm: [[100, "10 cm"], [50, "5 cm"], [20, "2 cm"]],
  mm: [[100, "100 mm"], [50, "50 mm"], [20, "20 mm"]],
}

const step = usual // of the buttons: about a mm; the bar itself takes the arrow keys, and finer ones
let long = 0 // of the bar, in mm

// stored is how many dots are a mm, in this browser; 0 where nobody has said.
const stored = () => Number(read(name)) || 0

let dots = stored()

// tellReal tells the picture how many points are a mm, now that the browser zooms as it does.
function tellReal() { setReal(dots / devicePixelRatio) }

// open shows the bar, as long as it is thought to be, with room to make it longer.
function open() {
  const points = dots ? dots / devicePixelRatio : usual
  dialog.returnValue = ""
  dialog.showModal()
  const room = bar.parentNode.clientWidth - 40
  const [mm, words] = bars[facts().unit].find(([mm]) => mm * points * 1.3 <= room) ?? bars[facts().unit].at(-1)
  long = mm
  document.getElementById("ruler-length").textContent = words
  document.getElementById("ruler-again").textContent = words
  slide.min = Math.round(mm * usual / 2)
  slide.max = Math.max(Math.floor(room), Math.ceil(mm * points))
  slide.value = mm * points
  draw()
  slide.focus()
}

// draw draws the bar, with a stroke at each end and at each tenth or quarter of it.
function draw() {
  const wide = Number(slide.value)
  const parts = facts().unit === "in" ? Math.round(long / inch) * 4 : 10
  let d = `M.5 0V44M${wide - 0.5} 0V44`
  for (let i = 1; i < parts; i++) d += `M${wide * i / parts} 44V${i % (parts === 10 ? 5 : 4) ? 34 : 24}`
  bar.setAttribute("width", wide)
  const path = bar.querySelector("path") ?? bar.appendChild(document.createElementNS(bar.namespaceURI, "path"))
  path.setAttribute("d", d)
  slide.setAttribute("aria-valuetext", `${wide} points of the screen`)
}

function longer(by) {
  slide.value = Number(slide.value) + by
  draw()
}

// close takes the length of the bar, if that is what it was closed with, and shows real size.
function close() {
  if (dialog.returnValue !== "set") return
  dots = Number(slide.value) / long * devicePixelRatio
  keep(name, String(dots))
  tellReal()
  realSize()
}

// real shows real size, and asks for the ruler first where nobody has held it.
export function real() {
  if (!pictured()) return
  if (dots) realSize()
  else open()
}

slide.oninput = draw
document.getElementById("ruler-shorter").onclick = () => longer(-step)
document.getElementById("ruler-longer").onclick = () => longer(step)
document.getElementById("ruler-open").onclick = open
document.getElementById("zoom-real").onclick = real
dialog.addEventListener("close", close)

// watch hears when the browser zooms, or the page is moved to a screen with other dots.
function watch() {
  tellReal()
  matchMedia(`(resolution: ${devicePixelRatio}dppx)`).addEventListener("change", watch, { once: true })
}
watch()
addEventListener("storage", () => {
  dots = stored()
  tellReal()
})
