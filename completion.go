package main

import (
	"os"
	"slices"
	"strings"

	"github.com/urfave/cli/v2"

	"tuckmark/marking/guide"
	"tuckmark/marking/length"
	"tuckmark/marking/source"
	"tuckmark/marking/start"
	"tuckmark/marking/wording"
	"tuckmark/pdfout/paper"
)

// Rules of this file: a shell that completes a command line asks the program, by the same line
// with one option more, where the cursor is, that holds what is begun there. It is told how that
// may go on, a word a line, with what it means behind a tab; a line that begins with a star stands
// for the names of files with that ending, and of folders. Nothing is carried out.

// finishOption begins the word that a shell asks by.
const finishOption = "--finish="

// anyFolder stands for the names of folders alone.
const anyFolder = "*/"

// cutAtCursor cuts a command line where a shell asks, if it does. bash hands on an equals sign as
// a word of its own.
func cutAtCursor(args []string) (before []string, begun string, after []string, asks bool) {
	words := slices.DeleteFunc(slices.Clone(args), func(word string) bool { return word == "=" })
	at := slices.IndexFunc(words, func(word string) bool { return strings.HasPrefix(word, finishOption) })
	if at < 1 {
		return nil, "", nil, false
	}
	if begun = strings.TrimPrefix(words[at], finishOption); begun == "=" {
		begun = ""
	}
	return words[1:at], begun, words[at+1:], true
}

// finished is how what is begun may go on, in lines.
func finished(app *cli.App, before []string, begun string, after []string) []string {
	at := slices.IndexFunc(before, func(word string) bool { return !isOption(word) })
	if at < 0 {
		all := typedLine{known: app.Flags}
		return beginning("", begun, append(commandsOf(app), all.options()...))
	}
	command := app.Command(before[at])
	if command == nil {
		return nil
	}
	l := typedLine{known: append(slices.Clone(command.Flags), cli.HelpFlag)}
	open, ahead := l.take(before[at+1:]), ""
	namesOnly, first := l.namesOnly, len(l.names) == 0
	l.take(after)
	if name, value, joined := strings.Cut(begun, "="); joined && open == "" && !namesOnly {
		if option, takesValue := optionWithValue(name, l.known); takesValue {
			open, ahead, begun = option, name+"=", value
		}
	}
	var lines []string
	switch {
	case open != "":
		lines = l.values(command, open, begun)
	case strings.HasPrefix(begun, "-") && !namesOnly:
		lines = l.options()
	case first:
		lines = namesFor(app, command)
	}
	return beginning(ahead, begun, lines)
}

// beginning are those of some lines that go on from what is begun, with what stands ahead of it;
// which files do, the shell knows. What cannot be typed is left out.
func beginning(ahead, begun string, lines []string) []string {
	var some []string
	for _, line := range lines {
		word, _, _ := strings.Cut(line, "\t")
		switch {
		case wording.FileName(word) != word:
			continue
		case strings.HasPrefix(line, "*"):
			some = append(some, line)
		case strings.HasPrefix(line, begun):
			some = append(some, ahead+line)
		}
	}
	return some
}

// commandsOf are the commands, with what each is for.
func commandsOf(app *cli.App) []string {
	var lines []string
	for _, command := range app.Commands {
		lines = append(lines, command.Name+"\t"+command.Usage)
	}
	return lines
}

// namesFor are what a command takes besides options.
func namesFor(app *cli.App, command *cli.Command) []string {
	switch command.Name {
	case completionName:
		return shellNames()
	case helpName:
		return helpWords(app, readGuide())
	case startName: // a file that is not there yet
		return []string{anyFolder}
	case gridName:
		return nil
	}
	return []string{"*.toml"}
}

// typedLine is what was typed behind a command.
type typedLine struct {
	known     []cli.Flag // its options
	used      []string   // those that are there
	names     []string   // all that is no option, and no value of one
	namesOnly bool       // what follows is a name, whatever it looks like
}

// take takes words up. It returns the option that has no value yet; "" where none wants one.
func (l *typedLine) take(words []string) (open string) {
	for _, word := range words {
		name, _, joined := strings.Cut(word, "=")
		option, takesValue := optionWithValue(name, l.known)
		switch {
		case open != "":
			open = "" // the word is its value
		case word == "--" && !l.namesOnly:
			l.namesOnly = true
		case l.namesOnly || !isOption(word):
			l.names = append(l.names, word)
		default:
			l.used = append(l.used, option)
			if takesValue && !joined {
				open = option
			}
		}
	}
	return open
}

// options are those that are not there yet, by each of their names, with what they do.
func (l *typedLine) options() []string {
	var lines []string
	for _, flag := range l.known {
		names := flag.Names()
		if slices.Contains(l.used, names[0]) {
			continue
		}
		for _, typed := range strings.Split(typedNames(flag), ", ") {
			lines = append(lines, typed+"\t"+guide.PlainKeys(flag.(cli.DocGenerationFlag).GetUsage()))
		}
	}
	return lines
}

// values are what an option of a command takes, where that is one of few words, or of the names in
// the file that is on the line.
func (l *typedLine) values(command *cli.Command, option, begun string) []string {
	switch option {
	case "paper":
		return append(paper.Names(), "single", "roll:36in")
	case "transfer":
		return oneMore(begun, source.TransferNames())
	case "unit":
		return []string{length.Inch.String(), length.Centimetre.String(), length.Millimetre.String()}
	case "output":
		return []string{"*.pdf", "*.svg"}
	case "view":
		return l.file().Views
	case "pieces":
		if command.Name == startName {
			return oneMore(begun, start.Words())
		}
		var keys []string
		for _, piece := range l.file().Pieces {
			keys = append(keys, piece.Key)
		}
		return oneMore(begun, keys)
	}
	return nil
}

// oneMore are the lists that one with commas in it may become by one word more, each word once.
func oneMore(begun string, words []string) []string {
	before := begun[:strings.LastIndex(begun, ",")+1]
	var lists []string
	for _, word := range words {
		if !slices.Contains(strings.Split(before, ","), word) {
			lists = append(lists, before+word)
		}
	}
	return lists
}

// file is what the file on the line says; nothing where it cannot be read.
func (l *typedLine) file() *source.Spec {
	spec := &source.Spec{}
	if len(l.names) != 1 || l.names[0] == standard {
		return spec
	}
	if info, err := os.Stat(l.names[0]); err != nil || !info.Mode().IsRegular() {
		return spec
	}
	texts{}.reading(l.names[0], func(r source.Reader, data []byte) error {
		if read, err := r.Read(l.names[0], data); err == nil {
			spec = read
		}
		return nil
	})
	return spec
}
