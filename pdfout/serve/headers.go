package serve

import "net/http"

// policy is what a page may load: what this server gives, and nothing of elsewhere; no style
// or script inside the page, no form, no frame. W3C, Content Security Policy Level 3.
const policy = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; font-src 'self'; " +
	"connect-src 'self'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'"

// setHeaders sets what every answer says, refusals too. Whoever makes a page adds its
// Content-Type.
func setHeaders(header http.Header) {
	header.Set("Content-Security-Policy", policy)
	header.Set("X-Content-Type-Options", "nosniff")
	header.Set("Referrer-Policy", "no-referrer")
	header.Set("Cross-Origin-Resource-Policy", "same-origin")
	header.Set("Cross-Origin-Opener-Policy", "same-origin") // who linked here has no hold on the tab
	header.Set("Permissions-Policy", "camera=(), microphone=(), geolocation=(), payment=(), usb=()")
	header.Set("Cache-Control", "no-store") // the file may be another one at the next look
}
