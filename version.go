package main

import (
	"fmt"
	"io"
	"runtime/debug"
	"strings"

	"github.com/urfave/cli/v2"
)

// Rules of this file: a program says of itself what it was built from: the number of a
// release, or else what Go noted of the module or of the commit. Nobody keeps a number by hand.

// release is the number of a release. It is set when one is built, by
// -ldflags "-X main.release=1.0", and at no other time.
var release string

// versionName is the option that asks for it.
const versionName = "version"

// versionFlag is the option that asks for the version; the parser's own would print it in
// every help as well.
func versionFlag() cli.Flag {
	flag := onOrOff(versionName, "say which tuckmark this is, and on what terms it may be used")
	flag.Aliases = []string{"v"}
	return flag
}

// versionAlone refuses --version with anything behind it.
func versionAlone(c *cli.Context) error {
	if c.Bool(versionName) && c.Args().Present() {
		return misuse("--"+versionName+" stands by itself, without a command or a file", "leave out what stands behind it, or --"+versionName)
	}
	return nil
}

// sayVersion answers --version.
func sayVersion(w io.Writer) error {
	built, _ := debug.ReadBuildInfo() // nil where Go noted nothing
	return writeOut(w, "the version", fmt.Appendf(nil, "tuckmark %s\n"+
		"free to use and to pass on: LICENSE has the terms, NOTICE whose work is in it\n", versionOf(release, built)))
}

// versionOf is the number of a release; where there is none, the version of the module, as
// of what Go fetched and built by itself; or else the commit, with a + behind it where files
// had been changed since.
func versionOf(release string, built *debug.BuildInfo) string {
	if release != "" {
		return release
	}
	if built == nil {
		return unnumbered
	}
	if version := built.Main.Version; version != "" && version != "(devel)" {
		return strings.TrimPrefix(version, "v")
	}
	noted := map[string]string{}
	for _, setting := range built.Settings {
		noted[setting.Key] = setting.Value
	}
	commit := noted["vcs.revision"]
	if commit == "" {
		return unnumbered
	}
	if noted["vcs.modified"] == "true" {
		commit += "+"
	}
	return "of commit " + commit
}

// unnumbered is said of a program of which nothing was noted.
const unnumbered = "without a number, built from its source"
