// Rules of this file: a mistake or a remark that is about lines has its number at the first of
// them, in the picture, and a button beside its words that goes there. Of a mistake that is the
// picture of before.

import { make, over, pictured } from "/picture.js"
import { linesOf } from "/lines.js"
import { goTo } from "/pointing.js"

const placesOf = notice => [...notice.querySelectorAll("[data-at-piece]")]
  .map(at => ({ piece: at.dataset.atPiece, line: at.dataset.atLine }))

// drawnOf are the lines a notice is about that are in the picture: the first, with the others;
// undefined where there are none.
function drawnOf(notice) {
  const [first, ...also] = placesOf(notice).filter(at => linesOf(at.piece, at.line).length > 0)
  return first && { ...first, also }
}

// arrive numbers the lines of a picture that has come.
export function arrive() {
  over.querySelectorAll(".number-at").forEach(n => n.remove())
  const numbered = new Map() // how many numbers stand at a line
  for (const button of document.querySelectorAll(".show-it")) {
    const at = pictured() && drawnOf(button.parentNode)
    button.disabled = !at
    button.textContent = at ? `Show ${button.dataset.number} in the picture` : "Not in this picture"
    if (!at) continue
    const line = linesOf(at.piece, at.line)[0]
    const before = numbered.get(line) ?? 0
    numbered.set(line, before + 1)
    over.append(number(button, line.points, before))
  }
}

// number is the number of a notice, half way along a line, beside so many others.
function number(button, points, before) {
  const at = halfWay(points)
  const group = make("g", { class: "number-at" })
  group.style.transform = `translate(${at.x}px, ${at.y}px) scale(var(--point)) translateX(${before * 24}px)`
  const text = make("text", { "text-anchor": "middle", y: 5 })
  text.textContent = button.dataset.number
  group.append(make("circle", { r: 11 }), text)
  group.addEventListener("click", () => {
    button.parentNode.scrollIntoView({ block: "nearest" })
    button.focus()
  })
  return group
}

function halfWay(points) {
  const long = points.map((p, i) => i ? Math.hypot(p.x - points[i - 1].x, p.y - points[i - 1].y) : 0)
  let left = long.reduce((a, b) => a + b, 0) / 2
  for (let i = 1; i < points.length; i++) {
    if (left <= long[i]) {
      const t = long[i] ? left / long[i] : 0
      return { x: points[i - 1].x + t * (points[i].x - points[i - 1].x), y: points[i - 1].y + t * (points[i].y - points[i - 1].y) }
    }
    left -= long[i]
  }
  return points[0]
}

document.getElementById("beside").addEventListener("click", event => {
  const button = event.target.closest(".show-it")
  const at = button && drawnOf(button.parentNode)
  if (at) goTo(at)
})
