package main

import (
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"runtime"
	"slices"
	"strings"

	"github.com/google/licensecheck"
)

// licence is a text that is to go along with a program, and what asks for it.
type licence struct {
	of   string // such as "github.com/BurntSushi/toml v1.6.0"
	kind string // such as "MIT"
	text string
}

// licenceName is how files are called that have licences, or notices which these ask for.
var licenceName = regexp.MustCompile(`(?i)^(un)?(licen[sc]e|copying|notice|copyright)([.-].*)?$`)

// fonts are the packages that hold the Go fonts; the notice of these does not lie beside them.
const (
	fonts      = "font/gofont/"
	fontNotice = fonts + "ttfs/README"
)

// licences are those of a module: of itself, and of each folder with a package of it that is in
// a program, up to the module's own.
func (m module) licences() ([]licence, error) {
	title := m.path + " " + m.version
	var files []string
	for _, folder := range m.packages {
		if under, err := filepath.Rel(m.folder, folder); err == nil && strings.HasPrefix(filepath.ToSlash(under)+"/", fonts) {
			files = append(files, filepath.Join(m.folder, filepath.FromSlash(fontNotice)))
		}
		for ; strings.HasPrefix(folder, m.folder); folder = filepath.Dir(folder) {
			entries, err := os.ReadDir(folder)
			if err != nil {
				return nil, err
			}
			for _, entry := range entries {
				if !entry.IsDir() && licenceName.MatchString(entry.Name()) && filepath.Ext(entry.Name()) != ".go" {
					files = append(files, filepath.Join(folder, entry.Name()))
				}
			}
		}
	}
	slices.Sort(files)
	var all []licence
	for _, file := range slices.Compact(files) {
		of := title
		if under, err := filepath.Rel(m.folder, file); err == nil && filepath.Dir(under) != "." {
			of += ", " + filepath.ToSlash(under)
		}
		one, err := readLicence(of, file)
		if err != nil {
			return nil, err
		}
		all = append(all, one)
	}
	if len(all) == 0 {
		return nil, fmt.Errorf("%s: no licence is found in %s", title, m.folder)
	}
	return all, nil
}

// goLicence is that of Go's own library, which is in every program.
func goLicence() (licence, error) {
	said, err := goDoes(system{name: "this machine", os: runtime.GOOS, arch: runtime.GOARCH}, ".", "env", "GOROOT")
	if err != nil {
		return licence{}, err
	}
	return readLicence("the standard library of Go", filepath.Join(strings.TrimSpace(string(said)), "LICENSE"))
}

// knownPart is how much of a file, in percent, must be a licence that is known: the rest is
// names and years, and a line or two on what it is for.
const knownPart = 75

// allowed are the licences whose terms a release keeps by telling their text.
var allowed = []string{"MIT", "BSD-2-Clause", "BSD-3-Clause", "ISC"}

// readLicence reads a licence, which must be one that is known and allowed.
func readLicence(of, file string) (licence, error) {
	data, err := os.ReadFile(file)
	if err != nil {
		return licence{}, err
	}
	found := licensecheck.Scan(data)
	var kinds []string
	for _, match := range found.Match {
		if !slices.Contains(allowed, match.ID) {
			return licence{}, fmt.Errorf("%s has the licence %s (%s); see what that asks for", of, match.ID, file)
		}
		if !slices.Contains(kinds, match.ID) {
			kinds = append(kinds, match.ID)
		}
	}
	if found.Percent < knownPart {
		return licence{}, fmt.Errorf("only %.0f %% of %s is a licence that is known", found.Percent, file)
	}
	text := strings.ReplaceAll(string(data), "\r\n", "\n")
	return licence{of, strings.Join(kinds, " and "), strings.TrimSpace(text)}, nil
}
