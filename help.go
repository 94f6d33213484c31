package main

import (
	"embed"
	"fmt"
	"io"
	"io/fs"
	"slices"
	"strings"

	"github.com/urfave/cli/v2"

	"tuckmark/marking/guide"
	"tuckmark/marking/wording"
)

// Rules of this file: help answers with what a command takes, with what the guide says of a word
// of the file (a kind of table, a key, a word that a key is given, the heading of a section) or of
// the trade, and with what an option does.
// Nothing is said here that the guide, or a command, does not say itself.

//go:embed examples/guide/*.md
var guideFiles embed.FS

// guideFolder is where the pages of the guide lie.
const guideFolder = "examples/guide"

// readGuide returns the guide, the page on the file first.
func readGuide() guide.Guide {
	pages, err := fs.Sub(guideFiles, guideFolder)
	if err != nil {
		return nil // the name of the folder is one, which it is
	}
	return guide.Read(pages)
}

// wordsHint ends the help of every command.
const wordsHint = "`tuckmark help WORD` explains a word of the file, such as tuck or hem"

const helpName = "help"

func helpCommand() *cli.Command {
	return &cli.Command{
		Name:      helpName,
		Usage:     "explain a command, or a word of the file, such as tuck or hem",
		UsageText: "tuckmark help [WORD]",
		Action: func(c *cli.Context) error {
			word := asked(c.Args().Slice())
			if word == "" {
				if err := cli.ShowAppHelp(c); err != nil {
					return err
				}
				return sayAnswer(c.App.Writer, readGuide().Explained())
			}
			if name := commandNamed(c.App, func(name string) bool { return strings.EqualFold(name, word) }); name != "" {
				return cli.ShowCommandHelp(c, name)
			}
			pages := readGuide()
			answer := guide.Apart(pages.Answer(word), optionsNamed(c.App, word))
			if name := commandNamed(c.App, guide.Alike(word)); answer == nil && name != "" {
				return cli.ShowCommandHelp(c, name)
			}
			if answer == nil {
				answer = pages.InPart(word)
			}
			if answer == nil {
				return unexplained(c.App, pages, word)
			}
			return sayAnswer(c.App.Writer, answer)
		},
	}
}

// commandNamed is the name of the first command whose name is wanted; "" where none is.
func commandNamed(app *cli.App, wanted func(string) bool) string {
	for _, command := range app.Commands {
		if wanted(command.Name) {
			return command.Name
		}
	}
	return ""
}

// withWordsHint ends the help of the program and of its commands with how words are explained.
func withWordsHint(app *cli.App) {
	app.CustomAppHelpTemplate = cli.AppHelpTemplate + "\n" + wordsHint + "\n"
	for _, command := range app.Commands {
		command.CustomHelpTemplate = cli.CommandHelpTemplate + "\n" + wordsHint + "\n"
	}
}

// sayAnswer prints lines.
func sayAnswer(to io.Writer, lines []string) error {
	return writeOut(to, "the answer", []byte(strings.Join(lines, "\n")+"\n"))
}

// asked is the word that is asked for, without the brackets that it may have in the file, or the
// dashes of an option.
func asked(words []string) string {
	word := strings.Join(strings.Fields(strings.Join(words, " ")), " ")
	return strings.TrimLeft(strings.Trim(word, "[]"), "-")
}

// unexplained says that a word is not known, and where the guide has it all the same.
func unexplained(app *cli.App, pages guide.Guide, word string) error {
	known, said := helpWords(app, pages), pages.SpeakOf(word)
	for _, flags := range flagsOf(app) {
		for _, flag := range flags.all {
			known = append(known, flag.Names()...)
		}
	}
	known = append(known, pages.Names()...)
	hint := "`tuckmark help` lists all that is explained; of a name that you chose yourself ask for its kind: of [trim.\"neck lace\"], `tuckmark help trim`"
	if len(said) > 0 {
		hint = fmt.Sprintf("the guide speaks of it in %s: `tuckmark help %s`", wording.Listed(wording.QuotedFew(said), "and"), said[0])
	} else if near := wording.Nearest(word, known); near != "" {
		hint = wording.DidYouMean(near)
	}
	return misuse(wording.Quoted(word)+" is no command, no option and no word of the file", hint)
}

// helpWords are the single words that help explains, each once: commands, kinds of tables, keys.
func helpWords(app *cli.App, pages guide.Guide) []string {
	var words []string
	for _, command := range app.Commands {
		words = append(words, command.Name)
	}
	for _, word := range pages.Words() {
		if !slices.Contains(words, word) {
			words = append(words, word)
		}
	}
	return words
}

// flagGroup are the options of a command, or of the program.
type flagGroup struct {
	of  string
	all []cli.Flag
}

// flagsOf are all options, those of the program first. The parser gives help to each command as
// well; it is told once.
func flagsOf(app *cli.App) []flagGroup {
	all := []flagGroup{{app.Name, app.Flags}}
	for _, command := range app.Commands {
		own := slices.DeleteFunc(slices.Clone(command.Flags), func(flag cli.Flag) bool { return flag.Names()[0] == helpName })
		all = append(all, flagGroup{command.Name, own})
	}
	return all
}

// optionsNamed is what an option of this name, or of this letter, does, and of which commands it is
// one; nil where none has it.
func optionsNamed(app *cli.App, name string) []string {
	of := map[[2]string][]string{} // the commands, by what the option is called and does there
	var does [][2]string
	for _, flags := range flagsOf(app) {
		for _, flag := range flags.all {
			if !slices.ContainsFunc(flag.Names(), guide.Alike(name)) {
				continue
			}
			row := [2]string{typedNames(flag), guide.PlainKeys(flag.(cli.DocGenerationFlag).GetUsage())}
			if of[row] == nil {
				does = append(does, row)
			}
			of[row] = append(of[row], flags.of)
		}
	}
	var answer []string
	for _, row := range does {
		rows := [][]string{{"Options of " + wording.Listed(of[row], "and")}, row[:]}
		answer = guide.Apart(answer, guide.Table(rows, guide.Width))
	}
	return answer
}

// typedNames are the names of an option with their dashes: "--output, -o".
func typedNames(flag cli.Flag) string {
	var typed []string
	for _, name := range flag.Names() {
		dashes := "--"
		if len(name) == 1 {
			dashes = "-"
		}
		typed = append(typed, dashes+name)
	}
	return strings.Join(typed, ", ")
}
