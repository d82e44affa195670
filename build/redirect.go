package build

import (
	"html"
	"net/http"
	"slices"
	"strings"

	"stillroom/content"
)

// A move is an old path and the address that took its place.
type move struct {
	From string `json:"from"`
	To   string `json:"to"`
	name string
}

// moves gives every old path of a recipe, in order of path: of one that was
// taken back too, whose address says so.
func (e *edition) moves() []move {
	var all []move
	for _, r := range slices.Concat(e.recipes, e.withdrawn) {
		for _, old := range r.Formerly {
			all = append(all, move{old.V, recipeAddress(r), r.Name.V})
		}
	}
	slices.SortFunc(all, func(a, b move) int { return strings.Compare(a.From, b.From) })
	return all
}

// redirects are small pages at the paths that recipes had before. They send
// readers on, and tell search engines where the recipe is now.
func (e *edition) redirects() []File {
	var files []File
	for _, m := range e.moves() {
		files = append(files, madeLater(content.FormerPath(m.From), func() ([]byte, error) { return e.redirect(m.name, m.To), nil }))
	}
	return files
}

// redirectList is for a host that can answer with a redirect of its own, which
// is better than a page that sends readers on: /redirects.json. No two hosts
// want such a list in one form; 301 is RFC 9110, 15.4.2.
func (e *edition) redirectList() []File {
	type answer struct {
		move
		Status int `json:"status"`
	}
	list := []answer{}
	for _, m := range e.moves() {
		list = append(list, answer{m, http.StatusMovedPermanently})
	}
	return []File{NewFile("redirects.json", mustJSON(map[string]any{"redirects": list}))}
}

// redirect needs no script: a refresh after 0 seconds counts as a redirect, and
// asks nothing of the reader. https://www.w3.org/TR/WCAG20-TECHS/H76.html
func (e *edition) redirect(name, address string) []byte {
	to := html.EscapeString(e.absolute(address))
	name = html.EscapeString(name)
	return []byte(`<!doctype html>
<html lang="` + html.EscapeString(e.language()) + `">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; base-uri 'none'; form-action 'none'">
<title>` + name + `</title>
<meta name="viewport" content="width=device-width">
<meta name="robots" content="noindex">
<link rel="canonical" href="` + to + `">
<meta http-equiv="refresh" content="0; url=` + to + `">
</head>
<body>
<p><a href="` + to + `">` + name + `</a></p>
</body>
</html>
`)
}
