package validate

import (
	"strings"

	"stillroom/content"
)

// freezerKeeps gives advice on food that is said to keep longer in the freezer
// than published.
var freezerKeeps = &Rule{
	ID:       "freezer-keeps",
	Severity: Advice,
	Summary:  "a longer time in the freezer than published",
	Doc: `At 0 F nothing spoils, but taste and texture go: fruit and vegetables keep 8 to 12
months, citrus 4 to 6, poultry 6 to 9, fish 3 to 6, ground meat 3 to 4, cured meat 1 to 2.`,
	Source: Source{
		Title:   "Freezer shelf life, National Center for Home Food Preservation",
		Address: "https://nchfp.uga.edu/how/freeze/freezer_shelf_life.html",
	},
	CheckKeeping: func(r *content.Recipe, m *Match) []Finding {
		if m.Keeping.Way.V != content.Freezer {
			return nil
		}
		for _, p := range r.Produce {
			food, _ := LookUpProduce(p.V)
			if id := freezerLimit(food, plain(p.V)); id != "" && keepsOver(m.Keeping, LimitOf(id)) {
				return []Finding{tooLong(m.Keeping, LimitOf(id), Advice)}
			}
		}
		return nil
	},
}

// freezerLimit names the limit for a food; empty if none is published.
func freezerLimit(food Produce, said string) string {
	switch g := food.Group; {
	case g == Citrus:
		return "freeze-citrus"
	case g == Poultries:
		return "freeze-poultry"
	case g == Fishes, g == Shellfish:
		return "freeze-fish"
	case food.Name == "bacon", food.Name == "ham", food.Name == "sausage":
		return "freeze-cured-meat"
	case g == Meats && (strings.Contains(said, "ground") || strings.Contains(said, "minced")):
		return "freeze-ground-meat"
	case g == Meats, g == Eggs, g == Dairies, g == Nuts, g == "":
		return ""
	}
	return "freeze-fruit-veg"
}
