// Package browser holds pages against what a real browser shows of them: it has tests alone. The
// program is built and started on a file of its own, that is changed as editors change it, and
// the page is used as a maker uses it.
//
//	chromium_test.go  the browser, a tab for each test, and all that a page did wrong in it
//	program_test.go   the program: started on a file, the file saved, ended
//	hands_test.go     a mouse, fingers and keys
//	audit_test.go     what holds for every page: contrast, width, controls, focus
//	tabs_test.go      more tabs than a browser has connections, and a server that ends
//	elsewhere_test.go what pages of elsewhere get
//	follow_test.go    what is on the page follows the file, and choices stay
//	picture_test.go   the picture is moved, pointed at, in layers
//	measuring_test.go how long something is, and real size
//	views_test.go     views of a file laid over each other
//	order_test.go     what happens in an order that nobody plans
//	shown_test.go     what is shown, against the other commands
//	reach_test.go     by keys alone, aloud, in large letters, on a phone, without the script
//	room_test.go      how much of the window the picture has
//	gallery_test.go   the pictures of the page for the guide
//	save_bench_test.go from a save to its picture
package browser
