// What is wrong with a page for somebody who sees little, uses no mouse, or holds it in one
// hand: each function returns a list of sentences, which is empty where nothing is.
(() => {
  const named = e => {
    const words = (e.getAttribute("aria-label") || e.textContent || e.id || "").trim().replace(/\s+/g, " ").slice(0, 40);
    return `<${e.localName}${e.id ? "#" + e.id : ""}> "${words}"`;
  };
  const seen = e => e.checkVisibility({opacityProperty: true, visibilityProperty: true}) && e.getClientRects().length > 0;
  // What of a box is seen through all that cuts an element off; null where nothing is.
  const shownOf = (e, box) => {
    let {left, top, right, bottom} = box;
    for (let at = e.parentElement; at && at !== document.body; at = at.parentElement) {
      if (getComputedStyle(at).overflow === "visible") continue;
      const cut = at.getBoundingClientRect();
      left = Math.max(left, cut.left), right = Math.min(right, cut.right);
      top = Math.max(top, cut.top), bottom = Math.min(bottom, cut.bottom);
    }
    return right > left && bottom > top ? {left, top, right, bottom} : null;
  };
  // All that is within reach: of a page behind a dialog nothing is.
  const page = () => document.querySelector(":modal") ?? document.body;
  const controls = () => [...page().querySelectorAll("a[href], button, input, select, textarea, summary, [role=button], [role=slider], [tabindex='0']")].filter(e => seen(e) && !e.matches(":disabled"));

  // A colour of any form as red, green, blue of 0 to 255 and alpha of 0 to 1.
  const paint = new OffscreenCanvas(1, 1).getContext("2d", {willReadFrequently: true});
  const known = new Map();
  const colour = css => {
    if (!known.has(css)) {
      paint.clearRect(0, 0, 1, 1);
      paint.fillStyle = css;
      paint.fillRect(0, 0, 1, 1);
      const [r, g, b, a] = paint.getImageData(0, 0, 1, 1).data;
      known.set(css, [r, g, b, a / 255]);
    }
    return known.get(css);
  };
  const over = (top, below) => [0, 1, 2].map(i => top[i] * top[3] + below[i] * (1 - top[3])).concat(1);
  // WCAG 2.2, relative luminance and contrast ratio.
  const light = c => [0.2126, 0.7152, 0.0722].reduce((sum, share, i) => {
    const s = c[i] / 255;
    return sum + share * (s <= 0.04045 ? s / 12.92 : ((s + 0.055) / 1.055) ** 2.4);
  }, 0);
  const contrast = (a, b) => (Math.max(light(a), light(b)) + 0.05) / (Math.min(light(a), light(b)) + 0.05);

  // What lies below an element: the grounds of all it stands in, on the canvas of the page. That
  // is asked once: whoever waits for a change of the page must not make one.
  const probe = document.createElement("i");
  document.body.append(probe);
  probe.style.background = "Canvas";
  const bottom = colour(getComputedStyle(probe).backgroundColor);
  probe.remove();
  const ground = e => {
    const layers = [];
    for (let at = e; at; at = at.parentElement) {
      if (at instanceof SVGElement && !(at instanceof SVGSVGElement)) continue;
      const c = colour(getComputedStyle(at).backgroundColor);
      layers.unshift(c);
      if (c[3] === 1) return layers.slice(1).reduce((below, c) => over(c, below), c);
    }
    return layers.reduce((below, c) => over(c, below), bottom);
  };
  const opacity = e => {
    let o = 1;
    for (let at = e; at; at = at.parentElement) o *= Number(getComputedStyle(at).opacity);
    return o;
  };
  const middleOf = e => {
    const box = e.getBoundingClientRect();
    return {x: box.x + box.width / 2, y: box.y + box.height / 2};
  };
  // Whether the middle of a text of a picture is seen.
  const inSight = e => {
    const {x, y} = middleOf(e), box = shownOf(e, e.getBoundingClientRect());
    return box && x > Math.max(box.left, 0) && x < Math.min(box.right, innerWidth) && y > Math.max(box.top, 0) && y < Math.min(box.bottom, innerHeight);
  };
  // What is drawn below a text of a picture.
  const drawnBelow = e => {
    const {x, y} = middleOf(e);
    for (const at of document.elementsFromPoint(x, y)) {
      if (at === e || e.contains(at) || !(at instanceof SVGGeometryElement)) continue;
      const style = getComputedStyle(at);
      const fill = style.fill === "none" ? [0, 0, 0, 0] : colour(style.fill);
      if (fill[3] * style.fillOpacity === 1) return fill;
    }
    return ground(e.ownerSVGElement ?? e);
  };

  const audit = {
    // Letters that stand out too little from what lies below them. WCAG 2.2, 1.4.3.
    letters(left = "") {
      const wrong = new Set();
      const walk = document.createTreeWalker(page(), NodeFilter.SHOW_TEXT);
      let texts = 0;
      page().querySelector("svg[role=img]")?.scrollIntoView({block: "nearest", behavior: "instant"});
      for (let node = walk.nextNode(); node; node = walk.nextNode()) {
        const e = node.parentElement;
        if (!node.data.trim() || e.closest("script, style, template, title, desc, option, datalist") || !seen(e) || left && e.closest(left)) continue;
        if (e.matches(":disabled, :disabled *, [aria-disabled=true]")) continue;
        const style = getComputedStyle(e), inPicture = e instanceof SVGElement;
        if (inPicture && !inSight(e)) continue;
        const below = inPicture ? drawnBelow(e) : ground(e);
        const ink = colour(inPicture ? style.fill : style.color);
        const shown = over([ink[0], ink[1], ink[2], ink[3] * opacity(e)], below);
        const size = parseFloat(style.fontSize) * (inPicture ? e.getScreenCTM().a : 1), bold = Number(style.fontWeight) >= 700;
        const least = size >= 24 || bold && size >= 18.66 ? 3 : 4.5;
        const is = contrast(shown, below);
        texts++;
        if (is < least) wrong.add(`${named(e)}: contrast ${is.toFixed(2)}, ${style.color} on ${below.slice(0, 3)}`);
      }
      if (texts === 0) wrong.add("there are no letters at all");
      return [...wrong];
    },
    // Fields whose edge stands out too little. WCAG 2.2, 1.4.11.
    fields() {
      const wrong = [];
      for (const e of controls().filter(e => e.matches("input:not([type=checkbox], [type=radio], [type=range], [type=hidden]), select, textarea"))) {
        const style = getComputedStyle(e), outside = ground(e.parentElement);
        const edge = parseFloat(style.borderTopWidth) > 0 && style.borderTopStyle !== "none" ? over(colour(style.borderTopColor), outside) : outside;
        const inside = over(colour(style.backgroundColor), outside);
        const is = Math.max(contrast(edge, outside), contrast(inside, outside));
        if (is < 3) wrong.push(`${named(e)}: its edge has contrast ${is.toFixed(2)}`);
      }
      return wrong;
    },
    // What reaches beyond the width of the window, or is cut off. WCAG 2.2, 1.4.10 and 1.4.4.
    sideways() {
      const wrong = [], whole = document.scrollingElement, wide = whole.clientWidth;
      if (whole.scrollWidth > wide) wrong.push(`the page is ${whole.scrollWidth} wide in a window of ${wide}`);
      const scrolls = e => {
        for (let at = e.parentElement; at; at = at.parentElement) if (/auto|scroll/.test(getComputedStyle(at).overflowX)) return true;
        return e.closest("svg") !== null;
      };
      for (const e of [...page().querySelectorAll("*")].filter(seen)) {
        const box = e.getBoundingClientRect();
        if (box.width > 1 && (box.right > wide + 1 || box.left < -1) && !scrolls(e)) wrong.push(`${named(e)} reaches from ${box.left.toFixed(0)} to ${box.right.toFixed(0)} in a window of ${wide}`);
        const style = getComputedStyle(e);
        if (!(e instanceof SVGElement) && /hidden|clip/.test(style.overflowX) && e.scrollWidth > e.clientWidth + 1 && e.clientWidth > 1 && e.querySelector("svg") === null) wrong.push(`${named(e)} is cut off: ${e.scrollWidth} in ${e.clientWidth}`);
      }
      return wrong;
    },
    // Controls that lie over each other.
    overlaps() {
      const wrong = [], all = controls().filter(e => !(e instanceof SVGElement) && e.querySelector("svg") === null);
      const boxes = all.flatMap(e => [...e.getClientRects()].map(box => ({e, box: shownOf(e, box)}))).filter(({box}) => box);
      for (const [i, a] of boxes.entries()) {
        for (const b of boxes.slice(i + 1)) {
          if (a.e === b.e || a.e.contains(b.e) || b.e.contains(a.e)) continue;
          const wide = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
          const high = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top);
          if (wide > 1 && high > 1) wrong.push(`${named(a.e)} and ${named(b.e)} lie over each other by ${wide.toFixed(0)} x ${high.toFixed(0)}`);
        }
      }
      return wrong;
    },
    // Controls that are smaller than a finger tip, but links within a sentence. WCAG 2.2, 2.5.8.
    small() {
      return controls().filter(e => !(e instanceof SVGElement) && !(e.matches("a") && e.closest("p, li, td, th, dd") && getComputedStyle(e).display === "inline")).flatMap(e => {
        const box = (e.closest("label") ?? e).getBoundingClientRect();
        return box.width < 23.5 || box.height < 23.5 ? [`${named(e)} is ${box.width.toFixed(0)} x ${box.height.toFixed(0)}`] : [];
      });
    },
    // Why nobody sees that the element with the focus has it; "" where one does. WCAG 2.2, 2.4.7, 2.4.11, 1.4.11.
    focus() {
      const e = document.activeElement;
      if (!e || e === document.body) return "nothing has the focus";
      const style = getComputedStyle(e), frame = getComputedStyle(e, "::after");
      const rings = []; // an outline, or a frame that is laid over it
      if (style.outlineStyle !== "none" && parseFloat(style.outlineWidth) >= 1.5) rings.push([style.outlineColor, e.parentElement]);
      if (frame.content !== "none" && frame.borderTopStyle !== "none" && parseFloat(frame.borderTopWidth) >= 1.5) rings.push([frame.borderTopColor, e]);
      if (rings.length === 0) return `${named(e)} has no outline: ${style.outline}`;
      const [ring, on] = rings[0], below = ground(on);
      const is = contrast(over(colour(ring), below), below);
      if (is < 3) return `${named(e)}: its outline has contrast ${is.toFixed(2)}`;
      const box = e.getBoundingClientRect();
      const x = Math.min(Math.max(box.x + box.width / 2, 0), innerWidth - 1), y = Math.min(Math.max(box.y + box.height / 2, 0), innerHeight - 1);
      if (box.right <= 0 || box.bottom <= 0 || box.left >= innerWidth || box.top >= innerHeight) return `${named(e)} is outside the window`;
      const top = document.elementFromPoint(x, y);
      if (top && !(e.contains(top) || top.contains(e) || e.closest("label")?.contains(top) || e.labels && [...e.labels].some(l => l.contains(top)))) return `${named(e)} is hidden below ${named(top)}`;
      return "";
    },
    controls: () => controls().map(named),
    focused: () => document.activeElement === document.body ? "" : named(document.activeElement),
  };
  globalThis.audit = audit;
  return true;
})()
