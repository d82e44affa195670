package validate

import "stillroom/content"

// gameJerky reports jerky of game that was not frozen first.
var gameJerky = &Rule{
	ID:       "game-jerky",
	Severity: Warning,
	Summary:  "jerky of game that is not frozen first",
	Doc: `Game may carry trichinella and other parasites. It is frozen in pieces of 6 inches at
most, at 0 F, for 30 days before it is made into jerky.`,
	Source: Source{
		Title:   "Drying: questions and answers, University of Illinois Extension",
		Address: "https://extension.illinois.edu/food-preservation/drying-faq",
	},
	CheckKeeping: func(r *content.Recipe, m *Match) []Finding {
		if m.Keeping.Way.V != content.Drying {
			return nil
		}
		for _, p := range r.Produce {
			food, _ := LookUpProduce(p.V)
			if game[food.Name] && !stepsSay(r, "freeze", "freezing", "frozen", "freezer") {
				return []Finding{{
					Pos:     p.Pos,
					Message: p.V + ": not said to be frozen first",
					Advice:  "Freeze it at 0 °F for 30 days, in pieces of 6 inches at most, and say so in a step.",
				}}
			}
		}
		return nil
	},
}

// game are the foods that come from the wild.
var game = map[string]bool{"venison": true, "bear meat": true, "game bird": true, "rabbit": true}
