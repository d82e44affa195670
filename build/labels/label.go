package labels

import (
	"math/big"
	"strings"
	"time"

	"stillroom/content"
)

// A Label is what stands on each jar. Texts may be empty but for Name and Made.
type Label struct {
	Name        string
	Made        string // Made 1 Aug 2026
	Best        string // Best by 1 Aug 2027
	Keep        string // Keep refrigerated.
	Then        string // Refrigerate once opened.
	Jar         string // Half-pint
	Batch       string // Batch 2026-08-01
	Ingredients string
	Address     string // where to read more
}

// A Batch is what is put into jars on a day.
type Batch struct {
	Recipe      *content.Recipe
	Way         *content.Keeping // how it is kept; one of the recipe's
	Made        content.Date
	Mark        string      // tells it from others of the day; mostly empty
	Jar         content.Jar // zero if the size is not known
	Address     string      // of the site; empty if it has none
	Ingredients bool        // whether they are named
}

// Label makes the label of a batch.
func (b Batch) Label() Label {
	l := Label{
		Name:  b.Recipe.Name.V,
		Made:  "Made " + shortDay(b.Made),
		Keep:  keep[b.Way.Way.V],
		Then:  then[b.Way.Way.V],
		Batch: strings.TrimSpace("Batch " + b.Made.String() + " " + b.Mark),
	}
	if best := BestBy(b.Made, b.Way.Keeps.V); !best.IsZero() {
		l.Best = "Best by " + shortDay(best)
	}
	if !b.Jar.IsZero() {
		s := b.Jar.String()
		l.Jar = strings.ToUpper(s[:1]) + s[1:]
	}
	if b.Ingredients {
		l.Ingredients = "Ingredients: " + strings.Join(ingredients(b.Recipe), ", ")
	}
	if _, host, ok := strings.Cut(b.Address, "://"); ok {
		l.Address = host + "/recipes/" + b.Recipe.Slug + "/"
	}
	return l
}

// keep says how a jar is to be kept.
var keep = map[content.Way]string{
	// USDA Complete Guide to Home Canning, AIB 539 (2015): in a clean, cool, dark, dry place
	content.BoilingWater:     "Keep cool, dark and dry.",
	content.AtmosphericSteam: "Keep cool, dark and dry.",
	content.PressureCanner:   "Keep cool, dark and dry.",
	content.Refrigerator:     "Keep refrigerated.",
	content.Freezer:          "Keep frozen.",
	content.Drying:           "Keep tightly closed, cool, dark and dry.",
	// National Center for Home Food Preservation, sauerkraut: fermented, it keeps in the refrigerator (from memory)
	content.Fermenting: "Keep refrigerated, under its brine.",
	content.CoolStore:  "Keep in a cool, dark place.",
}

// then says what changes when a jar is opened (common practice, no source).
var then = map[content.Way]string{
	content.BoilingWater:     "Refrigerate once opened.",
	content.AtmosphericSteam: "Refrigerate once opened.",
	content.PressureCanner:   "Refrigerate once opened.",
}

// ingredients names them in the order of the recipe, each once.
func ingredients(r *content.Recipe) []string {
	var names []string
	seen := make(map[string]bool)
	for _, g := range r.Ingredients {
		for _, i := range g.Items {
			name := i.Item
			if i.Unread != "" || name == "" {
				name = i.Text
			}
			if key := strings.ToLower(name); !seen[key] {
				seen[key] = true
				names = append(names, name)
			}
		}
	}
	return names
}

// shortDay writes a day so that no reader takes the month for the day.
func shortDay(d content.Date) string { return d.Time().Format("2 Jan 2006") }

// BestBy is the day up to which something keeps: of a range, the shorter time.
// It gives the zero Date if it is not said.
func BestBy(made content.Date, keeps content.Duration) content.Date {
	switch {
	case keeps.IsZero():
		return content.Date{}
	case keeps.Unit == content.Month && keeps.Low.IsInt():
		return addMonths(made, keeps.Low.Num().Int64())
	case keeps.Unit == content.Year && keeps.Low.IsInt():
		return addMonths(made, 12*keeps.Low.Num().Int64())
	}
	const minutesADay = 24 * 60
	days := new(big.Rat).Quo(keeps.Minutes(), big.NewRat(minutesADay, 1))
	whole := new(big.Int).Div(days.Num(), days.Denom()) // part of a day is not counted
	return dateOf(made.Time().AddDate(0, 0, int(whole.Int64())))
}

// addMonths gives the same day of a later month, or its last day if it is
// shorter.
func addMonths(d content.Date, months int64) content.Date {
	first := time.Date(d.Year, d.Month+time.Month(months), 1, 0, 0, 0, 0, time.UTC)
	last := first.AddDate(0, 1, -1).Day()
	return content.Date{Year: first.Year(), Month: first.Month(), Day: min(d.Day, last)}
}

func dateOf(t time.Time) content.Date {
	return content.Date{Year: t.Year(), Month: t.Month(), Day: t.Day()}
}
