package build

import (
	"testing"

	"github.com/google/go-cmp/cmp"
)

// The vectors are those of the podcast namespace's page on its guid.
func TestNameUUID(t *testing.T) {
	for name, want := range map[string]string{
		"podnews.net/rss":                  "9b024349-ccf0-5f69-a609-6b82873eab3c",
		"mp3s.nashownotes.com/pc20rss.xml": "917393e3-1b1e-5cef-ace4-edaa54e1f810",
	} {
		if got := nameUUID(podcasts, name); got != want {
			t.Errorf("nameUUID(%q) = %s, want %s", name, got, want)
		}
	}
}

// RFC 2606, 2 and 3: names that nobody can own.
func TestIsExample(t *testing.T) {
	for address, want := range map[string]bool{
		"https://larder.example": true, "https://EXAMPLE.com": true, "https://www.example.net:8443": true, "https://example.org.": true,
		"https://jars.test": true, "https://localhost": true, "https://a.invalid": true,
		"https://larder.internal": false, "https://myexample.com": false, "https://example.co": false, "https://test.larder.internal": false,
	} {
		if got := isExample(address); got != want {
			t.Errorf("isExample(%q) = %t", address, got)
		}
	}
}

func TestGUIDs(t *testing.T) {
	episode := func(rest string) string {
		return "---\nname: One\nsummary: One.\npublished: 2026-01-01\n" + rest + "---\n"
	}
	site := map[string]string{
		"content/site.yaml":             "name: Larder\naddress: https://larder.example\nprogramme: {name: Talk}\n",
		"content/guids.txt":             "content/episodes/gone.md: gone\ncontent/episodes/old.md: renamed\ncontent/episodes/silent.md: kept\n",
		"content/episodes/renamed.md":   episode("guid: renamed\n"),
		"content/episodes/silent.md":    episode(""),
		"content/episodes/new.md":       episode(""),
		"content/episodes/stated.md":    episode("guid: stated\n"),
		"content/episodes/draft.md":     episode("status: draft\nguid: draft\n"),
		"content/episodes/scheduled.md": "---\nname: Later\nsummary: Later.\npublished: 2027-01-01\n---\n",
	}
	const want = `content/episodes/gone.md: gone
content/episodes/new.md: https://larder.example/show-notes/new/
content/episodes/renamed.md: renamed
content/episodes/silent.md: kept
content/episodes/stated.md: stated
content/site.yaml: 35367e4d-25c9-5a0a-adc3-0144099284a7
`
	list := func() string {
		text := string(GUIDs(checked(t, "2026-06-01", site)).Text())
		return text[len(text)-len(want):]
	}
	first := list()
	if diff := cmp.Diff(want, first); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
	site["content/guids.txt"] = first
	site["content/site.yaml"] = "name: Larder\naddress: https://elsewhere.example\nprogramme: {name: Talk}\n"
	if diff := cmp.Diff(first, list()); diff != "" {
		t.Errorf("after the site has moved (-want +got):\n%s", diff)
	}
	delete(site, "content/guids.txt")
	site["content/site.yaml"] = "name: Larder\n"
	if got := GUIDs(checked(t, "2026-06-01", site)); len(got) > 0 {
		t.Errorf("a site without programme remembers %v", got)
	}
}
