package validate

import (
	"fmt"
	"math/big"

	"stillroom/content"
)

// blanchingRule reports vegetables that are frozen without blanching, or
// blanched for less than published.
var blanchingRule = &Rule{
	ID:       "blanching",
	Severity: Advice,
	Summary:  "vegetables frozen without blanching, or blanched too short",
	Doc: `Enzymes go on working in the cold, and turn a raw vegetable gray and bitter within
weeks. Blanching stops them; blanching for too short a time wakes them up, which is
worse than none, and is a warning. Write "blanch:" with the published minutes, and in
the steps a minute more at 5,000 ft and above. Onions and peppers need none.`,
	Source: Source{
		Title:   "Freezing vegetables, University of New Hampshire Extension",
		Address: "https://extension.unh.edu/node/22443",
	},
	CheckKeeping: checkBlanching,
}

func checkBlanching(r *content.Recipe, m *Match) []Finding {
	k := m.Keeping
	if k.Way.V != content.Freezer || r.Kind.V != content.Vegetable && r.Kind.V != content.Legume {
		return nil
	}
	var fs []Finding
	for _, p := range r.Produce {
		food, _ := LookUpProduce(p.V)
		least := leastBlanching(food)
		switch {
		case least == nil || food.Group == Peppers || food.swap() == "onion":
		case !k.Blanch.Set() && !stepsSay(r, "cook", "cooked", "roast", "roasted", "bake", "baked", "steam", "steamed", "fry", "fried"):
			fs = append(fs, Finding{
				Pos:     k.Pos,
				Message: p.V + ": frozen without blanching",
				Advice:  fmt.Sprintf("Write blanch: with the published time, %s.", blanchWords(food)),
				Source:  food.Blanch[0].Source,
			})
		case k.Blanch.Set() && k.Blanch.V.Minutes().Cmp(least) < 0:
			fs = append(fs, Finding{
				Pos:      k.Blanch.Pos,
				Severity: Warning,
				Message:  fmt.Sprintf("%s is under the published %s for %s", k.Blanch.V.Text, blanchWords(food), p.V),
				Advice:   "Blanch it longer: too short a time is worse than none.",
				Source:   food.Blanch[0].Source,
			})
		}
	}
	if len(fs) == 0 && k.Blanch.Set() && !stepsSay(r, "altitude", "elevation", "5,000", "5000", "1,500 m", "1500 m", "higher") {
		fs = append(fs, blanchHigher(k))
	}
	return fs
}

// blanchHigher asks for the minute more of high kitchens.
func blanchHigher(k *content.Keeping) Finding {
	more := LimitOf("blanch-altitude")
	return Finding{
		Pos:     k.Blanch.Pos,
		Message: "nothing is said of blanching at high altitude",
		Advice:  "Say in the step: a minute longer at 5,000 ft and above.",
		Source:  more.Source,
	}
}

// leastBlanching is the shortest published time of any form of a food, in
// minutes; nil if none is published.
func leastBlanching(food Produce) *big.Rat {
	var least *big.Rat
	for _, b := range food.Blanch {
		least = lower(least, b.Low)
	}
	return least
}

// blanchWords gives the published times of a food: 3 min; small 2 min, large
// 4 min.
func blanchWords(food Produce) string {
	words := make([]string, len(food.Blanch))
	for i, b := range food.Blanch {
		q := content.Quantity{Low: b.Low, High: b.High, Unit: content.Minute}
		words[i] = q.String()
		if b.Form != "" {
			words[i] = b.Form + " " + words[i]
		}
	}
	return andList(words)
}
