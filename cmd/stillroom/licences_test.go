package main

import (
	"maps"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// permissive are the licences that let anybody use, change and pass on the program, and words that are in the text of
// each: MIT, BSD-2-Clause, BSD-3-Clause, Apache-2.0 and OFL-1.1 of the SPDX list.
var permissive = map[string]string{
	"MIT":          "Permission is hereby granted, free of charge",
	"BSD-2-Clause": "Redistributions in binary form must reproduce",
	"BSD-3-Clause": "Neither the name",
	"Apache-2.0":   "Apache License",
	"OFL-1.1":      "SIL OPEN FONT LICENSE Version 1.1",
}

// The list of licences names all that others wrote, nothing else, and the licences that their texts are.
func TestLicences(t *testing.T) {
	folders := modules(t, "-test", "./...") // of all that is listed, where its text is
	linked := modules(t, "./cmd/stillroom")
	for _, file := range carried(t) {
		folders[file], linked[file] = "", ""
	}
	for i, line := range strings.Split(strings.TrimSpace(readFile(t, example+"/testdata/licences.tsv")), "\n") {
		if strings.HasPrefix(line, "#") {
			continue
		}
		cells := strings.Split(line, "\t")
		if len(cells) != 4 {
			t.Fatalf("line %d has %d cells", i+1, len(cells))
		}
		what, licence, use, text := cells[0], cells[1], cells[2], cells[3]
		folder, ok := folders[what]
		if !ok {
			t.Errorf("%s is listed, and is not used", what)
			continue
		}
		delete(folders, what)
		if _, ok := linked[what]; ok != (use == "program") {
			t.Errorf("%s is in the program: %v; its line says %q", what, ok, use)
		}
		words := licenceText(t, folder, text)
		for name := range strings.SplitSeq(licence, " AND ") {
			if permissive[name] == "" || !strings.Contains(words, permissive[name]) {
				t.Errorf("%s: its text is not that of a licence %q that is let pass", what, name)
			}
		}
	}
	for _, what := range slices.Sorted(maps.Keys(folders)) {
		t.Errorf("testdata/licences.tsv does not list %s", what)
	}
}

// modules gives the modules of others that packages are built with, and their folders.
func modules(t *testing.T, args ...string) map[string]string {
	t.Helper()
	c := exec.Command("go", append([]string{"list", "-deps", "-f", "{{with .Module}}{{if not .Main}}{{.Path}}\t{{.Dir}}{{end}}{{end}}"}, args...)...)
	c.Dir = example
	out, err := c.Output()
	if err != nil {
		t.Fatal(err)
	}
	folders := make(map[string]string)
	for line := range strings.Lines(string(out)) {
		path, dir, _ := strings.Cut(strings.TrimSpace(line), "\t")
		folders[path] = dir
	}
	return folders
}

// carried lists the files of the repository that others made, by their sort: typefaces, compiled code, libraries.
func carried(t *testing.T) []string {
	t.Helper()
	c := exec.Command("git", "ls-files", "*.woff2", "*.ttf", "*.otf", "*.wasm", "*.wasm.gz", "*.min.js", "*minisearch.js")
	c.Dir = example
	out, err := c.Output()
	if err != nil || len(out) == 0 {
		t.Fatalf("%v: %s", err, out)
	}
	return strings.Fields(string(out))
}

var licenceName = regexp.MustCompile(`(?i)^(licen[cs]e|copying)`)

// licenceText is a file of the repository, or else the licences in a module's folder, with single spaces.
func licenceText(t *testing.T, folder, file string) string {
	t.Helper()
	names := []string{filepath.Join(example, file)}
	if file == "" {
		names, _ = filepath.Glob(filepath.Join(folder, "*"))
		names = slices.DeleteFunc(names, func(name string) bool { return !licenceName.MatchString(filepath.Base(name)) })
	}
	var all []string
	for _, name := range names {
		all = append(all, strings.Fields(readFile(t, name))...)
	}
	return strings.Join(all, " ")
}
