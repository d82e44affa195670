package validate

import (
	"reflect"
	"slices"

	"stillroom/content"
)

// A wholeSite is what the rules on the whole site have found, and what they
// have looked at.
type wholeSite struct {
	found []Finding
	site  *content.Site // a copy: lists may be changed in place
	day   content.Date
	files int
}

// checkWhole runs the rules on the whole site, unless all that they look at is
// as it was.
func (d *Desk) checkWhole(s *content.Site) []Finding {
	w := &d.whole
	if w.site != nil && w.day == d.Day && w.files == d.files && sameButRecipes(w.site, s) && sameOutlines(w.site.Recipes, s.Recipes) {
		w.site = copied(s)
		return slices.Clone(w.found)
	}
	var found []Finding
	for _, rule := range Rules {
		if rule.CheckSite != nil && rule != missingFile && rule != pictureBroken && rule != pictureText {
			found = append(found, rule.stamp(rule.CheckSite(s))...)
		}
	}
	found = append(found, checkDay(s, d.Day, Rules)...)
	takeSiteAsRead(found, s)
	d.whole = wholeSite{found: found, site: copied(s), day: d.Day, files: d.files}
	return slices.Clone(found)
}

func copied(s *content.Site) *content.Site {
	c := *s
	c.Recipes, c.Episodes, c.Pages = slices.Clone(s.Recipes), slices.Clone(s.Episodes), slices.Clone(s.Pages)
	return &c
}

func sameButRecipes(a, b *content.Site) bool {
	return slices.Equal(a.Episodes, b.Episodes) && slices.Equal(a.Pages, b.Pages) &&
		reflect.DeepEqual(a.Settings, b.Settings) && reflect.DeepEqual(a.GUIDs, b.GUIDs)
}

// sameOutlines reports whether recipes differ in nothing that the rules on the
// whole site look at.
func sameOutlines(a, b []*content.Recipe) bool {
	return slices.EqualFunc(a, b, func(a, b *content.Recipe) bool {
		return a == b || reflect.DeepEqual(outline(a), outline(b))
	})
}

// outline is a recipe without what is cooked and how: no rule on the whole site
// looks at that.
func outline(r *content.Recipe) content.Recipe {
	o := *r
	o.Summary, o.Yield, o.Marks = content.Field[string]{}, content.Field[content.Yield]{}, nil
	o.Ingredients, o.Keeping, o.Batches, o.Keys = nil, nil, nil, nil
	o.Body = content.Body{}
	return o
}
