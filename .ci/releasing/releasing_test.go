package main

import (
	"archive/zip"
	"bytes"
	"debug/buildinfo"
	"debug/elf"
	"debug/macho"
	"debug/pe"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"runtime"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Rules of this file: one release is made of the commit that is checked out, and looked at as
// whoever gets it would: the checksums, the zips, and the program out of each, as far as this
// machine can start it.

const trial = "0.1-trial"

var made struct {
	sync.Once
	folder string
	err    error
}

// release is a folder with all of a release.
func release(t *testing.T) string {
	t.Helper()
	made.Do(func() {
		if made.folder, made.err = os.MkdirTemp("", "tuckmark-releasing-"); made.err == nil {
			made.err = makeRelease("../..", made.folder, trial, os.Stdout)
		}
	})
	require.NoError(t, made.err)
	return made.folder
}

func TestMain(m *testing.M) {
	status := m.Run()
	if made.folder != "" {
		os.RemoveAll(made.folder)
	}
	os.Exit(status)
}

// unzipped is a release's folder for a system, unpacked in a folder whose name has a space in it.
func unzipped(t *testing.T, name string) string {
	t.Helper()
	folder := filepath.Join(t.TempDir(), "my things")
	data, err := os.ReadFile(filepath.Join(release(t), "tuckmark-"+trial+"-"+name+".zip"))
	require.NoError(t, err)
	require.NoError(t, unpack(data, folder))
	return filepath.Join(folder, "tuckmark-"+trial)
}

func TestChecksums(t *testing.T) {
	command := exec.Command("sha256sum", "-c", "SHA256SUMS.txt")
	command.Dir = release(t)
	said, err := command.CombinedOutput()
	require.NoError(t, err, "%s", said)
	assert.Equal(t, 6, strings.Count(string(said), ": OK\n"), "%s", said)
	zips, err := filepath.Glob(filepath.Join(release(t), "*.zip"))
	require.NoError(t, err)
	assert.Len(t, zips, 6)
}

// Made of another copy of the project, elsewhere and later, it is the same to the byte. Both
// runs may take what Go has compiled before, which depends on no path with -trimpath: without
// that Go would compile anew, and note the other path.
func TestTheSameBytesAnywhere(t *testing.T) {
	first := release(t)
	project, again := filepath.Join(t.TempDir(), "copy of the project"), t.TempDir()
	_, err := git("../..", "clone", "--quiet", ".", project)
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(filepath.Join(project, "examples", "scrap.pdf"), nil, 0o666))
	t.Setenv("TZ", "Pacific/Auckland")
	t.Setenv("GOAMD64", "v3")
	require.NoError(t, makeRelease(project, again, trial, os.Stdout))
	files, err := os.ReadDir(first)
	require.NoError(t, err)
	assert.Len(t, files, 7)
	for _, file := range files {
		want, err := os.ReadFile(filepath.Join(first, file.Name()))
		require.NoError(t, err)
		have, err := os.ReadFile(filepath.Join(again, file.Name()))
		require.NoError(t, err)
		assert.True(t, bytes.Equal(want, have), "%s differs", file.Name())
	}
}

// Every zip has one folder with all that is promised, of the time of the commit.
func TestWhatIsInAZip(t *testing.T) {
	c, err := readCommit("../..", filepath.Join(t.TempDir(), "source"))
	require.NoError(t, err)
	for _, s := range systems {
		t.Run(s.name, func(t *testing.T) {
			files, err := zip.OpenReader(filepath.Join(release(t), s.zipName(trial)))
			require.NoError(t, err)
			defer files.Close()
			rights := map[string]string{}
			for _, file := range files.File {
				name, inside := strings.CutPrefix(file.Name, "tuckmark-0.1-trial/")
				assert.True(t, inside, file.Name)
				assert.True(t, file.Modified.Equal(c.time), "%s is of %s", name, file.Modified)
				rights[name] = file.Mode().String()
			}
			program, ending := "tuckmark", ""
			if s.os == "windows" {
				program, ending = "tuckmark.exe", ".txt"
			}
			for name, want := range map[string]string{
				program: "-rwxr-xr-x", "READ FIRST.txt": "-rw-r--r--", "README.md": "-rw-r--r--", "LICENSE" + ending: "-rw-r--r--",
				"NOTICE" + ending: "-rw-r--r--", "examples/pinafore.toml": "-rw-r--r--", "examples/guide/file.md": "-rw-r--r--",
			} {
				assert.Equal(t, want, rights[name], name)
			}
			for name := range rights {
				if filepath.Ext(name) == ".md" {
					for _, target := range linksIn(t, files, "tuckmark-0.1-trial/"+name) {
						assert.Contains(t, rights, target, "%s shows it, or leads to it", name)
					}
				}
			}
		})
	}
}

