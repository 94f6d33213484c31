// How a page hears that there is another version of what it shows:
//
//	import { follow } from "/changes.js"
//	follow(version => { if (version !== shown) ask for it }, alive => { say whether tuckmark runs })
//
// A browser opens six connections to one server, and a stream of events holds one. So all
// tabs share a stream: the one that holds the lock listens and tells the others. When it is
// closed, another gets the lock.

// follow calls changed with every newer version, a string, at first with the one there is, and
// running with true when the server answers and with false when it does not. A tab that nobody
// sees is told of the newest version when it is seen: it would only take time from others.
export function follow(changed, running) {
  const tabs = new BroadcastChannel("changes")
  let last = null // what the stream told last, in the tab that listens
  let newest = "", told = "" // versions: that there is, and that this tab was told of

  const tell = () => {
    if (document.hidden || newest === told) return
    told = newest
    changed(newest)
  }
  document.addEventListener("visibilitychange", tell)
  const hear = news => {
    running(news.alive)
    newest = news.version
    if (!news.alive) told = "" // whatever was asked for may not have come
    else tell()
  }
  tabs.onmessage = message => {
    if (!message.data.asked) hear(message.data)
    else if (last) tabs.postMessage(last)
  }

  const say = (alive, version) => {
    last = { alive, version: version ?? last?.version ?? "" }
    tabs.postMessage(last)
    hear(last)
  }
  const listen = () => {
    const stream = new EventSource("/changes")
    stream.onopen = () => say(true)
    stream.onmessage = event => say(true, event.data)
    stream.onerror = () => {
      say(false)
      // The browser tries again, but not after another program has answered in our place.
      if (stream.readyState === EventSource.CLOSED) setTimeout(listen, 1000)
    }
    return new Promise(() => {}) // the lock is held until the tab is closed
  }
  if (navigator.locks) {
    tabs.postMessage({ asked: true })
    navigator.locks.request("changes", listen)
  } else {
    listen()
  }
}
