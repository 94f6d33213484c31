package main

import (
	"encoding/xml"
	"errors"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

// Rules of this file: the scripts in testdata/ are sessions at a terminal, each in a
// folder of its own that holds the files given at its end:
//
//	$ tuckmark sheet bib.toml -o none/bib.pdf
//	2> 'none/bib.pdf: there is no folder "none"'
//	2> 'hint: make the folder first, or write the sheets elsewhere with -o'
//	exit 1
//	holds bib.toml
//
// All that a command prints must be told, line by line, and its status where that is
// not 0. Other words are those of testscript.

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"tuckmark": main})
}

func TestSessions(t *testing.T) {
	testscript.Run(t, testscript.Params{
		Dir: "testdata",
		Setup: func(env *testscript.Env) error {
			s := &session{}
			env.Values[sessionKey{}] = s
			env.Defer(func() {
				if wrong := s.untold(); wrong != "" {
					env.T().Log(wrong)
					env.T().FailNow()
				}
			})
			return nil
		},
		Cmds: map[string]func(*testscript.TestScript, bool, []string){
			"$":       plainly(runs),
			">":       plainly(func(ts *testscript.TestScript, words []string) { ask(ts).stdout.tell(ts, words) }),
			"2>":      plainly(func(ts *testscript.TestScript, words []string) { ask(ts).stderr.tell(ts, words) }),
			"prints":  plainly(printsText),
			"exit":    plainly(exitsWith),
			"holds":   plainly(holds),
			"pdf":     isPDF,
			"svg":     isSVG,
			"smaller": plainly(smaller),
			"rights":  plainly(rights),
			"fill":    plainly(fill),
		},
	})
}

// plainly is a word of scripts that does not go with a ! before it.
func plainly(do func(*testscript.TestScript, []string)) func(*testscript.TestScript, bool, []string) {
	return func(ts *testscript.TestScript, neg bool, words []string) {
		if neg {
			stop(ts, "a ! does not go with this word")
		}
		do(ts, words)
	}
}

// session is what is known of the last command of a script.
type session struct {
	command        string
	stdout, stderr printed
	status         int
}

type sessionKey struct{}

func ask(ts *testscript.TestScript) *session { return ts.Value(sessionKey{}).(*session) }

// untold is what the script has not told of the last command; empty where it told all.
func (s *session) untold() string {
	var wrong []string
	for _, line := range s.stdout.rest {
		wrong = append(wrong, "it also prints\n> '"+line+"'")
	}
	for _, line := range s.stderr.rest {
		wrong = append(wrong, "it also prints\n2> '"+line+"'")
	}
	if s.status != statusDone {
		wrong = append(wrong, "it ends with\nexit "+strconv.Itoa(s.status))
	}
	if wrong == nil {
		return ""
	}
	return "$ " + s.command + ": " + strings.Join(wrong, "\n")
}

// stop ends a script that has failed, and what it has not told yet counts no more.
func stop(ts *testscript.TestScript, format string, args ...any) {
	*ask(ts) = session{}
	ts.Fatalf(format, args...)
}

// printed are the lines of one output that no line of the script has told yet.
type printed struct{ rest []string }

func newPrinted(text string) printed {
	if text == "" {
		return printed{}
	}
	return printed{strings.Split(strings.TrimSuffix(text, "\n"), "\n")}
}

// tell holds the next line against that of the script.
func (p *printed) tell(ts *testscript.TestScript, words []string) {
	want := strings.Join(words, " ")
	if len(p.rest) == 0 {
		stop(ts, "$ %s: it does not print\n%s", ask(ts).command, want)
	}
	if p.rest[0] != want {
		stop(ts, "$ %s: it prints\n'%s', and not\n'%s'", ask(ts).command, p.rest[0], want)
	}
	p.rest = p.rest[1:]
}

