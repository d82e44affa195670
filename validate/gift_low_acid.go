package validate

import (
	"strings"

	"stillroom/content"
)

// giftLowAcid gives advice on low-acid jars that are offered as presents.
var giftLowAcid = &Rule{
	ID:       "gift-low-acid",
	Severity: Advice,
	Summary:  "canned soup, meat or vegetables offered as a present",
	Doc: `Whoever gets a jar does not know how it was canned, nor what a bad one looks like.
Some authorities advise against giving low-acid jars away. Give jam and pickles, or
write on the label how the jar was processed and how to eat it.`,
	Source: Source{
		Title:   "Gifts from the kitchen, extension column in the Weatherford Democrat",
		Address: "https://www.weatherforddemocrat.com/opinion/columns/gifts-from-the-kitchen/article_8cc7e3e4-bfeb-5d20-9356-ba2cbd87d866.html",
	},
	CheckKeeping: func(r *content.Recipe, m *Match) []Finding {
		if m.Keeping.Way.V != content.PressureCanner || m.Process == nil || m.Process.Acidity != LowAcid {
			return nil
		}
		for _, t := range r.Tags {
			if saysAny(strings.ToLower(t.V), []string{"gift", "gifts", "present", "presents"}) {
				return []Finding{{
					Pos:     t.Pos,
					Message: "low-acid jars are no easy present",
					Advice:  "Give acid food away, or leave the tag out.",
				}}
			}
		}
		return nil
	},
}
