// Package save puts a file where one may be already: whole, or not at all.
//
// In come a name and bytes; out comes the file, or a fault that says why there is none. What the
// bytes are is never known here.
//
//	place.go          Place: where a file is to be; what stands in its way is found before the work
//	replace.go        a file that takes the place of another
//	new.go            a file where nothing is
//	refused.go        what the system says of a file, in plain words
//	held.go           what would end the program waits until nothing half done is left
//	system_unix.go, system_windows.go  whose a file is, how a program ends, what errors mean
//
// Decided:
//
//   - A file is written under another name beside the one it replaces, is on the disk, and then
//     takes its name. So there is the old one or the new one, also where the power fails.
//   - A link is followed, to what is there or not there yet, and stays a link.
//   - What is replaced keeps its rights, its owner and its group. Where it could not it is not
//     replaced: whoever it belonged to would find it gone.
//   - A file that may be written, in a folder that takes no other, is not written either: it would
//     have to be emptied first, and then be half of one for a while.
//   - A file of several names is another one afterwards under the name that was given. Under the
//     others the old one stays.
//   - Ctrl-C and its like end the program at once while nothing is half done, for they are not
//     listened to then. While something is, that is taken away first.
package save
