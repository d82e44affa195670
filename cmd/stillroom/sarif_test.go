package main

import (
	"bytes"
	"encoding/json"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"stillroom/content"
	"stillroom/validate"
)

// sarifOfReport writes a log and reads it again.
func sarifOfReport(t *testing.T, rep validate.Report, fsys fstest.MapFS) sarifRun {
	t.Helper()
	var b bytes.Buffer
	if err := writeSARIF(&b, rep, fsys); err != nil {
		t.Fatal(err)
	}
	var log sarifLog
	d := json.NewDecoder(&b)
	d.DisallowUnknownFields()
	if err := d.Decode(&log); err != nil {
		t.Fatal(err)
	}
	if log.Version != "2.1.0" || len(log.Runs) != 1 {
		t.Fatalf("version %q, %d runs", log.Version, len(log.Runs))
	}
	return log.Runs[0]
}

func TestWriteSARIF(t *testing.T) {
	file := "content/recipes/pêche & plum.md"
	rep := validate.Report{Findings: []validate.Finding{
		{
			Pos: content.Pos{File: file, Line: 2, Col: 14}, Rule: "time-short", Severity: validate.Error,
			Message: "5 min is too short", Advice: "Write 10 min.", Source: validate.Source{Title: "A guide", Address: "https://guide.example"},
			Notes: []validate.Note{{Pos: content.Pos{File: file, Line: 1, Col: 1}, Message: "first given here"}},
		},
		{Pos: content.Pos{File: "content/site.yaml"}, Rule: "missing-key", Severity: validate.Warning, Message: "there is no such file"},
		{Pos: content.Pos{File: file, Line: 3, Col: 1}, Rule: "checked-missing", Severity: validate.Advice, Message: "not checked", Accepted: "On Monday."},
	}}
	// ½ takes two bytes and one code unit, 𝄞 four bytes and two code units
	run := sarifOfReport(t, rep, fstest.MapFS{file: {Data: []byte("\uFEFF---\n½ cup 𝄞 5 min\n---\n")}})
	var got []string
	for _, r := range run.Results {
		if run.Tool.Driver.Rules[r.Index].ID != r.Rule {
			t.Errorf("the index of %s is that of %s", r.Rule, run.Tool.Driver.Rules[r.Index].ID)
		}
		at := r.Locations[0].Physical
		line, column := 0, 0
		if at.Region != nil {
			line, column = at.Region.Line, at.Region.Column
		}
		got = append(got, strings.Join([]string{r.Rule, r.Level, at.Artifact.Base, at.Artifact.URI, r.Message.Text}, " | "))
		if want := [][2]int{{2, 11}, {0, 0}, {3, 1}}[len(got)-1]; [2]int{line, column} != want {
			t.Errorf("%s at %d:%d, want %v", r.Rule, line, column, want)
		}
	}
	want := []string{
		"time-short | error | SITE | content/recipes/p%C3%AAche%20&%20plum.md | 5 min is too short. Write 10 min. Source: A guide, https://guide.example",
		"missing-key | warning | SITE | content/site.yaml | There is no such file.",
		"checked-missing | note | SITE | content/recipes/p%C3%AAche%20&%20plum.md | Not checked.",
	}
	if !slices.Equal(got, want) {
		t.Errorf("got  %q\nwant %q", got, want)
	}
	if run.ColumnKind != "utf16CodeUnits" || run.Bases["SITE"].URI != "" {
		t.Errorf("columns of %q, base %+v", run.ColumnKind, run.Bases["SITE"])
	}
	if n := run.Results[0].Related; len(n) != 1 || n[0].Message.Text != "First given here." || n[0].Physical.Region.Line != 1 {
		t.Errorf("related locations %+v", n)
	}
	if s := run.Results[2].Suppressions; len(s) != 1 || s[0].Justification != "On Monday." || run.Results[0].Suppressions != nil {
		t.Errorf("suppressions %+v, %+v", s, run.Results[0].Suppressions)
	}
}

// A log without findings has a list of them, and every rule with its help.
func TestWriteSARIFOfNothing(t *testing.T) {
	run := sarifOfReport(t, validate.Report{}, nil)
	if run.Results == nil || len(run.Results) != 0 {
		t.Errorf("results %v", run.Results)
	}
	rules := run.Tool.Driver.Rules
	if len(rules) != len(validate.Rules) {
		t.Fatalf("%d rules, want %d", len(rules), len(validate.Rules))
	}
	for i, r := range rules {
		if r.ID != validate.Rules[i].ID || strings.ContainsAny(r.Name, "- ") || r.Short.Text == "" || !strings.Contains(r.Help.Text, "Source: ") {
			t.Errorf("rule %+v", r)
		}
		if want := validate.Rules[i].Severity.String(); r.Default.Level != strings.Replace(want, "advice", "note", 1) {
			t.Errorf("%s: level %s, want that of %s", r.ID, r.Default.Level, want)
		}
	}
}

// The same finding a line lower has the same fingerprint, and no other has.
func TestFingerprint(t *testing.T) {
	f := validate.Finding{Pos: content.Pos{File: "a.md", Line: 1, Col: 1}, Rule: "a", Message: "b"}
	lower, other := f, f
	lower.Pos.Line++
	other.Message = "c"
	if fingerprint(f) != fingerprint(lower) || fingerprint(f) == fingerprint(other) {
		t.Errorf("fingerprints %s, %s, %s", fingerprint(f), fingerprint(lower), fingerprint(other))
	}
}
