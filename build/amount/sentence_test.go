package amount

import (
	"regexp"
	"slices"
	"testing"
)

var spoken = []string{
	"", "a", "a. b", "a.5 b", `He said "boil." Then (stir.) Rest: 3; d`, "a..b", "a..", "a.  b", "a.)b", "1.5 cups. 2 each", "a!\nb?c", `a."'`, "x :y: z",
	"one for each jar", "EACH", "reach", "per-jar", "a_per", "every9", "apiece.", "é per é", "perhaps",
}

// The expression says where sentences end.
func TestSentenceEnd(t *testing.T) {
	is := regexp.MustCompile(`[.!?:;]["')]*(\s+|$)`)
	for _, text := range spoken {
		var got, want []string
		for begin, next := 0, 0; begin < len(text); begin = next {
			var end int
			end, next = sentenceEnd(text, begin)
			got = append(got, text[begin:end])
		}
		begin := 0
		for _, at := range append(is.FindAllStringIndex(text, -1), []int{len(text), len(text)}) {
			if begin < len(text) {
				want = append(want, text[begin:at[0]])
			}
			begin = at[1]
		}
		if !slices.Equal(got, want) {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

// The expression says which sentences speak of one jar among several.
func TestPerJar(t *testing.T) {
	is := regexp.MustCompile(`(?i)\b(each|every|per|apiece)\b`)
	for _, text := range spoken {
		if got, want := perJar(text), is.MatchString(text); got != want {
			t.Errorf("%q: %t, want %t", text, got, want)
		}
	}
}
