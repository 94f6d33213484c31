package guide

import (
	"errors"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/marking/fault"
	"tuckmark/marking/source"
)

// readGuide is the guide as it lies with the program.
func readGuide() Guide { return Read(os.DirFS("../../examples/guide")) }

// guideSays are the keys that the guide has a row for under a table of the file.
func guideSays(guide Guide, under string) []string {
	var keys []string
	for _, s := range guide {
		s.keys = slices.DeleteFunc(slices.Clone(s.keys), func(k keyTable) bool { return k.under != under })
		keys = append(keys, s.keyNames()...)
	}
	return keys
}

// The guide says something of every key that a table of the file may have, and of none that it
// may not have.
func TestGuideHasEveryKey(t *testing.T) {
	guide, known := readGuide(), map[string][]string{}
	for _, table := range source.Tables() {
		known[table.Name] = append(known[table.Name], table.Keys...)
	}
	for name, keys := range known {
		slices.Sort(keys)
		said := guideSays(guide, name)
		slices.Sort(said)
		assert.Equal(t, slices.Compact(keys), slices.Compact(said), "keys of [%s], and those that the guide has rows for", name)
	}
}

// withChoice are the keys that have the choice of one word of a few: those of the types in
// marking/source/choice.go, some of which two keys have, and the unit.
var withChoice = []string{
	"unit",
	"piece.NAME.drawn", "piece.NAME.drawn-to", "piece.NAME.print",
	"piece.NAME.tuck.NAME.press", "piece.NAME.pleat.NAME.press",
	"piece.NAME.tuck.NAME.end", "piece.NAME.pleat.NAME.end",
	"piece.NAME.tuck.NAME.sewn", "piece.NAME.pleat.NAME.kind", "piece.NAME.pleat.NAME.run",
	"piece.NAME.line.NAME.kind",
	"trim.NAME.kind", "trim.NAME.lies", "binding.NAME.fold",
}

// Where a key has the choice of a few words, its row has all of them.
func TestGuideHasEveryChoice(t *testing.T) {
	guide, choices := readGuide(), []string(nil)
	for _, table := range source.Tables() {
		for _, key := range table.Keys {
			words := choicesOf(table, key)
			if words == nil {
				continue
			}
			choices = append(choices, strings.TrimPrefix(table.Name+"."+key, "."))
			said := ""
			for _, s := range guide {
				for _, k := range s.keys {
					for _, row := range k.rows {
						if k.under == table.Name && slices.Contains(row.keys, key) {
							said += row.says
						}
					}
				}
			}
			for _, word := range words {
				assert.Contains(t, said, word, "what the guide says of %s in [%s]", key, table.Name)
			}
		}
	}
	assert.ElementsMatch(t, withChoice, choices, "keys that have a choice of words; choicesOf knows them by a hint that begins with \"write \"")
}

// choicesOf are the words, in quotes, that a key may be given, as a message lists them; nil where
// it is given anything else.
func choicesOf(table source.Table, key string) []string {
	text := key + " = \"no such word\"\n"
	if slices.Contains(table.Keys, "toward") || !slices.Contains(table.Keys, "beside") {
		text = "[" + strings.ReplaceAll(table.Name, "NAME", "x") + "]\n" + text
	} else {
		text = "[" + strings.ReplaceAll(table.Name, "NAME", "x") + "]\nbeside = \"x\"\n" + text
	}
	if table.Name == "" {
		text = key + " = \"no such word\"\n"
	}
	_, err := source.Read("x.toml", []byte(text), func(rune) bool { return true })
	var all fault.List
	if !errors.As(err, &all) {
		return nil
	}
	for _, f := range all {
		if f.Place.Last() == key && strings.Contains(f.Cause, "no such word") && strings.HasPrefix(f.Hint, "write ") {
			return quotedWord.FindAllString(f.Hint, -1)
		}
	}
	return nil
}

var quotedWord = regexp.MustCompile(`"[a-z ]+"`)

