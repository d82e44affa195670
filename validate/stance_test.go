package validate

import (
	"os"
	"strings"
	"testing"
)

// TestStance reads testdata/stance.txt: before each sentence stands how it
// means that jars are turned upside down.
func TestStance(t *testing.T) {
	data, err := os.ReadFile("testdata/stance.txt")
	if err != nil {
		t.Fatal(err)
	}
	names := map[string]stance{"told": told, "denied": denied, "reported": reported, "asked": asked}
	l := learnt()
	for line := range strings.Lines(string(data)) {
		word, text, ok := strings.Cut(strings.TrimSpace(line), "\t")
		if !ok || strings.HasPrefix(line, "#") {
			continue
		}
		want, known := names[word]
		if !known {
			t.Fatalf("unknown stance %q", word)
		}
		p := &passage{place: placeHead, text: text}
		(&cutter{lex: l}).cut(p)
		got, found := stanceOf(p, upsideDown.Practice.owner)
		if !found {
			t.Errorf("nothing is found in %q", text)
		} else if got != want {
			t.Errorf("stance of %q = %v, want %s", text, got, word)
		}
	}
}

func stanceOf(p *passage, owner int32) (stance, bool) {
	for i := range p.sentences {
		s := &p.sentences[i]
		for _, h := range s.hits {
			if h.owner == owner {
				return s.stance(h), true
			}
		}
	}
	return told, false
}
