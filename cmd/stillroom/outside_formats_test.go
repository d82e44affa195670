package main

import (
	"bytes"
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"go.yaml.in/yaml/v4"
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
	{
		name:     "manual",
		source:   "mdoc(7); by mandoc",
		programs: []string{"mandoc"},
		command: func(s site) []string {
			return []string{"mandoc", "-Tlint", "-W", "warning", filepath.Join(s.dir, "stillroom.1")}
		},
		damages: []damage{
			{"a list that does not end", replace("stillroom.1", "\n.El\n", "\n"), "missing end of block"},
			{"text that is taken for an order", replace("stillroom.1", "\n.Pp\n", "\n.plum jam\n"), "unknown macro"},
		},
	},
	schemaChecker("recipe", []damage{
		{"a misspelt key", replace("recipe-*.json", `"headspace":`, `"headspce":`), "must NOT have unevaluated properties"},
		{"a time without unit", replace("recipe-*.json", `"10 min"`, `"10"`), "must match pattern"},
		{"a canned recipe without its pack", replace("recipe-*.json", `"pack":"hot",`, ""), "must have required property 'pack'"},
		{"a process that is none", replace("recipe-*.json", `"process":"`, `"process":"my-`), "must be equal to one of the allowed values"},
		{"pressures in boiling water", replace("recipe-*.json", `"altitude":{`, `"time":"10 min","altitude":{`), "boolean schema is false"},
	}),
	schemaChecker("episode", []damage{
		{"a number in words", replace("episode-*.json", `"number":`, `"number":"one","series":`), "must be integer"},
		{"an episode that is never published", replace("episode-*.json", `"published":`, `"updated":`), "must have required property 'published'"},
	}),
	schemaChecker("page", []damage{
		{"a page without name", replace("page-*.json", `"name":`, `"title":`), "must have required property 'name'"},
	}),
	schemaChecker("site", []damage{
		{"an address without its beginning", replace("site-*.json", `"https://`, `"//`), "must match pattern"},
		{"units that nobody has", replace("site-*.json", `"units":"`, `"units":"old `), "must be equal to one of the allowed values"},
	}),
}

// schemaChecker holds the front matter of a sort against the schema that the
// program prints of it.
func schemaChecker(sort string, damages []damage) outsider {
	return outsider{
		name:   "schema of " + sort,
		source: "JSON Schema 2020-12; by ajv",
		command: func(s site) []string {
			args := []string{filepath.Join(s.dir, sort+".schema.json")}
			for _, name := range s.glob(sort + "-*.json") {
				args = append(args, filepath.Join(s.dir, name))
			}
			return script("schema.mjs", args...)
		},
		damages: damages,
	}
}

func TestOutsideFormats(t *testing.T) {
	if testing.Short() {
		t.Skip("the outside checkers take a while; run without -short")
	}
	s := site{dir: t.TempDir(), recipes: []string{"."}}
	writeTo(t, filepath.Join(s.dir, "check.sarif"), printed(t, refused, "check", faultySite(t), "--format", "sarif"))
	released = "2026-01-31"
	t.Cleanup(func() { released = "" })
	writeTo(t, filepath.Join(s.dir, "stillroom.1"), printed(t, succeeded, "manual"))
	for sort, pattern := range map[string]string{"recipe": "recipes/*.md", "episode": "episodes/*.md", "page": "pages/*.md", "site": "site.yaml"} {
		writeTo(t, filepath.Join(s.dir, sort+".schema.json"), printed(t, succeeded, "schema", sort))
		names, _ := filepath.Glob(filepath.Join(example, "content", pattern))
		for _, name := range names {
			writeTo(t, filepath.Join(s.dir, sort+"-"+filepath.Base(name)+".json"), asJSON(t, name))
		}
	}
	c := newCrew(t)
	for _, o := range formatCheckers {
		t.Run(o.name, func(t *testing.T) { o.judge(t, c, s) })
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

// asJSON gives the front matter of a file as an editor reads it: by the letter
// of YAML.
func asJSON(t *testing.T, name string) string {
	t.Helper()
	matter, _, _ := strings.Cut(strings.TrimPrefix(readFile(t, name), "---\n"), "\n---\n")
	var doc yaml.Node
	if err := yaml.Load([]byte(matter), &doc, yaml.WithUniqueKeys(false)); err != nil {
		t.Fatalf("%s: %v", name, err)
	}
	text, err := json.Marshal(jsonValue(doc.Content[0]))
	if err != nil {
		t.Fatal(err)
	}
	return string(text)
}

func jsonValue(n *yaml.Node) any {
	switch n.Kind {
	case yaml.MappingNode:
		m := map[string]any{}
		for i := 0; i < len(n.Content); i += 2 {
			m[n.Content[i].Value] = jsonValue(n.Content[i+1])
		}
		return m
	case yaml.SequenceNode:
		list := []any{}
		for _, e := range n.Content {
			list = append(list, jsonValue(e))
		}
		return list
	}
	switch n.Tag {
	case "!!null":
		return nil
	case "!!bool":
		return n.Value == "true"
	case "!!int", "!!float":
		return json.Number(n.Value)
	}
	return n.Value
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
