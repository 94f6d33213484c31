package main

import (
	"runtime"
	"slices"
	"strings"

	"tuckmark/marking/wording"
)

// Rules of this file: a command line that is given back can be typed as it stands, and makes the
// same again.

// fileInShell writes the name of a file as it is typed on a command line: one that begins
// with a dash must not be taken for an option.
func fileInShell(name string) string {
	if strings.HasPrefix(name, "-") && name != standard {
		name = "./" + name
	}
	return inShell(name)
}

// inShell writes a value as it is typed on a command line.
func inShell(value string) string { return typedOn(runtime.GOOS, value) }

// typedOn is inShell for a system of that name. What Windows has reads no quotes but double
// ones, and a backslash parts the folders there.
func typedOn(system, value string) string {
	letters := "./_,:+%@-"
	if system == "windows" {
		letters += `\`
	}
	plain := func(r rune) bool {
		return r >= 'a' && r <= 'z' || r >= 'A' && r <= 'Z' || r >= '0' && r <= '9' || strings.ContainsRune(letters, r)
	}
	switch spelled := wording.FileName(value); {
	case system == "windows" && (value == "" || strings.IndexFunc(value, func(r rune) bool { return !plain(r) }) >= 0):
		return `"` + strings.ReplaceAll(value, `"`, `\"`) + `"`
	case spelled != value: // what cannot be typed
		return "$'" + strings.NewReplacer("'", `\'`, `\"`, `"`).Replace(spelled[1:len(spelled)-1]) + "'"
	case value != "" && strings.IndexFunc(value, func(r rune) bool { return !plain(r) }) < 0:
		return value
	case !strings.ContainsAny(value, "\"$`\\!"):
		return `"` + value + `"`
	}
	return "'" + strings.ReplaceAll(value, "'", `'\''`) + "'"
}

// anyFile stands on the pages for the file that they are made of: where that lies is nobody
// else's business.
const anyFile = "FILE.toml"

// onPage is the line of a command as it stands on the pages: the same for the same pages, however
// their paper was written.
func (p printing) onPage(name string, more ...string) string {
	words := []string{name}
	for _, said := range p.said {
		if paper, is := strings.CutPrefix(said, "--paper "); is {
			if strings.EqualFold(paper, "letter") {
				continue
			}
			said = strings.ToLower(said)
		}
		words = append(words, said)
	}
	return strings.Join(slices.Concat(words, p.added, more), " ")
}

// again is the command line that prints the same sheets of a file, with more
// options in front.
func (p printing) again(file string, more ...string) string {
	return p.command("tuckmark sheet", file, more)
}

// command is the line of a command for the same sheets of a file, with more options in
// front.
func (p printing) command(name, file string, more []string) string {
	words := slices.Concat([]string{name}, more, p.said, p.added, []string{fileInShell(file)})
	return strings.Join(words, " ")
}
