package build

import (
	"bytes"
	"strings"
	"testing"
	"testing/fstest"

	"stillroom/themes"
)

// withFiles makes a site whose theme has files of its own.
func withFiles(t *testing.T, settings string, files map[string]string) map[string]string {
	t.Helper()
	own := make(fstest.MapFS)
	for name, text := range files {
		own["files/"+name] = &fstest.MapFile{Data: []byte(text)}
	}
	theme, err := themes.Load(own)
	if err != nil {
		t.Fatal(err)
	}
	made, err := Site(checked(t, "2026-09-01", map[string]string{"content/site.yaml": settings}), theme, nil)
	if err != nil {
		t.Fatal(err)
	}
	site := make(map[string]string)
	for _, f := range made {
		site[f.Path] = string(bytesOf(t, f))
	}
	return site
}

// startOf gives the script that every page has in its head.
func startOf(site map[string]string) string {
	for path, text := range site {
		if strings.HasPrefix(path, "assets/scheme.") {
			return text
		}
	}
	return ""
}

const register = `serviceWorker?.register("/offline.js")`

func TestWorker(t *testing.T) {
	site := withFiles(t, "name: Larder\nauthor: Ada Sloe\n", nil)
	if n := compressed([]byte(site["offline.js"])); n == 0 || n > 3<<10 {
		t.Errorf("the worker weighs %d bytes, compressed", n)
	}
	if !strings.Contains(startOf(site), `location.protocol=="https:"&&`) || !strings.Contains(startOf(site), register) {
		t.Errorf("pages do not ask for the worker on https alone: %s", startOf(site))
	}
	if !strings.Contains(site["offline.html"], `<div id="kept">`) {
		t.Error("offline.html has no place for the list of what is kept")
	}
	for path := range site {
		if strings.HasPrefix(path, "assets/offline") || strings.HasPrefix(path, "assets/keep") || strings.HasPrefix(path, "assets/goodbye") {
			t.Errorf("%s is published twice", path)
		}
	}
}

// TestWorkerIsNotWanted holds that the worker of before is taken out of browsers.
func TestWorkerIsNotWanted(t *testing.T) {
	site := withFiles(t, "name: Larder\nauthor: Ada Sloe\n", map[string]string{"offline.js": ""})
	if strings.Contains(startOf(site), register) {
		t.Error("pages still ask for the worker")
	}
	if !strings.Contains(site["offline.js"], "registration.unregister()") || strings.Contains(site["offline.js"], `"fetch"`) {
		t.Errorf("what stands in the worker's place: %s", site["offline.js"])
	}
}

// TestPagesHavePlaceForNotice: the worker keeps no page without it.
func TestPagesHavePlaceForNotice(t *testing.T) {
	n := 0
	for _, f := range published(t) {
		if isPage(t, f) && strings.HasPrefix(f.Path, "recipes/") {
			n++
			if bytes.Count(bytesOf(t, f), []byte("<main")) != 1 || bytes.Count(bytesOf(t, f), []byte("<title>")) != 1 {
				t.Errorf("%s has no place for the notice of a copy", f.Path)
			}
		}
	}
	if n < 20 {
		t.Errorf("only %d pages were looked at", n)
	}
}
