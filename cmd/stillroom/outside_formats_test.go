package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// sarifSchema is the schema of SARIF 2.1.0 that its authors publish with a tool of theirs.
const sarifSchema = tools + "/node_modules/@microsoft/sarif-multitool-linux/sarif-2.1.0.json"

// formatCheckers judge what other programs are given to read.
var formatCheckers = []outsider{
	{
		name:    "sarif",
		source:  "SARIF 2.1.0, OASIS; by ajv with the schema of its authors",
		command: func(s site) []string { return script("schema.mjs", sarifSchema, filepath.Join(s.dir, "check.sarif")) },
		damages: []damage{
			{"a tool without name", replace("check.sarif", `"name": "Stillroom"`, `"title": "Stillroom"`), "must have required property 'name'"},
			{"a level that is none", replace("check.sarif", `"level": "note"`, `"level": "advice"`), "must be equal to one of the allowed values"},
			{"a line 0", replace("check.sarif", `"startLine": `, `"startLine": -`), "must be >= 1"},
			{"a finding without words", replace("check.sarif", `"message": {`, `"words": {`), "must have required property 'message'"},
		},
	},
}

func TestOutsideFormats(t *testing.T) {
	if testing.Short() {
		t.Skip("the outside checkers take a while; run without -short")
	}
	s := site{dir: t.TempDir(), recipes: []string{"."}}
	writeTo(t, filepath.Join(s.dir, "check.sarif"), printed(t, refused, "check", faultySite(t), "--format", "sarif"))
	for _, o := range formatCheckers {
		t.Run(o.name, func(t *testing.T) { o.judge(t, s) })
	}
}

// faultySite is a site with an error, a warning and advice, with letters of
// more than a byte before them, in a file whose name needs escaping.
func faultySite(t *testing.T) string {
	dir := t.TempDir()
	writeTo(t, filepath.Join(dir, "content/site.yaml"), "name: Ada's Larder\n")
	writeTo(t, filepath.Join(dir, "content/recipes/Pêche jam.md"), `---
name: Pêche jam
summary: ½ cup of it.
published: 2026-01-01
kind: fruit
produce: [peaches]
yield: 9 pint jars
ingredients: [17 lb peaches, halved, "½ cup lemon juice"]
keeping:
  - {way: boiling-water, process: peaches-halved-hot, pack: hot, acid: natural, headspace: ½ in, keeps: 1 year, processing: [{jar: pint, altitude: {0-1,000 ft: 4 min, above 1,000 ft: 35 min}}]}
---
`)
	return dir
}

func writeTo(t *testing.T, name, text string) {
	t.Helper()
	if err := os.MkdirAll(filepath.Dir(name), 0o777); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(name, []byte(text), 0o666); err != nil {
		t.Fatal(err)
	}
}

// printed is what a command prints.
func printed(t *testing.T, want int, args ...string) string {
	t.Helper()
	var stdout, stderr bytes.Buffer
	if got := run(args, strings.NewReader(""), &stdout, &stderr); got != want {
		t.Fatalf("%s: status %d, want %d\n%s%s", args, got, want, &stdout, &stderr)
	}
	return stdout.String()
}
