package main

// system is a kind of machine that a maker may have.
type system struct {
	name     string // in the name of the zip
	title    string // as she would say it
	os, arch string // as Go calls them
}

var systems = []system{
	{"windows-x64", "Windows, on a machine with an Intel or AMD processor", "windows", "amd64"},
	{"windows-arm64", "Windows, on a machine with an ARM processor", "windows", "arm64"},
	{"macos-apple", "a Mac with an Apple processor (M1 and later)", "darwin", "arm64"},
	{"macos-intel", "a Mac with an Intel processor", "darwin", "amd64"},
	{"linux-x64", "Linux, on a machine with an Intel or AMD processor", "linux", "amd64"},
	{"linux-arm64", "Linux, on a machine with an ARM processor", "linux", "arm64"},
}

// program is what the program is called there.
func (s system) program() string {
	if s.os == "windows" {
		return "tuckmark.exe"
	}
	return "tuckmark"
}

// zipName is the name of its zip.
func (s system) zipName(version string) string {
	return "tuckmark-" + version + "-" + s.name + ".zip"
}
