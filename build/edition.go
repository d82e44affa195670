package build

import (
	"cmp"
	"slices"
	"sync"

	"stillroom/content"
)

// An edition is a site as readers meet it on one day: without drafts, and
// without what is scheduled for a later day.
type edition struct {
	settings  *content.Settings
	site      *content.Site
	day       content.Date
	assets    *Assets
	md        *markdown
	out       func() map[string]bool // the addresses that a link may lead to, but those of recipes
	episodes  []*content.Episode     // newest first
	pages     []*content.Page        // in order of name
	searching func() searchIndex
	feeding   func() []feedEntry
	months    struct {
		sync.Once
		year []Month // with no month marked
	}
	heard map[string][]*content.Episode // by the slug of a recipe that they name, newest first
	told  lately[*content.Recipe, told]
	nodes lately[*content.Recipe, inJSON]

	*store // of the recipes
}

func newEdition(site *content.Site, day content.Date, a *Assets) *edition {
	shown := func(s content.Status, published content.Date) bool { return out(s, published, day) }
	var recipes []*content.Recipe
	for _, r := range site.Recipes {
		if shown(r.Status.V, r.Published.V) {
			recipes = append(recipes, r)
		}
	}
	return newEditionOf(site, day, a, newStore(recipes), shown)
}

// newEditionOf makes an edition of what is to be shown.
func newEditionOf(site *content.Site, day content.Date, a *Assets, recipes *store, shown func(content.Status, content.Date) bool) *edition {
	e := &edition{settings: &site.Settings, site: site, day: day, assets: a, heard: make(map[string][]*content.Episode), store: recipes}
	for _, ep := range site.Episodes {
		if shown(ep.Status.V, ep.Published.V) {
			e.episodes = append(e.episodes, ep)
		}
	}
	for _, p := range site.Pages {
		if shown(p.Status.V, p.Published.V) {
			e.pages = append(e.pages, p)
		}
	}
	e.arrange()
	e.md = newMarkdown(e.isOut, e.inProse)
	e.searching = sync.OnceValue(e.index)
	e.feeding = sync.OnceValue(e.feedEntries)
	e.out = sync.OnceValue(e.addresses)
	return e
}

// out reports whether something is before its readers: a page without a
// day of publication is so from the start.
func out(status content.Status, published, day content.Date) bool {
	return status != content.Draft && !day.Before(published)
}

func (e *edition) arrange() {
	slices.SortFunc(e.episodes, func(a, b *content.Episode) int {
		return cmp.Or(
			newest(a.Published.V, b.Published.V),
			cmp.Compare(b.Number.V, a.Number.V),
			cmp.Compare(a.Slug, b.Slug),
		)
	})
	sortBy(e.pages, func(p *content.Page) string { return sortKey(p.Name.V) + "\x00" + p.Slug })
	for _, ep := range e.episodes {
		for _, s := range named(ep) {
			e.heard[s] = append(e.heard[s], ep)
		}
	}
}

// named gives the slugs of the recipes that an episode speaks of, each once:
// those of its list, then those that only a chapter names.
func named(ep *content.Episode) []string {
	var slugs []string
	add := func(s string) {
		if s != "" && !slices.Contains(slugs, s) {
			slugs = append(slugs, s)
		}
	}
	for _, r := range ep.Recipes {
		add(r.V)
	}
	for _, c := range ep.Chapters {
		add(c.Recipe.V)
	}
	return slugs
}

// newest orders a later day before an earlier one.
func newest(a, b content.Date) int {
	switch {
	case b.Before(a):
		return -1
	case a.Before(b):
		return 1
	}
	return 0
}
