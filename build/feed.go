package build

import (
	"slices"
	"strings"

	"stillroom/content"
)

// A feed holds the recipes that changed last, whole, so that they can be read
// and kept without the site: inFeed of them, which is what JSON Feed 1.1 asks
// to stay under 250 kB. It has no further pages. Every recipe stands on the
// site, and a feed is there to tell what is new.
//
// A correction that later recipes have pushed out would reach nobody, so the
// last recipes that were put right or taken back stay in it as well.
const (
	inFeed   = 15
	putRight = 10
)

// feedTags are the kind of food and the tags, each once.
func feedTags(r *content.Recipe) []string {
	return once(append([]string{string(r.Kind.V)}, texts(r.Tags)...))
}

// feedID is the permanent name of a recipe in feeds: the first address that it
// had on this site, where the site was first. RFC 4287, 4.2.6: it must not change,
// even when the entry or the feed moves.
func (e *edition) feedID(r *content.Recipe) string {
	for _, old := range r.Formerly {
		if name, ok := strings.CutPrefix(old.V, recipesAddress); ok && strings.Trim(name, "/") != "" {
			return e.site.FirstAddress() + recipesAddress + strings.Trim(name, "/") + "/"
		}
	}
	return e.site.FirstAddress() + recipeAddress(r)
}

// A feedEntry is a recipe of the feeds, and the whole of it as HTML.
type feedEntry struct {
	*content.Recipe
	text string
}

func (e *edition) feedEntries() []feedEntry {
	var entries []feedEntry
	for _, r := range e.lastChanged() {
		entries = append(entries, feedEntry{r, e.feedText(r)})
	}
	return entries
}

// lastChanged gives the recipes of a feed.
func (e *edition) lastChanged() []*content.Recipe {
	all := slices.Concat(e.recipes, e.withdrawn) // the newest first, which stays so among equals
	slices.SortStableFunc(all, func(a, b *content.Recipe) int { return newest(a.LastChange(), b.LastChange()) })
	recipes, right := slices.Clone(atMost(all, inFeed)), 0
	for _, r := range all[len(recipes):] {
		if r.Withdrawn == nil && len(r.Corrections) == 0 {
			continue
		}
		if right++; right > putRight {
			break
		}
		recipes = append(recipes, r)
	}
	return recipes
}

// changed is when a feed changed last. The feed of a site without recipes has
// never done so: it is as old as the day.
func (e *edition) changed(entries []feedEntry) content.Date {
	if len(entries) == 0 {
		return e.day
	}
	return entries[0].LastChange()
}

// feedTitle says of a recipe that was taken back that it was.
func feedTitle(r *content.Recipe) string {
	if r.Withdrawn != nil {
		return "Withdrawn: " + r.Name.V
	}
	return r.Name.V
}

// feedSummary is what stands where there is no room for the recipe.
func feedSummary(r *content.Recipe) string {
	if r.Withdrawn != nil {
		return "Withdrawn on " + day(r.Withdrawn.Date.V).Text + ": " + r.Withdrawn.Reason.V
	}
	return r.Summary.V
}
