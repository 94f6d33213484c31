package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"maps"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Rules of this file: the README and each page of the guide are followed from top to bottom, as a
// maker would, in a folder of their own, in which the examples lie, and orchard.toml as the guide
// to the file builds it up (there it grows with the page). What a fence says behind its backticks
// is what is done with it:
//
//	toml              goes on with orchard.toml, which can be drawn as far as it has come
//	toml NAME.toml    is a file by itself that can be drawn
//	toml wrong        spoils orchard.toml until the next command: lines of one of its tables
//	svg NAME.svg      is a drawing
//	sh                commands, one on a line, that run and say that all is well
//	sh fails          commands that run and say that it is not
//	text, json        all that the command before it prints; a line of three dots alone stands
//	                  for any lines
//	text NAME         all that a file has which was made, in the same way
//
// There are no others, so that nothing stands on a page that is not run.

// filePage is the page that builds up orchard.toml.
const filePage = guideFolder + "/file.md"

// guidePages are the README and the pages of the guide.
func guidePages(t *testing.T) []string {
	t.Helper()
	pages, err := filepath.Glob(guideFolder + "/*.md")
	require.NoError(t, err)
	require.Contains(t, pages, filePage)
	return append([]string{"README.md"}, pages...)
}

// A fence is a fenced block of a page: what it says of itself, its text, and the line of the page
// on which it begins.
type fence struct {
	kind, text string
	line       int
}

func fences(t *testing.T, page string) []fence {
	t.Helper()
	data, err := os.ReadFile(page)
	require.NoError(t, err)
	var all []fence
	open := false
	for i, line := range strings.SplitAfter(string(data), "\n") {
		switch kind, isFence := strings.CutPrefix(line, "```"); {
		case isFence && !open:
			all = append(all, fence{kind: strings.TrimSpace(kind), line: i + 1})
			open = true
		case isFence:
			open = false
		case open:
			all[len(all)-1].text += line
		}
	}
	require.False(t, open, "every fence of %s is closed", page)
	return all
}

// A follower is a maker at a page: her orchard.toml as far as it has come, the command that she
// typed last, and what it printed.
type follower struct {
	t       *testing.T
	orchard string
	command string
	printed string
}

func (f *follower) do(b fence) {
	kind, name, _ := strings.Cut(b.kind, " ")
	switch {
	case kind == "toml" && name == "":
		f.orchard += b.text
		f.draws("orchard.toml", f.orchard)
	case kind == "toml" && name == "wrong":
		spoiled, err := spoil(f.orchard, b.text)
		require.NoError(f.t, err, "line %d", b.line)
		require.NoError(f.t, os.WriteFile("orchard.toml", []byte(spoiled), 0o644))
	case kind == "toml":
		f.draws(name, b.text)
	case kind == "svg" && name != "":
		require.NoError(f.t, os.WriteFile(name, []byte(b.text), 0o644))
	case kind == "sh" && (name == "" || name == "fails"):
		for line := range strings.Lines(b.text) {
			f.types(strings.TrimSpace(line), name == "")
		}
		if name == "fails" && f.orchard != "" {
			require.NoError(f.t, os.WriteFile("orchard.toml", []byte(f.orchard), 0o644))
		}
	case (kind == "text" || kind == "json") && name == "":
		assert.Regexp(f.t, shown(b.text), f.printed, "what %s prints, and what line %d says that it does", f.command, b.line)
	case kind == "text":
		made, err := os.ReadFile(name)
		require.NoError(f.t, err)
		assert.Regexp(f.t, shown(b.text), string(made), "what %s has, and what line %d says that it does", name, b.line)
	default:
		f.t.Errorf("line %d: nothing is known to be done with a fence of %q", b.line, b.kind)
	}
}

// draws leaves a file in the folder that can be drawn.
func (f *follower) draws(name, text string) {
	require.NoError(f.t, os.WriteFile(name, []byte(text), 0o644))
	_, err := readPattern(name, "")
	assert.NoError(f.t, err, "%s as far as\n%s", name, text[max(0, len(text)-200):])
}

// types runs one command.
func (f *follower) types(line string, well bool) {
	if line == "go test ./..." {
		return // that is what runs now
	}
	words := typed(strings.Replace(line, "go run .", "tuckmark", 1))
	require.Equal(f.t, "tuckmark", words[0], line)
	command := run
	if words[1] == "look" && !slices.Contains(words, "--help") {
		command = runLook
	}
	var said bytes.Buffer
	assert.Equal(f.t, well, command(words, &said, &said) == 0, "%s\n%s", line, said.String())
	f.command, f.printed = line, said.String()
}

