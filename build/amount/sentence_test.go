package amount

import (
	"regexp"
	"slices"
	"testing"
)

var spoken = []string{
	"", "a", "a. b", "a.5 b", `He said "boil." Then (stir.) Rest: 3; d`, "a..b", "a..", "a.  b", "a.)b", "1.5 cups. 2 each", "a!\nb?c", `a."'`, "x :y: z",
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