// Pleats of two kinds have one name in the file and different keys: each kind has a table of its
// own in the guide.
func TestGuideTellsPleatsApart(t *testing.T) {
	var said [][]string
	for _, s := range readGuide() {
		for _, k := range s.keys {
			if k.under != "piece.NAME.pleat.NAME" {
				continue
			}
			var keys []string
			for _, row := range k.rows {
				keys = append(keys, row.keys...)
			}
			slices.Sort(keys)
			said = append(said, keys)
		}
	}
	for _, table := range source.Tables() {
		if table.Name == "piece.NAME.pleat.NAME" {
			slices.Sort(table.Keys)
			assert.Contains(t, said, table.Keys)
		}
	}
	assert.Len(t, said, 2)
}

// Each row says something, and help finds each key and the kind of each table.
func TestHelpAnswersEveryWord(t *testing.T) {
	guide := readGuide()
	for _, table := range source.Tables() {
		if kind := source.Kind(table.Name); kind != "" {
			assert.NotEmpty(t, guide.Answer(kind), kind)
		}
		for _, key := range table.Keys {
			answer := strings.Join(guide.Answer(key), "\n")
			assert.Contains(t, answer, key)
		}
	}
	for _, s := range guide {
		assert.NotEmpty(t, guide.Answer(s.heading), s.heading)
		for _, k := range s.keys {
			for _, row := range k.rows {
				assert.NotEmpty(t, row.keys, "a row of %s, %s", s.heading, k.shown)
				assert.NotEmpty(t, row.says, "%q of %s", row.keys, s.heading)
			}
		}
	}
}

// isFileLine tells a line of the file among examples.
var isFileLine = regexp.MustCompile(`^ +[a-z-]+ = |^ +\[[a-z]`)

// No line that help prints of the guide is wider than a screen.
func TestHelpIsAsWideAsAScreen(t *testing.T) {
	guide := readGuide()
	for _, s := range guide {
		for _, line := range s.whole() {
			// Only what a program prints may be wider, as it stands.
			if !strings.HasPrefix(line, exampleIndent) || isFileLine.MatchString(line) {
				assert.LessOrEqual(t, utf8.RuneCountInString(line), 80, "%s: %s", s.heading, line)
			}
		}
	}
	for _, s := range guide {
		for _, term := range s.about {
			for _, line := range term.lines {
				assert.LessOrEqual(t, utf8.RuneCountInString(line), 80, line)
			}
		}
	}
	for _, line := range guide.Explained() {
		assert.LessOrEqual(t, utf8.RuneCountInString(line), 80, line)
	}
}

// Markdown is printed as plain text: without links, stresses and pictures, examples as they are.
func TestPageAsText(t *testing.T) {
	sections := readPage([]byte(strings.Join([]string{
		"What stands above all headings is no section.",
		"# Hems and *allowances*",
		"See [the **first** one](#tucks), and `turn` too; a length of 3 1/8 in stays whole, as far as the line goes on.",
		"",
		"![a picture](x.png)",
		"",
		"```toml",
		"[piece.front]  # [no link](here)",
		"```",
		"",
		"- one",
		"  and more",
		"- two",
		"",
		"3. three",
		"4. four",
		"",
		"| under `[piece.front.edge.hem]` | what it says |",
		"|---|---|",
		"| `hem`, `turn` | how *deep*: see [lengths](#lengths) |",
		"| `a-very-long-key-that-is-one` | by itself |",
		"",
		"| no key | at all |",
		"|---|---|",
		"| `one` | two |",
	}, "\n")))
	require.Len(t, sections, 1)
	assert.Equal(t, strings.TrimPrefix(`
Hems and allowances
-------------------

See the first one, and `+"`turn`"+` too; a length of 3 1/8 in stays whole, as far as
the line goes on.

    [piece.front]  # [no link](here)

- one and more
- two

3. three
4. four

under [piece.front.edge.hem]:
  hem, turn  how deep: see lengths
  a-very-long-key-that-is-one
             by itself

no key:
  one  two`, "\n"), strings.Join(sections[0].whole(), "\n"))
	require.Len(t, sections[0].keys, 1)
	assert.Equal(t, "piece.NAME.edge.NAME", sections[0].keys[0].under)
	assert.Equal(t, []keyRow{{[]string{"hem", "turn"}, "how deep: see lengths"}, {[]string{"a-very-long-key-that-is-one"}, "by itself"}}, sections[0].keys[0].rows)
}

