package build

import (
	"bytes"
	"math/rand/v2"
	"os"
	"regexp"
	"strings"
	"testing"

	"stillroom/build/amount"
)

// The expressions say what is set, in texts of every sort and in pieces thrown
// together.
func TestSetNumbers(t *testing.T) {
	fractions := regexp.MustCompile(`(?:\b|[0-9] )(?:1/2|1/4|3/4)\b`)
	ranges := regexp.MustCompile(`([0-9½¼¾]) ?- ?([0-9½¼¾])`)
	sign := func(f string) string {
		if whole, part, ok := strings.Cut(f, " "); ok {
			return whole + signs[part]
		}
		return signs[f]
	}
	data, err := os.ReadFile("../validate/testdata/sentences.tsv")
	if err != nil {
		t.Fatal(err)
	}
	all := append(strings.Split(string(bytes.ToValidUTF8(data, nil)), "\n"), hardTexts...)
	pieces := []string{"1", "2", "1/2", "1/4", "3/4", "/", " ", "-", " - ", "½", "¾", "⅓", "é", "x", "_", "11/2", "1/22", "."}
	for random := rand.New(rand.NewPCG(1, 2)); len(all) < 30_000; {
		s := ""
		for range random.IntN(9) {
			s += pieces[random.IntN(len(pieces))]
		}
		all = append(all, s)
	}
	for _, s := range all {
		if got, want := setFractions(s), fractions.ReplaceAllStringFunc(s, sign); got != want {
			t.Errorf("setFractions(%q) = %q, want %q", s, got, want)
		}
		if got, want := setRanges(s), ranges.ReplaceAllString(s, "$1–$2"); got != want {
			t.Errorf("setRanges(%q) = %q, want %q", s, got, want)
		}
		if got, want := amount.Numbered(s), strings.ContainsAny(s, "0123456789½¼¾⅓⅔⅛⅜⅝⅞"); got != want {
			t.Errorf("Numbered(%q) = %t", s, got)
		}
	}
}
