package validate

import (
	"iter"
	"slices"
	"strings"
	"sync"
)

// A methodWords is what the steps of a recipe name, for looking up whether an
// ingredient is used.
type methodWords struct {
	saidWords
	steps []*sentence // the sentences of the steps
	all   bool        // "all the ingredients", "everything"
}

// method gathers what the steps name; headings count too.
func (t *Text) method() *methodWords {
	if t.steps == nil {
		t.steps = t.readMethod()
	}
	return t.steps
}

var allOfThem = fewOf("ingredients everything")

func (t *Text) readMethod() *methodWords {
	m := &methodWords{saidWords: newSaidWords(t.lex)}
	for s := range t.sentences(placeStep, placeHeading) {
		m.take(s)
		m.all = m.all || s.holds(&allOfThem)
		if s.place == placeStep {
			m.steps = append(m.steps, s)
		}
	}
	return m
}

// uses gives what the steps name of the things that the tables know.
func (m *methodWords) uses() iter.Seq[use] {
	return func(yield func(use) bool) {
		for _, s := range m.steps {
			for _, u := range s.uses() {
				if !yield(u) {
					return
				}
			}
		}
	}
}

// collectives are the words that stand for ingredients of a kind.
var collectives = map[string][]ItemKind{
	"spice":     {ItemSpice, ItemHerb, ItemPeel},
	"seasoning": {ItemSpice, ItemSalt, ItemHerb, ItemPrepared},
	"herb":      {ItemHerb, ItemSpice},
	"aromatic":  {ItemGarlic, ItemHerb, ItemSpice, ItemVegetable},
	"vegetable": {ItemVegetable, ItemGarlic, ItemMushroom, ItemLegume},
	"fruit":     {ItemFruit},
	"berry":     {ItemFruit},
	"nut":       {ItemNut},
	"meat":      {ItemMeat},
	"bird":      {ItemMeat},
	"bone":      {ItemMeat},
	"fish":      {ItemMeat},
	"fillet":    {ItemMeat},
	"liquid":    {ItemWater, ItemVinegar, ItemStock, ItemCitrusJuice, ItemAlcohol},
	"brine":     {ItemWater, ItemVinegar, ItemSalt, ItemSugar, ItemSpice},
	"pickle":    {ItemWater, ItemVinegar, ItemSalt, ItemSugar, ItemSpice},
	"syrup":     {ItemWater, ItemSugar, ItemSweetener},
	"sweetener": {ItemSugar, ItemSweetener},
	"starter":   {ItemCulture},
	"pulp":      {ItemFruit, ItemVegetable},
	"bean":      {ItemLegume},
	"shellfish": {ItemMeat},
	"egg":       {ItemEgg},
	"oil":       {ItemFat},
	"chile":     {ItemVegetable},
	"pepper":    {ItemVegetable, ItemSpice},
	"green":     {ItemVegetable},
	"slice":     {ItemFruit, ItemVegetable},
	"halve":     {ItemFruit},
	"kernel":    {ItemVegetable},
	"ear":       {ItemVegetable},
	"lemon":     {ItemCitrusJuice, ItemPeel},
	"lime":      {ItemCitrusJuice, ItemPeel},
	"juice":     {ItemCitrusJuice, ItemFruit},
	"acid":      {ItemCitrusJuice, ItemCitricAcid, ItemVinegar, ItemAscorbicAcid},
}

// collectivesOf leads from a kind to the words that stand for it.
var collectivesOf = sync.OnceValue(func() map[ItemKind][]string {
	words := map[ItemKind][]string{}
	for w, kinds := range collectives {
		for _, k := range kinds {
			words[k] = append(words[k], w)
		}
	}
	return words
})

// names reports whether the steps name an ingredient: by a word of its own, by
// a word for its kind, by the name of its group, or as part of everything.
func (m *methodWords) names(in Item) bool {
	if m.all {
		return true
	}
	words := itemWords(in.Item)
	if len(words) == 0 {
		words = strings.Fields(plain(in.Item))
		for i, w := range words {
			words[i] = singular(w)
		}
	}
	if slices.ContainsFunc(words, m.have) || slices.ContainsFunc(itemWords(in.For), m.have) || slices.ContainsFunc(collectivesOf()[in.Class.Kind], m.have) {
		return true
	}
	for u := range m.uses() {
		if u.kind == in.Class.Kind && u.kind != ItemOther && u.produce > 0 && kitchen().produce[u.produce-1].Name == in.Class.Produce.Name {
			return true
		}
	}
	return len(words) == 0
}