// Each word that a key may be given is answered by the row of that key.
func TestHelpAnswersEveryChoice(t *testing.T) {
	guide := readGuide()
	for _, table := range source.Tables() {
		for _, key := range table.Keys {
			for _, word := range choicesOf(table, key) {
				answer := strings.Join(guide.Answer(strings.Trim(word, `"`)), "\n")
				assert.Regexp(t, `(?m)^  (\S+, )*`+key+`(,| )`, answer, "help %s", word)
				assert.Contains(t, strings.Join(strings.Fields(answer), " "), word)
			}
		}
	}
}

// Each word of the trade is answered, by itself and as several; of none of them a message says that
// another word may have been meant, where a piece has it for a kind of its own.
func TestHelpAnswersWordsOfTheTrade(t *testing.T) {
	guide, words := readGuide(), 0
	for _, s := range guide {
		for _, row := range s.trade {
			for _, word := range row.keys {
				words++
				for _, asked := range []string{word, strings.TrimSuffix(word, "s") + "s", strings.ToUpper(word)} {
					assert.Contains(t, strings.Join(guide.Answer(asked), "\n"), word, "help %s", asked)
				}
			}
		}
	}
	assert.Greater(t, words, 40)
	for _, word := range []string{"placket", "slash", "slit", "vent", "opening", "facing", "dart", "casing", "pocket", "button", "buttonhole"} {
		assert.Contains(t, strings.Join(guide.Answer(word), "\n"), word, "help %s", word)
		_, err := source.Read("x.toml", []byte("[piece.a."+word+".b]\n"), func(rune) bool { return true })
		assert.ErrorContains(t, err, "is the hem of that edge (hem, turn); what lies or is cut within the piece is a line: write [piece.a.line."+word+"]")
	}
}

// A key that has a paragraph about it is answered by that as well as by its row.
func TestHelpHasWhatIsSaidAboutAKey(t *testing.T) {
	for _, word := range []string{"hem", "Hem", "hems"} {
		answer := strings.Join(readGuide().Answer(word), "\n")
		assert.Contains(t, answer, "  hem  instead of an allowance", word)
		assert.Contains(t, answer, "  A hem is folded at its `turn`, and again at `turn` and `hem` together", word)
	}
}

// A part of a heading finds its section; a word of every sentence finds none, nor does one that
// many headings have.
func TestPartOfAHeading(t *testing.T) {
	guide := Guide(readPage([]byte("# The rose, a rose\n# Rose and lily\n# Lily\n# Lilies, lily\n# One lily\n")))
	assert.Equal(t, []string{"The rose, a rose", "----------------", "", "", "Rose and lily", "-------------", ""}, guide.InPart("Roses"))
	for _, word := range []string{"a", "the", "and", "lily", "peony"} {
		assert.Nil(t, guide.InPart(word), word)
	}
}

// Sections that speak of a word are named in the order of how much they do: not for their examples,
// and for a paragraph about it more than for a word by the way.
func TestSectionsThatSpeakOfAWord(t *testing.T) {
	guide := Guide(readPage([]byte(strings.Join([]string{
		"# Once", "A lily grows.", "# Example", "```toml", "name = \"lily\"", "```",
		"# Thrice", "Of lilys: lily, lily.", "# About", "- Here: **a lily**.", "# Twice", "| lily |", "|---|", "| a lily |",
		"# Never", "A lilywhite pond.",
	}, "\n"))))
	assert.Equal(t, []string{"about", "thrice", "twice"}, guide.SpeakOf("Lily"))
	assert.Equal(t, []string{"never"}, guide.SpeakOf("lilywhite pond"))
	assert.Empty(t, guide.SpeakOf("name"))
	assert.Empty(t, guide.SpeakOf("..."))
}
