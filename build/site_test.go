package build

import (
	"bytes"
	"encoding/xml"
	"slices"
	"strings"
	"testing"

	"stillroom/content"
	"stillroom/themes"
	"stillroom/validate"
)

// starterSite builds the starter site, as of a day when all of it is out.
func starterSite(t *testing.T) []File {
	t.Helper()
	site, faults, err := content.Read(content.Starter, nil)
	if err != nil {
		t.Fatal(err)
	}
	rep, c, ok := validate.Check(site, faults, content.Date{Year: 2026, Month: 11, Day: 25})
	if !ok {
		t.Fatal(rep.Findings)
	}
	theme, err := themes.Load(nil)
	if err != nil {
		t.Fatal(err)
	}
	files, err := Site(c, theme, darkroom)
	if err != nil {
		t.Fatal(err)
	}
	return files
}

// The sitemap names the pages that may be indexed, and no other: sitemaps.org,
// and what a page says of itself in its robots element.
func TestSitemapNamesWhatMayBeIndexed(t *testing.T) {
	files := starterSite(t)
	i := slices.IndexFunc(files, func(f File) bool { return f.Path == "sitemap.xml" })
	var s sitemap
	if err := xml.Unmarshal(bytesOf(t, files[i]), &s); err != nil {
		t.Fatal(err)
	}
	var listed, want []string
	for _, p := range s.Pages {
		listed = append(listed, p.Loc)
	}
	for _, f := range files {
		noindex := bytes.Contains(bytesOf(t, f), []byte(`content="noindex`)) || bytes.Contains(bytesOf(t, f), []byte("content=noindex"))
		if strings.HasSuffix(f.Path, "index.html") && !noindex {
			want = append(want, "https://hollowlane.example/"+strings.TrimSuffix(f.Path, "index.html"))
		}
	}
	slices.Sort(listed)
	slices.Sort(want)
	if !slices.Equal(listed, want) {
		t.Errorf("listed %q\nmay be indexed %q", listed, want)
	}
}

// Two builds of the same content are the same to the byte.
func TestSiteRepeats(t *testing.T) {
	one, other := starterSite(t), starterSite(t)
	if len(one) != len(other) {
		t.Fatalf("%d files and then %d", len(one), len(other))
	}
	for i := range one {
		if one[i].Path != other[i].Path || !bytes.Equal(bytesOf(t, one[i]), bytesOf(t, other[i])) {
			t.Errorf("%s differs", one[i].Path)
		}
	}
}

func bytesOf(t testing.TB, f File) []byte {
	t.Helper()
	data, err := f.Bytes()
	if err != nil {
		t.Fatal(err)
	}
	return data
}
