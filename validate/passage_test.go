package validate

import (
	"slices"
	"testing"
)

// TestCutterAgain reads the sentences of testdata/sentences.tsv with one cutter, a
// few texts after another in the same room, and each with a new one.
func TestCutterAgain(t *testing.T) {
	again := &cutter{lex: learnt()}
	for i, tr := range readTrials(t, "sentences.tsv") {
		if i%7 == 0 {
			again.clear()
		}
		got := again.takeIn(passage{text: tr.sentence})
		want := (&cutter{lex: learnt()}).takeIn(passage{text: tr.sentence})
		if got.low != want.low || !slices.Equal(got.tokens, want.tokens) || len(got.sentences) != len(want.sentences) {
			t.Fatalf("%q: read %+v, want %+v", tr.sentence, got.tokens, want.tokens)
		}
		for k := range got.sentences {
			g, w := &got.sentences[k], &want.sentences[k]
			if !slices.Equal(g.hits, w.hits) || !slices.Equal(g.cues, w.cues) || !slices.Equal(g.figures(), w.figures()) || len(g.uses()) != len(w.uses()) {
				t.Fatalf("%q: found %v %v %v, want %v %v %v", tr.sentence, g.hits, g.cues, g.figures(), w.hits, w.cues, w.figures())
			}
		}
	}
}
