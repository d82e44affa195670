package validate

import (
	"fmt"
	"math/big"

	"stillroom/content"
)

// cupsAndGrams reports a line whose volume and weight are not the same amount.
var cupsAndGrams = &Rule{
	ID:       "cups-and-grams",
	Severity: Warning,
	Summary:  "a volume and a weight of one ingredient that do not agree",
	Doc: `Of "2 cups (600 g) sugar" one half is wrong, and a reader follows either. The two are
compared by a table of what a cup of each food weighs; 15 per cent either way is left
to packing, and what is said to be "about" or "from" is not compared.`,
	Source: Source{Title: "USDA National Nutrient Database SR28, household weights"},
	CheckKeeping: func(r *content.Recipe, m *Match) []Finding {
		if m.Keeping != &r.Keeping[0] {
			return nil
		}
		var fs []Finding
		for _, in := range m.Items {
			fs = append(fs, apart(in)...)
		}
		return fs
	},
}

// loose are words of an amount that is not meant to agree to the gram.
var loose = []string{"about", "approx", "approximately", "roughly", "from", "around"}

func apart(in Item) []Finding {
	if len(in.Same) == 0 || !in.Each.IsZero() || saysAny(plain(in.Text), loose) {
		return nil
	}
	cups, measured := in.in(content.Cup)
	grams, weighed := in.in(content.Gram)
	if !measured || !weighed {
		return nil
	}
	each, source, ok := GramsPerCup(in.Item + " " + in.Note + " " + in.Manner)
	if !ok {
		return nil
	}
	off := new(big.Rat).Mul(each, cupsApart()) // of a cup
	least := new(big.Rat).Sub(each, off)
	most := off.Add(each, off)
	if compare(grams.High, least.Mul(least, cups.Low)) >= 0 && compare(grams.Low, most.Mul(most, cups.High)) <= 0 {
		return nil
	}
	return []Finding{{
		Pos:     in.Pos,
		Message: fmt.Sprintf("%s is no %s of %s: a cup weighs about %s g", cups.Text, grams.Text, in.Item, each.FloatString(0)),
		Advice:  "Correct one of the two, or say in what form the food is measured.",
		Source:  source,
	}}
}
