package main

import (
	"errors"
	"os"
	"os/exec"
	"runtime"
	"time"
)

// Rules of this file: nothing that a browser prints is seen, and none ends with this program.

// failsWithin is how soon an opener that fails is done. One that goes on for longer is the browser
// itself, and how that ends is its own affair.
const failsWithin = 5 * time.Second

// openBrowser shows an address in the browser that somebody has chosen for this machine. It
// returns when the program that opens it is done, which for some is when the browser is
// closed; so nothing should wait for it. It fails where there is no browser.
func openBrowser(address string) error {
	for _, opener := range openers() {
		program, err := exec.LookPath(opener[0])
		if err != nil {
			continue
		}
		command := exec.Command(program, append(opener[1:], address)...)
		setApart(command)
		began := time.Now()
		if err := command.Run(); err == nil || time.Since(began) > failsWithin {
			return nil
		}
	}
	return errors.New("there is no browser")
}

// openers are the programs that know which browser was chosen, the best first.
func openers() [][]string {
	switch runtime.GOOS {
	case "darwin":
		return [][]string{{"open"}}
	case "windows":
		return [][]string{{"rundll32", "url.dll,FileProtocolHandler"}}
	}
	all := [][]string{{"wslview"}} // Windows, from a Linux inside it
	if os.Getenv("DISPLAY") != "" || os.Getenv("WAYLAND_DISPLAY") != "" {
		// Without a screen they would take a browser that writes to the terminal.
		all = append(all, []string{"xdg-open"}, []string{"x-www-browser"})
	}
	return all
}
