package main

import (
	"bytes"
	"debug/buildinfo"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
)

// program is the program as it was built for a system.
type program struct {
	system
	file    string
	modules []module
}

// module is one whose code is linked into a program.
type module struct {
	path, version string
	folder        string   // where its files are
	packages      []string // the folders of those of its packages that are in the program
}

// build builds the program from the source in a folder, and looks at what came of it. The file
// depends on the source, the version and Go alone: no path, time or commit is noted in it.
func build(s system, source, scratch, version string) (program, error) {
	p := program{system: s, file: filepath.Join(scratch, s.name)}
	if _, err := goDoes(s, source, "build", "-trimpath", "-buildvcs=false",
		"-ldflags", "-s -w -buildid= -X main.release="+version, "-o", p.file, "."); err != nil {
		return p, err
	}
	info, err := buildinfo.ReadFile(p.file)
	if err != nil {
		return p, err
	}
	listed, err := modulesOf(s, source)
	if err != nil {
		return p, err
	}
	for _, linked := range info.Deps {
		at := slices.IndexFunc(listed, func(m module) bool { return m.path == linked.Path && m.version == linked.Version })
		if at < 0 || linked.Replace != nil {
			return p, fmt.Errorf("%s: %s %s is in the program, and its files are not known", s.name, linked.Path, linked.Version)
		}
		p.modules = append(p.modules, listed[at])
	}
	if len(p.modules) != len(listed) {
		return p, fmt.Errorf("%s: %d modules are in the program, and %d are needed to build it", s.name, len(p.modules), len(listed))
	}
	return p, nil
}

// goDoes runs Go for a system. What people set for themselves has no say.
func goDoes(s system, folder string, words ...string) ([]byte, error) {
	var said, wrong bytes.Buffer
	command := exec.Command("go", words...)
	command.Dir, command.Stdout, command.Stderr = folder, &said, &wrong
	command.Env = append(os.Environ(), "GOOS="+s.os, "GOARCH="+s.arch, "CGO_ENABLED=0",
		"GOFLAGS=", "GOWORK=off", "GOAMD64=v1", "GOARM64=v8.0", "GOEXPERIMENT=", "GOFIPS140=off")
	if err := command.Run(); err != nil {
		return nil, fmt.Errorf("go %s for %s: %w\n%s", words[0], s.name, err, wrong.Bytes())
	}
	return said.Bytes(), nil
}

// modulesOf lists the modules that the program needs on a system, apart from its own.
func modulesOf(s system, source string) ([]module, error) {
	said, err := goDoes(s, source, "list", "-deps", "-json=Dir,Module", ".")
	if err != nil {
		return nil, err
	}
	var all []module
	for list := json.NewDecoder(bytes.NewReader(said)); ; {
		var listed struct {
			Dir    string
			Module *struct {
				Path, Version, Dir string
				Main               bool
			}
		}
		if err := list.Decode(&listed); errors.Is(err, io.EOF) {
			break
		} else if err != nil {
			return nil, err
		}
		if listed.Module == nil || listed.Module.Main { // one of Go's own, or of the program's
			continue
		}
		at := slices.IndexFunc(all, func(m module) bool { return m.path == listed.Module.Path })
		if at < 0 {
			at = len(all)
			all = append(all, module{path: listed.Module.Path, version: listed.Module.Version, folder: listed.Module.Dir})
		}
		all[at].packages = append(all[at].packages, listed.Dir)
	}
	slices.SortFunc(all, func(a, b module) int { return strings.Compare(a.path, b.path) })
	return all, nil
}
