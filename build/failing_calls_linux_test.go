package build

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"testing"
)

// TestFailingCalls lets the disk fill up, the right to write be taken away or the disk break, from the first call of a
// sort on, from the second, and so on: the site is the old one if the run says that it failed, else the new one, and the
// next run clears away what is left.
func TestFailingCalls(t *testing.T) {
	needStrace(t)
	for _, fault := range []struct{ call, is string }{
		{"write", "ENOSPC"}, {"openat", "ENOSPC"}, {"mkdirat", "EDQUOT"}, {"linkat", "EMLINK"},
		{"openat", "EACCES"}, {"mkdirat", "EACCES"}, {"renameat2", "EACCES"}, {"unlinkat", "EACCES"},
		{"write", "EIO"}, {"fsync", "EIO"}, {"openat", "EROFS"},
	} {
		t.Run(fault.call+" "+fault.is, func(t *testing.T) {
			failed := 0
			for n := 1; n < 50; n++ {
				dir := filepath.Join(t.TempDir(), "published")
				mustWrite(t, dir, first)
				said, err := failingFrom(dir, n, fault.call, fault.is)
				want := second
				if err != nil {
					want, failed = first, failed+1
				}
				if !holds(t, dir, want) {
					t.Errorf("from call %d on: %v, %s, and then there is %q", n, err, said, onDisk(t, dir))
				}
				mustWrite(t, dir, second)
				wantOnDisk(t, dir, second)
				if err == nil {
					break
				}
			}
			t.Logf("%d runs failed", failed)
		})
	}
}

// failingFrom publishes the second site where calls of a sort fail that are about it.
func failingFrom(dir string, n int, call, is string) (said []byte, err error) {
	args := []string{"-f", "-qq", "-o", "/dev/null", "-e", "trace=" + call, "-e", fmt.Sprintf("inject=%s:error=%s:when=%d+", call, is, n)}
	for _, path := range []string{"", ".next", ".next/" + ListName, ".next/recipes", ".next/recipes/damson", ".next/recipes/sloe"} {
		args = append(args, "-P", dir+path)
	}
	for _, f := range second {
		args = append(args, "-P", dir+".next/"+f.Path)
	}
	cmd := exec.Command("strace", append(args, os.Args[0])...)
	cmd.Env = append(os.Environ(), "STILLROOM_WRITE_SECOND="+dir, "GOMAXPROCS=1")
	return cmd.CombinedOutput()
}

// holds reports whether a folder holds a site, whole and without more.
func holds(t *testing.T, dir string, site []File) bool {
	t.Helper()
	got := onDisk(t, dir)
	for _, f := range site {
		if text, ok := got[f.Path]; !ok || text != string(bytesOf(t, f)) {
			return false
		}
	}
	return len(got) == len(site)
}
