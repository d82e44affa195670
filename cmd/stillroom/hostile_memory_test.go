//go:build unix

package main

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"syscall"
	"testing"
)

func init() { programs["peak"] = peakMain }

// peakMain is "peak PROGRAM ARGS...": it runs a program, and writes after all
// that it says the most memory that it had, in bytes. What getrusage(2) tells of
// a process begins with what its parent had, and this one has little.
func peakMain() {
	cmd := exec.Command(os.Args[1], os.Args[2:]...)
	cmd.Stdout, cmd.Stderr = os.Stderr, os.Stderr
	err := cmd.Run()
	most := cmd.ProcessState.SysUsage().(*syscall.Rusage).Maxrss
	if most < 1<<24 { // kilobytes, but on macOS
		most *= 1024
	}
	fmt.Println(most)
	if err != nil {
		os.Exit(cmd.ProcessState.ExitCode())
	}
}

// A heavy is a site with a file that wants to fill the memory.
type heavy struct {
	name  string
	says  string // a part of the answer
	most  int    // megabytes
	files map[string]filling
}

// A filling is a text with a piece in its middle that is repeated.
type filling struct {
	begin, piece string
	times        int
	end          string
}

func (f filling) write(t *testing.T, name string) {
	t.Helper()
	const block = 64 << 10
	if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
		t.Fatal(err)
	}
	w, err := os.Create(name)
	if err != nil {
		t.Fatal(err)
	}
	defer w.Close()
	w.WriteString(f.begin)
	each := max(1, block/max(1, len(f.piece)))
	many := strings.Repeat(f.piece, each)
	for left := f.times; left > 0; left -= each {
		w.WriteString(many[:min(each, left)*len(f.piece)])
	}
	if _, err := w.WriteString(f.end); err != nil {
		t.Fatal(err)
	}
}

// usual is what a small site takes, and some more for whatever system and
// version of Go.
const usual = 120

const (
	hundredMB = 100 << 20
	draft     = "---\nname: Plum jam\nsummary: Plums.\nstatus: draft\n"
)

// TestHeavy measures in a process of its own how much memory an answer takes.
func TestHeavy(t *testing.T) {
	if testing.Short() {
		t.Skip("writes a gigabyte; run without -short")
	}
	cases := heavyCases()
	t.Logf("%d cases of what wants to fill the memory", len(cases))
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			t.Parallel()
			c.judge(t)
		})
	}
}

func (c heavy) judge(t *testing.T) {
	dir := t.TempDir()
	filling{begin: plainSettings}.write(t, filepath.Join(dir, "content/site.yaml"))
	args := []string{"publish", dir}
	for name, f := range c.files {
		f.write(t, filepath.Join(dir, name))
		if filepath.Dir(name) == "saved" {
			args = []string{"import", filepath.Join(dir, name), "--to", dir}
		}
	}
	said, most := peakOf(t, args...)
	t.Logf("%d MB", most>>20)
	if most>>20 > c.most {
		t.Errorf("%d MB, want %d at most", most>>20, c.most)
	}
	if !strings.Contains(strings.ReplaceAll(said, dir+"/", ""), c.says) || strings.Contains(said, "goroutine ") {
		t.Errorf("%q is not in\n%.2000s", c.says, said)
	}
}

func peakOf(t *testing.T, args ...string) (said string, most int) {
	t.Helper()
	var out, errs bytes.Buffer
	cmd := exec.Command("peak", append([]string{"stillroom"}, args...)...)
	cmd.Env = append(os.Environ(), "GOMAXPROCS=2", "XDG_CACHE_HOME="+t.TempDir())
	cmd.Stdout, cmd.Stderr = &out, &errs
	cmd.Run() // the answers tell whether it did what it should
	most, err := strconv.Atoi(strings.TrimSpace(out.String()))
	if err != nil {
		t.Fatalf("%q: %v\n%s", args, err, &errs)
	}
	return errs.String(), most
}
