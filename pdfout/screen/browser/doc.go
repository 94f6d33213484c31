// Package browser holds pages against what a real browser shows of them: it has tests alone.
//
//	chromium_test.go  the browser, a tab for each test, and all that a page did wrong in it
//	audit_test.go     what holds for every page: contrast, width, controls, focus
//	tabs_test.go      more tabs than a browser has connections, and a server that ends
//	elsewhere_test.go  what pages of elsewhere get
package browser
