package build

import "stillroom/content"

// A chapterFile is the JSON chapters format, version 1.2.0.
// https://github.com/Podcastindex-org/podcast-namespace/blob/main/docs/examples/chapters/jsonChapters.md
type chapterFile struct {
	Version  string        `json:"version"`
	Title    string        `json:"title"`
	Series   string        `json:"podcastName,omitempty"`
	Chapters []chapterMark `json:"chapters"`
}

type chapterMark struct {
	Start int    `json:"startTime"` // seconds
	Title string `json:"title"`
	URL   string `json:"url,omitempty"`
}

// chapterFiles are the chapters of each episode for players:
// /show-notes/SLUG/chapters.json.
func (e *edition) chapterFiles() []File {
	var files []File
	for _, ep := range e.episodes {
		if len(ep.Chapters) > 0 {
			files = append(files, madeLater(chaptersAddress(ep)[1:], func() ([]byte, error) { return mustJSON(e.chapterFile(ep)), nil }))
		}
	}
	return files
}

func chaptersAddress(ep *content.Episode) string { return episodeAddress(ep) + "chapters.json" }

func (e *edition) chapterFile(ep *content.Episode) chapterFile {
	f := chapterFile{Version: "1.2.0", Title: ep.Name.V}
	if p := e.settings.Programme; p != nil {
		f.Series = p.Name.V
	}
	for _, c := range ep.Chapters {
		m := chapterMark{Start: c.At.V, Title: c.Title.V}
		if r := e.recipe[c.Recipe.V]; r != nil && e.settings.Address.V != "" {
			m.URL = e.absolute(recipeAddress(r))
		}
		f.Chapters = append(f.Chapters, m)
	}
	return f
}
