package validate

import (
	"math/rand/v2"
	"strings"
	"testing"
)

// TestSpellShort holds what is read eight letters at a time against reading
// letter by letter.
func TestSpellShort(t *testing.T) {
	letters := []string{"a", "z", "A", "Z", "m", "@", "[", "`", "{", " ", "'", "9", "é", "\x00", "\xff", "bottled"}
	r := rand.New(rand.NewPCG(1, 2))
	for range 20_000 {
		text := ""
		for range r.IntN(14) {
			text += letters[r.IntN(len(letters))]
		}
		at := r.IntN(len(text) + 1)
		want := 0
		for want < 8 && at+want < len(text) && isLetterByte(text[at+want]) {
			want++
		}
		p, n := spellShort(text, at)
		if n != want || p != spell(strings.ToLower(text[at:at+n])) {
			t.Fatalf("%q from %d: %d letters %x, want %d %x", text, at, n, p, want, spell(strings.ToLower(text[at:at+want])))
		}
	}
}

// TestNumber finds every word of the lexicon in a text, whatever stands around it
// and however it is written, and none that is longer.
func TestNumber(t *testing.T) {
	l := learnt()
	for id := 1; id < len(l.words); id++ {
		w := l.words[id].word
		if got := l.number(w); got != int32(id) {
			t.Errorf("the number of %q is %d, want %d", w, got, id)
		}
		if strings.ContainsFunc(w, func(r rune) bool { return r < 'a' || r > 'z' }) {
			continue
		}
		for _, text := range []string{w, strings.ToUpper(w), "12 " + w + " of it", w + "qqqqqqqqqqqqqqqqq"} {
			p := &passage{text: text}
			(&cutter{lex: l}).cut(p)
			tok := p.tokens[min(1, len(p.tokens)-1)]
			if want := strings.HasSuffix(text, "q"); (tok.id == 0) != want || !want && tok.id != int32(id) {
				t.Errorf("in %q: number %d, want %d", text, tok.id, id)
			}
		}
	}
}
