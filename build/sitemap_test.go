package build

import (
	"encoding/xml"
	"fmt"
	"strings"
	"testing"

	"stillroom/content"
)

// sitemaps.org: one file may hold 50,000 addresses and 52,428,800 bytes, and
// more of them need an index.
func TestSitemapLimits(t *testing.T) {
	e := &edition{settings: &content.Settings{}}
	e.settings.Address.V = "https://" + strings.Repeat("x", 40) + ".example"
	e.store = newStore(nil)
	var addresses []string
	for i := range 2*inSitemap + 1 {
		address := fmt.Sprintf("/%d/", i)
		addresses = append(addresses, address+strings.Repeat("y", 2047-len(e.absolute(address))))
	}
	files := e.sitemapFiles(addresses, inSitemap)
	if len(files) != 4 {
		t.Fatalf("%d files, want 3 parts and an index", len(files))
	}
	listed := 0
	for _, f := range files[:3] {
		if len(bytesOf(t, f)) > 52_428_800 {
			t.Errorf("%s has %d bytes", f.Path, len(bytesOf(t, f)))
		}
		var s sitemap
		if err := xml.Unmarshal(bytesOf(t, f), &s); err != nil {
			t.Fatal(err)
		}
		listed += len(s.Pages)
	}
	if listed != len(addresses) {
		t.Errorf("%d pages listed, want %d", listed, len(addresses))
	}
	var index sitemapIndex
	if err := xml.Unmarshal(bytesOf(t, files[3]), &index); err != nil || files[3].Path != "sitemap.xml" {
		t.Fatalf("%s: %v", files[3].Path, err)
	}
	for i, m := range index.Maps {
		if want := e.absolute("/" + files[i].Path); m.Loc != want {
			t.Errorf("the index names %s, want %s", m.Loc, want)
		}
	}
	if one := e.sitemapFiles(addresses[:inSitemap], inSitemap); len(one) != 1 || one[0].Path != "sitemap.xml" {
		t.Errorf("%d files for what fits into one", len(one))
	}
}
