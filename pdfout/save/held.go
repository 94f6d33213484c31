package save

import (
	"os"
	"os/signal"
	"slices"
	"syscall"
)

// Rules of this file: while something is half done, what would end the program is noted, and
// ends it when that is taken away or whole. At any other time the system does it.

// Endings are what ends a program at the wish of somebody: Ctrl-C, a terminal that is closed, a
// system that is shut down; but for what this one was begun without, as by nohup.
func Endings() []os.Signal {
	return slices.DeleteFunc([]os.Signal{os.Interrupt, syscall.SIGTERM, syscall.SIGHUP}, signal.Ignored)
}

// held does something that must not be left half done. It is told whether the program is to
// end, and is soon to come to one end or the other then.
func held(do func(ending func() bool) error) error {
	noted := make(chan os.Signal, 1)
	for _, one := range Endings() {
		signal.Notify(noted, one)
	}
	err := do(func() bool { return len(noted) > 0 })
	signal.Stop(noted)
	select {
	case by := <-noted:
		end(by)
	default:
	}
	return err
}