// spoil gives a file other lines in one of its tables: text is the heading of the table and the
// lines, each of a key that stands there.
func spoil(file, text string) (string, error) {
	heading, lines, _ := strings.Cut(text, "\n")
	before, table, found := strings.Cut(file, heading+"\n")
	if !found {
		return "", fmt.Errorf("the file has no %s", heading)
	}
	rest := ""
	if end := strings.Index(table, "\n["); end >= 0 {
		table, rest = table[:end+1], table[end+1:]
	}
	for line := range strings.Lines(lines) {
		key, _, _ := strings.Cut(line, "=")
		was := regexp.MustCompile(`(?m)^` + regexp.QuoteMeta(key) + `=.*\n`)
		if !was.MatchString(table) {
			return "", fmt.Errorf("%s has no %s", heading, key)
		}
		table = was.ReplaceAllLiteralString(table, line)
	}
	return before + heading + "\n" + table + rest, nil
}

// shown is what must be printed by a page that shows this text.
func shown(text string) *regexp.Regexp {
	parts := strings.Split("\n"+text, "\n...\n")
	for i, part := range parts {
		parts[i] = regexp.QuoteMeta(part)
	}
	return regexp.MustCompile(`\A` + strings.TrimPrefix(strings.Join(parts, "\n(?:.*\n)*"), "\n") + `\z`)
}

// typed takes a command line apart; what is in quotes is one word.
func typed(line string) []string {
	var words []string
	for i, part := range strings.Split(line, `"`) {
		if i%2 == 1 {
			words = append(words, part)
		} else {
			words = append(words, strings.Fields(part)...)
		}
	}
	return words
}

// runLook runs a command that goes on until it is told to end, and ends it as Ctrl-C does as soon
// as it has said where it shows the file. No browser is opened.
func runLook(words []string, out, errs io.Writer) int {
	self, err := os.FindProcess(os.Getpid())
	if err != nil {
		return statusFault
	}
	return run(append(words, "--no-browser"), writerFunc(func(said []byte) (int, error) {
		if bytes.Contains(said, []byte("http://127.0.0.1:")) {
			if err := self.Signal(os.Interrupt); err != nil {
				return 0, err
			}
		}
		return out.Write(said)
	}), errs)
}

// writerFunc is a function that is written to.
type writerFunc func([]byte) (int, error)

func (f writerFunc) Write(said []byte) (int, error) { return f(said) }

func TestGuide(t *testing.T) {
	inAnotherStep(t)
	root, err := os.Getwd()
	require.NoError(t, err)
	built := fences(t, filePage)
	for _, page := range guidePages(t) {
		t.Run(page, func(t *testing.T) {
			blocks := fences(t, page)
			t.Chdir(t.TempDir())
			require.NoError(t, os.CopyFS("examples", os.DirFS(filepath.Join(root, "examples"))))
			f := &follower{t: t}
			if page != filePage {
				for _, b := range built {
					if kind, _, _ := strings.Cut(b.kind, " "); b.kind == "toml" || kind == "svg" {
						f.do(b)
					}
				}
			}
			for _, b := range blocks {
				f.do(b)
			}
		})
	}
}

// A page that is untrue is found.
func TestFollowerMinds(t *testing.T) {
	for _, c := range []struct {
		page, printed string
		like          bool
	}{
		{"one\ntwo\n", "one\ntwo\n", true},
		{"one\n", "one\ntwo\n", false},
		{"two\n", "one\ntwo\n", false},
		{"one\n...\n", "one\ntwo\nthree\n", true},
		{"...\nthree\n", "one\ntwo\nthree\n", true},
		{"...\ntwo\n...\n", "one\ntwo\nthree\n", true},
		{"...\ntwo\n...\n", "one\nnot two\nthree\n", false},
		{"...\ntwo\n", "one\ntwo\nthree\n", false},
		{"one\n...\nthree\n", "one\nthree\n", true},
		{"1.5 (in)\n", "1x5 (in)\n", false},
		{"", "one\n", false},
	} {
		assert.Equal(t, c.like, shown(c.page).MatchString(c.printed), "%q shown of %q", c.page, c.printed)
	}
	const file = "[a]\nx = 1\ny = 2\n\n[b]\nx = 1\n"
	for lines, spoiled := range map[string]string{
		"[a]\nx = 3\n": "[a]\nx = 3\ny = 2\n\n[b]\nx = 1\n",
		"[b]\nx = 3\n": "[a]\nx = 1\ny = 2\n\n[b]\nx = 3\n",
		"[b]\ny = 3\n": "",
		"[c]\nx = 3\n": "",
	} {
		got, err := spoil(file, lines)
		assert.Equal(t, spoiled, got)
		assert.Equal(t, spoiled == "", err != nil, lines)
	}
}

