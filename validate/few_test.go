package validate

import (
	"slices"
	"strings"
	"testing"
)

// TestHoldsIn looks for a few words in every stretch of every sentence of
// testdata/sentences.tsv, by its sieves and word by word.
func TestHoldsIn(t *testing.T) {
	found := 0
	for _, list := range []string{"jars", "the a", "boil boiling", "in it of to and the jars lids water for not never"} {
		few := fewOf(list)
		for _, tr := range readTrials(t, "sentences.tsv") {
			p := (&cutter{lex: learnt()}).takeIn(passage{text: tr.sentence})
			for i := range p.sentences {
				s := &p.sentences[i]
				for from := range s.len() {
					to := from + 1 + from%9
					want := false
					for k := from; k < min(to, s.len()); k++ {
						want = want || slices.Contains(strings.Fields(list), s.word(k))
					}
					if got := s.holdsIn(&few, from, to); got != want || s.anyIn(list, from, to) != want {
						t.Fatalf("%q from %d to %d of %q: %v, want %v", list, from, to, tr.sentence, got, want)
					}
					if want {
						found++
					}
				}
			}
		}
	}
	if found < 1000 {
		t.Errorf("%d stretches hold a word, want 1,000 at least", found)
	}
}
