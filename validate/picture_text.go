package validate

import (
	"path"
	"strings"

	"stillroom/content"
)

// pictureText reports a picture whose text is its file name.
var pictureText = &Rule{
	ID:       "picture-text",
	Severity: Warning,
	Summary:  "a picture whose text is its file name",
	Doc: `Whoever cannot see a picture hears its text. "IMG_2041.jpg" tells them nothing: say in
a sentence what is to be seen.`,
	Source: Source{
		Title:   "Techniques for text alternatives, W3C",
		Address: "https://www.w3.org/TR/2012/WD-html-alt-techniques-20120329",
	},
	CheckSite: func(s *content.Site) []Finding {
		var fs []Finding
		for _, r := range s.Recipes {
			fs = append(fs, altOf(r.Picture)...)
			for i := range r.Pictures {
				fs = append(fs, altOf(&r.Pictures[i])...)
			}
		}
		for _, p := range s.Pages {
			fs = append(fs, altOf(p.Picture)...)
		}
		return fs
	},
}

func altOf(p *content.Picture) []Finding {
	if p == nil || !p.Alt.Set() {
		return nil
	}
	alt := strings.ToLower(strings.TrimSpace(p.Alt.V))
	if alt == "" || !isFileName(alt, p.File.V) {
		return nil
	}
	return []Finding{{
		Pos:     p.Alt.Pos,
		Message: "the text of the picture is a file name",
		Advice:  "Say in a sentence what is to be seen.",
		Notes:   []Note{{Pos: p.File.Pos, Message: "the file"}},
	}}
}

// spaced writes the name of a file as words.
var spaced = strings.NewReplacer("-", " ", "_", " ")

// isFileName reports whether a text is the name of a file, with its ending or
// without.
func isFileName(alt, file string) bool {
	base := strings.ToLower(path.Base(file))
	stem := strings.TrimSuffix(base, path.Ext(base))
	if alt == base || len(alt) == len(stem) && spaced.Replace(alt) == spaced.Replace(stem) {
		return true
	}
	switch path.Ext(alt) {
	case ".jpg", ".jpeg", ".png", ".webp", ".svg", ".gif", ".heic":
		return !strings.Contains(alt, " ")
	}
	return false
}
