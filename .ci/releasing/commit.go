package main

import (
	"archive/zip"
	"bytes"
	"fmt"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"time"
)

// commit is what is released: files as they were committed, whatever lies about.
type commit struct {
	folder string // that holds a copy of its files
	time   time.Time
	hash   string
	tag    string // "" where it has none
}

// readCommit copies the files of the commit that is checked out in project into a folder.
func readCommit(project, folder string) (commit, error) {
	c := commit{folder: folder}
	archive, err := git(project, "archive", "--format=zip", "HEAD")
	if err != nil {
		return c, err
	}
	if err := unpack(archive, folder); err != nil {
		return c, err
	}
	said, err := git(project, "show", "--no-patch", "--format=%ct %H", "HEAD")
	if err != nil {
		return c, err
	}
	seconds, hash, _ := strings.Cut(strings.TrimSpace(string(said)), " ")
	at, err := strconv.ParseInt(seconds, 10, 64)
	if err != nil {
		return c, err
	}
	c.time, c.hash = time.Unix(at, 0).UTC(), hash
	if tag, err := git(project, "describe", "--tags", "--exact-match", "HEAD"); err == nil {
		c.tag = strings.TrimSpace(string(tag))
	}
	return c, nil
}

// git answers a question about the project.
func git(project string, words ...string) ([]byte, error) {
	var wrong bytes.Buffer
	command := exec.Command("git", words...)
	command.Dir, command.Stderr = project, &wrong
	said, err := command.Output()
	if err != nil {
		return nil, fmt.Errorf("git %s: %w: %s", words[0], err, wrong.Bytes())
	}
	return said, nil
}

// unpack writes the files of a zip into a folder.
func unpack(data []byte, folder string) error {
	files, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	if err != nil {
		return err
	}
	return os.CopyFS(folder, fs.FS(files))
}

// versionShape is what a version may be: it stands in names of files and in a command line.
var versionShape = regexp.MustCompile(`^[0-9][0-9A-Za-z.+-]*$`)

// version is what the release is called: as it was asked for, or else by the tag of the
// commit, or by its day and the beginning of its hash.
func (c commit) version(asked string) (string, error) {
	switch {
	case asked != "" && !versionShape.MatchString(asked):
		return "", fmt.Errorf("%q is no version: it begins with a digit, and has only letters, digits, dots, + and - behind it", asked)
	case asked != "":
		return asked, nil
	}
	if tagged := strings.TrimPrefix(c.tag, "v"); versionShape.MatchString(tagged) {
		return tagged, nil
	}
	return c.time.Format("2006.1.2") + "-" + c.hash[:8], nil
}

// read returns one of its files; name has slashes.
func (c commit) read(name string) ([]byte, error) {
	return os.ReadFile(filepath.Join(c.folder, filepath.FromSlash(name)))
}

// checkNotice holds the NOTICE that is committed against what is in the programs.
func (c commit) checkNotice(programs []program) error {
	want, err := noticeOf(programs)
	if err != nil {
		return err
	}
	if have, err := c.read(noticeName); err != nil || !bytes.Equal(have, want) {
		return fmt.Errorf("%s does not tell what is in the programs now; `.ci/release -notice` writes it, then commit it", noticeName)
	}
	return nil
}
