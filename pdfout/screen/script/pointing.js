// Rules of this file: what is told of a line is in the list of lines; what is pointed at, in
// the picture or in the list, is told beside the picture and has a bright line laid over it.
// That stays until something else is pointed at, or Esc is pressed: it can be read in peace.

import { aimAt, make, over, pictured, points, spot, stage, zoomTo } from "/picture.js"
import { boxOfFirst, linesOf, nearest } from "/lines.js"
import { facts } from "/regions.js"
import { isDragging, onTap } from "/gestures.js"

const card = document.getElementById("card")
const reach = { mouse: 9, pen: 14, touch: 24 } // points of the screen

let pointed = null // { piece, line, view: "" where there is one, also: others that are meant with it }
let held = false // it was clicked at, or chosen in the list: pointing at others does not change it
let asleep = false // somebody measures

const list = document.getElementById("lines-box")

const toldItems = () => [...document.querySelectorAll("#lines .told")]
const itemOf = at => [...document.querySelectorAll("#lines .told, #lines .about")].find(item => item.dataset.piece === at.piece && item.dataset.line === at.line)

const lineOf = item => ({ piece: item.dataset.piece, line: item.dataset.line, view: facts().view })
const viewOf = path => path.closest(".view")?.dataset.view ?? "" // "" for what is alike in all

// arrive tells again of what is pointed at, in a picture that has come.
export function arrive() {
  listLines()
  const kept = held
  if (pointed) point(pointed)
  held = kept && pointed !== null
}

// listLines makes the list one that keys go through, of the lines that the picture has. While it
// is closed all stay in it: the picture is not read for what nobody sees.
function listLines() {
  const drawn = list.open && pictured() ? new Set(linesOf().map(l => `${l.piece}\n${l.line}`)) : null
  for (const ul of list.querySelectorAll("#lines ul")) {
    ul.setAttribute("role", "listbox")
    ul.setAttribute("aria-label", ul.dataset.of)
    for (const item of ul.children) {
      item.setAttribute("role", "option")
      item.setAttribute("aria-selected", "false")
      item.hidden = drawn !== null && !drawn.has(`${item.dataset.piece}\n${item.dataset.line}`)
      item.tabIndex = -1
    }
    const reached = [...ul.children].find(item => item === document.activeElement) ?? ul.querySelector(":not([hidden])")
    if (reached) reached.tabIndex = 0
  }
  if (pointed?.line) itemOf(pointed)?.setAttribute("aria-selected", "true")
}

// point tells of a line, and shows it.
function point(at) {
  const drawn = [at, ...at.also ?? []].flatMap(one => linesOf(one.piece, one.line))
    .filter(line => !at.view || !viewOf(line.path) || viewOf(line.path) === at.view)
  rest()
  if (drawn.length === 0) return
  pointed = at
  const item = itemOf(at)
  if (item?.matches(".told")) item.setAttribute("aria-selected", "true")
  tell(item, at)
  const box = boxOfFirst(drawn)
  aimAt({ x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 })
  lay(new Map(drawn.map(line => [line.path, line.matrix])))
}

// lay lays bright lines over those of the picture, each where it lies, and as far as it shows.
function lay(paths) {
  const all = make("g", { class: "pointed" })
  for (const [path, m] of paths) {
    const group = all.appendChild(make("g", { transform: `matrix(${m.a} ${m.b} ${m.c} ${m.d} ${m.e} ${m.f})` }))
    const bright = group.appendChild(make("path", {}))
    for (const name of ["d", "clip-path"]) {
      if (path.hasAttribute(name)) bright.setAttribute(name, path.getAttribute(name))
    }
  }
  over.prepend(all)
}

// tell puts what is told of a line beside the picture: of one view among several its name alone,
// where it is not the view that is told of.
function tell(item, at) {
  if (item && (at.view || facts().view) === facts().view) {
    card.replaceChildren(...[...item.childNodes].map(node => node.cloneNode(true)))
  } else {
    const name = document.createElement("strong")
    name.textContent = `${at.piece}: ${at.line}`
    card.replaceChildren(name)
  }
  if (at.view) {
    const view = document.createElement("span")
    view.className = "place"
    view.textContent = `view: ${at.view}`
    card.append(view)
  }
  card.hidden = false
}

// rest points at nothing.
export function rest() {
  pointed = null
  held = false
  aimAt(null)
  card.hidden = true
  over.querySelector(".pointed")?.remove()
  list.querySelector("[aria-selected=true]")?.setAttribute("aria-selected", "false")
}

// sleep points at nothing until wake, while somebody measures.
export function sleep() {
  asleep = true
  rest()
}

export function wake() { asleep = false }

// lineAt is the line at a place on the screen.
function lineAt(event) {
  if (!pictured()) return null
  const found = nearest(spot(event), points(reach[event.pointerType] ?? reach.mouse))?.line
  return found && { piece: found.piece, line: found.line, view: viewOf(found.path) }
}

let waiting = null // the last place pointed at, until the next image of the screen

function hover(event) {
  if (asleep || held || event.buttons || isDragging() || event.pointerType === "touch" || event.target.closest(".card")) return
  if (!waiting) {
    requestAnimationFrame(() => {
      const line = !asleep && !held && lineAt(waiting)
      if (line && !(pointed && line.piece === pointed.piece && line.line === pointed.line && line.view === pointed.view)) {
        aside(waiting)
        point(line)
      }
      waiting = null
    })
  }
  waiting = event
}

// aside has the card lie where the pointer is not.
function aside(event) {
  const room = stage.getBoundingClientRect()
  card.classList.toggle("high", event.clientY > room.top + room.height * 0.55)
}

function tap(event) {
  if (asleep || event.target.closest(".card")) return
  const line = lineAt(event)
  if (!line) {
    rest()
    return
  }
  aside(event)
  point(line)
  held = true
}

// show has a line pointed at from beside the picture.
function show(at) {
  point(at)
  held = true
}

// goTo shows it, and goes to it.
export function goTo(at) {
  show(at)
  const drawn = linesOf(at.piece, at.line)
  if (drawn.length === 0) return
  card.classList.remove("high")
  zoomTo(boxOfFirst(drawn), stage.getBoundingClientRect().bottom - card.getBoundingClientRect().top)
  stage.scrollIntoView({ block: "nearest" })
}

// walk goes through the list by keys.
function walk(event) {
  const item = event.target.closest(".told")
  if (!item || event.ctrlKey || event.metaKey || event.altKey) return
  if (event.key === "Enter" || event.key === " ") {
    event.preventDefault()
    goTo(lineOf(item))
    return
  }
  const all = toldItems().filter(i => !i.hidden)
  const i = all.indexOf(item)
  const to = { ArrowDown: i + 1, ArrowUp: i - 1, Home: 0, End: all.length - 1 }[event.key]
  if (to === undefined) return
  event.preventDefault()
  event.stopPropagation()
  all[to]?.focus()
}

list.addEventListener("toggle", listLines)
list.addEventListener("keydown", walk)
list.addEventListener("focusin", event => {
  const item = event.target.closest(".told")
  if (!item) return
  for (const other of item.parentNode.children) other.tabIndex = other === item ? 0 : -1
  show(lineOf(item))
})
list.addEventListener("click", event => {
  const item = event.target.closest(".told")
  if (item) goTo(lineOf(item))
})
list.addEventListener("pointerover", event => {
  const item = event.target.closest(".told")
  if (item && !held) point(lineOf(item))
})
stage.addEventListener("pointermove", hover)
onTap(tap)
