package validate

import "stillroom/content"

// overruled reports food that a later notice has taken out of a published
// process, or for which a notice asks something that the recipe does not say.
var overruled = &Rule{
	ID:       "overruled",
	Severity: Error,
	Summary:  "food that a later notice has ruled out, or asks something of",
	Doc: `Guidance changes, and old rows stay in print. White-fleshed peaches and elderberries
were found to be low in acid in 2020, long after tables had named them; mashed
pumpkin and summer squash lost their processes when the records behind them could
not be found. A later notice wins over the row.

Some notices ask for a word: a recipe for peaches must say that they are
yellow-fleshed. What it does not say is asked for, as a warning, and never assumed.`,
	Source: Source{
		Title:   "Food preservation updates on white-fleshed peaches and nectarines and on elderberries, University of Maine Cooperative Extension, 2020",
		Address: "https://www.centralmaine.com/2020/06/29/food-preservation-updates-on-white-fleshed-peaches-and-nectarines-elderberries/",
	},
	CheckKeeping: checkOverruled,
}

func checkOverruled(r *content.Recipe, m *Match) []Finding {
	var fs []Finding
	for _, f := range foodsOf(r, m.Items) {
		for _, n := range NoticesOn(m.caseOf(r, f)) {
			fs = append(fs, n.finding(f.pos))
		}
	}
	return fs
}

// caseOf gives a food of the recipe as notices are read against it.
func (m *Match) caseOf(r *content.Recipe, f namedFood) Case {
	return Case{
		Food:    f.name,
		Said:    f.said,
		Way:     m.Keeping.Way.V,
		Kind:    r.Kind.V,
		Process: m.Keeping.Process.V,
		Items:   m.kinds(),
	}
}

func (n Notice) finding(pos content.Pos) Finding {
	f := Finding{Pos: pos, Message: n.Says, Advice: n.Instead, Source: n.Source}
	if n.Asks {
		f.Severity = Warning
	}
	return f
}

// A namedFood is a food of a recipe and all that the recipe says of it.
type namedFood struct {
	name string
	pos  content.Pos // where it is named first
	said string
}

// isNoticed reports whether there is a notice on a food.
func isNoticed(food string) bool { return len(noticesOf()[food]) > 0 }

// foodsOf gives the foods of the produce list and of the ingredients on which there
// are notices, each once.
func foodsOf(r *content.Recipe, items []Item) []namedFood {
	var foods []namedFood
	add := func(name string, pos content.Pos, words string) {
		for i := range foods {
			if foods[i].name == name {
				foods[i].said += ", " + words
				return
			}
		}
		said := r.Name.V + ", " + words
		foods = append(foods, namedFood{name, pos, said})
	}
	for _, p := range r.Produce {
		if food, ok := LookUpProduce(p.V); ok && isNoticed(food.Name) {
			add(food.Name, p.Pos, p.V)
		}
	}
	for _, in := range items {
		if isNoticed(in.Class.Produce.Name) {
			add(in.Class.Produce.Name, in.Pos, in.Item+" "+in.Note)
		}
	}
	return foods
}

// kinds are the kinds of the recipe's ingredients.
func (m *Match) kinds() []ItemKind {
	var ks []ItemKind
	for _, in := range m.Items {
		ks = append(ks, in.Class.Kind)
	}
	return ks
}
