// Rules of this file: a region is an element of the class "live". What the server sends is
// compared with what it sent before, not with what is on the page, where people have opened,
// ticked and moved things; a region that is the same is left alone. What can have the focus,
// be open or be scrolled has an id, and keeps that when its region is put in place.

const sent = new Map() // what the server sent of each region, by its id
for (const region of document.querySelectorAll(".live")) sent.set(region.id, region.outerHTML)

// facts are what the server tells the script of what is shown.
export const facts = () => document.getElementById("facts").dataset

// put puts in place the regions of an answer that are other than before, and returns their ids.
export function put(answer) {
  const now = document.createElement("template")
  now.innerHTML = answer
  const changed = new Set()
  for (const region of now.content.querySelectorAll(".live")) {
    const text = region.outerHTML
    if (sent.get(region.id) === text) continue
    sent.set(region.id, text)
    changed.add(region.id)
    replace(document.getElementById(region.id), region)
  }
  return changed
}

// replace puts a region in the place of what it was, and gives back the focus, what was open
// and how far it was scrolled.
function replace(old, fresh) {
  const focus = old.contains(document.activeElement) ? document.activeElement.id : ""
  const folds = [...old.querySelectorAll("details[id]")].map(d => [d.id, d.open])
  const scrolled = [old, ...old.querySelectorAll("[id]")].filter(e => e.scrollTop || e.scrollLeft)
    .map(e => [e.id, e.scrollTop, e.scrollLeft])
  old.replaceWith(fresh)
  for (const [id, open] of folds) {
    const fold = document.getElementById(id)
    if (fold) fold.open = open
  }
  for (const [id, top, left] of scrolled) document.getElementById(id)?.scrollTo({ top, left, behavior: "instant" })
  if (focus) document.getElementById(focus)?.focus({ preventScroll: true })
}
