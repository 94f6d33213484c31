// Rules of this file: what is kept in this browser, for all files and from one day to the next.
// One that keeps nothing has the usual, and what is said holds as long as the page is open.

// read is what is kept by a name; null where nothing is.
export function read(name) {
  try {
    return localStorage.getItem(name)
  } catch {
    return null
  }
}

// keep keeps some text by a name; null keeps nothing any more.
export function keep(name, text) {
  try {
    if (text === null) localStorage.removeItem(name)
    else localStorage.setItem(name, text)
  } catch {
    // It is not kept.
  }
}
