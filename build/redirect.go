package build

import (
	"html"
	"net/url"
	"path"
	"strings"
)

// redirects are small pages at the paths that recipes had before. They send
// readers on, and tell search engines where the recipe is now.
func (e *edition) redirects() []File {
	var files []File
	for _, r := range e.recipes {
		for _, old := range r.Formerly {
			files = append(files, File{
				Path: redirectPath(old.V),
				Data: e.redirect(r.Name.V, recipeAddress(r)),
			})
		}
	}
	return files
}

// redirectPath is where a host looks for an old path: a page if it names one,
// else the page of a folder. A path is written as in an address, with %20.
func redirectPath(old string) string {
	if plain, err := url.PathUnescape(old); err == nil {
		old = plain
	}
	p := strings.Trim(path.Clean(old), "/")
	if ext := path.Ext(p); ext == ".html" || ext == ".htm" {
		return p
	}
	return p + "/index.html"
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
