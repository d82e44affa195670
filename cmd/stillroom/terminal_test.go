package main

import "testing"

func TestVisible(t *testing.T) {
	for s, want := range map[string]string{
		"damson.md: 5 min\n\tünder": "damson.md: 5 min\n\tünder",
		"a\x1b[31m\a.md":            `a\u001b[31m\u0007.md`,
		"a\rb\u009b2J":              `a\u000db\u009b2J`,
		"a\u202eb\u2066\u2028":      `a\u202eb\u2066\u2028`,
		"a\xffb":                    `a\xffb`,
		"":                          "",
	} {
		if got := visible(s); got != want {
			t.Errorf("visible(%q) = %q, want %q", s, got, want)
		}
	}
}
