package preview

import (
	"slices"

	"stillroom/content"
)

// chartOf says where the page of a file shows what. The selectors are those of
// the built-in theme's pages; a theme of the site's own that is built otherwise
// has its findings at the top of the page.
func chartOf(t *text) *chart {
	c := &chart{file: t.file}
	switch {
	case t.recipe != nil:
		c.recipe(t.recipe)
	case t.episode != nil:
		c.episode(t.episode)
	case t.page != nil:
		c.page(t.page)
	case t.site != nil:
		c.settings(t.site)
	}
	return c.sorted()
}

// keys gives each key the part of the page that shows its value. Keys that are
// not listed are shown nowhere.
func (c *chart) keys(places map[string]content.Pos, parts map[string]spot) {
	for key, pos := range places {
		c.put(pos, parts[key]...)
	}
}

func (c *chart) recipe(r *content.Recipe) {
	c.keys(r.Keys, map[string]spot{
		"name": {at("h1", 0)}, "summary": {at(".title .summary", 0)}, "kind": {at(".title .kind", 0)},
		"yield": fact("Makes"), "times": {at(".title .facts", 0)},
		"ingredients": {at("#ingredients h2", 0)}, "gear": {at(".gear", 0)}, "cautions": {at(".caution", 0)},
		"picture": {at(".contents .print", 0)}, "pictures": {at(".prints", 0)},
		"keeping": {at("#keeping h2", 0)}, "batches": {at(".log h2", 0)},
		"produce": colophon("Produce"), "season": colophon("Season"), "tags": colophon("Marked"),
		"inspired_by": colophon("After"), "published": colophon("Published"), "updated": colophon("Updated"),
	})
	c.put(r.Times.HandsOn.Pos, fact("Hands on")...)
	c.put(r.Times.Cooking.Pos, fact("Cooking")...)
	c.put(r.Times.Waiting.Pos, fact("Waiting")...)
	n := 0
	for _, g := range r.Ingredients {
		for _, i := range g.Items {
			c.put(i.Pos, at("#ingredients .ledger li", n))
			n++
		}
	}
	for i, f := range r.Gear {
		c.put(f.Pos, at(".gear li", i))
	}
	for i, f := range r.Cautions {
		c.put(f.Pos, at(".caution li", i))
	}
	for i, p := range r.Pictures {
		c.put(p.File.Pos, at(".prints .print", i))
	}
	for i := range r.Keeping {
		c.keeping(at(".ways > .way", i), &r.Keeping[i])
	}
	c.method(r.Body)
}

// fact is a figure under a recipe's name.
func fact(name string) spot { return spot{named(".title .facts > *", name)} }

// colophon is a line at the foot of a recipe.
func colophon(name string) spot { return spot{named(".colophon dl > *", name)} }

// keeping charts a way of keeping, which the page shows as a block of its own.
func (c *chart) keeping(way step, k *content.Keeping) {
	figure := func(name string) spot { return spot{way, named(".facts > *", name)} }
	c.put(k.Pos, way, at("h3", 0))
	c.keys(k.Keys, map[string]spot{
		"way": {way, at("h3", 0)}, "process": {way, at(".agrees", 0)}, "tested_by": {way, at(".agrees", 0)},
		"pack": figure("Pack"), "headspace": figure("Headspace"), "acid": figure("Acid"), "salt": figure("Salt"),
		"temperature": figure("Temperature"), "blanch": figure("Blanch"), "container": figure("Container"),
		"duration": figure("Takes"), "ph": figure("pH"), "measured": figure("pH"), "keeps": figure("Keeps"),
		"factor": {way, at(".batch", 0)}, "jars_sterilised": {way, at(".before", 0)},
		"processing": {way, at(".scale", 0)},
	})
	for i := range k.Processing {
		c.processing(way, k, i)
	}
}

