package build

import (
	"bytes"
	"encoding/json"
	"encoding/xml"
	"io"
	"net/url"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/rogpeppe/go-internal/txtar"

	"stillroom/content"
)

// These tests hold for whatever stands in testdata/products, by the standards
// that they name.

func blog(t *testing.T) *edition {
	t.Helper()
	ar, err := txtar.ParseFile("testdata/products/blog.txtar")
	if err != nil {
		t.Fatal(err)
	}
	return editionOf(t, ar)
}

// RFC 4287: 4.1.1 and 4.1.2 ask for one id, title and updated, an author, and
// an alternate link where there is no content; 3.3 for dates with a zone; 4.2.6
// for ids that are absolute and differ.
func TestAtomFollowsRFC4287(t *testing.T) {
	var feed struct {
		XMLName xml.Name   `xml:"http://www.w3.org/2005/Atom feed"`
		ID      []string   `xml:"http://www.w3.org/2005/Atom id"`
		Title   []string   `xml:"title"`
		Updated []string   `xml:"updated"`
		Author  []struct{} `xml:"author"`
		Links   []atomLink `xml:"link"`
		Entries []struct {
			ID      []string   `xml:"id"`
			Title   []string   `xml:"title"`
			Updated []string   `xml:"updated"`
			Summary []string   `xml:"summary"`
			Links   []atomLink `xml:"link"`
		} `xml:"entry"`
	}
	e := blog(t)
	if err := xml.Unmarshal(bytesOf(t, e.atom()[0]), &feed); err != nil {
		t.Fatal(err)
	}
	if len(feed.ID) != 1 || len(feed.Title) != 1 || len(feed.Author) != 1 {
		t.Errorf("feed: ids %q, titles %q, %d authors", feed.ID, feed.Title, len(feed.Author))
	}
	oneMoment(t, "feed", feed.Updated)
	oneLink(t, "feed", feed.Links, "self")
	oneLink(t, "feed", feed.Links, "alternate")
	seen := map[string]bool{feed.ID[0]: true}
	for _, entry := range feed.Entries {
		if len(entry.ID) != 1 || len(entry.Title) != 1 || len(entry.Summary) != 1 {
			t.Fatalf("entry: ids %q, titles %q, summaries %q", entry.ID, entry.Title, entry.Summary)
		}
		if u, err := url.Parse(entry.ID[0]); err != nil || !u.IsAbs() || seen[entry.ID[0]] {
			t.Errorf("id %q is not absolute, or used twice", entry.ID[0])
		}
		seen[entry.ID[0]] = true
		oneMoment(t, entry.ID[0], entry.Updated)
		oneLink(t, entry.ID[0], entry.Links, "alternate")
	}
	if len(feed.Entries) != len(e.recipes) {
		t.Errorf("%d entries, want %d", len(feed.Entries), len(e.recipes))
	}
}

func oneMoment(t *testing.T, of string, moments []string) {
	t.Helper()
	if len(moments) != 1 {
		t.Fatalf("%s was updated at %q", of, moments)
	}
	if _, err := time.Parse(time.RFC3339, moments[0]); err != nil {
		t.Errorf("%s: %v", of, err)
	}
}

func oneLink(t *testing.T, of string, links []atomLink, rel string) {
	t.Helper()
	n := 0
	for _, l := range links {
		if l.Rel == rel && strings.HasPrefix(l.Href, "https://") {
			n++
		}
	}
	if n != 1 {
		t.Errorf("%s has %d links that are %s", of, n, rel)
	}
}

// RFC 4287, 4.2.6, and JSON Feed 1.1: an id stays when the recipe moves.
func TestFeedIDOutlivesAMove(t *testing.T) {
	e := &edition{site: &content.Site{GUIDs: make(content.GUIDs)}}
	e.settings = &e.site.Settings
	e.settings.Address.V = "https://larder.example"
	r := &content.Recipe{Slug: "damson-jam"}
	before := e.feedID(r)
	r.Slug = "damson-preserves"
	r.Formerly = []content.Field[string]{{V: "/2019/damsons.html"}, {V: "/recipes/damson-jam"}}
	if after := e.feedID(r); after != before {
		t.Errorf("the id was %s and is %s", before, after)
	}
	e.site.GUIDs[content.FeedBegan] = content.Field[string]{V: e.settings.Address.V}
	e.settings.Address.V = "https://elsewhere.example"
	if after := e.feedID(r); after != before {
		t.Errorf("when the site has moved, the id was %s and is %s", before, after)
	}
}

// RFC 9110, 13.1: a reader that asks again is only told that nothing is new if
// not a byte of the feed has changed, so no day of building stands in it.
func TestFeedsKeepTheirBytes(t *testing.T) {
	e := blog(t)
	later := newEdition(e.site, content.Date{Year: 2026, Month: 9, Day: 20}, e.assets)
	for _, made := range [][2][]File{
		{e.atom(), later.atom()}, {e.jsonFeed(), later.jsonFeed()}, {e.programme(), later.programme()}, {e.sitemap(nil), later.sitemap(nil)},
	} {
		if !bytes.Equal(bytesOf(t, made[0][0]), bytesOf(t, made[1][0])) {
			t.Errorf("%s changed with the day", made[0][0].Path)
		}
	}
}

