package validate

import (
	"slices"
	"testing"
)

// TestAnchors looks for every phrase in every sentence of
// testdata/sentences.tsv: those that are passed over for want of their anchor
// are not there.
func TestAnchors(t *testing.T) {
	l := learnt()
	found := 0
	for _, tr := range readTrials(t, "sentences.tsv") {
		p := &passage{text: tr.sentence}
		(&cutter{lex: l}).cut(p)
		for i := range p.sentences {
			s := &p.sentences[i]
			got, want := l.search(s, nil), everyPhrase(l, s)
			if !slices.Equal(got, want) {
				t.Errorf("%q: found %v, want %v", tr.sentence, got, want)
			}
			found += len(want)
		}
	}
	if found < 500 {
		t.Errorf("%d phrases found, want at least 500", found)
	}
}

// everyPhrase tries each phrase at each word.
func everyPhrase(l *lexicon, s *sentence) (found []hit) {
	for i := range s.len() {
		for n := range l.phrases {
			p := &l.phrases[n]
			if l.take(s, &p.elements[0], i) == 0 {
				continue
			}
			if end := l.follow(s, p.elements, i); end > 0 {
				found = append(found, hit{p.owner, p.maybe, p.denies, i, end})
			}
		}
	}
	return found
}
