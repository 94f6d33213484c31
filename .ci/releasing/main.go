// Command releasing makes what is handed to makers: the program for each system, packed with
// all that belongs to it, and the checksums of these.
//
// In comes a commit, and what the release is called; out go a zip for each system and
// SHA256SUMS.txt. The same commit, name and Go give the same bytes, wherever and whenever it is
// made: nothing is taken but what is committed, and no time but that of the commit. What a
// program says of itself, and what it does, is never known here.
//
//	main.go      what is made, step by step
//	commit.go    the files of a commit, and its time
//	system.go    the systems there are programs for
//	building.go  a program, and what is linked into it
//	licence.go   the licences of that
//	notice.go    the NOTICE that tells them all
//	first.go     READ FIRST, which stands in first/, for each system
//	packing.go   a zip for each system, and the checksums
//
// It is a module of its own, so that what it needs is no part of the program.
package main

import (
	"bytes"
	"flag"
	"fmt"
	"os"
	"path/filepath"
)

func main() {
	to := flag.String("to", "dist", "the `FOLDER` for the zips, within the project unless it begins with /")
	notice := flag.Bool("notice", false, "only write NOTICE anew, from the modules as they are")
	flag.Usage = func() {
		fmt.Fprintln(flag.CommandLine.Output(), "usage: .ci/release [-to FOLDER] [VERSION]   (without VERSION: by the tag of the commit, or its date)\n       .ci/release -notice")
		flag.PrintDefaults()
	}
	flag.Parse()
	var err error
	switch {
	case flag.NArg() > 1:
		flag.Usage()
		os.Exit(2)
	case *notice:
		err = writeNotice("../..")
	default:
		err = makeRelease("../..", *to, flag.Arg(0), os.Stdout)
	}
	if err != nil {
		fmt.Fprintln(os.Stderr, "release:", err)
		os.Exit(1)
	}
}

// makeRelease makes all of a release of the commit that is checked out in the folder project,
// and tells progress what it made.
func makeRelease(project, to, version string, progress *os.File) error {
	scratch, err := os.MkdirTemp("", "tuckmark-release-")
	if err != nil {
		return err
	}
	defer os.RemoveAll(scratch)
	commit, err := readCommit(project, filepath.Join(scratch, "source"))
	if err != nil {
		return err
	}
	if version, err = commit.version(version); err != nil {
		return err
	}
	var programs []program
	for _, s := range systems {
		built, err := build(s, commit.folder, scratch, version)
		if err != nil {
			return err
		}
		programs = append(programs, built)
	}
	if err := commit.checkNotice(programs); err != nil {
		return err
	}
	if !filepath.IsAbs(to) {
		to = filepath.Join(project, to)
	}
	if err := os.MkdirAll(to, 0o777); err != nil {
		return err
	}
	var sums bytes.Buffer
	for _, p := range programs {
		zip, err := pack(commit, p, version)
		if err != nil {
			return err
		}
		name := p.zipName(version)
		if err := os.WriteFile(filepath.Join(to, name), zip, 0o666); err != nil {
			return err
		}
		sums.WriteString(checksum(name, zip))
		fmt.Fprintf(progress, "%s  %.1f MB\n", name, float64(len(zip))/1e6)
	}
	return os.WriteFile(filepath.Join(to, checksums), sums.Bytes(), 0o666)
}

// writeNotice writes NOTICE for the project as it lies in its folder, committed or not. A
// release holds it against what is linked into the programs.
func writeNotice(project string) error {
	var programs []program
	for _, s := range systems {
		needed, err := modulesOf(s, project)
		if err != nil {
			return err
		}
		programs = append(programs, program{system: s, modules: needed})
	}
	text, err := noticeOf(programs)
	if err != nil {
		return err
	}
	return os.WriteFile(filepath.Join(project, noticeName), text, 0o666)
}