// linksIn are the pictures that a text in a zip shows, and the files that it leads to.
func linksIn(t *testing.T, files *zip.ReadCloser, name string) []string {
	t.Helper()
	f, err := files.Open(name)
	require.NoError(t, err)
	text, err := io.ReadAll(f)
	require.NoError(t, err)
	var all []string
	for _, match := range regexp.MustCompile(`\]\(([^)#]+)`).FindAllSubmatch(text, -1) {
		if target := string(match[1]); !strings.HasPrefix(target, "http") {
			all = append(all, filepath.ToSlash(filepath.Join(filepath.Dir(strings.TrimPrefix(name, "tuckmark-0.1-trial/")), target)))
		}
	}
	return all
}

// What READ FIRST says fits a screen, and its lines end as the system's do.
func TestReadFirst(t *testing.T) {
	for _, s := range systems {
		page, err := readFirst(s, trial)
		require.NoError(t, err)
		ends := strings.Count(string(page), "\r\n")
		text := strings.ReplaceAll(string(page), "\r\n", "\n")
		lines := strings.Split(strings.TrimSuffix(text, "\n"), "\n")
		if s.os == "windows" {
			assert.Equal(t, len(lines), ends, "lines of %s that end as Windows has them", s.name)
		} else {
			assert.Zero(t, strings.Count(string(page), "\r"), s.name)
		}
		assert.LessOrEqual(t, len(lines), 66, "lines of a page, for %s", s.name)
		for _, line := range lines {
			assert.LessOrEqual(t, len([]rune(line)), 80, "%s: %s", s.name, line)
		}
		assert.Contains(t, text, "SHA256SUMS.txt", s.name)
		assert.Contains(t, text, "If you have no list, ask whoever gave you the zip", s.name)
		if s.os != "windows" { // which looks for a program where one is, too
			assert.Contains(t, strings.Join(strings.Fields(text), " "), "say tuckmark, type ./tuckmark", s.name)
		}
		if s.os != "linux" { // which looks at all that are there
			assert.Contains(t, text, "tuckmark-0.1-trial-"+s.name+".zip", "its checksum is asked for by this name")
		}
	}
}

// The program of each system is one for it, with all it needs inside.
func TestProgramsAreOfTheirSystem(t *testing.T) {
	for _, c := range []struct {
		name, os, arch string
		machine        func(t *testing.T, file string) string
		want           string
	}{
		{"windows-x64", "windows", "amd64", machineOfPE, "0x8664"},
		{"windows-arm64", "windows", "arm64", machineOfPE, "0xaa64"},
		{"macos-apple", "darwin", "arm64", machineOfMach, "CpuArm64, signed"},
		{"macos-intel", "darwin", "amd64", machineOfMach, "CpuAmd64"},
		{"linux-x64", "linux", "amd64", machineOfELF, "EM_X86_64"},
		{"linux-arm64", "linux", "arm64", machineOfELF, "EM_AARCH64"},
	} {
		t.Run(c.name, func(t *testing.T) {
			files, err := filepath.Glob(filepath.Join(unzipped(t, c.name), "tuckmark*"))
			require.NoError(t, err)
			require.Len(t, files, 1)
			assert.Equal(t, c.want, c.machine(t, files[0]))
			info, err := buildinfo.ReadFile(files[0])
			require.NoError(t, err)
			noted := map[string]string{}
			for _, setting := range info.Settings {
				noted[setting.Key] = setting.Value
			}
			assert.Equal(t, c.os, noted["GOOS"])
			assert.Equal(t, c.arch, noted["GOARCH"])
			assert.Equal(t, "0", noted["CGO_ENABLED"])
			assert.Equal(t, "true", noted["-trimpath"])
			assert.Empty(t, noted["vcs.revision"], "the number of the release says it")
			data, err := os.ReadFile(files[0])
			require.NoError(t, err)
			home, err := filepath.Abs("../..")
			require.NoError(t, err)
			assert.False(t, bytes.Contains(data, []byte(home+"/")), "it has the path in which it was built")
		})
	}
}

func machineOfPE(t *testing.T, file string) string {
	f, err := pe.Open(file)
	require.NoError(t, err)
	defer f.Close()
	return fmt.Sprintf("%#x", f.Machine)
}

// codeSignature is the load command of a signature (LC_CODE_SIGNATURE in Apple's loader.h), without which no
// Apple processor starts a program.
const codeSignature = 0x1d

func machineOfMach(t *testing.T, file string) string {
	f, err := macho.Open(file)
	require.NoError(t, err)
	defer f.Close()
	said := f.Cpu.String()
	for _, load := range f.Loads {
		if f.ByteOrder.Uint32(load.Raw()) == codeSignature {
			said += ", signed"
		}
	}
	return said
}

