package build

import (
	"strings"

	"stillroom/build/amount"
	"stillroom/content"
)

// An IngredientGroup is a part of the ingredients: the brine.
type IngredientGroup struct {
	For   string // empty for a plain list
	Lines []IngredientLine
}

// An IngredientLine is an ingredient as written, its amount set apart.
type IngredientLine struct {
	Amount   Piece  // 4½ cups
	Same     string // the same in other units, as written or worked out: 900 g
	Item     []Piece
	Note     []Piece
	Optional bool
	Fixed    bool // an amount stands in it that could not be read, and is that of one batch
}

func ingredientGroups(r *content.Recipe, lines [][]amount.Line) []IngredientGroup {
	var all []IngredientGroup
	for n, g := range r.Ingredients {
		view := IngredientGroup{For: g.For.V}
		for _, l := range lines[n] {
			view.Lines = append(view.Lines, ingredientLine(l))
		}
		all = append(all, view)
	}
	return all
}

// ingredientLine sets the amount apart only if no word of the line is lost by
// it: a line that was put together in an unusual way is shown as it stands.
func ingredientLine(line amount.Line) IngredientLine {
	i, a, known := line.Item, line.Amount, line.Known
	if sizedPiece(i) {
		i.Item = i.Manner + " " + i.Item
	}
	if i.Unread != "" || !keepsWords(i) {
		ms := standing(i, a, known)
		return IngredientLine{Item: pieces(i.Text, ms), Optional: i.Optional, Fixed: i.Unread != "" || known && ms == nil}
	}
	l := IngredientLine{
		Amount:   Piece{Text: typeset(i.Amount.Text)},
		Same:     sameText(i),
		Item:     []Piece{{Text: i.Item}},
		Note:     pieces(i.Note, amount.InNote(i)),
		Optional: i.Optional,
	}
	if known {
		l.Amount.Amount = a.Data()
		if l.Same == "" {
			l.Same = typeset(a.Also(asWritten))
		}
	}
	return l
}

// sizedPiece reports whether a word that tells the size of pieces stands between
// their number and their name, as in 12 whole cloves: it goes with the name.
func sizedPiece(i content.Ingredient) bool {
	return i.Manner != "" && strings.HasPrefix(i.Text, i.Amount.Text+" "+i.Manner+" "+i.Item)
}

// standing finds the amounts of a line that is shown as it stands. Where the
// unit is written further on, as in 1 heaped tsp, the number alone grows.
func standing(i content.Ingredient, a amount.Amount, known bool) []amount.Mention {
	if !known {
		return nil
	}
	var ms []amount.Mention
	from := 0
	for n, q := range a.Ways {
		at := strings.Index(i.Text[from:], q.Text)
		if at < 0 || q.Text == "" {
			continue
		}
		if alone, err := content.ParseQuantity(q.Text); err != nil || alone.Unit != q.Unit {
			q.Unit = ""
		}
		of := a
		of.Ways = []content.Quantity{q}
		if n > 0 && q.Unit == "" {
			continue
		}
		ms = append(ms, amount.Mention{Start: from + at, End: from + at + len(q.Text), Amount: of})
		from += at + len(q.Text)
	}
	return ms
}

func sameText(i content.Ingredient) string {
	var same []string
	for _, q := range i.Same {
		text := typeset(q.Text)
		if strings.Contains(i.Text, "about "+q.Text) {
			text = "about " + text
		}
		same = append(same, text)
	}
	return strings.Join(same, ", ")
}

// keepsWords reports whether every letter and digit of a line is in its parts.
func keepsWords(i content.Ingredient) bool {
	whole, parts := marks(typeset(i.Text)), marks(typeset(i.Amount.Text)+sameText(i)+i.Item+typeset(i.Note))
	if i.Optional {
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
