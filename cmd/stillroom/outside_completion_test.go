package main

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// What is typed after the program's name before the tab key is pressed, and the word that it becomes.
var typed = []struct{ line, want string }{
	{"chec", "check"},
	{"check --str", "--strict"},
	{"check --format s", "sarif"},
	{"check --only con", "content"},
	{"fill plu", "plum.md"},
	{"rules time-sh", "time-short"},
	{"processes applesauce-h", "applesauce-hot"},
	{"labels plum.md --sheet letter-3x1", "letter-3x10"},
	{"completion f", "fish"},
}

// shells give the last word of each line, as it is after the tab key.
var shells = map[string]func(t *testing.T, dir string) []string{
	"bash": func(t *testing.T, dir string) []string {
		return atKeyboard(t, dir, "bash --norc -i", "source completion")
	},
	"zsh": func(t *testing.T, dir string) []string {
		return atKeyboard(t, dir, "zsh -f -i", "autoload -Uz compinit; compinit -D; source completion")
	},
	"fish": askFish,
}

// The completions are tried in the shells themselves, and damaged ones must fail.
func TestCompletionInShells(t *testing.T) {
	if testing.Short() {
		t.Skip("three shells are started; run without -short")
	}
	need(t, "bash", "zsh", "fish", "script")
	var want []string
	for _, line := range typed {
		want = append(want, line.want)
	}
	for name, complete := range shells {
		t.Run(name, func(t *testing.T) {
			dir := t.TempDir()
			writeTo(t, filepath.Join(dir, "content/site.yaml"), "name: Larder\n")
			writeTo(t, filepath.Join(dir, "plum.md"), "")
			sound := printed(t, succeeded, "completion", name)
			writeTo(t, filepath.Join(dir, "completion"), sound)
			if got := complete(t, dir); !slices.Equal(got, want) {
				t.Errorf("the words are %q, want %q", got, want)
			}
			writeTo(t, filepath.Join(dir, "completion"), strings.ReplaceAll(sound, "strict", "stern"))
			if got := complete(t, dir); slices.Equal(got, want) {
				t.Error("a completion without --strict completes it")
			}
		})
	}
}

// atKeyboard types the lines at a terminal and has stillroom repeat what it is given.
func atKeyboard(t *testing.T, dir, shell, setUp string) []string {
	t.Helper()
	keys := setUp + "\nstillroom() { echo \"to\"ld: \"$@\"; }\n" // in pieces, as the terminal shows what is typed
	for _, line := range typed {
		keys += "stillroom " + line.line + "\t\n"
	}
	c := exec.CommandContext(t.Context(), "script", "-qec", shell, "/dev/null")
	c.Dir, c.Stdin = dir, strings.NewReader(keys+"exit\n")
	c.Env = append(os.Environ(), "TERM=dumb", "HOME="+dir)
	shown, err := c.CombinedOutput()
	if err != nil {
		t.Fatalf("%v\n%s", err, shown)
	}
	var words []string
	for _, told := range regexp.MustCompile(`told: (?:.* )?(\S+?)/? *\r?\n`).FindAllSubmatch(shown, -1) {
		words = append(words, string(told[1]))
	}
	return words
}

// askFish has fish print what it would complete.
func askFish(t *testing.T, dir string) []string {
	t.Helper()
	keys := "source completion\n"
	for _, line := range typed {
		keys += fmt.Sprintf("complete -C 'stillroom %s'; or echo\n", line.line)
	}
	c := exec.CommandContext(t.Context(), "fish", "--no-config", "-c", keys)
	c.Dir, c.Env = dir, append(os.Environ(), "HOME="+dir)
	out, err := c.Output()
	if err != nil {
		t.Fatal(err)
	}
	var words []string
	for line := range strings.Lines(string(out)) {
		word, _, _ := strings.Cut(strings.TrimSpace(line), "\t")
		words = append(words, strings.TrimSuffix(word, "/"))
	}
	return words
}
