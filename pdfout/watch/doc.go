// Package watch tells that one of some files has changed, soon after it was saved.
//
// In come the names of files, there or not, and others whenever the list is another one; out
// comes a word for each save. What a file holds, and whether it holds something new, is
// never known here.
//
//	watch.go    Watch: files, and a word for each save
//	save.go     the steps of a save, and when it counts as done
//	notices.go  what the system tells of folders
//	trail.go    the names and links by which a file is found
//	stamp.go    how a file stands: its time, size and place on the disk
//
// Decided:
//
//   - Folders are watched, not files: editors save by putting another file in the place of
//     the old one, and a file may not be there yet.
//   - What the system tells is for speed only. Drives of other machines tell nothing, and
//     systems watch so many folders and no more, so the files themselves are asked again
//     and again, which costs little, and nothing is ever missed.
//   - A save is several steps, some microseconds apart. It is told of when nothing has come
//     for a moment, and no file that was there is missing or empty.
package watch
