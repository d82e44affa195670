package preview

import "stillroom/content"

// A text is a file as it was read last.
type text struct {
	file    string
	sort    content.Sort
	stamp   stamp // of the file
	data    []byte
	recipe  *content.Recipe // of these four one is there
	episode *content.Episode
	page    *content.Page
	site    *content.Settings
	faults  []content.Fault
	unread  bool  // nothing can be made of it
	good    *text // the text as it was read last, if it is unread now; nil if it never was read
}

// newText reads what stands in a file.
func newText(file string, sort content.Sort, data []byte) *text {
	t := &text{file: file, sort: sort, data: data}
	switch sort {
	case content.TheSettings:
		s, faults := content.ReadSettings(file, data)
		t.site, t.faults, t.unread = &s, faults, s.Keys == nil
	case content.ARecipe:
		t.recipe, t.faults = content.ReadRecipe(file, data)
		t.unread = t.recipe.Keys == nil || t.recipe.Slug == ""
	case content.AnEpisode:
		t.episode, t.faults = content.ReadEpisode(file, data)
		t.unread = t.episode.Keys == nil || t.episode.Slug == ""
	case content.APage:
		t.page, t.faults = content.ReadPage(file, data)
		t.unread = t.page.Keys == nil || t.page.Slug == ""
	}
	return t
}

// legible is the text itself, or else the last one that could be read; nil if
// there was none.
func (t *text) legible() *text {
	if t.unread {
		return t.good
	}
	return t
}

// address is where the page of a text stands, if it has one.
func (t *text) address() string {
	switch {
	case t.recipe != nil:
		return "/recipes/" + t.recipe.Slug + "/"
	case t.episode != nil:
		return "/show-notes/" + t.episode.Slug + "/"
	case t.page != nil:
		return "/" + t.page.Slug + "/"
	}
	return ""
}

func noSettings() *text {
	s, faults := content.NoSettings()
	return &text{file: s.File, sort: content.TheSettings, site: &s, faults: faults}
}
