package main

import (
	"fmt"
	"io"
	"slices"
	"strings"
	"unicode"

	"github.com/urfave/cli/v2"

	"tuckmark/marking/fault"
	"tuckmark/marking/source"
	"tuckmark/marking/wording"
)

// Rules of this file: help answers with what a command takes, with what the guide says of a word
// of the file (a kind of table, a key, a word that a key is given, the heading of a section) or of
// the trade, and with what an option does.
// Nothing is said here that the guide, or a command, does not say itself.

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
				return sayAnswer(c.App.Writer, explained(readGuide()))
			}
			if name := commandNamed(c.App, func(name string) bool { return strings.EqualFold(name, word) }); name != "" {
				return cli.ShowCommandHelp(c, name)
			}
			guide := readGuide()
			answer := apart(answerOf(guide, word), optionsNamed(c.App, word))
			if name := commandNamed(c.App, alike(word)); answer == nil && name != "" {
				return cli.ShowCommandHelp(c, name)
			}
			if answer == nil {
				answer = inPart(guide, word)
			}
			if answer == nil {
				return unexplained(c.App, guide, word)
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

// mostSaid is to how many sections of the guide a reader is led at most, those that speak most of
// what was asked.
const mostSaid = 3

// unexplained says that a word is not known, and where the guide has it all the same.
func unexplained(app *cli.App, guide []guideSection, word string) error {
	known, said := helpWords(app, guide), speakOf(guide, word)
	for _, flags := range flagsOf(app) {
		for _, flag := range flags.all {
			known = append(known, flag.Names()...)
		}
	}
	for _, s := range guide {
		known = append(append(known, strings.ToLower(s.heading)), s.tradeWords()...)
	}
	hint := "`tuckmark help` lists all that is explained; of a name that you chose yourself ask for its kind: of [trim.\"neck lace\"], `tuckmark help trim`"
	if len(said) > 0 {
		hint = fmt.Sprintf("the guide speaks of it in %s: `tuckmark help %s`", wording.Listed(wording.QuotedFew(said), "and"), said[0])
	} else if near := wording.Nearest(word, known); near != "" {
		hint = wording.DidYouMean(near)
	}
	return misuse(wording.Quoted(word)+" is no command, no option and no word of the file", hint)
}

// speakOf are the headings of the sections that speak of a word outside their examples, those
// first that do so most: what they are about counts for several times.
func speakOf(guide []guideSection, word string) []string {
	const about = 5
	times := map[string]int{}
	var said []string
	for _, s := range guide {
		heading := strings.ToLower(s.heading)
		n := timesIn(strings.Join(s.spoken, " "), word)
		if slices.ContainsFunc(s.about, func(t guideTerm) bool { return hasWords(strings.Join(t.words, " "), word) }) {
			n += about
		}
		if n > 0 && times[heading] == 0 {
			said = append(said, heading)
		}
		times[heading] += n
	}
	slices.SortStableFunc(said, func(a, b string) int { return times[b] - times[a] })
	return said[:min(len(said), mostSaid)]
}

// timesIn is how many times a text has words, but for capitals, signs and the s of several.
func timesIn(text, words string) int {
	words = plainWords(words)
	if words == "" {
		return 0
	}
	// A space that ends one of them may begin the next.
	return strings.Count(" "+strings.ReplaceAll(plainWords(text), " ", "  ")+" ", " "+strings.ReplaceAll(words, " ", "  ")+" ")
}

// hasWords reports whether a text has words in it, but for capitals, signs and the s of several.
func hasWords(text, words string) bool { return timesIn(text, words) > 0 }

// helpWords are the single words that help explains, each once: commands, kinds of tables, keys.
func helpWords(app *cli.App, guide []guideSection) []string {
	var words []string
	for _, command := range app.Commands {
		words = append(words, command.Name)
	}
	for _, s := range guide {
		for _, word := range slices.Concat(s.kinds(), s.keyNames()) {
			if !slices.Contains(words, word) {
				words = append(words, word)
			}
		}
	}
	return words
}

// answerOf is what the guide says of a word; nil where it says nothing. A kind of table, or the
// heading of a section, is answered by the whole of that section; a key, and a word that a key is
// given, by what is said of it wherever it may stand.
func answerOf(guide []guideSection, word string) []string {
	if table, key, isPlace := placeOf(word); isPlace {
		if key == "" {
			return answerOf(guide, source.Kind(table))
		}
		if isTable(table, key) {
			return answerOf(guide, key)
		}
		return rowsOf(guide, func(under string, row guideRow) bool { return under == table && slices.Contains(row.keys, key) })
	}
	var answer []string
	first := slices.IndexFunc(guide, func(s guideSection) bool { return slices.ContainsFunc(s.kinds(), alike(word)) })
	if first < 0 {
		first = slices.IndexFunc(guide, func(s guideSection) bool { return alike(word)(s.heading) })
	}
	if first >= 0 {
		answer = guide[first].whole()
		guide = slices.Delete(slices.Clone(guide), first, first+1)
	}
	small := strings.ToLower(word)
	isKey := func(key string) bool { return key == small }
	if first < 0 && !hasKey(guide, small) {
		isKey = alike(word) // but for one or several
	}
	answer = apart(answer, rowsOf(guide, func(under string, row guideRow) bool {
		return alike(word)(source.Kind(under)) || row.gives(small) ||
			slices.ContainsFunc(row.keys, func(key string) bool { return isKey(key) && !isTable(under, key) })
	}))
	return apart(answer, besides(guide, alike(word)))
}

// shortestPart is how many letters a word has at least by which a section is found that has it in
// its heading: shorter ones are those of every sentence.
const shortestPart = 4

// inPart are the sections that have a word among others in their headings, or what the guide says
// of a thing that has it among others in its name; nil where these are more than mostSaid.
func inPart(guide []guideSection, word string) []string {
	if len(plainWords(word)) < shortestPart {
		return nil
	}
	var answer []string
	found := 0
	for _, s := range guide {
		if hasWords(s.heading, word) {
			answer = apart(answer, s.whole())
			found++
		}
	}
	if found > mostSaid {
		return nil
	}
	if found > 0 {
		return answer
	}
	return besides(guide, func(other string) bool { return hasWords(other, word) })
}

// hasKey reports whether a section has a row for a key.
func hasKey(guide []guideSection, key string) bool {
	return slices.ContainsFunc(guide, func(s guideSection) bool { return slices.Contains(s.keyNames(), key) })
}

// gives reports whether a row has this word, in quotes, as one that its keys are given. What is part
// of an example still has its backquotes.
func (row guideRow) gives(word string) bool {
	for i, part := range strings.Split(row.says, "`") {
		if i%2 == 0 && word != "" && strings.Contains(part, `"`+word+`"`) {
			return true
		}
	}
	return false
}

// besides are the rows of words of the trade, and the paragraphs, that are about a word.
func besides(guide []guideSection, wanted func(string) bool) []string {
	var answer []string
	for _, s := range guide {
		cells := [][]string{{s.heading}}
		for _, row := range s.trade {
			if slices.ContainsFunc(row.keys, wanted) {
				cells = append(cells, []string{strings.Join(row.keys, ", "), row.says})
			}
		}
		if len(cells) > 1 {
			answer = apart(answer, tableLines(cells, guideWidth))
		}
		for _, term := range s.about {
			if slices.ContainsFunc(term.words, wanted) {
				answer = append(apart(answer, []string{s.heading + ":"}), term.lines...)
			}
		}
	}
	return answer
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
			if !slices.ContainsFunc(flag.Names(), alike(name)) {
				continue
			}
			row := [2]string{typedNames(flag), plainKeys(flag.(cli.DocGenerationFlag).GetUsage())}
			if of[row] == nil {
				does = append(does, row)
			}
			of[row] = append(of[row], flags.of)
		}
	}
	var answer []string
	for _, row := range does {
		rows := [][]string{{"Options of " + wording.Listed(of[row], "and")}, row[:]}
		answer = apart(answer, tableLines(rows, guideWidth))
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

// apart puts a blank line between two parts of an answer.
func apart(before, part []string) []string {
	if len(before) > 0 && len(part) > 0 {
		before = append(before, "")
	}
	return append(before, part...)
}

// rowsOf is what sections say of some keys, which may stand under some tables of the file. A row
// that does no more than send a reader on is left out.
func rowsOf(guide []guideSection, wanted func(under string, row guideRow) bool) []string {
	var answer []string
	for _, s := range guide {
		for _, k := range s.keys {
			rows := slices.DeleteFunc(slices.Clone(k.rows), func(row guideRow) bool {
				return strings.HasPrefix(row.says, "see ") || !wanted(k.under, row)
			})
			if len(rows) > 0 {
				answer = apart(answer, k.lines(s.heading, rows))
			}
		}
	}
	return answer
}

// placeOf takes apart what messages call a place, "piece.front.tuck.yoke.first": its table, as
// source calls it, and the key in it, "" where the whole of the table is meant.
func placeOf(word string) (table, key string, isPlace bool) {
	if !strings.Contains(word, ".") {
		return "", "", false
	}
	if table, known := source.TableNamed(word); known {
		return table, "", true
	}
	key = fault.Place{Key: word}.Last()
	table, known := source.TableNamed(strings.TrimSuffix(strings.TrimSuffix(word, key), "."))
	return table, key, known
}

// isTable reports whether a key of a table of the file is a table itself, as edge is in a piece.
func isTable(under, key string) bool {
	at := fault.Place{Key: under}.Under(key)
	_, alone := source.TableNamed(at.Key)
	_, named := source.TableNamed(at.Under("NAME").Key)
	return alone || named
}

// kinds are the words for the tables of the file whose keys a section explains.
func (s guideSection) kinds() []string {
	var all []string
	for _, k := range s.keys {
		if kind := source.Kind(k.under); kind != "" && !slices.Contains(all, kind) {
			all = append(all, kind)
		}
	}
	return all
}

// alike tells words that are the same as this one, but for capitals and for one or several.
func alike(word string) func(string) bool {
	word = plainWords(word)
	return func(other string) bool { return other != "" && plainWords(other) == word }
}

// plainWords are the words of a text without capitals, signs and the s of several.
func plainWords(text string) string {
	words := strings.FieldsFunc(strings.ToLower(text), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
	for i, word := range words {
		if len(word) > 2 {
			words[i] = strings.TrimSuffix(word, "s")
		}
	}
	return strings.Join(words, " ")
}
