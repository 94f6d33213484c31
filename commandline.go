package main

import (
	"fmt"
	"path/filepath"
	"slices"
	"strings"
	"unicode"

	"github.com/urfave/cli/v2"

	"tuckmark/marking/source"
	"tuckmark/marking/wording"
)

// Rules of this file: what people type is put in the order in which the parser takes
// it, and what the parser finds wrong is said in our own words. Options may stand
// before the name of the file and behind it; all that follows -- is a name.

// inOrder is a command line with the options of its command in front of the file.
func inOrder(args []string, app *cli.App) []string {
	for at, word := range args {
		if at == 0 || isOption(word) || word == "--" {
			continue
		}
		command := app.Command(word)
		if command == nil {
			break
		}
		if command.Name == helpName {
			return append(slices.Clone(args[:at+1]), wordsOfHelp(args[at+1:])...)
		}
		return append(slices.Clone(args[:at+1]), optionsFirst(args[at+1:], command.Flags)...)
	}
	return args
}

// wordsOfHelp puts the options of help before what it is asked for, which may be an option of
// another command.
func wordsOfHelp(words []string) []string {
	var options, names []string
	for i, word := range words {
		if word == "--" {
			names = append(names, words[i+1:]...)
			break
		}
		if word == "--help" || word == "-h" {
			options = append(options, word)
		} else {
			names = append(names, word)
		}
	}
	return append(append(options, "--"), names...)
}

// isOption reports whether a word is an option; a dash alone is the name of a file.
func isOption(word string) bool {
	return len(word) > 1 && word[0] == '-' && word != "--"
}

// optionsFirst puts options before names. What an option is given is joined to it by
// an equals sign, so that a value may begin with a dash.
func optionsFirst(words []string, known []cli.Flag) []string {
	var options, names []string
	for i := 0; i < len(words); i++ {
		word := words[i]
		if word == "--" {
			names = append(names, words[i+1:]...)
			break
		}
		if !isOption(word) {
			names = append(names, word)
			continue
		}
		typed, value, joined := strings.Cut(word, "=")
		name, takesValue := optionWithValue(typed, known)
		switch {
		case !takesValue:
			options = append(options, word)
		case joined:
			options = append(options, "--"+name+"="+value)
		case i+1 < len(words):
			i++
			options = append(options, "--"+name+"="+words[i])
		default:
			return append(options, word) // the parser says that its value is missing
		}
	}
	return append(append(options, "--"), names...)
}

// optionWithValue is the long name of an option, as it was typed, and whether it is one that
// takes a value.
func optionWithValue(typed string, known []cli.Flag) (name string, takesValue bool) {
	for _, flag := range known {
		for _, own := range flag.Names() {
			if typed == "-"+own || typed == "--"+own {
				return flag.Names()[0], flag.(cli.DocGenerationFlag).TakesValue()
			}
		}
	}
	return "", false
}

// checkValues refuses an option of a command that is given twice, or without a letter behind it,
// of those that take a value. The words are in order.
func checkValues(words []string, app *cli.App) error {
	at := slices.IndexFunc(words[min(1, len(words)):], func(word string) bool { return !isOption(word) }) + 1
	if at == 0 {
		return nil
	}
	command := app.Command(words[at])
	if command == nil {
		return nil
	}
	given := map[string]bool{}
	for _, word := range words[at+1:] {
		if word == "--" {
			break
		}
		typed, value, joined := strings.Cut(word, "=")
		name, takesValue := optionWithValue(typed, command.Flags)
		switch {
		case !takesValue || !joined: // the parser says that it wants one
			continue
		case strings.TrimSpace(value) == "":
			return misuse("--"+name+" was given without a value", "write behind it what it is to be, or leave it out; `tuckmark "+command.Name+" --help` shows what it takes")
		case given[name]:
			return misuse("--"+name+" was given twice", "leave it out where it is not meant")
		}
		given[name] = true
	}
	return nil
}

// oneFile returns the one file that a command is given.
func oneFile(c *cli.Context, example string) (string, error) {
	if in := c.Args().First(); c.Args().Len() == 1 && in != "" {
		return in, nil
	}
	hint := "write it like `" + example + "`"
	if name := parted(c.Args().Slice()); name != "" {
		return "", misuse(fmt.Sprintf("%s takes the name of one file, and %q was taken for several, for it has a space in it", c.Command.Name, name),
			"put the name in quotes: "+fileInShell(name))
	}
	if name := partedOutput(c.String("output"), c.Args().Slice()); name != "" {
		hint = "a name with a space in it stands in quotes: -o " + inShell(name)
	}
	for _, word := range c.Args().Slice() {
		if strings.Contains(word, "/") && strings.IndexFunc(word, func(r rune) bool { return r != '/' && !unicode.IsDigit(r) }) < 0 {
			hint = `a length with a space in it stands in quotes, such as "3 15/16"`
		}
	}
	if list := partedList(c); list != "" {
		hint = "what belongs to one option stands behind it in one word, with commas and no space between: " + list
	}
	return "", misuse(c.Command.Name+" takes the name of one file", hint)
}

