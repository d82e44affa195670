package build

import (
	"errors"
	"fmt"
	"io/fs"
	"math/rand/v2"
	"os"
	"os/exec"
	"os/signal"
	"path/filepath"
	"runtime"
	"slices"
	"strconv"
	"strings"
	"syscall"
	"testing"
	"time"

	"golang.org/x/sys/unix"
)

func TestMain(m *testing.M) {
	if dir := os.Getenv("STILLROOM_WRITE_FOR_EVER"); dir != "" {
		writeForEver(dir)
	}
	if dir := os.Getenv("STILLROOM_WRITE_ON_FULL_DISK"); dir != "" {
		writeOnFullDisk(dir)
	}
	if dir := os.Getenv("STILLROOM_WRITE_SECOND"); dir != "" {
		if _, err := (Output{Dir: dir}).Write(second); err != nil {
			fmt.Fprintln(os.Stderr, err)
			os.Exit(1)
		}
		os.Exit(0)
	}
	os.Exit(m.Run())
}

// manyFiles is a site of which two versions have no page in common but one.
func manyFiles(version int) []File {
	files := siteOf("always/index.html", "the same")
	for i := range 150 {
		text := strings.Repeat(fmt.Sprintf("version %d, page %d\n", version, i), 200)
		files = append(files, NewFile(fmt.Sprintf("recipes/%d-%d/index.html", version%2, i), []byte(text)))
	}
	return files
}

// writeForEver is a child process: it publishes until it is killed.
func writeForEver(dir string) {
	for version := 1; ; version++ {
		if _, err := (Output{Dir: dir}).Write(manyFiles(version % 2)); err != nil {
			fmt.Fprintln(os.Stderr, err)
			os.Exit(1)
		}
	}
}

// A run that is killed at any moment leaves a whole site, the old or the new,
// and nothing that the next run could not clear away.
func TestKilled(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "published")
	mustWrite(t, dir, manyFiles(1))
	start := time.Now()
	mustWrite(t, dir, manyFiles(0))
	once := time.Since(start)
	seen := make(map[string]int)
	left := 0
	runs := 0
	least, most := 15, 40
	if n, err := strconv.Atoi(os.Getenv("STILLROOM_KILLS")); err == nil {
		least, most = n, n
	}
	telling := func() bool { return left > 0 && len(seen) == 2 }
	for end := time.Now().Add(4 * time.Second); runs < least || runs < most && time.Now().Before(end) || !telling() && runs < 10*most; runs++ {
		child := exec.Command(os.Args[0])
		child.Env = append(os.Environ(), "STILLROOM_WRITE_FOR_EVER="+dir)
		var stderr strings.Builder
		child.Stderr = &stderr
		if err := child.Start(); err != nil {
			t.Fatal(err)
		}
		longer := time.Duration(1 + runs/least) // the machine may have become busier since
		time.Sleep(once/4 + rand.N(2*once*longer))
		child.Process.Kill()
		child.Wait()
		if stderr.Len() > 0 {
			t.Fatalf("the child could not write: %s", &stderr)
		}
		seen[whole(t, dir)]++
		if _, err := os.Stat(dir + ".next"); err == nil {
			left++
		}
	}
	t.Logf("sites found: %v; %d of %d were killed between first byte and last", seen, left, runs)
	if !telling() {
		t.Error("the kills came at no telling moment")
	}
	mustWrite(t, dir, manyFiles(1))
	wantOnDisk(t, dir, manyFiles(1))
}

// whole says which version a published site is; one that is neither is a fault.
func whole(t *testing.T, dir string) string {
	got := onDisk(t, dir)
	for version := range 2 {
		files := manyFiles(version)
		if len(files) == len(got) && !slices.ContainsFunc(files, func(f File) bool { return got[f.Path] != string(bytesOf(t, f)) }) {
			return fmt.Sprint("version ", version)
		}
	}
	t.Errorf("after a kill %s holds neither site whole: %d files", dir, len(got))
	return "neither"
}