// The README is read at one sitting; what is longer stands in the guide.
func TestReadmeIsShort(t *testing.T) {
	data, err := os.ReadFile("README.md")
	require.NoError(t, err)
	assert.LessOrEqual(t, bytes.Count(data, []byte("\n")), 250, "lines of the README")
}

// A command or an option that a page names in a sentence is one; the README has all commands.
func TestGuideNames(t *testing.T) {
	commands, options := []string{}, []string{"--help", "--version"}
	for _, command := range newApp(io.Discard, io.Discard).Commands {
		commands = append(commands, command.Name)
		for _, flag := range command.Flags {
			options = append(options, "--"+flag.Names()[0])
		}
	}
	for _, page := range guidePages(t) {
		data, err := os.ReadFile(page)
		require.NoError(t, err)
		named := map[string]bool{}
		for _, code := range regexp.MustCompile("`[^`\n]+`").FindAllString(string(data), -1) {
			words := strings.Fields(strings.Trim(code, "`"))
			if len(words) > 1 && words[0] == "tuckmark" && !strings.HasPrefix(words[1], "-") {
				assert.Contains(t, commands, words[1], "%s has %s", page, code)
				named[words[1]] = true
			}
			for _, word := range words {
				if strings.HasPrefix(word, "--") {
					assert.Contains(t, options, word, "%s has %s", page, code)
				}
			}
		}
		if page == "README.md" {
			assert.ElementsMatch(t, commands, slices.Collect(maps.Keys(named)), "commands of the program, and those the README names")
		}
	}
}

// The guide has every option of every command once, and no other.
func TestGuideOptions(t *testing.T) {
	page, err := os.ReadFile(guideFolder + "/printing.md")
	require.NoError(t, err)
	_, table, found := strings.Cut(string(page), "\n## Options\n")
	require.True(t, found)
	told := map[string][]string{}
	for line := range strings.Lines(table) {
		cells := strings.Split(line, " | ")
		options := regexp.MustCompile("`-+([a-z-]+)`").FindAllStringSubmatch(cells[0], -1)
		if len(options) == 0 || len(cells) < 3 {
			continue
		}
		for _, command := range strings.Split(cells[1], ", ") {
			for _, option := range options {
				told[command] = append(told[command], option[1])
			}
		}
	}
	assert.ElementsMatch(t, []string{"h", "help"}, told["every command"])
	for _, command := range newApp(io.Discard, io.Discard).Commands {
		var known []string
		for _, flag := range command.Flags {
			if names := flag.Names(); names[0] != "help" {
				known = append(known, names...)
			}
		}
		assert.ElementsMatch(t, known, told[command.Name], "options of %s, and those of the guide", command.Name)
	}
}

// The guide has every key of the figures as data, where it stands, and no other.
func TestGuideData(t *testing.T) {
	files := append(examples(t), filepath.Join(t.TempDir(), "orchard.toml"))
	var orchard strings.Builder
	for _, b := range fences(t, filePage) {
		kind, name, _ := strings.Cut(b.kind, " ")
		if b.kind == "toml" {
			orchard.WriteString(b.text)
		} else if kind == "svg" {
			require.NoError(t, os.WriteFile(filepath.Join(filepath.Dir(files[len(files)-1]), name), []byte(b.text), 0o644))
		}
	}
	require.NoError(t, os.WriteFile(files[len(files)-1], []byte(orchard.String()), 0o644))
	// Pleats that end on the piece, and a ruffle round a corner, which none of those has.
	files = append(files, filepath.Join(t.TempDir(), "apron.toml"))
	require.NoError(t, os.WriteFile(files[len(files)-1], []byte(`
unit = "in"
allowance = "1/4"
piece.apron.rectangle = [20, 10]
piece.apron.pleat.waist = {beside = "left", depth = 1, first = 4, below = "top", length = 3}
ruffle.rim = {along = ["apron.bottom", "apron.right"], fullness = 2, depth = 2}
`), 0o644))
	given := map[string]bool{}
	for _, file := range files {
		var out, errs bytes.Buffer
		require.Equal(t, 0, run([]string{"tuckmark", "figures", "--json", file}, &out, &errs), errs.String())
		var data map[string]any
		require.NoError(t, json.Unmarshal(out.Bytes(), &data))
		dataKeys(given, "", data)
	}
	page, err := os.ReadFile(guideFolder + "/scripts.md")
	require.NoError(t, err)
	told, under := map[string]bool{}, []string(nil)
	code := regexp.MustCompile("`([^`]+)`")
	for line := range strings.Lines(string(page)) {
		switch first, _, _ := strings.Cut(strings.TrimPrefix(line, "| "), " |"); {
		case !strings.HasPrefix(line, "|"):
			under = nil
		case first == "of the whole":
			under = []string{""}
		case strings.HasPrefix(first, "of `"):
			for _, part := range code.FindAllStringSubmatch(first, -1) {
				under = append(under, part[1]+".")
			}
		default:
			for _, key := range code.FindAllStringSubmatch(first, -1) {
				for _, where := range under {
					assert.False(t, told[where+key[1]], "%s is told twice", where+key[1])
					told[where+key[1]] = true
				}
			}
		}
	}
	for key := range given {
		assert.True(t, told[key], "the guide does not say what %s holds", key)
	}
	for key := range told {
		assert.True(t, given[key], "the guide has %s, which no file gives", key)
	}
}

