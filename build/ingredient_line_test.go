package build

import (
	"strings"
	"testing"

	"stillroom/build/amount"
	"stillroom/content"
)

// lineText shows a line: {amount} for what grows with the batch.
func lineText(l IngredientLine) string {
	piece := func(p Piece) string {
		if p.Amount == "" {
			return p.Text
		}
		return "{" + p.Text + "}"
	}
	var b strings.Builder
	if l.Amount.Text != "" {
		b.WriteString(piece(l.Amount))
		if l.Same != "" {
			b.WriteString(" (" + l.Same + ")")
		}
		b.WriteString(" | ")
	}
	for _, p := range l.Item {
		b.WriteString(piece(p))
	}
	if len(l.Note) > 0 {
		b.WriteString(" | ")
	}
	for _, p := range l.Note {
		b.WriteString(piece(p))
	}
	if l.Fixed {
		b.WriteString(" | fixed")
	}
	return strings.ReplaceAll(b.String(), "\u00a0", " ")
}

func TestIngredientLine(t *testing.T) {
	for _, c := range []struct{ line, want string }{
		{"4½ cups (900 g) sugar", "{4½ cups} (900 g) | sugar"},
		{"4½ cups sugar", "{4½ cups} (900 g) | sugar"},
		{"2 lb plums, halved", "{2 lb} (910 g) | plums | halved"},
		{"8 cups sliced onions, about 3 lb", "{8 cups} (about 3 lb) | sliced onions"},
		{"5 cups pitted plums, from about 2½ lb", "{5 cups} (830 g) | pitted plums | from about {2½ lb}"},
		{"14 tbsp bottled lemon juice, 2 tbsp to each jar", "{14 tbsp} | bottled lemon juice | 2 tbsp to each jar"},
		{"6 lb cucumbers, 4 to 5 inches long", "{6 lb} (2.7 kg) | cucumbers | 4 to 5 inches long"},
		{"12 whole cloves", "{12} | whole cloves"},
		{"4 small onions (400 g), thinly sliced", "{4} (400 g) | small onions | thinly sliced"},
		// Lines that are shown as they stand; their amounts grow all the same.
		{"about 3 cups sugar", "about {3 cups} sugar"},
		{"1 heaped tsp mace", "{1} heaped tsp mace"},
		{"2 x 400 g tins chickpeas", "{2} x 400 g tins chickpeas"},
		{"14-oz can chickpeas", "14-oz can chickpeas | fixed"},
		{"5-lb chickens", "5-lb chickens | fixed"},
		{"salt, to taste", "salt, to taste"},
	} {
		i := content.ParseIngredient(c.line)
		a, known := amount.Of(&content.Recipe{}, i)
		if got := lineText(ingredientLine(amount.Line{Item: i, Amount: a, Known: known})); got != c.want {
			t.Errorf("%s: %q, want %q", c.line, got, c.want)
		}
	}
}
