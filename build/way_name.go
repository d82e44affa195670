package build

import "stillroom/content"

// A wayName is what readers call a way of keeping.
type wayName struct {
	way     content.Way
	name    string // on a list: Boiling water
	heading string // over its figures: On the shelf, by boiling water
	what    string // a sentence for the page of the way
}

// wayNames are in the order of the pages that list them.
var wayNames = []wayName{
	{content.BoilingWater, "Boiling water", "On the shelf, from boiling water",
		"Acid food in sealed jars, heated under boiling water for a tested time. It keeps on a shelf."},
	{content.AtmosphericSteam, "Steam", "On the shelf, from the steam canner",
		"Acid food in sealed jars, heated in full, steady steam for no more than 45 minutes. It keeps on a shelf."},
	{content.PressureCanner, "Pressure canner", "On the shelf, from the pressure canner",
		"Vegetables, meat, fish and other low-acid food in sealed jars, heated under pressure for a tested time. It keeps on a shelf."},
	{content.Refrigerator, "Refrigerator", "In the refrigerator",
		"Made to be eaten soon: kept cold from the day that it is made, and never on a shelf."},
	{content.Freezer, "Freezer", "In the freezer",
		"Kept frozen at 0 °F (−18 °C) or below."},
	{content.Drying, "Drying", "Dried",
		"Dried until there is too little water left for anything to grow, and kept tightly closed."},
	{content.Fermenting, "Fermenting", "In the crock",
		"Salted and left to sour on its own, under its brine."},
	{content.CoolStore, "Cool store", "In a cool store",
		"Kept as it is, in a cool, dark place."},
}

func nameWay(w content.Way) wayName {
	for _, n := range wayNames {
		if n.way == w {
			return n
		}
	}
	return wayName{way: w, name: capital(string(w)), heading: capital(string(w))}
}
