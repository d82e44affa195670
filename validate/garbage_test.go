package validate

import (
	"fmt"
	"os"
	"runtime/debug"
	"strings"
	"testing"

	"stillroom/content"
)

// garbage is what a cook may leave behind in place of a value.
var garbage = []string{"", "foo", "0", "-1", "1-2", "[]", "{}", "9999999999999", "1/0 cup", "5 to 3 lb"}

// TestGarbage puts garbage in place of every value of some recipes, one at a
// time. Whatever the rules say of it, none may break down.
func TestGarbage(t *testing.T) {
	n := 0
	for name, text := range exampleTexts(t) {
		lines := strings.Split(text, "\n")
		for i, line := range lines {
			if i > 0 && line == "---" {
				break // the body is other people's to spoil
			}
			at := strings.Index(line, ": ")
			item := strings.Index(line, "- ")
			if at < 0 && item < 0 {
				continue
			}
			cut := max(at, item) + 2
			for _, g := range garbage {
				n++
				changed := strings.Join(lines[:i], "\n") + "\n" + line[:cut] + g + "\n" + strings.Join(lines[i+1:], "\n")
				judge(t, fmt.Sprintf("%s:%d: %s", name, i+1, g), changed)
			}
		}
	}
	if n < 2000 {
		t.Errorf("%d values are replaced, want 2,000", n)
	}
}

func judge(t *testing.T, what, text string) {
	t.Helper()
	defer func() {
		if v := recover(); v != nil {
			t.Errorf("%s: %v\n%s", what, v, debug.Stack())
		}
	}()
	r, _ := content.ReadRecipe("garbage.md", []byte(text))
	checkRecipe(r, Rules)
}

// exampleTexts gives example recipes of every way of keeping by their names,
// and one with keys that none of them has.
func exampleTexts(t *testing.T) map[string]string {
	texts := map[string]string{"more": moreKeys}
	for _, name := range []string{"blackberry-jam", "chile-salsa", "dried-apple-rings", "green-beans-in-pints", "sauerkraut", "sweet-corn-off-the-cob"} {
		text, err := os.ReadFile("../content/recipes/" + name + ".md")
		if err != nil {
			t.Fatal(err)
		}
		texts[name] = string(text)
	}
	return texts
}

const moreKeys = `---
name: Odd jam
kind: jam
produce: [peaches]
yield: 6 half-pint jars
times: {}
times:
  cooking: 5 min
scale:
  smallest: 1/2
  largest: 3
ingredients:
  - 4 cups crushed peaches
  - 2 cups (400 g) sugar
  - 1 box powdered pectin
  - 2 tbsp butter
keeping:
  - way: boiling-water
    tested_by:
      authority: a
      reference: b
      date: 2026-01-01
    factor: 2
    ph: 4.0
    measured: 2026-01-01
    headspace: 1/8 in
    acid: 1 tbsp bottled lemon juice per pint
    keeps: 2 years
  - way: fermenting
    salt: 2%
    temperature: 50 F
    duration: 1 week
    keeps: 1 month
  - way: drying
    temperature: 200 F
    duration: 2 h
    blanch: 1 min
    keeps: 1 month
  - way: freezer
    container: gallon tubs
    headspace: 1/8 in
    blanch: 1 min
    keeps: 3 years
batches:
  - made: 2026-01-01
    yield: 3 jars
    ph: 4
    altitude: 100 ft
---
`
