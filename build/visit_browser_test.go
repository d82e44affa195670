package build

import (
	"bytes"
	"encoding/json"
	"maps"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

const visitsScript = "../.ci/checks/visits.mjs"

// A modelled visit is what a page may ask for, as /headers.json lets browsers
// keep it.
type modelled struct {
	First  []string `json:"first"`
	Second []string `json:"second"`
}

// TestBrowserAsksNoMore has Chromium visit a page of each kind twice: it asks for
// nothing that a visit was not reckoned with.
func TestBrowserAsksNoMore(t *testing.T) {
	needBrowser(t)
	files := published(t)
	tr, model := trafficOf(files), make(map[string]modelled)
	for _, l := range limits {
		i := slices.IndexFunc(files, func(f File) bool { got, _ := limitOf(f.Path); return got.kind == l.kind && isPage(t, f) })
		set, err := tr.asked(files[i].Path)
		if err != nil {
			t.Fatal(err)
		}
		var m modelled
		for _, p := range slices.Sorted(maps.Keys(set)) {
			m.First = append(m.First, p)
			if !strings.Contains(Headers(p)["Cache-Control"], "immutable") {
				m.Second = append(m.Second, p)
			}
		}
		model["/"+strings.TrimSuffix(files[i].Path, "index.html")] = m
	}
	dir := t.TempDir()
	layOut(t, dir, files)
	if said, err := visited(t, dir, model); err != nil {
		t.Errorf("%v\n%s", err, said)
	}
	home := map[string]modelled{"/": {First: model["/"].First, Second: model["/"].Second}}
	headers := filepath.Join(dir, "headers.json")
	text, err := os.ReadFile(headers)
	if err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(headers, bytes.ReplaceAll(text, []byte(forGood), []byte(askAgain)), 0o666); err != nil {
		t.Fatal(err)
	}
	if said, err := visited(t, dir, home); err == nil || !strings.Contains(said, "the second visit asks for assets/") {
		t.Errorf("files that may not be kept are not seen: %v\n%s", err, said)
	}
	home["/"] = modelled{First: []string{"index.html"}, Second: model["/"].Second}
	if said, err := visited(t, dir, home); err == nil || !strings.Contains(said, "the first visit asks for assets/") {
		t.Errorf("files that were not reckoned with are not seen: %v\n%s", err, said)
	}
}

// visited gives what the checker says.
func visited(t *testing.T, dir string, model map[string]modelled) (string, error) {
	t.Helper()
	list, err := json.Marshal(model)
	if err != nil {
		t.Fatal(err)
	}
	cmd := exec.CommandContext(t.Context(), "node", visitsScript, dir)
	cmd.Stdin = bytes.NewReader(list)
	said, err := cmd.CombinedOutput()
	return string(said), err
}

func layOut(t *testing.T, dir string, files []File) {
	t.Helper()
	for _, f := range files {
		name := filepath.Join(dir, filepath.FromSlash(f.Path))
		if err := os.MkdirAll(filepath.Dir(name), 0o777); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(name, bytesOf(t, f), 0o666); err != nil {
			t.Fatal(err)
		}
	}
}

// needBrowser skips the test where Chromium is not installed, and fails it where
// STILLROOM_CHECKERS says that all is.
func needBrowser(t *testing.T) {
	t.Helper()
	_, noNode := exec.LookPath("node")
	_, noShell := exec.LookPath("chromium-headless-shell")
	_, noModules := os.Stat("../.ci/checks/node_modules")
	if noNode == nil && noShell == nil && noModules == nil && !testing.Short() {
		return
	}
	const why = `needs Chromium and the packages of .ci/checks: "bash .ci/run" installs them`
	if os.Getenv("STILLROOM_CHECKERS") == "required" {
		t.Fatal(why)
	}
	t.Skip(why)
}
