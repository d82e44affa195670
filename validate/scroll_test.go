package validate

import (
	"strings"
	"testing"
)

// TestSmall writes every byte at every place of eight, and one beyond.
func TestSmall(t *testing.T) {
	var s scroll
	for c := range 256 {
		for at := range 9 {
			text := strings.Repeat("Q", at) + string([]byte{byte(c)}) + strings.Repeat("z", 8-at)
			want := []byte(text)
			for i, b := range want {
				if 'A' <= b && b <= 'Z' {
					want[i] = b + 'a' - 'A'
				}
			}
			if got := s.small(text); got != string(want) {
				t.Fatalf("small(%q) = %q", text, got)
			}
		}
	}
}

// TestScroll writes more texts than a stretch of memory takes in: those that were
// written first stay as they are.
func TestScroll(t *testing.T) {
	var s scroll
	var all []string
	for i := range 3 * scrollSize / 100 {
		from := s.begin(10)
		s.WriteString(strings.Repeat(string(rune('a'+i%26)), 100)) // more than was announced
		all = append(all, s.since(from))
	}
	for i, text := range all {
		if want := strings.Repeat(string(rune('a'+i%26)), 100); text != want {
			t.Fatalf("text %d is %q, want %q", i, text, want)
		}
	}
}
