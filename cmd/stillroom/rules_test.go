package main

import (
	"bytes"
	"strings"
	"testing"

	"stillroom/validate"
)

// The list and the handbook hold every rule in its order, and what each says.
func TestRulesAreListed(t *testing.T) {
	var list, book bytes.Buffer
	listRules(&list)
	writeHandbook(&book)
	lines := strings.Split(strings.TrimSuffix(list.String(), "\n"), "\n")
	parts := strings.Split(book.String(), "\n"+strings.Repeat("-", 72)+"\n\n")
	if len(lines) != len(validate.Rules) || len(parts) != len(validate.Rules) {
		t.Fatalf("%d lines and %d parts for %d rules", len(lines), len(parts), len(validate.Rules))
	}
	for i, r := range validate.Rules {
		if f := strings.Fields(lines[i]); f[0] != r.ID || f[1] != r.Severity.String() || !strings.HasSuffix(lines[i], "  "+r.Summary) {
			t.Errorf("%s is listed as %q", r.ID, lines[i])
		}
		refused, passed := r.Examples()
		for _, want := range []string{
			r.ID + " (" + r.Severity.String() + "): " + r.Summary + "\n", strings.TrimSpace(r.Doc), dated(r.Source),
			refused.Name, passed.Name, refused.Says[0], indented(refused.Text), indented(passed.Text),
		} {
			if !strings.Contains(parts[i], want) {
				t.Errorf("the handbook does not say of %s: %q", r.ID, want)
			}
		}
	}
}
