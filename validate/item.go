package validate

import (
	"math/big"
	"strings"
)

// An ItemKind says what an ingredient is to a preserver. It is the word of the
// tables.
type ItemKind string

// The kinds of item.
const (
	ItemOther        ItemKind = ""             // nothing that the tables know
	ItemVinegar      ItemKind = "vinegar"      // Variety: cider, white, wine, malt, ...
	ItemCitrusJuice  ItemKind = "citrus-juice" // of lemon or lime; Variety says of which
	ItemCitricAcid   ItemKind = "citric-acid"
	ItemAscorbicAcid ItemKind = "ascorbic-acid" // vitamin C: keeps colour, is no acid for safety
	ItemAcidTablet   ItemKind = "acid-tablet"   // tablets and powders offered for canning; aspirin
	ItemAcidOther    ItemKind = "acid-other"    // tartaric, lactic and other acids; verjuice
	ItemSalt         ItemKind = "salt"          // Variety: pickling, flake, table, sea, curing; empty if unsaid
	ItemSaltSubst    ItemKind = "salt-substitute"
	ItemSugar        ItemKind = "sugar"     // Variety: white, brown, gelling, honey, syrup
	ItemSweetener    ItemKind = "sweetener" // without sugar
	ItemPectin       ItemKind = "pectin"    // Variety: powdered, liquid, low-sugar, home-made; empty if unsaid
	ItemGelatin      ItemKind = "gelatin"
	ItemStarch       ItemKind = "starch"          // flour, corn starch, arrowroot, gums
	ItemModStarch    ItemKind = "modified-starch" // cook-type modified starch, the one for pie fillings
	ItemPasta        ItemKind = "pasta"
	ItemGrain        ItemKind = "grain" // rice, barley, oats, bread
	ItemDairy        ItemKind = "dairy"
	ItemButter       ItemKind = "butter"
	ItemFat          ItemKind = "fat" // oil, lard, mayonnaise, pesto
	ItemEgg          ItemKind = "egg"
	ItemPicklingLime ItemKind = "pickling-lime"
	ItemAlum         ItemKind = "alum"
	ItemCrisping     ItemKind = "crisping-salt" // calcium chloride
	ItemPreservative ItemKind = "preservative"
	ItemCulture      ItemKind = "culture" // starter, whey, yeast
	ItemWater        ItemKind = "water"
	ItemStock        ItemKind = "stock"
	ItemAlcohol      ItemKind = "alcohol"
	ItemSpice        ItemKind = "spice"    // seed, powder, dried leaf, extract
	ItemHerb         ItemKind = "herb"     // fresh
	ItemPeel         ItemKind = "peel"     // of citrus
	ItemPrepared     ItemKind = "prepared" // bought or made before: tomato paste, mustard, soya sauce
	ItemNut          ItemKind = "nut"
	ItemGarlic       ItemKind = "garlic"
	ItemFruit        ItemKind = "fruit"
	ItemVegetable    ItemKind = "vegetable" // tomatoes and peppers too
	ItemLegume       ItemKind = "legume"
	ItemMushroom     ItemKind = "mushroom"
	ItemMeat         ItemKind = "meat" // poultry and fish too
)

// An ItemClass is what the words of an ingredient say of it.
type ItemClass struct {
	Kind     ItemKind
	Variety  string    // as the kind says; empty if unsaid
	Produce  Produce   // the food, for the kinds that are one; zero for the others
	Strength *big.Rat  // of a vinegar: acetic acid in per cent, the lower end of a range; nil if unsaid
	Form     JuiceForm // of a citrus juice
	HomeMade bool
}

// A JuiceForm says whether a juice has a strength that can be relied on.
type JuiceForm string

// The forms of juice.
const (
	JuiceUnsaid  JuiceForm = ""
	JuiceBottled JuiceForm = "bottled"
	JuiceFresh   JuiceForm = "fresh"
)

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
	for _, w := range words {
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

func isLetter(c byte) bool { return 'a' <= c && c <= 'z' }

// lower gives the lesser of two numbers, either of which may be nil.
func lower(a, b *big.Rat) *big.Rat {
	if a == nil || b != nil && b.Cmp(a) < 0 {
		return b
	}
	return a
}

// strengthIn reads how strong a text says a vinegar is: 5%, 5 percent, 50
// grain. It gives the lowest of several, nil if none is said. A share that no
// vinegar has, as in "50% water", is none.
func strengthIn(text string) *big.Rat {
	var lowest *big.Rat
	for i := 0; i < len(text); {
		number, after := numberAt(text, i)
		if number == nil {
			i++
			continue
		}
		i = after
		if !sharesFollow(text[after:]) {
			continue
		}
		if strings.HasPrefix(strings.TrimLeft(text[after:], " -"), "grain") {
			number.Mul(number, big.NewRat(1, 10))
		}
		if number.Cmp(LimitRat("vinegar-strongest")) <= 0 {
			lowest = lower(lowest, number)
		}
	}
	return lowest
}

// sharesFollow reports whether a unit of strength stands next, or after the
// other end of a range: "-6%".
func sharesFollow(text string) bool {
	text = strings.TrimLeft(text, " -–")
	for _, unit := range []string{"%", "percent", "per cent", "pct", "grain"} {
		if strings.HasPrefix(text, unit) {
			return true
		}
	}
	text = strings.TrimPrefix(text, "to ")
	if number, after := numberAt(text, 0); number != nil {
		return sharesFollow(text[after:])
	}
	return false
}

// numberAt reads the number that begins at i, and where it ends; nil if none
// does.
func numberAt(text string, i int) (*big.Rat, int) {
	end := i
	for end < len(text) && (text[end] >= '0' && text[end] <= '9' || text[end] == '.' && end > i) {
		end++
	}
	number, ok := new(big.Rat).SetString(strings.TrimSuffix(text[i:end], "."))
	if !ok {
		return nil, end
	}
	return number, end
}
