package validate

import "math/big"

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
	ItemLeavening    ItemKind = "leavening"       // baking powder and soda
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
	ItemPrepared     ItemKind = "prepared" // bought or made before: tomato paste, mustard; Variety: chocolate
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
