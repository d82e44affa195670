package build

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

// A disk keeps what it was told to keep, and of the rest what it happened to have written when the power went. Here a run
// is watched by strace, call by call, and after each of them the power is cut: of the calls since the last sync the disk
// has none, all, one alone, all but one, the first of them or the last. What it then holds is the old site or the new.

// TestPowerCut is of a run that exchanges the two.
func TestPowerCut(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "published")
	mustWrite(t, dir, first)
	d := lying(t, dir)
	cuts, found := 0, make(map[string]int)
	for _, call := range watched(t, dir) {
		d.do(t, call)
		for _, after := range d.cut() {
			cuts++
			found[after.site(t, dir)]++
		}
	}
	t.Logf("%d power cuts: %v", cuts, found)
	if found["old"] == 0 || found["new"] == 0 || cuts < 100 {
		t.Error("the power was cut at no telling moment")
	}
	wantOnDisk(t, dir, second)
}

// watched publishes the second site in a process of its own, and gives the calls that it made, in turn.
func watched(t *testing.T, dir string) []string {
	t.Helper()
	needStrace(t)
	notes := filepath.Join(t.TempDir(), "calls")
	cmd := exec.Command("strace", "-f", "-y", "-qq", "-s0", "-o", notes, "-e", "trace=openat,mkdirat,linkat,renameat,renameat2,unlinkat,"+
		"write,pwrite64,copy_file_range,sendfile,splice,ftruncate,fsync,fdatasync,syncfs,sync", os.Args[0])
	cmd.Env = append(os.Environ(), "STILLROOM_WRITE_SECOND="+dir, "GOMAXPROCS=1")
	if said, err := cmd.CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, said)
	}
	text, err := os.ReadFile(notes)
	if err != nil {
		t.Fatal(err)
	}
	var calls []string
	begun := make(map[string]string) // by thread
	for line := range strings.Lines(string(text)) {
		thread, call, _ := strings.Cut(strings.TrimSpace(line), " ")
		call = strings.TrimSpace(call)
		if head, ok := strings.CutSuffix(call, " <unfinished ...>"); ok {
			begun[thread] = head
			continue
		}
		if _, rest, ok := strings.Cut(call, " resumed>"); ok {
			call = begun[thread] + rest
		}
		if strings.Contains(call, filepath.Dir(dir)) && !strings.Contains(call, ") = -1 ") {
			calls = append(calls, call)
		}
	}
	return calls
}

// needStrace skips the test where there is no strace, and fails it where all checkers must be there.
func needStrace(t *testing.T) {
	t.Helper()
	if _, err := exec.LookPath("strace"); err != nil {
		if os.Getenv("STILLROOM_CHECKERS") == "required" {
			t.Fatal(err)
		}
		t.Skip("missing: strace. To get it: apt-get install -y --no-install-recommends strace")
	}
}
