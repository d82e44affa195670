package content

import (
	"slices"
	"strings"

	"go.yaml.in/yaml/v4"
)

// ingredients reads the lines and the groups of a list. Lines that follow one
// another outside a group make a group without a heading.
func (d *decoder) ingredients(v value) (groups []Group) {
	loose := false // the last group is one of loose lines
	d.list(v, func(v value) {
		if isGroup(v.Node) {
			groups = append(groups, d.group(v))
			loose = false
			return
		}
		if !loose {
			groups = append(groups, Group{})
			loose = true
		}
		last := &groups[len(groups)-1]
		last.Items = d.ingredient(last.Items, v)
	})
	return slices.DeleteFunc(groups, func(g Group) bool { return len(g.Items) == 0 && !g.For.Set() })
}

func isGroup(n *yaml.Node) bool {
	for i := 0; i < len(n.Content) && n.Kind == yaml.MappingNode; i += 2 {
		if groupKeys.Find(n.Content[i].Value) != nil {
			return true
		}
	}
	return false
}

func (d *decoder) group(v value) (g Group) {
	d.eachOf(groupKeys, v, func(v value) {
		switch v.key.Name {
		case "for":
			g.For = d.text(v)
		case "items":
			d.list(v, func(v value) { g.Items = d.ingredient(g.Items, v) })
		}
	})
	return g
}

// ingredient appends what v says to a list, if it can be read.
func (d *decoder) ingredient(list []Ingredient, v value) []Ingredient {
	if v.Kind == yaml.MappingNode {
		return d.item(list, v)
	}
	f := d.text(v)
	if !f.Set() {
		return list
	}
	i := ParseIngredient(f.V)
	i.Pos = f.Pos
	return append(list, i)
}

// item appends an ingredient that is given by its keys.
func (d *decoder) item(list []Ingredient, v value) []Ingredient {
	var amount, item, note Field[string]
	var optional Field[bool]
	d.eachOf(itemKeys, v, func(v value) {
		switch v.key.Name {
		case "amount":
			amount = d.text(v)
		case "item":
			item = d.text(v)
		case "note":
			note = d.text(v)
		case "optional":
			optional = d.truth(v)
		}
	})
	if !item.Set() {
		return list
	}
	line := item.V
	if note.Set() {
		line += ", " + note.V
	}
	i := withAmount(amount.V, line)
	i.Pos = d.place(v.Node)
	if optional.V {
		i.Optional = true
		i.Text += " (optional)"
	}
	return append(list, i)
}

// withAmount reads an ingredient whose amount is given apart from the rest of
// its line. What is no number stands at the end of a line: salt, to taste.
func withAmount(amount, line string) Ingredient {
	i := ParseIngredient(strings.TrimSpace(amount + " " + line))
	if amount == "" || i.Amount.Low != nil || i.Unread != "" {
		return i
	}
	if last := ParseIngredient(line + ", " + amount); last.ToTaste {
		return last
	}
	i = ParseIngredient(line)
	i.Text, i.Unread = amount+" "+line, amount
	return i
}
