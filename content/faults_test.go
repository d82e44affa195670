package content

import (
	"bytes"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/rogpeppe/go-internal/txtar"
)

var update = flag.Bool("update", false, "rewrite the wanted faults in testdata")

// TestFaults reads every file of every archive in testdata/faults, and
// compares the faults with those of its last file, want.
//
// In a file whose name ends in " escaped" \t, \r, \xff and the like stand for
// bytes that no editor shows. Keys that are missing at the top of the front
// matter are left out of want, except in missing.txtar, so that a case can be
// as short as its point.
func TestFaults(t *testing.T) {
	archives, err := filepath.Glob("testdata/faults/*.txtar")
	if err != nil || len(archives) == 0 {
		t.Fatalf("no archives in testdata/faults: %v", err)
	}
	for _, file := range archives {
		t.Run(strings.TrimSuffix(filepath.Base(file), ".txtar"), func(t *testing.T) {
			a, err := txtar.ParseFile(file)
			if err != nil {
				t.Fatal(err)
			}
			var got bytes.Buffer
			for _, f := range a.Files[:len(a.Files)-1] {
				name, data := unescape(t, f)
				_, faults := readAs(name, data)
				writeFaults(&got, faults, strings.Contains(file, "missing"))
			}
			compareLast(t, file, a, got.Bytes())
		})
	}
}

// compareLast compares got with the last file of an archive, or replaces it.
func compareLast(t *testing.T, file string, a *txtar.Archive, got []byte) {
	t.Helper()
	want := &a.Files[len(a.Files)-1]
	if !strings.HasPrefix(want.Name, "want") {
		t.Fatalf("the last file is called %s, not want", want.Name)
	}
	if *update {
		want.Data = got
		if err := os.WriteFile(file, txtar.Format(a), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	if diff := cmp.Diff(strings.Split(string(want.Data), "\n"), strings.Split(string(got), "\n")); diff != "" {
		t.Errorf("-want +got:\n%s", diff)
	}
}

// unescape gives the name and the bytes of a case.
func unescape(t *testing.T, f txtar.File) (name string, data []byte) {
	t.Helper()
	name, escaped := strings.CutSuffix(f.Name, " escaped")
	if !escaped {
		return name, f.Data
	}
	text := strings.ReplaceAll(strings.ReplaceAll(string(f.Data), `"`, `\"`), "\n", `\n`)
	s, err := strconv.Unquote(`"` + text + `"`)
	if err != nil {
		t.Fatalf("%s: %v", f.Name, err)
	}
	return name, []byte(s)
}

func writeFaults(b *bytes.Buffer, faults []Fault, missing bool) {
	for _, f := range faults {
		if f.Kind == MissingKey && f.Pos.Col == 1 && !missing {
			continue
		}
		fmt.Fprintf(b, "%s: %s [%s]\n", f.Pos, f.Message, f.Kind)
		if f.Advice != "" {
			fmt.Fprintf(b, "    %s\n", f.Advice)
		}
		if f.AlsoSay != "" {
			fmt.Fprintf(b, "    %s: %s\n", f.Also, f.AlsoSay)
		}
	}
}
