// Rules of this file: a region is an element of the class "live". What the server sends is
// compared with what it sent before, not with what is on the page, where people have opened,
// ticked and moved things; a region that is the same is left alone. What can have the focus,
// be open or be scrolled has an id, and keeps that when its region is put in place.

// What each region was when the page was loaded, by its id, until the server has sent it.
const loaded = new Map()
for (const region of document.querySelectorAll(".live")) loaded.set(region.id, region.outerHTML)

const sent = [] // what the server sent of each region last, in the order of its answers

// facts are what the server tells the script of what is shown.
export const facts = () => document.getElementById("facts").dataset

// regionsOf are the regions of an answer.
export const regionsOf = answer => answer.split("<hr/>")

// put puts in place those regions of an answer, from one to before another, that are other than
// before, and returns their ids. To compare them as they were sent costs nothing; to read one
// takes as long as it is large. All is asked of the old ones before the first is replaced, and
// all is given back when the last is: whatever is asked in between has the page laid out again.
export function put(regions, from, to) {
  const fresh = []
  for (let i = from; i < to; i++) {
    if (regions[i] === sent[i]) continue
    sent[i] = regions[i]
    const now = document.createElement("template")
    now.innerHTML = regions[i]
    const region = now.content.querySelector(".live")
    const same = loaded.has(region.id) && loaded.get(region.id) === region.outerHTML
    loaded.delete(region.id)
    if (!same) fresh.push(region)
  }
  const olds = fresh.map(region => document.getElementById(region.id))
  const keeps = olds.map(keptOf)
  olds.forEach((old, i) => old.replaceWith(fresh[i]))
  keeps.forEach(giveBack)
  return new Set(fresh.map(region => region.id))
}

// keptOf is what stays of a region when it is replaced: the focus, what is open and how far it is
// scrolled.
function keptOf(old) {
  return {
    focus: old.contains(document.activeElement) ? document.activeElement.id : "",
    folds: [...old.querySelectorAll("details[id]")].map(d => [d.id, d.open]),
    scrolled: [old, ...old.querySelectorAll("[id]")].filter(e => e.scrollTop || e.scrollLeft)
      .map(e => [e.id, e.scrollTop, e.scrollLeft]),
  }
}

function giveBack(kept) {
  for (const [id, open] of kept.folds) {
    const fold = document.getElementById(id)
    if (fold) fold.open = open
  }
  for (const [id, top, left] of kept.scrolled) document.getElementById(id)?.scrollTo({ top, left, behavior: "instant" })
  if (kept.focus) document.getElementById(kept.focus)?.focus({ preventScroll: true })
}
