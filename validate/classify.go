package validate

import "strings"

// ClassifyItem says what an ingredient is, from its item and its note.
func ClassifyItem(item, note string) ItemClass {
	k := kitchen()
	var list [40]textWord
	words := k.book.cut(item, list[:0])
	m, ok := k.book.head(words)
	words = k.book.cut(note, append(words, textWord{turns: true}))
	if !ok {
		m, _ = k.book.head(words)
	}
	c := ItemClass{Kind: m.kind, Variety: m.variety}
	if m.produce > 0 {
		c.Produce = k.produce[m.produce-1]
	}
	c.qualify(plain(item), plain(note))
	if c.Kind == ItemFruit && k.book.holds(words, ItemPicklingLime) {
		return ItemClass{Kind: ItemPicklingLime}
	}
	return c
}

// qualify adds what else the words say.
func (c *ItemClass) qualify(item, note string) {
	said := func(words ...string) bool { return saysAny(item, words) || saysAny(note, words) }
	c.HomeMade = said("homemade", "home-made", "home made", "kombucha")
	switch c.Kind {
	case ItemVinegar:
		c.Strength = lower(strengthIn(item), strengthIn(note))
	case ItemCitrusJuice:
		c.Form = juiceForm(said)
	case ItemHerb:
		if said("dried", "dry", "ground", "powdered", "crumbled", "rubbed") {
			c.Kind, c.Produce = ItemSpice, Produce{}
		}
	case ItemFruit:
		c.squeezed(said)
	case ItemSalt:
		c.saltVariety(said)
	}
}

// squeezed takes "juice of 2 lemons" for the juice that it is.
func (c *ItemClass) squeezed(said func(...string) bool) {
	switch {
	case c.Produce.Name != "lemon" && c.Produce.Name != "lime":
	case said("juice of", "juice from", "juiced", "the juice"):
		*c = ItemClass{Kind: ItemCitrusJuice, Variety: c.Produce.Name, Form: JuiceFresh}
	case said("zest of", "peel of", "rind of"):
		*c = ItemClass{Kind: ItemPeel, Variety: c.Produce.Name}
	}
}

// juiceForm reads bottled or fresh; both, or neither, is unsaid.
func juiceForm(said func(...string) bool) JuiceForm {
	bottled := said("bottled") && !said("not bottled", "unbottled")
	fresh := said("fresh", "freshly", "squeezed", "juice of", "juice from") && !said("not fresh", "never fresh")
	switch {
	case bottled && !fresh:
		return JuiceBottled
	case fresh && !bottled:
		return JuiceFresh
	}
	return JuiceUnsaid
}

// saltVariety reads the sort of salt from what is said around the word.
func (c *ItemClass) saltVariety(said func(...string) bool) {
	if c.Variety != "" {
		return
	}
	switch {
	case said("non-iodized", "non-iodised", "pickling", "canning"):
		c.Variety = "pickling"
	case said("kosher", "flake", "flaky"):
		c.Variety = "flake"
	case said("iodized", "iodised", "table"):
		c.Variety = "table"
	}
}

// saysAny reports whether one of the words stands in a text, as a word.
func saysAny(text string, words []string) bool {
	if text == "" {
		return false
	}
	begin := beginnings(text)
	for _, w := range words {
		if isLetter(w[0]) && begin&(1<<(w[0]-'a')) == 0 {
			continue
		}
		for rest := text; ; {
			i := strings.Index(rest, w)
			if i < 0 {
				break
			}
			end := i + len(w)
			if (i == 0 || !isLetter(rest[i-1])) && (end == len(rest) || !isLetter(rest[end])) {
				return true
			}
			rest = rest[end:]
		}
	}
	return false
}

// beginnings has the bits of the letters that words of a text begin with.
func beginnings(text string) (letters uint32) {
	within := false
	for i := range len(text) {
		c := text[i]
		if !isLetter(c) {
			within = false
			continue
		}
		if !within {
			letters |= 1 << (c - 'a')
		}
		within = true
	}
	return letters
}

func isLetter(c byte) bool { return c-'a' < 26 }
