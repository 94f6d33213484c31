// Rules of this file: what somebody has hidden stays hidden while the page is open, whatever is
// shown; a layer that comes anew is shown.

const hidden = new Map() // whether a layer is, by its name, where somebody has said so

const boxes = () => document.querySelectorAll("#layers [data-layer]")

// arrive hides in a picture that has come what is hidden.
export function arrive() {
  const shown = new Map()
  for (const box of boxes()) {
    if (hidden.has(box.dataset.layer)) box.checked = !hidden.get(box.dataset.layer)
    shown.set(box.dataset.layer, box.checked)
  }
  for (const group of document.querySelectorAll("#drawing [data-role], #drawing [data-view], #drawing .grid")) {
    if (shown.get(layerOf(group)) === false) group.setAttribute("display", "none")
    else group.removeAttribute("display")
  }
}

// layerOf is the layer that a group of lines is.
function layerOf(group) {
  if ("view" in group.dataset) return "view " + group.dataset.view
  return group.dataset.role ?? "grid"
}

// setAll shows or hides all layers.
function setAll(shown) {
  for (const box of boxes()) hidden.set(box.dataset.layer, !shown)
  arrive()
}

document.getElementById("layers-box").addEventListener("change", event => {
  hidden.set(event.target.dataset.layer, !event.target.checked)
  arrive()
})
document.getElementById("layers-all").onclick = () => setAll(true)
document.getElementById("layers-none").onclick = () => setAll(false)