// runs runs a command: $ WORD ...
func runs(ts *testscript.TestScript, words []string) {
	s := ask(ts)
	if wrong := s.untold(); wrong != "" {
		stop(ts, "%s", wrong)
	}
	err := ts.Exec(words[0], words[1:]...)
	*s = session{command: strings.Join(words, " "), stdout: newPrinted(ts.ReadFile("stdout")), stderr: newPrinted(ts.ReadFile("stderr"))}
	var failed *exec.ExitError
	switch {
	case errors.As(err, &failed):
		s.status = failed.ExitCode()
	case err != nil:
		stop(ts, "%v", err)
	}
}

// printsText holds all of the output against a file of the script: prints FILE
func printsText(ts *testscript.TestScript, words []string) {
	want, got := ts.ReadFile(words[0]), ts.ReadFile("stdout")
	if want != got {
		stop(ts, "$ %s: it prints\n%s\nand not\n%s", ask(ts).command, got, want)
	}
	ask(ts).stdout = printed{}
}

// exitsWith tells the status: exit N
func exitsWith(ts *testscript.TestScript, words []string) {
	if got := strconv.Itoa(ask(ts).status); got != words[0] {
		stop(ts, "$ %s: it ends with %s, and not with %s", ask(ts).command, got, words[0])
	}
	ask(ts).status = statusDone
}

// holds tells all files of the folder, hidden ones too: holds FILE ...
func holds(ts *testscript.TestScript, words []string) {
	entries, err := os.ReadDir(ts.MkAbs("."))
	ts.Check(err)
	var names []string
	for _, entry := range entries {
		if entry.Name() != ".tmp" { // which testscript makes
			names = append(names, entry.Name())
		}
	}
	slices.Sort(words)
	if !slices.Equal(names, words) {
		stop(ts, "after $ %s the folder holds %q", ask(ts).command, names)
	}
}

// isPDF looks whether files begin like a PDF, and end like one: pdf FILE ...
func isPDF(ts *testscript.TestScript, neg bool, words []string) {
	for _, name := range words {
		text := ts.ReadFile(name)
		whole := strings.HasPrefix(text, "%PDF-") && strings.HasSuffix(text, "%%EOF\n")
		if whole == neg {
			stop(ts, "%s: a whole PDF: %v", name, whole)
		}
	}
}

// isSVG looks whether a file is well formed, and as large as it should be: svg FILE WIDTH HEIGHT
func isSVG(ts *testscript.TestScript, neg bool, words []string) {
	if neg {
		stop(ts, "a ! does not go with this word")
	}
	var root struct {
		XMLName xml.Name `xml:"http://www.w3.org/2000/svg svg"`
		Width   string   `xml:"width,attr"`
		Height  string   `xml:"height,attr"`
	}
	ts.Check(xml.Unmarshal([]byte(ts.ReadFile(words[0])), &root))
	if root.Width != words[1] || root.Height != words[2] {
		stop(ts, "%s is %s wide and %s high", words[0], root.Width, root.Height)
	}
}

// smaller looks whether a file has fewer bytes: smaller FILE N
func smaller(ts *testscript.TestScript, words []string) {
	most, err := strconv.Atoi(words[1])
	ts.Check(err)
	if size := len(ts.ReadFile(words[0])); size >= most {
		stop(ts, "%s has %d bytes", words[0], size)
	}
}

// rights looks what may be done with a file: rights 600 FILE
func rights(ts *testscript.TestScript, words []string) {
	info, err := os.Stat(ts.MkAbs(words[1]))
	ts.Check(err)
	if got := strconv.FormatUint(uint64(info.Mode().Perm()), 8); got != words[0] {
		stop(ts, "the rights of %s are %s", filepath.Base(words[1]), got)
	}
}

// fill writes a file of so many MB that says nothing: fill FILE N
func fill(ts *testscript.TestScript, words []string) {
	const line = "# much too much\n"
	size, err := strconv.Atoi(words[1])
	ts.Check(err)
	ts.Check(os.WriteFile(ts.MkAbs(words[0]), []byte(strings.Repeat(line, size<<20/len(line))), 0o644))
}
