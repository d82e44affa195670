package content

import (
	"strings"
	"testing"
)

// An old path is that of a file which every system can hold, and of no other
// place than the one that is seen. Windows: Naming Files, Paths, and Namespaces,
// Microsoft; from memory.
func TestFormerPath(t *testing.T) {
	long := strings.Repeat("a", longestName)
	for s, want := range map[string]string{
		"/old": "old/index.html", "/2019/08/Damson_Jam.html": "2019/08/Damson_Jam.html", "/old.htm": "old.htm", "/Old.HTML": "Old.HTML", "/old.php": "old.php/index.html", "/v1.2/jam": "v1.2/jam/index.html",
		"/pflaumen%20mus/": "pflaumen mus/index.html", "/s%C3%BC%C3%9F/": "süß/index.html", "/süß/": "süß/index.html", "/100%/": "100%/index.html",
		"/.well-known/a/": ".well-known/a/index.html", "/console/": "console/index.html", "/com10/": "com10/index.html", "/" + long + "/": long + "/index.html",
	} {
		if _, err := ParseFormerPath(s); err != nil || FormerPath(s) != want {
			t.Errorf("%q lies at %q, %v, want %q", s, FormerPath(s), err, want)
		}
	}
	for want, refused := range map[string][]string{
		"no old path":         {"", "/", "old", "https://a.example/old"},
		"question mark":       {"/a?b", "/a#b"},
		"an empty part":       {"/..", "/a/../b", "//a", "/a//b", "/./a", "/a b/", `/a\b`},
		"written with %":      {"/%2e%2e/", "/a/%2E%2E/%2e%2e/b/", "/a%2Fb/", "/%2F/"},
		"not seen":            {"/a%00/", "/a%0Ab/", "/a%1b/", "/a%E2%80%AEb/", "/a%ff/", "/a%7f/", "/a%C2%85/", "/%EF%BB%BFa/"},
		"keeps for itself":    {"/con/", "/NUL", "/a/aux.html", "/com1/", "/lpt9/a/", "/%63on/", "/con%20/", "/com¹/"},
		"no name on Windows":  {"/a:b/", "/a*/", "/<a>/", "/a|b/", `/"a"/`, "/a%3Ab/", "/a%3F/", "/a%5C..%5Cb/", "/C%3A/"},
		"Windows takes away":  {"/a./", "/a.", "/a.../b/", "/a%20/", "/a%2e/", "/%2e/"},
		"more than 255 bytes": {"/" + long + "a/", "/" + strings.Repeat("ü", 128) + "/", "/" + strings.Repeat("%C3%BC", 128) + "/"},
	} {
		for _, s := range refused {
			if _, err := ParseFormerPath(s); err == nil || !strings.Contains(err.Error(), want) {
				t.Errorf("%q: %v, want %q", s, err, want)
			}
		}
	}
}
