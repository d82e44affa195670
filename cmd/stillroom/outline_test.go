package main

import (
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// Shells offer what the pages of help tell of: a page that changes its form would leave them silent.
func TestOutlines(t *testing.T) {
	all := outlines()
	for _, o := range all {
		if o.Summary == "" {
			t.Errorf("%s has no summary", o.Name)
		}
		for _, f := range o.Flags {
			if f.Summary == "" {
				t.Errorf("nothing is said of %s --%s", o.Name, f.Name)
			}
		}
	}
	at := slices.IndexFunc(all, func(o outline) bool { return o.Name == "schema" })
	want := outline{Name: "schema", Summary: "print the JSON Schema of the front matter, for editors", Words: []string{"recipe", "episode", "page", "site"}}
	if diff := cmp.Diff(want, all[at]); diff != "" {
		t.Error(diff)
	}
	at = slices.IndexFunc(all, func(o outline) bool { return o.Name == "check" })
	for _, want := range []option{
		{Name: "format", Summary: "give the findings to another program", Value: true, Words: []string{"text", "json", "sarif"}},
		{Name: "only", Summary: "report on these files and folders alone", Value: true, Files: true},
		{Name: "strict", Summary: "let warnings count as errors"},
	} {
		got := all[at].Flags[slices.IndexFunc(all[at].Flags, func(f option) bool { return f.Name == want.Name })]
		if diff := cmp.Diff(want, got); diff != "" {
			t.Error(diff)
		}
	}
}
