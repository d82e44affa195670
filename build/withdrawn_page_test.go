package build

import (
	"bytes"
	"encoding/json"
	"path"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/txtar"

	"stillroom/content"
)

func withdrawn(t *testing.T) *txtar.Archive {
	t.Helper()
	ar, err := txtar.ParseFile("testdata/withdrawn.txtar")
	if err != nil {
		t.Fatal(err)
	}
	return ar
}

// What was taken back keeps its addresses, and stands on no other page than
// those that speak of it by name: the page of its episode.
func TestWithdrawnIsNowhereElse(t *testing.T) {
	for name, page := range pagesOf(t, withdrawn(t)) {
		at := strings.Contains(string(page), "/recipes/pumpkin-butter/")
		speaks := strings.HasPrefix(name, "recipes/pumpkin-butter/") || name == "show-notes/pumpkins/index.html"
		if at && !speaks {
			t.Errorf("%s leads to the withdrawn recipe", name)
		}
		if !at && speaks && !strings.HasPrefix(name, "recipes/") {
			t.Errorf("%s is silent on the withdrawal", name)
		}
		for _, old := range []string{"brown sugar", "8 min", "half-pint", "Simmer", `"@type":"Recipe","@id":"https://bramley.example/recipes/pumpkin-butter/`} {
			if strings.HasPrefix(name, "recipes/pumpkin-butter/") && strings.Contains(string(page), old) {
				t.Errorf("%s still holds %q", name, old)
			}
		}
	}
}

// Both addresses say since when, why, and what to make instead.
func TestWithdrawnPageSaysWhy(t *testing.T) {
	made := pagesOf(t, withdrawn(t))
	for _, name := range []string{"index.html", "card/index.html"} {
		page := string(made[path.Join("recipes/pumpkin-butter", name)])
		for _, want := range []string{"Withdrawn", "30 August 2026", "Nobody has tested it.", `href="/recipes/apple-butter/"`} {
			if !strings.Contains(page, want) {
				t.Errorf("%s lacks %q", name, want)
			}
		}
	}
}

// A reader's program takes a withdrawal and a correction for a change: RFC
// 4287, 4.2.15, and JSON Feed 1.1, date_modified.
func TestFeedsTellOfWithdrawals(t *testing.T) {
	e := editionOf(t, withdrawn(t))
	for _, f := range [][]File{e.atom(), e.jsonFeed()} {
		data := string(bytesOf(t, f[0]))
		for _, want := range []string{"2026-08-30T00:00:00Z", "Withdrawn: Pumpkin butter", "2026-08-25T00:00:00Z", "It is a quarter of an inch."} {
			if !strings.Contains(data, want) {
				t.Errorf("%s lacks %q", f[0].Path, want)
			}
		}
		if strings.Contains(data, "brown sugar") {
			t.Errorf("%s still has the withdrawn recipe", f[0].Path)
		}
	}
}

func TestRedirectListHoldsEveryMove(t *testing.T) {
	e := editionOf(t, withdrawn(t))
	var list struct {
		Redirects []struct {
			From, To string
			Status   int
		}
	}
	if err := json.Unmarshal(bytesOf(t, e.redirectList()[0]), &list); err != nil {
		t.Fatal(err)
	}
	pages := byPath(e.redirects())
	if len(list.Redirects) != 2 || len(pages) != 2 {
		t.Fatalf("%d in the list, %d pages, want 2 of each", len(list.Redirects), len(pages))
	}
	for _, r := range list.Redirects {
		page := pages[content.FormerPath(r.From)]
		if r.Status != 301 || !e.isOut(r.To) || !bytes.Contains(bytesOf(t, page), []byte(e.absolute(r.To))) {
			t.Errorf("%+v, where the page says %s", r, bytesOf(t, page))
		}
	}
}

// The day of a change is that of the newest of all that can change.
func TestLastChange(t *testing.T) {
	e := editionOf(t, withdrawn(t))
	for slug, want := range map[string]content.Date{
		"apple-butter": {Year: 2026, Month: 8, Day: 25},
	} {
		if got := e.recipe[slug].LastChange(); got != want {
			t.Errorf("%s changed on %s, want %s", slug, got, want)
		}
	}
	if got, want := e.withdrawn[0].LastChange(), (content.Date{Year: 2026, Month: 8, Day: 30}); got != want {
		t.Errorf("the withdrawn one changed on %s, want %s", got, want)
	}
}
