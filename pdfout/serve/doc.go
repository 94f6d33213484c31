// Package serve shows pages to browsers on this machine, and to nobody else.
//
// In come a port, one http.Handler that makes the pages, and the number of every newer
// version of what they show. Out come an address, and the pages with what guards them.
// Nothing is known here of what a page holds, of files, or of sewing.
//
//	server.go   a port of this machine: Listen, Address, Run until it is to end
//	guard.go    who is answered, and to what
//	headers.go  what every answer tells the browser to keep to
//	mishap.go   a page that cannot be made
//	changes.go  telling every tab of a newer version: a stream of events
//	changes.js  how a page hears of it; all tabs of a browser share one stream
//
// Decided:
//
//   - Only 127.0.0.1 is listened on, and only this address and localhost, with the port, are
//     answered: a name of elsewhere that is led to this machine is not.
//   - Another page may link to these, as a link in a letter does, and a browser then opens
//     the page in a tab of its own. Nothing else is given to pages of elsewhere, other
//     programs of this machine included: no picture, no script, no frame, no data.
//   - Nothing can be written: GET and HEAD, without a body.
//   - A browser opens six connections to one server, and a stream holds one as long as its
//     tab is open: with the seventh tab the page would hang. So the tabs choose one among
//     them that listens and tells the others; when it is closed the next one listens.
//   - A stream tells the newest version only. Whoever is slow misses those between.
package serve
