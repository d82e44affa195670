package validate

// An ItemKind says what an ingredient is to a preserver.
type ItemKind string

// The kinds of item that rules ask for.
const (
	ItemOther        ItemKind = ""             // nothing that the tables know
	ItemVinegar      ItemKind = "vinegar"      // Strength, Variety, HomeMade
	ItemCitrusJuice  ItemKind = "citrus-juice" // lemon or lime; Juice says whether bottled
	ItemCitricAcid   ItemKind = "citric-acid"
	ItemAscorbicAcid ItemKind = "ascorbic-acid" // vitamin C: keeps colour, is no acid for safety
	ItemAcidTablet   ItemKind = "acid-tablet"   // tablets and powders sold as a canning aid, aspirin
	ItemAcidOther    ItemKind = "acid-other"    // tartaric, lactic and other acids, verjuice
	ItemSalt         ItemKind = "salt"          // Variety: pickling, flake, table, sea, curing; empty if unsaid
	ItemSaltSubst    ItemKind = "salt-substitute"
	ItemSugar        ItemKind = "sugar"     // with honey and syrups; Variety
	ItemSweetener    ItemKind = "sweetener" // without sugar
	ItemPectin       ItemKind = "pectin"    // Variety: powdered, liquid, low-sugar; empty if unsaid
	ItemGelatin      ItemKind = "gelatin"
	ItemStarch       ItemKind = "starch"          // flour, corn starch, arrowroot, gums
	ItemModStarch    ItemKind = "modified-starch" // cook-type modified starch, the one for pie fillings
	ItemPasta        ItemKind = "pasta"           // with noodles and dumplings
	ItemGrain        ItemKind = "grain"           // rice, barley, oats, bread
	ItemDairy        ItemKind = "dairy"
	ItemButter       ItemKind = "butter"
	ItemFat          ItemKind = "fat" // oil, lard, dripping
	ItemEgg          ItemKind = "egg"
	ItemPicklingLime ItemKind = "pickling-lime"
	ItemAlum         ItemKind = "alum"
	ItemCrisping     ItemKind = "crisping-salt" // calcium chloride
	ItemPreservative ItemKind = "preservative"  // benzoate, sulphite
	ItemCulture      ItemKind = "culture"       // starter, whey, yeast
	ItemWater        ItemKind = "water"
	ItemStock        ItemKind = "stock"
	ItemAlcohol      ItemKind = "alcohol"
	ItemSpice        ItemKind = "spice"    // dried: seed, powder, dried leaf
	ItemHerb         ItemKind = "herb"     // fresh
	ItemPeel         ItemKind = "peel"     // zest and rind of citrus
	ItemPrepared     ItemKind = "prepared" // bought ready: tomato paste, mustard, soya sauce
	ItemNut          ItemKind = "nut"
	ItemGarlic       ItemKind = "garlic" // Produce too
	ItemFruit        ItemKind = "fruit"  // Produce says which, as for the next four
	ItemVegetable    ItemKind = "vegetable"
	ItemLegume       ItemKind = "legume"
	ItemMushroom     ItemKind = "mushroom"
	ItemMeat         ItemKind = "meat" // poultry and fish too
)
