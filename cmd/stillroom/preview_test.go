package main

import (
	"bufio"
	"bytes"
	"errors"
	"io"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"runtime"
	"strings"
	"sync"
	"testing"
	"time"
)

// A running preview is a process of its own.
type running struct {
	t       *testing.T
	cmd     *exec.Cmd
	address string
	said    *heard
}

// A heard text grows while somebody reads it.
type heard struct {
	mu   sync.Mutex
	text bytes.Buffer
}

func (h *heard) Write(b []byte) (int, error) {
	h.mu.Lock()
	defer h.mu.Unlock()
	return h.text.Write(b)
}

func (h *heard) String() string {
	h.mu.Lock()
	defer h.mu.Unlock()
	return h.text.String()
}

// startPreview runs the program, as testscript.Main does for a script, and reads
// the address that it prints.
func startPreview(t *testing.T, args ...string) *running {
	t.Helper()
	exe, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	r := &running{t: t, said: new(heard), cmd: exec.Command(exe)}
	r.cmd.Args = append([]string{"stillroom", "preview"}, args...)
	r.begin(t.TempDir())
	return r
}

// begin starts the process, with a folder to keep prints in.
func (r *running) begin(cache string) {
	t := r.t
	t.Helper()
	r.cmd.Env = append(os.Environ(), "XDG_CACHE_HOME="+cache)
	r.cmd.Stderr = r.said
	out, err := r.cmd.StdoutPipe()
	if err == nil {
		err = r.cmd.Start()
	}
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { r.cmd.Process.Kill() })
	line, err := bufio.NewReader(out).ReadString('\n')
	if err != nil {
		t.Fatal(err, r.said)
	}
	r.address = strings.TrimSpace(line)
}

// page gives a page of the site.
func (r *running) page(address string) string {
	r.t.Helper()
	answer, err := http.Get(r.address + address)
	if err != nil {
		r.t.Fatal(err)
	}
	defer answer.Body.Close()
	body, err := io.ReadAll(answer.Body)
	if err != nil {
		r.t.Fatal(err)
	}
	return string(body)
}

// until waits for something to become true, and fails the test if it does not.
func (r *running) until(what string, is func() bool) {
	r.t.Helper()
	for end := time.Now().Add(20 * time.Second); !is(); time.Sleep(5 * time.Millisecond) {
		if time.Now().After(end) {
			r.t.Fatalf("%s: it never came about; said:\n%s", what, r.said)
		}
	}
}

// end interrupts the preview and gives its exit status.
func (r *running) end() int {
	r.t.Helper()
	if err := r.cmd.Process.Signal(os.Interrupt); err != nil {
		r.t.Fatal(err)
	}
	var exit *exec.ExitError
	if err := r.cmd.Wait(); err != nil && !errors.As(err, &exit) {
		r.t.Fatal(err)
	}
	return r.cmd.ProcessState.ExitCode()
}

// larder writes a small site, and gives its folder and its one recipe.
func larder(t *testing.T) (dir, recipe string) {
	t.Helper()
	dir = t.TempDir()
	write := func(name, text string) {
		name = filepath.Join(dir, filepath.FromSlash(name))
		if err := errors.Join(os.MkdirAll(filepath.Dir(name), 0o777), os.WriteFile(name, []byte(text), 0o666)); err != nil {
			t.Fatal(err)
		}
	}
	write("content/site.yaml", "name: Ada's Larder\nauthor: Ada Sloe\n")
	write("content/recipes/kraut.md", kraut)
	return dir, filepath.Join(dir, "content", "recipes", "kraut.md")
}

const kraut = `---
name: Kraut
summary: Cabbage and salt.
status: draft
kind: pickle
produce: [cabbage]
yield: 2 quarts
ingredients: [5 lb cabbage, 3 tbsp pickling salt]
keeping:
  - way: refrigerator
    keeps: 3 weeks
---
1. Wash your hands and the jars. Shred the cabbage, add the salt and press.
`

