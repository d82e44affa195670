package build

// A jsonFeed is the feed object of https://www.jsonfeed.org/version/1.1/.
type jsonFeed struct {
	Version     string       `json:"version"`
	Title       string       `json:"title"`
	HomePage    string       `json:"home_page_url"`
	FeedURL     string       `json:"feed_url"`
	Description string       `json:"description,omitempty"`
	Language    string       `json:"language"`
	Authors     []jsonAuthor `json:"authors,omitempty"`
	Items       []jsonItem   `json:"items"`
}

type jsonAuthor struct {
	Name string `json:"name"`
}

type jsonItem struct {
	ID        string   `json:"id"`
	URL       string   `json:"url"`
	Title     string   `json:"title"`
	HTML      string   `json:"content_html"`
	Summary   string   `json:"summary"`
	Image     string   `json:"image,omitempty"`
	Published string   `json:"date_published"`
	Modified  string   `json:"date_modified"`
	Tags      []string `json:"tags"`
}

// jsonFeed is the feed of recipes in JSON: /recipes.json.
func (e *edition) jsonFeed() []File {
	if e.settings.Address.V == "" {
		return nil
	}
	feed := jsonFeed{
		Version:     "https://jsonfeed.org/version/1.1",
		Title:       e.settings.Name.V,
		HomePage:    e.absolute(homeAddress),
		FeedURL:     e.absolute("/recipes.json"),
		Description: e.settings.Tagline.V,
		Language:    e.language(),
		Items:       []jsonItem{},
	}
	if name := e.settings.Author.Name.V; name != "" {
		feed.Authors = []jsonAuthor{{name}}
	}
	for _, r := range e.feeding() {
		feed.Items = append(feed.Items, e.jsonItem(r))
	}
	return []File{NewFile("recipes.json", mustJSON(feed))}
}

func (e *edition) jsonItem(r feedEntry) jsonItem {
	item := jsonItem{
		ID:        e.feedID(r.Recipe),
		URL:       e.absolute(recipeAddress(r.Recipe)),
		Title:     feedTitle(r.Recipe),
		HTML:      r.text,
		Summary:   feedSummary(r.Recipe),
		Published: moment(r.Published.V),
		Modified:  moment(r.LastChange()),
		Tags:      feedTags(r.Recipe),
	}
	if p := e.picture(r.Picture); p != nil && r.Withdrawn == nil {
		item.Image = e.absolute(p.Src)
	}
	return item
}
