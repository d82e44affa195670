package main

import (
	"bytes"
	"encoding/json"
	"maps"
	"os"
	"slices"
	"strings"
	"testing"

	"stillroom/content"
	"stillroom/validate"
)

func at(line, col int) content.Pos {
	return content.Pos{File: "content/recipes/plum.md", Line: line, Col: col}
}

var report = validate.Report{
	Findings: []validate.Finding{
		{
			Pos: at(7, 3), Rule: "repeated-key", Severity: validate.Error,
			Message: "kind is given twice", Advice: "Take one of them away.",
			Notes: []validate.Note{{Pos: at(4, 1), Message: "first given here"}},
		},
		{
			Pos: at(9, 1), Rule: "tidy", Severity: validate.Advice,
			Message: "a <long> summary & more", Source: validate.Source{Title: "Of summaries"},
			Accepted: "I like it long.",
		},
		{
			Pos: content.Pos{File: "content/site.yaml"}, Rule: "dull", Severity: validate.Warning,
			Message: "no <tagline>", Source: validate.Source{Title: "Of taglines", Address: "https://taglines.example", Read: "2026-11-25"},
		},
	},
	Counts: validate.Counts{Recipes: 1, Pages: 2, Errors: 1, Warnings: 1},
}

func Example_writeText() {
	writeText(os.Stdout, report, false)
	// Output:
	// content/recipes/plum.md:7:3: error: kind is given twice [repeated-key]
	//     content/recipes/plum.md:4:1: first given here
	//     Take one of them away.
	// content/recipes/plum.md:9:1: advice: a <long> summary & more [tidy]
	//     Accepted: I like it long.
	//     Source: Of summaries
	// content/site.yaml: warning: no <tagline> [dull]
	//     Source: Of taglines, https://taglines.example
	// 1 recipe, 0 episodes, 2 pages: 1 error, 1 warning, 0 advice
}

// Colours are only added: without them the text is the same.
func TestWriteTextInColour(t *testing.T) {
	var plain, coloured bytes.Buffer
	writeText(&plain, report, false)
	writeText(&coloured, report, true)
	if !strings.Contains(coloured.String(), "\x1b[1;31merror\x1b[0m") {
		t.Errorf("no colour in %q", &coloured)
	}
	bare := strings.NewReplacer("\x1b[0m", "", "\x1b[1m", "", "\x1b[2m", "", "\x1b[1;31m", "", "\x1b[1;33m", "", "\x1b[1;36m", "")
	if got := bare.Replace(coloured.String()); got != plain.String() {
		t.Errorf("without colours %q, want %q", got, &plain)
	}
}

// The shape of the JSON is promised to other programs, with no key more or
// less, and findings that count for nothing are not in it.
func TestWriteJSON(t *testing.T) {
	var b bytes.Buffer
	if err := writeJSON(&b, report, nil); err != nil {
		t.Fatal(err)
	}
	var got struct {
		Findings []map[string]any
		Counts   map[string]any
	}
	var top map[string]json.RawMessage
	if err := json.Unmarshal(b.Bytes(), &got); err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(b.Bytes(), &top); err != nil {
		t.Fatal(err)
	}
	wantKeys(t, top, "counts", "findings")
	wantKeys(t, got.Counts, "advice", "episodes", "errors", "pages", "recipes", "warnings")
	if len(got.Findings) != 2 {
		t.Fatalf("%d findings, want the 2 that are not accepted", len(got.Findings))
	}
	for _, f := range got.Findings {
		wantKeys(t, f, "advice", "column", "file", "line", "message", "rule", "severity", "source")
	}
	want := map[string]any{
		"file": "content/site.yaml", "line": 0.0, "column": 0.0, "rule": "dull", "severity": "warning",
		"message": "no <tagline>", "advice": "", "source": "Of taglines, https://taglines.example",
	}
	if !maps.Equal(got.Findings[1], want) {
		t.Errorf("finding %v, want %v", got.Findings[1], want)
	}
}

// A report without findings still has a list of them.
func TestWriteJSONOfNothing(t *testing.T) {
	var b bytes.Buffer
	if err := writeJSON(&b, validate.Report{}, nil); err != nil || !strings.Contains(b.String(), `"findings": []`) {
		t.Errorf("%s, %v", &b, err)
	}
}

func wantKeys[V any](t *testing.T, m map[string]V, want ...string) {
	t.Helper()
	if got := slices.Sorted(maps.Keys(m)); !slices.Equal(got, want) {
		t.Errorf("keys %q, want %q", got, want)
	}
}

func TestVerdict(t *testing.T) {
	tests := []struct {
		counts validate.Counts
		strict bool
		want   int
	}{
		{validate.Counts{}, true, succeeded},
		{validate.Counts{Advice: 1}, true, succeeded},
		{validate.Counts{Warnings: 1}, false, succeeded},
		{validate.Counts{Warnings: 1}, true, refused},
		{validate.Counts{Errors: 1}, false, refused},
	}
	for _, test := range tests {
		if got := verdict(test.counts, test.strict); got != test.want {
			t.Errorf("verdict(%+v, %v) = %d, want %d", test.counts, test.strict, got, test.want)
		}
	}
}
