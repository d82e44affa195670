package main

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"
)

// searchCheckers look for recipes as a reader does.
var searchCheckers = []outsider{
	{
		name:     "search",
		source:   "WCAG 2.2, CSP level 3; a reader in Chromium",
		programs: []string{"chromium-headless-shell"},
		command:  func(s site) []string { return useScript("search.mjs", s) },
		damages: []damage{
			{"an index that is gone", replace("search/index.html", `data-words="/search/`, `data-words="/nowhere/`), "words: what is said of"},
			{"a search that forgives nothing", replace("assets/search.*.js", "fuzzy:", "fuzzier:"), `words: the first result for "strawbery"`},
			{"results that nobody hears of", replace("search/index.html", `role="status"`, `data-role="status"`), "address: the role of what is said"},
		},
	},
}

// The library that the search stands on is npm's, to the byte.
func TestLibraryIsNotOurs(t *testing.T) {
	need(t)
	theirs, err := os.ReadFile(filepath.Join(tools, "node_modules/minisearch/dist/umd/index.js"))
	if err != nil {
		t.Fatal(err)
	}
	ours, err := os.ReadFile(filepath.Join(example, "themes/enamel/files/minisearch.js"))
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(ours, theirs) {
		t.Error("themes/enamel/files/minisearch.js is not dist/umd/index.js of the package that .ci/checks names")
	}
}
