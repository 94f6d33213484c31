// How a page hears that there is another version of what it shows:
//
//	import { follow } from "/changes.js"
//	follow(version => { if (version !== shown) ask for it }, alive => { say whether tuckmark runs })
//
// A browser opens six connections to one server, and a stream of events holds one. So all
// tabs share a stream: the one that holds the lock listens and tells the others. When it is
// closed, another gets the lock. Each tab is told the newest version when it comes, and may
// be told it twice.

// follow calls changed with every newer version, a string, and running with true when the
// server answers and with false when it does not.
export function follow(changed, running) {
  const others = new BroadcastChannel("changes")
  let last = null // what the stream told last, in the tab that listens

  const heard = news => {
    running(news.alive)
    if (news.alive && news.version !== "") changed(news.version)
  }
  others.onmessage = message => {
    if (message.data.asked) {
      if (last) others.postMessage(last)
    } else {
      heard(message.data)
    }
  }
  const tell = news => {
    last = news
    others.postMessage(news)
    heard(news)
  }

  const listen = () => {
    const stream = new EventSource("/changes")
    stream.onopen = () => tell({ alive: true, version: last ? last.version : "" })
    stream.onmessage = event => tell({ alive: true, version: event.data })
    stream.onerror = () => {
      tell({ alive: false, version: last ? last.version : "" })
      // The browser tries again, but not after another program has answered in our place.
      if (stream.readyState === EventSource.CLOSED) setTimeout(listen, 1000)
    }
    return new Promise(() => {}) // the lock is held until the tab is closed
  }
  if (navigator.locks) {
    others.postMessage({ asked: true })
    navigator.locks.request("changes", listen)
  } else {
    listen()
  }
}
