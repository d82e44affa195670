package build

import (
	"bytes"
	"os"
	"slices"
	"strings"
	"testing"
)

// A search around the words of time finds what a search of the whole sentence
// finds: in sentences of every sort, and where numbers, words and units stand
// in every order.
func TestAroundTimes(t *testing.T) {
	data, err := os.ReadFile("../validate/testdata/sentences.tsv")
	if err != nil {
		t.Fatal(err)
	}
	var all []string
	for line := range bytes.Lines(data) {
		all = append(all, string(line))
	}
	counts := []string{"", "½", "3½", "100 1/2", "a", "twelve", "1/2", "x2", "Overnight", "over night", "MIN", "for the day", "—"}
	units := []string{"min", "minutes", "Hours", "hr", "h", "days", "weeks.", "wee\u212as", "seconds", "minute's", "midnight", "dayé"}
	for _, a := range counts {
		for _, b := range counts {
			for _, unit := range units {
				for _, form := range []string{"A %s to B %s %u, then", "%sB%u", "%s-B–%u of it", "Boil gently for a good long while, %s or B %u; leave them over the day"} {
					all = append(all, strings.NewReplacer("%s", a, "B %s", b, "B", b, "%u", unit).Replace(form))
				}
			}
		}
	}
	found := 0
	for _, s := range all {
		want := waitTime.FindAllString(s, -1)
		part, _ := aroundTimes(s, beginsTime)
		if got := waitTime.FindAllString(part, -1); !slices.Equal(got, want) {
			t.Errorf("%q: waits %q, want %q", s, got, want)
		}
		part, from := aroundTimes(s, beginsClock)
		got, clocks := kitchenTime.FindAllStringIndex(part, -1), kitchenTime.FindAllStringIndex(s, -1)
		for i := range got {
			got[i][0] += from
			got[i][1] += from
		}
		if !slices.EqualFunc(got, clocks, func(a, b []int) bool { return slices.Equal(a, b) }) {
			t.Errorf("%q: clocks at %v, want %v", s, got, clocks)
		}
		found += len(want) + len(clocks)
	}
	if found < 2000 {
		t.Errorf("only %d times were found at all", found)
	}
}