// processing charts what a size of jar needs: a column of a table by altitude,
// or of one for each gauge, over which the minutes stand.
func (c *chart) processing(way step, k *content.Keeping, i int) {
	p := &k.Processing[i]
	c.put(p.Pos, way, named(".facts > *", "Jar"))
	minutes := columnOf(k.Processing, i, func(p *content.Processing) []content.Band[content.Duration] { return p.Altitude })
	dial := columnOf(k.Processing, i, func(p *content.Processing) []content.Band[content.Pressure] { return p.Dial })
	weighted := columnOf(k.Processing, i, func(p *content.Processing) []content.Band[content.Pressure] { return p.Weighted })
	dial.table += minutes.tables
	weighted.table += minutes.tables + dial.tables
	first := dial
	if len(p.Dial) == 0 {
		first = weighted
	}
	over := func(col column) spot { return spot{way, at(".scale", col.table), at("thead th", col.nth+1)} }
	c.put(p.Time.Pos, over(first)...)
	c.keys(p.Keys, map[string]spot{"time": over(first), "altitude": over(minutes), "dial": over(dial), "weighted": over(weighted)})
	putBands(c, way, minutes, p.Altitude)
	putBands(c, way, dial, p.Dial)
	putBands(c, way, weighted, p.Weighted)
}

// A column is where a size of jar stands in the tables of one sort, and how
// many tables there are of it.
type column struct{ table, nth, tables int }

// columnOf finds the column of the ith size. Sizes with the same bands share a
// table.
func columnOf[T any](rows []content.Processing, i int, of func(*content.Processing) []content.Band[T]) (c column) {
	var tables [][]content.Band[T]
	var sizes []int // how many there are in each
	for j := range rows {
		bands := of(&rows[j])
		if len(bands) == 0 {
			continue
		}
		t := slices.IndexFunc(tables, func(other []content.Band[T]) bool { return sameBands(other, bands) })
		if t < 0 {
			t = len(tables)
			tables, sizes = append(tables, bands), append(sizes, 0)
		}
		if j == i {
			c.table, c.nth = t, sizes[t]
		}
		sizes[t]++
	}
	c.tables = len(tables)
	return c
}

func sameBands[T any](a, b []content.Band[T]) bool {
	return slices.EqualFunc(a, b, func(a, b content.Band[T]) bool { return a.Text == b.Text })
}

// putBands charts the cells of a column.
func putBands[T any](c *chart, way step, col column, bands []content.Band[T]) {
	for row, b := range bands {
		cell := spot{way, at(".scale", col.table), at("tbody tr", row), at("td", col.nth)}
		c.put(b.Pos, cell...)
		c.put(b.Value.Pos, cell...)
	}
}

func (c *chart) episode(e *content.Episode) {
	c.keys(e.Keys, map[string]spot{
		"name": {at("h1", 0)}, "summary": {at(".summary", 0)}, "number": {at(".kind", 0)}, "series": {at(".kind", 0)},
		"published": {at(".title .meta", 0)}, "audio": {at("audio", 0)}, "recipes": {at("#spoken-name", 0)},
		"chapters": {at(".chapters h2", 0)}, "links": {at(".links h2", 0)}, "transcript": {at("#transcript h2", 0)},
		"next": {at(".next", 0)},
	})
	for i, ch := range e.Chapters {
		c.put(ch.Pos, at(".chapters li", i))
	}
	for i, l := range e.Links {
		c.put(l.Title.Pos, at(".links li", i))
		c.put(l.Address.Pos, at(".links li", i))
	}
	c.prose(e.Body, ".work > .prose > *")
}

func (c *chart) page(p *content.Page) {
	c.keys(p.Keys, map[string]spot{
		"name": {at("h1", 0)}, "summary": {at(".what", 0)}, "picture": {at(".print", 0)},
	})
	c.prose(p.Body, ".plain > .prose > *")
}

func (c *chart) settings(s *content.Settings) {
	c.keys(s.Keys, map[string]spot{
		"name": {at("h1", 0)}, "tagline": {at("h1 + .summary, h1 + .what", 0)}, "programme": {at("#heard-name", 0)},
	})
}
