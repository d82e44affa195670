package validate

import "stillroom/content"

// A deskRow is what a desk has found in one recipe.
type deskRow struct {
	recipe *content.Recipe
	judged bool
	alone  []Finding // by itself
	beside []Finding // beside the files that it names
	files  int       // the desk's, when beside was found; 0 if it was not
}

// seat gives each recipe a row, in order: that which it has if it was seen the
// last time. As long as recipes stay in their places nothing has to be looked
// up.
func (d *Desk) seat(recipes []*content.Recipe) {
	moved := make(map[*content.Recipe]deskRow)
	for i, row := range d.rows {
		if i >= len(recipes) || recipes[i] != row.recipe {
			moved[row.recipe] = row
		}
	}
	if len(d.rows) != len(recipes) {
		rows := make([]deskRow, len(recipes))
		copy(rows, d.rows)
		d.rows = rows
	}
	for i, r := range recipes {
		if d.rows[i].recipe == r {
			continue
		}
		row, ok := moved[r]
		if !ok {
			row = deskRow{recipe: r}
		}
		d.rows[i] = row
	}
}

// judgeNew judges the recipes that were not seen before, several at a time.
func (d *Desk) judgeNew() {
	var unknown []*deskRow
	for i := range d.rows {
		if !d.rows[i].judged {
			unknown = append(unknown, &d.rows[i])
		}
	}
	sideBySide(len(unknown), func(i int) []Finding {
		unknown[i].alone, unknown[i].judged = checkRecipe(unknown[i].recipe, Rules), true
		return nil
	})
}

// besideRecipe judges a recipe beside the pictures that there are.
func (d *Desk) besideRecipe(s *content.Site, row *deskRow) []Finding {
	if row.files != d.files {
		row.beside = d.checkPart(s, func(part *content.Site) { part.Recipes = []*content.Recipe{row.recipe} })
		row.files = d.files
	}
	return row.beside
}