// partedList returns an option with all that was meant for it, where its list has spaces and
// only the first of it was taken; "" where none is likely.
func partedList(c *cli.Context) string {
	var more []string
	files := 0
	for _, word := range c.Args().Slice() {
		switch part := strings.Trim(word, ","); {
		case strings.EqualFold(filepath.Ext(word), ".toml"), exists(word):
			files++
		case part != "":
			more = append(more, part)
		}
	}
	if files != 1 || len(more) == 0 {
		return ""
	}
	with := func(option string) string {
		return strings.Join(append([]string{strings.TrimRight(c.String(option), ",")}, more...), ",")
	}
	if _, err := source.ParseTransfers(with("transfer")); c.IsSet("transfer") && err == nil {
		return "--transfer " + with("transfer")
	}
	if c.IsSet("pieces") {
		return "--pieces " + inShell(with("pieces"))
	}
	return ""
}

// mostWords is of how many words a name with spaces is looked for. It bounds the time.
const mostWords = 10

// parted returns the name of a file that is there, which words follow each other in, the
// spaces between them being its own; "" where there is none.
func parted(words []string) string {
	for from := range words {
		for to := from + 2; to <= min(len(words), from+mostWords); to++ {
			if name := strings.Join(words[from:to], " "); exists(name) {
				return name
			}
		}
	}
	return ""
}

// partedOutput returns the name for the sheets whose first word is taken for all of it and
// whose last one says .pdf or .svg; "" where none is likely.
func partedOutput(first string, words []string) string {
	name := []string{first}
	for _, word := range words {
		switch ext := filepath.Ext(word); {
		case first == "" || strings.EqualFold(ext, ".toml"):
			continue
		case formatOf(word) != noFormat:
			return strings.Join(append(name, word), " ")
		}
		name = append(name, word)
	}
	return ""
}

const commandsHint = "`tuckmark start FILE.toml` begins a file, `tuckmark look FILE.toml` shows it, `tuckmark sheet FILE.toml` makes its sheets; `tuckmark --help` shows every command"

// noCommand answers a command line that has no command, or none we know; --version is one.
func noCommand(c *cli.Context) error {
	word := c.Args().First()
	switch {
	case c.Bool(versionName):
		return sayVersion(c.App.Writer)
	case word == "":
		return misuse("no command was given", commandsHint)
	case strings.EqualFold(filepath.Ext(word), ".toml"):
		return misuse(fmt.Sprintf("there is no command %q", word),
			fmt.Sprintf("say what to do with the file: `tuckmark look %[1]s` shows the pieces, `tuckmark sheet %[1]s` makes the sheets, `tuckmark figures %[1]s` prints the numbers", fileInShell(word)))
	}
	hint := commandsHint
	names := []string{"--" + versionName}
	for _, command := range c.App.Commands {
		names = append(names, command.Name)
	}
	if near := wording.Nearest(word, names); near != "" {
		hint = wording.DidYouMean(near)
	}
	return misuse(fmt.Sprintf("there is no command %q", word), hint)
}

// misused says what the parser found wrong with the options.
func misused(c *cli.Context, err error, _ bool) error {
	hint := "`" + c.Command.HelpName + " --help` shows what it takes"
	if option, unknown := strings.CutPrefix(err.Error(), unknownOption); unknown {
		word, names := strings.TrimLeft(option, "-"), optionNames(c.Command)
		other := otherWords[strings.ToLower(word)]
		if !slices.Contains(names, other) {
			other = wording.Nearest(word, names)
		}
		if other != "" {
			hint = wording.DidYouMean("--"+other) + " " + hint
		}
	}
	return misuse(plainUsage(err.Error()), hint)
}

// unknownOption is how the parser begins what it says of an option that it does not know.
const unknownOption = "flag provided but not defined: "

// otherWords are what makers write for an option, which no slip of the hand leads to.
var otherWords = map[string]string{
	"unit": "all-units", "units": "all-units", "inches": "all-units", "in": "all-units", "cm": "all-units", "mm": "all-units", "metric": "all-units",
	"page": "paper", "out": "output", "file": "output", "save": "output", "only": "pieces",
}

// optionNames are the long names of the options that a command takes.
func optionNames(of *cli.Command) []string {
	var names []string
	for _, f := range of.Flags {
		names = append(names, slices.DeleteFunc(slices.Clone(f.Names()), func(name string) bool { return len(name) == 1 })...)
	}
	return names
}

// plainUsage says in our own words what the parser of the options said.
func plainUsage(said string) string {
	if option, ok := strings.CutPrefix(said, unknownOption); ok {
		return fmt.Sprintf("there is no option %q", strings.TrimLeft(option, "-"))
	}
	if option, ok := strings.CutPrefix(said, "bad flag syntax: "); ok {
		return fmt.Sprintf("there is no option %q", option)
	}
	if option, ok := strings.CutPrefix(said, "flag needs an argument: "); ok {
		return fmt.Sprintf("the option %q needs a value", strings.TrimLeft(option, "-"))
	}
	if rest, ok := strings.CutPrefix(said, "invalid boolean value "); ok {
		value, rest, _ := strings.Cut(rest, " for ")
		option, _, _ := strings.Cut(rest, ":")
		return fmt.Sprintf("the option %q does not take %s", strings.TrimLeft(option, "-"), value)
	}
	return said
}

// helpMisused says in our own words what is wrong with `sheet --help FILE`, which the
// parser takes for a question about a command called FILE.
func helpMisused(err error) error {
	if err == nil || !strings.HasPrefix(err.Error(), "No help topic for ") {
		return err
	}
	return misuse("--help stands by itself, without a file",
		"`tuckmark --help` shows every command, and `tuckmark sheet --help` what one of them takes")
}
