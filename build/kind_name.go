package build

import "stillroom/content"

// A kindName is what readers call a kind of food.
type kindName struct {
	kind      content.Kind
	one, many string
}

// kindNames are in the order in which the kinds stand in the larder: sweet,
// sharp, plain, and what is drunk.
var kindNames = []kindName{
	{content.Jam, "Jam", "Jams and preserves"},
	{content.Jelly, "Jelly", "Jellies"},
	{content.Marmalade, "Marmalade", "Marmalades"},
	{content.Conserve, "Conserve", "Conserves"},
	{content.FruitButter, "Fruit butter", "Fruit butters"},
	{content.Fruit, "Fruit", "Fruit in jars"},
	{content.PieFilling, "Pie filling", "Pie fillings"},
	{content.Pickle, "Pickle", "Pickles"},
	{content.Relish, "Relish", "Relishes"},
	{content.Chutney, "Chutney", "Chutneys"},
	{content.Salsa, "Salsa", "Salsas"},
	{content.Ketchup, "Ketchup", "Ketchups"},
	{content.Sauce, "Sauce", "Sauces"},
	{content.Tomato, "Tomatoes", "Tomatoes"},
	{content.Ferment, "Ferment", "Ferments"},
	{content.Vegetable, "Vegetables", "Vegetables"},
	{content.Legume, "Beans", "Beans and pulses"},
	{content.Soup, "Soup", "Soups and stocks"},
	{content.Meat, "Meat", "Meat"},
	{content.Poultry, "Poultry", "Poultry"},
	{content.Fish, "Fish", "Fish"},
	{content.Syrup, "Syrup", "Syrups"},
	{content.Juice, "Juice", "Juices"},
	{content.Cordial, "Cordial", "Cordials"},
	{content.Vinegar, "Vinegar", "Vinegars"},
	{content.Other, "Other", "Everything else"},
}

func nameKind(k content.Kind) kindName {
	for _, n := range kindNames {
		if n.kind == k {
			return n
		}
	}
	return kindName{k, capital(string(k)), capital(string(k))}
}
