package validate

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"stillroom/content"
)

// A slip is a way to get one line of a canned way of keeping wrong.
type slip struct {
	line *regexp.Regexp
	make func(m []string) string // the line again, with one value worse
}

var slips = []slip{
	{regexp.MustCompile(`^(\s+(?:- )?.*\bft: |.*\bm: )(\d+)( min.*)$`), lessBy(1)},
	{regexp.MustCompile(`^(\s+time: )(\d+)( min.*)$`), lessBy(1)},
	{regexp.MustCompile(`^(\s+(?:dial|weighted): \{.*?: )(\d+)( psi.*)$`), lessBy(1)},
	{regexp.MustCompile(`^(\s+(?:- )?.*\bft: )(\d+)( psi.*)$`), lessBy(1)},
	{regexp.MustCompile(`^(\s+headspace: )(.*)()$`), put("3 in")},
	{regexp.MustCompile(`^(\s+pack: )(.*)()$`), put("warm")},
	{regexp.MustCompile(`^(\s+process: )(.*)()$`), put("grandmothers-way")},
	{regexp.MustCompile(`^(\s+(?:- )?jar: )(.*)()$`), put("half-gallon")},
	{regexp.MustCompile(`^(\s+acid: )(\d+)( .*)$`), lessBy(1)},
	{regexp.MustCompile(`^(\s+ph: )(.*)()$`), put("4.8")},
}

func lessBy(n int) func([]string) string {
	return func(m []string) string {
		v, err := strconv.Atoi(m[2])
		if err != nil {
			panic(err)
		}
		return m[1] + strconv.Itoa(v-n) + m[3]
	}
}

func put(value string) func([]string) string {
	return func(m []string) string { return m[1] + value + m[3] }
}

// TestBrokenExamples gets every canning value of every example recipe wrong,
// one at a time: each slip must be an error on its own line.
func TestBrokenExamples(t *testing.T) {
	files, err := filepath.Glob("../content/recipes/*.md")
	if err != nil || len(files) < 16 {
		t.Fatalf("%d example recipes, %v", len(files), err)
	}
	n := 0
	for _, name := range files {
		text, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		r, _ := content.ReadRecipe(name, text)
		if r.Withdrawn != nil || !slices.ContainsFunc(r.Keeping, func(k content.Keeping) bool { return k.Way.V.Canned() }) {
			continue
		}
		n += breakLines(t, name, text)
	}
	if n < 150 {
		t.Errorf("only %d values were got wrong", n)
	}
	t.Logf("%d values of the example recipes got wrong, each refused at its line", n)
}

func breakLines(t *testing.T, name string, text []byte) int {
	lines := bytes.Split(text, []byte("\n"))
	n := 0
	for i, line := range cannedLines(lines) {
		if line == "" {
			continue
		}
		for _, s := range slips {
			m := s.line.FindStringSubmatch(line)
			if m == nil {
				continue
			}
			n++
			broken := slices.Clone(lines)
			broken[i] = []byte(s.make(m))
			if err := refusedAt(name, bytes.Join(broken, []byte("\n")), i+1); err != nil {
				t.Errorf("%s:%d: %s: %v", name, i+1, broken[i], err)
			}
		}
	}
	return n
}

// cannedLines keeps the lines of the canned ways of keeping in their places
// and blanks all others.
func cannedLines(lines [][]byte) []string {
	out := make([]string, len(lines))
	canned, inside := false, false
	for i, l := range lines {
		s := string(l)
		switch {
		case strings.HasPrefix(s, "keeping:"):
			inside = true
			continue
		case inside && s != "" && s[0] != ' ':
			return out
		}
		if strings.HasPrefix(s, "  - ") {
			canned = strings.Contains(s, "boiling-water") || strings.Contains(s, "steam") || strings.Contains(s, "pressure")
		}
		if inside && canned {
			out[i] = s
		}
	}
	return out
}

// refusedAt reports a recipe that has no error on that line.
func refusedAt(name string, text []byte, line int) error {
	r, faults := content.ReadRecipe(name, text)
	fs := checkRecipe(r, Rules)
	for _, f := range faults {
		fs = append(fs, faultFinding(f))
	}
	for _, f := range fs {
		if f.Severity == Error && f.Pos.Line == line {
			return nil
		}
	}
	return fmt.Errorf("no error there, but %v", fs)
}