// What is saved is shown, what is wrong is said, an interrupt is the end of it,
// and the site is as its author has left it.
func TestPreview(t *testing.T) {
	if runtime.GOOS == "windows" {
		t.Skip("no process can be interrupted from another one")
	}
	t.Parallel()
	dir, recipe := larder(t)
	r := startPreview(t, dir, "--address", "127.0.0.1:0")
	if !regexp.MustCompile(`^http://127\.0\.0\.1:\d+/$`).MatchString(r.address) {
		t.Fatalf("the address is %q", r.address)
	}
	if !strings.Contains(r.page("recipes/kraut/"), "Shred the cabbage") {
		t.Error("a draft is not shown")
	}
	save := func(old, new string) {
		if err := os.WriteFile(recipe, []byte(strings.Replace(kraut, old, new, 1)), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	save("Shred", "Slice")
	r.until("the page after a save", func() bool { return strings.Contains(r.page("recipes/kraut/"), "Slice the cabbage") })
	save("kind: pickle", "kind: pickel")
	r.until("the finding after a mistake", func() bool {
		return strings.Contains(r.said.String(), `content/recipes/kraut.md:5:7: error: `) && strings.Contains(r.said.String(), "1 recipe, 0 episodes, 0 pages: 1 error,")
	})
	if status := r.end(); status != succeeded {
		t.Errorf("interrupted, it ends with %d:\n%s", status, r.said)
	}
	if names, err := filepath.Glob(filepath.Join(dir, "*")); err != nil || len(names) != 1 {
		t.Errorf("the site holds %v, %v", names, err)
	}
}

// Where a disk does not tell of changes, each file is looked at again and again.
func TestPreviewPolls(t *testing.T) {
	t.Parallel()
	dir, recipe := larder(t)
	r := startPreview(t, dir, "--address", "127.0.0.1:0", "--poll")
	if err := os.WriteFile(recipe, []byte(strings.Replace(kraut, "Shred", "Slice up", 1)), 0o666); err != nil {
		t.Fatal(err)
	}
	r.until("the page after a save", func() bool { return strings.Contains(r.page("recipes/kraut/"), "Slice up the cabbage") })
}

// Two previews stand side by side, and both see a save. One that was given an address does not take
// another.
func TestPreviewBesideAnother(t *testing.T) {
	t.Parallel()
	dir, recipe := larder(t)
	one, other := startPreview(t, dir), startPreview(t, dir)
	if one.address == other.address || !strings.Contains(one.page(""), "Ada") || !strings.Contains(other.page(""), "Ada") {
		t.Errorf("they answer at %s and %s", one.address, other.address)
	}
	if !strings.Contains(other.said.String(), " is taken by ") {
		t.Errorf("the second says:\n%s", other.said)
	}
	if err := os.WriteFile(recipe, []byte(strings.Replace(kraut, "Shred", "Slice", 1)), 0o666); err != nil {
		t.Fatal(err)
	}
	for _, r := range []*running{one, other} {
		r.until("the page after a save", func() bool { return strings.Contains(r.page("recipes/kraut/"), "Slice the cabbage") })
	}
	var said bytes.Buffer
	taken := strings.Trim(strings.TrimPrefix(one.address, "http:"), "/")
	if status := run([]string{"preview", dir, "--address", taken}, nil, io.Discard, &said); status != failed {
		t.Errorf("at an address that is taken it ends with %d", status)
	}
	want := taken + ` is taken by another program; `
	if runtime.GOOS == "linux" {
		want = taken + ` is taken by stillroom preview `
	}
	if !strings.Contains(said.String(), want) || !regexp.MustCompile(`; (127\.0\.0\.1:\d+) is free: --address 127\.0\.0\.1:\d+\n`).MatchString(said.String()) {
		t.Errorf("it says %q", said.String())
	}
}
