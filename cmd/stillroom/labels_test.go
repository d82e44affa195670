package main

import (
	"strings"
	"testing"

	"stillroom/build/labels"
	"stillroom/content"
)

// The page of the command lists every sheet.
func TestLabelsHelpNamesSheets(t *testing.T) {
	listed := strings.Fields(labelsHelp)
	for _, name := range labels.Names() {
		found := false
		for _, word := range listed {
			found = found || word == name
		}
		if !found {
			t.Errorf("stillroom labels --help does not name %s", name)
		}
	}
}

func TestJarsIn(t *testing.T) {
	half, err := content.ParseQuantity("1/2")
	if err != nil {
		t.Fatal(err)
	}
	for _, test := range []struct {
		yield       string
		once, halfs int
	}{
		{"6 half-pint jars", 6, 3},
		{"5 half-pint jars", 5, 3},
		{"3 to 4 pints", 4, 2},
		{"about 7 jars", 7, 4},
		{"2 cups", 0, 0},
		{"12 rings", 0, 0},
	} {
		y, err := content.ParseYield(test.yield)
		if err != nil {
			t.Fatal(err)
		}
		if got, gotHalf := jarsIn(y, nil), jarsIn(y, half.Low); got != test.once || gotHalf != test.halfs {
			t.Errorf("%s: %d jars, %d of half a batch; want %d, %d", test.yield, got, gotHalf, test.once, test.halfs)
		}
	}
	if got := jarsIn(content.Yield{}, nil); got != 0 {
		t.Errorf("of no yield: %d jars", got)
	}
}
