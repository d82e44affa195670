package build

import (
	"slices"

	"stillroom/content"
)

// A HomePage opens the site.
type HomePage struct {
	Shell
	About     string
	Newest    *Newest // nil while there are no recipes
	Shelf     Shelf   // the newest recipes
	Month     string  // July
	InSeason  Shelf
	Ripe      []Counted // produce of that month
	Year      []Month
	Episode   *EpisodeCard // the newest; nil if there are none
	Programme string
	Cover     *Picture // of the programme; nil if it has none
	Produce   []Counted
	Ways      []Counted
	Count     string
}

// A Newest is the recipe that a visitor meets first.
type Newest struct {
	Jar
	Label     string // New on the shelf
	Picture   *Picture
	Published Day
}

// onShelf is how many jars stand on a shelf of the home page.
const onShelf = 8

func (e *edition) homePage() *HomePage {
	p := &HomePage{
		About:   e.settings.Author.About.V,
		Month:   e.day.Month.String(),
		Year:    e.year(e.day.Month),
		Ripe:    e.ripe(e.day.Month),
		Produce: e.produceCounts(),
		Ways:    e.wayCounts(),
		Count:   count(len(e.recipes), "recipe", "recipes"),
	}
	l := leaf{address: homeAddress, description: e.introduction(), nodes: []node{e.website()}}
	if len(e.recipes) > 0 {
		p.Newest = e.newest("New on the shelf", e.recipes)
		l.picture = e.recipes[0].Picture
	}
	if len(e.recipes) > 1 {
		p.Shelf = Shelf{ID: "newest", Name: "Lately put up", Jars: jars(atMost(e.recipes[1:], onShelf))}
	}
	p.InSeason = Shelf{ID: "season", Name: "To put up in " + p.Month, Jars: jars(atMost(e.made[e.day.Month], onShelf))}
	if len(e.episodes) > 0 {
		c := e.episodeCard(e.episodes[0])
		p.Episode = &c
	}
	if e.settings.Programme != nil {
		p.Programme = e.settings.Programme.Name.V
		p.Cover = e.picture(&content.Picture{File: e.settings.Programme.Picture})
	}
	p.Shell = e.shell(l)
	p.Vessels = vessels(p.Shelf.Jars, p.InSeason.Jars)
	return p
}

// newest gives the newest recipe of a list; nil of an empty one.
func (e *edition) newest(label string, recipes []*content.Recipe) *Newest {
	if len(recipes) == 0 {
		return nil
	}
	r := slices.MinFunc(recipes, func(a, b *content.Recipe) int { return newest(a.Published.V, b.Published.V) })
	return &Newest{jar(r), label, e.picture(r.Picture), day(r.Published.V)}
}

// introduction describes the site in a line.
func (e *edition) introduction() string {
	if e.settings.Tagline.V != "" {
		return sentence(e.settings.Tagline.V)
	}
	return sentence("Recipes for keeping food, by " + e.settings.Author.Name.V)
}

func atMost[T any](all []T, n int) []T { return all[:min(n, len(all))] }
