// The page follows its file: when the server tells of another version, what is looked at is
// asked for and put in place. A choice is put in place in the same way, without a reload; the
// address is the choice, as it is without this script.
//
//	regions.js   puts in place what has changed
//	picture.js   where in the picture somebody looks, and how large it is
//	gestures.js  moves it by wheel, pointer, fingers and keys
//	lines.js     where its lines are
//	layers.js    which of them are shown
//	pointing.js  what is told of a line that is pointed at
//	remarks.js   where in the picture a remark belongs
//	measuring.js from one place to another
//	ruler.js     how large the screen is
//	help.js      which keys there are
//	kept.js      what a browser keeps from one day to the next
//
// Each keeps to itself what it knows, and hears from here when the picture is another.

import { follow } from "/changes.js"
import { facts, put, regionsOf } from "/regions.js"
import * as picture from "/picture.js"
import * as lines from "/lines.js"
import * as layers from "/layers.js"
import * as pointing from "/pointing.js"
import * as remarks from "/remarks.js"
import * as measuring from "/measuring.js"
import "/gestures.js"
import "/ruler.js"
import "/help.js"

let asking = null // what was asked for last; what it overtakes is given up, and not put in place

// ask asks for what is looked at, as it is now, and puts it in place. Where the file has
// changed that is said aloud.
async function ask() {
  asking?.abort()
  const mine = asking = new AbortController()
  let answer, text
  try {
    answer = await fetch("/now" + location.search, { signal: mine.signal })
    text = await answer.text()
  } catch {
    if (!mine.signal.aborted) running(false)
    return
  }
  if (mine.signal.aborted) return
  if (!answer.ok) {
    location.reload() // the page itself tells why
    return
  }
  // The list of lines is as long as all else together, and closed as a rule: it comes when the
  // picture is on the screen.
  const before = facts().version
  const regions = regionsOf(text), last = regions.length - 1
  arrive(put(regions, 0, last))
  requestAnimationFrame(() => setTimeout(() => {
    if (mine.signal.aborted) return
    put(regions, last, regions.length)
    pointing.arrive()
  }))
  if (facts().version !== before) document.getElementById("said").textContent = facts().said
}

// arrive tells each part of the page which regions are new to it.
function arrive(fresh) {
  const f = facts()
  document.title = f.title
  document.body.dataset.show = f.show
  picture.board.setAttribute("aria-label", f.name)
  picture.stage.classList.toggle("before", "before" in f)
  if (fresh.has("drawing")) lines.forget()
  toChosen()
  picture.arrive()
  layers.arrive()
  pointing.arrive()
  remarks.arrive()
  measuring.arrive()
}

// toChosen has what is chosen in sight, in rows of many: the last, of what is not there as a rule.
function toChosen() {
  for (const row of document.querySelectorAll(".along")) {
    const chosen = [...row.querySelectorAll("[aria-current]:not(:first-child)")].at(-1)?.getBoundingClientRect()
    const room = row.getBoundingClientRect(), beside = 32 // points of what is next to it
    if (chosen && (chosen.left < room.left || chosen.right > room.right)) {
      row.scrollLeft += Math.min(0, chosen.left - room.left - beside) + Math.max(0, chosen.right - room.right + beside)
    }
  }
}

// running says whether the program runs that follows the file.
function running(alive) {
  document.getElementById("gone").hidden = alive
}

// choose follows a link to another choice, unless somebody wants it in a tab of its own.
function choose(event) {
  const link = event.target.closest(".choices a")
  if (!link || event.button || event.ctrlKey || event.metaKey || event.shiftKey || event.altKey) return
  event.preventDefault()
  if (link.href !== location.href) history.pushState(null, "", link.href)
  ask()
}

// reach brings a link of a row that scrolls into sight: by itself a browser leaves one where it is
// of which a little can be seen.
function reach(event) {
  if (event.target.closest(".along")) event.target.scrollIntoView({ block: "nearest", inline: "nearest" })
}

document.addEventListener("click", choose)
document.fonts.ready.then(toChosen) // letters may be wider than those that stood in for them
document.addEventListener("focusin", reach)
addEventListener("popstate", ask)
arrive(new Set(["drawing"]))
document.fonts.ready.then(toChosen) // in other letters it lay elsewhere
follow(version => { if (version !== facts().version) ask() }, running)