// A recipe may hold what XML cannot: XML 1.0, 2.2.
func TestFeedsHoldAnyText(t *testing.T) {
	e := blog(t)
	e.recipes[0].Name.V = "Jam \x01 ]]> & <b> é \u2028"
	e.episodes[0].Summary.V = "]]> \x02"
	for _, f := range slices.Concat(e.atom(), e.programme()) {
		d := xml.NewDecoder(bytes.NewReader(bytesOf(t, f)))
		for {
			if _, err := d.Token(); err == io.EOF {
				break
			} else if err != nil {
				t.Fatalf("%s: %v", f.Path, err)
			}
		}
	}
}

// JSON Feed 1.1: version, title and items; each item an id, a text and dates
// of RFC 3339.
func TestJSONFeed(t *testing.T) {
	var feed jsonFeed
	if err := json.Unmarshal(bytesOf(t, blog(t).jsonFeed()[0]), &feed); err != nil {
		t.Fatal(err)
	}
	if feed.Version != "https://jsonfeed.org/version/1.1" || feed.Title == "" || feed.FeedURL == "" || len(feed.Items) == 0 {
		t.Errorf("feed %+v", feed)
	}
	for _, item := range feed.Items {
		if item.ID == "" || item.HTML == "" || item.URL == "" {
			t.Errorf("item %+v", item)
		}
		oneMoment(t, item.ID, []string{item.Published})
		oneMoment(t, item.ID, []string{item.Modified})
	}
}

// RSS 2.0 and PSP-1: the newest first, each with an enclosure of a true length,
// and a guid that is not said to be an address unless it is one.
func TestProgrammeFollowsPSP1(t *testing.T) {
	var feed struct {
		Items []struct {
			GUID      guidNode      `xml:"guid"`
			Published string        `xml:"pubDate"`
			Enclosure enclosureNode `xml:"enclosure"`
		} `xml:"channel>item"`
	}
	e := blog(t)
	if err := xml.Unmarshal(bytesOf(t, e.programme()[0]), &feed); err != nil || len(feed.Items) != 2 {
		t.Fatalf("%d items, %v", len(feed.Items), err)
	}
	last := time.Now().AddDate(1000, 0, 0)
	for _, i := range feed.Items {
		at, err := time.Parse(time.RFC1123Z, i.Published)
		if err != nil || at.After(last) {
			t.Errorf("published %s, %v: not the newest first", i.Published, err)
		}
		last = at
		if i.GUID.Text == "" || i.GUID.IsPermaLink || i.Enclosure.Length <= 0 || i.Enclosure.Type != "audio/mpeg" {
			t.Errorf("item %+v", i)
		}
	}
	if got, want := feed.Items[1].Enclosure.Length, int64(len("not really\n")); got != want {
		t.Errorf("length %d, want the file's %d", got, want)
	}
}

// HTML, 4.12.1.3, and JSON-LD 1.1: nothing in a recipe can end the script
// element that holds it.
func TestStructuredDataStaysInItsElement(t *testing.T) {
	e := blog(t)
	r := e.recipe["damson-jam"]
	r.Name.V = "</script><script>alert(1)</script> <!-- & \u2028"
	data := e.graph(e.recipeNode(r), e.trail([]Link{{Name: r.Name.V, Address: "/"}}))
	if bytes.ContainsAny(data, "<>&\u2028") {
		t.Errorf("%s", data)
	}
	var back struct {
		Graph []struct{ Name string } `json:"@graph"`
	}
	if err := json.Unmarshal(data, &back); err != nil || back.Graph[0].Name != r.Name.V {
		t.Errorf("%q, %v", back.Graph[0].Name, err)
	}
}

// Google's rules for breadcrumbs and carousels: positions run from 1, items are
// absolute, and only the last of a trail may do without.
func TestListsOfStructuredData(t *testing.T) {
	e := blog(t)
	trail := e.trail([]Link{{Name: "Home", Address: "/"}, {Name: "Recipes", Address: "/recipes/"}, {Name: "Kraut", Address: "/recipes/kraut/", Here: true}}).(listNode)
	list := e.recipeList(e.recipes).(listNode)
	seen := make(map[string]bool)
	for i, item := range trail.Items {
		if item.Position != i+1 || item.Name == "" || (item.Item == "") != (i == 2) {
			t.Errorf("trail %d: %+v", i, item)
		}
	}
	for i, item := range list.Items {
		if item.Position != i+1 || !strings.HasPrefix(item.URL, "https://bramley.example/recipes/") || seen[item.URL] {
			t.Errorf("list %d: %+v", i, item)
		}
		seen[item.URL] = true
	}
}

func TestYields(t *testing.T) {
	tests := []struct {
		text string
		want string
	}{
		{"6 half-pint jars", "6|6 half-pint jars"},
		{"1 quart jar", "1|1 quart jar"},
		{"2 cups", "2 cups"},
		{"350 g", "350 g"},
		{"4 to 5 pint jars", "4 to 5 pint jars"},
	}
	for _, test := range tests {
		y, err := content.ParseYield(test.text)
		if err != nil {
			t.Fatal(err)
		}
		if got := strings.Join(yields(y), "|"); got != test.want {
			t.Errorf("yields(%q) = %q, want %q", test.text, got, test.want)
		}
	}
}
