package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"github.com/urfave/cli/v2"

	"tuckmark/marking/fault"
	"tuckmark/marking/source"
	"tuckmark/marking/start"
	"tuckmark/marking/wording"
	"tuckmark/pdfout/ink"
	"tuckmark/pdfout/save"
)

// Rules of this file: a first file is written where nothing is, and never over anything.
// Whoever gives no option is asked, at a terminal; what is still not said is as it is usual.

const startName = "start"

func startCommand() *cli.Command {
	return &cli.Command{
		Name:  startName,
		Usage: "write a first file, which makes its sheets at once and is changed line by line; without options it asks",
		Flags: []cli.Flag{
			&cli.StringFlag{Name: "pieces", Usage: "begin with these pieces, such as `front,back,sleeve`; known are collar, skirt, pocket, cap, yoke and band too, and any other is a rectangle"},
			&cli.StringFlag{Name: "unit", Usage: "write lengths in `UNIT`: in, cm or mm (without it: in)"},
			&cli.StringFlag{Name: "size", Usage: "draft them for `SIZE`, such as \"18 months\", \"size 4\" or \"92 cm\" (without it: 2 years)"},
			&cli.StringFlag{Name: "title", Usage: "call it `TITLE` (without it: after the file)"},
		},
		Action: func(c *cli.Context) error {
			out, err := newFile(c)
			if err != nil {
				return err
			}
			a := start.Usual()
			a.Title = titleFrom(out)
			if c.NumFlags() == 0 && isTerminal(c.App.Reader) {
				err = askAnswers(c.App.Reader, c.App.Writer, out, &a)
			} else {
				err = readAnswers(c, &a)
			}
			if err != nil {
				return err
			}
			switch err := save.New(out, fileElsewhere, []byte(start.File(a))); {
			case errors.Is(err, fs.ErrExist):
				return taken(out)
			case err != nil:
				return err
			}
			sayDone(c.App.Writer, started(out, a))
			return nil
		},
	}
}

// newFile is the name of the file that is to be written, where it can be.
func newFile(c *cli.Context) (string, error) {
	const example = "tuckmark start dress.toml --pieces front,back,sleeve"
	name := strings.Join(c.Args().Slice(), " ")
	if c.Args().Len() > 1 && strings.EqualFold(filepath.Ext(name), ".toml") {
		return "", misuse("start takes the name of one file", "a name with a space in it stands in quotes: "+fileInShell(name))
	}
	out, err := oneFile(c, example)
	if err != nil {
		return "", err
	}
	if ext := filepath.Ext(out); !strings.EqualFold(ext, ".toml") {
		return "", fileFault(out, "the name of a description ends in .toml, and this one does not", "name it "+fileInShell(strings.TrimSuffix(out, ext)+".toml"))
	}
	if _, err := os.Lstat(out); err == nil {
		return "", taken(out)
	}
	_, err = save.At(out, fileElsewhere) // before anybody is asked anything
	return out, err
}

// taken says that something is there already under a name.
func taken(name string) error {
	what, first := "there is such a file already, and it stays as it is", ", or delete that one first"
	if info, err := os.Lstat(name); err == nil && info.IsDir() {
		what, first = "there is a folder of that name", ""
	} else if err == nil && info.Mode()&os.ModeSymlink != 0 {
		what, first = "there is a link of that name, and it stays as it is", ""
	}
	ext := filepath.Ext(name)
	for n := 2; ; n++ {
		other := fmt.Sprintf("%s-%d%s", strings.TrimSuffix(name, ext), n, ext)
		if _, err := os.Lstat(other); err != nil {
			return fileFault(name, what, "give the new one another name, such as "+fileInShell(other)+first)
		}
	}
}

// titleFrom is the title of a garment whose file is called so.
func titleFrom(file string) string {
	name := strings.TrimSuffix(filepath.Base(file), filepath.Ext(file))
	title := wording.Capital(strings.Join(strings.FieldsFunc(name, func(r rune) bool { return strings.ContainsRune(" _-", r) }), " "))
	if source.CheckPrinted(title, ink.CanPrint) != nil {
		return "My pattern"
	}
	return title
}

// readAnswers takes up the options.
func readAnswers(c *cli.Context, a *start.Answers) error {
	var wrong []error
	for _, one := range questions(*a) {
		if !c.IsSet(one.option) {
			continue
		}
		err := one.answer(a, c.String(one.option))
		var several fault.List
		switch {
		case errors.As(err, &several):
			for _, f := range several.Told() {
				key := strings.TrimSuffix("--"+one.option+": "+f.Place.Key, ": ")
				wrong = append(wrong, usageFault{&fault.Fault{Place: fault.Place{File: program, Key: key}, Cause: f.Cause, Hint: f.Hint}})
			}
		case err != nil:
			wrong = append(wrong, optionFault(one.option, err))
		}
	}
	return errors.Join(wrong...)
}

// started says what was made, and how to go on.
func started(out string, a start.Answers) string {
	text := fmt.Sprintf("%s: %s, for %s\n%s\n", wording.FileName(out), told(a.Pieces), a.Size, start.DraftedFor(a))
	if unknown := start.Unknown(a.Pieces); len(unknown) > 0 {
		text += fmt.Sprintf("no draft is known for these, and each begins as a rectangle: %s\n", told(unknown))
		for _, name := range unknown {
			if meant := start.Meant(name); meant != "" {
				text += fmt.Sprintf("%s: %s\n", name, wording.DidYouMean(meant))
			}
		}
	}
	for _, line := range start.Lone(a.Pieces) {
		text += line + "\n"
	}
	return text + fmt.Sprintf("see its pieces:  tuckmark look %[1]s\nchange a line of it, save it, and see what comes of that\nexplain a word:  tuckmark help hem\nmake its sheets: tuckmark sheet %[1]s\n", fileInShell(out))
}

// told names pieces.
func told(names []string) string { return wording.Listed(wording.Few(names), "and") }