func machineOfELF(t *testing.T, file string) string {
	f, err := elf.Open(file)
	require.NoError(t, err)
	defer f.Close()
	libraries, err := f.ImportedLibraries()
	require.NoError(t, err)
	assert.Empty(t, libraries, "it needs nothing else of the system")
	return f.Machine.String()
}

// ofWine is what wine says of itself, among what a program says.
var ofWine = regexp.MustCompile(`(?m)^wine: .*\n`)

// started is what a program says and its status.
func started(t *testing.T, folder string, words ...string) (said string, status int) {
	t.Helper()
	command := exec.Command(words[0], words[1:]...)
	command.Dir = folder
	command.Env = append(os.Environ(), "WINEDEBUG=-all", "WINEDLLOVERRIDES=mscoree,mshtml=")
	out, err := command.CombinedOutput()
	if command.ProcessState == nil {
		require.NoError(t, err)
	}
	said = ofWine.ReplaceAllString(strings.ReplaceAll(string(out), "\r\n", "\n"), "")
	return said, command.ProcessState.ExitCode()
}

// use goes with a program through what a maker does first.
func use(t *testing.T, folder string, program ...string) {
	run := func(words ...string) (string, int) { return started(t, folder, append(program, words...)...) }
	said, status := run("--version")
	assert.Equal(t, "tuckmark 0.1-trial\nfree to use and to pass on: LICENSE has the terms, NOTICE whose work is in it\n", said)
	assert.Zero(t, status)

	said, status = run("sheet", "examples/pinafore.toml", "-o", "my sheets.pdf")
	assert.Zero(t, status, said)
	pdf, err := os.ReadFile(filepath.Join(folder, "my sheets.pdf"))
	require.NoError(t, err)
	assert.True(t, bytes.HasPrefix(pdf, []byte("%PDF-1.")))
	assert.Greater(t, len(pdf), 50_000)

	said, status = run("figures", "examples/nightgown.toml")
	assert.Zero(t, status)
	want, err := os.ReadFile("../../golden/nightgown-figures.txt")
	require.NoError(t, err)
	assert.Equal(t, string(want), said)

	said, status = run("figures", "none.toml")
	assert.Equal(t, 1, status)
	assert.True(t, strings.HasPrefix(said, "none.toml: there is no such file\n"), said)
	said, status = run("sheets")
	assert.Equal(t, 2, status)
	assert.Contains(t, said, `did you mean "sheet"?`)
}

func TestLinuxOutOfItsZip(t *testing.T) {
	if runtime.GOOS != "linux" || runtime.GOARCH != "amd64" {
		t.Skip("it is for Linux on Intel and AMD processors")
	}
	folder := unzipped(t, "linux-x64")
	program := filepath.Join(folder, "tuckmark")
	require.NoError(t, os.Chmod(program, 0o755)) // unpack drops rights, as some programs do
	use(t, folder, program)
	page, err := os.ReadFile(filepath.Join(folder, "READ FIRST.txt"))
	require.NoError(t, err)
	asked := 0
	for line := range strings.Lines(string(page)) {
		if command, is := strings.CutPrefix(line, "    ./tuckmark "); is && !strings.HasPrefix(command, "look ") {
			asked++
			said, status := started(t, folder, "sh", "-c", strings.TrimSpace(line))
			assert.Zero(t, status, "%s: %s", command, said)
		}
	}
	assert.Equal(t, 3, asked, "commands of READ FIRST")
	assert.FileExists(t, filepath.Join(folder, "examples", "pinafore-first-page.pdf"))
	assert.FileExists(t, filepath.Join(folder, "my dress.toml"))
}

// The program for Windows draws what the one for Linux draws, to the byte.
func TestWindowsOutOfItsZip(t *testing.T) {
	wine := startWine(t)
	folder, linux := unzipped(t, "windows-x64"), unzipped(t, "linux-x64")
	use(t, folder, wine, filepath.Join(folder, "tuckmark.exe"))
	require.NoError(t, os.Chmod(filepath.Join(linux, "tuckmark"), 0o755))
	use(t, linux, filepath.Join(linux, "tuckmark"))
	here, err := os.ReadFile(filepath.Join(linux, "my sheets.pdf"))
	require.NoError(t, err)
	there, err := os.ReadFile(filepath.Join(folder, "my sheets.pdf"))
	require.NoError(t, err)
	assert.True(t, bytes.Equal(here, there), "the sheets differ")

	dress, err := os.ReadFile(filepath.Join(folder, "examples", "pinafore.toml"))
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(filepath.Join(folder, "my dress.toml"), linesFor(system{os: "windows"}, dress), 0o666))
	typed := "@tuckmark sheet \"my dress.toml\" -o examples\\dress.pdf\r\n@tuckmark figures \"my dress.toml\" >examples\\dress.txt\r\n"
	require.NoError(t, os.WriteFile(filepath.Join(folder, "typed.bat"), []byte(typed), 0o666))
	said, status := started(t, folder, wine, "cmd", "/c", "typed.bat")
	assert.Zero(t, status, said)
	assert.True(t, strings.HasPrefix(said, "examples\\dress.pdf: "), said)
	told, err := os.ReadFile(filepath.Join(folder, "examples", "dress.txt"))
	require.NoError(t, err)
	want, err := os.ReadFile("../../golden/pinafore-figures.txt")
	require.NoError(t, err)
	assert.Equal(t, string(want), string(told))
	assert.FileExists(t, filepath.Join(folder, "examples", "dress.pdf"))
}

