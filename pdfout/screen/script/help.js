// Rules of this file: one key, one deed; a button does the same. Keys of letters and signs can
// be kept to the picture, for whoever speaks to their computer (WCAG 2.1.4).

import * as picture from "/picture.js"
import { moveByKey } from "/gestures.js"
import { keep, read } from "/kept.js"
import * as measuring from "/measuring.js"
import { rest } from "/pointing.js"
import { real } from "/ruler.js"

const name = "tuckmark keys in the picture alone"
const help = document.getElementById("help")
const anywhere = document.getElementById("keys-anywhere")

const deeds = {
  "+": () => picture.zoom(1.4),
  "=": () => picture.zoom(1.4),
  "-": () => picture.zoom(1 / 1.4),
  "_": () => picture.zoom(1 / 1.4),
  "0": picture.fit,
  "1": real,
  "m": measuring.toggle,
  "h": alone,
  "?": () => help.showModal(),
}

// alone shows the picture without what stands beside it, and with it again.
function alone() {
  const now = document.body.classList.toggle("alone")
  document.getElementById("alone").setAttribute("aria-pressed", now)
}

// press does what a key is for, where it is not for what has the focus.
function press(event) {
  if (event.ctrlKey || event.metaKey || document.querySelector("dialog[open]")) return
  const at = event.target
  const inPicture = picture.stage.contains(at)
  if (event.key === "Escape") {
    if (measuring.isMeasuring()) measuring.stop()
    else rest()
    return
  }
  // Arrow keys belong to the picture while it has the focus, or nothing has and nothing scrolls.
  const still = at === document.body && document.documentElement.scrollHeight <= innerHeight
  if (picture.pictured() && (inPicture || still) && (measuring.isMeasuring() && measuring.key(event) || moveByKey(event))) {
    event.preventDefault()
    return
  }
  const deed = deeds[event.key.toLowerCase()]
  if (!deed || event.altKey || !(inPicture || anywhere.checked) || at.matches("input:not([type=checkbox]), textarea, select")) return
  event.preventDefault()
  deed()
}

document.addEventListener("keydown", press)
document.getElementById("alone").onclick = alone
document.getElementById("help-open").onclick = () => help.showModal()
anywhere.checked = read(name) === null
anywhere.onchange = () => keep(name, anywhere.checked ? null : "yes")
