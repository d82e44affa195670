package validate

// A Group is a kind of food.
type Group string

// The groups of produce.
const (
	Berry      Group = "berry"
	StoneFruit Group = "stone fruit"
	PomeFruit  Group = "pome fruit"
	Citrus     Group = "citrus"
	Fruits     Group = "fruit" // all other fruit, and rhubarb
	Melon      Group = "melon"
	TomatoLike Group = "tomato"
	Vegetables Group = "vegetable"
	Peppers    Group = "pepper"
	Greens     Group = "greens"
	Legumes    Group = "legume"
	Mushrooms  Group = "mushroom"
	Herbs      Group = "herb"
	Aromatics  Group = "aromatic" // garlic, ginger, horseradish
	Nuts       Group = "nut"
	Meats      Group = "meat"
	Poultries  Group = "poultry" // with rabbit, which is canned as poultry is
	Fishes     Group = "fish"
	Shellfish  Group = "shellfish"
	Eggs       Group = "egg"
	Dairies    Group = "dairy"
)

// Fruit reports whether the group is of fruit; tomatoes are not.
func (g Group) Fruit() bool {
	switch g {
	case Berry, StoneFruit, PomeFruit, Citrus, Fruits, Melon:
		return true
	}
	return false
}

// kind is what the foods of a group are among ingredients.
func (g Group) kind() ItemKind {
	switch {
	case g.Fruit():
		return ItemFruit
	case g == Legumes:
		return ItemLegume
	case g == Mushrooms:
		return ItemMushroom
	case g == Herbs:
		return ItemHerb
	case g == Nuts:
		return ItemNut
	case g == Meats, g == Poultries, g == Fishes, g == Shellfish:
		return ItemMeat
	case g == Eggs:
		return ItemEgg
	case g == Dairies:
		return ItemDairy
	}
	return ItemVegetable
}
