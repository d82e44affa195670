package build

import (
	"path"
	"slices"
	"strings"

	"github.com/yuin/goldmark/ast"

	"stillroom/content"
)

// shown gives the pictures that an edition shows, by name relative to
// content/pictures, in order, each once.
func shown(e *edition) []string {
	var names []string
	add := func(name string) {
		if _, ok := e.site.Pictures[name]; ok {
			names = append(names, name)
		}
	}
	addBody := func(b content.Body) {
		for _, dest := range pictured(b.Doc) {
			add(pictureName(dest))
		}
	}
	if p := e.settings.Programme; p != nil {
		add(p.Picture.V)
	}
	for _, r := range e.recipes {
		for _, p := range append(slices.Clone(r.Pictures), picturesOf(r.Picture)...) {
			add(p.File.V)
		}
		addBody(r.Body)
	}
	for _, ep := range e.episodes {
		addBody(ep.Body)
	}
	for _, p := range e.pages {
		for _, p := range picturesOf(p.Picture) {
			add(p.File.V)
		}
		addBody(p.Body)
	}
	slices.Sort(names)
	return slices.Compact(names)
}

func picturesOf(p *content.Picture) []content.Picture {
	if p == nil {
		return nil
	}
	return []content.Picture{*p}
}

// pictured gives the destinations of a Markdown body's pictures.
func pictured(doc ast.Node) []string {
	var dests []string
	if doc == nil {
		return nil
	}
	ast.Walk(doc, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		if img, ok := n.(*ast.Image); ok && entering {
			dests = append(dests, string(img.Destination))
		}
		return ast.WalkContinue, nil
	})
	return dests
}

// pictureName turns what a body may call a picture into its name relative to
// content/pictures: damsons.jpg, pictures/damsons.jpg, ../pictures/damsons.jpg.
func pictureName(dest string) string {
	name := path.Clean("/" + dest)[1:]
	if _, after, ok := strings.Cut("/"+name, "/pictures/"); ok {
		return after
	}
	return name
}
