package build

import (
	"regexp"
	"slices"
	"testing"
)

// hardTexts are texts whose sentences are hard to part.
var hardTexts = []string{
	"", ".", "...", "a", "a.", "a. b", "a.5 b. c", ".5 a", "a..5", "a!.5", "a.5.6.x", "Boil 1.5 minutes. Rest?! Then 2.", "x 10.", "½. ¼!", "a.\nb", "é.é", "\xff.\xff", "a. .b . c",
}

// The expression says what a sentence is.
func TestSentences(t *testing.T) {
	is := regexp.MustCompile(`[^.!?]+(?:\.\d[^.!?]*)*[.!?]*`)
	for _, text := range hardTexts {
		var got []string
		for at, s := range sentences(text) {
			if text[at:at+len(s)] != s {
				t.Errorf("%q: %q is not at %d", text, s, at)
			}
			got = append(got, s)
		}
		if want := is.FindAllString(text, -1); !slices.Equal(got, want) {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

// The expression says where a number has to stay with its unit.
func TestBindUnits(t *testing.T) {
	is := regexp.MustCompile(`([0-9½¼¾]) ([\pL°%])`)
	for _, text := range append(hardTexts, "1 cup", "1 1/2 cups of 2 °F, 3 %", "½ in", "a 1  b", "1 é", "1 ", " a", "1 2 a b", "¾ ¼ x", "x½ y") {
		if got, want := bindUnits(text), is.ReplaceAllString(text, "$1\u00a0$2"); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}
