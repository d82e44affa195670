package themes

import (
	"fmt"
	"path"

	"github.com/tdewolff/minify/v2"
	"github.com/tdewolff/minify/v2/css"
	"github.com/tdewolff/minify/v2/html"
	"github.com/tdewolff/minify/v2/js"
	"github.com/tdewolff/minify/v2/svg"
)

// templates takes out of a template what pages do not need. End tags and quotes
// stay: where a template branches, the minifier cannot know what follows.
var templates = &html.Minifier{
	KeepDocumentTags:    true,
	KeepDefaultAttrVals: true, // <input type="text">: some readers of HTML ask for it
	KeepEndTags:         true,
	KeepQuotes:          true,
	TemplateDelims:      html.GoTemplateDelims,
}

// minifyTemplate is done once for each template, so that pages come out small
// without being minified one by one.
func minifyTemplate(text []byte) ([]byte, error) {
	m := minify.New()
	m.Add("text/html", templates)
	return m.Bytes("text/html", text)
}

// kinds are the files that can be made smaller, by the end of their names.
var kinds = map[string]minify.Minifier{
	".css": &css.Minifier{},
	".js":  &js.Minifier{},
	".svg": &svg.Minifier{},
}

func minifyFiles(files []File) ([]File, error) {
	small := make([]File, len(files))
	for i, f := range files {
		small[i] = f
		kind, ok := kinds[path.Ext(f.Name)]
		if !ok {
			continue
		}
		m := minify.New()
		m.Add("any", kind)
		data, err := m.Bytes("any", f.Data)
		if err != nil {
			return nil, fmt.Errorf("minify %s of the theme: %w", f.Name, err)
		}
		small[i].Data = data
	}
	return small, nil
}
