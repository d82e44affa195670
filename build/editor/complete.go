package editor

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"stillroom/content"
	"stillroom/validate"
)

// An offer is something that may stand at a spot.
type offer struct {
	text   string
	detail string
	doc    string
	group  int // those of a lower number are offered first
	kind   int
}

// completion offers the keys that may still be written, or the words that the
// key may be given.
func (s *Server) completion(p placeParams) (any, error) {
	items := []completionItem{}
	d := s.document(p.TextDocument)
	if d == nil {
		return items, nil
	}
	col := d.column(d.line(p.Position.Line), p.Position.Character)
	at, ok := spotAt(d.paper, d.file, p.Position.Line, col)
	if !ok {
		return items, nil
	}
	for i, o := range s.offers(d, at) {
		item := completionItem{
			Label: o.text, Kind: o.kind, Detail: o.detail,
			SortText: fmt.Sprintf("%d-%04d", o.group, i),
			TextEdit: &textEdit{d.span(at.line, at.from, at.to), o.text},
		}
		if o.kind == itemProperty {
			item.TextEdit.NewText += colonAfter(string(d.line(at.line))[at.to:])
		}
		if o.doc != "" {
			item.Documentation = &markup{"markdown", o.doc}
		}
		items = append(items, item)
	}
	return items, nil
}

// colonAfter is what parts a key from its value, unless it stands there.
func colonAfter(rest string) string {
	if strings.HasPrefix(strings.TrimLeft(rest, `"' `), ":") {
		return ""
	}
	return ": "
}

// offers gives all that may stand at a spot, the likeliest first.
func (s *Server) offers(d *document, at spot) []offer {
	keys, key := s.meaning(d.file, at)
	if keys != nil {
		return offersOfKeys(keys, at.beside, keepingAt(readNow(d, at.line), at))
	}
	if key == nil {
		return nil
	}
	return s.values(d, at, key)
}

// meaning gives the keys that may stand at a spot, or the key whose value does.
// Neither is given where nobody knows.
func (s *Server) meaning(file string, at spot) (keys content.KeyTable, value *content.Key) {
	keys = tableOf(file)
	for _, name := range at.path {
		k := keys.Find(name)
		if k == nil {
			return nil, nil
		}
		keys, value = slices.Concat(k.Keys, k.Or), k
	}
	if at.asKey && len(keys) > 0 {
		return keys, nil
	}
	return nil, value
}

// tableOf gives the keys of a file.
func tableOf(file string) content.KeyTable {
	switch content.SortOf(file) {
	case content.TheSettings:
		return content.SiteKeys
	case content.ARecipe:
		return content.RecipeKeys
	case content.AnEpisode:
		return content.EpisodeKeys
	case content.APage:
		return content.PageKeys
	}
	return nil
}

// offersOfKeys offers the keys that a map lacks, first those that it must have; of
// a way of keeping those that mean something for it.
func offersOfKeys(keys content.KeyTable, beside []string, keeping *content.Keeping) []offer {
	var all []offer
	for _, k := range keys {
		way := content.Way("")
		if keeping != nil {
			way = keeping.Way.V
		}
		if slices.Contains(beside, k.Name) || way != "" && k.For != nil && !slices.Contains(k.For, way) {
			continue
		}
		o := offer{text: k.Name, detail: k.Doc, doc: aboutKey(&k), group: 1, kind: itemProperty}
		if k.Required || slices.Contains(k.Needed, way) {
			o.group = 0
		}
		all = append(all, o)
	}
	slices.SortStableFunc(all, func(a, b offer) int { return a.group - b.group })
	return all
}

// values gives the words that a key may be given.
func (s *Server) values(d *document, at spot, k *content.Key) []offer {
	switch {
	case len(k.Words) > 0:
		return plainOffers(k.Words...)
	case k.Name == "process":
		return s.processes(d, at)
	case k.Name == "produce":
		return produceOffers()
	case k.Name == "file" && slices.Contains(at.path, "audio"), k.Name == "transcript":
		return plainOffers(slices.Sorted(maps.Keys(s.site.Site().Media))...)
	}
	switch k.Want {
	case content.WantFile:
		return plainOffers(slices.Sorted(maps.Keys(s.site.Site().Pictures))...)
	case content.WantTruth:
		return plainOffers("true", "false")
	case content.WantDate:
		return plainOffers(s.Day().String())
	case content.WantMonth:
		return plainOffers("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec")
	case content.WantAcid:
		return plainOffers("natural", "in-recipe")
	case content.WantSlug:
		return s.slugs()
	case content.WantJar:
		return s.jars(d, at)
	case content.WantReasons:
		return plainOffers(s.Schema().Rules...)
	}
	return nil
}

func plainOffers(words ...string) []offer {
	var all []offer
	for _, w := range words {
		all = append(all, offer{text: w, kind: itemValue})
	}
	return all
}

// processes offers the tested processes, first those of the recipe's produce and
// kind, then those of its produce, and then all others.
func (s *Server) processes(d *document, at spot) []offer {
	r := s.recipeOf(d, at.line)
	way := content.Way("")
	if k := keepingAt(readNow(d, at.line), at); k != nil {
		way = k.Way.V
	}
	likely := make(map[*validate.Process]bool)
	near := make(map[*validate.Process]bool)
	for _, p := range r.Produce {
		for _, c := range validate.Candidates(r.Kind.V, p.V) {
			likely[c] = true
		}
		for _, c := range validate.Candidates("", p.V) {
			near[c] = true
		}
	}
	var all []offer
	for _, p := range validate.Processes() {
		if way != "" && p.Method != way && !(way == content.AtmosphericSteam && p.Method == content.BoilingWater) {
			continue
		}
		o := offer{text: p.ID, detail: p.Food + ", " + string(p.Method), doc: aboutProcess(p), group: 2, kind: itemReference}
		switch {
		case likely[p]:
			o.group = 0
		case near[p]:
			o.group = 1
		}
		all = append(all, o)
	}
	slices.SortStableFunc(all, func(a, b offer) int { return a.group - b.group })
	return slices.CompactFunc(all, func(a, b offer) bool { return a.text == b.text })
}

// jars offers the sizes that the cited process was tested with, or else all that
// some process was.
func (s *Server) jars(d *document, at spot) []offer {
	of := validate.Processes()
	if p := processOf(keepingAt(readNow(d, at.line), at)); p != nil {
		of = []*validate.Process{p}
	}
	var sizes []string
	for _, p := range of {
		for _, j := range p.Jars {
			if j.Jar != "" && !slices.Contains(sizes, j.Jar) {
				sizes = append(sizes, j.Jar)
			}
		}
	}
	return plainOffers(sizes...)
}

func produceOffers() []offer {
	var all []offer
	for _, p := range validate.AllProduce() {
		all = append(all, offer{text: p.Name, kind: itemValue})
	}
	return all
}

// slugs offers the recipes of the site.
func (s *Server) slugs() []offer {
	var all []offer
	for _, r := range s.site.Site().Recipes {
		all = append(all, offer{text: r.Slug, detail: r.Name.V, kind: itemReference})
	}
	return all
}
