package build

import (
	"strings"

	"stillroom/content"
)

// An IngredientGroup is a part of the ingredients: the brine.
type IngredientGroup struct {
	For   string // empty for a plain list
	Lines []IngredientLine
}

// An IngredientLine is an ingredient as written, its amount set apart.
type IngredientLine struct {
	Amount   string // 4½ cups
	Same     string // the same amount in other units, as written: 900 g
	Item     string // sugar
	Note     string // divided
	Optional bool
}

func ingredientGroups(groups []content.Group) []IngredientGroup {
	var all []IngredientGroup
	for _, g := range groups {
		view := IngredientGroup{For: g.For.V}
		for _, i := range g.Items {
			view.Lines = append(view.Lines, ingredientLine(i))
		}
		all = append(all, view)
	}
	return all
}

// ingredientLine sets the amount apart only if no word of the line is lost by
// it: a line that was put together in an unusual way is shown as it stands.
func ingredientLine(i content.Ingredient) IngredientLine {
	l := IngredientLine{
		Amount:   typeset(i.Amount.Text),
		Item:     i.Item,
		Note:     typeset(i.Note),
		Optional: i.Optional,
	}
	var same []string
	for _, q := range i.Same {
		same = append(same, typeset(q.Text))
	}
	l.Same = strings.Join(same, ", ")
	if i.Unread != "" || !keepsWords(i.Text, l) {
		return IngredientLine{Item: typeset(i.Text), Optional: i.Optional}
	}
	return l
}

// keepsWords reports whether every letter and digit of a line is in its parts.
func keepsWords(text string, l IngredientLine) bool {
	whole, parts := marks(typeset(text)), marks(l.Amount+l.Same+l.Item+l.Note)
	if l.Optional {
		parts += marks("optional")
	}
	return len(whole) == len(parts) || len(whole)+len("optional") == len(parts)
}

// marks gives the letters and digits of a text.
func marks(s string) string {
	return strings.Map(func(c rune) rune {
		if strings.ContainsRune(" \u00a0,;:()–-/.", c) {
			return -1
		}
		return c
	}, s)
}
