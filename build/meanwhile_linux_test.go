package build

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// What somebody puts into the output while a site is made is not cleared away with the site before it.
func TestPutThereMeanwhile(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "published")
	mustWrite(t, dir, first)
	o := Output{Dir: dir, Progress: func(done, total int) {
		if done == total {
			put(t, dir+"/CNAME", "mine")
		}
	}}
	_, err := o.Write(second)
	if want := dir + " is published; but meanwhile"; err == nil || !strings.HasPrefix(err.Error(), want) || !strings.HasSuffix(err.Error(), ".next for their sake: CNAME") {
		t.Errorf("error %v, want %s", err, want)
	}
	if !holds(t, dir, second) {
		t.Errorf("on disk is %q", onDisk(t, dir))
	}
	if _, err := (Output{Dir: dir}).Write(first); err == nil || !strings.HasSuffix(err.Error(), "that would be lost: CNAME") {
		t.Errorf("the next run: %v", err)
	}
	mine := dir + ".next/CNAME"
	if text, err := os.ReadFile(mine); err != nil || string(text) != "mine" {
		t.Errorf("%q, %v", text, err)
	}
	os.Remove(mine)
	mustWrite(t, dir, first)
	wantOnDisk(t, dir, first)
}
