// Package screen is the page in a browser that shows a file before anything is printed.
//
// In comes a Scene: all that is shown of a file as it was read last. Out go, over a Site,
// which is an http.Handler, the page, what of it is new after each save, and a PDF. What is
// shown is drawn by pdfout/board and written here as HTML. Never known here: sewing, how a
// browser is reached, and when a file has changed.
//
//	scene.go      what is shown: the views of a file, mistakes, remarks
//	choice.go     what of it somebody looks at: the address of the page
//	boards.go     the pictures, each drawn when it is asked for
//	site.go       which path answers with what
//	measure.go    a length that is measured in the picture, in words
//	page.go       the page, from the Scene and the Choice
//	links.go      the choices on it, as links
//	layers.go     the list of the lines in the picture, with a sample of each
//	figures.go    the figures, in tables
//	lay.go        how the pieces lie on the cloth, in a picture
//	told.go       what is told of each line, and of places in the file
//	page.html     how the page is laid out
//	regions.html  what of it changes with the file or the choice, region by region
//	figures.html  how the figures are put together
//	look.css      how the page looks, figures.css how the figures do
//	script        what the page does in the browser; each file says what, look.js all
//
// Decided here:
//
//   - The address is the choice. So every choice is a link that works without the script,
//     and a page that is loaded again shows the same.
//   - The server draws, and says every number; the script puts in place what it is sent, and
//     moves the picture. Without it there is the picture as it was when the page was loaded.
//   - A region that has not changed is left alone, with all that somebody has done to it.
//   - Nothing can be changed through the page.
package screen
