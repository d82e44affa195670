package main

import (
	"bytes"
	"fmt"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// A site is shipped to servers that others wrote, each a process of its own that answers on this machine alone. They say
// whether our keys, names, headers and renames are as servers want them, and what is left when the line breaks.

func TestOutsideShip(t *testing.T) {
	if testing.Short() {
		t.Skip("needs servers; run without -short")
	}
	for _, tt := range []struct {
		name string
		open func(*testing.T) harbour
	}{{"OpenSSH", openSSHServer}, {"versitygw", s3Server}} {
		t.Run(tt.name, func(t *testing.T) { voyages(t, tt.open(t)) })
	}
}

// A server whose disk takes no more says so in the same way as one that may write no file larger than 20 KB: SFTP has one
// code for both. Of a site that does not fit no page is there.
func TestOutsideShipFullDisk(t *testing.T) {
	if testing.Short() {
		t.Skip("needs a server; run without -short")
	}
	s := shipper{openSSHWithin(t, "sh", "-c", `trap "" XFSZ; ulimit -f 40; exec "$@"`, "sh"), shippedLarder(t)}
	said, status := s.publish(t, s.to)
	if status != failed || !strings.Contains(said, "is its disk full?") {
		t.Errorf("status %d\n%s", status, said)
	}
	err := filepath.WalkDir(s.dir, func(name string, d fs.DirEntry, err error) error {
		if filepath.Ext(name) == ".html" {
			t.Errorf("%s is there", name)
		}
		return err
	})
	if err != nil {
		t.Error(err)
	}
}

// A shipper publishes a site to a server, as from the command line.
type shipper struct {
	harbour
	folder string // the site
}

// publish gives what was said, which is never a secret.
func (s shipper) publish(t *testing.T, to string, more ...string) (said string, status int) {
	t.Helper()
	var out bytes.Buffer
	status = run(append([]string{"publish", s.folder, "--day", "2026-10-01", "--to", to}, more...), strings.NewReader(""), &out, &out)
	if strings.Contains(out.String(), canary) {
		t.Errorf("a secret is told:\n%s", &out)
	}
	return out.String(), status
}

func (s shipper) ship(t *testing.T, more ...string) string {
	t.Helper()
	said, status := s.publish(t, s.to, more...)
	if status != succeeded {
		t.Fatalf("status %d\n%s", status, said)
	}
	return said
}

// arrived compares what is there with what goes into a folder.
func (s shipper) arrived(t *testing.T) {
	t.Helper()
	want := filepath.Join(t.TempDir(), "want")
	if said, status := s.publish(t, want); status != succeeded {
		t.Fatal(said)
	}
	if differ := differences(t, want, s.dir); differ != "" {
		t.Fatal(differ)
	}
}

// voyages ships a site, and the same with another recipe, whole and cut off.
func voyages(t *testing.T, h harbour) {
	s := shipper{h, shippedLarder(t)}
	s.firstVoyage(t)
	if strings.HasPrefix(h.to, "s3") {
		headersArrive(t, h)
	}
	program := asProgram(t)
	s.cutVoyages(t, program)
	s.recordingTravels(t, program)
	s.othersStay(t)
	s.listIsLost(t)
	if strings.HasPrefix(h.to, "s3") {
		s.keysRefused(t)
		return
	}
	s.hostsRefused(t)
	s.userRefused(t)
}

func (s shipper) firstVoyage(t *testing.T) {
	if said := s.ship(t, "--dry-run"); !regexp.MustCompile(`(?m)^send    new .*  index.html$`).MatchString(said) {
		t.Errorf("--dry-run:\n%s", said)
	}
	if _, err := os.Stat(s.dir); err == nil {
		t.Error("--dry-run has made the folder")
	}
	s.ship(t)
	s.arrived(t)
	if said := s.ship(t); !strings.Contains(said, " 0 files sent") {
		t.Errorf("nothing had changed:\n%s", said)
	}
}

// asProgram gives a name under which the test is the program: see TestMain.
func asProgram(t *testing.T) string {
	program := filepath.Join(t.TempDir(), "stillroom")
	self, err := os.Executable()
	if err == nil {
		err = os.Symlink(self, program)
	}
	if err != nil {
		t.Fatal(err)
	}
	return program
}

// cutVoyages are killed, or cut off for once, at moments of runs that send and remove a third of the site.
func (s shipper) cutVoyages(t *testing.T, program string) {
	whole := s.line.passed.Load()
	killed := 0
	const cuts = 8
	for i := range int64(cuts) {
		name := filepath.Join(s.folder, "content/recipes/kraut.md")
		lay(t, name, regexp.MustCompile("Cabbage( [0-9]+)?").ReplaceAllString(readFile(t, name), fmt.Sprintf("Cabbage %d", i)))
		lay(t, filepath.Join(s.folder, "themes/enamel/files/style.css"), fmt.Sprintf("body{margin:%dpx}", i))
		cmd := exec.CommandContext(t.Context(), program, "publish", s.folder, "--day", "2026-10-01", "--to", s.to)
		s.line.cutAfter(whole*(i+1)/(cuts*3), func() {
			if i%4 != 0 {
				cmd.Process.Kill()
			}
		})
		said, err := cmd.CombinedOutput()
		s.line.mend()
		if dead := deadLinks(t, s.dir); dead != "" {
			t.Fatalf("cut %d: %s\n%s", i, dead, said)
		}
		if err != nil {
			killed++
			s.ship(t)
		}
		s.arrived(t)
	}
	t.Logf("%d of %d runs were killed and ended by the next", killed, cuts)
	if killed < cuts/3 {
		t.Errorf("only %d of %d runs were killed", killed, cuts)
	}
}

// othersStay: what is not ours stays, and is named.
func (s shipper) othersStay(t *testing.T) {
	mine := filepath.Join(s.dir, "recipes", "mine.txt")
	lay(t, mine, "mine")
	os.Remove(filepath.Join(s.folder, "content/recipes/kraut.md"))
	if said := s.ship(t); !strings.Contains(said, "Left alone, since Stillroom did not put it there: recipes/mine.txt.") {
		t.Errorf("nothing of a file that is not ours:\n%s", said)
	}
	if readFile(t, mine) != "mine" {
		t.Error("a file of the author's own was changed")
	}
	os.Remove(mine)
	s.arrived(t)
}

// listIsLost leads to a question, not to loss.
func (s shipper) listIsLost(t *testing.T) {
	os.Remove(filepath.Join(s.dir, ".stillroom"))
	if said, status := s.publish(t, s.to); status != failed || !strings.Contains(said, "--take-over") {
		t.Errorf("without a list: %d\n%s", status, said)
	}
	s.ship(t, "--take-over")
	s.arrived(t)
}
