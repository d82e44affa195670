package build

import (
	"fmt"
	"strings"
	"testing"

	"github.com/mmcdole/gofeed"
)

// TestProgrammePages reads the feed as RFC 5005, 3 has it read: from the first
// page along "next" to the last.
func TestProgrammePages(t *testing.T) {
	for _, tt := range []struct {
		episodes int
		want     string // the episodes of each page, the newest first
	}{
		{0, "0"},
		{5, "5"},
		{6, "3 3"},
		{8, "5 3"},
		{9, "3 3 3"},
	} {
		pages := make(map[string]string)
		for _, f := range withAddress(t).programmePages(programme{Title: "Shelf", Items: heard(tt.episodes)}, 3) {
			pages["https://larder.example/"+f.Path] = string(bytesOf(t, f))
		}
		var sizes, titles []string
		for at, n := "https://larder.example/programme.xml", 0; at != "" && n < 9; n++ {
			feed, err := gofeed.NewParser().ParseString(pages[at])
			if err != nil {
				t.Fatalf("%d episodes: %s: %v", tt.episodes, at, err)
			}
			links := make(map[string]string)
			for _, l := range feed.Extensions["atom"]["link"] {
				links[l.Attrs["rel"]] = l.Attrs["href"]
			}
			if links["self"] != at || links["previous"] != "" && !strings.Contains(pages[links["previous"]], `rel="next" type="application/rss+xml" href="`+at) {
				t.Errorf("%d episodes: %s leads to %v", tt.episodes, at, links)
			}
			sizes = append(sizes, fmt.Sprint(len(feed.Items)))
			for _, i := range feed.Items {
				titles = append(titles, i.Title)
			}
			at = links["next"]
		}
		if got := strings.Join(sizes, " "); got != tt.want || len(sizes) != len(pages) {
			t.Errorf("%d episodes: pages of %s in %d files, want %s", tt.episodes, got, len(pages), tt.want)
		}
		for i, title := range titles {
			if want := fmt.Sprint(tt.episodes - i); title != want {
				t.Errorf("%d episodes: %s stands where %s should", tt.episodes, title, want)
			}
		}
	}
}

// TestFullPageOfProgramme: a new episode changes the page of the newest alone.
func TestFullPageOfProgramme(t *testing.T) {
	page := func(episodes int) string {
		files := withAddress(t).programmePages(programme{Items: heard(episodes)}, 3)
		return files[len(files)-1].Path + string(bytesOf(t, files[len(files)-1]))
	}
	if got := page(7); !strings.HasPrefix(got, "programme-1.xml") || got != page(8) {
		t.Errorf("the page of the oldest is no longer %s", got)
	}
}

// withAddress is of a site that has an address.
func withAddress(t *testing.T) *edition {
	t.Helper()
	c := checked(t, "2026-09-01", map[string]string{"content/site.yaml": "name: Larder\nauthor: Ada Sloe\naddress: https://larder.example\n"})
	return newEdition(c.Site(), c.Day(), nil)
}

// heard are episodes by number, the newest first.
func heard(n int) []heardNode {
	var all []heardNode
	for ; n > 0; n-- {
		all = append(all, heardNode{Title: fmt.Sprint(n), GUID: guidNode{Text: fmt.Sprint("guid ", n)}})
	}
	return all
}
