package content

import (
	"strings"
	"testing"
)

// What is too long to be a recipe is refused at once, and what is just short
// enough is read.
func TestLimits(t *testing.T) {
	for _, c := range []struct {
		name, text string
		want       string // a part of the first fault's message; none if empty
	}{
		{"file", "---\nstatus: draft\n---\n" + strings.Repeat("a\n", maxFile/2-20), ""},
		{"file", "---\nstatus: draft\n---\n" + strings.Repeat("a\n", maxFile/2), "kB"},
		{"front matter", "---\nstatus: draft\n" + strings.Repeat("#\n", maxMatter/2-20) + "---\n", ""},
		{"front matter", "---\nstatus: draft\n" + strings.Repeat("#\n", maxMatter/2) + "---\n", "kB"},
		{"text", "---\nstatus: draft\ninspired_by: " + strings.Repeat("a", maxText) + "\n---\n", ""},
		{"text", "---\nstatus: draft\ninspired_by: " + strings.Repeat("a", maxText+1) + "\n---\n", "takes 4001 bytes"},
		{"text of two bytes a letter", "---\nstatus: draft\ninspired_by: " + strings.Repeat("é", maxText/2+1) + "\n---\n", "takes 4002 bytes"},
		{"produce", "---\nstatus: draft\nproduce: [" + strings.Repeat("ж", longestProduce/2) + "]\n---\n", ""},
		{"produce", "---\nstatus: draft\nproduce: [" + strings.Repeat("ж", longestProduce/2) + "a]\n---\n", "takes 101 bytes"},
		{"depth", "---\nstatus: draft\nbatches: " + strings.Repeat("[", maxDepth) + strings.Repeat("]", maxDepth) + "\n---\n", "batches"},
		{"depth", "---\nstatus: draft\nbatches: " + strings.Repeat("[", maxDepth+1) + strings.Repeat("]", maxDepth+1) + "\n---\n", "too deep"},
	} {
		_, faults := ReadRecipe("a.md", []byte(c.text))
		got := ""
		for _, f := range faults {
			if f.Kind != MissingKey {
				got = f.Message
				break
			}
		}
		if c.want == "" && got != "" || !strings.Contains(got, c.want) {
			t.Errorf("%s of %d bytes: the first fault is %q, want one with %q", c.name, len(c.text), got, c.want)
		}
	}
}

// However much is wrong with a file, no more faults are told than anybody
// reads.
func TestMaxFaults(t *testing.T) {
	_, faults := ReadRecipe("a.md", []byte("---\nstatus: draft\n---\n"+strings.Repeat("\xe9\n", 10_000)))
	if len(faults) != maxFaults {
		t.Errorf("%d faults, want %d", len(faults), maxFaults)
	}
}
