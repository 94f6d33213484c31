package main

import (
	"bytes"
	"embed"
	"text/template"
)

// firstName is the page that a maker is to read before anything else.
const firstName = "READ FIRST.txt"

//go:embed first
var firstTexts embed.FS

// readFirst is that page for a system: its own part, and what holds on each.
func readFirst(s system, version string) ([]byte, error) {
	pages, err := template.New("").Option("missingkey=error").ParseFS(firstTexts, "first/*.txt")
	if err != nil {
		return nil, err
	}
	var page bytes.Buffer
	if err := pages.ExecuteTemplate(&page, s.os+".txt", map[string]string{
		"Version": version, "Title": s.title, "Zip": s.zipName(version), "Checksums": checksums,
	}); err != nil {
		return nil, err
	}
	return linesFor(s, page.Bytes()), nil
}