// startWine makes a Windows of its own for a test. Go's programs want a library for numbers
// at random which Windows 10 has and wine 8 has not; its one function is one of advapi32.
func startWine(t *testing.T) string {
	t.Helper()
	for _, tool := range []string{"wine", "x86_64-w64-mingw32-dlltool", "x86_64-w64-mingw32-ld"} {
		if _, err := exec.LookPath(tool); err != nil {
			t.Skip(tool + " is not installed")
		}
	}
	folder := t.TempDir()
	t.Setenv("WINEPREFIX", filepath.Join(folder, "windows"))
	require.NoError(t, os.WriteFile(filepath.Join(folder, "b.def"), []byte("LIBRARY bcryptprimitives\nEXPORTS\nProcessPrng = advapi32.SystemFunction036\n"), 0o666))
	for _, words := range [][]string{
		{"wine", "cmd", "/c", "exit"},
		{"x86_64-w64-mingw32-dlltool", "-d", "b.def", "-e", "b.o"},
		{"x86_64-w64-mingw32-ld", "-shared", "-o", "windows/drive_c/windows/system32/bcryptprimitives.dll", "b.o", "b.def"},
	} {
		said, status := started(t, folder, words...)
		require.Zero(t, status, "%s: %s", words[0], said)
	}
	t.Cleanup(func() { started(t, folder, "wine", "wineboot", "--kill") })
	return "wine"
}

func TestVersion(t *testing.T) {
	c, err := readCommit("../..", filepath.Join(t.TempDir(), "source"))
	require.NoError(t, err)
	c.tag, c.hash = "", "8c1f00d5aa"
	byDay, err := c.version("")
	require.NoError(t, err)
	assert.Regexp(t, `^20\d\d\.\d{1,2}\.\d{1,2}-8c1f00d5$`, byDay)
	for _, one := range []struct{ name, tag, asked, want string }{
		{"asked for", "v1.0", "1.1", "1.1"},
		{"by the tag", "v1.0.2", "", "1.0.2"},
		{"a tag of something else", "first-picture", "", byDay},
	} {
		c.tag = one.tag
		version, err := c.version(one.asked)
		require.NoError(t, err, one.name)
		assert.Equal(t, one.want, version, one.name)
	}
	for _, wrong := range []string{"v1", "1.0 beta", "1/2", "1;ls", "../1", "1\n"} {
		_, err := c.version(wrong)
		assert.Error(t, err, "%q", wrong)
	}
}

func TestLicencesThatAreNotAllowed(t *testing.T) {
	folder := t.TempDir()
	write := func(name, text string) string {
		file := filepath.Join(folder, name)
		require.NoError(t, os.WriteFile(file, []byte(text), 0o666))
		return file
	}
	own, err := os.ReadFile("../../LICENSE")
	require.NoError(t, err)
	read, err := readLicence("ours", write("LICENSE", string(own)))
	require.NoError(t, err)
	assert.Equal(t, "MIT", read.kind)
	_, err = readLicence("a text", write("COPYING", "Do as you like, but tell me on Fridays.\n"))
	assert.ErrorContains(t, err, "is a licence that is known")
	_, err = readLicence("another", write("NOTICE", "This program is free software: you can redistribute it and/or modify it under the terms of the GNU General Public License as published by the Free Software Foundation, either version 3 of the License, or (at your option) any later version.\n"))
	assert.ErrorContains(t, err, "GPL-3.0")
	_, err = module{path: "none", version: "v1", folder: t.TempDir()}.licences()
	assert.ErrorContains(t, err, "no licence is found")
}

// NOTICE tells of the fonts by what lies beside them, and of Go itself.
func TestNotice(t *testing.T) {
	text, err := os.ReadFile("../../NOTICE")
	require.NoError(t, err)
	for _, want := range []string{
		"the standard library of Go (BSD-3-Clause)", "Copyright (c) 2016 Bigelow & Holmes Inc.", "github.com/BurntSushi/toml v", "github.com/urfave/cli/v2 v",
	} {
		assert.Contains(t, string(text), want)
	}
	assert.NotContains(t, string(text), "testify", "it is in no program")
}
