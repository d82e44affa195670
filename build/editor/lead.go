package editor

import (
	"path"
	"regexp"
	"strings"

	"stillroom/content"
)

// linkedTo finds the address of a page of the site in a text.
var linkedTo = regexp.MustCompile(`/(recipes|show-notes)/([a-z0-9-]+)/`)

// definition leads to the file that is named at a place: a recipe, an episode, a
// picture, a recording.
func (s *Server) definition(p placeParams) (any, error) {
	d := s.document(p.TextDocument)
	if d == nil {
		return nil, nil
	}
	file := s.named(d, p.Position)
	if file == "" {
		return nil, nil
	}
	return location{URI: s.root.uri(file)}, nil
}

// named gives the file that is named at a place; empty if none is.
func (s *Server) named(d *document, at position) string {
	text := string(d.line(at.Line))
	col := d.column([]byte(text), at.Character)
	if spot, ok := spotAt(d.paper, d.file, at.Line, col); ok {
		return s.fileOf(d, spot)
	}
	for _, m := range linkedTo.FindAllStringSubmatchIndex(text, -1) {
		if m[0] <= col && col <= m[1] {
			return s.pageFile(text[m[2]:m[3]], text[m[4]:m[5]])
		}
	}
	return ""
}

// fileOf gives the file that a value of the front matter names.
func (s *Server) fileOf(d *document, at spot) string {
	_, key := s.meaning(d.file, at)
	switch {
	case key == nil || at.word == "":
		return ""
	case key.Want == content.WantSlug:
		return s.pageFile("recipes", at.word)
	case key.Want != content.WantFile:
		return ""
	}
	if f, ok := s.site.Site().Pictures[at.word]; ok {
		return f.Path
	}
	return s.site.Site().Media[path.Join(path.Dir(d.file), at.word)].Path
}

// pageFile gives the file of a recipe or an episode.
func (s *Server) pageFile(folder, slug string) string {
	site := s.site.Site()
	if folder == "recipes" {
		if r := s.recipe(slug); r != nil {
			return r.File
		}
		return ""
	}
	for _, e := range site.Episodes {
		if e.Slug == slug {
			return e.File
		}
	}
	return ""
}

// references gives where episodes and other recipes name the recipe at a place,
// or the one whose file it is.
func (s *Server) references(p placeParams) (any, error) {
	all := []location{}
	d := s.document(p.TextDocument)
	if d == nil {
		return all, nil
	}
	file := s.named(d, p.Position)
	if file == "" {
		file = d.file
	}
	slug, ok := strings.CutSuffix(path.Base(file), ".md")
	if !ok || content.SortOf(file) != content.ARecipe {
		return all, nil
	}
	for _, at := range s.mentions(slug) {
		if p := s.paperOf(at.File); p != nil {
			all = append(all, location{s.root.uri(at.File), rangeOf(p, at)})
		}
	}
	return all, nil
}

// mentions gives where a recipe is named in front matter.
func (s *Server) mentions(slug string) (all []content.Pos) {
	take := func(f content.Field[string]) {
		if f.V == slug {
			all = append(all, f.Pos)
		}
	}
	site := s.site.Site()
	for _, e := range site.Episodes {
		for _, r := range e.Recipes {
			take(r)
		}
		for _, c := range e.Chapters {
			take(c.Recipe)
		}
	}
	for _, r := range site.Recipes {
		if r.Withdrawn != nil {
			take(r.Withdrawn.Instead)
		}
	}
	return all
}
