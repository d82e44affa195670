package build

import (
	"cmp"
	"slices"
	"time"

	"stillroom/content"
)

// An edition is a site as readers meet it on one day: without drafts, and
// without what is scheduled for a later day.
type edition struct {
	settings *content.Settings
	site     *content.Site
	day      content.Date
	assets   *Assets
	md       *markdown
	out      map[string]bool    // the addresses that a link may lead to
	recipes  []*content.Recipe  // newest first
	episodes []*content.Episode // newest first
	pages    []*content.Page    // in order of name
	recipe   map[string]*content.Recipe
	heard    map[string][]*content.Episode // by the slug of a recipe that they name, newest first
	harvests []harvest                     // in order of name
	made     map[time.Month][]*content.Recipe
	kept     map[content.Way][]*content.Recipe
	kinds    map[content.Kind][]*content.Recipe
}

func newEdition(site *content.Site, day content.Date, a *Assets) *edition {
	return newEditionOf(site, day, a, func(s content.Status, published content.Date) bool { return out(s, published, day) })
}

// newEditionOf makes an edition of what is to be shown.
func newEditionOf(site *content.Site, day content.Date, a *Assets, shown func(content.Status, content.Date) bool) *edition {
	e := &edition{
		settings: &site.Settings, site: site, day: day, assets: a,
		recipe: make(map[string]*content.Recipe),
		heard:  make(map[string][]*content.Episode),
		made:   make(map[time.Month][]*content.Recipe),
		kept:   make(map[content.Way][]*content.Recipe),
		kinds:  make(map[content.Kind][]*content.Recipe),
	}
	for _, r := range site.Recipes {
		if shown(r.Status.V, r.Published.V) {
			e.recipes = append(e.recipes, r)
			e.recipe[r.Slug] = r
		}
	}
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
	e.gather()
	e.md = newMarkdown(e.isOut, e.inProse)
	e.out = e.addresses()
	return e
}

// out reports whether something is before its readers: a page without a
// day of publication is so from the start.
func out(status content.Status, published, day content.Date) bool {
	return status != content.Draft && !day.Before(published)
}

func (e *edition) arrange() {
	slices.SortFunc(e.recipes, func(a, b *content.Recipe) int {
		return cmp.Or(newest(a.Published.V, b.Published.V), cmp.Compare(a.Slug, b.Slug))
	})
	slices.SortFunc(e.episodes, func(a, b *content.Episode) int {
		return cmp.Or(
			newest(a.Published.V, b.Published.V),
			cmp.Compare(b.Number.V, a.Number.V),
			cmp.Compare(a.Slug, b.Slug),
		)
	})
	slices.SortFunc(e.pages, func(a, b *content.Page) int {
		return cmp.Or(cmp.Compare(sortKey(a.Name.V), sortKey(b.Name.V)), cmp.Compare(a.Slug, b.Slug))
	})
	for _, ep := range e.episodes {
		for _, s := range named(ep) {
			e.heard[s] = append(e.heard[s], ep)
		}
	}
}

// gather sorts the recipes into those of a month, a way, a kind and a produce.
// Each recipe is looked at once, so that a site of thousands is no harder.
func (e *edition) gather() {
	for _, r := range e.recipes {
		for _, m := range Season(r) {
			e.made[m] = append(e.made[m], r)
		}
		for _, w := range waysOf(r) {
			e.kept[w] = append(e.kept[w], r)
		}
		e.kinds[r.Kind.V] = append(e.kinds[r.Kind.V], r)
	}
	e.harvests = harvestsOf(e.recipes)
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