// dataKeys collects the keys of what was read from data, each behind those it stands under; of a
// length there are none.
func dataKeys(all map[string]bool, under string, value any) {
	switch value := value.(type) {
	case []any:
		for _, one := range value {
			dataKeys(all, strings.TrimSuffix(under, ".")+"[].", one)
		}
	case map[string]any:
		if _, isLength := value["printed"]; isLength {
			return
		}
		for key, one := range value {
			all[under+key] = true
			dataKeys(all, under+key+".", one)
		}
	}
}

// The names that the guide has for lines of an SVG are there.
func TestGuideSVGNames(t *testing.T) {
	svg := filepath.Join(t.TempDir(), "pinafore.svg")
	var out, errs bytes.Buffer
	require.Equal(t, 0, run([]string{"tuckmark", "sheet", "--transfer", "trace,template", "-o", svg, "examples/pinafore.toml"}, &out, &errs), errs.String())
	data, err := os.ReadFile(svg)
	require.NoError(t, err)
	page, err := os.ReadFile(guideFolder + "/scripts.md")
	require.NoError(t, err)
	_, names, found := strings.Cut(string(page), "| name | what it is |")
	require.True(t, found)
	names, _, _ = strings.Cut(names, "\n\n")
	for line := range strings.Lines(names) {
		first, _, _ := strings.Cut(strings.TrimPrefix(line, "| "), " |")
		for _, name := range regexp.MustCompile("`([^`]+)`").FindAllStringSubmatch(first, -1) {
			assert.Contains(t, string(data), `id="`+name[1]+`"`)
		}
	}
}

// Every file, and every section, that a page links to is there.
func TestGuideLinks(t *testing.T) {
	for _, page := range guidePages(t) {
		for _, target := range linksOf(t, page) {
			if strings.HasPrefix(target, "http") {
				continue
			}
			file, section, _ := strings.Cut(target, "#")
			if file == "" {
				file = filepath.Base(page)
			}
			file = filepath.Join(filepath.Dir(page), file)
			if assert.FileExists(t, file, "%s links to %s", page, target) && section != "" {
				assert.Contains(t, sections(t, file), section, "%s links to %s", page, target)
			}
		}
	}
}

// linksOf are what a page links to, its pictures too.
func linksOf(t *testing.T, page string) []string {
	data, err := os.ReadFile(page)
	require.NoError(t, err)
	var all []string
	for _, part := range strings.Split(string(data), "](")[1:] {
		target, _, _ := strings.Cut(part, ")")
		all = append(all, target)
	}
	return all
}

// sections are the headings of a page, as links name them: small letters, a hyphen for a space,
// and no other signs.
func sections(t *testing.T, page string) []string {
	data, err := os.ReadFile(page)
	require.NoError(t, err)
	var all []string
	for line := range strings.Lines(string(data)) {
		if heading := strings.TrimLeft(line, "#"); heading != line {
			named := strings.ReplaceAll(strings.ToLower(strings.TrimSpace(heading)), " ", "-")
			all = append(all, regexp.MustCompile(`[^\p{L}\p{N}_-]`).ReplaceAllString(named, ""))
		}
	}
	return all
}