// writeOnFullDisk is a child process that may write no file above 1,000 bytes,
// which fails as a full disk does: in the middle of a file.
func writeOnFullDisk(dir string) {
	signal.Ignore(syscall.SIGXFSZ)
	limit := unix.Rlimit{Cur: 1000, Max: 1000}
	if err := unix.Setrlimit(unix.RLIMIT_FSIZE, &limit); err != nil {
		fmt.Println("setrlimit:", err)
		os.Exit(2)
	}
	_, err := Output{Dir: dir}.Write(append(siteOf("a.html", "small"), NewFile("b.html", make([]byte, 5000))))
	fmt.Println(err)
	if err == nil {
		os.Exit(2)
	}
	os.Exit(0)
}

func TestFullDisk(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "published")
	mustWrite(t, dir, first)
	before := snapshot(t, filepath.Dir(dir))
	child := exec.Command(os.Args[0])
	child.Env = append(os.Environ(), "STILLROOM_WRITE_ON_FULL_DISK="+dir)
	said, err := child.Output()
	if err != nil || !strings.Contains(string(said), "file too large") {
		t.Fatalf("the child said %q, %v", said, err)
	}
	if after := snapshot(t, filepath.Dir(dir)); !slices.Equal(before, after) {
		t.Errorf("%q became %q", before, after)
	}
}

// A folder that may not be written to is left as it is.
func TestReadOnly(t *testing.T) {
	base := t.TempDir()
	dir := filepath.Join(base, "published")
	mustWrite(t, dir, first)
	before := snapshot(t, base)
	os.Chmod(filepath.Dir(base), 0o755)
	os.Chmod(base, 0o555)
	defer os.Chmod(base, 0o755)
	var err error
	asNobody(t, func() { _, err = Output{Dir: dir}.Write(second) })
	if !errors.Is(err, fs.ErrPermission) {
		t.Errorf("error %v, want permission denied", err)
	}
	if after := snapshot(t, base); !slices.Equal(before, after) {
		t.Errorf("%q became %q", before, after)
	}
}

// asNobody calls f with the file rights of a user who owns nothing, if the
// test runs as root, whom no mode stops.
func asNobody(t *testing.T, f func()) {
	if os.Getuid() != 0 {
		f()
		return
	}
	runtime.LockOSThread() // the rights are the thread's
	defer runtime.UnlockOSThread()
	unix.SetfsuidRetUid(65534)
	defer unix.SetfsuidRetUid(0)
	if now, _ := unix.SetfsuidRetUid(-1); now != 65534 {
		t.Skip("file rights cannot be given up here")
	}
	f()
}

// Two runs for one output do not write at once.
func TestLocked(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "published")
	mustWrite(t, dir, first)
	release, err := lock(filepath.Dir(dir))
	if err != nil {
		t.Fatal(err)
	}
	if _, err := (Output{Dir: dir}).Write(second); err == nil || !strings.Contains(err.Error(), "another run is writing there") {
		t.Errorf("error %v", err)
	}
	wantOnDisk(t, dir, first)
	release()
	mustWrite(t, dir, second)
}

// A folder that is a disk of its own, as in a container, cannot be exchanged
// with one beside it, nor files moved into it: they are copied.
func TestMoveInFromAnotherDisk(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "published")
	mustWrite(t, dir, first)
	old, err := readTree(dir)
	if err != nil {
		t.Fatal(err)
	}
	elsewhere, err := os.MkdirTemp("/dev/shm", "stillroom")
	if err != nil {
		t.Fatal(err)
	}
	defer os.RemoveAll(elsewhere)
	next := filepath.Join(elsewhere, "published.next")
	if err := (&stage{old: old, dir: next}).fill(second); err != nil {
		t.Fatal(err)
	}
	if err := moveIn(next, old, second); err != nil {
		t.Fatal(err)
	}
	wantOnDisk(t, dir, second)
}
