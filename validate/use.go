package validate

import (
	"slices"
	"strings"
)

// A use is a food or another ingredient that a sentence of the method names.
type use struct {
	*sentence
	meaning
	from, to int // its tokens
}

// uses gives what the sentence names of the things that the tables know. They
// are looked up once.
func (s *sentence) uses() []use {
	if !s.searched {
		s.searched = true
		s.used = s.lookUp(kitchen().book)
	}
	return s.used
}

func (s *sentence) lookUp(book *phraseBook) (all []use) {
	var few [48]textWord
	words := few[:0]
	for i := range s.len() {
		words = append(words, textWord{number: book.words[plain(s.word(i))]})
	}
	for i := 0; i < len(words); {
		end := i + 1
		for end < len(words) && s.at(end-1).after == 0 {
			end++
		}
		m, taken := book.longest(words[i:end])
		if taken == 0 {
			i++
			continue
		}
		all = append(all, use{s, m, i, i + taken})
		i += taken
	}
	return all
}

// A methodWords is what the steps of a recipe name, for looking up whether an
// ingredient is used.
type methodWords struct {
	words map[string]bool // in the singular
	uses  []use
	all   bool // "all the ingredients", "everything"
}

// method gathers what the steps name; headings count too.
func (t *Text) method() *methodWords {
	if t.steps == nil {
		t.steps = t.readMethod()
	}
	return t.steps
}

func (t *Text) readMethod() *methodWords {
	m := &methodWords{words: map[string]bool{}}
	for s := range t.sentences(placeStep, placeHeading) {
		for i := range s.len() {
			m.words[singular(plain(s.word(i)))] = true
			if s.isAny(i, "ingredients everything") {
				m.all = true
			}
		}
		if s.place == placeStep {
			m.uses = append(m.uses, s.uses()...)
		}
	}
	return m
}

// emptyWords say nothing of what an ingredient is.
const emptyWords = ` fresh ripe large small medium whole ground dried chopped sliced diced minced peeled cored pitted crushed grated
	shredded thinly finely coarsely freshly of and or with the a an red green white black yellow golden brown sweet hot cold warm good
	best any kind sort pure plain unsalted salted cooked canned bottled frozen raw firm tender young old about each plus more extra
	optional packed level heaped heaping scant lightly dark light baby mild strong thin thick cut into in to for from at your own other
	such as percent cup tablespoon teaspoon pound ounce gram quart pint head bunch clove stick sprig piece box package bag can jar
	half quarter inch organic local unwaxed washed trimmed hulled stemmed halved quartered box regular powdered granulated distilled
	european washed pickling canning kosher sea table cooking fine coarse natural raw unsweetened sweetened clear long short straight `

// itemWords gives the words that say what an ingredient is, in the singular.
func itemWords(text string) (words []string) {
	for w := range strings.FieldsFuncSeq(plain(text), func(r rune) bool { return r < 'a' || r > 'z' }) {
		one := singular(w)
		if len(one) > 1 && !strings.Contains(emptyWords, " "+one+" ") && !strings.Contains(emptyWords, " "+w+" ") {
			words = append(words, one)
		}
	}
	return words
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
	for _, w := range append(words, itemWords(in.For)...) {
		if m.words[w] {
			return true
		}
	}
	for w, kinds := range collectives {
		if m.words[w] && slices.Contains(kinds, in.Class.Kind) {
			return true
		}
	}
	for _, u := range m.uses {
		if u.kind == in.Class.Kind && u.kind != ItemOther && u.produce > 0 && kitchen().produce[u.produce-1].Name == in.Class.Produce.Name {
			return true
		}
	}
	return len(words) == 0
}
