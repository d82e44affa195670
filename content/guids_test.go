package content

import (
	"testing"
	"testing/fstest"
)

func TestGUIDs(t *testing.T) {
	for _, c := range []struct{ name, text, want string }{
		{"order and remarks", "# mine\n\ncontent/site.yaml: f\ncontent/episodes/b.md: b: c\r\ncontent/episodes/a.md:  a\n",
			"content/episodes/a.md: a\ncontent/episodes/b.md: b: c\ncontent/site.yaml: f\n"},
		{"the same twice", "content/episodes/a.md: a\ncontent/episodes/a.md: a\n", "content/episodes/a.md: a\n"},
		{"two guids", "content/episodes/a.md: a\ncontent/episodes/a.md: b\n",
			"content/episodes/a.md: a\ncontent/guids.txt:2:1 content/episodes/a.md has two guids\n"},
		{"two versions that met", "<<<<<<< mine\ncontent/episodes/a.md: a\n=======\ncontent/episodes/b.md: b\n>>>>>>> theirs\n",
			"content/episodes/a.md: a\ncontent/episodes/b.md: b\ncontent/guids.txt:1:1 this is no file and guid\n" +
				"content/guids.txt:3:1 this is no file and guid\ncontent/guids.txt:5:1 this is no file and guid\n"},
		{"where the feed began", "content/recipes: https://larder.internal\n", "content/recipes: https://larder.internal\n"},
		{"two beginnings", "content/recipes: https://a.internal\ncontent/recipes: https://b.internal\n",
			"content/recipes: https://a.internal\ncontent/guids.txt:2:1 content/recipes has two guids\n"},
		{"no beginning", "content/recipes: plums\ncontent/recipes: https://a.internal/\n",
			"content/guids.txt:1:1 this is no file and guid\ncontent/guids.txt:2:1 this is no file and guid\n"},
		{"no guid", "content/episodes/a.md:\n", "content/guids.txt:1:1 this is no file and guid\n"},
		{"no file", "plums: a\n", "content/guids.txt:1:1 this is no file and guid\n"},
		{"nothing", "", ""},
	} {
		kept, faults := ReadGUIDs([]byte(c.text))
		got := string(kept.Text()[len(guidsHead):])
		for _, f := range faults {
			got += f.Pos.String() + " " + f.Message + "\n"
		}
		if got != c.want {
			t.Errorf("%s: got\n%swant\n%s", c.name, got, c.want)
		}
		again, _ := ReadGUIDs(kept.Text())
		if string(again.Text()) != string(kept.Text()) {
			t.Errorf("%s: read again as\n%s", c.name, again.Text())
		}
	}
}

func TestGUID(t *testing.T) {
	s, faults, err := Read(fstest.MapFS{
		"content/site.yaml":     {Data: []byte("name: Larder\nprogramme: {name: Talk}\n")},
		"content/guids.txt":     {Data: []byte("content/episodes/a.md: kept\ncontent/site.yaml: feed\n")},
		"content/episodes/a.md": {Data: []byte("---\nname: A\nsummary: A.\npublished: 2026-01-01\n---\n")},
		"content/episodes/b.md": {Data: []byte("---\nname: B\nsummary: B.\npublished: 2026-01-01\nguid: own\n---\n")},
	}, nil)
	if err != nil || len(faults) > 0 {
		t.Fatal(err, faults)
	}
	if a, b, feed := s.GUID(s.Episodes[0]), s.GUID(s.Episodes[1]), s.FeedID(); a != "kept" || b != "own" || feed != "feed" {
		t.Errorf("guids %q, %q and %q; want kept, own and feed", a, b, feed)
	}
}
