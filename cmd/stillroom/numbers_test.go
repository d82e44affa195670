package main

import (
	"fmt"
	"io"
	"math/big"
	"path/filepath"
	"strings"
	"testing"

	"stillroom/content"
)

// TestNumbersStay does everything with the example site that reckons with its
// numbers. Equal numbers are held once for all recipes, so that whoever changed one
// would change it everywhere.
func TestNumbersStay(t *testing.T) {
	want := map[*big.Rat]string{}
	read := func(text string) {
		q, err := content.ParseQuantity(text)
		if err != nil {
			t.Fatal(err)
		}
		want[q.Low] = q.Low.RatString()
	}
	for n := range 1000 {
		read(fmt.Sprint(n, " cups"))
		for _, part := range []string{"1/8", "1/4", "1/3", "1/2", "2/3", "3/4"} {
			if n < 20 {
				read(fmt.Sprint(n, " ", part, " cups"))
			}
		}
	}
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	dir := t.TempDir()
	for name, data := range exampleFiles(t) {
		(&publisher{t: t}).write(filepath.Join(dir, name), data)
	}
	recipe := filepath.Join(dir, "content", "recipes", "apple-butter.md")
	for _, args := range [][]string{
		{"publish", dir, "--to", filepath.Join(dir, "site"), "--day", "2026-11-25"},
		{"check", dir, "--format", "json"},
		{"scale", recipe, "--by", "2"},
		{"labels", recipe, "--made", "2026-11-20", "--out", filepath.Join(dir, "labels.pdf")},
	} {
		var errors strings.Builder
		if code := run(args, strings.NewReader(""), io.Discard, &errors); code != 0 {
			t.Errorf("%s: exit %d: %s", strings.Join(args, " "), code, errors.String())
		}
	}
	for n, was := range want {
		if is := n.RatString(); is != was {
			t.Errorf("%s has become %s", was, is)
		}
	}
}
