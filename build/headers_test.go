package build

import (
	"encoding/json"
	"maps"
	"mime"
	"strings"
	"testing"
)

// What the table of standards wants of each sort of file: HC-01 to HC-05, SE-05
// and SE-06.
func TestHeaders(t *testing.T) {
	tests := []struct{ path, header, want string }{
		{"index.html", "Cache-Control", "no-cache"},
		{"recipes/damson-jam/index.html", "Content-Type", "text/html; charset=utf-8"},
		{"recipes/damson-jam/index.html", "Content-Security-Policy", "frame-ancestors 'none'"},
		{"recipes/damson-jam/index.html", "Access-Control-Allow-Origin", ""},
		{"recipes/damson-jam/recipe.json", "Content-Type", "application/ld+json"},
		{"assets/style.df5a95dc07143334.css", "Cache-Control", "public, max-age=31536000, immutable"},
		{"assets/style.df5a95dc07143334.css", "Content-Type", "text/css; charset=utf-8"},
		{"assets/damsons.df5a95dc07143334.jpg", "Access-Control-Allow-Origin", "*"},
		{"assets/besley.df5a95dc07143334.woff2", "Content-Type", "font/woff2"},
		{"search/words.df5a95dc07143334.json", "Cache-Control", "public, max-age=31536000, immutable"},
		{"search/index.html", "Cache-Control", "no-cache"},
		{"recipes.atom", "Content-Type", "application/atom+xml"},
		{"recipes.atom", "Cache-Control", "no-cache"},
		{"recipes.json", "Content-Type", "application/feed+json"},
		{"recipes.json", "Cross-Origin-Resource-Policy", "cross-origin"},
		{"programme.xml", "Content-Type", "application/rss+xml"},
		{"sitemap.xml", "Content-Type", "application/xml"},
		{"show-notes/damsons/chapters.json", "Content-Type", "application/json+chapters"},
		{"show-notes/damsons/damsons.vtt", "Content-Type", "text/vtt; charset=utf-8"},
		{"show-notes/damsons/damsons.srt", "Content-Type", "application/x-subrip"},
		{"show-notes/damsons/damsons.mp3", "Cache-Control", "public, max-age=86400"},
		{"show-notes/damsons/damsons.mp3", "Access-Control-Allow-Origin", "*"},
		{"assets/style.df5a95dc07143334.css.br", "Content-Encoding", "br"},
		{"assets/style.df5a95dc07143334.css.br", "Content-Type", "text/css; charset=utf-8"},
		{"recipes/damson-jam/index.html.gz", "Content-Encoding", "gzip"},
		{"recipes/damson-jam/index.html.gz", "Vary", "Accept-Encoding"},
		{"recipes/damson-jam/index.html", "Content-Encoding", ""},
		{"an/odd/file", "Content-Type", ""},
	}
	for _, tt := range tests {
		if got := Headers(tt.path)[tt.header]; got != tt.want {
			t.Errorf("Headers(%q)[%q] = %q, want %q", tt.path, tt.header, got, tt.want)
		}
	}
}

// The list that is published, read as a stranger would read it, says of every
// file what Headers says, and names a type that can be read.
func TestHeaderList(t *testing.T) {
	var list struct {
		Headers []struct {
			Path string
			Set  map[string]string
		}
	}
	files := published(t)
	for _, f := range files {
		if f.Path == "headers.json" {
			if err := json.Unmarshal(bytesOf(t, f), &list); err != nil {
				t.Fatal(err)
			}
		}
	}
	if len(list.Headers) == 0 {
		t.Fatal("no headers.json, or nothing in it")
	}
	for _, f := range files {
		got := map[string]string{}
		for _, rule := range list.Headers {
			before, after, star := strings.Cut(rule.Path, "*")
			address := "/" + f.Path
			if address == rule.Path || star && strings.HasPrefix(address, before) && strings.HasSuffix(address[len(before):], after) {
				maps.Copy(got, rule.Set)
			}
		}
		if got["Strict-Transport-Security"] == "" {
			t.Errorf("%s: no Strict-Transport-Security", f.Path)
		}
		delete(got, "Strict-Transport-Security")
		if want := Headers(f.Path); !maps.Equal(got, want) {
			t.Errorf("%s: headers.json says %v, Headers %v", f.Path, got, want)
		}
		if _, _, err := mime.ParseMediaType(got["Content-Type"]); err != nil || got["Content-Type"] != MediaType(f.Path) {
			t.Errorf("%s: type %q, MediaType %q, %v", f.Path, got["Content-Type"], MediaType(f.Path), err)
		}
	}
}
