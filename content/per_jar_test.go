package content

import (
	"regexp"
	"testing"
)

// The expression says which texts speak of one jar among several.
func TestIsPerJar(t *testing.T) {
	is := regexp.MustCompile(`(?i)\b(each|every|per|apiece)\b`)
	for _, text := range []string{
		"", "1.5 cups. 2 each", "one for each jar", "EACH", "reach", "per-jar", "a_per", "every9", "apiece.", "é per é", "perhaps",
	} {
		if got, want := IsPerJar(text), is.MatchString(text); got != want {
			t.Errorf("%q: %t, want %t", text, got, want)
		}
	}
}
