package validate

import (
	"fmt"
	"math/big"
	"sync"

	"stillroom/content"
)

// foreignMeasure reports cups, spoons and pints of another country in a
// canned recipe.
var foreignMeasure = &Rule{
	ID:       "foreign-measure",
	Severity: Warning,
	Summary:  "a cup, spoon or pint of another country in a canned recipe",
	Doc: `A US cup holds 237 ml, a metric one 250; a tablespoon 15 ml, in Australia 20; a US
pint 473 ml, in Britain 568. Cups, spoons and pints are read as US ones here, as in the
published recipes. Where all is in the same cups the proportions hold; a dose to a jar
does not. Give millilitres.`,
	Source: Source{Title: "NIST Handbook 44, appendix C, and the Australian tablespoon of AS 1325, from memory"},
	CheckKeeping: func(_ *content.Recipe, m *Match) []Finding {
		if !m.Keeping.Way.V.Canned() {
			return nil
		}
		var fs []Finding
		for _, in := range m.withAdded() {
			fs = append(fs, in.foreign()...)
		}
		return fs
	},
}

// foreignWords tell of another country's measures.
var foreignWords = []string{
	"metric cup", "metric cups", "australian tablespoon", "australian tablespoons", "australian cup", "australian cups",
	"imperial cup", "imperial cups", "imperial pint", "imperial pints", "uk pint", "uk pints", "british pint", "british pints",
	"20 ml tablespoon", "20 ml tablespoons", "imperial quart", "imperial quarts",
}

func (in Item) foreign() []Finding {
	if saysAny(plain(in.Text), foreignWords) {
		return []Finding{{
			Pos:     in.Pos,
			Message: "a measure of another country",
			Advice:  "Give millilitres or grams: cups, spoons and pints are read as US ones.",
		}}
	}
	for _, q := range in.Same {
		ml, ok := q.In(content.Millilitre)
		if !ok || q.Unit != content.Millilitre || in.Amount.IsRange() || in.Amount.IsZero() {
			continue
		}
		if where := measureOf(in.Amount, ml.Low); where != "" {
			return []Finding{{
				Pos:      in.Pos,
				Severity: severityOf(in.Amount.Unit),
				Message:  fmt.Sprintf("%s as %s is %s", in.Amount.Text, q.Text, where),
				Advice:   "Cups, spoons and pints are read as US ones; give millilitres first.",
			}}
		}
	}
	return nil
}

// measureOf names the measure of which an amount in millilitres is as many;
// empty if it is none of another country.
func measureOf(q content.Quantity, ml *big.Rat) string {
	each := new(big.Rat).Quo(ml, q.Low)
	for _, o := range foreignMeasures() {
		if q.Unit == o.unit && each.Cmp(o.ml) == 0 {
			return o.name
		}
	}
	return ""
}

// A measureElsewhere is what another country calls by the name of a US unit.
type measureElsewhere struct {
	unit content.Unit
	ml   *big.Rat
	name string
}

var foreignMeasures = sync.OnceValue(func() []measureElsewhere {
	var all []measureElsewhere
	for _, r := range readTable("foreign-measures.tsv") {
		all = append(all, measureElsewhere{content.Unit(r.text("unit")), r.rat("ml"), r.text("name")})
	}
	return all
})

// severityOf lets a cup of 250 ml off with advice: many print it as a round
// figure.
func severityOf(u content.Unit) Severity {
	if u == content.Cup {
		return Advice
	}
	return Warning
}
